/**
 * What is said alone, to a question or a prompt of the bench: few words, and nothing around them that would tell one from
 * another. Counted as the tags' own lines are, or they drown in the openings of longer lines. A line a phrase.
 */
export const ANSWERS = `
yes
yeah
yep
no
nope
right
that's right
correct
wrong
yes it was
no it wasn't
foot pounds
inch pounds
newton meters
yes foot pounds
no inch pounds
psi
bar
inches
a minute
per minute
an hour
done
already done
needed
still needs it
it was replaced
it needs replacing
replaced
cleaned
adjusted
the upper
upper
upper one
the upper one
the lower
lower
lower one
the lower one
both
both of them
neither
the top one
the bottom one
the seat
seat
the plug
plug
the stem
stem
the cage
cage
the packing
packing
the spring
the diaphragm
the bonnet
the guide
one side
both sides
all around
inlet
outlet
slight
moderate
severe
scratch that
correction
what's missing
what's left
close it out
go ahead
never mind
stop listening
start listening
take a picture
`;
