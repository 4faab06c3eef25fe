### Ask a person, report a mistake.

help-title = Ask a person, report a mistake
help-description = Who can look at your tree, and how to tell us what is wrong on this site.
help-lede = A page can't look up into your tree. These people can.
help-person = Ask a person
help-person-line = **A line anywhere near:** the company that owns it. It comes for free in many places.
help-person-fall = **It could hit something, or it has a defect:** an arborist with a licence or a certificate, who can look at it.
help-person-name = **Is it this tree, does it have to go:** your extension office, a native plant society, a forester of the state.
help-person-law = **May I:** your city or county for trees near streets and water, the wildlife agency for nests and bats, the owner of the land first.
help-person-help = **Somebody is hurt, a line is down:** the emergency number, before all else.
help-mistake = Report a mistake
help-mistake-say = Say on which page, what it says, what you think is right, and how you know: a source, a count of your own, a photo of a measuring tape. Wrong numbers and bad advice come first.
help-mistake-data = For an answer send the link of your tree, or the file that the page makes. It has no name and no place of yours in it but what you typed.
help-contact-to = Send it to
help-no-contact = Whoever runs this copy of the site has named no address here. Ask where you found it.
