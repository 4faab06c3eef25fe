measure-small = { $count ->
    [0] ninguna
    [1] una
    [2] dos
    [3] tres
    [4] cuatro
    [5] cinco
    [6] seis
    [7] siete
    [8] ocho
    [9] nueve
    [10] diez
    [11] once
    [12] doce
   *[other] { $count }
}

measure-and = { $last-sound ->
    [i] { $first } e { $last }
   *[other] { $first } y { $last }
}
measure-or = { $last-sound ->
    [o] { $first } u { $last }
   *[other] { $first } o { $last }
}
measure-comma = { $first }, { $last }
measure-range = { $low } a { $high }
# $number (Text): of 100
measure-about = cerca de { $number }

measure-months = enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre
measure-months-short = ene feb mar abr may jun jul ago sep oct nov dic
measure-months-initial = E F M A M J J A S O N D
measure-day = { $day ->
    [1] 1.º de { $month }
   *[other] { $day } de { $month }
}
measure-with-year = { $day } de { $year }
measure-whole-months = de { $from } a { $to }
measure-days-of-month = { $from ->
    [1] del 1.º al { $to } de { $month }
   *[other] del { $from } al { $to } de { $month }
}
measure-days = del { $from } al { $to }

measure-day-short = { $day } { $month }
measure-with-year-short = { $day } { $year }
measure-days-of-month-short = { $from } al { $to } de { $month }
measure-days-short = { $from } al { $to }

measure-minutes-label = min
measure-hours-label = h
measure-years-label = años
measure-in-100-label = de cada 100

measure-inches = pulgadas
measure-feet = pies
measure-millimetres = milímetros
measure-centimetres = centímetros
measure-metres = metros

measure-source = Fuente:{ " " }
measure-sources = Fuentes:{ " " }
measure-not-known = no se sabe
