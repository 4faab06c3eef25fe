### With no signal.

offline-description = How this site works in a wood with no signal.
offline-lede = Open any page here once with a signal. The site is then kept on this device in the language that you read: the calculator, the list, the pages around them, and the pages of trees and the articles that you have read.
offline-saved = The foot of each page says "Saved on this device" only after every file was checked and found there.
offline-language = A language is kept once one of its pages was read with a signal; the others are not fetched.
offline-once-read = Pages of single trees, of the key behind its first question, of plates, and the articles are kept once you have read them with a signal, or all of them if you ask for that below.
offline-update = A new version waits until you press Update. Until then you keep the whole old one, never a mix.
offline-cleared = Some browsers clear what sites have saved after some weeks without a visit. Open the site before you leave.
offline-embedded = Inside another site's page this is not promised.
offline-stick = For a memory stick there is [one file](slipbark-single.html) with everything in it. Fetch it while you have a signal.
# Where a page should be that is not kept; a link to it follows.
offline-absent = This page is not on this device, because it was not read here with a signal:
offline-kept-title = Pages kept on this device
# Said by a script.
# $kept (Text): a number
# $pages (Text): a number
# $read (Text): a number
# $size (Text): megabytes
offline-kept-some = Of { $pages } pages of trees, key, plates and articles in this language, { $kept } are on this device: { $size } MB. Read so far: { $read }.
# $kept (Text)
# $pages (Text)
# $read (Text)
# $size (Text)
offline-kept-whole = All { $pages } pages of trees, key, plates and articles in this language are on this device: { $size } MB. Read so far: { $read }.
# $missing (Text): a number
# $size (Text): megabytes
offline-takes = To keep all, { $missing } more are fetched. They take { $size } MB on this device.
offline-keep-all = Keep all pages
offline-only-read = Keep only what I read
offline-no-room = There is no room for all pages on this device. What you have read is kept as before.
offline-no-room-before = You asked for all pages, but there was no room for all of this version. Those that you have read are kept.
# $file (Text)
offline-broke = Not all pages came: { $file } did not arrive, or was changed on its way. What came is kept. Press again for the rest.
offline-first-update = A new version is ready. Press Update first; its pages are kept then.
offline-which = Pages that you have read
