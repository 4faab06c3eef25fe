### The bark on a day, and the months of law and biology.

# Who doubts the season.
# $birches (Node): the source
# $oaks (Node): the source
season-contested = Not everyone agrees on the season. In one controlled test winter rings killed all silver birches and spring rings 40 in 100 ({ $birches }), since living wood can regrow bark; the same kind of peel before leaf-out killed 75 in 100 red oaks in 14 months ({ $oaks }). Hence the scrape and the first visit.
