/** Lines that people would say: what was done, and what is owed. Invented; a line a phrase, numbers and tags as spoken. */
export const WORK = `
replaced the seat
put in a new seat
new seat and seat gasket going in
flipped the seat it was only worn on one side
seat's good on the other side so i flipped it
went ahead and replaced the plug while i was in there
plug is reusable put it back in
reused the stem it's still straight
cage cleaned up fine so i'm reusing it
cleaned the cage with a wire brush
wire brushed the cage and blew it out
pulled the bonnet
bonnet's off
took the bonnet bolts out
put the bonnet back on
bonnet bolts torqued to twenty eight foot pounds
torqued the body bolts to sixty five foot pounds
tightened the packing nut a quarter turn
snugged up the packing nut
packing nut tightened to thirty inch pounds
lock nut torqued to one fifty inch pounds
jam nut's tight at twenty foot pounds
replaced both diaphragms
new upper and lower diaphragms
lower diaphragm needs to be replaced
upper diaphragm needs changing out it's got a pinhole
changed the top diaphragm and the gasket with it
didn't replace the bottom diaphragm it still looks good
left the old spring in
spring's going back in
put a new actuator spring in it
spring was broke so i replaced it
replaced all the o rings
all new o rings
new o rings and backup rings on the cage
put two new o rings on the stem guide
changed the cage o ring
cage gasket replaced
new cage gasket and new seat gasket
used a full kit on this one
installed the repair kit
used the last seat kit off the truck
need to order a seat for this valve
order one plug and one seat
need to bring a lower diaphragm next time
bring a set of o rings
pick up a bonnet gasket at the shop
put a stem guide on the list
get me two diaphragms and a spring
order a gasket kit for f v one oh one
lapped the plug and seat
lapped the seat in and it sealed up
i'm gonna lap the seat and reuse it
plug was nicked so i lapped it
seat still needs to be lapped
greased the o rings
put some grease on the stem
greased the stem and the guide before it went back together
lubed the stem guide o ring
light coat of grease on the diaphragm bead
greased up the threads
put anti seize on the bonnet bolts
put thread locker on the lock nut
thread locker on the diaphragm nut and torqued it
dressed the threads with a file
chased the inlet threads with a tap
cleaned up the threads on the body
wire wheeled the bolts and reused them
replaced four bolts
replaced all eight bonnet bolts
two new studs and nuts
bolts were stripped so i swapped them out
swapped the plug out for a new one
swapped out the positioner
positioner calibrated three to fifteen psi
calibrated the controller
zeroed the controller and set the span
adjusted the controller it's dumping right now
adjusted the float up about an inch
set the regulator at thirty psi
regulator needs adjusted down to twenty psi
adjusted the regulator to thirty five pounds
backed the adjusting screw out two turns
turned the adjusting screw in one full turn
adjusted the travel indicator
travel indicator needs to be reset
cleaned the strainer
strainer was plugged pulled it and cleaned it
blew out the supply line
blew the tubing out with air
replaced the supply tubing
new tubing and fittings on the signal side
ran new three eighths tubing to the actuator
tightened the fitting on the supply port
fitting was leaking so i tightened it
replaced a fitting on the signal port
cleaned out the breather it was full of dirt
breather was plugged with mud dug it out
put a new breather in
breather needs replaced
rodded out the vent hole
cleaned out the hole in the stem guide
ports in the guide were plugged i cleaned them
drained the body
drained the oil and filled it back up
topped off the oil
oil changed
filled it with new oil
oil was dirty drained it and put fresh in
tossed the old seat
threw away the old diaphragm
old packing went in the trash
pitched the old gaskets
packing was leaking so it got replaced
had to repack it
put four rings of packing in it
new packing set
added one ring of packing
the packing all has to be redone
still has to be repacked
needs a new packing nut
stem was bent so i straightened it
stem's scored it needs a new one
polished the stem with emery cloth and put it back
dressed the stem up with emery
replaced the stem and the plug together
new stem plug and seat
put new trim in it
trim's getting replaced next time
took the actuator off
pulled the actuator and set it on the bench
actuator's back on
split the housing and took the diaphragm out
put the housing back together
upper housing bolts tightened down
torqued the housing bolts to twelve foot pounds
housing bolts are at one forty inch pounds
bonnet bolting torqued to thirty eight newton metres
tightened the body bolts to ninety newton metres
diaphragm nut at forty five newton metres
lock nut done at twenty two newton metres
torqued in a star pattern to twenty eight
crossed the bolts and took them to forty foot pounds
went around twice at fifty five foot pounds
final torque was thirty two foot pounds
haven't torqued the bolts yet
bolts are just hand tight still have to be torqued
bonnet bolts still need torqued
needs to be torqued when i get my wrench back
reassembled the valve
put it all back together
valve's back together
it's all back in one piece
took it all apart
tore it down and cleaned everything
valve's disassembled on the bench
cleaned all the parts
cleaned up all the parts and laid them out
everything's been cleaned
body cleaned out
scraped the old gasket off the body
gasket was stuck to the bonnet had to scrape it off
scraped the bonnet face clean
cleaned the seat area
wiped down the seat area and put the gasket in
cleaned the gasket surfaces
cleaned the sand out of the body
washed the paraffin out of the cage
knocked the scale off the plug
checked the spring and it's good to reuse
seat area checked and it looks fine
inspected the diaphragm plate
looked over the stem connector
checked the bolts on the yoke
stem connector tightened
yoke bolts were loose tightened them up
flange bolts retorqued
retorqued the flange bolts to a hundred and five foot pounds
new flange gasket on the inlet side
the old gauge got replaced
gauge is no good needs a new one
swapped the gauge for a zero to sixty
replaced a bad solenoid
put a new solenoid on
solenoid needs to be ordered
rebuilt the pilot
pilot needs a kit
cleaned the pilot and put it back
greased the linkage
linkage was loose adjusted it and tightened it
handwheel put back on
handwheel's missing need to order one
replaced the indicator spring and gasket
new indicator gasket
new seals all around
seals replaced
replaced all the soft goods
new soft goods throughout
all the gaskets were changed
seat's washed out need a new one
seat was wire drawn so i put a new one in
seat's worn flip it
already been flipped once so replace it
both sides of the seat are worn had to replace it
seat can be flipped
can't flip it both sides are bad
going to flip the seat and run it
flipped the seat over and put a new gasket under it
didn't flip the seat no need to
seat ring replaced and the gasket too
seat ring's good i reused it
seat ring needs to come out and get cleaned
pulled the seat and checked it
got the seat out with the puller
seat's back in and tight
seat torqued to a hundred and ten foot pounds
torqued the seat to ninety five
seat ring tightened to one twenty foot pounds
plug's cut need to replace it
plug has got a groove in it put a new one in
ball was scored so i changed it
the disc is worn out and needs replaced
plug cleaned and lapped
cleaned the plug and it looks good so it went back in
plug's being reused for now
leaving the plug alone
left the plug in it's fine
didn't have a plug so i put the old one back in
no plug on the truck so it still has to be changed
plug is on order
ordered a new plug
stem's galled replace it
stem is bent need to bring a new one
new stem in
cleaned the stem with a scuff pad
stem greased and back in
pulled the stem out to look at it
stem looks good gonna reuse it
straightened the stem but it needs replaced next time
temporary fix on the stem still needs a new one
cage is cracked it needs to be replaced
swapped the cage
cage pulled and soaked in solvent
soaked the cage and brushed it out
cage was full of sand blew it out and put it back
cage holes were plugged with scale rodded them out
cage went back in with new o rings
two new o rings and two backup rings on the cage
backup rings replaced
both backup rings were cut so they got replaced
put in new backup rings with the o rings
missed a backup ring had to take it back apart
forgot to put the backup ring in
guide was worn replaced it
stem guide needs a new o ring
new o ring on the stem guide
replaced the stem guide o ring and greased it
stem guide's good put it back in
stem guide cleaned
stem guide installed and snugged up
stem guide torqued to seventy five foot pounds
pulled the stem guide and blew out the ports
guide bushing replaced
diaphragm's torn replace it
went ahead and changed both diaphragms
swapped the diaphragms while it was apart
new diaphragm went in no problem
diaphragm's still soft so i ran it again
diaphragm was stiff replaced it
replaced the lower diaphragm left the upper one in
only changed the upper diaphragm
bottom diaphragm is new from last year so i left it
balance diaphragm replaced
power diaphragm needs to be changed soon
put the power diaphragm in and torqued the nut
diaphragm nut tightened to forty foot pounds
diaphragm nut loose so i tightened it and put thread locker on it
diaphragm plate's cracked need a new one
diaphragm plate straightened and reused
cleaned the rust off the diaphragm plate
diaphragm plate going back in
spring's weak it needs to be changed
replaced the spring with a heavier one
put the spring back in it measured four and a half
spring wire brushed and greased
spring's rusty but i reused it
didn't change the spring
need a spring for this one
order a new actuator spring
spring still has to go in
pulled the spring out
adjusted the spring to crack at twelve psi
backed the spring off two turns
wound the spring down another turn and a half
set the spring so it starts to move at six pounds
bench set done three to fifteen
still need to do the bench set
bench set adjusted to six to thirty psi
stroke adjusted to three quarters of an inch
adjusted the travel to half an inch
adjusted the stem connector to get full travel
loosened the stem connector and reset the travel
moved the travel indicator up an eighth
travel indicator replaced
travel indicator's bent so i straightened it
indicator gasket was shot put a new one in
indicator spring missing ordered one
put a new cover on the indicator
bonnet's cracked has to be replaced
bonnet off and cleaned
bonnet gasket changed
new bonnet gasket and torqued the bolts
reused the bonnet gasket since i didn't have one
bonnet gasket still needs to be replaced
bonnet gasket's leaking gotta change that
need to retighten the bonnet
tightened the bonnet down and it quit leaking
bonnet bolts tightened and it's dry now
went around the bonnet bolts again at thirty five foot pounds
bonnet bolts retorqued to forty two foot pounds
bonnet nuts are torqued to sixty
bonnet bolting reused
replaced one bonnet bolt
replaced a couple of studs
two of the studs were stripped put new ones in
six new bolts on the body
need eight bolts half inch
bring four studs and eight nuts
new nuts and bolts all the way around
cap screws replaced
cap screws tightened to sixty inch pounds
one bolt was rounded off had to drill it out
drilled out a broke bolt and retapped the hole
tapped the hole and put a new stud in
body bolts back in and torqued
body bolts torqued to a hundred and forty newton metres
body's washed out replace the valve
body washed out inside needs to be replaced
need to replace the whole valve
pulled the valve and put in a spare
swapped the whole valve out with a rebuilt one
valve's going back to the shop
took the valve out of the line
valve's back in line
set the valve back in the line with new gaskets
threads are stripped body needs to be replaced
inlet threads cleaned and taped
outlet threads chased with a die
doped the threads and screwed it back together
put thread sealant on the outlet side
put fresh thread tape on the fittings
packing snugged up half a turn
tightened the packing and it's still weeping
tightened the packing and the leak stopped
packing needs to be tightened
packing nut backed off a little it was too tight
backed off the packing it was dragging
packing's hard replace it
pulled the old packing out
dug the packing out with a pick
packing's lubed and snug
didn't mess with the packing
left the packing alone it's not leaking
new packing and a new packing nut
used two packing rings
housing cleaned up and painted
housing's cracked need an upper housing
lower housing replaced
upper housing is bent swapped it
housing bolts need to be tightened
four housing bolts replaced
housing's back on and bolted up
housing bolts tightened to a hundred inch pounds
actuator rebuilt
rebuilt the actuator with a new diaphragm and spring
actuator still needs to be rebuilt
actuator needs a diaphragm kit
actuator's got to come off
adjusted the actuator down a turn
swapped the actuator with a spare
put the spare actuator on
positioner needs calibrated
positioner was off so i calibrated it
calibrated the positioner and stroked it
positioner cleaned out and zeroed
rezeroed the positioner at three psi
positioner arm tightened
f v one oh one new seat and plug
p v two oh three rebuilt and back in service
l c v one ten needs a diaphragm
lima victor two zero four seat flipped and bolts torqued
p c v three oh two still has to be put back together
on l v one twelve i replaced the spring
f c v two two one got a full rebuild
p v one oh four bravo needs a kit ordered
t v four oh one packing replaced and stroked
l v two oh six didn't get to it needs a seat
h v five one two greased and cycled
flipped the seat over and replaced the gasket
replaced the seat gasket and reused the seat
lapped the plug replaced the seat gasket and put it back together
cleaned the cage and the plug put new o rings on
pulled the bonnet cleaned the body and changed the gasket
new seat new plug new gaskets
new stem new packing and greased it
flipped the seat lapped the plug
flipped the seat and changed both o rings
cleaned greased and put back in
pulled it cleaned it and put it back
took it apart cleaned it and found a bad o ring so replaced that
cleaned everything up put new soft goods in and torqued it
replaced the diaphragm and tightened the housing bolts
changed the o ring and greased it
changed out the seat the plug and the stem
seat and plug replaced stem reused
plug and stem are new seat got flipped
seat plug and cage all going back in
spring and plate reused diaphragm replaced
bolts cleaned greased and torqued
bolts wire brushed and anti seize put on
drained it pulled the bonnet and cleaned it out
bled it down and took the bonnet off
blew it down and pulled the plug
vented the actuator
bled the pressure off the housing
vented the body before i pulled the bolts
isolated it and bled it down
drained the water out of the regulator
drained the drip on the supply filter
drained about a quart of water out of it
drained the supply line there was water in it
filled the oil to the line
added half a pint of oil
oil's low needs topped off
oil level was low added some
it needs some oil
gotta change the oil next time
new oil put in about a quart
strainer cleaned and put back
strainer screen's torn need a new one
replaced the strainer screen
still need to clean the strainer
blew down the strainer
went ahead and replaced the regulator
regulator got a new diaphragm
rebuilt the regulator with a kit
regulator's junk swapped it
regulator kit needed
set the supply regulator to twenty
supply set at thirty five psi
turned the supply down to twenty psi
turned the regulator up to twenty five pounds
pilot valve replaced
pilot plugged up cleaned it out
pilot supply adjusted to thirty
adjusted the pilot to hold one fifty psi
pilot seat and plug replaced
new o ring in the pilot
set the pilot at two hundred and ten pounds
adjusted set point to eighty five psi
controller rebuilt with new relay and gaskets
controller needs a new flapper
cleaned the nozzle in the controller
replaced the bourdon tube
adjusted the proportional band
controller's been recalibrated and it's holding
controller swapped with the spare
float was stuck in paraffin cleaned it
float replaced it had a hole in it
float arm straightened
float o ring changed
float needs to be pulled and cleaned
float shaft packing tightened
float linkage adjusted to dump sooner
linkage pin replaced
put a new pin in the linkage
linkage is worn it'll need replacing before long
linkage back on and cotter pin in
handwheel greased
handwheel broke put a new one on
yoke put back on and tightened
yoke's cracked order a yoke
yoke bolts torqued to thirty foot pounds
cleaned the yoke and painted it
fittings tightened on the supply
had to cut the tubing and put a new ferrule on
kinked tubing replaced it
straightened the kinked tubing
redid the tubing and leak checked it
tubing's getting replaced with stainless
need ten feet of three eighths tubing
bring two quarter inch fittings and some tubing
bring a couple of three eighths nuts and ferrules
bring a seat puller next time
bring the torque wrench
need a tube of grease
bring some lapping compound
need more thread sealant
out of o rings need to get some more
used up the last of the o rings
used a spare diaphragm from the truck
used one seat and two o rings out of stock
took a bonnet gasket out of the spares
spare plug used need to restock
used two spare gaskets
need to reorder a spring i used the spare
restock the seat kit
used the spare regulator
that was the last diaphragm order two more
order three seat gaskets
order a set of bonnet bolts
order a stem guide and two o rings
order the cage it's got a long lead time
order a new actuator for this one
put a plug and seat on the order
put two diaphragms on the list
add a packing set to the list
add a breather to the parts list
pick up a gauge and a half inch nipple
pick up four bonnet studs
pick up an o ring kit from the warehouse
get me a seat and a seat gasket
get me an inlet flange gasket
get me a new solenoid for this thing
i need a lower housing
gonna need a plug
going to need a new cage on the next one
we'll need a diaphragm and a gasket when we come back
will need a stem next time it comes apart
next time bring a cage gasket
next time replace the plug
next rebuild it'll need a seat
change the packing next time around
due for diaphragms next year
should change the spring next time
ought to replace that seat before winter
come back and replace the stem guide
gotta come back and torque the bonnet
have to come back with a new gasket
have to come back and finish the packing
have to flip the seat
have to lap it
it'll have to be lapped again
could use a lapping
needs cleaned real bad
needs a good cleaning
needs grease
needs a new seat
it needs a set of new o rings
needs a new diaphragm and gasket
whole thing needs to be rebuilt
it needs to be adjusted some more
it needs a new breather the old one's gone
needs a stem and a plug
needs four new bolts
needs two o rings and a gasket
it needs to be taken apart and cleaned
that needs to be swapped out
those need to be replaced
they all need replaced
both need changed
go ahead and replace it
replace both of them
replace them all
just flip that over
clean that off
clean it up and reuse it
change it out
swap it for a new one
lap it in and try it again
grease it up good
tighten it up
torque it down to spec
toss that thing
order one
order two of them
replaced it with a new one
went ahead and replaced it
already replaced that
had to replace both
so i swapped it out
got a new one in it now
put a new one on there
put two new ones in
put the old one back in
put it back in
ran it again
it's good to go back in
good enough to reuse
still good reusing it
keeping that one
kept the old one for a spare
saving that for a spare
leaving it in for now
left it alone
i didn't replace it this time
not replacing that today
it didn't need replacing
no need to change it
didn't touch that part
didn't have one with me
didn't have the parts so i put it back the way it was
couldn't get it apart so i left it
couldn't get the seat out
couldn't break the bonnet loose need a bigger wrench
couldn't get the lock nut off had to cut it
seat won't come out gonna have to heat it
heated the nut and got it off
soaked the bolts in penetrating oil
had to use a cheater to get the bonnet bolts loose
had to beat the stem out
had to pry the diaphragm off
peeled the old diaphragm off the housing
scraped it down to bare metal
flipped it over
flipped it and put it back in
flipped to the good side
flipped last time so this time it's a new one
lapped it in
lapped it for about five minutes
lapped it until it was bright all the way around
lapped both and wiped them off
lapped but it still leaks so replacing the seat
lapped the ball to the seat
hand lapped the disc
hit the seat with some lapping compound
touched up the plug with emery
touched up the seating surface with a stone
stoned the burr off the seat
filed the burr off the stem
filed down a nick on the bonnet face
dressed the flange face
dressed up the bonnet studs with a die
sanded the rust off and painted it
buffed out the scratch in the stem
polished the bore
honed the cage bore it was rough
cleaned the bore out with a hone
cleaned it with solvent and dried it off
washed it out good
flushed the body with water
flushed the line before we put it back
steamed it out to melt the paraffin
thawed the regulator out and drained it
thawed it out with hot water
broke the ice off and got it moving
body had ice in it got that cleaned out
plug had salt on it cleaned that off
got all the sand out
blew the trash out of the seat
picked the trash out of the seat and it shut off
picked the old o ring out of the groove
cleaned the o ring groove
cleaned the groove before i put the new one in
o ring groove scraped out and greased
o ring was pinched put another one in
o ring's swelled up replace it
o rings are flat change them
o rings were hard so i changed them all
o rings all look good so i didn't change any
three o rings replaced
used the same o rings
put the same o ring back for now need a new one
wrong size o ring had to get another
wrong gasket in the kit need to get the right one
kit was missing the backup rings
kit only had one diaphragm in it
the kit came with everything so i put it all in
full kit installed
half the kit used
seal kit on order
kit's in and it's holding
seals swelled up so they all got changed
the stem seal is new
the wiper was tore up put a new one in
u cup replaced and the bore greased
new lip seal put in with the lip facing down
greased the seal so it wouldn't cut going in
gasket's blown replace it
gasket on there was no good so it was replaced
gasket was reused
gasket stuck had to scrape it
made a gasket out of sheet
cut a new gasket for it
doubled up the gasket
put the gasket in dry
gasket surface cleaned and new gasket put on
changed the gasket under the seat
seat gasket reused didn't have one
seat gasket missing put one in
need seat gaskets
cage gasket needs to go in before the bonnet
cage gasket's torn gotta have a new one
cage gasket was in two pieces put a new one in
flange gaskets both replaced
ring gasket wiped off and reused
ring gasket is pitted order a new one
new ring gasket on the outlet flange
flange faces wire brushed
flange bolts tightened in a star pattern
flange bolts at eighty five foot pounds
flange studs need to be replaced they're rusted
torqued the flange to one hundred sixty foot pounds
torqued to thirty
torqued to forty five foot pounds
torqued to one hundred eighty inch pounds
torqued to fifty four newton metres
torque is twenty five foot pounds
torque was fifteen foot pounds when i checked it
torqued everything to spec
torqued by hand no wrench
all bolts torqued
all eight torqued to thirty eight foot pounds
bolts torqued in three passes
first pass at ten foot pounds then twenty eight
checked the torque again and it held
marked the bolts after torquing
set the torque wrench at sixty two
tightened to seventy foot pounds
tightened to eighty newton metres
tightened up to two hundred inch pounds
tightened it till it quit leaking
tightened it down by hand
tightened it another flat
tightened everything up
one more turn on the packing
gave the packing nut another flat
gave the adjusting screw half a turn
gave it a shot of grease
pumped some grease in the stem
packed it with grease
greased everything going back in
bolts got greased before they went back in
grease on the o ring and on the cage
silicone grease on the diaphragm
no grease on it need to grease it
dry when i opened it greased it up
grease fitting replaced
greased the bearing on the handwheel
stem was dry so i put oil on it
put a little oil on the linkage
oiled up the spring before i put it in
changed the oil and the filter
had to retorque the bonnet after it warmed up
retightened the fittings
resealed the threads
reset the stroke
reset it to close at fifteen
readjusted the spring tension
redone the packing
seat probably needs to be replaced
maybe needs a new plug
might need a diaphragm before long
i think it needs a new spring
could probably reuse the cage
probably ought to change the packing
reckon we better order a seat for it
not sure if i need to replace the stem guide or not
thinking about flipping it
might as well change the o rings while it's open
might be able to lap that out
looks like it'll need a new body
i'd go ahead and order a cage
should be good for another year so i left it
i'd replace the plug but i don't have one
going to replace the seat and the plug
gonna change the diaphragm
gonna clean the cage and see how it looks
gonna put a new spring in it tomorrow
gonna have to replace the stem too
going to reuse the bonnet bolts
going to repack it while i'm here
fixing to put the bonnet back on
fixing to torque it
about to pull the bonnet
about to put it back together
getting ready to set the plug in
let's replace the seat
let's go ahead and change both o rings
let's flip that and put it back
i'll lap it
i'll change the gasket tomorrow
i'll bring a new stem next week
i'll be back to put the spring in
we'll swap it out next shutdown
we need to replace the trim at turnaround
we're replacing the cage
we put new bolts in it
we went ahead and pulled the actuator
we reused everything but the seat
everything else was reused
everything else looks good and went back in
the rest of it's going back in
only thing replaced was the diaphragm
only replaced the gaskets
only had to change one o ring
just cleaned it and put it back
just needed cleaned
just needed a new o ring
just tightened the packing nut
just put gaskets in it
just a seat and a gasket on this one
all it needed was a spring
all i did was adjust the float
didn't have to replace anything
nothing to replace on this one
no parts used
won't need any parts for it
didn't use any parts
didn't do anything to the actuator
didn't take the cage out
didn't get the bolts torqued
didn't get to the packing
didn't grease the stem yet
didn't put thread locker on it
didn't flip it
didn't lap it just wiped it off
didn't adjust anything
didn't have a gasket so i reused it
didn't have time to change the diaphragm
never got the bottom diaphragm changed
haven't put the new seat in yet
haven't cleaned the cage yet
hasn't been greased
hasn't been put back together yet
not back together yet waiting on a seat
waiting on parts
waiting on a diaphragm from the shop
waiting on a gasket before i button it up
seat's on back order
parts are here just have to put them in
still needs a gasket
still needs the spring put in
still got to put the indicator on
still have to hook the tubing up
still have to set the controller
it's still gotta be calibrated
still needs to be stroked and put in service
tubing still has to be hooked back up
bolts still have to go in
still gotta flip the seat
o rings still need to go on the cage
still gotta grease it
cage is clean and ready to go back in
body's clean
got the stem in
seat's in
plug and stem are back in
got the plug in and the cage on top of it
cage and seat are in the body
seat gasket's in
set the gasket in and put the cage on top
dropped the plug in and put the bonnet on
stabbed the stem through the packing
put the lock nut on and ran it down
lock nut's loose tightened it
lock nut replaced
lock nut needs thread locker
thread locker on the stem threads
thread locked the jam nut and the connector
blue thread locker on the seat
cleaned the threads and put thread locker on them
jam nut missing put one on
jam nut backed off had to reset it
stem connector's stripped put on a new one
new connector on the stem
stem connector needs to be replaced next time
reset the connector and locked it down
disconnected the stem from the actuator
hooked the stem back up
unhooked the tubing and pulled the actuator
supply is hooked back up
took the tubing loose
put the tubing back on and tightened the fittings
pulled the upper housing
pulled the indicator off and cleaned it
pulled the packing nut and looked at the packing
pulled the plug it's good
all the trim is out
all the bolts are pulled
pulled the spring and measured it
took the spring out and it was broke in two
took the cage out and looked it over
took the stem out and it was bent
took the diaphragm off the plate
took the seat out and turned it over
took it off and cleaned it up
took it to the shop to rebuild
sent it in for repair
sent the body out to get welded
body was welded and machined
welded up the body and remachined it
got the seat remachined
machined the plug
patched the hole in the housing
housing was cracked welded it
repaired the threads with an insert
put a thread insert in the bonnet hole
bolt hole was no good had to drill it and go up a size
repaired the linkage for now
fixed the leak at the supply fitting
fixed the indicator
fixed the leak put a new o ring in it
fixed it for now but it needs a new body
temporary gasket in it
temporary repair needs to be done right
plugged the supply port for now
put a plug in the vent hole take it out later
capped the signal line
screened vent put on
put a bug screen on the breather
breather knocked clean and screwed back in
breather turned down so it won't catch water
moved the breather to the bottom
looked at the seat and it's fine so i left it
looked the plug over good and reused it
looked at the diaphragm didn't see any cracks left it
checked everything and put it back
checked all the bolts for tightness
checked the packing and snugged it
checked the gauge against the test gauge it's off replaced it
checked the oil
checked the stroke and adjusted it
inspected and cleaned
inspected the seat and plug and put them back
inspected the spring and it's okay to reuse
inspected the threads and cleaned them
measured the spring and reused it
replaced the seat because it was cut
replaced it because it was washed out
replaced the stem because the threads were stripped
replaced the diaphragm it had a hole in it the size of a dime
replaced the cage o ring since it was flat
changed the packing because it was leaking about five drops a minute
changed the spring because it wasn't closing all the way
swapped the body the seat area was cut
swapped out the gauge it was stuck at ten pounds
tightened the bonnet bolts because it was weeping
flipped the seat because one side was worn
didn't flip the seat because it's already been flipped
reused the gasket because i didn't have a new one
lapped the plug because it was leaking by
adjusted the spring because it was opening too early
cleaned the cage because it was plugged with sand
greased it because it was dragging
new o ring because the old one was cut
put a new stem in since the old one was galled
threw the spring out it was cracked
old seat's been discarded
old o rings are in the trash
old plug was junk so i tossed it
sent the old actuator back for core
keeping the old stem for a backup
saved the bolts threw the gasket away
reused six bolts and replaced two
two bolts replaced and six cleaned up
reused the plug and the cage replaced the seat
reused the spring the plate and the nut
replaced three studs and greased the rest
one new diaphragm and one reused
one o ring replaced the other one's good
replaced the top one reused the bottom one
top o ring's new bottom one i left alone
new seat fifty five foot pounds on the bonnet
new gasket and bolts torqued to a hundred and twenty
put the bonnet on and torqued it to thirty five
bonnet on bolts greased torqued to forty eight foot pounds
new diaphragm housing bolts at one hundred sixty inch pounds
put the nut on and torqued it to seventeen newton metres
packing replaced and nut tightened to twenty five inch pounds
greased the studs and torqued them to ninety foot pounds
seat in and torqued to one hundred forty newton metres
body bolting at seventy two newton metres all around
adjusted the spring up to fifteen psi
adjusted the stroke down to five eighths
adjusted the float to dump at half a glass
adjusted the supply it was at fifty set it to thirty five
calibrated three to fifteen and checked it at nine
calibrated zero and span and stroked it three times
positioner adjusted to open at three and full at fifteen
set the zero on the positioner
turned the span down a little
changed it from direct to reverse acting
flipped the actuator to fail closed
swapped the spring to the other side to make it fail open
stroked it after i greased it and it moves good
valve's back in service after the rebuild
opened the block valve and put it back online
rebuild's complete
rebuild finished and tested
cleaned out the whole thing and replaced all the seals
did the bottom end only
did the top end didn't open the body
just did the soft goods
did both diaphragms and the gaskets
got a new seat in there
got it apart
got it all cleaned up
got the new diaphragm in and the bolts started
got the bonnet torqued
`;
