### What the program says on the command line.

# $why (Text): what went wrong, and what to do
command-stopped = Stopped: { $why }
# $file (Text)
command-unreadable = { $file } could not be read. Give the name of a JSON file, or - for standard input
# $file (Text)
command-unreadable-settings = { $file } could not be read. Give the name of a JSON file of settings
command-unreadable-input = standard input could not be read

## A file that is not what it should be. $line (Text) and $column (Text) say where.
# $line (Text)
command-not-utf8 = Line { $line }: the text is not UTF-8. Save the file as UTF-8.
command-not-object = Line 1: a question is a JSON object: it begins with { "{" } and has names and values in it.
# $line (Text)
# $column (Text)
# $why (Text): as the reader of JSON says it, in English
command-not-json = Line { $line }, column { $column }: this is not JSON: { $why }.
# $line (Text)
# $column (Text)
# $name (Text)
# $known (Text): the names that are known, with commas
command-no-such-name = Line { $line }, column { $column }: there is no `{ $name }` here. Take it out, or use one of: { $known }.
# $line (Text)
# $column (Text)
# $why (Text): as the reader of JSON says it, in English
command-wrong-type = Line { $line }, column { $column }: { $why }.

## Settings of a group
# $file (Text)
# $group (Text)
command-usable = { $file } can be used by { $group }.
command-outside = species.list: The list must lie in the folder of the settings, or in one below it: no "..", no path from the root, no link that leads out. Put it there.
# $told (Text)
command-warning = { $told } (a warning)
