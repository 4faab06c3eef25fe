### The page for a whole list of trees, as it stands before a list is open.
trees-title = A whole list of trees
trees-description = Open a spreadsheet of trees, saved as CSV: which can be ringed this season, on which day, which go to a professional, and what to fix.
trees-lede = A spreadsheet in, a season’s work out: which trees on which day, which go to a professional, and what is still to fix.
trees-open = Open a list
trees-sample = Open the sample
trees-nothing-sent = Nothing is sent anywhere: your file is the only copy.
trees-sample-is = The sample is an invented property of 300 trees.
trees-stop = Stop
trees-without-script = This page needs scripts. Without them, the program does the same: slipbark plan trees.csv
trees-crashed = That did not work: the list needs more memory than there is, or something broke. Your file is as you left it. Open it again.
trees-too-large = This file is over 10 MB. Save a part of it, by site or by species; the command line takes it whole.
trees-unreadable = The file could not be read.
# $file (Text)
trees-saved = { $file } is saved in your downloads.
trees-formats = A list is a spreadsheet saved as CSV. It has a row for each tree: species, and a diameter or girth. A tag, the place, and what the tree could hit make the plan better. Other columns stay as they are.
trees-home = A whole list of trees
trees-home-about = A spreadsheet in, a season’s work out.
trees-nav = List
trees-stopped = Stopped. The list is as you left it.
trees-keep = Keep a draft on this device
trees-forget = Forget the draft
trees-go-on = Go on with it
trees-not-kept = Nothing is kept here: download to keep.
# $time (Text)
trees-kept = Draft kept on this device at { $time }. Download to keep.
# $time (Text)
# $row (Text): the number of a row
trees-kept-row = Draft kept on this device at { $time }, up to row { $row }. Download to keep.
trees-may-go = The browser may remove it when it needs room.
# $file (Text)
# $time (Text)
trees-draft = Draft of { $file }, kept on { $time }.
trees-draft-refused = This browser keeps nothing for this page: a private window, or its settings. The file is the only copy: download to keep.
trees-draft-full = There is no room left on this device for the draft. Download to keep.
# $time (Text)
trees-draft-stays = The draft of { $time } stays.
trees-draft-newer = A newer version of this page kept this draft. Load the page again.
trees-draft-blocked = Another tab has an older version of this page. Close it, then press again.
trees-draft-other = Another tab keeps the draft of this list, or has forgotten it. What you change here is not kept.
