### What stands where the calculator can't: by what a plan goes.

weighs-heading = What the plan weighs
weighs-lede = The calculator runs in this page. Where scripts or WebAssembly are turned off, it can't, and these points are what to go by.
weighs-reach = **First, what it could hit.** A ringed tree dies standing and drops wood for years. Near buildings, roads, paths, power lines or a neighbour's land, leave it to a professional.
weighs-ring = **Ring:** all the way round, waist to chest high, bark off down to the wood, with no live branch below it.
weighs-when = **When:** while the bark peels. Cut a patch the size of a hand first. If it tears, wait.
weighs-after = **After:** come back this year and next. Take sprouts off below the ring, and new bark across it.
weighs-ask = **Ask first:** the owner, your town and your local codes decide whether a tree may be killed.
