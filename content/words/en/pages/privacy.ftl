### Privacy.

privacy-title = Privacy
privacy-description = What this site sends and keeps.
privacy-lede = Nothing you type leaves this page.
privacy-browser = Answers are worked out in your browser. There is no account and no server that computes anything.
privacy-position = Where you are is asked of your device only when you press "Use my position". It is filled into the form, and neither sent nor kept.
privacy-town = A town is looked up in its country's list, which comes from this site as a whole file: the name you type is not sent.
privacy-others = No cookies, no trackers, no fonts or files from anyone else. On another group's page the calculator may fetch that group's own settings, from the address that the page names; nothing you type goes with it.
privacy-kept = Kept on this device: the site's own files, so that it works with no signal, your choice of page colours if you make one, a draft of what you type about a tree, a draft of a list of trees, and trees that you timed, each only if you press the button that keeps it; and from your first Continue in the woods, tree by tree, the trees that you type there. The page says so, and has buttons that forget each.
# The same on a site that is built to keep none of its files.
privacy-kept-without = Kept on this device: your choice of page colours if you make one, a draft of what you type about a tree, a draft of a list of trees, and trees that you timed, each only if you press the button that keeps it; and from your first Continue in the woods, tree by tree, the trees that you type there. The page says so, and has buttons that forget each.
privacy-link = A link to a question holds what you typed and the region: no position, no temperatures. What stands behind the # of an address is not sent to any server.
privacy-forget = To forget all of it, clear this site's data in your browser's settings.
privacy-server = Whoever runs the server that these files come from sees, as on any site, which files were asked for and from which network address.
