/** Lines that people would say, part by part: its findings and its works in their commonest wordings. Invented; a line a phrase, numbers and tags as spoken. */
export const PARTS_IN_TURN = `
seat worn one side flipped it
the seat is worn
some pitting on the seat
seat's washed out pretty bad
got a scored seat here
found a nick in the seat
seat looks good put it back in
lapped the seat and reused it
seat needs lapping
needs a new seat
put a new seat in
replaced the seat
seat ring is cut on the edge
seat ring's eroded all around
there's a little wear on the seat ring
wire drawing across the seat
the seat is chipped on the bottom
seat is corroded real bad
didn't replace the seat
left the old seat in
going to need a new seat ring
turned the seat over
the seat was seized in the body
had a hard time getting the seat out it was stuck
seat's cracked all the way through
a little scratch on the face of the seat
both sides of the seat are worn
flipped the seat to the good side
seat's already been flipped replace it
cleaned the seat up and put it back
paraffin all over the seat
sand cut the seat on one side
seat and plug both worn
plug's worn
the plug is scored on one side
some scoring on the plug
plug is washed out
found pitting on the face of the plug
plug looks fine
nothing wrong with the plug
swapped the plug
put a new plug in it
the plug needs replacing
gotta change the plug
plug was stuck in the cage
there's a chunk broken off the plug
chipped plug
plug's nicked on the bottom
lapped the plug to the seat
plug was loose on the stem
tightened the plug down
plug is eroded just a touch
the disc is worn on the inlet side
replaced the disc
ball is scratched up pretty good
cleaned off the ball
ball won't move it's seized
order a plug and a seat
plug good seat good
reused the plug
scale built up on the plug
pulled the plug and looked it over
plug's cut real bad going to replace it
the stem is bent
bent stem
found the stem bent a little bit
stem's scored where the packing rides
the stem has some scratches on it
scratched stem
stem's pitted up top
light pitting on the stem
stem is sticking in the guide
the stem won't budge
stem looks good
no scoring on the stem
no damage to the stem
straightened the stem
dressed the stem with emery cloth
polished up the stem and reused it
put a new stem in
stem's been replaced
needs a new stem
bring a stem for this one
stem's galled
galling on the stem and the guide
stem is corroded above the packing
rust on the stem
stem is broke at the threads
stem threads are stripped
greased the stem
ran the old stem again
stem's worn kinda bad on one side
stem and plug are fine
i think the stem might be bent
could be a bent stem
the cage is scored
scored cage
scoring inside the cage
cage is washed out at the bottom
the holes in the cage are plugged
cage holes plugged with paraffin
cage has a crack in it
no cracks in the cage
found a cracked cage
cage looks okay
cage's good to go back in
blew the cage out
cage is full of sand
sand in the cage
scale inside the cage cleaned it out
cage is stuck in the body
couldn't get the cage out it's froze up
replaced the cage and the plug
cage needs to be replaced
clean the cage
cage is eroded around the ports
some erosion on the cage
cage's worn on the inside
put the cage back in
galled up cage
cage is pitted on the outside
flipped the cage
didn't pull the cage
left the cage alone
cage and seat both eroded
order a cage
need to get a new cage for it
cage is broken in two
cage is dented on the edge
the guide is worn
guide's worn on one side
worn guide
guide is scored a little
some scoring in the guide
cleaned up the guide
replaced the guide
new guide in
the guide needs changing
the hole in the guide is plugged
guide port was plugged up rodded it out
comm hole in the guide is plugged with ice
guide looks alright
guide's fine put it back
guide is cracked
guide's galled to the stem
dirt packed in the guide
bring a guide next time
checked the guide and it's good
guide was loose
tightened up the guide
guide's corroded
pitting on the inside of the guide
stem guide's worn out
the stem guide is scored on the inside
got some wear on the stem guide
stem guide is good
cleaned the stem guide
put in a new stem guide
stem guide needs replaced
stem guide hole is plugged
reused the stem guide
stem guide's cross threaded
stem guide was seized had to work it out
new stem guide and new o ring
the diaphragm is torn
torn diaphragm
found a hole in the diaphragm
there's a pinhole in the diaphragm
diaphragm's got a tear on the edge
diaphragm is hard as a rock
diaphragm has gone hard
diaphragm is stiff and starting to crack
swollen diaphragm
the diaphragm's swelled up
diaphragm was leaking
leak in the diaphragm
replaced the diaphragm
put a new diaphragm in
diaphragm needs to be replaced
have to change the diaphragm
didn't change the diaphragm
diaphragm looks good still soft
no tears in the diaphragm
diaphragm's got no holes in it
diaphragm is worn around the bolt holes
diaphragm's ripped at the center
got a diaphragm with a split in it
diaphragm is pinched on one side
order a diaphragm
pick up two diaphragms
both diaphragms are torn
replaced both diaphragms
both diaphragms look good
diaphragm's shot
diaphragm and spring are both bad
upper diaphragm's torn
tear in the upper diaphragm
top diaphragm is good
upper diaphragm has a hole in the center
top diaphragm's leaking
the actuator diaphragm is torn pretty bad
replaced the actuator diaphragm
power diaphragm is hard and cracking
upper diaphragm looks worn but it's not torn
changed out the top diaphragm
need a new upper diaphragm
left the old upper diaphragm in
lower diaphragm is torn
bottom diaphragm has a pinhole
lower diaphragm's swollen
have to replace the lower diaphragm
replaced the lower diaphragm
balance diaphragm's got a tear in it
balance diaphragm is good
put a new balance diaphragm in
lower diaphragm is stuck to the housing
bottom diaphragm's hard
lower diaphragm is wore out
found the lower diaphragm leaking
didn't touch the lower diaphragm
upper and lower diaphragms replaced
upper diaphragm's fine lower one is torn
same on the lower one
other one too
diaphragm plate is bent
bent diaphragm plate
the diaphragm plate's corroded
some rust on the diaphragm plate
diaphragm plate looks good
cleaned the diaphragm plate
put the diaphragm plate back in
replaced the diaphragm plate
diaphragm plate is cracked on the edge
diaphragm plate needs replacing
diaphragm nut is loose
found the diaphragm nut loose
tightened the diaphragm nut
diaphragm nut's stripped
diaphragm nut is rounded off
put a new diaphragm nut on
diaphragm nut torqued to twenty five foot pounds
threadlocker on the diaphragm nut
the spring is broken
broken spring
found the spring broke
spring's weak
weak spring
spring is rusty
some rust on the spring
spring's corroded real bad
spring looks good
nothing wrong with the spring
put the spring back in
reused the spring
put a new spring in it
spring needs to be changed
needs a new spring
bring a spring
spring is bent kinda
spring's cracked at the bottom coil
greased the spring
cleaned the spring up
spring length is four and a half inches
spring measures five and three eighths
spring is worn flat on one end
spring and plate are both corroded
the actuator spring is weak
actuator spring's broken
corroded actuator spring
actuator spring looks fine
put in a new actuator spring
replaced the actuator spring
going to need an actuator spring
didn't replace the actuator spring
rust on the actuator spring but it's not bad
the gasket is torn
torn gasket
gasket's flattened out
gasket is hard and brittle
gasket is leaking
the old gasket was stuck to the body
gasket stuck in the groove
scraped the old gasket off
cleaned the gasket surface
gasket's cut on one side
gasket looks okay
new gasket in
put a new gasket on it
replaced all the gaskets
all new gaskets
need a new gasket
left the old gasket in
threw the old gasket away
reused the gasket
no gasket in there
gasket's missing
gasket blew out on the left side
gasket was pinched
gaskets and o rings all replaced
the gasket's squeezed out on the inside
order two gaskets
seat gasket is flattened
seat gasket's cut
the seat gasket was stuck in the body
seat gasket is crushed
new seat gasket
put a new seat gasket in
replaced the seat gasket
seat gasket looks good
reused the old seat gasket
seat gasket's leaking i think
needs a seat gasket
torn seat gasket
found no seat gasket in it
seat gasket's washed out on one side
cage gasket is torn
cage gasket's flat
put a new cage gasket in
replaced the cage gasket and the seat gasket
cage gasket is stuck to the cage
cage gasket is good
have to get a cage gasket
left the cage gasket in there
bonnet gasket's leaking
leak at the bonnet gasket
bonnet gasket is torn
the bonnet gasket is blown out
bonnet gasket's flattened all the way around
put on a new bonnet gasket
need a bonnet gasket
bonnet gasket is okay
no leak at the bonnet gasket
scraped off the bonnet gasket
bonnet gasket was stuck on the bonnet
reused the bonnet gasket
cut bonnet gasket
indicator gasket is leaking
indicator gasket's torn
new indicator gasket
replaced the indicator gasket
indicator gasket is hard
indicator gasket's missing
indicator gasket looked fine left it in
the o ring is cut
cut o ring
o ring's nicked
found a nick in the o ring
o ring is flattened
flat o ring
o ring's swollen
swelled up o rings
o rings are hard
o ring is brittle
o ring's torn
o ring is pinched
o ring was extruded on one side
the o ring's missing
there wasn't an o ring in there
o ring looks good
replaced the o ring
put a new o ring in
new o rings all the way around
replaced all the o rings
replaced two o rings
changed a couple of o rings
need a new o ring
bring me four o rings
o ring was stuck in the groove
cleaned the o ring groove
greased the o rings
put the old o ring back in
didn't change the o rings
o ring's leaking
o ring is chewed up
both o rings are worn
o rings and backup rings replaced
cage o ring is cut
cage o ring's flattened
cage o ring is hard as plastic
cage o ring looks good
new cage o ring
replaced the cage o ring
put a new o ring on the cage
cage o ring needs replacing
pinched cage o ring
cage o ring's swollen
need to order a cage o ring
greased up the cage o ring
stem guide o ring is cut
stem guide o ring's swollen
stem guide o ring is worn a little
replaced the stem guide o ring
put a new stem o ring in
new stem guide o ring
stem guide o ring is leaking
stem guide o ring's good
stem guide o ring was missing
reused the stem guide o ring
need a stem guide o ring
backup ring is cut
backup ring's extruded
extruded backup ring
backup ring is torn on one side
backup rings are worn
both backup rings cut
both backup rings are fine
replaced both backup rings
new backup rings
put a new backup ring in
one backup ring missing
backup ring's broke
backup ring needs replacing
reused the backup rings
the packing is leaking
packing's leaking a little
packing leaks
leaking packing
stem packing's worn
packing is worn out
packing is hard
packing's dried out and hard
new packing in
repacked it
put new packing in it
packing needs replacing
needs new packing
snugged up the packing
no leak at the packing
packing's not leaking
adjusted the packing
didn't replace the packing
packing is okay leaving it
left the old packing in
packing is weeping some
seep at the packing
packing's chewed up real bad
bring packing for it
pulled the packing out
cleaned out the packing box
packing torn up
packing stuck in the bonnet
found the packing nut loose
tightened the packing nut
packing nut's seized
packing nut is rounded off
stripped packing nut
replaced the packing nut
packing nut is good
packing nut needs tightening
snug up the packing nut
packing nut's corroded
packing nut is cracked
backed off the packing nut a little
can't turn the packing nut it's stuck
seals are worn
seals are hard
the seals are all swollen
all the seals look good
replaced all the seals
put new seals in
new seals throughout
seals need replacing
seals are leaking
seals are cut up
left the old seals in
torn seals
bring a set of seals
greased all the seals
needs a kit
put a kit in it
installed a new kit
new kit in
need to order a repair kit
bring a kit for this one
pick up a kit
put a whole new kit in it
kit's on order
didn't have a kit so reused everything
going to need a seal kit
get me two kits
found a crack in the bonnet
bonnet is cracked
the bonnet's corroded
some corrosion on the bonnet
rusty bonnet
bonnet looks good
no cracks in the bonnet
pulled the bonnet
took the bonnet off
put the bonnet back on
leak between the bonnet and the body
bonnet face is pitted
bonnet's washed out inside
bonnet was stuck on there
bonnet needs replacing
wire brushed the bonnet
bonnet's scored in the bore
bonnet threads are fine
bonnet and body both corroded
didn't take the bonnet off
loose bonnet bolts
two bonnet bolts missing
one bonnet bolt is broke
bonnet bolts are rusty
bonnet studs are stretched
bonnet bolts torqued to twenty eight
torqued the bonnet bolts to forty five foot pounds
replaced the bonnet bolts
put in four new bonnet bolts
bonnet bolts look good
reused the bonnet bolts
greased the bonnet studs
bonnet bolting's corroded real bad
need eight bonnet bolts
bonnet bolt's stripped
bonnet bolts need to be retorqued
bonnet nuts were seized had to cut them off
body bolts are rusted
body bolting is good
tightened up the body bolts
body bolts torqued to sixty foot pounds
a couple of body bolts were loose
replaced two body bolts
body bolt is broken
new body bolts
body bolts are corroded a little
one of the body bolts is missing
the body is washed out
body's eroded on the outlet side
erosion in the body
body is pitted on the inside
some pitting in the body
body's good
body looks fine
no washout in the body
found a hole in the body
pinhole in the body
body is cracked
crack in the body on the inlet side
the body is corroded inside
cleaned out the body
body's full of sand
lots of scale in the body
paraffin in the body
mud in the bottom of the body
flushed the body
washed the body out
washed out body
body is leaking at the bottom
needs a new body
the body's junk
dent in the body
inspected the body
body bore is scored a little
found a crack in the housing
housing's corroded
rust in the housing
housing looks good
cleaned the housing
housing is dented
dented housing
air leak at the housing
water in the housing
drained the water out of the housing
housing needs replacing
put the housing back on
housing bolts are loose
tightened the housing bolts
upper housing is rusted
upper housing's cracked
upper housing has a dent in it
upper housing is okay
cleaned the upper housing
took off the upper housing
replaced the upper housing
upper housing was full of water
put the upper housing back on
lower housing's corroded
lower housing is good
some pitting in the lower housing
lower housing's cracked at a bolt hole
cleaned up the lower housing
lower housing is leaking air
need a new lower housing
dirt in the lower housing
bolts are loose
found three bolts loose
two bolts broken
one bolt missing
the bolts are all rusty
bolts look good
tightened all the bolts
tightened up the bolts to thirty foot pounds
replaced four bolts
new bolts
put new studs in
studs are corroded
stud's stripped
a stud broke off
stripped bolt
bolts are rounded off
bolts need replacing
put threadlocker on the bolts
put thread locker on the bolts
bolts torqued to fifty
cap screws are tight
cap screws are missing on the left side
two cap screws stripped
bring six bolts
nuts and bolts are fine
bolt's bent
bent bolts
cleaned the bolts with a wire brush
threads are stripped
stripped threads
threads are galled
galled threads on it
threads look good
threads are intact
threads are all good
cross threaded
somebody cross threaded it
threads are damaged
chased the threads
cleaned up the threads
dirt in the threads
threads are full of old dope
a nick in the threads
put thread locker on the threads
no damage to the threads
threads need cleaned up
inlet threads are good
inlet threads look intact
inlet threads are corroded
rust on the inlet threads
inlet threads are stripped
inlet threads are galled up
cleaned the inlet threads
inlet threads are a little worn
inlet threads leaking
inlet threads are washed out
inlet and outlet threads are good
outlet threads are good
outlet threads are pitted
outlet threads cross threaded
outlet threads look a bit worn
outlet threads are eaten up
some corrosion on the outlet threads
outlet threads are intact
wire brushed the outlet threads
outlet threads are damaged pretty bad
leak at the outlet threads
nut is loose
loose nut
the nut's stripped
nut was seized
nut's rounded off
nut's missing
tightened the nut
put a new nut on
rusted nut
nut is fine
needs a nut
lock nut is loose
found the lock nut backed off
tightened the lock nut
lock nut's stripped
lock nut is good
put a new lock nut on
lock nut's missing
jam nut is loose
jam nut was seized on the stem
snugged the jam nut down
replaced the jam nut
jam nut's rounded
jam nut is corroded
jam nut's cross threaded on there
put thread locker on the lock nut
lock nut torqued to twenty foot pounds
valve's leaking by
valve won't open
the valve is stuck
valve's froze up
valve is plugged
ice on the valve
valve is sticking
valve's in good shape
nothing wrong with the valve
pulled the valve
took the valve apart
took it all apart
put the valve back together
reinstalled the valve
valve needs to be rebuilt
valve is full of sand
valve's shot
checked the valve over
valve is dirty on the outside
painted over valve
blew down the valve
actuator's leaking air
air leak on the actuator
did not open the actuator
didn't open up the actuator
opened the actuator
actuator is seized
actuator's sticking a little
actuator won't move
took the actuator off
put the actuator back on
rebuilt the actuator
actuator is rusted
actuator's corroded on top
water in the actuator
cleaned the actuator out
actuator holds air
actuator's holding at thirty psi
actuator won't hold air
put thirty pounds on the actuator no leaks
actuator needs to be replaced
actuator bolts are loose
actuator's loose on the yoke
no leak on the actuator
inspected the actuator it's good
oil is low
low on oil
oil's dirty
dirty oil
oil is black
changed the oil
drained the oil
filled it with oil
topped off the oil
added some oil
oil needs changing
oil's leaking out the bottom
oil level's good
drained it and filled it back up
bring some oil
water in the oil
tubing is kinked
kinked tubing
found a kink in the tubing
leak in the tubing
tubing is plugged
tubing's plugged with ice
put new tubing on
ran new tubing
tubing needs replaced
blew out the tubing
tubing's loose
tubing is broke at the fitting
there's a hole in the tubing
corroded tubing
tubing rubbed through on the bottom
tubing's pinched
straightened the tubing
tubing and fittings are good
leaking fitting
fitting's loose
tightened the fitting
cracked fitting on the supply
fitting's cross threaded
put in a new fitting
fitting needs to be tightened
fittings look good
no leaks at the fittings
fitting's plugged
broke off a fitting
fitting is stripped
bring a quarter inch fitting
thread taped the fitting and put it back
rounded off fitting
seat area's washed out
seat area is good
pitting in the seat area
seat area's pitted
seat area is eroded a little
cleaned the seat area
seat area's scored
no washout in the seat area
seat area looks clean
corrosion in the seat area
nick in the seat area
dressed up the seat area
scale in the seat area
seat area is cut out on the outlet side
travel indicator is bent
bent travel indicator
travel indicator's missing
travel indicator is broken
travel indicator's loose
travel indicator is stuck
travel indicator looks fine
replaced the travel indicator
adjusted the travel indicator
straightened the travel indicator
travel indicator is off
travel indicator's out of line
cleaned the travel indicator
need a travel indicator
put a new travel indicator on
travel indicator is hard to read it's dirty
indicator spring is broken
indicator spring's missing
indicator spring is weak
indicator spring's good
new indicator spring
replaced the indicator spring
indicator spring is rusty
indicator spring's bent
need an indicator spring
put the indicator spring back
plugged breather
breather's plugged with mud
breather is plugged up with paint
ice in the breather
breather's iced over
air coming out of the breather
air blowing out the breather
breather's leaking
breather is missing
breather's broken off
breather is clear
cleaned the breather
cleaned out the breather
put a new breather in
dirt dauber nest in the breather
breather is dirty
vent plug's plugged
vent plug is missing
put a new vent plug in
vent plug is good
bring a breather
no air out of the breather
supply port is plugged
supply port's got dirt in it
cleaned the supply port
blew out the supply port
supply port is good
supply port's stripped
supply port threads are damaged
leak at the supply port
supply port is corroded
supply port's clear
ice in the supply port
signal port's plugged
signal port is clean
signal port is leaking
cleaned out the signal port
mud in the signal port
signal port threads are stripped
signal port looks fine
signal port's cross threaded
rodded out the signal port
signal port's half plugged
vent hole is plugged
plugged vent hole
vent hole's clear
vent hole is plugged with mud
vent hole plugged with ice
cleaned out the vent hole
vent hole is good
leaking out the vent hole
air out of the vent hole
gas coming out the vent hole
vent hole's got a bug nest in it
rodded out the vent hole
blew out the vent hole
painted over the vent hole
stem connector is loose
stem connector's cracked
stem connector is bent
tightened the stem connector
adjusted the stem connector
replaced the stem connector
stem connector's stripped
stem connector's missing a bolt
stem connector is corroded
put the stem connector back on
took the stem connector off
stem connector is slipping
stem connector's out of line
stem connector needs replacing
positioner is leaking air
positioner's bad
positioner is out of calibration
calibrated the positioner
recalibrated the positioner
positioner is plugged
positioner's sticking
positioner is loose
positioner needs to be calibrated
positioner's full of water
positioner arm is bent
positioner's working fine
didn't calibrate the positioner
tightened the positioner down
order a positioner
controller is leaking
controller's bleeding air
controller is out of whack
controller is working fine
controller needs a calibration
controller's stuck
controller is corroded inside
leave the controller
bring a controller
controller relay is dirty
repaired the controller
regulator's leaking air
regulator is bad
regulator's froze up
regulator is full of water
drained the regulator
adjusted the regulator
set the regulator at thirty five psi
regulator's set at twenty
regulator is good
regulator's plugged
put a new regulator on
regulator needs replaced
regulator won't adjust it's stuck
order a regulator
supply regulator is sticking
gauge is broken
broken gauge
gauge is bad
gauge's stuck
put a new gauge on
gauge needs to be replaced
need a gauge
gauge reads twenty pounds
gauge's off a little
calibrated the gauge
both gauges are broke
replaced both gauges
bring a thirty pound gauge
plugged strainer
strainer's full of sand
sand in the strainer
strainer is dirty
cleaned the strainer
pulled the strainer and cleaned it
strainer has a hole in it
strainer's torn
strainer is clean
blew out the strainer
strainer needs cleaning
strainer's half plugged with scale
no strainer in it
put the strainer back in
strainer is corroded
need a new strainer
strainer didn't need cleaning
solenoid is burnt out
burnt solenoid
solenoid's stuck
solenoid is leaking
solenoid's bad
solenoid is good
solenoid needs replacing
put a new solenoid on
solenoid is sticking a little
cleaned the solenoid
bring a solenoid
trim is worn
trim's eroded
trim is washed out bad
put new trim in
needs new trim
trim is scored
pitting on the trim
trim's sand cut
order a trim set
trim's plugged with trash
didn't change the trim
trim is fouled with paraffin
inspected the trim
trim's beat up
crack in the yoke
yoke's bent
tightened the yoke
rusty yoke
yoke is fine
took the yoke off
yoke is broken on one side
yoke's out of line
yoke bolts are loose
no cracks in the yoke
leaking flange
flange's corroded
flange is pitted on the face
flange face is scratched
inlet flange is leaking
outlet flange is good
tightened the flange bolts
tightened up the flange
flange face looks good
cleaned the flange face
wire brushed the flange
rust on the flange
flange is out of line
flange's washed out at the edge
new gasket in the flange
flange gasket is leaking
no leak at the flange
flange is nicked
leak on the downstream flange
handwheel is missing
handwheel's broke
handwheel is stuck
handwheel won't turn
handwheel is hard to turn
greased the handwheel
need a handwheel
put the handwheel back
handwheel nut is missing
cracked handwheel
handwheel is rusted up
adjusting screw is seized
adjusting screw's stuck
adjusting screw is stripped
adjusting screw is bent
adjusting screw's good
adjusting screw is rounded off
greased the adjusting screw
turned the adjusting screw in two turns
backed out the adjusting screw
cleaned the adjusting screw
replaced the adjusting screw
adjusting screw needs replacing
adjusting screw's loose
adjusting screw is broke off
threads on the adjusting screw are galled
float is stuck
float's got a hole in it
hole in the float
float is full of water
float's leaking
paraffin on the float
float's hung up
adjusted the float
float arm's bent
float is dented
scale on the float
pulled the float out
linkage is bent
bent linkage
linkage's broke
straightened the linkage
linkage needs adjusting
linkage's out of line
linkage is missing a pin
slop in the linkage
linkage is rusty
cleaned and greased the linkage
linkage is seized up
pilot is sticking
pilot's dirty
rebuilt the pilot
pilot needs a kit
pilot is stuck open
pilot's worn out
pilot is bleeding gas
pilot needs replaced
pilot's froze
took the pilot apart
pilot seat's worn
plug and seat both worn replaced both
seat and cage look good reused both
stem and guide are scored
seat is pitted and scored
plug is worn and chipped on one side
cage is scored and plugged up
diaphragm is hard and torn
spring's rusty and weak
o ring's flat and hard
guide's worn and the o ring is cut
bonnet's good body's good
stem's bent replaced it
diaphragm torn replaced it
packing leaking tightened it up
breather plugged cleaned it out
o ring cut put a new one in
gasket torn new one in
spring's broke need a new one
cage plugged blew it out
plug scored lapped it in
seat good reused it
stem scratched cleaned it up and reused
strainer plugged cleaned it
jam nut loose tightened
indicator bent straightened it
seat's a little worn but it'll go back in
plug's got some wear leaving it for now
upper diaphragm's okay left it in
cage is scored a little not replacing it
seat worn all around have to replace it
seat's worn both sides needs a new one
guide worn gotta change it
found the seat washed out on the outlet side
found the plug broken
found the packing worn out
found the o ring in pieces
found some trash in the seat
found a bad o ring
found a loose fitting on the supply line
found one bolt stripped
found the breather missing
found a tear at the edge of the diaphragm
found sand in the bottom of the body
found the diaphragm nut a little loose
found everything good
everything's fine in there
all the parts look good
no issues
no problems found
looks good
it's fine
looks okay to me
it's worn out
it's worn a little
it's cracked
it's all rusted up
it's washed out
it's toast
pretty bad shape
that one's bad
that one's good
this one's worn too
it's pitted real bad
it's got a hole in it
kind of beat up
a little bit of wear
some scratches
a few nicks on the edge
light scoring
heavy scoring
heavy corrosion
bad pitting
starting to wear
starting to corrode a little
just a hairline crack
slight wear on one side
slightly scored
badly worn
badly eroded on one side
really worn
excessive wear
worn all the way around
worn on the inside
worn on the left side
scored on the right side
pitted at the top
cut at the bottom
corroded on the outside
cracked at the edge
torn in the center
dirt in the groove
nick on the face
hole's plugged
replaced them
replaced them both
swapped it out
swapped both
changed it
changed it out
went ahead and replaced it
had to replace it
already replaced it
put in new ones
flipped it
flipped it over
turned it over
needs replacing
needs to be replaced
gotta replace that
gonna have to change it
will replace it next time
maybe needs a new one
cleaned it up
cleaned it out good
washed it out
blew it out with air
wire brushed it
scraped it clean
wiped it down
needs cleaning
put it back in
put it back
ran it again
good to go back in
going back in
lapped it in
greased it up and put it back
tightened it up
snugged it up
needs tightening
took it off
put it on
looked it over
inspected it it's good
put threadlocker on it
thread locked it
threw it away
pitched the old one
dressed it up with a file
bled it down
tore it down
took it apart and cleaned it
didn't replace it
didn't clean it
didn't open it
not replacing it
leave it for now
leave it alone
left it the way it was
did not pull the seat
did not check the diaphragm
didn't get to the packing
didn't need to change the spring
didn't grease the stem
didn't flip the seat
didn't take the actuator apart
we're not changing the cage
not gonna replace the plug today
leaving the bonnet gasket alone
no leak at sixty psi
holding at sixty pounds
bubble tight at one hundred psi
seat's holding
dead tight
no bubbles
still leaking by
won't hold
seat won't hold at fifty
leaking by at sixty psi
three bubbles a minute at fifty pounds
about ten bubbles a minute
two drops a minute at the packing
five cc a minute at one hundred pounds
seat test passed
seat leak test is good
failed the seat test
did a seat test at eighty psi no leaks
strokes full
full travel
full stroke
opens and closes fine
stroked it twice it's good
stroked it at thirty psi full travel
won't open all the way
won't close
only half travel
not stroking
only opens about fifty percent
took eight seconds to stroke
stroke is three quarters of an inch
travel is one and a half inches
jerky stroke
shell test passed
no leaks on the body
shell test at two hundred fifty psi no leak
packing test good
no leak on the stem
stem's leaking a little
packing's holding
actuator test passed
actuator's tight no leaks
housing doesn't leak
actuator leaks down
diaphragm leaks at twenty psi
tested good
passed
everything tests good
failed the packing test
torqued to twenty eight
torqued them to thirty five foot pounds
torqued to a hundred and five foot pounds
one twenty inch pounds on the nut
tightened to forty foot pounds
upstream is one fifty psi
upstream pressure sixty pounds
downstream is twenty psi
downstream's at zero
signal's at fifteen psi
signal pressure twelve pounds
supply's thirty five
supply pressure is twenty psi
pressure's about ninety
gauge says fifty five psi
temperature's eighty degrees
about a hundred and ten degrees
stem measures point four nine five
worn about ten thousandths
point oh one five clearance
seat's worn twenty thou
gap's an eighth of an inch
it's about forty percent open
opens at six pounds
starts to move at five psi
held for ten minutes
held sixty pounds for five minutes
starting on f v one oh one
this is f v one oh one
on lima victor two zero four now
p v one oh four bravo
next one is l c v two one three
moving to papa victor three zero six
two inch valve
it's a one inch
three inch valve fail closed
pressure to open
it's an air to close
fail open valve
air to open
severe service
sandy service
sour service
two inch pressure to close normal service
i smell gas
smell gas here
gas alarm's going off
h two s alarm
still got pressure on it
it's still holding pressure
there's still pressure in the body
bled it down but it's still got pressure
can't get it isolated
block valve's leaking by
block valve is passing
no lock on it
isn't locked out
spring's still loaded
spring let go
spring still has tension on it
cut my hand
got hurt
oil spill on the ground
spilled some oil
there's a fire
done with this one
all done
we're done here
finished with this valve
what's left
what did i miss
what am i missing
read it back
read that back to me
say that again
what have you got
what do you have so far
take a picture
get a picture of this
take a photo
stop listening
start listening
listen up
go ahead and listen
scratch that
strike that
never mind that
forget that last one
scratch that the seat's good
correction it's the plug
correction the lower diaphragm
no wait the upper one
make that thirty psi
i mean the guide
sorry the cage not the seat
the plug i mean the seat
correction i already replaced it
make that four bolts
no the stem guide o ring
note that the line is rusty
note valve was painted
note that the handwheel sticks in cold weather
for the record the tag was missing
remark needs paint
order a seat and a gasket
order two o rings
bring a spring and a diaphragm
bring new bolts for the bonnet
pick up a packing set
pick up some tubing
get me a seat gasket
get me a couple of o rings
put a stem on the list
put two backup rings on the list
need to order a diaphragm plate
add a breather to the list
we'll need to bring a bonnet
same thing on the upper
same on the other one
ditto for the cage
ditto for the guide
same for the plug
both of them
`;
