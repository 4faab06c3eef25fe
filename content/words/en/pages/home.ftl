### The first page.

home-title = Kill an unwanted tree where it stands
home-description = Plan one ring on one unwanted tree that is to die standing: method, ring width, day, minutes, reach and cautions, each with its source.
home-heading = Kill an unwanted tree where it stands. Leave it for wildlife.
home-lede = Take off a ring of bark in the weeks when it slips. Say which tree: you get the ring, the days, the work, and what it could hit.
home-no-script = Scripts are turned off here, so the form below can't answer. This is what to go by:
home-without-script = [All species in one table](species/), [a worked example](example/) and [how answers are made](method/) need no script.
home-species = Which trees
home-species-about = Every tree of the list, and if a ring suits it.
home-articles-about = What a ring does, and what to settle before you start.
home-example-about = One tree, from tape to last visit.
home-method-about = The rules, what they rest on, what they leave out.
home-embed-about = For a group that answers its neighbours.
