### What Spain says in other words than content/words/es/stop.ftl, by the trade's terms; its numbers have a decimal comma.

stop-head-standing = Cómo de firme
