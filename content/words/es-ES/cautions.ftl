### What Spain says in other words than content/words/es/cautions.ftl, by the trade's terms; its numbers have a decimal comma.

cautions-dz1 = marchitez del roble
cautions-lw11 = árboles autóctonos y listados
cautions-lw13 = bosques y vegetación autóctona
