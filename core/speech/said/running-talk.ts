/** Lines said while the work runs: changed minds, asides that end in the valve, commands between. Invented; a line a phrase, numbers and tags as spoken. */
export const RUNNING_TALK = `
morning starting on f v one oh one
this here's the dump valve off the north separator
two inch pressure to open
sandy service always has been
okay let's see what we got
got my lock on the upstream block
tag's hung on the bypass
gonna bleed her down now
still got forty pounds on it
give it a minute
bled down to nothing
gauge says zero but i don't trust that gauge
cracked the bleeder nothing came out
no wait there's still pressure under there
bled down but she's holding pressure
popped the line loose at the fitting and it spit at me
alright now it's dead
supply gas is off
pulled the signal tubing off the top
took the top works off first
spring came out easy no load on it
upper housing bolts were rusted solid
had to cut two of the housing bolts
upper diaphragm's stiff as a board
it's cracked out by the bolt holes
put that down as cracked at the edge
lower one's still soft
bottom diaphragm looks good to me
diaphragm plate has some rust on it
nothing bad just surface rust
diaphragm nut came off fine
threads on it are good
stem's got a groove wore in it
that's right where the packing rides
make that scored on the stem
packing's about wore out
packing nut was finger loose
somebody had backed off the packing nut
pulled the bonnet now
bonnet gasket stuck to the body scraped it off
cage is sand cut on the bottom
pretty bad too you can see daylight through it
scratch that you can't see daylight
it's just eroded heavy on the lower end
plug's got a flat spot on the face
seat's wire drawn from about here to here
seat ring's cut on the one side there
flip side of the seat is good
so i flipped the seat
seat gasket's squashed replaced that
new cage gasket too
cage o ring was cut in two places
stem guide's okay
wiped the stem guide down with a rag
ports in the guide had mud in 'em
rodded the ports out with a piece of wire
body's a little washed out at the bottom
not enough to worry about leave it
inlet threads look alright
outlet threads got a couple of nicks
chased the outlet threads with a file
put her back together with a new upper diaphragm
bonnet bolts to twenty eight foot pounds in a cross
diaphragm nut got thirty five
packing nut i just ran up snug
new packing in her
greased the stem before it went in
cleaned the breather out
put twenty pounds on top and she opened right up
strokes good
a hundred pounds on the inlet no bubbles
soap on the bonnet no leaks
that's a good valve
what'd i miss
oh travel
travel's a half inch
yep close it out
note that the north separator block valve is stiff
also make a note of the bypass handle being missing
remind me to bring a handle next time
come back and look at her in ninety days
okay who's next
l c v two one two now
this one's a one inch
apprentice is gonna pull this one
read me back what i said on the last valve
no that's not right it was the seat i flipped
the plug i put back in
plug's reused
alright go on
you getting all this
let me get my glasses
log how many have i done today
is one oh one closed yet
that valve's older than me
i rebuilt this one back in ninety four
used to be we'd do ten of these before dinner
hand me that three quarter
not that one the other one
don't drop that plug
watch your fingers under the spring
okay i'm back where was i
last thing i said was the stem guide
okay um this is l c v two one two
i'm gonna start with the top i guess
travel indicator's cracked
the little plastic window thing is all yellow
is that the indicator gasket
indicator gasket's dried out
needs a new indicator gasket i think
indicator spring looks fine
so the upper housing's got eight bolts in it
one of them is stripped
no two of 'em are stripped
okay bolts are out
there's oil in the top of the diaphragm
not sure if that's supposed to be there
he says it isn't
upper diaphragm's swollen
it's got like a wave in it all the way around
top diaphragm needs to be replaced
i can't get the diaphragm nut off
nut's froze to the stem
he put heat on it and it came
diaphragm nut's galled now though
replace the nut
stem threads got galled too
stem needs a new one then
that one's got a hole in it
just a tiny pinhole by the middle
both diaphragms are bad
order two diaphragms
actuator spring's good i guess
spring's not broke or anything
measured it four and a quarter inches
he says that's short should be four and a half
so weak spring
spring's weak replace it
lower housing's fine inside
vent hole in the lower housing is clear
no wait that's the supply port
the vent hole's plugged with grease
cleaned it out with a pick
signal port's okay
bonnet bolts were only like ten foot pounds
that seems low
bonnet gasket's in one piece
bonnet gasket's flat though
should i reuse it
he says no
not reusing the bonnet gasket
put a new one on the bench for it
cage is out
cage has rust on it on the outside
little rust spots just on the bottom half
cleaned the cage with the wire wheel
i think the cage is okay
cage gasket's stuck in the body
had to scrape the gasket off with a putty knife
plug's got a nick on the edge
i can feel it with my fingernail
that's a chip not a nick he says
the seat won't come out
okay it came with the puller
seat ring is pitted both sides
new seat please
seat gasket's torn
it tore when i took it out
does that count
seat gasket replace it anyway
both backup rings are brittle and one's chipped
o rings are okay i think
actually no the stem guide o ring's flattened
stem guide itself is good no wear
body's dirty
full of like black gunk
inlet threads are good outlet threads are good
how do you spell galled
is it still listening
hey are you on
go ahead and listen i'm ready
okay putting it back together
new seat and seat gasket
did i say the stem
new stem went in
nut's got blue thread locker on it
torqued the diaphragm nut to thirty foot pounds
no thirty five sorry
he says it should be thirty five
bonnet bolts to twenty five in two passes
packing nut hand tight plus a quarter turn
is that a torque
put supply on it
it goes up but not all the way
only goes about half
that's a fail i think
oh the tubing's kinked
fixed the kink and tried again
full stroke now
opens and closes fine at eighteen pounds
seat test at a hundred psi
there's some bubbles
like three bubbles a minute
is three okay
he says let it sit
waited five minutes
okay seat test passes then
shell test i didn't do the shell test
shell test good no leaks at the bonnet
packing's not leaking either
done with l c v two one two
did it save
job opened on papa victor three one five
three inch body
service is sour so masks stay close by
received on the bench eight fifteen
tag is wired to the yoke and matches the card
outside condition first
body paint is good no corrosion outside
yoke has a small crack at the left leg
take a picture of that crack
travel indicator is present and straight
handwheel turns free
adjusting screw is rusted but turns
top plug in the bonnet is missing
inlet flange face has two scratches
neither one crosses the gasket line
outlet flange face is clean
bolting is complete eight studs sixteen nuts
three of the nuts are rounded
breaking down the actuator
spring compression backed all the way off
spring is relaxed confirmed no load
upper housing's off now
six of the eight cap screws came out dry
two cap screws were galled
upper housing inside has light rust at the top
power diaphragm has a crease but no cut
diaphragm is set hard at the bead
i would call that hardened all around
diaphragm needed
diaphragm plate is flat and clean
diaphragm nut is intact
lower diaphragm is extruded on the inlet side slightly
lower housing is pitted in the o ring groove
pitting is minor
dressed the groove with emery
actuator spring free length is six and one eighth inches
spring has no cracks and no corrosion
spring is good and goes back in
stem connector is aligned
stem run out measured three thousandths
stem is straight
stem is lightly scored at the packing
stem polished and reused
packing is hardened and has taken a set
packing replaced full set
packing nut threads intact
bonnet lifted square
bonnet bolting measured and reused
bonnet gasket flattened replaced
cage drawn with the puller
cage bore is scored light on the outlet side
cage ports are clean
cage gasket pinched at one spot
cage o ring intact but swollen
plug face shows steam cutting
plug is steam cut across the face
lapping the plug to the seat
correction the plug was not lapped it was replaced
seat ring has an even line all around
seat lapped lightly to the new plug
seat gasket swapped for a new one
seat area checked with blue
seat area is smooth no erosion
stem guide has four thousandths clearance
guide is within limits
guide cleaned and reused
put a fresh o ring on the stem guide
two backup rings replaced
comm hole in the guide is open
vent hole blown clear
supply port thread is cross threaded
supply port repaired with a tap
signal port is intact
indicator spring is in place and strong
indicator gasket is new
all threads cleaned and greased
body inspected inside no washout no cracks
body cleaned in the tank
no damage found at the outlet
seat torqued to one hundred and ten foot pounds
bonnet studs in three passes
first pass twenty
second pass forty
last pass sixty five foot pounds
make that sixty foot pounds on the last pass
diaphragm nut fifty newton meters
ran the packing nut to seventy inch pounds even
lock nut set and thread locked
positioner mounted on the bracket
linkage adjusted to mid travel
bench set checked at three and fifteen
calibrated positioner at zero fifty and one hundred percent
stroke test three to fifteen pounds full travel
travel is one and one eighth inches
stroke time six seconds up seven seconds down
seat leak test at fifty pounds air
leak rate eight milliliters a minute
repeat the seat test
second run five milliliters a minute at fifty pounds
record that as the result
shell test at four fifty psi ten minutes
no leak at the body joint
packing test dry
actuator held twenty pounds for five minutes no drop
the seat torque you have wrong
one hundred and ten not one hundred and ten inch pounds
for the record the yoke crack was shown to the foreman
note yoke to be replaced at the next shutdown
next inspection twelve months from today
i'm at x v four oh seven out at the west pad
in a hurry it's gonna rain
two inch sandy as all get out
no signal on it right now
operator says it won't close
he's right it's passing
upstream's at six twenty
trying to block it in
upstream block's leaking by
calling for a lock on the header
header's shut in now
locked out and tagged
bleeding it off through the drain
drain's plugged up with sand
rodded the drain out
here she comes
h two s monitor went off
backing up wind
smell gas real strong by the bonnet
okay monitor's quiet
back on it
pulling the actuator
nope bolts are stuck
put penetrating oil on 'em
housing bolts broke off three of them
top diaphragm's fine
didn't pull the bottom diaphragm
whole cage is packed with sand
sand under the plug that's why it won't shut
cage washed out
seat's gone on the one side
like half of it's washed clean away
body's cut too right below the seat
body's cut pretty deep i'd say an eighth of an inch
might be body's done
stem's okay just dirty
packing's blowing sand
need a trim kit
put a trim kit on the list
order a body too just in case
no scratch the body
only order the trim kit
and get me six housing bolts
i've got a seat on the truck
using that seat
new seat new plug old cage for now
left the old cage in
blew the cage out with air
bonnet gasket good put it back
snugged the bonnet bolts down with a wrench no torque
i'll torque 'em when i come back
note bonnet bolts not torqued
tubing's rubbing on the yoke
tied the tubing back
supply regulator's set at thirty five bumped it to forty
gauge on the regulator's broke
bring a gauge next trip
opens and closes slow
nine seconds each way
pressure back on it
holding at six hundred
little bit of a hiss
it's seeping by but it'll do
call it about ten bubbles a minute at six hundred
snugged packing nut half a turn
quit weeping
fill her up and go
that's it for four oh seven
wait not done
forgot the strainer
strainer's full of sand too
dumped the strainer and put it back
now i'm done
back here next week thursday with the trim kit
next valve's just down the line
x v four oh eight
same size same everything
this one just needs a look
no leaks
breather's missing
close it up for me
what's left on four oh seven
remind me about the body bolts over there
p c v four ten
regulator's hunting
up and down five pounds
pilot's dirty i bet
pulled the pilot apart
pilot seat's got trash on it
pilot's diaphragm is okay
filter's plugged cleaned the filter
pilot spring's rusty
orifice was froze off with ice
put methanol to it
running steady now at one twenty five
reset it to one twenty
adjusting screw lock nut was loose tightened it
all done with four ten
starting to sprinkle
mud up to my ankles out here
truck's stuck but the valve's fine
wind's blowing so hard i can't hear it hiss
did you get four ten
read back the pressures
no six twenty upstream not six twelve
it's ninety five downstream
photo of that plug before i toss it
yeah got the picture of it
tossed the plug in the truck bed
alright back at it after dinner
h v two two six alpha
hand valve with a wheel on it
it's been painted over about six times
handwheel won't budge
put a cheater on the handwheel and it moved
handwheel's bent now
oh well it was bent before
stem's seized in the bonnet
no i take that back it's the packing that's got ahold of it
packing's hard as rock
stem's coming but it drags
yoke nut's stripped out
yoke nut threads are gone
shaved brass all over
yoke bushing needs a new one
pulled the packing out with a hook
five rings of packing in there
the bottom ring's burnt
top rings just dried out
repacked it with six rings
stem's rusted where the packing sat
cleaned it with emery cloth
pitting on the stem but i'm gonna run it
bonnet flange is good
bonnet gasket's leaking on the left side
been leaking a long time there's rust run down the body
body's rusty on the outside below the bonnet
bonnet studs are wasted
studs are corroded down to nothing
all eight studs need replaced
got eight studs in the drawer
new studs and nuts
plug's rattling around on there
disc nut was backed off
tightened the disc nut and staked it
disc is scored a little bit
lapped the disc
cleaned up nice
seat's threaded in and i ain't touching it
flange face is nicked on the inlet side
filed it down
flange bolts reused
torqued flange bolts to a hundred and forty five foot pounds
took three passes to get there
thirty six to forty foot pounds on the bonnet
packing gland's just snug
grease in the zerk till it come out
yoke greased too
she turns with one hand now
full travel twelve turns
put two hundred pounds under the seat
left it sit twenty minutes
never moved a needle
okay that's a wrap on two two six alpha
hold on i said six rings it was five
five rings of packing correct
yeah five went back in
do you have that
gimme the list
forget the travel
i don't know the travel leave it out
you know what i never did tag that one
hung a new tag on it
note tag was unreadable made a new one
next one up is two two six bravo
same valve other side
he'll do this one
let the boy do it
this handle's missing altogether
no handwheel on bravo
stem's good on this one
packing's been leaking bad
ran the packing nut down two turns
it's bottomed out
packing's shot needs new packing
put six rings in
it only took five
gasket's fine no leaks at the bonnet
leave the bonnet alone
didn't open the bonnet on this one
seat's leaking by
two hundred pounds and it's blowing through
opened her up and blew her out
pull it for the shop
tagged out for the shop
it's not going back in service
bravo stays out
get me a spare two inch
put it on the order a two inch valve complete
remind me to tell the foreman
check on this monday
no make that tuesday
and close out bravo
my back's killing me
thirty years of these things
that's a lot of stems
you ever seen one that bad
wasn't me that put that in there
somebody used a pipe wrench on that stem
chewed it up good
the stem i mean
stem's chewed up on the top end
put that in there
okay um t v one one four delta
this is the temperature valve on the heater
one and a half inch i think
let me look at the plate
it says one inch
one inch air to open
it's hot don't touch it
he said to wait till it's under a hundred degrees
it's at one sixty now
okay ninety five degrees
locks are on i checked both
my lock and the operator's lock
vented it at the bleed
nothing coming out
is it really zero
cracked the union and no gas
okay taking the tubing off
signal tubing's got a flat spot
someone stepped on it i think
tubing's flattened near the positioner
kinked not flattened
replace that piece of tubing
fitting on the positioner's stripped
fitting's cross threaded on there
put on a new fitting
positioner cover's cracked
positioner's gauge on the left is fogged up
gauge reads two pounds with nothing on it
gauge is off replace it
got the actuator loose
do i unscrew the connector first
stem connector's two halves
connector bolts are rusty
one bolt's sheared off
is this top or bottom
it's the upper diaphragm
there's a tear in it about an inch long
the tear's on the right
where's it torn from
looks like it got pinched when they put it together
pinched and torn
new upper diaphragm goes in
he wants to see the spring
spring's got rust but no cracks
cleaned the spring and reused it
bonnet's coming up
there's scale all over the plug
white crusty stuff
plug's fouled with scale
scale in the cage too
soaked the cage and plug in acid
how long do they soak
twenty minutes he says
came out clean
plug's pitted under the scale
just a few pits
cage is good underneath
seat's got a burn mark
seat isn't burnt it's just stained
okay seat's good
lower stem guide's worn
guide's egg shaped
wear on the inlet side of the guide
i need a new guide
do we have one of those
no guide in stock
put guide on the list
reused the guide for now he said
we'll be back for it
that's the bonnet gasket the seat gasket and the cage gasket
cage o ring's new as well
o ring wouldn't stay in the groove
greased it and it stayed
lined up the cage with the window to the outlet
the plug's in
nuts on finger tight
torqued in a star
forty foot pounds final
put packing in three rings
packing nut one hundred inch pounds
that's a lot isn't it
he backed it off to eighty
eighty inch pounds then
stem moves free
hooked up the air
stroke test at three pounds starts to move
fifteen pounds it's all the way open
opens at three and full at fifteen
travel is five eighths
calibrated the positioner with him
needed to move the zero
span was good zero was off
eighty pounds of air
bubbles in the jar
counted twelve in a minute
that's twelve bubbles a minute at eighty pounds
does that pass
he says log it
did the soap on the bonnet
no leak at the packing at eighty
so we're done
how do i close it
and remind us the guide's on order
guide goes in next trip
what's the date next trip
three weeks from friday
note that the guide has to be changed in three weeks
second valve on the bench is foxtrot victor two eight
foxtrot victor two eight bravo to be exact
came in with the customer's complaint leaks across the seat
incoming seat test first
as found at forty five psi
leak rate as found over a hundred cc a minute
flow is audible
as found the valve fails the seat leak test
as found stroke is good
as found travel one and a half inches
as found packing is tight
solenoid tested energizes and drops out
solenoid cleaned and refitted
breather on the actuator is painted shut
body bolts loosened in a cross
breakaway was about eighty foot pounds
body bolts are stretched
twelve body bolts needed
two eye bolts one of them bent
disassembled the actuator on the stand
actuator spring pack is four springs
one of the four springs is broken
spring set needed
upper diaphragm intact
balance diaphragm is holed near the bolt circle
hole measures about an eighth
cleaned up the upper housing
lower housing has corrosion at the bottom
painted the housing inside and out
diaphragm plate is bent at the edge
checked flat to ten thousandths
diaphragm nut lightly greased and installed
stem has galling at the lower end
stem threads are damaged
stem discarded new one fitted
new stem length four hundred and twelve millimeters
plug is pinned to the stem
pin replaced
plug is worn on one side
side loading i'd say
worn plug goes with the worn guide
guide worn one side badly
cage is galled inside and scored top to bottom
one cage to order
cage came from stores after all
cancel the order for the cage
new cage fitted
cage gasket replaced two off
seat has a radial crack
crack runs out from the center on the right
seat replaced and torqued two hundred newton meters
seat gasket and bonnet gasket new
seal kit fitted complete
one packing kit used
trim is new throughout
flange faces dressed
flange raised face is pitted light at the bottom
left as is
body is sound
no thinning in the body
wall measured at the bottom point six two inches
wall at the inlet point seven one
wall at the outlet point six eight
make the outlet point five eight
body bolts replaced twelve and greased
body bolts torqued to ninety five foot pounds
bonnet to eighty
packing nut one twenty five inch pounds
indicator set to zero
positioner linkage has play
linkage tight
controller not supplied with the valve
handwheel not fitted on this one
strainer not fitted
signal fifteen psi stem travel one point four eight
travel one and a half within limits
hysteresis is small
full stroke eleven seconds
seat leak as left at forty five psi
no bubbles in ten minutes
hydro shell eleven twenty five psi
held fifteen minutes no drop
packing tested at eleven twenty five no seep
housing soaped at thirty psi no bubbles
sign off two eight bravo
cage gasket count was one not two
right that's one cage gasket
anything outstanding
body bolts yes logged
note customer wants the scrap cage back
next overhaul in twenty four months
make a remark that the complaint was confirmed
for the record serial plate was cleaned and read
stop listening while i eat
okay unmute
okay at the compressor station
s d v nine oh two
shutdown valve on the suction
four inch ball valve
ball's scored i can tell you that now
customer says it won't seal
one minute getting my lock
somebody pulled the lock off
put a lock on it before anybody dies
still not isolated
can't close the discharge block it's broke
tell the operator
he's got it blocked at the manifold
bleeding
bleeding real slow
line's plugged with ice
thawed it with hot water
three hundred on the gauge
down to sixty
trapped pressure in the body
between the seats it's got sixty in there
opened the body bleed
body bleed's plugged
worked the valve a hair and it let go
spring's in a can so don't open it
spring's still loaded up
actuator's still got the spring loaded
careful there
backed the spring off
hydraulic oil all over the ground
oil spilled about a quart
put down pads for the spill
oil was low too that's why
oil's black
oil's black and burnt
put two quarts in
topped it off
limit switch is broke off
solenoid's not picking up
swapped the solenoid
coil's burnt up i could smell it
power's back and it clicks
ball's scratched across the face
upstream seat's cut and downstream seat's good
both seats are shot
no just the upstream
just change the upstream one
new seat o ring
stem seals leaking
stem seal's cut
body bolts are tight
greased the body fittings
put six shots of grease in each one
flushed the seat with grease
body drained about a cup of water
water in the bottom
body's rusty at the bottom
flange gasket's blowing
flange is leaking at the bottom
flange studs need retorqued
ran 'em to two ten foot pounds
quit leaking
forty pounds on the cylinder
doesn't go all the way
only about seventy percent open
linkage is hitting the frame
linkage was bent beat it straight
four seconds to close
one thousand psi upstream
downstream's open to atmosphere
dead tight holding
nobody's touching it now
took my lock off
two pictures of that linkage please
what did i skip
shell test skip it
can't do a shell out here
no leak nowhere
next time bring seat seals
next time's in six months
put down october first
operator wants it done before winter
b d v nine oh three right next to it
no block on this
leaving it alone then
not touching this one today
just greased it and looked it over
outside looks okay
small seep at the stem
put a note on it seep at the stem watch it
it's a hundred degrees in this building
can't hear nothing with that compressor
did you hear that
i said fail open
yeah blowdown
not nine thirty nine oh three
back on the dump valves
this one's dumping oil and water both
float's full of water
linkage is worn out on the pin
pin's about sawed in half
put a bolt in it for now
pilot's weeping
gas coming out of the vent on the pilot
that's the pilot seat
changed the pilot seat and the ball
pilot holds now
the orifice is plugged with paraffin
paraffin all over the inside
steamed it out
paraffin in the cage so bad you can't see the ports
dug the paraffin out
it's cleaned up
body washed out with diesel too
but the body's washed out on the bottom
washed out as in eat away
about half through
she's got one more run in her
reckon the body will go another year
tell 'em they need a new body
seat's full of paraffin but it's good
plug's good too
o rings are swelled from the condensate
o rings won't go back in the groove
put the good rubber in there
changed all the o rings
stem guide's gummed up
cleaned the guide with solvent
polished the stem
diaphragm's soaked with oil
top diaphragm got oil on it and swelled
the oil came past the o ring
changed the top diaphragm
breather had a bug in it
mud dauber's in the breather again
every year with them daubers
gas supply regulator's froze
hung a heater on it
supply's at thirty
call it thirty
snap it open
snap acting so no in between
no flow on the downstream
check it at seventy five pounds
fifty two's next
nothing wrong with fifty two
sight glass is clean
level's steady
didn't open it up
oh it has a weep at the bonnet
bonnet's weeping on the back side
snugged the bonnet bolts up
twenty five pounds on 'em
out of there
somebody already had this one apart
left the cage out
how's it been running with no cage
well that's a new one
put in my spare cage
cage and the two gaskets
whoever did it cross threaded the packing nut
reused the packing
don't see any other damage
look at that plug
plug's beat to death
plug's beat up from slapping
body's dinged up inside
inside of the body's dented
seat's alright if you can believe it
stroked it five times
no hangup
hundred pounds tight
that's fifty three
no wait i did the plug and the cage you got both
what's left today
fifty four and fifty five
might do 'em tomorrow
remind me fifty four needs a float
we'll come back the second week of june
or whenever the float comes in
scratch the reminder float's on the truck
good morning you there
let's start with juliet victor one seven
tag says juliet victor seventeen but the drawing says eighteen
correction it's juliet victor one eight
four inch fail open cooling water
been in the river water ten years
smells like the river too
isolated at both gate valves
inlet gate don't hold
inlet gate valve's leaking through we can't isolate it
closed the next one upstream
now it's isolated
chained and locked it
popped the drain plug
drain plug's rusted in
drilled the plug out and put in a valve
drained about a bucket
pulled her out of the line with the chain fall
about pinched my hand
smashed my thumb real good
cut my hand on that flange
it's just a scratch i'll live
put down i cut my hand
first aid on it
okay back to work
outside's nothing but rust
flange bolts all corroded
bottom bolts worse than the top
four flange bolts broke coming out
mussels inside the body
packed with mud and shells
plug won't turn at all
whole trim's froze up solid
beat it out with a block of wood
trim's all corroded
cage is plugged with shells
half the cage holes are stopped up
rodded the cage holes one at a time
cage is eaten up on the left
i believe the cage is done for
seat's corroded on the face
seat's got a chunk missing
chunk's broke out of the seat at the top
bonnet's thin
wall's thin in the bonnet could be bad
might wanna check the bonnet
gasket came apart in pieces
bonnet gasket came out in chunks
no gasket on the cage that i could find
cage gasket's missing on this one
stem's alright it's stainless
not a mark on the stem
plug's stainless too it's dirty is all
upper diaphragm's hard and cracked
cracked clear through at the bead
plate's rusted to the diaphragm
had to chisel the plate off
diaphragm plate's ruined
and the nut's rounded off
got it with the big pipe wrench
spring's rusted bad
spring's got two coils rusted together
lower housing has a hole rusted through it
rust hole in the lower housing about like a dime
travel indicator's rusted off
just a stub left of the indicator
vent plug's rusted over
that's about everything
this valve's junk
not worth fixing
whole valve needs replaced
i'd scrap it
put it down scrap the valve
order a new four inch
somebody tell the boss it's scrap
he said fix it
alright he wants it rebuilt
scratch the order on the valve
order a cage a seat and both housings
and two diaphragms and a plate
and a spring
and a gasket set
bolting too sixteen of 'em
that's a long list
read me the list
add a travel indicator
take the spring back off i got one
spring's in stock
setting it aside till parts come
don't close one eight
what's one eight waiting on
note parts two to three weeks
remind me in two weeks to call on the cage
is this the right valve
says m o v six oh three echo on the tag
it's got a motor on it
he said do it anyway
motor operated valve six inch
breaker's off and locked
i tried the start button nothing happened
line pressure one seventy five
he's closing the block
it won't close all the way he says
not isolated yet
opened the bleed slow
gauge quit moving at fifteen
there's fifteen pounds left on it
pressure's not going away
it's building back up
something's leaking through
back up to thirty
he tightened the block another turn
now it's at zero
okay zero for five minutes
is zero good
starting on the outside
handwheel's there
handwheel is loose on the shaft
set screw was missing
put a set screw in it and locked it
oil level is low in the gearbox
you can't see it in the glass
oil's milky so there's water in it
it took a quart and a half
filled it back to the plug
the yoke's got a chip on the corner
stem cover's dented
greased the stem top to bottom
stem nut is worn
stem nut's brass is worn sharp
i think the nut needs changed
he looked and says not yet
not replacing the stem nut
packing gland is crooked
gland's misaligned
one gland bolt's longer than the other
evened up the gland bolts
the packing's leaking water
like six drops a minute
tightened the gland one flat each side
now it's two drops
do i leave it there
bonnet's dry
bonnet bolting's good nothing loose
i checked every bolt with the wrench
two bolts moved
snugged those two
they were at like fifty
what's the torque supposed to be
did all eight at sixty five
flanges are good
outlet flange has a drip
outlet flange gasket's leaking just barely
tightened the bolts on that flange
needs a flange gasket
order a six inch gasket
do i write raised face
put the pressure back
stand clear he says
one seventy five upstream
downstream drain's dripping
i get nine drops in a minute
let me recount
eleven drops a minute at one seventy five
how much can it leak
he cycled it twice
i watched for ten whole minutes
mark it no leak
stroke it with the motor
forty one seconds open
forty three to close sorry
breaker back on
his lock's off too
finished with six oh three echo
oh wait the flange gasket
put the gasket on the order
did you put that
and note the flange still drips
okay next is the same thing on the other pump
six oh four echo
make that six oh four foxtrot
no he says echo
six oh four echo then
nothing wrong that i see
stem's greased already
what does linkage mean does this have one
no linkage on this
ran it open and shut forty seconds
new job please
tag kilo victor eight eight zero charlie
size three quarter inch
it's a back pressure regulator
came in tagged sticks open
customer's tag reads set eighty five pounds
as found set point is ninety three
as found it lifts at ninety three and reseats at seventy
i'd call that sticking
adjusting screw out counted fourteen turns
adjusting screw lock nut is rounded on two flats
cap is dented on top
spring housing is clean inside
vent hole is partly plugged with paint
cleared the vent hole
spring has a rub mark on the side
spring length two and three sixteenths
spring within a sixteenth of new
diaphragm is pinched between the plate and the housing
the pinch is on the outlet side
diaphragm not torn
diaphragm has a set in it
diaphragm plate has a burr on it
burr removed
nut under the plate was loose
nut tightened with thread locker
stem dragging in the guide
guide fouled with varnish
cleaned with solvent and a brush
stem moves free after cleaning
stem is straight within two thousandths
seat is nicked
nick is on the inside edge
one nick not two
seat turned over
plug has a ring worn in it
o ring on the plug has hardened
body gasket is flattened
strainer screen is torn
no strainer screen in stock
order a strainer screen
bring the screen thirty mesh
strainer body is fine
inlet threads have old tape in them
picked the tape out
inlet threads chased and intact
outlet threads stripped two threads deep
outlet threads repaired with an insert
gauge port is plugged with tape
gauge reads four low
tubing supplied with it is kinked
body bolting torqued twelve foot pounds
nut torque fifteen
change that to eighteen on the nut
set point adjusted to eighty five
opens at eighty five
reseats at eighty one
eighty two on the second try
repeats within a pound
lock nut tightened
seat test seventy pounds no bubbles
diaphragm soaped no leak
packing does not apply
stroke is free
set tag hung
photo of the set tag
that one's complete
close eight eight zero charlie
list what's outstanding
the screen is still on order
yes leave the screen open
remark strainer screen to follow by mail
next valve is the twin
kilo victor eight eight one charlie
came in tagged leaks
as found drips at the bonnet
gasket is cut at the edge
cut gasket was from a burr on the body
burr dressed off
diaphragm intact and soft
seat and plug are both clean
no wear found anywhere
gasket replaced only
bolts back in twelve pounds
set point left at eighty five
closing this one
swap the notes between those two
no leave the notes as they are
rolling up on p v seventy one
truck's parked upwind
operator's not here
no permit yet
got the permit
twelve inch line three inch valve
flow's running around sixty percent
it's at sixty two percent open
signal's eleven milliamps i ain't got that in psi
signal's nine and a half psi
upstream four hundred downstream two fifteen
downstream's jumping around
swinging ten pounds
positioner's leaking air
blowing air at the relay
drained the water out of the filter
filter's been froze
filter bowl's cracked
bring a filter bowl
supply gauge pegged at sixty
supply's really about twenty two
gauge came off and i plugged it
signal gauge is okay
feedback linkage is loose
pin fell out of the linkage
put in a cotter
stem connector's slipping
stem connector bolts loose
tightened 'em both
indicator's way off
set the indicator back on fifty
moved the indicator to match
bug guts and grease
packing's leaking gas
smell that
gas out the packing
got gas at the bonnet too
bonnet joint's leaking outlet side
alarm's going
ten percent l e l
back off now
shut it down
blocked her in
blew down to the flare
bled off
went to the truck for packing
packing's flat and extruded
got ninety inch pounds on the packing nut
retorqued the bonnet
bonnet bolts up to seventy foot pounds
meter's reading zero
stroke with the hand station
fifty percent fifty percent
hundred percent a hundred
full travel two inches
one and seven eighths actually
four hundred on the inlet
no leaks with the sniffer
leaves good
thirty two percent now and steady
downstream's two fifteen and holding
p v seventy one's done
log what i need
that's all i need
come back the fifteenth with the bowl
might be the sixteenth
going to seventy two
this one's the bypass
shut and should stay shut
line's cold so it's tight
touch of frost on the body
frost on the body means it's blowing by
reckon it's leaking through
put the ultrasonic on it
pull it next shutdown
note to pull seventy two at the shutdown
greased what i could
drain was iced
ice in the breather too
knocked the ice off
it's frozen over on top
tubing's iced to the yoke
works fine thawed
leave it be
no more today
maybe one more
how many have i got open
seventeen minutes i'm not staying out here
night shift on the shop floor
this one's c v two hundred
c v two zero zero charlie
rush job
they want it by six in the morning
sour gas so smell it before you open it
purged with nitrogen
bagged the gaskets
gas meter says nothing
h two s zero
okay split her
body bolts took all i had
one of 'em twisted off
twisted off in the body
drilled and tapped it
tap broke off
well that's just great
burned the tap out
body threads retapped
threads in the body good again
put a thread insert in it
no we went with bigger bolts instead
bolts are five eighths now
plug's fell off the stem
stem's broke at the plug
snapped right at the thread
that'd be why it won't close
broken stem write that down first
plug's laying in the cage
plug's dinged from bouncing
hammered plug and hammered seat
seat's mushroomed
seat's beat flat all the way around
guide's broke at the end
broke two tabs off the guide
cage ain't bad
cage has a ding up top
stem guide needs to be changed out
threw the stem in the bucket
gonna use the stem off the shelf
shelf stem's the right one
new stem and plug
pinned 'em together
drove the pin in
seat ring's in
seat ring's got a new gasket under it
torque on that seat a hundred and eighty
a hundred and eighty foot pounds that is
o rings and backup rings all new
twelve o rings in the kit
used the whole kit
kit was short one backup ring
missing a backup ring in the kit
stole one from another kit
got the spring in the press
spring in the press watch out
spring jumped
spring slipped out of the press
that spring let go and nobody got hurt
spring's bent now
scrap that spring
grabbed another spring
spring's in and captured
diaphragm nut's got red on it
thread locked it good
forty newton meters
all sixteen bolts
twelve foot pounds on those little ones
packing's five rings with a lantern
lantern ring's worn
used the old lantern
packing nut just past snug
indicator's on straight
ready for the bench
bench test
clamped up
stroke at six psi starts
jerky about half way
it hangs up at half
put some lube on it
didn't hang this time
six hundred on the seat
seat's leaking on the bench
let it down
seat gasket was pinched
another seat gasket
put it back on the bench
five minutes zero
shell at nine hundred
shell's dripping at the plug in the body
tightened the body plug
packing at nine hundred no leak
air test on the top
top's got a leak at a bolt
one bolt was loose
snugged it and gone
that's passed then
note it's bagged and tagged
truck's here
next one's tomorrow's
you got f v one two three open
close f v one two three first
okay open f v one two four
they're brothers
one two four's got the worse luck
froze last winter and split
body's got a split in it
split down the left side of the body
water was laying in the bottom
cracked body no fixing that
new body needed
body's broke but the rest is good
using the trim out of it in a new body
trim's going in the other body
seat came out easy
the seat's clean
nothing scored nothing worn
threads on the old body is no matter
threw out the body
body in the scrap
new body's on the bench
checked the new body over
new body has a ding on the flange
light ding won't hurt
seat area's smooth
put the seat in it
dropped the cage on it
cage gasket went in backwards
took it out turned it around
plug and stem went in
bonnet off the old body
bonnet had a little crack starting
starting to crack at the bolt hole
no that's a casting mark
it's not a crack
bonnet gasket new one
bonnet bolts old ones
stretched 'em to fifty
the actuator's from the old one
never took the actuator apart
didn't open the actuator up
didn't check the diaphragms
just soaped it
soap says no leak
ran new tubing from the supply
fittings are new too
check for kinks
no no the regulator's the old one
old regulator cleaned up
set at twenty five
controller's got a crack in the cover
cover's cracked but it works
calibrated it zero and span
good on the bench
shell test on a new body twice
first shell test failed
leaked at the bottom of the bonnet
bonnet was cocked
bonnet was crooked reset it
reset the bonnet and torqued again
second time around it passed
four hundred and fifty for fifteen minutes
four seventy five i mean
seat test two hundred pounds
about three drops a minute now
lapped it right there on the bench
tight as a drum
stroked ten times
get her out of here
mark that done
that's one two four
what about one two three's packing
packing on one two three is still on the list
change the packing next time we go
put a reminder on one two three
next visit's the tenth
say the tenth of november
is that a monday
tell me if it's a weekend
you got a pen
can't find my pencil so i'm telling you
okay it's me again
he went home so i have the last one
it's n v forty one
november victor four one
half inch needle valve
the stem's bent
how bent it's like visibly bent
bent just above the packing
packing nut's cracked
crack goes halfway around the nut
packing nut cracked from over tightening i guess
packing nut has to be replaced
threads under the nut are okay
threads aren't stripped
took it to the vise
stem came out crooked
stem's chewed where it was gripped
new stem's in hand
packing's just string
string packing was all dried up
pulled all of it
put in four turns of string
seat's got a groove from the needle
needle's tip is broken
is the needle the plug
plug's broke at the tip then
the seat's gouged where the tip was
he'll have to lap it
can you lap a needle seat
i'll leave the seat for him
body's got tape on the threads
inlet threads full of tape
cleaned the tape off inlet threads
outlet thread damage i can't fix
ordering a whole valve
put a half inch needle valve on the list
make it three just in case
scratch all that about the stem
not the order the stem
the stem wasn't replaced
okay so stem's bent needs replaced and the valve's on order
is that right
no the packing was removed not replaced
close it for tonight
what's the list for tomorrow
what's missing on l c v two one two
i thought that was closed
reopen it
add photo of the plug
what time did i start
i don't know how to turn it off
do i say stop
one more thing
did you get the three needle valves
write that i left the bench clean
note bench is clean and the vise is locked
turn the air off he said
air's off
compressor's still running
bled the shop air down
shop gauge is zero
take a picture of the tag on forty one
that one's blurry take it again
anything else due this week
when's the next visit to the heater
okay so friday
make that saturday he has the truck friday
remind him too
can you remind him at seven
tell me what i logged for the stem guide
it's called stem guide not steam guide
stem s t e m
forget it
just log it as the guide
how many open jobs
five open
that's a lot
close all of them
no don't close all of them
okay good night
good deal on c v nine oh
opened job charlie victor nine zero
two inch with a three inch actuator
shut down by operations at seven
check the lock
depressured to flare
line gauge at zero both sides
no flow at the vent
confirmed dead
draining to the bucket
condensate about half a gallon
small spill under the drain
spill's contained in the tray
disconnect the air
the linkage off the positioner
positioner bracket is loose at the yoke
two bracket bolts loose
tightened to ten foot pounds
removed the positioner
positioner mounting is intact
positioner cam worn on the edge
cam's a part i don't stock
actuator spring compression released
upper diaphragm bubble on the left
blister in the diaphragm
delaminated i'd call it
torn from the inside
cloth's showing at the center
replaced upper diaphragm
lower diaphragm flattened at the bead
flattened but sealing
reuse that one
no replace it it's twelve years old
diaphragm nut backed off three turns on its own
cleaned and threadlocked
torque thirty eight foot pounds
make it thirty two
plate's corroded on the under side
wire brushed and painted
spring's surface rust
upper housing dented on the right
dent won't affect it
three loose bolts in the lower housing
bonnet bolts uneven
one at ten and one at fifty
bonnet gasket blown on the outlet side
gasket's blown out between two bolts
found where it was leaking
bonnet face has a wire drawn line across it
body face the same
faced both on the plate
cleaned up at five thousandths
packing weeping before
packing removed hard
follower polished
packing box clean
box corroded lightly at the bottom
lantern ring okay
stem scored at the packing line
depth of the score is about three thousandths
stem connector threads good
cage hot and dry galling at the top
cage gasket flattened and hard
replaced with the seat gasket
plug lower face eroded outlet side
plug is eroded i estimate forty thousandths
plug turned in the lathe
turned to clean up at thirty
seat eroded on the opposite side of the plug
seat torque one fifty
guide bushing loose in the bonnet
guide bushing pressed out
new guide pressed in
guide bore is four twenty thousandths
stem guide o ring fits
body interior shows erosion at the outlet throat
erosion depth less than a sixteenth
monitor the body
body not replaced
reassembled and marked
bonnet studs lubed
first pass thirty second pass sixty last pass ninety
last pass was eighty five
packing nut finger tight plus one flat
bench set nine to thirty
thirty pounds full open nine pounds lift off
hysteresis three percent
travel at full signal is one point five two inches
travel indicator reset
stroke test is good
stroke time five seconds open six and a half closed
seat leak at fifty psi with air
fourteen bubbles a minute
three minute average
record fourteen at fifty
shell at seven forty for ten minutes
shell test is a pass
packing test result pass
actuator soaped at thirty five
one bubble at a cap screw
cap screw retightened
actuator passes the second time
lock removed
operations notified
back in service at two ten
watched it thirty minutes in control
no leaks under line pressure
running forty percent
upstream three eighty downstream one forty
temperature one hundred eighteen fahrenheit
complete except the cam
keep the cam as an open item
close out charlie victor nine zero
remark positioner cam on order four weeks
next visit april second for the cam
next full rebuild in three years
was the nut torque taken as thirty two
good that is correct
what is missing from the record
spring length was not taken
leave spring length blank
no leave it i have it on paper seven and a quarter inches
howdy let's go again
kid's got the day off so it's me
l c v one nine
lima charlie victor nineteen out behind the tank battery
one inch pressure to open dirty service
see it's stuck open
tank's running over
got a spill here about two barrels
call it in
shut the wing valve
wing valve holds thank god
let the pressure off through the sample cock
sample cock's stopped up
went in through the gauge port
gauge port spit some oil and quit
nothing left in there
pop the top
top diaphragm's wet
oil up top means the lower one's busted
lower diaphragm's split
split about two inches long on the inlet side
tore from the center hole
bottom one's tore bad
top one i can save
save the top diaphragm
nah change it too
while i'm in here i'm changing both
cleaned stem and guide
piece of welding rod in the cage
welding rod under the plug
there's your trouble
trash under the plug held it open
plug's got a dent from the rod
plug's dented on the left edge
seat's dented the same place
seat won't flip both sides is bad
threw in a seat
threw in a plug
cage gasket's okay been changed lately
bonnet gasket's okay too
i'm gonna reuse them gaskets
one o ring's nicked
which one the cage o ring
got a new one on there
bolts fine
lost a bolt in the mud
short one bonnet bolt
never mind found the bolt
eight bolts all there
twenty eight pounds on each
air to her
wing valve's open
line's at fifty five
no drip at the dump
watch the level
level's coming down
dumped twice and shut tight both times
that'll do
put down for the seat test it held at fifty five
stroke good too
note the welder left a rod in the line
and they need a strainer ahead of this
put a strainer on the order
one inch y strainer
reckon that's it
go back and see it next month
say the fifth
make it the sixth of next month
hey what was the spill
two barrels yeah
they'll clean it up
back pressure on the treater
it's humming
chattering bad
plug's chattering on the seat
been chattering so long it wore the stem
pilot line's got a leak at the ferrule
ferrule's loose
snug the ferrule
ferrule's tight now
pilot filter's packed
filter's dirty put in an element
treater's at thirty eight pounds
set it at forty
she's swinging thirty five to forty five
broke it down
i can't bleed it it's the treater
treater has to be off
they shut the treater in
treater's bled
fire's out on the treater
fire tube was lit somebody light
burner's out and gas is off
flame was out the stack a minute ago
had a little fire at the burner box
fire's out used one extinguisher
write that up
there was a fire
anybody hurt no
stem's wore where it goes through the guide
guide's wallered out
wear in the guide all around
new guide and stem
plug's got a bright ring
plug's worn even
seat's peened over
seat has a rolled edge
dressed the seat's edge with a stone
seat lapped to the plug
pilot diaphragm's wrinkled
leaks at the edge where it clamps
two screws were loose on the pilot
screws tightened still leaks
replaced that pilot diaphragm
upper diaphragm on the main is okay
main spring's okay
main bonnet gasket's changed
housing looks like new
indicator stuck down
indicator's stuck with paint
scraped the paint off
indicator spring's still got life
indicator gasket's been sealed with silicone
whoever put silicone on that gasket
scraped out the silicone put in a gasket
coming up on pressure
holds forty on the nose
quiet as a mouse
soap on the pilot
no bubbles on the pilot
one bubble at the breather
breather's breathing that's all
nope breather's okay
good job close it
thirty three's finished
add a note for the treater man about his fire tube
and look at it again fourteen days
two weeks same thing
next customer's valve
golf victor one zero zero
gate valve two inch
handwheel spokes cracked
two spokes cracked of five
handwheel cracked is enough
yoke sleeve is worn
yoke bearings dry
greased the yoke bearings
yoke bolts were loose
yoke bolts torqued to twenty newton meters
make that twenty two
gland follower cocked
gland packing extruded on the outlet side
gland nuts rusted
gland studs are rusted but sound
packing removed seven rings
stuffing box scratched
light scratch in the box one o'clock
stem is bent at the top end
straightened in the press to five thousandths
stem polished and greased
gate has a groove across the face
gate scored both faces
gate faces lapped by hand
both seat rings lapped
seat rings not removed
seats show blue contact all around
body gasket crushed
bonnet gasket replaced spiral wound
bonnet flange checked flat
bonnet bolts eight of eight inspected
one bolt necked down
bolts torqued to fifty five foot pounds star pattern
body drain plug seized
drain plug left in
drain plug is not leaking leave it
body outside painted
inlet flange corroded edge only
outlet flange raised face scratched across
scratch dressed out
tag wired back on
seat test each side sixty psi air
inlet side no bubbles
outlet side two bubbles a minute
outlet side no bubbles on repeat
both sides pass
shell at four twenty five psi water
no drop in ten minutes
packing at four twenty five
packing weeps at the first minute
gland tightened a sixth of a turn
full open in fourteen turns
hand force is light
job complete
correct the shell pressure to four hundred fifty
read the shell again
finish golf victor one hundred
no note on this one
next service one year
e s d v twelve
just a stroke test partial
partial stroke on the e s d
got permission
open to ninety and back
ninety percent and back to a hundred
took three seconds
timer says two point eight
point eight on top of two yeah
solenoid dropped out right away
solenoid picked up
no leaks at the cylinder
hair of air at a fitting
fitting's hissing
redid that fitting with new tape
hiss is gone
breather's got a nest
nest out of it
indicator's faded
can't read the indicator
put a new indicator on the list
accumulator's at ninety five
ninety five pounds
eleven minutes start to finish
solenoid's not dropping out
power off and it's still up
stuck solenoid
tapped it and it dropped
have to change that solenoid
this is a safety valve so tell 'em right now
told the control room
bypass tagged
solenoid by tomorrow
come back tomorrow first thing
leave thirteen open
don't let me close it without the solenoid
cap's missing
lead seal is broke
seal's busted somebody was in there
lever's bent
tag says one fifty
sniffed the outlet
gas out the outlet
it's simmering
pressure's one thirty eight
shouldn't be open at that
seat's wire cut i'd bet
can't isolate under it
no block under the relief
have to shut the vessel
put on the shutdown list
note relief six simmering seal broken
closed the lid on that
outlet's a hundred and forty eight
supposed to be one thirty
controller's set wrong
turned the controller back down to one thirty
bulb's kinked
capillary's pinched under the clamp
pinched the capillary pretty bad
bring a bulb and capillary
running by hand till then
handwheel at forty percent
steam leaking at the packing
steam cut packing
gland down a flat
hot got my arm
burned my arm a little
put that down burn on the arm
it's red no blister
f c v twenty
flow control two inch
strainer's caved in
strainer basket's torn
rag in the strainer
pulled out a rag
basket's no good ran without it
no basket in there now
no need to open it
flow came right up
fifty five gallons
where's my flashlight
beer thirty
running late again
left my wrench on the tank again
that valve's got more miles than my truck
dispatch says there's another one
nope tomorrow
okay um can i start a new one
it's l v seven seven zulu
like zebra but zulu
lima victor seven seven zulu
severe service he wrote
gas detector's on me
bump tested it
both blocks closed
this lock's mine this one's his
opened the vent valve
waited till it stopped
he says crack the bonnet slow
little puff and that's it
is a little puff okay
he said that's normal
write down it still had a puff
bonnet bolts out all six
six came easy
one has a washer missing
never mind the washer
bonnet's nice and clean underneath
bonnet gasket is torn where it stuck
cleaned both faces with the scraper
don't gouge it he says
i gouged it a little
small gouge on the body face
body's scratched from me
dressed it with the stone
can't feel it anymore
plug and stem came with it
plug has like a bite out of it
chipped at the bottom
stem has a nick halfway
is halfway the center
center of the stem then
the guide lets the stem wiggle
wiggle means worn
kind of worn i'd say medium
cage is down in there
can't get a hold of it
cage stuck in the body
cage has a crack
hairline by a window
oh that's bad right
replace the cage he says
cage gasket's gone like not there
no gasket under the cage at all
write missing cage gasket
seat looks okay from the top
bottom of the seat's eroded
so flip it or not
don't flip replace
new seat is a different color
he says that's the hard one
okay hard seat in
seat gasket on
pressure closes so spring's under
where's the spring
spring's under the diaphragm
back the bolts off even
last two bolts are long
long bolts let the spring down
spring's all the way down
spring's fine no rust
diaphragm's got the plate's print in it
top diaphragm has set
lower one's extruded out the bolt holes
replace the both of them
i put the diaphragm on upside down
flipped the diaphragm
no i mean i turned it over don't log a flip
okay how do i undo
did it undo
thirty foot pounds with locker
ten bolts in the housing each at fifteen
make it eighteen
packing four rings
he does the packing nut
sixty inch pounds on the packing nut
it shuts at twelve pounds
opens when i let off
opens all the way i think
he measured nine sixteenths
nine sixteenths travel
is that right it should be five eighths
adjusted the stem connector one turn
five eighths now
seat test he said one twenty
one twenty on it with air
bubbles at first then none
timed five minutes no bubble
found a bubble on the supply fitting
so what's left
photo of the cage crack
seven seven zulu is closed right
h v oh nine
hard froze
valve's froze open
ice on the outside from the bonnet down
steam hose on it ten minutes
broke loose
stem frosted over
breather's a ball of ice
housing's got water in it
drained water out of the upper housing
about a coffee cup
dried it out with air
rust in there from the water
rust all in the upper housing
diaphragm's cold and stiff but not cracked
i'd say it's all right
drip loop on the tubing
heat trace is dead
heat trace don't work
tell the electrician his trace is out
regulator's froze solid
put alcohol in the regulator
supply came back to thirty
vent plug turned down so it won't fill
put a new vent plug pointing down
it's stroking again up and down
moves slow in the cold
oil in the snubber's thick
changed the oil out of the snubber
eight down now
leaks none
close it out and let's get warm
note tape the heat trace before next frost
reminder check the other two for ice
other two are fifteen and sixteen
november's when it starts
ice plug in the signal line
blew the ice out of it
signal's through
same thing again
blew that out too
sixteen's spring is broke
spring's in two pieces
i can hear it rattle
spring's broke replace it when it's warm
not changing a spring at ten below
that's a needed spring
order the spring
oh i got one in the box
did it anyway
four hands and a heater
done for the day
this one came over from the overseas skid so it's all metric
hotel victor two oh six
supply's two point four bar
signal reads forty kilopascals at the bottom and a hundred at the top
upstream's six hundred kilopascals and steady
fluid's about eighty eight celsius
water gauge says fourteen inches of water
under twenty inches of water anyway
stem travel's twenty eight millimeters
spring's a hundred and sixty five millimeters loose
seventy five newton meters on the housing bolts
body bolts between eighty and eighty five newton meters
leak's about fifteen milliliters a minute at three and a half bar
call the temperature minus four
sitting about twenty percent open right now
somewhere around sixty five percent open when i walked up
seals are swelled up every one of 'em
all the seals went hard on this one
changed the seals out as a set
did the whole trim while she was apart
trim's eat up real bad on the bottom
trim's not too bad a little fouled
plumb wore out on both sides
that stem's rusted plumb through
gasket's gone all the way around
seat area's got a washed out spot on the outlet side
seat area has some scratches nothing deep
cleaned up the seat area with a scuff pad
didn't find any erosion in the body
no nicks on the plug no pits either
don't see any galling on the threads
not one crack in the yoke
spring's not rusted it's just painted
ditto on the lower housing
same on the outlet side
same story with the backup rings
other one's just as bad
lower one's the same only worse
do the same for the seat gasket
neither one of 'em needs replacing
both of them came out in pieces
swapped the pair of 'em
took it all apart and laid it out on the bench
broke the positioner down and cleaned the nozzle
vented the top of the actuator before i touched a bolt
bent the pointer back straight
linkage rod's bent gonna straighten it
controller's flapper is dirty
controller needs to be zeroed
calibrated the controller at nine and fifteen
controller gauge is stuck on six
the controller's bourdon tube's leaking at the end
float's alright just covered in wax
float rod came unscrewed
float's hanging up on the side of the vessel
pilot plug has a ring in it
pilot spring's been stretched
pilot's vented and apart
lock nut's backed all the way off
lock nut's missing off the adjusting screw
jam nut run down and locked with a drop of thread locker
handwheel's dragging on the yoke
handwheel nut's loose
yoke clamp's sprung
yoke's been welded before
flange is warped i think
flange bolts maybe two turns loose
solenoid vent's plugged with a bug
strainer plug's leaking at the threads
strainer's clean as a whistle
regulator bowl's half full of water
regulator won't hold a set point it creeps
gauge lens is busted out but she reads
gauge is off by six pounds
fitting's rounded so bad i can't get a wrench on it
tubing's rubbed through where it crosses the bolt
tubing's been pinched in the clamp
adjusting screw's bent and froze
travel indicator's loose it'll turn with your finger
indicator gasket's squeezed out one side
indicator spring's missing i looked all over for it
breather's been knocked off and plugged with a rag
supply port's got thread tape down in it
signal port's stripped out somebody used the wrong fitting
vent hole's rusted nearly shut
packing nut's galled on the bonnet
packing nut's cracked down through the flats
stem connector's got one bolt short
stem connector slipped about an eighth
bonnet bolting's all mismatched
three of the bonnet bolts too long
body bolting's rusty but tight
couple of body nuts are rounded off
diaphragm plate's cupped
diaphragm nut's chewed up from a pipe wrench
diaphragm nut's rusty but the threads are intact
power diaphragm's burnt from the heater
balance diaphragm's brittle cracks when you bend it
lower housing's got a chip where the bolt goes through
upper housing's cracked between two holes
stem guide's frozen to the bonnet with rust
stem guide o ring's been cut going in
cage o ring's extruded up over the cage
backup ring's on the wrong side of the o ring
seat gasket's doubled over
cage gasket's torn in half
bonnet gasket's pinched at the top
guide's scratched up on the inside
kit's got the wrong packing in it
need two kits for tomorrow
pick me up a soft goods kit
get me a stem guide and two o rings
put a couple of breathers on the list
bring four bonnet studs and a can of grease
order one diaphragm plate and the nut that goes with it
i'm gonna need a cage here before long
seat probably wants changing next time
reckon i should've lapped that plug
might've been the gasket not sure
could be the packing's just dry
maybe tighten the bonnet again after it heats up
not lapping that it's past it
leaving the cage for another year
didn't touch the packing
never did change the bonnet gasket
we're not replacing the body this go round
ran it again with the same plug
put the same spring back
kept the plate and the nut
old stem's going back in after i polish it
pitched the packing and the o rings
went ahead and changed the guide
already did the diaphragms
had to change all twelve studs
valve won't shut with fifteen on the signal
won't come off the seat till twenty two pounds
quit moving at three quarters
goes full open but hangs coming back
strokes clean both directions
passing through the seat at ninety pounds you can hear it
holds sixty but blows by at two hundred
not a bubble at four hundred
shell test blew out at the bonnet
shell's weeping by the drain plug so it failed
packing test failed the first go
actuator won't hold air it's coming out the vent
actuator air test failed it's leaking around the stem
air test held thirty for ten minutes
ran the packing test at one eighty dry as a bone
seat leak's twenty two bubbles a minute at one fifty
still got about ten pounds trapped in the bonnet
there's pressure behind that plug don't pull it
block's leaking through so we're not isolated
that spring's still got a load on it be careful
gas alarm just went off by the scrubber
i can smell gas at the breather
got h two s showing four on the meter
he got hit with the wrench in the hand he's alright
something in my eye from that housing
knocked the oil can over on the deck
grass fire by the flare they got it
no hang on not the cage the guide
the stem uh the stem guide is what i meant
scratch that last one and the one before
strike that it was the inlet threads
sorry forty not fourteen
i mean the lower diaphragm
make that three bolts not two
correction on the tag it's one one six
no wait it already had a new seat
forget what i said about the spring
never mind that on the strainer
undo the last thing
take that back out
that's a yes
nope still there
both of 'em
the bottom one
about half
don't know yet
leave it blank
i already told you that
what have you got for the packing
what did i say for the torque
which valve am i on
did i give you a stroke time
what's still open on this one
go back over the findings
snap a picture of the seat before i flip it
that does it for this valve
all done here shut the job
put me down for a recheck in thirty days
next visit the twentieth of march
remind me friday to bring the seat puller
remind me in the morning that the lock's still on
note operator says it's been dumping every two minutes
for the record it had the wrong seat in it when i got here
remark found with no travel indicator
note that the bypass was left cracked open
undo that
correct
outlet side
seat test
stroke test
thirty
no drip
say that last one again
close that job out
`;
