### The page that carries everything in one file.

single-title = One tree, one answer
# $title (Text)
single-in-one-file = { $title } - Slipbark in one file
single-lede = Everything is in this one file. It asks no server for anything and keeps nothing.
single-changed = This copy of the file was changed on its way, so the calculator can't start. Fetch the file again.
single-older = The calculator can't start here: this browser has no DecompressionStream, which unpacks the file. Update the browser, or open the file in another one.
# $version (Text)
# $build (Text)
single-version = Version { $version }, build { $build }. Latitude and longitude are known here; names of towns, and the list of sources, are on the site alone.
single-licences = Code: MIT or Apache-2.0. Climate: WorldClim 1.4 (Hijmans and others 2005), CC BY-SA 4.0, sampled at stations and rounded; stations: NOAA Integrated Surface Database.
