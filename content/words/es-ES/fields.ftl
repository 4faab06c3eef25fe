### What Spain says in other words than content/words/es/fields.ftl, by the trade's terms; its numbers have a decimal comma.

fields-reply =
    .cant-tell = no lo sé
