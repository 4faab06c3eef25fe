### What the program alone says of the time after the work: it names its options.

after-rate-to-use = --own-rate makes the plan with it.
after-no-own-rate = --own-rate needs two rings in --found with minutes, whose day is in ringed_on and in visited_on.
# $typed (Text)
after-not-an-area = --area { $typed }: name a part of the property and how much land it is, as "North wood=12 acres" or "North wood=5 ha".
# $typed (Text)
after-not-a-closure = --closure and --floor { $typed }: name a share from 1 to 99 %, as "North wood=85%" for a part that --area names, and --floor 60%.
# $unit (Text)
after-say-closure = Where other trees stand there too, say how much all of them cover: --closure "{ $unit }=85%".
after-say-spacing = That distance is our own assumption: another by --spacing "8 ft".
# $typed (Text)
after-not-a-spacing = --spacing { $typed }: name the distance between two trees that are planted, 1 to 98 ft, as "8 ft" or "2.5 m".
