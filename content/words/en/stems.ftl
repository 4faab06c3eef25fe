### Several stems of one tree: which are ringed, which is left, and what is done with the others.

## What is ringed, inside a sentence
## $ringed (And): numbers
## $kept (And): numbers
stems-this-tree = this tree
stems-one = stem { $ringed }
stems-several = stems { $ringed }
# $ringed (And): numbers
# $kept (And): numbers
stems-one-leave-one = stem { $ringed }; leave stem { $kept }
# $ringed (And): numbers
# $kept (And): numbers
stems-several-leave-one = stems { $ringed }; leave stem { $kept }
# $ringed (And): numbers
# $kept (And): numbers
stems-one-leave-several = stem { $ringed }; leave stems { $kept }
# $ringed (And): numbers
# $kept (And): numbers
stems-several-leave-several = stems { $ringed }; leave stems { $kept }

## Each of the others
# $stem (Count): its number
# $act (Phrase): method-act
stems-other = Stem { $stem }: { $act }.
# $stem (Count): its number
stems-dead = Stem { $stem } is dead already.
# $stem (Count): its number
stems-keep = Leave stem { $stem } alone: it is the one to keep.
