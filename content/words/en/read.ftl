### Links from a part of an answer to the article that explains it, in few words: the articles have longer titles.

read-ring = How wide, and why
read-season = When bark slips
read-visits = After the ring
read-alive = Is the bark alive?
read-sprouts = Which trees answer by suckering
read-stops = Before you start
read-dead = Dead trees and people
read-plant = What to plant next
