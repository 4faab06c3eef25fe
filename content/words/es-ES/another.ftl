### What Spain says in other words than content/words/es/another.ftl, by the trade's terms; its numbers have a decimal comma.

another-mostly-tight = casi siempre agarrada
another-both-ends = casi agarrada
