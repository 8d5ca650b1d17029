/** Lines that people would say: what is found on every part. Invented; a line a phrase, numbers and tags as spoken. */
export const FINDINGS = `
seat's good
seat looks okay
the seat is worn on one side
seat worn pretty bad
got some wear on the seat face
a little bit of wear on the seat
seat is washed out
seat's washed out on the outlet side
seat is wire drawn all the way around
sand cut on one side of the seat
steam cut the seat real bad
light pitting on the face of the seat
seat's pitted all around
few small pits in the seat
seat has a nick in the edge
there's a cut in the seat on the outlet side
deep cut across the seat face
seat ring's cracked
hairline crack in the seat ring
no cracks in the seat that i can see
seat ring is stuck in the body
can't get the seat ring to budge
seat ring was loose
somebody left the seat ring out
seat's corroded on the bottom
rust on the outside of the seat
seat is scored from top to bottom
couple scratches on the seat
light scratches on the seating face
seat ring threads are galled
seat's got scale built up on it
sand packed in around the seat
seat is chipped on one edge
little chip out of the seat ring
that seat is junk
seat's beat up pretty good
nothing wrong with the seat
the seat is still good no wear
soft seat is extruded
seat has swelled up
the old seat is hard and brittle
seat ring doesn't look bent or dented
plug looks fine
the plug is worn on the bottom
plug worn all around the face
heavy wear on the plug
plug's just starting to wear on one side
erosion on the plug face
the plug is eroded plumb through
plug got washed out bad
wire drawing on the lower edge of the plug
plug is sand cut on both sides
pitting on the bottom of the plug
plug is pitted a little
disc has pits all over the face
the plug is scored down one side
some scoring on the plug nothing major
plug's scratched up
light scratch marks on the outside of the plug
nick in the edge of the plug
plug's got two nicks in it
plug is cracked at the top
no cracks in the plug
plug is broke off the stem
plug came loose from the stem
the plug is stuck in the cage
plug is hanging up in the guide
plug drags a little going down
plug's seized up tight
galling on one side of the plug
the disc is eaten up on the face
ball is scratched
ball's scored pretty deep on the inlet side
ball is pitted but not bad
ball looks clean no scratches
paraffin all over the plug
plug is caked with scale
chip out of the face of the plug
plug is dented on the bottom edge
the plug is chewed up
plug isn't worn at all
plug and seat both worn
plug and seat look good
seat and plug are both cut on the same side
seat's pitted but the plug is fine
plug's worn and pitted on the outlet side
stem looks straight
the stem is bent
stem's bent a little at the top
stem is bent real bad
don't see any bend in the stem
stem is scored
scoring on the stem right where the packing rides
stem has light scratches on it
one deep scratch down the stem
stem's scratched on one side
stem's pitted
some pitting on the upper part of the stem
no pitting on the stem
stem's corroded pretty bad up top
stem is worn in the packing area
a touch of wear on the lower stem
stem is cracked at the threads
stem broke at the plug
the stem snapped in two
stem threads are stripped out
threads on the stem look good
stem's galled up
stem is seized won't move at all
the stem is sticking about halfway
stem is frozen over with ice
dirt and oil caked on the stem
paint on the stem
stem's nicked near the bottom
stem has a couple of nicks
stem is loose in the connector
stem's out of line with the yoke
cage is good
cage looks okay no washout
cage is worn on the inside
slight wear inside the cage
cage worn one side only
the cage is eroded around the holes
cage holes are washed out
bottom of the cage is washed out bad
cage is wire drawn on the lower edge
cage is sand cut all the way around
hairline crack near the top of the cage
the cage is broke in two pieces
piece broke out of the bottom of the cage
cage is plugged with sand
half the holes in the cage are plugged
cage holes are plugged up with paraffin
cage is full of scale
little bit of trash in the cage
scratches inside the cage from the plug
cage bore is galled
the cage is pitted on the outlet side
cage is rusted in the body
cage is seized in there won't come out
cage isn't scored or cracked
cage is corroded all over the outside
cage got nicked coming out
guide is worn
guide is worn egg shaped
guide's worn bad on one side
a little wear in the top guide
bottom guide is scored
guide has some scoring inside
guide ports are plugged
comm hole in the guide is plugged with mud
comm hole's clear
guide bushing is galled to the stem
guide is seized up in the bonnet
the guide is loose
guide's eroded on the bottom side
corrosion in the guide bore
guide is pitted inside
guide is full of sand
guide's got a burr and some scratches
threads on the guide are cross threaded
guide looks alright just dirty
guide's okay but the holes are plugged
diaphragm looks fine no tears
diaphragm is torn
the diaphragm is torn at the bolt holes
diaphragm's ripped all the way across
small tear in the diaphragm near the center
diaphragm is split on the outer edge
diaphragm has a hole in it
got a pinhole in the diaphragm
no holes in the diaphragm
diaphragm's hard
the diaphragm has gone stiff and brittle
diaphragm is starting to get hard
diaphragm is swelled up
diaphragm is swollen from condensate
diaphragm is stretched and worn
diaphragm's worn through in the center
diaphragm got pinched in the housing
pinched along one side of the diaphragm
cut on the bottom side of the diaphragm
rubber on the diaphragm is burnt
both diaphragms look good
both diaphragms are torn
diaphragm stuck to the housing
diaphragm is covered in oil
upper diaphragm's good
tear in the upper diaphragm right by the plate
upper diaphragm has gone hard
top diaphragm's got a pinhole in it
the top diaphragm is swollen a little
top diaphragm is fine no tears no holes
power diaphragm is ripped
actuator diaphragm is hard as a rock
actuator diaphragm's leaking on the left side
upper diaphragm is pinched at the flange
no damage on the upper diaphragm
power diaphragm looks nearly new
upper diaphragm is weathered and cracked on the outside
lower diaphragm is good
lower diaphragm's torn bad
there's a hole in the lower diaphragm about the center
balance diaphragm is split
balance diaphragm's swelled up pretty bad
bottom diaphragm is ripped one side
bottom diaphragm's stiff
the bottom diaphragm is worn thin
lower diaphragm is pinched all the way around
lower diaphragm isn't torn just swollen
lower diaphragm is extruded through the bolt holes
upper diaphragm's good lower one is torn
top and bottom diaphragms are both hard
diaphragm plate is good
diaphragm plate's bent a little on one edge
the plate is cracked in the middle
diaphragm plate is corroded on the bottom
rust all over the diaphragm plate
diaphragm plate has pitting on the face
diaphragm plate's loose on the stem
diaphragm plate is dented up top
scratches on the diaphragm plate
diaphragm nut is loose
diaphragm nut was backed off
diaphragm nut's rounded off
the diaphragm nut is stripped
diaphragm nut is rusted on
diaphragm nut won't budge
hole in the diaphragm nut is plugged
diaphragm nut is galled on there
diaphragm nut is cross threaded
diaphragm nut's cracked on one flat
spring is weak
spring's corroded real bad on the bottom end
surface rust on the spring that's all
spring's bowed out to one side
spring is worn on the outside of the coils
no spring in it
spring has lost its tension
spring has taken a set
spring's caked up with mud
spring is frozen up with ice
spring's sticking in the housing
actuator spring is rusty at the bottom
actuator spring is cracked about halfway up
heavy corrosion on the actuator spring
actuator spring's not sitting straight
actuator spring is cocked over to one side
no rust on the actuator spring
actuator spring is pitted all over
actuator spring and diaphragm look good
gasket looks reusable
the gasket is tore on one side
gasket is flattened all the way around
gasket's hard and brittle
gasket is stuck to the body
pieces of gasket still stuck to the face
gasket is seeping a little on the bottom
gasket's blown out
gasket got cut on the inside edge
gasket is pinched
no gasket in there
gasket is cracked and dried out
gasket swelled up on me
gasket's extruded out one side
all the gaskets are bad
gaskets are good on both sides
gasket isn't leaking
o ring's good
o rings look okay
o ring is cut
o ring's cut in two places
o ring is nicked on the outside
small nick in the o ring
o ring is flat on one side
o ring's flattened out pretty bad
o rings have gone hard and they're cracking
o ring swelled up won't go back in the groove
o ring tore coming out
o ring got pinched on assembly
o ring's rolled and twisted
there's no o ring in the groove
o ring came apart in my hand
slight wear on the bottom o ring
o ring's stuck in the groove
o ring is burnt up
both o rings are flat
two of the o rings are cut
top o ring's fine bottom one is cut
o rings are chewed up
no cuts on the o ring
o ring's dry but it's still good
both backup rings are cut
backup ring's missing
backup ring is split
backup rings are extruded on the low side
backup ring is nicked a little
backup ring's chewed up on the edge
backup ring got pinched
o ring and backup ring are both torn
backup ring is good but the o ring's cut
no damage to the backup rings
backup ring is worn down on one side
packing's worn out
packing is leaking
packing's leaking just a little
packing is seeping around the stem
no leak at the packing
packing is dried out and hard
packing rings are torn
packing is flattened down to nothing
packing's extruded out the top
packing is swollen tight on the stem
packing's loose
packing looks like it's in good shape
sand in the packing
packing's missing a ring
bottom packing ring is broken
packing is pretty well shot
packing nut's good
packing nut is seized
packing nut's rounded off on the corners
packing nut threads are stripped
the packing nut is galled
packing nut's cross threaded
packing nut is rusted bad
packing nut was only finger tight
packing nut's chewed up from a pipe wrench
seals are good
seals look okay all of them
seals are all dried out
seals are cut on the top side
seals are worn some
top seal is torn
couple of the seals are nicked
one seal is missing
seals aren't leaking
no tears in the seals
seal's pinched on the left side
bonnet looks fine no cracks
bonnet is cracked
crack in the bonnet by a bolt hole
bonnet's seeping around the bottom
bonnet is corroded on the inside
bonnet's rusted up heavy
bonnet is pitted on the gasket face
some pitting inside the bonnet
bonnet face is scratched
bonnet bore is scored
bonnet is washed out inside
bonnet threads are galled up
bonnet is seized on the body
bonnet is worn where the guide sits
bonnet o ring groove is pitted
bonnet gasket's good
bonnet gasket is leaking
bonnet gasket's weeping on the inlet side
bonnet gasket is stuck to the bonnet
bonnet gasket is hard and crumbling
bonnet gasket's blown out one side
bonnet gasket is cut on the edge
bonnet gasket looks okay but it's flattened a bit
washed out place in the bonnet gasket
bonnet bolts are good
bonnet bolts look fine just a little rust
two bonnet bolts were loose
one bonnet bolt is broke off
bonnet bolt's broken
bonnet stud is stripped
bonnet studs are corroded real bad
bonnet bolts won't break loose
one of the bonnet bolts is bent
bonnet studs are galled
bonnet bolt heads are rounded off
bonnet bolt's cross threaded
bonnet studs are cracked i think
body looks okay inside and out
body's washed out under the seat
body is eroded on the outlet side
some erosion down in the body
body is sand cut inside
heavy pitting in the bottom of the body
light pitting in the body bore
hairline crack in the body on the left side
body is rusted on the outside
surface rust on the body nothing bad
body's weeping at the bottom
body has a pinhole in it
hole washed through the body
scale and trash in the body
paraffin in the body
body is plugged with ice
body's plugged on the inlet side
body threads look intact
body is worn where the cage sits
body's not leaking anywhere
body gasket face is intact
couple of loose bolts on the body
body bolts are rusted bad
body bolt is broke
four body bolts broken
body studs are corroded
body bolts are seized up
body bolt is missing on the bottom
the nuts on the body studs are rounded
body bolting looks okay
one body bolt is cross threaded
housing's rusted through
rust hole in the housing
housing is leaking air
housing's leaking around the edge
no air leaking from the housing
small dent in the housing
housing flange is scratched
mud dauber nest in the housing
housing has ice in it
housing is beat up but it's fine
both housings are rusted
upper housing is cracked at the bolt hole
upper housing is dented in on the top
upper housing is corroded inside
upper housing's leaking at the seam
upper housing is pitted a bit
water in the upper housing
upper housing's bent along the edge
lower housing's good
lower housing is corroded
lower housing's rusted out on the bottom
lower housing's leaking air on the right side
lower housing is full of oil
lower housing's pitted on the face
lower housing's dented a little
mud in the lower housing
upper and lower housing are both okay
upper housing is rusted lower one's fine
bolts are rusted
the bolts were all loose
two bolts broken
one bolt's missing
bolt head's rounded off
cap screws are corroded pretty bad
cap screw's broke off in the hole
nuts and bolts look fine
all the bolts are in good shape
studs are rusted but still usable
no broken bolts
bolts are pitted up some
bolt's bent just a hair
threads are stripped out on one side
threads are galled
threads galled up pretty bad
somebody cross threaded it
threads are a little rusty
threads are nicked at the start
first couple threads are damaged
threads are washed out
threads are worn down real bad
no damage to the threads
dirt in the threads
inlet threads are good
inlet threads are corroded some
inlet threads are eaten up
inlet threads are cross threaded bad
inlet threads are pitted on the bottom
no galling on the inlet threads
outlet threads are fine
outlet threads are washed out bad
outlet threads are eroded on one side
outlet threads are rusted up
outlet threads are worn slightly
outlet threads are cross threaded
outlet threads are galled up a bit
outlet threads not washed out
inlet and outlet threads both look good
inlet threads are good outlet threads are washed out
inlet and outlet threads are corroded
nut is seized on the stem
nut is rusted solid
nut's cross threaded on there
nut came off in two pieces it's broke
ports in the nut are plugged
lock nut's gone
lock nut is missing off the stem
jam nut is rounded off bad
jam nut's seized up
lock nut is rusted
lock nut is galled to the stem
jam nut was just hand tight
valve looks okay on the outside
valve is dirty
valve's plugged
valve's plugged up with ice
valve is froze up
valve's stuck open
valve is sticking a little
valve's seized up won't move
valve is rusted all over
valve isn't leaking anywhere
valve's leaking out the bottom
valve is packed with paraffin
no damage on the valve
valve's washed out inside
whole valve is corroded
actuator's leaking air out the top
actuator's sticking
actuator is sluggish and dragging
actuator is rusted up bad
actuator's crooked on the bonnet
actuator is dented on the side
no air leak on the actuator
oil level's good
oil's a little low
oil's way low
oil level is down some
oil's real dirty
oil looks clean
oil has water in it
oil's full and clean
oil is low and dirty
tubing's kinked
tubing is kinked at the bend
tubing's plugged with ice
tubing's crimped almost flat
tubing is pinched behind the bracket
hole in the tubing
pinhole leak in the tubing
tubing's rubbed a worn spot on one side
no leaks on the tubing
tubing is dented up
fitting's leaking a little air
fitting is loose
fitting's cross threaded
fitting is plugged with dirt
fitting is rounded off
fittings are all tight no leaks
fitting is galled up
fitting's seized in there
tubing and fittings look good
tubing's good but the fitting is leaking
kit looks all there
kit's missing an o ring
seat gasket is flat
seat gasket's flattened bad on one side
seat gasket's eroded on the outlet side
no cuts on the seat gasket
seat gasket is broke up in pieces
seat gasket's nicked a little
cage gasket is torn
cage gasket is stuck to the cage
cage gasket is cut on the inside
cage gasket is pinched on the right side
cage gasket is extruded a little
cage and seat gaskets are both flat
cage gasket swelled up
cage o ring's nicked
cage o ring is flat
cage o ring's hard and flat
cage o ring is swelled up bad
cage o ring's rolled out of the groove
cage o ring is torn in half
cage o ring looks okay
cage o ring's extruded on the bottom
no nicks in the cage o ring
cage o ring is worn one side
stem guide's worn out of round
stem guide is worn pretty bad on the left
stem guide's scored inside
light scoring in the stem guide
stem guide is galled
hole in the stem guide is plugged up
stem guide is loose in the bonnet
stem guide looks okay no scratches
stem guide has sand in it
stem guide o ring's good
stem guide o ring is cut
stem guide o ring is nicked on the inside
stem guide o ring's torn up
stem guide o rings are worn some
stem guide and o ring both look good
seat area is clean
seat area in the body is eroded
light pitting in the seat area
seat area is pretty bad pitted on one side
seat area is scratched a little
rust in the seat area
no washout in the seat area
seat area is fouled up with scale
wire drawing across the seat area
travel indicator's good
travel indicator is broken
travel indicator is sticking some
can't read the travel indicator it's so dirty
indicator gasket is hard
no leak at the indicator gasket
indicator gasket's stuck on there
indicator spring's good
indicator spring's stretched out
indicator spring is corroded a little
breather's plugged with mud
breather is painted over
air coming out of the breather
air blowing out the breather pretty good
no air out of the breather
breather's clear
breather is broke off
vent plug's stopped up with dirt dauber
vent plug is missing
supply port is clear
supply port threads are stripped out
supply port is cross threaded
supply port is plugged with trash
signal port's plugged up with old thread tape
signal port's corroded some
signal port is open no trash in it
signal port's cross threaded
signal and supply ports are clear
vent hole is painted shut
leaking out the vent hole
no leak from the vent hole
stem connector is loose
stem connector's loose one side
stem connector's rusted up
stem connector's missing a bolt
stem connector's slipped it's out of line
stem connector is galled on the stem
positioner's leaking inside
positioner is dirty inside
positioner's corroded bad inside
positioner is knocked out of line
controller is sticking
controller is loose on the bracket
controller's froze up
no issues with the controller
regulator's bleeding out the vent it's leaking
regulator is frozen
regulator's sticking a little bit
regulator's junk
regulator is corroded on the outside
regulator's full of trash
gauge is busted
gauge is cracked all the way across
gauge is full of water
both gauges are broken
strainer is clean
strainer's dirty
strainer is packed with rust and scale
solenoid's burnt up
solenoid's leaking a little out the vent
solenoid is corroded inside
solenoid's frozen
trim looks good for its age
trim is washed out pretty bad
the whole trim is eroded on the bottom end
trim got wire drawn all around
trim's just a little worn
trim is plugged up with paraffin
trim's all scored and pitted
trim isn't worn but it's dirty
didn't find any washout on the trim
scale all over the trim
trim's corroded on the lower half
yoke's good no cracks
yoke looks okay just needs paint
yoke is bent over to the left
there's a crack in one leg of the yoke
yoke's rusted up heavy on the outside
yoke was loose on the bonnet
the yoke broke on one side
yoke is sitting crooked
yoke isn't bent that i can tell
yoke's caked with mud and ice
yoke has a dent in it but it's alright
threads in the yoke are chewed up
yoke clamp's corroded bad
flange looks good on both sides
flange face is pitted
flange face is scratched across the bottom
inlet flange is leaking a little
outlet flange has a bad washout
flange is corroded on the face
flange bolts are loose on the inlet side
two flange bolts are missing
flange got nicked up on the edge
flanges don't line up
flange face is clean no scratches
ring groove on the flange is pitted
handwheel is missing somebody took it
handwheel's broke on one side
handwheel won't turn it's seized
handwheel is real hard to turn
handwheel turns but it drags
handwheel's loose on the shaft
handwheel's rusty but it turns fine
handwheel is stripped just spins
adjusting screw's fine
adjusting screw is seized up
adjusting screw's rusted tight
threads on the adjusting screw are stripped
adjusting screw is bent a little
adjusting screw's rounded off at the top
can't move the adjusting screw it's stuck
adjusting screw turns hard
the adjusting screw's broke off
adjusting screw cap is missing
adjusting screw is galled in the bonnet
adjusting screw isn't bent
adjusting screw was backed off and loose
float is hung up
float's full of fluid must have a pinhole
the float is dented in on the bottom
float came off the arm it's loose
float is covered in paraffin
float's stuck in the down position
float is sticking some on the way up
float's cracked along the seam
float arm is bent
no dents or holes in the float
float's corroded pretty good on the outside
float is gone
linkage looks good moves free
linkage is worn out
linkage's got some slop it's a little worn
linkage pin is missing
linkage is bent on the float side
linkage came apart it's broken
linkage is froze up with ice
linkage is rusted and sticking
linkage is binding
the linkage is out of adjustment not lined up
linkage isn't worn bad just dirty
no wear in the linkage
pilot is plugged up with sand
pilot's bleeding all the time it's leaking
pilot is stuck open
pilot valve is sticking
pilot seat is cut
the pilot's plug is worn
pilot is full of condensate and trash
pilot's iced up
pilot diaphragm has a small tear
pilot looks fine nothing wrong with it
pilot is corroded inside pretty bad
nothing wrong with the spring at all
spring has a crack in it down on the bottom coil
spring is bent and rusted both
checked the spring it's not broke
gasket's dirty but it's still good no tears
gasket must have fell out it's missing
gasket has a leak on the bottom side
o ring looks pretty good i'd run it
o ring is swelled up and soft
o ring's got a tear on the inside
the o ring is pinched right at the edge
o ring is pushed out of the groove it's extruded
o ring has a flat spot and a nick
o ring's worn and a bit hard
whole o ring is just gone missing
backup ring has a cut on one side
backup ring is brittle and broke
backup ring pushed out of the groove
packing doesn't look worn
packing is hard and cracked all the way around
packing got burnt up there at the top
packing nut is loose on the left side
seals are hard as a rock both of them
seals are leaking pretty bad on the outlet side
guide is worn and scored on the bottom
guide has a crack on the edge
bonnet is stuck to the body can't get it off
bonnet's got a chip on the outside
bonnet gasket's torn on the right side
bonnet gasket is flat all around and starting to leak
bonnet gasket got pinched on the inlet side
somebody forgot the bonnet gasket it's not in there
bonnet bolts are all rusted up real bad
three of the bonnet bolts are seized
found the bonnet bolts loose all the way around
bonnet bolts good not stretched
body is washed out bad around the seat
body's pitted but not too bad
crack in the bottom of the body about an inch long
might be a crack in the body not sure
body is seeping at the threads
scoring in the body bore on the left
body bolts are galled up i believe
housing's good just some surface rust
housing might be cracked up on top
corrosion on the inside of the housing
upper housing's got a small pinhole
upper housing is full of dirt
half the bolts are stripped
a couple studs got galled up
threads are in good shape no galling
threads look a little crossed to me
threads are corroded and worn
inlet threads are pretty well stripped
inlet side threads are washed out about halfway
outlet threads are about stripped out on the bottom
nut's got a crack in it
nut is gone nothing there
lock nut's good and tight
valve looks good inside no wear
valve's stuck shut won't move
valve is full of sand and trash
not a thing wrong with this valve
actuator's good no leaks no cracks
actuator has got water in it
oil looks good and it's full
oil's dirty and kinda low
oil is leaking around the bottom of the controller
oil is all the way down bone dry
tubing looks good no kinks
tubing is leaking at the top fitting
tubing is bent over and kinked bad
tubing's plugged with mud on the outlet
some water in there and the tubing's froze
fitting's good and tight not leaking
fitting's leaking pretty bad on the supply side
fitting is broke off in the port
fitting threads are stripped on one side
seat gasket looks good to me
seat gasket is torn up one side
there wasn't any seat gasket in it
seat gasket's hard and cracked
seat gasket is leaking i think
seat gasket is pinched on the left
cage gasket's good still soft
cage gasket looks flat all around
cage gasket is leaking some at the bottom
no cage gasket on it
cage gasket is good no tears
cage o ring is cut on the bottom edge
cage o ring isn't there
cage o ring got pinched going in
stem guide is worn a bit on the inside
stem guide's got a crack at the top
stem guide is corroded and stuck
few pits in the stem guide bore
stem guide o ring is flat and hard
stem guide o ring's swelled up a touch
stem guide o ring is leaking a little air
missing the stem guide o ring
seat area is washed out on the outlet side
seat area's got some light pits
some scoring in the seat area
corrosion in the seat area but no pits
no cracks or nicks in the seat area
seat area's in good shape
travel indicator is missing off the top
travel indicator's bent and it's sticking
travel indicator is loose but it still reads
got a crack in the travel indicator cover
indicator gasket is leaking pretty good
indicator gasket looks flat but it's not leaking
indicator spring is rusted and weak
lost the indicator spring it's missing
breather's gone there's just an open hole
breather is good nothing plugging it
breather is all rusted on the outside
supply port has stripped threads and a crack
supply port's corroded a little on the inside
supply port is leaking around the fitting
signal port's good no dirt in it
signal port has a crack on the left side
signal port threads are stripped pretty bad
stem connector is tight and lined up looks good
stem connector threads are worn some
stem connector isn't loose or broken
one side of the stem connector is bent
positioner is good just dusty
positioner is sticking real bad
positioner's got water in it
arm on the positioner is loose
positioner may be broken not sure
controller is good no leaks
controller has oil and dirt all in it
controller's corroded on the inside real bad
something's broke in the controller
regulator's good not leaking or nothing
regulator is leaking a bit out the top
regulator's stuck and won't move
gauge looks good reads fine
gauge is broke and the glass is missing
gauge is stuck at zero
no glass left in the gauge it's broken
strainer looks good hardly any dirt in it
strainer has a hole in the bottom
strainer screen is torn on one side
no strainer in there it's missing
strainer is corroded and about half plugged
solenoid's good not sticking at all
solenoid is stuck and it's leaking
solenoid coil is burnt and the fitting's loose
cage good seat good plug's got some wear
seat's a little worn but the stem's straight
stem's scratched but not bent
plug is pitted and the seat is washed out
no pits or scratches on the plug or the seat
stem and plug are fine cage is cracked
diaphragm's good and so is the spring
both the plug and the cage are sand cut
packing's leaking and the stem is scored
seat and cage have light erosion on the outlet side
body's good bonnet's good
bonnet gasket and cage gasket both flattened
o rings are all hard and flat
seat's cut cage is plugged and the plug is stuck
diaphragm's torn and the plate is bent
threads good on the inlet a little worn on the outlet
everything's good except the seat gasket
bolts are rusted and one's broke
spring's rusty but it's not cracked or broken
stem isn't bent but the threads are galled
guide and stem both scored on the same side
lower diaphragm is torn upper one's okay
housing's good bolts are good
seat might be cracked i can't tell
could be a little wear on the cage
looks like the o ring may be cut
i think the stem's bent
not sure but the spring looks weak
maybe a hairline crack in the bonnet
plug is probably worn
reckon the diaphragm's leaking
no scoring no pitting on the stem
no rust no cracks in the housing
seat doesn't have any nicks in it
didn't see any wear on the guide
no erosion in the body at all
body's clean inside no pitting
cage is good clean all the way around
plug edge is chipped in two places
top of the cage is nicked up
groove in the bonnet is corroded
backup ring groove is full of dirt
o ring groove's pitted on the bottom
o ring groove on the cage is scratched
gasket groove looks clean
stem is worn real bad at the bottom
upper stem is pitted lower stem's fine
wear on both sides of the plug
seat worn all the way around on the face
seat's worn on the outlet side real bad
diaphragm is partially split around the center hole
inside of the actuator is rusty
outside of the valve is rusted but it's fine inside
left side of the yoke is cracked
right side bolts are loose
bonnet's nicked on the sealing face
bonnet threads are intact
seat area looks intact no damage
inlet threads intact outlet threads stripped
gasket faces are intact on both sides
seating surface on the plug is intact
threads on the stem connector are still intact
guide bore surface is intact just dirty
seat's damaged on the bottom edge
stem threads are damaged bad
upper diaphragm is damaged one side
the linkage is all beat up
actuator housing got damaged somehow
o ring groove isn't damaged
no damage to the plug or the stem
spring's still good not weak
actuator spring feels a little weak
i think the indicator spring has gone weak
spring is real weak and rusted on one end
seat is eroded a little on the inlet side
bonnet's eroded pretty bad on the inside
stem is eroded right above the plug
erosion all around the bottom of the guide
body is eroded through on the left
outlet flange is eroded some
oil's down about half it's low
gotta be low on oil can't see any in the glass
oil is plumb low
actuator oil is good not low at all
oil's got dirt and water in it real dirty
dirty oil but the level's fine
oil isn't dirty
power diaphragm is swollen around the center
packing rings swelled up some
seals swelled up tight in the groove
cage gasket is swollen on one side
plug isn't lined up with the seat
stem connector's a little out of line
cage is misaligned with the guide
spring is sitting off center misaligned
stem threads are stripped just at the top
signal line tubing is kinked in two places
supply tubing has a slight kink by the fitting
edge of the seat's chipped a little
chips out of the bottom of the cage
seals got burnt pretty bad
soft seat is burnt on the outlet side
nuts are rounded off on the yoke
backup ring's flat all around
hole clean through the bonnet
the cage is damaged around the bottom holes
no chips or dents in the disc
`;
