### What Spain says in other words than content/words/es/cautions.ftl, by the trade's terms; its numbers have a decimal comma.

cautions-short =
    .DZ1 = marchitez del roble
    .LW11 = árboles autóctonos y listados
    .LW13 = bosques y vegetación autóctona
