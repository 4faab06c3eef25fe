### Around every page: head, foot, and what stands while the copy for no signal is made. Words on pages are text with
### inline Markdown: [a link](species/) leads to the page in the same language, `code` and **bold** stay the same everywhere.

# $title (Text)
shell-title = { $title } - Slipbark
# The language's own name of itself.
shell-language = English
# Over every page of a language that no native speaker has read.
shell-not-reviewed = No native speaker has reviewed this translation yet.
shell-skip = Skip to the page
shell-nav = Site
shell-nav-tree = Tree
shell-nav-species = Species
shell-nav-method = Method
shell-embed = Put it on your site
shell-sun = Sun
shell-new-version = New version
shell-new-version-ready = New version ready.
shell-update = Update
shell-failed = **The calculator could not start.** Its files did not arrive, or this browser refuses WebAssembly.
shell-failed-then = [All trees](species/), [a worked example](example/) and [how answers are made](method/) need none of it.
shell-again = Try again
shell-about = About this site
shell-how = How answers are made
shell-changes = What changed
shell-more = More
shell-offline = With no signal
shell-privacy = Privacy: nothing leaves this page
shell-accessibility = Accessibility
shell-colours = Page colours
shell-colours-auto = As the device
shell-colours-light = Light
shell-colours-dark = Dark
# $version (Text)
# $build (Text)
shell-version = Version { $version }, build { $build }.
# $version (Text)
# $build (Text)
# $day (Text): of the newest change of its source, with the year
shell-version-of = Version { $version }, build { $build }, { $day }.
# $read (Text): a day with its year
shell-reviewed = Last read through on { $read }.
# Beside a link to the site, in programs that show a picture of it.
shell-picture = A person takes a ring of bark off a trunk, drawn to scale
shell-saved = Saved on this device. Works with no signal.
# What the copy for no signal lacks, and why, by one of its files.
# $file (Text)
shell-unsaved-missing = Not saved on this device: the file { $file } did not arrive whole from the server. The site works while you have a signal.
# $file (Text)
shell-unsaved-altered = Not saved on this device: the file { $file } was changed on its way here. The site works while you have a signal.
# $file (Text)
shell-unsaved-room = Not saved on this device: there was no room left, at the file { $file }. The site works while you have a signal.
# $file (Text)
shell-unsaved-update = A newer version could not be saved, because of the file { $file }. You keep the one that you have.
# $file (Text)
shell-unsaved-page = This page could not be saved on this device ({ $file }). The rest that you have read is.
# In the place of the calculator, as a link to this site.
shell-plan = Plan one tree
# The site as an app on a device: its name, and what it does.
shell-app = Slipbark: one tree, one answer
shell-app-does = Plan one ring on one unwanted tree that is to die standing.
