/** A technician at a liquid dump at the well site: what he strips, sees, decides and puts together, as he goes. Invented; a line a phrase. */
export const AT_THE_DUMP = `
okay bonnet's off let's see what we got
first look the seat has a groove on the outlet side
seat's cut on the outlet side but the inlet side is clean
plug has a line worn into it where it sits
stem comes out easy no drag on it
trim is out and on the tailgate
cage came right up no trouble
packing is dried out and crumbling
three rings of packing in there all of them hard
follower is okay just dirty
packing nut had backed off about a turn
took the packing nut loose and it was dry under there
upper housing off eight bolts and two of those were loose
diaphragm is thin along the edge where the plate rides
no tear in it yet but it won't make another year
plate is rusted on the bottom side
pulled the spring and it's got rust between the coils
spring stands four and three quarters inches no set in it
spring seat is fine no wear
found sand packed under the cage about half an inch of it
dug the sand out from under the cage
body looks okay inside a little wash at the outlet
bit of wash in the body below the seat
wall is still good there leave it
threads for the seat are clean
ran a tap down the seat threads
one thread is pulled at the top of the seat bore
put some sealant on the seat threads and ran it in
seat's back in at eighty foot pounds
plug is screwed on and the nut is tight against it
set the stem down in the guide and it moves free
new o ring on the guide greased it first
bonnet gasket face is clean no nicks
laid the new gasket in the groove
bonnet's on bolts are hand tight
went across the bolts in a star at twenty five foot pounds
second round on the bonnet bolts at thirty five
last pass all the bolts held at thirty five
air back on it no leak at the vent
strokes clean both ways now
dumps and shuts off like it should
seats off tight no noise in the line
it was hanging open when i got here
valve was stuck about a quarter open
it was dumping all the time the level never came up
it would not dump at all the vessel was full
it opens slow and closes slow
it closes fast enough but it opens slow
snaps open but won't go all the way shut
it's chattering when it gets near the seat
hear it passing when it's shut
there's gas blowing through the dump line
liquid carrying over into the gas side
line downstream is cold so it's passing
dump line is froze past the valve
thawed out the dump line
dumping every four minutes
dumping every twelve minutes and shuts off clean
stays open about ten seconds each dump
level's holding at half a glass
sight glass is black can't see a level in it
cleaned the sight glass
float arm is bent up a little
float came off the rod
put a new pin in the float arm
pilot's not getting any supply
pilot is leaking at the bottom
pilot seat has trash under it
blew the pilot out and put it back on
pilot vents all the time even when it's shut
supply gas is wet
drained about a cup of water out of the supply pot
drip pot was full drained it
filter in the regulator is plugged
put a new filter in the regulator
regulator was set at forty five turned it down to thirty
supply regulator creeps up it won't stay at thirty
regulator bleeds all the time
supply was only twelve pounds
raised the supply to thirty psi
thirty psi on the supply and twenty on the output
output goes from zero to thirty when the float comes up
no output from the controller
controller puts out eight psi and stays there
nozzle on the controller is plugged
cleaned the nozzle and the orifice
orifice had a bug in it
tubing's kinked behind the actuator
cut the kink out and put a union in
replaced three feet of three eighths tubing
quarter inch fitting on the top housing is cracked
leaks at the ferrule tightened it up
tightened the fitting and it still leaks
made a new end on the tubing
soaped every fitting no bubbles
soaped it down got bubbles at the housing bolts
snugged the housing bolts and the bubbles quit
still bubbles on one side of the housing
air is coming out around the stem
air coming out of the vent so the diaphragm has a hole
yep diaphragm has a hole right by the nut
hole in the diaphragm about an eighth of an inch
put a new diaphragm in bead side down
diaphragm went in backwards took it out and turned it
holes in the diaphragm are stretched
replaced the diaphragm and kept the plate
diaphragm's new plate's old nut's new
both washers were missing under the diaphragm nut
put one washer on top and one under
nut on the diaphragm torqued to thirty foot pounds
housing bolts torqued to fifteen foot pounds
one twenty inch pounds on the housing bolts
torqued the packing nut to ten foot pounds
packing nut is finger tight plus a quarter turn
jam nut set and marked
stem connector was a half turn out
adjusted the stem connector a half turn down
travel was five eighths now it's three quarters
got seven eighths travel out of it
should be three quarters travel and i'm only getting a half
travel is short on the bottom end
it stops before it gets to the seat
backed off the stem one turn and it seats now
starts to move at six psi
fully open at eighteen psi
starts at three and full open at fifteen
bench set was four to eleven
cracks open at seven psi on the signal
takes nine psi to lift it off the seat
holds thirty psi on the actuator for five minutes no drop
lost two pounds in five minutes on the actuator
dropped from thirty to twenty six in ten minutes
pressured up to two hundred and held it ten minutes
held at two fifty no drop on the gauge
shell's good at four fifty
four bubbles a minute past the seat
about twenty bubbles a minute at a hundred psi
seat leaks one drop a minute at one fifty
no drops in three minutes at one fifty psi
zero bubbles at fifty psi five minutes
packing is weeping a drop every minute or so
no more weep at the packing
gland's dry after i tightened it
inlet's at four twenty psi outlet's at sixty
upstream is two eighty and downstream is thirty five
static on the line is one ninety
line temp about one thirty
body's hot one sixty five degrees
differential across it is eighty pounds
stem measures point three seven two
stem's worn down to point three six eight at the packing
bore is one point two five five
groove in the seat is twenty thousandths deep
pit on the plug about a sixteenth deep
spring's short by a quarter inch
spring measures three and seven eighths
cut in the plug is about an inch long
open up l c v three oh one
start a job on l c v one one four
going to the water dump l c v two oh two
on the oil dump now l c v two oh one
next valve is p c v four ten
moving over to p v one twelve
back on l c v three oh one
valve's a two inch fail closed
it's a one inch with a half inch seat
two inch three quarter port air to open
three inch body spring to close
tag's gone it's the valve on the low side of the separator
tag is painted over cleaned it off
no tag on this one put a new tag on the list
locked out and bled down ready to open
isolated both sides and bled to zero
bleeder's plugged can't tell if it's down
zero on the gauge and the bleeder is open
upstream block valve won't hold
downstream block is passing got pressure back on it
had to shut in the well to get it down
gauge says zero but it still hissed when i cracked it
got a little gas when i opened it up
wind's behind me no gas on the monitor
monitor is beeping backing off
twelve parts per million on the monitor
oil on the ground under the dump
spill's about a gallon by the drain
dug up the wet dirt and put pads down
grating is loose by the separator
ladder has a bad step on it
hot surface on the line heater side
spring has load on it long bolts still in
backed the spring off before i took the cap off
pinched my finger in the housing it's fine
no one is hurt
scratch that it's the cage not the seat
no make that the lower housing
make that forty five not thirty five
scratch that last one the plug was fine
correction the left side
wait that was the inlet side
not torn make that cracked
no i meant the packing nut
take that back the stem is good
change that to three bubbles a minute
make it two gaskets instead of one
yes the old one
no it was the top one
yes on both sides
neither one
just the one on the left
about a quarter inch
i don't know didn't measure it
yes it held
no i didn't test it
both of them were bad
the outlet side
it was worn not cut
need a seat and plug for next time
need two packing sets for these
bring a stem guide when you come back
order a spring for this one
order one upper diaphragm and one bonnet gasket
out of o rings on the truck need six
need a new regulator on this skid
put a stem connector on order
need four studs half inch by three
get a pilot for this valve
next trip bring a cage and gasket
needs a whole actuator
needs new bolts on the top housing
needs a gauge zero to sixty
needs paint but it works
needs packing before long
does not need a seat this time
didn't need anything but a gasket
nothing to order on this one
i have the seat on the truck but not the plug
used my last diaphragm on this one
worse than the one on the oil side
better than last time but still worn
same wear as last year on the seat
seat's in better shape than the plug
plug's worse on the outlet side than the inlet
upper housing is fine the lower one is pitted
this stem is worse than the old one
inlet threads are better than the outlet
about half as worn as the other one
cage is worn but the plug is okay
seat's cut and the plug has a mark to match
stem is bent and it took the guide with it
guide was worn so the plug was rubbing one side
packing's shot and the stem is scored under it
gasket blew and it cut the face of the bonnet
bonnet face has a cut across it at the bolt hole
dressed the bonnet face with a file
cleaned up the stem with fine cloth and it will go again
sanded the stem and put it back with new packing
looked the plug over and it'll go again
seat will go again with a lap
lapped it ten minutes and got a full ring
lapped the seat by hand it has a good line all around
line isn't full on one side lapped it some more
no line on the seat for about a third of the way
ring shows all the way round now
swapped seats because the lap didn't take
turned the seat over and the other side is new
seat was already flipped once so it's new or nothing
put the old plug back till we get one
it'll run but it'll leak some
left it running with a small leak
left it shut in till the parts come
left the valve out and blinded the line
put it on bypass
took it off bypass and put it back to service
back in service and dumping
watched it dump three times and it shut each time
cycled it five times by hand
cycled it ten times no hang up
stroked it slow and watched the stem no jerk
stem jumps about halfway
stem jerks coming off the seat
little grease on the stem and the jerk is gone
stem is dry no grease at all in there
grease gun is empty filled it
grease fitting is broke off in the bonnet
drilled out the grease fitting and put a new one in
vent's missing and a mud dauber got in there
bug screen is gone off the vent
cleaned out the vent and put a screen on it
water in the upper housing about a cup
poured the water out of the housing and dried it
rust water came out of the bottom housing
oil in the top housing so the diaphragm is leaking
no oil above the diaphragm
lower housing is eaten up around the bolt holes
two bolt holes in the housing are wallowed out
bolts in the housing are rusted solid
heated the bolts and got them out
broke one off in the body and drilled it out
chased the bolt holes in the body
nuts are rounded off had to cut two
cut the nuts off and put new studs in
three new studs and six new nuts on the bonnet
one stud's short left it for now
put never seize on all the studs
wiped the old sealant off the inlet threads
outlet threads have a leak tightened the union
union's leaking at the outlet
union face is cut put a new union on
nipple on the outlet side is thin
nipple is eaten about half through at the threads
replaced the nipple between the valve and the block
flange gasket on the inlet is weeping
snugged the inlet flange and it dried up
inlet flange is washed on the bottom
elbow below the valve is washed out and thin
scale in the body scraped it out
paraffin in the body flushed it with hot water
wax on the plug and in the cage
salt all around the seat
salt's built up on the plug chipped it off
iron sulfide in the body kept it wet
black sludge in the bottom of the body
washed the body out with diesel
flushed the line before i put the trim in
rag left inside the outlet side pulled it out
piece of a gasket was stuck under the plug
chunk of rubber holding the plug off the seat
weld slag was in the seat
small rock in the seat
took the rock out and the seat has a dent
dent in the seat about an eighth wide
strainer upstream has a hole in the screen
screen's gone out of the strainer
put a new screen in the strainer
no strainer on this one
hand jack was engaged backed it all the way off
handwheel is stiff oiled it and it turns
locking pin is missing on the handwheel
yoke bolts were loose two of them
yoke's good nothing cracked
indicator's pointing at open when it's shut
set the indicator plate to the closed mark
scale plate is gone off the yoke
positioner arm was off its pin
put the arm back on the pin and it follows now
positioner output is zero with fifteen in
positioner gauge is dead
all three gauges on the positioner are good
cam is worn on the positioner
solenoid clicks but no air goes through
solenoid is good it was the wire
wire's loose in the box tightened it up
box had water in it dried it out
cover gasket on the box is torn
pulled the trim and laid it out
plug's rough to the touch on one side
seat's smooth all the way round
seat's got a washed spot at the low side
small cut in the seat on the outlet side
outlet side of the plug is eaten up
inside of the cage is smooth
outside of the cage is scratched from the pull
cage window on the outlet side is wider than the rest
one window in the cage is stopped up
guide's tight on the stem had to work it
guide has a flat worn in it
stem rides to one side in the guide
stem has a ring worn in it at the guide
stem is pitted just above the packing
stem's shiny on one side and dull on the other
threads on the end of the stem are flattened
ran a die over the stem threads
stem nut was seized cut it off
o ring on the guide is flat on one side
o ring on the cage is gone there's nothing left of it
o ring's hard and it broke when i picked it out
groove is clean no pits
groove has a pit in it where the o ring sits
greased the new o rings and set them in
backup ring is split on the bottom
backup ring was on the wrong side of the o ring
turned the backup ring around
new backups both sides of the o ring
seal kit is in that's all the soft parts
gasket came off in one piece
gasket came off in pieces and some went inside
fished the gasket pieces out of the body
gasket was doubled up two in there
only one gasket in there should be two
bonnet is washed on the inside over the outlet
bonnet's pitted where the gasket sits
bonnet threads are clean
bonnet bolts came out easy
bonnet bolts are stretched replaced all of them
one bonnet bolt was only finger tight
two bonnet bolts missing on the back side
body's thin at the outlet i'd replace it
body is pitted on the inside but not deep
body has a crack at the outlet threads
body's cut behind the seat
can see a groove in the body through the outlet
yoke nut is loose tightened it with a hammer
actuator is loose on the yoke
actuator's rusted but it works
actuator's off and in the truck
took the top off the actuator
spring came out in two pieces
spring is broke on the last coil
spring's weak it won't shut against the pressure
new spring's in and it shuts now
turned the spring adjuster down two turns
adjuster was all the way down
adjuster is rusted put oil on it
adjusting screw is back where it was
count was eleven turns on the adjusting screw
set the adjusting screw at nine turns
upper diaphragm is fine lower one has a crease
crease in the diaphragm where it folds
diaphragm's soft and oily
diaphragm has blisters on the bottom
diaphragm's pulled out at two bolts
edge of the diaphragm is squeezed out on one side
diaphragm is two years old and it looks new
didn't touch the diaphragm it's holding
leaving the diaphragm in it holds air
top housing has a crack by the port
port in the top housing is stripped
put a thread repair in the housing port
bottom housing is full of rust
cleaned the bottom housing and painted it
tapped the port out to three eighths
tubing is rubbed thin on the skid
moved the tubing off the skid rail and clamped it
clamp's missing on the supply tubing
tubing has a hole rubbed in it
supply shutoff is stiff
supply valve was half shut opened it up
somebody had the supply turned off
supply's on now and it comes up to thirty five
output follows the level now
controller hunts back and forth
turned the band up a little and it quit hunting
set the band at forty percent
set point was off moved it up an inch
relay on the controller leaks changed it
relay is good gasket under it is bad
flapper's bent on the controller
flapper is dirty wiped it off
torque tube is stiff
displacer is hung up on the side
freed up the displacer
displacer has wax on it
level arm is loose on the shaft
tightened the set screw on the arm
set screw was missing put one in
float shaft packing is leaking
tightened the packing on the float shaft
float shaft is worn where it goes through
leaking around the float shaft a little
pulled the float shaft and put o rings in it
checked the float it's not full of water
shook the float no liquid in it
float has liquid in it order one
everything moves free by hand
everything's tight and dry
nothing loose on the top side
nothing leaking outside
no leak in or out
no wear to speak of
no corrosion on the outside
no play in the linkage
no damage on the threads
no trash in the body this time
no sand at all in this one
no pits on the ball
no cracks no cuts on the diaphragm
not bent just dirty
not leaking now that it's tight
not stuck just stiff
never found a reason for the leak
couldn't find anything wrong with the pilot
couldn't get the seat to move
couldn't get it to leak again
can't turn the packing nut any more it's bottomed out
can't reach the back bolts with the torque wrench
can't see any wear on the plug
won't come out of the body it's rusted in
won't shut with more than one hundred psi on it
won't open with twenty on top
won't stay shut
won't take any more air
doesn't leak till it warms up
doesn't reach the seat
doesn't move until fourteen psi
didn't find any sand
didn't pull the actuator
didn't need to lap it
didn't have a gasket so i made one
isn't seating on the back side
wasn't seating because of a rock
wasn't tight so i gave it another quarter turn
was leaking at the packing and now it's not
was wore on the one side so i turned it
used to be a soft seat now it's metal
should have two o rings and it's only got one
looks like it got hot
looks like sand got it
looks like somebody beat on it
looks like it's been leaking a while
looks like the wrong spring
looks like the stem got bent when it was put in
might get another year out of it
might as well do the packing while i'm in here
may need a body next time
going to lap it first then see
going to leave the cage and change the seat
going to put a new plug and seat in it
going to test it before i put the top back on
about to put the bonnet on
fixing to pull the cage
trying to get the guide out
still trying to get the nut off
still leaks past the seat after the lap
still passing a little at two hundred psi
still has a weep at the packing
still loose after i tightened it
half of the bolts were loose
all the bolts are tight
every bolt was loose on the top
most of the wear is on the outlet side
some wear on the inlet side not much
little bit of rust in the threads
little cut on the edge of the seat
deep scratch down the stem
heavy scale in the outlet
heavy wear on the plug tip
bad pits on the inside of the bonnet
good seat good plug bad packing
clean inside dirty outside
new packing old stem
old seat new plug lapped them together
seat in plug in stem in going together
guide first then the stem then the packing
packing's in four rings and the follower
set each ring and turned the cuts a quarter
top ring was all that was bad
three rings out three new ones in
packing stacked wrong fixed it
spring in the packing box is rusted
packing box is scored on the side
cleaned the packing box with a brush
wiper is torn at the top of the bonnet
put a new wiper in it
bushing in the bonnet is wore egg shaped
pressed a new bushing in the bonnet
lower bushing is fine upper one is loose
snap ring broke when i took it out
no snap ring on the truck order two
pin's sheared between the stem and the plug
drove a new pin in the plug
roll pin is missing on the lever
cotter pin is gone used a new one
lever is bent toward the vessel
linkage pin is worn half through
oiled the linkage it's free
clevis is cracked on one ear
twelve hundred pounds on the line shut in
nine hundred on the inlet and it's not holding
six fifty upstream and fifty downstream
inlet pressure is one thirty five psi
outlet pressure's at eighteen psi
back pressure on the dump line is forty pounds
instrument air is ninety and the valve sees thirty
signal's at twelve milliamps and it's half open
four milliamps shut twenty milliamps wide open
at eight milliamps it reads twenty percent
twenty four volts at the solenoid
no volts at the solenoid
three psi shut nine psi half fifteen psi open
stroke time is four seconds open and six shut
took eleven seconds to open and three to shut
took twenty minutes to bleed down
leaks forty milliliters a minute at a hundred psi
two hundred cc a minute past the seat
body wall is two hundred and ten thousandths
wall's at point one eight inches on the bottom
stem runout is six thousandths
stem's out three thousandths that's fine
eighteen millimeters of travel
gap's thirty thousandths at the indicator
ambient is forty five degrees
fluid's at a hundred and ten degrees
vessel's at one fifteen
torqued the body bolts to one ten foot pounds
fifty five foot pounds on the seat ring
sixty foot pounds on the flange bolts first pass
ninety on the flange bolts last pass
forty inch pounds on the cover screws
seat torqued at one hundred and five
plug nut's at forty foot pounds
bolts are at thirty eight all of them checked twice
wrench clicked on all eight
checked the bolts again after it warmed up
held one hundred for three minutes on the seat
seat test at fifty psi gave six bubbles a minute
retest on the seat gave zero
packing test at two fifty not a drop
shell's holding three hundred for ten minutes
shell leaked at the bonnet gasket at ninety psi
fixed it and tested the shell again it's good
air test on the top side held fifteen minutes
`;
