### Articles: what stands around their texts, which are in content/articles.

articles-title = Learn
articles-description = Short articles on rings, bark, dead trees and people, each claim with its source.
articles-lede = Short articles. Each claim has its source, and each says when somebody last read it through.
articles-all = All articles
articles-inside = In this article
# Behind a claim that nobody has published.
articles-own = our own assumption
# Behind a claim that people in the trade share, with no source to name.
articles-practice = common practice, no source
articles-sources = What this rests on
articles-written = Written by
# $count (Count): of its sources
# $read (Text): a day with its year
articles-by-the-project = The project, from { $count ->
    [one] { $count } source
   *[other] { $count } sources
}. Last read through on { $read }.
# $by (Text)
# $count (Count)
# $read (Text)
articles-by = { $by }, from { $count ->
    [one] { $count } source
   *[other] { $count } sources
}. Last read through on { $read }.
articles-defers = Local codes, permits and the word of a licensed professional stand above what is written here.
# On the page of an article that is not written in the language of the page.
articles-other-language = This article is not there in English yet.
articles-calculator-later = The calculator needs JavaScript and WebAssembly. The page of each tree has its numbers without.
# Names the region of a table in an article, for those who listen.
# $title (Text): the heading over it
articles-table = Table: { $title }
# Over a few sentences of a group in one of the project's articles.
# $by (Text): who wrote them
articles-note-of = Local note, by { $by }
