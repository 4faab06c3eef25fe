visits-seen =
    .bridge = Corteza que cruza el anillo
    .sprouts = Brotes debajo del anillo
    .suckers = Brotes de raíz
    .crown-full = La copa llena
    .crown-thin = La copa rala
    .crown-bare = La copa sin hojas en tiempo de hojas
    .decay = Hongos, o ramas en el suelo
    .nothing = Nada de esto
visits-act-now =
    .keep-out = no entre debajo de él
    .reopen-bridge = corte el puente de corteza y raspe
    .take-sprouts = quite los brotes
    .take-suckers = corte los brotes de raíz y siga así por años
    .ring-again = anille otra vez, más ancho
    .wait = espere
visits-ring-judged =
    .too-soon = todavía no se puede decir
    .working = el anillo funciona
    .failed = el anillo falló
    .dead = muerto por encima del anillo
    .look-at-crown = lo dice la copa: ¿llena, rala o sin hojas?
visits-no-advice =
    .before-the-ring = La visita es anterior al anillo. Revise las dos fechas.
    .contradiction = No pueden ser ciertas a la vez. Marque lo que ve, y solo eso.
    .no-such-visit = La lista no tiene visita con ese número. Elija una de la lista o dé una fecha.
    .stopped = No le haga nada en una visita: primero resuelva lo que se dice aquí, y no entre debajo de él.
    .no-ring = Aquí no se aconseja ningún anillo. Dé la fecha en que se anilló.
visits-at-a-visit = En una visita: qué ve y qué hacer
visits-head-visit-you-see = Usted ve
visits-head-visit-do-now = Haga ahora
visits-head-visit-at-first = En la primera
visits-head-visit-in-season-3 = En la temporada 3
visits-visit-now = Está en una visita: diga lo que ve
visits-visit-when = ¿Qué visita es?
visits-visit-today = Hoy
visits-visit-crown = La copa
visits-visit-no-crown = No la miré
visits-visit-seen = Marque lo demás que ve
visits-visit-advice = En esta visita:
visits-then-check = Después, revise
visits-work-short = trabajo
visits-ring-short = anillo
visits-recheck-ring = ¿Está abierto el anillo en toda la vuelta? Si la corteza lo cruza, córtela y raspe otra vez.
visits-wilt = ¿Se marchitan las hojas por todos lados? Si aún no, no es un fracaso. Que nadie entre debajo.
visits-first-look = ¿Sale algo del tocón o de las raíces? Quítelo.
visits-look-ring = ¿Copa llena, rala o sin hojas? Si hay corteza nueva a través, córtela. No rebrota.
visits-look = Basta con mirar: no rebrota. Arranque sus plantitas mientras son chicas.
visits-end-of-season-ring = Si la corteza cruza el anillo, córtela. Si hay brotes debajo del anillo, quítelos. Una copa llena todavía no es un fracaso.
visits-end-of-season = ¿Copa llena, rala o sin hojas? Si hay brotes, avise a quien lo trató.
visits-sprouts-ring = Brotes debajo del anillo y brotes de raíz: quítelos. ¿Copa llena, rala o sin hojas? Si hay corteza nueva a través, córtela.
visits-sprouts-herbicide = Brotes y brotes de raíz: avise a quien lo trató, o córtelos.
visits-sprouts-pulled = Brotes de raíces que quedaron en el suelo: arránquelos.
visits-sprouts-cut = Brotes del tocón y brotes de raíz: córtelos otra vez.
visits-yearly = Una vez al año hasta dos años limpios seguidos, y después de cada tormenta. Mire arriba antes de acercarse.
visits-calendar-title = Revisar: { $tree }, { $size }
visits-judge = No lo dé por muerto antes del segundo otoño.
visits-judge-larch = No lo dé por muerto antes de que debiera haber echado hojas otra vez.
visits-count = { $visits ->
    [one] { $years ->
        [one] una visita en un año
       *[other] una visita en { $years } años
    }
   *[other] { $years ->
        [one] { $visits } visitas en un año
       *[other] { $visits } visitas en { $years } años
    }
}
visits-before-the-ring = El anillo es del { $ringed }. La visita es anterior. Revise las dos fechas.
visits-advice-said = { $acts }. El { $day }: { $judged }.
visits-come-back = Vuelva a más tardar el { $back }.
visits-none-left = No queda ninguna visita en la lista.
