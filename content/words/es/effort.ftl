effort-each-better = el de cada tronco
effort-no-table = No hay ninguna tabla publicada de minutos por diámetro. Estos se calculan con tiempos de trabajos parecidos.
effort-tasks-find-a-stand-tools = Buscar dónde pararse, herramientas, mirar arriba
effort-tasks-clear-limbs-below-the = Quitar las ramas debajo del anillo
effort-tasks-score-two-lines = Marcar dos líneas con corte
effort-tasks-peel = Pelar la corteza
effort-tasks-scrape-and-check = Raspar y revisar
effort-task-walk = Caminar desde el árbol anterior
effort-task-all = Todo, con descansos y demoras
effort-no-rate-said =
    .too-few-trees = Mida el tiempo de dos árboles por lo menos: uno solo dice más del árbol que de usted.
    .no-minutes = Escriba cuántos minutos tomaron en total.
    .far-off = Eso está muy lejos de cualquier cuadrilla. Revise los minutos y los diámetros.
effort-how-long = Cuánto tiempo toma
effort-twin-minutes = Los minutos en una tabla
effort-head-minutes-step = Paso
effort-head-minutes-likely-minutes = Minutos probables
effort-if-ringed = Si lo anilla:
effort-minutes = { $likely ->
    [one] un minuto, más o menos ({ $low } a { $high })
   *[other] unos { $likely } minutos ({ $low } a { $high })
}
effort-hours = { $likely ->
    [one] una hora, más o menos ({ $low } a { $high })
   *[other] unas { $likely } horas ({ $low } a { $high })
}
effort-minutes-label = { $minutes } min
effort-hours-label = { $hours } h
effort-for = Para el ancho mejor: { $width }. La corteza pegada, la corteza gruesa y el mal piso lo hacen más lento.
effort-walk = Caminar desde el árbol anterior va incluido: { $minutes } min.
effort-practised = Una cuadrilla con práctica.
effort-visit = { $likely ->
    [one] Cada visita para quitar brotes: un minuto, más o menos ({ $low } a { $high }).
   *[other] Cada visita para quitar brotes: unos { $likely } minutos ({ $low } a { $high }).
}
effort-long = { $visits ->
    [one] Con la única visita de los tres años son { $minutes }; con las { $all-visits } de la lista, { $all-minutes }. La primera revisión no se cuenta: nadie ha medido una.
   *[other] Con las { $visits } visitas de los tres años son { $minutes }; con las { $all-visits } de la lista, { $all-minutes }. La primera revisión no se cuenta: nadie ha medido una.
}
effort-trees-in = { $trees ->
    [0] ningún árbol en { $minutes } minutos
    [one] { $minutes ->
        [one] un árbol en un minuto
       *[other] un árbol en { $minutes } minutos
    }
   *[other] { $minutes ->
        [one] { $trees } árboles en un minuto
       *[other] { $trees } árboles en { $minutes } minutos
    }
}
effort-timed = Según sus propios árboles: { $trees }. Eso es { $times } nuestros minutos, y se usa aquí.
effort-not-timed = Con { $trees } todavía no se puede decir. { $why } Se usa nuestro propio ritmo.
effort-times = { $likely } veces ({ $range })
effort-own-rate = Con su propio ritmo, de árboles que usted midió: { $times } el nuestro.
effort-crew-day = { $trees ->
    [one] Una cuadrilla de { $people } con { $hours } horas: más o menos un árbol como este al día.
   *[other] Una cuadrilla de { $people } con { $hours } horas: unos { $trees } árboles como este al día.
}
effort-walk-given = { $minutes ->
    [one] un minuto
   *[other] { $minutes } minutos
}
effort-timed-given = { $trees ->
    [0] ninguno, { $minutes } minutos en total
    [one] { $minutes ->
        [one] uno, un minuto en total
       *[other] uno, { $minutes } minutos en total
    }
   *[other] { $minutes ->
        [one] { $trees }, un minuto en total
       *[other] { $trees }, { $minutes } minutos en total
    }
}
