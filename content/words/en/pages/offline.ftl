### With no signal.

offline-description = How this site works in a wood with no signal.
offline-lede = Open any page here once with a signal. The site is then kept on this device in the language that you read, and the calculator, the list and the pages around them work without one.
offline-saved = The foot of each page says "Saved on this device" only after every file was checked and found there.
offline-language = A language is kept once one of its pages was read with a signal; the others are not fetched.
offline-not-kept = Pages of single trees, of the key behind its first question, of plates, and the articles are not kept: read those with a signal.
offline-update = A new version waits until you press Update. Until then you keep the whole old one, never a mix.
offline-cleared = Some browsers clear what sites have saved after some weeks without a visit. Open the site before you leave.
offline-embedded = Inside another site's page this is not promised.
offline-stick = For a memory stick there is [one file](slipbark-single.html) with everything in it. Fetch it while you have a signal.
