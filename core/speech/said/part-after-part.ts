/** Lines that people would say going through a valve's bill of parts, each part with what can be wrong with it, said many ways round. Invented; a line a phrase, numbers and tags as spoken. */
export const PART_AFTER_PART = `
starting with the seat it's worn on the one side
worn pretty good on the outlet side is the seat
there's a groove in the seat about halfway around
found the seat washed out on the bottom
the seat's got a washout on the outlet side
looks like the seat is eroded around the edge
on the seat there's a little bit of pitting
one of the seats is chipped
the seat has been cut by sand all the way around
no wear on the seat that i can see
nothing wrong with the seat on this one
the seat ring was scored on the inside
seat ring is pitted on the top face
slight wear on the seat ring nothing serious
seat and seat area are both washed out
seat and plug both look good
the seat doesn't look worn to me
might be a hairline crack in the seat ring
the seat insert's been chewed up
seat insert is soft and swollen
corroded on the bottom that seat
a nick on the edge of the seat ring
two little nicks in the seat ring
seat's stuck in the body can't get it out
seat ring was seized in there had to heat it
got the seat out finally it was rusted in place
seat came loose in the body
the seat was only hand tight
seat's dirty but there's no damage
there was sand packed in behind the seat
the threads on the seat ring are galled
seat's good on one side bad on the other
the good side of the seat is up now
flipped the seat over and put it back in
seat was flipped already so we replaced it
we flipped the seat ring and lapped the plug to it
lapped the seat with fine compound
lapped the seat in about ten minutes
the seat was lapped and put back
seat got lapped it looks good now
took the seat out and cleaned it up
cleaned up the seat and the seat area
seat ring cleaned and reused
seat ring replaced with a new one
put in a new seat and a new seat gasket
a new seat went in this one
seat needs to be lapped next time
the seat's going to need replacing before long
both the seat and the plug need to be replaced
i'd order a seat for this one
torqued the seat ring to one hundred twenty foot pounds
tightened the seat ring with the seat tool
wire brushed the threads and screwed the seat back in
greased the seat ring threads before i put it in
seat ring's eroded worse on the bottom than on the top
seat is worn but not enough to leak
seat isn't cracked just scratched
i don't see anything wrong with the seat ring
the valve seat looks brand new
valve seat's burnt up looks like it got hot
valve seat's got a chunk missing
it's the seat that's leaking not the packing
seat leaks just a little at fifty pounds
seat is holding now no leak
found paraffin on the seat that's why it leaked
scale all over the seat ring
seating surface is rough on one side
there's pitting all over the seating surface
the seating surface is clean and smooth
seating area in the body's washed out
seat area is corroded on the inlet side
seat area looks okay just dirty
some erosion in the seat area on the outlet side
seat area's pitted but it cleaned up
there's a crack in the seat area of the body
dressed the seat area with a stone
cleaned all the scale out of the seat area
seat area has a scratch running across it
scratches around the seat area not deep
moving on to the plug it's worn on the face
plug is scored down one side
there's scoring down the side of the plug
scoring on the side of the plug pretty heavy
heavy wear on the plug face
the face of the plug is pitted
the face of the plug's wore out
the plug's got a chip out of the edge
found a chip in the plug on the bottom edge
chipped on the edge the plug is
plug has a flat spot on one side
plug's washed out on the outlet side
plug was washed out clean through
the plug is wire drawn in two places
erosion on the plug and the seat both
looks like sand got the plug
the plug was stuck to the seat
plug's stuck in the cage had to drive it out
plug is hanging up in the cage
plug drags in the cage about halfway down
plug was loose on the end of the stem
the plug broke off the stem
the plug is bent over to one side
cracked plug in this one
crack in the plug from the hole to the edge
there's no crack in the plug
plug's not worn at all
plug isn't too bad just a little scratched
plug looks a little worn but it'll do
i think the plug might be cracked
can't tell if the plug is worn or just dirty
plug was caked with paraffin
the plug had scale on it
scale on the plug and on the cage
corrosion on the bottom of the plug
plug's rusty on the back side
plug's been replaced with the new one
replaced the plug and the stem together
new plug and stem went in
the old plug was no good so we tossed it
put the old plug back in for now
cleaned the plug up and put it back
polished the plug on the lathe
dressed the edge of the plug with a file
lapped the plug into the new seat
turned the plug over it had a good side
the plug needs changing out
plug needs to be lapped
need one plug for this valve
inner valve is scored real bad
inner valve's got some wear on it
inner valve looks fine to me
the disc has a cut across it
disc is pitted around the edge
the disc was replaced last month looks new
disc is swollen and coming out of the holder
rubber on the disc is hard
the ball is scored on one side
ball's worn a little on the inlet side
a few scratches on the ball nothing deep
nothing wrong with the ball
ball is stuck shut
ball was coated with scale
cleaned the ball and greased it
pulled the ball out and replaced it
poppet's worn and so is its seat
next is the stem it's bent
stem's bent up near the top
bent just above the packing the stem is
there's a bend in the stem down low
a slight bend in the stem
stem's got a slight bow to it
the stem isn't bent it's just dirty
stem doesn't look bent
the stem is straight and clean
no pitting on the stem and no scoring either
scored right where it goes through the packing
stem is scored through the packing area
found scoring on the stem under the packing
there's some light scoring on the stem
light scratches up and down the stem
one deep scratch on the stem
stem has pits all along it
pitted stem needs to be changed
pitting at the top of the stem not too bad
the stem is rusty above the packing nut
rust on the stem above the packing
stem's corroded pretty heavy
stem galled in the guide
galling on the bottom of the stem
the stem is galled to the guide
the stem's broken off at the plug
stem broke right at the threads
stem snapped off in the plug
the threads on the stem are stripped
stem threads are stripped out at the top
threads on the end of the stem are damaged
stem threads are galled up
stem threads look good
stem's cross threaded in the connector
the stem was seized it wouldn't move at all
stem won't move up or down
stem's sticking about halfway
stem sticks when it's closing
stem is stiff to move by hand
it's worn where it runs in the guide
wear on the stem where the guide rides
stem's worn on one side from the guide
leaking around the stem
there's a leak around the stem at the packing
stem's leaking up by the packing nut
stem is misaligned with the actuator
stem's off center in the bonnet
stem was polished and put back
polished the stem with fine emery cloth
cleaned the stem and put some grease on it
greased the stem before putting it back
the stem got straightened in the press
straightened the stem as best i could
tried to straighten the stem but it's no good
replaced the stem it was too far gone
stem has been changed out
a new stem was put in
need a new stem and a new stem guide
stem's going to have to be replaced
order one stem and one packing set
stem and plug both need replacing
stem and guide are both galled
stem and packing both worn out
stem is fine packing is not
the shaft's scored by the bushing
shaft is worn where the packing goes
shaft turns but it's stiff
shaft was bent replaced it
spindle's scored up under the packing
the spindle is rusty and pitted
spindle's bent a hair
on to the cage it's eroded on the outlet side
cage is eroded at the bottom windows
the windows in the cage are washed out
washout on the cage at the bottom
there's a washout on the side of the cage
cage has some erosion on the inside
found a crack in the cage at the top
cage is cracked between two of the holes
cracked at the bottom the cage is
there aren't any cracks in the cage
no erosion on the cage this time
cage's got a few nicks around the holes
nicks on the inside of the cage
the inside of the cage is scored
scored on the inside from the plug
the cage is scratched on the inside but it's usable
cage bore is worn oval
cage is worn a little on the inside
worn cage needs to be replaced
pitting inside of the cage
cage was pitted top to bottom
a little corrosion on the outside of the cage
cage is rusty but it's not eroded
cage is galled on the inside
the plug galled the cage
the cage was stuck in the body
cage is seized in the body
had to pull the cage with a puller
cage came out easy
holes in the cage are plugged with scale
cage is plugged up with sand
cage had paraffin packed in the holes
soaked the cage and cleaned the holes out
cage was cleaned and put back
cage was put back in with new gaskets
reused the cage it was fine
put in a new cage
swapped the cage out for a new one
cage and seat both got replaced
cage and plug are worn out replaced them both
cage isn't sitting straight
cage was cocked in the body
cage retainer is bent
cage retainer's broken in half
the cage retainer looks okay
cage gasket's flattened out
cage gasket is torn in one spot
cage gasket was leaking
cage gasket's hard and cracked
there's no gasket on the cage
cage gasket was missing so i put one in
cage gasket's pinched on one side
put a new gasket under the cage
both the cage gasket and the bonnet gasket are flat
cage gasket looks good but i changed it anyway
cage gasket stuck to the body had to scrape it off
need two cage gaskets
cage o ring's flat on one side
the cage o ring is cut in two places
cage o ring's got a nick in it
a nick in the cage o ring
cage o ring is hard as a rock
cage o ring was hard and brittle
swollen cage o ring
cage o ring's swollen up it won't go back in the groove
the o ring on the cage was missing
there wasn't any o ring on the cage
o ring on the cage is pinched
o ring on the cage looks fine
cage o ring's extruded out of the groove
cage o ring replaced and greased
greased the new cage o ring and put it in
i put a new o ring on the cage
cage o ring needs to be replaced
the guide is worn on one side
guide's wallowed out pretty bad
there's wear in the guide on the inlet side
found the guide galled on the inside
galling in the guide
guide is galled to the stem
guide's scored from the stem rubbing
the guide is cracked
a crack down the side of the guide
guide's not cracked but it's worn
no wear in the guide
guide's tight on the stem
guide is loose in the bonnet
the guide came out in pieces
guide was broken in two
guide's full of paraffin
there's scale in the guide
guide was cleaned and greased
cleaned and greased the guide
guide's out of line with the seat
guide is out of line
pressed in a new guide
pressed the old guide out and a new one in
a new guide was installed
replaced the guide it was wore out
guide needs replacing next time around
order a guide and a guide o ring
guide bushing's worn and so is the stem
guide bushing is loose
guide bushing was replaced
the bushing in the bonnet is worn
bushing's seized on the stem
bushing's corroded but usable
reamed out the bushing
new bushing in the bonnet
guide ring is missing
guide ring's cracked replaced it
guide ring's worn thin
stem guide's worn out on the top
stem guide is scored inside
the stem guide looks all right
looks like the stem guide is misaligned
stem guide's rusty inside
stem guide was galled so we put a new one in
stem guide's stuck in the bonnet
stem guide unscrewed easy enough
the stem guide and the stem both need changing
replaced the stem guide and its o ring
stem guide tightened back up
torqued the stem guide to thirty five foot pounds
stem guide o ring's cut
stem guide o ring was hard and flat
the o ring on the stem guide is swollen
the o ring in the guide's gone
put a new o ring on the stem guide
stem o ring's torn
stem o ring is leaking a little bit
stem o ring was rolled and cut
a leak at the stem o ring
no leak at the stem o ring
stem o ring's nicked on the one side
changed out the stem o ring
greased the stem o ring
guide o ring's pinched
guide o ring is flat on one side
found the guide o ring missing
guide o ring's good put it back
upper diaphragm first it's got a hole in it
there's a hole in the upper diaphragm
a hole right in the middle of the upper diaphragm
upper diaphragm has a tear near the bolt holes
torn around the bolt holes the upper diaphragm is
the upper diaphragm tore at the edge
the top diaphragm is split
top diaphragm's cracked all the way around the plate
cracks in the rubber on the top diaphragm
top diaphragm is hard and stiff
the top diaphragm feels hard
top diaphragm is still soft it's good
no holes in the top diaphragm
didn't find any tears in the top diaphragm
the upper diaphragm isn't torn but it's stiff
upper diaphragm looks stretched
upper diaphragm is leaking at the edge
leaking around the edge of the upper diaphragm
upper diaphragm was pinched between the housings
upper diaphragm's got oil on it and it's swollen
swollen from oil the upper diaphragm is
the upper diaphragm got replaced
changed the upper diaphragm
put in a new upper diaphragm and a new gasket
installed a new top diaphragm
new power diaphragm went in
the power diaphragm has dry rot
power diaphragm is in good shape
pinhole in the power diaphragm
i think there's a pinhole in the power diaphragm
actuator diaphragm is ripped in two
actuator diaphragm replaced and tested no leak
the actuator diaphragm was put in upside down
main diaphragm is torn needs a new one
main diaphragm's worn through at the plate
now the lower diaphragm it's good
the lower diaphragm is torn on one side
a little tear in the lower diaphragm
tear in the lower diaphragm about an inch long
the lower diaphragm's got two pinholes in it
found two pinholes in the lower diaphragm
the bottom diaphragm got hard
bottom diaphragm is brittle and cracked
bottom diaphragm's swelled up some
bottom diaphragm has a cut in it
looks like something cut the bottom diaphragm
bottom diaphragm's leaking gas out the vent
lower diaphragm is leaking through to the vent hole
lower diaphragm's worn where it touches the housing
no leak on the lower diaphragm
lower diaphragm not leaking
balance diaphragm is torn
balance diaphragm's got a split in it
the balance diaphragm looks fine left it in
replaced the balance diaphragm
both diaphragms are hard as rocks
both of the diaphragms have holes in them
one of the diaphragms is torn
upper and lower diaphragms both look good
replaced the upper and the lower diaphragm
the two diaphragms were replaced
upper diaphragm's bad the lower one's okay
need both diaphragms for this valve
order an upper diaphragm and a lower diaphragm
the diaphragm is blown
diaphragm's blown out on the one side
diaphragm has a slit in it
diaphragm's dried out and cracking
the diaphragm is soft and doesn't have any holes
diaphragm tested good no leaks
cleaned the diaphragm off and put it back
diaphragm plate's rusty on the bottom
rust on the diaphragm plate
the diaphragm plate has a crack in it
a crack around the hole in the diaphragm plate
diaphragm plate's corroded through
diaphragm plate's corroded but not through
diaphragm plate was loose on the stem
the plate is loose under the nut
plate's dented on the edge
plate has a burr that's cutting the diaphragm
filed the burr off the diaphragm plate
sanded the rust off the diaphragm plate
cleaned up the diaphragm plate with a wire wheel
diaphragm plate straightened and put back
upper diaphragm plate is pitted
upper diaphragm plate's fine
lower diaphragm plate's bent on the edge
lower diaphragm plate is rusted pretty bad
diaphragm washer is bent a little
the diaphragm nut came loose
corners on the diaphragm nut are rounded
diaphragm nut's rusted on
diaphragm nut was seized had to cut it off
threads in the diaphragm nut are stripped
torqued the diaphragm nut to forty foot pounds
diaphragm nut needs thread locker
new diaphragm nut put on
diaphragm nut cracked replaced it
upper diaphragm nut was only finger tight
lower diaphragm nut was missing
lower diaphragm nut tightened to twenty five foot pounds
for the spring it's got rust on it
spring's rusty all the way down
the spring is rusty but it isn't broken
spring's broken in the middle
the spring broke in two places
broken spring inside the housing
one coil of the spring is broken
bottom coil's broken on the spring
spring has a crack on the second coil
cracked on the top coil that spring
no cracks in the spring
spring is pitted real bad
spring's corroded at the bottom
corrosion pitting on the spring
spring feels weak to me
i think the spring is weak
spring's lost some of its tension
the spring is bent over to the side
spring's cocked in the housing
spring isn't sitting straight in the housing
spring is misaligned on the plate
spring is the wrong one
greased the spring and put it back
cleaned and greased the spring
spring's okay just needs grease
spring was replaced with a heavier one
a new spring went in it
spring needs to be changed it's weak
spring measures six and one quarter inches free
actuator spring broke at the bottom coil
the actuator spring is cracked
found the actuator spring broken in three pieces
actuator spring's worn on the sides
actuator spring looks good no cracks no rust
nothing wrong with the actuator spring
actuator spring's corroded replaced it
the actuator spring was replaced and adjusted
actuator spring is rubbing on the housing
main spring is weak
main spring was bent a little
return spring is broken at the end
gasket is blown out on the one side
the gasket blew out
gasket was leaking on the bottom
gasket's cracked and brittle
the gasket is stuck to the flange
gasket was put in crooked
old gasket's flat as can be
gasket surface is pitted
gasket surfaces look clean
made a new gasket for it
a new gasket was put in there
gasket needs to be replaced it's leaking
all new gaskets went in
all the gaskets are flat
all of the gaskets were replaced
two of the gaskets were torn
gaskets and o rings all got replaced
seat gasket is squashed
the seat gasket's leaking on one side
seat gasket was missing altogether
no seat gasket in this one
seat gasket's extruded on the inside
seat gasket's stuck in the bottom of the body
picked the old seat gasket out of the body
seat gasket was torn when we took it out
put a new gasket under the seat
gasket under the seat's eroded on one side
gasket under the seat is gone
the bonnet gasket leaks on the back side
there's a small leak at the bonnet gasket
bonnet gasket is blown on the outlet side
bonnet gasket's hard and flat
bonnet gasket was pinched
pieces of the bonnet gasket were stuck on there
scraped off the old bonnet gasket
bonnet gasket cut on the inside edge
no leak on the bonnet gasket
bonnet gasket isn't leaking now
new bonnet gasket and new bolts
need a bonnet gasket before we put it together
the gasket under the bonnet is torn
bonnet seal is cut
the o ring is cut on the bottom
o ring's got a flat spot
o ring's flattened out
o ring was pinched when it went in
the o ring was twisted and torn
nick in the o ring
there's a nick on the inside of the o ring
o ring got hard
o ring is hard and cracked
o ring melted looks like it got hot
the o ring was gone
o ring's missing off of it
o ring came out of the groove
o ring is hanging out of the groove
the o ring groove is dirty
cleaned out the o ring groove
o ring groove's pitted
o ring looks good put it back in
the o ring isn't cut
put a new o ring on and greased it
greased all the o rings
all the o rings are hard
all the o rings are swollen up
one of the o rings is cut
one o ring cut the other one's good
two of the o rings were flat
changed all of the o rings
replaced every o ring in it
o rings and backup rings both bad
o ring needs replacing
need three o rings
backup ring is broken in two
backup ring's squeezed out on one side
backup ring was cut
backup ring is chipped on the edge
backup ring's worn thin on one side
one of the backup rings is missing
one of the backup rings is torn
found only one backup ring in there
backup rings are both hard
both of the backup rings are extruded
both backup rings are missing
backup rings were put in wrong
put in two new backup rings
replaced one backup ring
backup ring replaced and the o ring too
packing is leaking pretty bad
the packing leaks when it strokes
packing leaks a little on the upstroke
there's a leak at the packing
small leak around the packing
gas leaking out the packing
packing is hard and dried out
packing's worn out there's no adjustment left
the packing is all worn out
packing's extruded up around the stem
packing's too tight the stem won't move
packing is tight on the stem
the packing is cut up from the stem
packing has sand in it
no leak on the packing
no packing leak after we tightened it
packing was tightened a quarter turn
tightened up the packing and the leak stopped
tightened the packing but it still leaks
backed off the packing some
picked out all the old packing
put five new rings of packing in
packing was replaced and greased
packing needs to be replaced
packing box is corroded
packing box is pitted inside
packing box is dirty
packing rings are hard
packing rings are worn out
a ring of packing is missing
packing set was replaced
need a packing set
stuffing box is leaking
stuffing box is scored on the inside
stuffing box is clean
packing nut was loose tightened it up
the packing nut is cracked
packing nut's seized to the bonnet
the packing nut won't turn
packing nut is cross threaded
packing nut's rounded off from a pipe wrench
packing nut's corners are all rounded
packing nut is corroded
packing nut is leaking
packing nut looks good
nothing wrong with the packing nut
tightened the packing nut a half a turn
torqued the packing nut to one hundred inch pounds
loosened the packing nut
cleaned the threads on the packing nut
packing nut needs to be tightened
packing gland is bent
packing gland's cracked on one ear
packing gland is bottomed out
gland nut is loose
gland bolts are rusty
gland bolts are loose on both sides
packing follower is corroded
seals are all bad
the seals are leaking
seals were all replaced
new seals all through it
changed every seal in the valve
put all new soft goods in it
soft goods are hard and brittle
soft goods all replaced
the soft goods need changing
replaced the soft goods and put it back together
put a repair kit in it
installed a new repair kit
it's got a new seal kit in it
needs a repair kit
need a seal kit for this valve
order a rebuild kit for it
used a packing kit on it
rebuilt the actuator with a new diaphragm kit
bonnet next there's a crack in it on the back side
the bonnet's cracked by one of the bolt holes
found a hairline crack in the bonnet by the packing
no cracks in the bonnet that i could find
bonnet doesn't have any cracks
checked the bonnet for cracks and it's good
bonnet face is pitted where the gasket goes
the gasket face on the bonnet is scratched
a scratch across the gasket face of the bonnet
inside of the bonnet is rusty but it's sound
there's some washout in the bonnet
bonnet's eroded around the guide
bonnet's stuck to the body had to pry it off
bonnet was frozen onto the body
bonnet was loose when we got here
leaking between the bonnet and the body
a leak between the bonnet and the body
bonnet is leaking at the bottom
bonnet isn't leaking anywhere
bonnet's dirty cleaned it up
wire brushed the bonnet and put it back
bonnet was pulled cleaned and put back
bonnet threads are galled on one side
the bonnet threads look good
threads in the bonnet are stripped
chased the threads in the bonnet
bonnet's broken on one ear
bonnet needs replacing it's cracked
bonnet and body both look good
the bonnet's good but the bolts are bad
bonnet bolts are rusty but they came out
bonnet bolts are all rusted
one of the bonnet bolts is broken
two of the bonnet bolts were loose
three of the bonnet bolts are stripped
one bonnet bolt was missing on the back
there's a bonnet bolt missing
found one bonnet bolt sheared off in the body
broke a bonnet bolt taking it apart
a bonnet bolt snapped off when i loosened it
drilled out the broken bonnet bolt
the heads on the bonnet bolts are rounded off
bonnet bolts are stretched
bonnet bolts are galled in the body
bonnet bolts are only finger tight
bonnet bolts look good reused them all
replaced the bonnet bolts all eight of them
bonnet bolts were replaced with new ones
all of the bonnet bolts have been replaced
tightened the bonnet bolts in a cross pattern
bonnet bolts torqued to sixty five foot pounds
torqued all the bonnet bolts to forty five foot pounds
greased the threads on the bonnet bolts
cleaned up the bonnet bolts with a wire brush
bonnet bolts need to be replaced
bonnet nuts are rusted on solid
bonnet nuts were loose on the outlet side
one of the bonnet nuts is split
bonnet studs are corroded
bonnet studs are bent
one of the bonnet studs pulled out of the body
bonnet stud's broken off flush
bonnet studs and nuts all look good
replaced the bonnet studs and nuts
studs on the bonnet are rusty
two of the studs on the bonnet are stripped
need eight bonnet bolts for this
bolts are all loose
the bolts are corroded at the heads
one of the bolts is bent
bolt's broken off in the housing
a couple of the bolts are missing
the bolts are fine nothing stripped
the bolt head's rounded off
the bolt is seized in there it won't come out
got the broken bolt out
replaced all the bolts on the housing
housing bolts are rusted up pretty bad
housing bolts were loose all the way around
two housing bolts are broken
a housing bolt is missing
tightened all of the housing bolts
actuator bolts are rusty
actuator bolts were replaced with stainless
stainless bolts all around on the housing
cap screws are rusted
one cap screw is stripped
the cap screws are tight
studs are good nuts are bad
the studs are rusted and the nuts won't turn
yoke bolts are tight now
yoke bolt's missing on the left side
body bolts are corroded
body bolts look fine
one of the body bolts is loose
body bolt sheared off
body bolts torqued to eighty foot pounds
body studs are rusted
body studs are good
body nuts are loose
one body stud was broken
now the body there's washout on the outlet side
body's washed out below the seat
the body is washed out on the bottom
body has erosion on the inlet side
erosion inside the body right below the seat
some erosion in the body at the outlet
the inside of the body is pitted
pitting all through the body
body is pitted around the seat
pitted inside the body but not deep
corrosion inside the body
body's corroded on the outside needs paint
outside of the body's rusty
there's a crack in the body on the outlet side
crack in the body near the bottom
didn't see any cracks in the body
no cracks and no washout in the body
no erosion in the body
body isn't washed out at all
nothing wrong with the body
body looks like new inside
the body's in good shape
body's good but the seat area isn't
a pinhole in the body leaking gas
leaking through the body there's a hole in it
body's leaking at the bottom plug
the body's full of sand
sand in the body about an inch deep
there's scale in the bottom of the body
scale built up in the body
body's caked with paraffin
paraffin in the body all the way up to the bonnet
steamed the paraffin out of the body
cleaned the body out
body was cleaned out and looks good
flushed the body with solvent
scraped all the scale out of the body
body gasket face is scratched
body face is pitted where the gasket sits
dressed the face of the body with a stone
the threads in the body are damaged
body threads are corroded
body needs to be replaced it's washed out
this body is junk need a new one
put the trim in a new body
valve body is rusted on the bottom
valve body has some pitting
valve body doesn't have any damage
the inlet threads are worn
inlet threads look a little worn
inlet threads are galled up pretty bad
damaged threads on the inlet
threads on the inlet are stripped
threads on the inlet side are good
threads on the inlet side are washed out
a crack in the inlet threads
inlet threads are cracked on the bottom
inlet threads are cross threaded
inlet threads are cross threaded about two turns
inlet threads leaking a little
there's a leak at the inlet threads
no leak at the inlet threads
inlet threads are intact outlet threads are eroded
inlet threads cleaned up with a wire brush
both the inlet and outlet threads are rusty
outlet threads are washed out on the bottom
the outlet threads are eroded
outlet threads are stripped at the end
outlet threads are corroded pretty heavy
outlet threads have a nick in them
nick on the outlet threads
outlet threads look okay
there's nothing wrong with the outlet threads
outlet threads aren't damaged
outlet threads are galled
outlet threads are leaking
the outlet threads were cleaned
cleaned the outlet threads and put new tape on
threads on the outlet are worn thin
threads on the outlet side are corroded
threads on the downstream side are bad
threads on the upstream side look intact
threads are intact on both ends
threads are worn on both ends
the threads are a little rusty
the threads are stripped out of it
threads look good both sides
ran a tap through the threads
upper housing's rusty on the inside
rust inside the upper housing
upper housing has a crack by the supply port
the upper housing is cracked on the edge
upper housing's dented on the top
a dent in the top of the upper housing
dent in the upper housing but it's not leaking
upper housing is bent where the bolts go
upper housing is leaking around the edge
there was water in the upper housing
oil in the upper housing
upper housing had dirt in it
cleaned the upper housing out
cleaned and painted the upper housing
upper housing looks fine
upper housing's good no cracks
no rust in the upper housing
corroded on the inside of the upper housing
upper housing is pitted inside but usable
upper housing's got corrosion around the bolt holes
put on a new upper housing
upper housing threads are stripped
top case is rusted through
top housing is rusted
the top housing came off easy
cover is missing a screw
the lower housing is rusted through on the bottom
lower housing's rusted at the bottom
there's rust in the bottom of the lower housing
hole in the lower housing
lower housing's cracked by the vent hole
a crack in the lower housing right by the bolt hole
no cracks in the lower housing
lower housing is fine just dirty
lower housing is worn where the spring sits
lower housing has a dent in it
lower housing is leaking
lower housing's leaking by the stem
lower housing is full of mud
lower housing had wasps in it
pitting in the lower housing
lower housing is pitted around the center
cleaned out the lower housing
lower housing cleaned up and painted
sanded the rust out of the lower housing
lower housing was replaced
lower housing needs to be replaced
bottom housing is corroded on the inside
bottom case is rusted out
upper and lower housing are both rusty
upper and lower housings both look good
both housings are cracked
both of the housings are rusted inside
housing is rusted on the outside
there's a crack in the housing
diaphragm case is leaking
diaphragm case is rusty around the bolts
actuator housing is corroded
the actuator leaks at the top
actuator's leaking out the vent
actuator won't move it's seized
actuator is stuck about halfway
the actuator is slow to move
actuator is loose on top of the bonnet
actuator is sitting crooked
actuator was full of water
drained the water out of the actuator
actuator is rusty inside and out
actuator looks good inside
nothing wrong with the actuator
actuator was taken off and rebuilt
rebuilt the actuator with new diaphragms
took the actuator apart and cleaned it
actuator was cleaned and put back together
put the actuator back on the valve
actuator needs to be rebuilt
replaced the whole actuator
a new actuator was put on
topworks all look good
the lock nut was loose on the stem
lock nut backed off
lock nut had backed off about two turns
there's no lock nut on the stem
lock nut is stripped
lock nut is cracked
lock nut was seized
tightened the lock nut down
lock nut was tightened
lock nut tightened to fifty foot pounds
lock nut needs to be replaced
jam nut is tight
jam nut was loose so i tightened it
jam nut is rusty
jam nut's rounded off on two corners
jam nut is galled to the stem
stem nut is loose
the nut is stripped
nut is rounded off
nut was loose tightened it
both nuts are loose
both of the nuts are seized
the travel indicator is bent and it's rubbing
travel indicator is loose on the stem
travel indicator came loose and turned sideways
travel indicator fell off
there's no travel indicator on this one
somebody broke the travel indicator off
travel indicator is broken at the screw
travel indicator's rusty you can't read it
can't read the travel indicator it's too dirty
travel indicator is off about a quarter inch
travel indicator was reset to zero
set the travel indicator with the valve closed
travel indicator looks good
straightened the travel indicator and tightened it
travel indicator was missing put a new one on
need a travel indicator for this
the indicator's missing its spring
indicator rod is bent
indicator rod was corroded
indicator rod's stuck in the housing
indicator plate is missing
the pointer is bent
the scale is rusty can't read it
the indicator gasket is torn
indicator gasket was missing
indicator gasket's hard and it leaks
no indicator gasket in there
put in a new indicator gasket
replaced the indicator gasket and the spring
indicator gasket is good
the indicator spring is missing
indicator spring is bent
nothing wrong with the indicator spring
the breather is plugged
breather's plugged up with dirt
breather was plugged with ice
breather has mud in it
there's a wasp nest in the breather
the breather's missing off the housing
no plug in the breather it's open
cleaned the breather out with a wire
breather was cleaned out
blew out the breather
replaced the breather with a new one
gas is coming out the breather
oil coming out the breather
vent plug is plugged with dirt
vent plug was plugged solid
vent plug's broken in half
the vent plug was painted over
cleaned and put the vent plug back
a new vent plug was put in
bug screen is plugged
vent cap is cracked
vent hole is plugged with grease
vent hole was plugged with dirt
there's dirt in the vent hole
mud packed in the vent hole
vent hole isn't plugged
gas blowing out the vent hole
leaking out of the vent hole
air coming out of the vent
the vent is iced over
ice in the vent
vent hole was cleaned out with a drill bit
ran a wire through the vent hole
supply port's plugged with dirt
dirt in the supply port
the supply port is leaking
leaking around the supply port
threads in the supply port are cross threaded
supply port is clean
no plugging in the supply port
supply port was blown out with air
retapped the supply port
supply port's got tape in it
supply connection is leaking
tightened the supply connection
there's a leak at the signal port
signal port is stripped
signal port's full of water
signal port is fine
cleaned the signal port
signal port was plugged with tape
signal port and supply port both clean
signal connection is loose
tightened up the signal connection
the stem connector is loose on the stem
stem connector was loose and the stem backed out
stem connector is cracked
crack in the stem connector
stem connector bolts are loose
stem connector is misaligned
stem connector is worn
stem connector slipped on the stem
stem connector was put on wrong
stem connector tightened up
torqued the stem connector to thirty foot pounds
stem connector looks good
a stem connector's needed
stem clamp is broken
stem coupling is worn out
split block is loose
the positioner is leaking air
positioner leaks out the side
positioner's out of calibration
positioner is off about five percent
water in the positioner
positioner is corroded inside
positioner cover is missing
positioner cover was loose
positioner is loose on the bracket
positioner's filter is plugged
cleaned out the positioner and calibrated it
positioner was calibrated zero to one hundred
adjusted the zero on the positioner
put a new positioner on it
feedback arm is bent
feedback arm is loose at the pin
feedback arm came off
feedback arm's worn at the pin
feedback linkage is out of adjustment
adjusted the feedback linkage
linkage is worn at both ends
the linkage is bent
linkage came off the float
greased all of the linkage
linkage is adjusted and tight
the linkage pin is worn
linkage pin fell out
lever is loose on the shaft
lever arm is cracked
the controller is leaking gas
controller is leaking inside the case
controller isn't putting out a signal
controller is out of adjustment
controller has water in it
cleaned and adjusted the controller
controller door is broken
nothing wrong with the controller
controller needs a rebuild
level controller is not working
level controller is leaking out the bottom
level controller was adjusted
pressure controller is off
the regulator's leaking out the vent
regulator is leaking at the gauge
regulator isn't holding pressure
regulator's full of water
regulator's drip pot is full
regulator is frozen up
ice in the regulator
regulator's cracked on the bottom
regulator is set too high
regulator set at thirty psi
turned the regulator down to twenty
turned up the regulator
supply regulator is leaking
supply regulator works okay
the gauge is cracked
the glass on the gauge is broken
gauge face is so dirty you can't read it
gauge is leaking at the threads
the needle is bent on the gauge
there's no gauge on the supply
replaced both of the gauges
both gauges are bad
one of the gauges is broken
supply gauge is broken
supply gauge reads zero
supply gauge is stuck at fifteen
signal gauge is missing
signal gauge isn't working
need a gauge zero to sixty
strainer is plugged with sand
strainer was half plugged
strainer is full of scale
there's a hole in the strainer
hole in the screen
strainer was cleaned and put back
cleaned out the strainer screen
filter is dirty replaced it
solenoid's leaking out the exhaust
nothing wrong with the solenoid
replaced the coil on the solenoid
trim is worn out
the trim is all washed out
all the trim looks good
paraffin on the trim
sand all through the trim
scale on the trim
trim was cleaned and put back
cleaned all the trim
replaced all of the trim
new trim all the way through
put a full set of trim in it
the yoke is cracked on the left side
a crack in one leg of the yoke
rust on the yoke
no rust on the yoke
cleaned and painted the yoke
yoke leg is cracked
there's a leak at the flange
inlet flange is corroded
outlet flange is pitted on the face
flange bolts are loose
flange bolts are rusty
both flanges look good
handwheel was greased and works now
put a handwheel on
manual override is seized
adjusting screw is stuck
adjusting screw is rusty
adjusting screw won't turn
adjusting screw is good
adjusting screw turns free
adjusting screw was backed off
backed off the adjusting screw three turns
adjusting screw is missing
set screw is missing
set screw is stripped
tightened the set screw
float is caked with paraffin
float's rubbing the wall
float came off the arm
nothing wrong with the float
float was cleaned off
float needs to be replaced
the pilot is leaking out the exhaust
pilot's plugged up with dirt
ice on the pilot
cleaned the pilot and put it back on
pilot valve is leaking
pilot valve's stuck open
oil in the controller is low about half full
the oil's low you can just barely see it in the glass
oil level is down about an inch
there's hardly any oil in it
no oil in it at all
the oil is black and full of dirt
oil looks milky there's water in it
oil's dirty but the level is good
oil is clean and the level's good
drained the oil and put new oil in
the dirty oil was drained and it was filled up again
oil needs to be changed next time we're here
topped the oil off about a pint
somebody overfilled the oil
oil is leaking out at the bottom
no oil leaks anywhere on it
tubing is bent going into the regulator
the supply tubing has a kink in it
there's a kink in the tubing right behind the positioner
tubing's kinked where it goes around the yoke
found a hole rubbed in the supply tubing
the tubing is rubbed through on the bracket
tubing is plugged somewhere between the regulator and the pilot
the signal tubing's plugged with ice
ice in the supply tubing again
signal line's leaking at the fitting
a leak in the signal line down by the controller
no leaks on the tubing or any of the fittings
checked all of the tubing for leaks and found none
tubing is loose it's not clamped to anything
tubing was cracked at the ferrule
tubing is corroded under the clamp
cut the bad piece of tubing out and put in a new piece
replaced all the tubing on the supply side
the signal tubing was replaced it was kinked
blew out the tubing with air and got some water out of it
need about four feet of tubing and two fittings
supply line's frozen and the signal line is too
the supply line is leaking where it goes into the regulator
instrument tubing looks good no kinks no leaks
one of the fittings is leaking on the supply
found a fitting leaking behind the controller
the fitting on the bottom of the regulator is leaking
the elbow's cracked on the supply port
that elbow is cross threaded into the housing
fitting is stripped where it goes into the positioner
fitting's plugged up with thread tape
the fitting was only finger tight
fitting is rusty but it's not leaking
fitting broke off in the signal port
got the broken fitting out of the signal port
tightened the fitting a quarter turn and the leak stopped
tightened the fitting but it's still leaking
all the fittings have been tightened and checked with soap
replaced the elbow on top of the actuator
put new ferrules on the tubing
a new fitting went in the supply port
need a quarter inch elbow for the signal
union's leaking on the supply line
nipple is corroded going into the body
the valve is leaking through about twenty bubbles a minute
valve's leaking past the seat
the whole valve is rusty on the outside
the valve is caked with paraffin
valve is stuck open and won't close
valve's stuck about a quarter open
this valve sticks when it's about half open
the valve is slow going closed
the valve doesn't leak and it strokes full
nothing wrong with this valve at all
valve was dirty so we cleaned it and put it back on line
took the valve apart and everything looks good inside
the valve has been rebuilt with all new soft goods
put the valve back together with new trim
valve needs to be rebuilt in the shop
pulled the whole valve and put another one in
the valve needs paint
dump valve is stuck open
the dump valve isn't closing all the way
dump's plugged with sand
the dump is washed out replaced the trim
the control valve is sticking a little bit
the travel indicator looks like somebody stood on it
there's nothing wrong with the travel indicator
the travel indicator was knocked loose so i tightened it back up
on the travel indicator the pointer is broken off
indicator rod's worn where it comes through the gasket
got a leak around the indicator rod
the indicator gasket is the one that's leaking
one of the springs on the indicator is broken
breather looks like it's plugged with bugs
found the breather packed with mud so i cleaned it out
got a plugged breather on the lower housing
the breather on the bottom is missing and there's dirt inside
no breather on this actuator somebody took it off
the breather's supposed to be on the side but it's gone
breather and vent hole are both plugged
the breather and the vent hole were both cleaned out
vent plug was rusted in had to break it to get it out
vent plug looks all right just needs cleaning
there is no vent plug on the upper housing
found gas coming out of the vent plug
a little bit of oil around the vent plug
the vent hole on the bottom's plugged with mud
vent hole has a little rust around it
the vent hole is open and clean
i couldn't find anything wrong with the vent hole
got the vent hole cleaned out it was solid mud
supply port has some rust in the threads
supply port isn't plugged it's the regulator
the supply port is cracked out to the edge of the housing
got a leak around the fitting in the supply port
no damage to the supply port or the signal port
the threads in the signal port look worn
the signal port was half plugged with dirt
signal port's corroded pretty heavy on the inside
one of the ports is plugged i think it's the signal port
stem connector looks like it's been slipping
got some wear in the stem connector threads
found the stem connector loose and the stem turning in it
stem connector isn't cracked it's just rusty
one of the bolts in the stem connector is stripped
stem connector is off about an eighth of an inch
reset the stem connector and tightened the lock nut
the stem connector and lock nut were both loose
stem connector was cracked on one side so it got replaced
no play in the stem connector
positioner looks a little bit corroded on the outside
the inside of the positioner is clean and dry
there's water in the bottom of the positioner
found the positioner plugged up with oil from the compressor
the positioner arm was bent and hitting the yoke
straightened the arm on the positioner
positioner's leaking air out of the relay
got a little air leak on the positioner
the air leak on the positioner is fixed
the positioner isn't leaking but it's sluggish
positioner might need to be replaced before long
positioner and regulator both full of water
blew the water out of the positioner and dried it
the positioner has been cleaned and recalibrated
i didn't have to adjust the positioner
could not get the positioner to calibrate
one of the screws is missing from the positioner cover
got the linkage adjusted so it reads right
the linkage is loose at the float end
linkage is worn on the pin and it's got slop in it
there's too much play in the linkage
one end of the linkage is broken off
the linkage was bent down and dragging
linkage doesn't look bent just worn
looks like the linkage has been hitting the tank
no grease in the linkage it's dry
linkage was straightened greased and put back
the lever on the controller is bent
lever came off because the set screw was loose
controller looks corroded around the ports
the controller's leaking a little out of the relay
found a small leak inside the controller
got the controller cleaned up and working
the controller has mud in the nozzle
there's dirt in the controller and it's sticking
controller isn't leaking anymore
controller might be out of adjustment
the door on the controller is broken off at the hinge
controller is working okay but it's dirty
the controller was rebuilt in march
controller and regulator both need replacing
the regulator looks pretty corroded
there's a crack in the bottom of the regulator
got a lot of water in the regulator
the regulator won't adjust it's stuck at forty
regulator is leaking out the hole in the cap
found the regulator set at fifty turned it down to thirty five
the adjusting screw on the regulator is rusted
one of the regulators is leaking
regulator was dripping so i drained it
regulator was drained cleaned and set back to thirty
regulator doesn't hold it drops off to ten pounds
replaced the filter in the regulator
regulator and gauge have both been replaced
the drip pot on the regulator is full of water
nothing in the drip pot
regulator screen is dirty
gauge looks like it's been hit
got a broken glass on the supply gauge
the supply gauge isn't reading right
supply gauge is reading five pounds high
the gauge on the regulator is broken
the gauge on the positioner is stuck at twenty
one of the gauges on the positioner is bad
there's a leak around the threads on the gauge
no gauge on the regulator somebody took it
gauge doesn't go back to zero
gauge came apart when i took it off
signal gauge was full of water and it's rusty inside
took the gauge off and put a new one on
strainer's got a hole in the screen
the strainer's plugged up pretty bad with scale
found the strainer full of sand and pieces of rubber
there's a lot of scale in the strainer
pulled the screen out of the strainer and washed it
strainer looks fine just a little sand
the screen in the strainer is corroded through
no sand in the strainer this time
the strainer hasn't been cleaned in a long time
the strainer was missing its screen
the filter element is black with oil
got a new filter in the regulator
filter was plugged solid so i changed it
solenoid's getting hot i think the coil is bad
got air leaking out of the solenoid
the solenoid is stuck open and won't shift back
found the solenoid plugged with ice
solenoid might be stuck i tapped on it and it moved
the solenoid was replaced and it's working now
one of the wires is broken off the solenoid
cover on the solenoid is cracked
the trim looks pretty good for how old it is
the trim has erosion on the outlet side
some light scoring on the trim
not much wear on the trim at all
trim's coated with scale but it isn't worn
got all new trim in it
the trim was cleaned lapped and put back
the yoke has rust on the bottom where it sits on the bonnet
found a crack in the yoke just above the bonnet
yoke looks good just needs some paint
the yoke isn't cracked that's just a scratch
yoke's bent a little to the left
one leg of the yoke is bent
tightened the bolts on the yoke
the flange on the inlet side is leaking a little
flange face has a scratch all the way across it
got some corrosion on the outlet flange
found the bolts loose on the inlet flange
cleaned the flange faces and put new gaskets in
handwheel's so rusty you can't turn it
the handwheel is there but the pin's missing
got the handwheel freed up and greased
handwheel turns but it doesn't move the stem
one of the spokes on the handwheel is broken
the handwheel was left turned down
adjusting screw's bent so it's hard to turn
the adjusting screw is rusted in place
got the adjusting screw loose with some penetrating oil
there's a lot of rust on the adjusting screw
adjusting screw has wear on the end where it sits on the plate
the threads look good on the adjusting screw
the lock nut on the adjusting screw is loose
adjusting screw was cleaned and greased and set
set the adjusting screw to open at six pounds
turned the adjusting screw all the way out
the float's got paraffin all over it
float looks good it's just dirty
found a hole in the bottom of the float
got a crack along the weld on the float
float is hitting something inside the tank
float isn't moving it's stuck in paraffin
the float was cleaned and it moves free now
float arm's bent and the float is dented
one of the float pins is missing
float and linkage both look good
the pilot is leaking a little bit of gas
got a plugged pilot cleaned it out
found dirt under the seat in the pilot
pilot doesn't shift until about twelve pounds
the pilot might be plugged
there's oil in the pilot
took the pilot apart cleaned it and put it back together
pilot was rebuilt with new o rings
pilot diaphragm's torn
the pilot spring is broken
pilot and regulator are both frozen up
no ice on the pilot today
looks like the plug's been hitting the bottom of the cage
the seat's cut on the outlet side and so is the plug
upper diaphragm good lower diaphragm torn at the edge
there's wear on the stem but there isn't any on the guide
got pitting on the stem and pitting on the plug
got some rust on the spring and some on the plate
found a crack in the cage and a chip in the seat
found the packing hard and the packing nut loose
found nothing wrong with the spring or the diaphragm
found no cracks in the body or the bonnet
seat ring and cage are both scored on the inside
stem guide and stem guide o ring were both replaced
the plug and the cage have both been cleaned
neither one of the diaphragms is torn
neither of the housings is cracked
none of the o rings were cut
every one of the bonnet bolts was loose
most of the bolts on the housing are rusty
some of the holes in the cage are plugged up with paraffin
half of the threads on the stem are gone
a piece of the gasket is missing
part of the seat ring is broken off
the top half of the cage is worn
the bottom end of the stem is pitted
the back side of the plug is corroded
the inlet side of the body's clean the outlet side's washed out
the outside of the cage is rusty the inside is smooth
the edge of the disc has a few nicks in it
the face of the seat has a scratch across it
the middle of the stem is scored about two inches
inside the bonnet there's a little corrosion
inside the lower housing it's all rust
on the inside of the housing there's water and rust
on the outlet side the body is eroded
on the bottom of the plug there's a chip
on the top of the cage there's a crack about half an inch long
around the seat there's a lot of pitting
around the vent hole the housing is rusted
at the threads the stem is cracked
right at the top of the threads it's broken
down at the bottom of the body there's sand
under the bonnet it's all paraffin
under the plate the diaphragm is starting to tear
behind the cage it's packed with scale
between the plate and the diaphragm there's rust
it's the lower diaphragm that's torn not the upper
it's not the seat it's the plug that's bad
wasn't the packing leaking it was the bonnet gasket
not the spring the spring's fine it's the stem sticking
i would say the seat's about half worn
i'm pretty sure the guide is worn
i'm not sure but i think the body has a crack in it
maybe a little wear on the plug hard to tell
could be a pinhole in the lower diaphragm
it looks like there could be a crack by the inlet threads
seems like the spring is a little weak
appears to be some washout around the seat
doesn't appear to be any damage to the cage
can't see any wear on the guide
couldn't find any leaks on the bonnet
didn't see any pitting on the stem
don't see a crack anywhere in the housing
never found the o ring for the stem guide
there wasn't any damage to the threads
there isn't much wear on the seat ring
hardly any wear on the plug
barely any scoring on the stem
just a touch of rust on the actuator spring
only a small nick on the seat
severe erosion on the seat and plug
really bad corrosion on the lower housing
very light scratches on the stem
moderate wear on the guide
heavy scale on the cage and in the body
minor pitting on the seating surface
badly worn seat and a badly worn plug
a cracked bonnet and two broken bolts
a torn diaphragm and a bent plate
a bent stem a worn guide and hard packing
bad o ring on the cage bad o ring on the guide
loose bolts on the upper housing
stripped threads on the outlet side
cut o ring and a broken backup ring
rusty spring rusty plate but the diaphragm's fine
plugged breather and a plugged vent hole
leaky packing and a loose packing nut
missing bolt on the left side of the yoke
the seat was replaced along with the seat gasket
the plug was lapped and the seat was flipped
the stem was straightened polished and put back in
the housing was cleaned painted and put back
the bolts were cleaned greased and torqued
the spring was cleaned and checked no cracks
the cage was pulled cleaned and inspected
the body was inspected and there's no washout
the packing was pulled and replaced with five new rings
the regulator was drained and the filter was changed
the guide had to be pressed out
the seat had to be cut out it was so rusted
had to cut two of the bonnet bolts off
had to heat the lock nut to get it to turn
had to chase the threads on the bonnet studs
had to scrape the gasket off of the bonnet
had to drill the broken stud out of the body
have to replace the guide it's wallowed out
we have to order a stem for this one
we ended up replacing the stem and the plug
we ended up keeping the old cage
went ahead and replaced the backup rings too
went ahead and put a new gasket under the seat
i already changed the packing and the o rings
i just cleaned the cage i didn't replace it
i didn't replace the spring it was still good
i didn't have a new diaphragm so i left the old one in
we didn't flip the seat it was too far gone
haven't changed the lower diaphragm yet
still need to clean the body and the cage
still need to put the travel indicator back on
still have to torque the bonnet bolts
going to lap the seat and put it back
going to flip the seat and replace the plug
i'm going to clean the strainer while i'm here
i'll replace the stem guide o ring while it's apart
we'll be replacing the seat and the plug
we're putting new diaphragms in it
cleaning up the cage and the seat area now
putting the bonnet back on with a new gasket
pulling the packing it's hard as a rock
lapping the plug and the seat together
should replace the lower housing next time
probably ought to replace that spring
might want to change the guide next time
the seat will have to be replaced next time
that diaphragm won't last much longer
that stem is bent and it's galled too
that bonnet gasket's been leaking a while
this cage is worn but it's still usable
this plug has been lapped too many times
this seat has already been flipped once
these bolts are too rusty to use again
these threads are pretty worn but they'll hold
those backup rings are both cracked
those packing rings were put in dry
same thing on the plug it's scored too
same with the lower diaphragm it's hard
the other diaphragm's in good shape
the other side of the seat is fine
the rest of the trim looks good
the rest of the bolts are tight
everything else on the actuator looks good
everything in the body's clean now
other than the seat the trim is fine
except for one stud the bolting is good
seat good plug good cage needs cleaning
stem good guide good packing needs replacing
body good bonnet good bolts rusty
housing cracked diaphragm torn spring okay
plug worn seat worn cage eroded on the bottom
packing replaced packing nut tightened stem polished
seat flipped plug lapped new seat gasket in
cage cleaned new cage o ring new cage gasket
strainer cleaned regulator drained gauge replaced
diaphragms replaced plate cleaned nut tightened to thirty foot pounds
`;
