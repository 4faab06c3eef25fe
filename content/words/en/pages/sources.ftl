### The page of sources.

sources-page-title = Sources
sources-page-description = Every source a number or a caution rests on, which part of it was read, and how far it is trusted.
# $source-count (Text)
sources-page-lede = { $source-count } sources, by what they are used for. For each: which part of it was read, and the best grade that a number taken from it can have.
sources-page-find = Author, title or other words
sources-page-groups = By what they are used for
sources-page-files = For programs for references: [BibTeX](sources/slipbark.bib), [CSL-JSON](sources/slipbark.json).
sources-page-own = Our own assumption
sources-page-own-is = A number or a rule that nobody published. It is said so wherever it is used.
sources-page-practice = Common practice
sources-page-practice-is = What people in the trade do and teach, with no source to name.
sources-page-you = You
sources-page-you-is = What you measured or said.
# $rule-count (Text)
# $rules-print (Text)
# $rules-practice (Text)
# $rules-own (Text)
sources-page-rules = The table that picks a method has { $rule-count } rows. A source prints what { $rules-print } of them say; { $rules-practice } are common practice, with no source; { $rules-own } are our own, or so in part. Where a row is checked by a question that repeats its own cells, that shows a slip of ours and is no proof from outside.
sources-page-places = Places
sources-page-places-are = Two kinds of files are fetched only when a place is asked for. They carry licences of their own.
sources-page-climate = Climate
# $journal (Text): WorldClim's paper, as printed
# $climate-count (Text)
sources-page-climate-is = WorldClim 1.4, 1960–1990: { $journal }, CC BY-SA 4.0. Changed: sampled at { $climate-count } stations, rounded to 0.1 °C, one faulty place removed. Stations: NOAA Integrated Surface Database history, a work of the US Government.
sources-page-towns = Towns
# $town-countries (Text)
sources-page-towns-are = GeoNames, geonames.org, CC BY 4.0. Changed: { $town-countries } countries, towns of 5,000 people and more (1,000 in the United States and Canada), positions to 0.01°, populations to a size class, four local names added, codes of regions turned into ISO 3166-2. There is no elevation in it.
