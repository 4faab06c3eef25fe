### What Spain says in other words than content/words/es/sources.ftl, by the trade's terms; its numbers have a decimal comma.

sources-group =
    .natives = Dónde son autóctonos los árboles
