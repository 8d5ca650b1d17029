/** Lines that people would say: an apprentice, an old hand, a lead who checks. Invented; a line a phrase, numbers and tags as spoken. */
export const THREE_TALKERS = `
starting on l c v two one three
okay i'm opening up pee vee one oh four bravo now
next one is l v three twelve two inch pressure to open
this is p c v four oh six
two inch dump valve tag l c v one oh one
moving over to lima victor five five two
i've got fox charlie victor two twenty one on the bench
verify tag level control valve three oh four alpha
new valve l c v seven seventeen
let's do papa victor nine oh three next
one inch globe on the bench tag p v sixty two
three inch valve air to close severe service
it's a fail closed two inch on the separator
tag says l v dash one nineteen
el see vee six forty one two inch
confirmed tag is p c v two oh eight charlie
job on t c v eleven oh two
this one's a four inch fail open globe
going to the heater treater valve l v two thirty
back on l c v two one three
this one's pressure to close and it sees a lot of sand
tag f v eight oh eight one inch sour service
alright pulling apart l c v forty four bravo
we're on the next dump valve l v six oh five
this is p v three oh one it came from dirty service
seat's worn
seat is washed out on one side
so the seat looks pretty bad on one side
seat ring is pitted all the way around
verify seat it's scored on the face
seat's wire drawn
the seat has a nick in it about the size of a match head
seat good
seat looks fine to me i can't see anything wrong
seat chipped on the edge
the seat is sand cut real bad
seat ring cracked i'm pretty sure
hairline crack in the seat
seat's loose in the body
the seat won't come out it's seized
seat eroded a little on the inlet side
steam cut seat right through the middle
seat's got a groove wore in it all around
there's some light pitting on the seat ring
seat threads galled
seat got dented when i pulled it
both sides of the seat are worn
there's scale packed behind the seat
plug's eroded at the tip
plug has a gouge down one side
the plug is cut clean across the face
so this plug is in really good shape actually
plug's chewed up
plug is washed out real bad
there's paraffin all over the plug
the plug is broke off the stem
the ball is scored on the seating face
disc is chipped on the edge
plug cracked up the center
plug loose on the stem
plug looks like it may be bent
plug and seat both worn
plug and seat ring both wire drawn pretty bad
plug's stuck in the seat
plug is fine seat isn't
plug has a dent near the bottom
stem bent
stem's scored where the packing rides
stem is galled
i think the stem might be bent just slightly
stem's straight and clean
the stem has pitting up at the top
stem corroded under the packing
stem drags when you pull it by hand
stem froze up won't budge
stem's cross threaded into the connector
stem threads stripped
somebody put a pipe wrench on this stem and gouged it
light scratches on the stem
stem broke at the threads
verify stem no scoring no bend
nick in the stem about half way up
stem worn on one side
rust on the stem
cage holes plugged with sand
cage has no cracks
there's a crack running between two holes in the cage
cage windows are washed out
cage is fouled with scale inside
the cage is stuck in the body
cage scored on the inside
cage corroded on the outside
cage got a chip at the bottom edge
cage looks okay just dirty
cage's wore egg shaped inside
inspected the cage no damage found
guide is sloppy worn out all around
guide scored inside
comm hole in the guide is plugged with mud
verify the hole in the guide is open
stem guide's galled to the stem
the stem guide looks good no wear that i can see
stem guide o ring flattened
stem guide o ring is nicked
stem guide o ring swollen and soft
guide corroded at the bottom
diaphragm torn
the diaphragm has a pinhole near the bolt holes
diaphragm's hard as a rock
so i pulled the diaphragm and it's torn along the edge
diaphragm stretched looks weak
diaphragm is swollen from condensate
diaphragm pinched at the flange
top diaphragm split at the bead
upper diaphragm has a hole clear through it
power diaphragm cracked and brittle
the actuator diaphragm feels fine still soft
lower diaphragm torn one side
balance diaphragm's punctured
verify both diaphragms intact
lower diaphragm worn thin at the center
lower diaphragm is extruded around the nut
diaphragm plate's corroded heavy on the bottom
there's a burr and a nick on the diaphragm plate
diaphragm plate cracked at the hole
diaphragm nut's rounded off
the hole in the diaphragm nut is plugged
diaphragm nut is galled on the stem
somebody lost the diaphragm nut it's missing
diaphragm nut good threads and all
spring's broken
spring is broke in two places
spring's rusty but it isn't cracked
the spring seems weak compared to a new one
spring took a set it's weak
actuator spring broken on the bottom coil
actuator spring looks okay
actuator spring pitted all over
no cracks on the actuator spring
spring misaligned on the button
the spring was in there crooked
gasket stuck to the body
gasket crushed flat
old gasket was pinched on one side
the seat gasket's missing nobody put one in
seat gasket eaten up on the inlet side
seat gasket has washed out at one spot
seat gasket is hard and it broke when i touched it
cage gasket nicked on the inside
pieces of old cage gasket stuck in the groove
cage o ring flattened on one side
the cage o ring was missing from the groove
cage o ring extruded out the bottom
bonnet gasket leaking
bonnet gasket flattened but not torn
verify bonnet gasket in good shape
bonnet gasket has a slit through it
o ring hard
o ring's nicked
o ring is chewed up
these o rings are all swollen from the aromatics
top o ring flat bottom one's fine
o ring rolled out of the groove and got pinched
o rings are good
o ring burnt and brittle
the o ring shows a little extrusion
backup ring cracked
the two backup rings are both cut up
upper backup ring is missing
backup ring worn thin on one side
backup ring was in upside down and got kinked
packing leaking
packing dried out and hard
packing is wore out
packing good no sign of weeping
there's a little seep at the packing
packing's got grit in it
packing extruded up past the follower
packing seeping at the top
no leak at the packing
packing nut seized
packing nut threads look fine
packing nut rusted on there
all the seals are swollen
seals look good
seals chewed up from sand
bonnet pitted on the gasket face
bonnet is seized to the body
bonnet's got a lot of rust on the outside
verified bonnet no cracks
gouge on the bonnet sealing face
bonnet dinged up on the edge
bonnet iced over
body washed out
body's eroded below the seat
body is cracked by the flange
body okay inside and out
pinhole in the body on the outlet side
body corroded badly at the bottom
the body is packed full of sand
inside of the body has light pitting
body's weeping down low
confirmed no washout in the body
body has scale on the inside
seat area's washed out
seat area looks eroded under the ring
no pitting in the seat area
seat area scratched
there's a cut across the seat area
housing's cracked at a bolt hole
housing is rusted through
upper housing cracked
upper housing full of water
upper housing corroded on the inside
upper housing's dented on top
lower housing holed
lower housing pitted where the diaphragm sits
there's dirt dauber nest in the lower housing
lower housing warped and it's leaking
bolts rusted
two bolts broken
bolts are stretched i reckon
bonnet bolting looks good
four bonnet bolts rounded off
one of the bonnet studs is stripped
couple bonnet nuts missing
bonnet bolts were only finger tight
body bolts loose
body bolting is corroded heavy
one body bolt missing
verify body bolts all there none stripped
bolts were cross threaded by the last guy
threads good
threads galled on the body side
threads are intact
inlet threads wore out
inlet threads all intact confirmed
outlet threads washed out at the bottom
outlet threads rusted up bad
outlet threads have no damage
i looked at the inlet threads and they look chewed up
outlet threads chipped one side
inlet threads stripped plumb out
nut froze on won't move
lock nut's rounded
jam nut backed off
jam nut is seized
jam nut cracked
travel indicator's sticking
the travel indicator is missing somebody took it
indicator's painted over can't read it
indicator gasket leaking
indicator spring broken
breather is plugged with mud
wasps built a nest in the breather
vent plug painted over
vent plug missing from the top housing
breather blowing air
there's air coming out the breather
supply port plugged
there's ice plugging the supply port
signal port plugged with thread tape
signal port is cross threaded
signal port has dirt in it
vent hole plugged
vent hole has paint in it
vent hole's wet there's oil seeping from it
verify vent hole is clear confirmed
mud in the vent hole
stem connector's stripped
stem connector is misaligned with the stem
one bolt missing from the stem connector
stem connector cracked on one side
positioner's fouled with oil
positioner leaking air
water in the positioner and it's corroded
controller's hunting might be sticking
controller leaking at the pilot
controller nozzle plugged
controller's full of bugs
regulator is frozen up with ice
diaphragm on the regulator is torn i think
gauge won't move off zero it's stuck
gauge needle bent
strainer's full of trash
solenoid leaking by its vent
solenoid coil's toast
solenoid corroded at the conduit
trim is washed out completely
trim set looks fine to me
trim eroded but not too bad
yoke is misaligned
flange good no marks
flange corroded at the bolt holes
inlet flange gouged on the face
flange misaligned maybe an eighth
adjusting screw seized
adjusting screw's rounded off at the top
float's full of fluid there's a pinhole
float fouled with paraffin real heavy
pin missing out of the linkage
linkage is misaligned
pilot seat's worn
tubing cracked at the ferrule
tubing loose at the actuator
tubing corroded on the bottom side
fitting cross threaded
oil low
oil is dirty
oil's milky there's water in it
oil down about half
oil is black and gritty
actuator's sticking half way
actuator full of water
valve's plugged with sand
valve iced up solid
valve stuck shut
valve leaking at the bonnet
whole valve is junk
valve looks good overall
valve misaligned in the line
flipped the seat
flip it
seat's worn one side so i flipped it over
i flipped the seat ring and the other side is brand new
we can flip that seat
seat was already flipped once so it's got to be replaced
lapped the seat and plug
lap it in and it'll be good
lapped it took about ten minutes
needs lapping
i'd lap that seat before i'd toss it
put a new seat in
replaced the seat and the seat gasket
plug's going back in
plug's good so i put it back
replace the plug
plug needs replacing
had to replace the plug it was too far gone
swapped out the plug
swapped the stem for a new one
straightened the stem
stem wiped down and reused
polished the stem with emery cloth and put it back
dressed the seat face with a stone
dressed the nicks out of the stem
cage cleaned and reused
clean the cage
blew out the cage holes
cage needs cleaning
cage going back in
i'm not replacing the cage
didn't replace the guide
leaving the guide for now
guide needs a new one
put a new guide in it
greased the guide o ring
rodded out the hole in the guide
rodded out the comm hole
new stem guide o ring
new o rings all around
replaced all the o rings
put two new o rings on the cage
replaced both backup rings
new backup rings
i replaced five of the bolts
replaced a couple of bonnet bolts
put new studs in the bonnet
gonna need to change those bolts
tightened the body bolts
snugged up the packing nut
backed off the packing nut a quarter turn
repacked it
packing needs replacing next time around
tightened the packing nut and it quit leaking
adjusted the packing and greased the stem
put new packing in and snugged it up
the old packing stayed in it was fine
new diaphragms top and bottom
replaced both of them
both diaphragms going to need replacing
kept the balance diaphragm it was good
gotta change that diaphragm
diaphragm plate cleaned up and put back
scraped the diaphragm plate
wire brushed the plate
threadlocked the diaphragm nut
put thread locker on the jam nut
lock nut threadlocked and run down snug
installed a new lock nut
cleaned the threads
chased the threads and they cleaned up good
cleaned the inlet threads with a wire brush
reused the spring it measured fine
replaced the actuator spring
tossed the spring
pitched the old seat
pitched all the old seals
threw away the gasket
put a full kit in it
installed the kit
needs a full kit
replace every seal in it
rebuilt it with a new kit start to finish
new bonnet gasket in
old gasket scraped off the bonnet with a putty knife
pulled the bonnet
put the bonnet back on
took the bonnet off and looked inside
pulled the cage
took out the seat with the long tool
couldn't get the seat out so i left it
took the actuator off
put the handwheel back on
tore it all the way down
took it down to the body
washed the body out
cleaned the body with solvent
blew the sand out of the body
drained the body
drained the water out of the upper housing
drained the oil and filled it
filled the oil
topped off the oil
changed the oil
oil needs changing
greased the adjusting screw
greased the linkage
replaced the linkage pin
travel indicator needs a new one
put the indicator back
cleaned the breather
unplugged the vent hole
cleaned out the supply port
blew out the signal port
cleaned the strainer
strainer cleaned and put back
ran new tubing from the regulator
tightened the fittings
replaced the fitting on the supply
put in two new fittings
replace the gauge
gauge needs replacing
swapped the gauge
calibrated the positioner
positioner needs calibrating
positioner calibrated and confirmed
checked the pilot
float pulled and drained
float needs to go
new coil on the solenoid
replace that regulator it's done for
yoke cleaned up
inspected the yoke
looked over the body
checked the spring
checked the stem for straightness
looked at all the threads
verified all o rings installed
verified the seat is seated
vented the actuator
vented the housing before i opened it
bled it off
stem connector adjusted and locked
installed the handwheel
needs a new handwheel but we're not doing it today
leave it
leave it for now
we'll let that one ride
put it back in
ran it again
it's good to go back in
going back in with it
reusing that
reuse the plug but not the seat
replace it
it needs a new one
will replace it tomorrow
already replaced it
went ahead and changed it
we're replacing it
maybe replace the stem while it's apart
probably should lap it
i think it needs a new seat
should be replaced i reckon
order a seat
order two seats and a plug
need a seat kit ordered
bring me a stem guide
bring two o rings for the cage
get me a bonnet gasket
put an upper diaphragm on the list
put a spring on the list
pick up six bonnet bolts
bring a packing set next trip
put a breather on the list too
order a travel indicator please
get me four body bolts
we need to order a regulator
bring some tubing and two fittings
pick up a gauge for the supply
order a full kit for this one
put three backup rings on the list
order the cage and cage gasket both
get a strainer on order
put a lock nut down on the parts list
bring another quart of oil
bonnet bolts torqued to twenty eight
torqued the bonnet bolts to thirty five foot pounds
bonnet nuts at forty five foot pounds
torqued to sixty
seat torqued to a hundred and five foot pounds
seat ring torqued at one twenty
verify seat torque one hundred and ten foot pounds
tightened the diaphragm nut to twenty foot pounds
diaphragm nut torqued to fifteen
housing bolts at one hundred eighty inch pounds
body bolts went to seventy five in three passes
body bolting torqued to ninety foot pounds confirmed
torqued lock nut to forty
jam nut tightened to twenty five foot pounds
packing nut at eight foot pounds
torqued it to fifty four newton meters
cap screws torqued one sixty inch pounds
set the torque at thirty two and went around twice
stem connector torqued to eighteen
bolts pulled to fifty pounds crossing pattern
i torqued all of the bonnet bolts to about thirty
supply's at thirty psi
supply's only reading eighteen pounds
upstream pressure one hundred fifty psi
upstream's at nineteen fifty
i've got two hundred and ten on the inlet
downstream pressure forty five
downstream gauge reads zero
signal pressure fifteen pounds full open
starts to move at three psi signal
starts off the seat at four and a half pounds
bench set three to fifteen
bench set six to thirty psi
bench set checked five to twenty two pounds
set the bench at eight psi starting
regulator set to thirty five pounds
pressure's about sixty
pressure test at one hundred psi
line pressure around four hundred and fifty
full open at fourteen psi
lifts at seven pounds and full open by eighteen
travel three quarters of an inch
travel is seven eighths
i measured travel at one and an eighth inches
stroke measured half an inch
travel indicator shows five eighths
full travel one and a half inches
travel came out at nineteen millimeters
spring length came to four and three eighths inches
free length on the spring five and three eighths
spring measures four and a quarter
stem diameter three eighths
gap is twenty thousandths
stem's out twelve thou
fifteen thousandths of wear on the plug
valve's at fifty percent open
forty percent open with nine pounds on it
body temperature one hundred sixty degrees
fluid's at eighty five degrees
temperature forty celsius
held it ten minutes
held pressure for five minutes no drop
took nine seconds to go full stroke
stroked open in four seconds and closed in six
takes about twelve seconds to close
five bubbles a minute with fifty pounds under it
ten bubbles a minute at sixty psi
leaking five drops a minute
leak rate twenty cc a minute
forty milliliters a minute at one hundred psi
two drops a minute at the packing
one bubble a minute through the seat at eighty pounds
eight bubbles a minute on the leak test
no bubbles at sixty
no leak with sixty five psi on it
seat leak test passed
seat test at seventy five pounds bubble tight
dead tight at one hundred psi
holding at sixty
it's holding good at a hundred and fifty pounds
leak test failed it's blowing by
still leaking by at fifty psi
valve's passing
won't hold
won't hold pressure at all after the rebuild
verify seat leak at sixty psi no bubbles
confirmed shut off tight at ninety
it's leaking through pretty steady at forty pounds
didn't leak a drop at two hundred
seat leak check no good
strokes full
strokes fine opens and closes
full travel both ways
stroke test passed
stroked it three times and it's smooth all the way
it only goes about half its travel
won't open with twenty pounds on it
it won't close all the way
not stroking
stroke test failed it hangs up half way
opens slow but it does go full
confirmed full stroke at fifteen psi signal
it doesn't move at all when i put air on it
snapped open at nine psi and closed clean
shell test passed
shell test at one hundred fifty psi no leaks
soaped the body joint and nothing came up
body joint leaked on the shell test
shell test failed at the bonnet
soaped the packing no bubbles
packing test failed bubbles around the stem
stem leak test passed at sixty pounds
four bubbles a minute on the packing
actuator holds air for five minutes
actuator won't hold air
diaphragm test good at thirty pounds
housing leak test passed no air at the breather
actuator leaking down with twenty pounds on it
actuator test run verified good
ran the seat leak test
did the stroke test
stroke passed seat leak passed
stroke good leak good packing good
all tests passed except the seat
smell gas
i smell gas over by the bonnet
gas alarm's going off
my monitor's showing h two s
four gas monitor just went off stop
got h two s here back up
there's still pressure on it
it's bled down but it's still holding pressure
trapped pressure under the bonnet
still pressure in the housing don't open it
bonnet hissed when i cracked the first bolt still pressure
can't isolate it
the block valve is passing i can't get it isolated
no lock on the upstream valve
hey nobody put a lock on this thing
isolation not confirmed hold off
spring's still loaded careful
spring let go when i backed the screw off
there's tension still on that spring
spring came out and hit the wall
i cut my hand on the cage
pinched my finger between the plate and the housing
got oil spilled on the ground
spilled condensate out of the body
spill under the valve needs cleaned up
fire
something's burning by the heater
got a little fire at the vent
scratch that
scratch that the plug's fine
no scratch that it's the stem that's bent
never mind that
forget that last one
correction it's the lower diaphragm
correction thirty five foot pounds
correction tag is two thirty one
no wait it's the outlet threads
no wait that's the cage gasket not the seat gasket
make that forty
make that two bolts
make it pitted not scored
i mean the upper one
i mean the stem guide
sorry i meant the bonnet gasket
sorry the tag's l c v two one five
seat no the plug is worn
the plug uh the seat is chipped
torqued to thirty no thirty five
supply's twenty sorry twenty five psi
three bolts no four bolts broken
correction i already replaced it
correction we're reusing that spring
oops wrong valve it's pee vee one oh six
same on the lower one
same for the other side
same thing on the outlet threads
other one too
ditto for the cage
ditto on the bottom diaphragm
the upper one's the same
replaced that one too
it's worn too
and the gasket under it same deal
flipped it and put it back
cleaned it up and it looks fine
that one's torn replaced it
both of them are bad
replaced the other one as well
so is the stem
the lower's good though
it's got a crack in it too
it is way worse than last time
same as last time
last time the seat was worn on the other side
better than it was last time
seat's worse than it was back in the spring
last time we flipped it so no more flips left
that's the same plug we put in last time
it was leaking last time too
last time we torqued it at thirty
spring measured longer last time
third time this year the diaphragm's torn
what did we do to this one last time
we replaced this stem six months ago and it's bent again
done with this one
close it out
that's it for this valve
all done here
okay i'm all done with this one close it
finish this one up
what's left
what did i miss
have i missed anything
what else do i still need to check
read it back
read that back to me please
say that again
what have you got so far
what have you got on the plug
take a picture
take a picture of the seat
get a photo of this crack
stop listening
stop listening for a minute
start listening
listen up
go ahead and listen
note customer wants the old parts back
note that the valve sits low in the pit
remark tag plate's almost unreadable
for the record this one was painted shut
note next visit bring a bigger wrench
note that nobody had the drawings
no damage anywhere
no cracks no pitting on the body
nothing wrong with the cage
plug isn't scored
no washout on the seat
threads aren't galled
not leaking anywhere
stem's not bent
diaphragm isn't torn
i don't see any cracks in the yoke
no corrosion on the bolts to speak of
gasket's not torn just flat
there's no oil in the breather
didn't find any wear on the guide
no issues with the spring
no galling on the stem threads
verify no leak on the tubing
couldn't find a thing wrong with the actuator
none of the bolts are stripped
it isn't seized it's just tight
no sand in the cage this time
can't tell if the plug's cracked or not
might be a crack in the bonnet hard to say
not sure but the plug might be bent
could be the packing
the o rings look like they may be swollen
so the handwheel's bent and it wobbles when you turn it
handwheel seized up on the shaft won't turn either way
whoever had this last lost the handwheel it's missing
the float's got a dent in it but it still floats
float is corroded and there's a hole along the weld
linkage has a lot of slop it's wore out at both pins
the linkage drags a little when i work it by hand
linkage loose at the float end tightened it
pilot's plugged up with dirt so i rodded it out and cleaned it
pilot was frozen when i got here but it's working now
there's a weep coming off the pilot at the bottom fitting
tubing got kinked where it goes around the yoke
somebody stepped on the tubing and pinched it flat
tubing's weeping a bit at the compression nut
fitting stripped on the signal side gonna replace it
that supply fitting's cracked and it leaks
ferrule's galled in the fitting won't come loose
positioner sticks for a second and then it jumps
verify positioner no leaks no water good
regulator's weeping out the bottom
regulator sticks when you turn it down
inlet on the regulator is full of scale it's plugged
the gauge is stuck on fifteen with no air on it
gauge has a busted glass so i put a new one in
strainer basket has a hole wore right through the middle
pulled the strainer and it's plugged solid with rust
solenoid's sticking you have to tap it to get it to drop
solenoid coil's burnt up you can smell it
the whole trim is worn enough that i'd change it
trim's got chips out of it i think something went through there
verify trim looks good no erosion
yoke has a crack starting at the leg
yoke is a little bent from somebody prying on it
flange has scratches across the face but they're light
flange gasket face pitted heavy on the bottom side
that adjusting screw is rusted up and it won't budge
adjusting screw threads are stripped at the top couple inches
stem connector's loose and the stem turned in it
stem connector bolts rusted but they came out okay
travel indicator got bent when they dropped it
travel indicator's broke clean off at the screw
the indicator gasket is hard and it cracked when i lifted it
indicator gasket looks alright so i reused it
indicator spring lost its push it's weak
indicator spring has rust but it's still got tension
signal port's got a crack running down into the housing
supply port is rusty and the threads are chewed up
supply port verified clear i ran a wire through it
breather got snapped off so water went in
i put a new breather in because the old one was iced
the vent hole on the nut is open i can see light through it
top nut's gone and the one under it is cracked
lock nut was loose i could turn it by hand
i couldn't find the lock nut so put one on the list
jam nut looks good threads are clean
bonnet studs are corroded at the bottom but they'll go again
bonnet bolts froze up had to heat one to get it moving
body bolts galled coming out so two got tossed
two of the cap screws are rounded i'd get new ones
body bolting's all there and it's all good confirmed
inlet threads look rusty but they're not eaten up
outlet threads have a little nick on the first one
outlet threads good ran my finger around and nothing caught
inlet threads got crossed when it went in last time
seat area's got small pits in it about the size of sand
clean seat area nothing to see there
gasket groove on the bonnet has corrosion in the bottom
i'd call the bonnet gasket burnt it crumbles
bonnet gasket had a pinch on the left side so we replaced it
cage gasket looks good but it gets a new one regardless
there's a tear in the cage gasket about an inch long
cage o ring swelled up so much it won't fit the groove
cage o ring got cut going over the threads
seat gasket's got a set in it totally flat
o ring on the guide is chewed on the bottom edge
backup ring squeezed out past the o ring
one backup ring's cracked and the other's alright
the seals went hard they snap when i bend them
packing nut was loose by about a full turn
packing nut's so rounded a wrench just slips off
packing nut split down one flat
diaphragm nut came loose that's why it wasn't stroking
diaphragm plate's bent like a saucer
plate's straight and there's no rust verified
power diaphragm blew out right at the bolt circle
the top diaphragm went stiff like old leather
no tears in the balance diaphragm but it's swollen a little
lower diaphragm has a bad crease kinked at the outer edge
actuator spring's leaning over to one side
lower housing has rust scale inside cleaned it out
lower housing's good no cracks around the bolt holes
upper housing dent's pushing in on the plate
actuator's all rusty outside but it holds
i checked the actuator and it's locked up solid
cage is wore thin by sand along the bottom row of holes
cage ports half plugged with paraffin so i washed it out
guide ports were packed with mud i cleaned them all
stem guide split on the bottom so order a new one
stem won't slide smooth it's sticking in the packing
plug tip's worn away and the seat's not far behind
plug's scratched some but it'll lap out
ball has a pit right on the sealing band
seat's junk but the cage is good
rust under the seat ring had to scrape it
so i found the seat chipped and the chip was in the cage
oil in the actuator's about two inches low
drained the dirty oil out and put fresh in
wiped the backup rings down and reused them
new diaphragm on top old one on the bottom
i've put the actuator back together and it's on the body
verified packing no leak at one hundred psi
actuator test twenty pounds for two minutes confirmed holding
supply fitting's good tubing's good regulator's good
body's clean i washed it and there's no erosion
straightened out the tubing so it's not kinked anymore
scraped the flange face and dressed out the gouge
threads on the stem connector are stripped replaced it
reused both the plug and the stem
new kit went in plus a seat from the truck
we've got to order a cage since this one's cracked
bring six feet of tubing and a ferrule set
level valve's a two inch and it's pressure to close
seat leak at fifty psi four bubbles a minute
upstream one hundred twenty downstream zero confirmed shut
i took my lock off before checking and it isn't isolated sorry
signal at six psi and it's just cracking open
supply gauge says twenty two confirmed
seat's in backward no wait that's how it goes it's fine
on this one we've got two backup rings and both are good
the flange bolts got torqued to one hundred forty foot pounds
`;
