/** What was said in the working cases, and in those by other hands that the reader is looked at with. Invented; a line a phrase, numbers and tags as spoken. */
export const LOGGED = `
yeah the seat ring's wore out on the one side
got some erosion on the cage over on the outlet side
plug face is washed out bad
bottom of the cage is eroded really bad
lower housing is rusty on the inside
upper housing's just beat up
little bit of pitting up top on the stem
found a scratch down the left side of the plug
and heavy scoring on the stem
crack in the upper housing right side
looked for cracks in the bonnet and didn't find any
power diaphragm's ripped
balance diaphragm has a pinhole in it right in the center
stem's bent you can see it just rolling it on the bench
no wear on the guide though
actuator spring snapped clean in two
indicator spring's broke too
somebody stripped the inlet threads on this thing
that nut is stripped too
stem's stuck can't turn it with a wrench
galling on the stem guide both sides of it
actuator's seized up and it's rusty on top
stem drags a little when you push it by hand
regulator's sticking on me too
travel indicator's plumb gone
indicator gasket's missing
vent plug's stopped up with a dauber nest
these o rings swelled up on me
and the cage o ring got cut
backup ring's gone hard as a rock
seat gasket's squashed flat
stuck down in the body too
stem connector's not lined up
cage was sitting out of line too
signal tubing iced up again last night
got ice in the regulator
vent hole's plugged with ice
positioner's damaged looks like somebody hit it
tubing's not leaking
solenoid looks like it may be stuck
i think the gauge is busted
not seeing any pitting on the seat
and the stem's not bent
not sure but the bottom diaphragm feels hard
spring might be a little weak
diaphragm might have a hole in it can't tell
could be a crack in the cage hard to see
supply port is partly blocked
signal port's clogged vent hole isn't plugged
ports in the stem guide are fouled with scale
comm hole's partially plugged
seat area is pitted all the way around
diaphragm's cracked all around the edge
nick on the edge of the diaphragm plate
bonnet face is nicked too
upper o ring is flat lower one's fine
lower backup ring's cut
upper backup ring looks decent
indicator spring's gone weak and the indicator gasket's cut
diaphragm plate and the diaphragm nut are both rusted
whole valve's corroded on the outside
full of sand too
body's scored on the inlet side and pitted at the bottom
outlet threads still intact no damage to the body
light scratches on the seat left side
plug's scored all around
gasket's torn at the edge
housing's rusted outside
bolts were loose threads galled
controller's full of dirt
that fitting's seeping
stem guide o ring's brittle and there's corrosion down in the groove of the stem guide
float's dented and the linkage is bent
straightened it
adjusting screw's stripped handwheel's busted off
flange has a chip out of it
yoke's cracked and the trim's junk
pilot's plugged up
two bonnet bolts broke off
and i got three body studs missing
o ring got pinched
packing's extruded some
and somebody kinked the supply tubing
some joker cross threaded the packing nut
jam nut's rounded off
solenoid's burnt up
oil's low and it's dirty
flange got dented plug's chipped
hairline crack in the bonnet
cage is kinda worn
seat's wire drawn pretty bad
i reckon the guide's worn
there's a split in the bottom diaphragm
disc's got a gouge in it
got air coming out the breather
no leak at the packing
both o rings are flat
put a fresh diaphragm in her
swapped out the stem guide o ring
threw a new seat in it
tossed the old cage gasket
cleaned the cage up in the parts washer
lapped the seat in by hand
greased the stem adjusted the packing nut a hair
then snugged up the body bolts
pulled the bonnet looked the plug over
stuck the old spring back in
drained the body topped off the oil
put thread locker on the diaphragm nut
patched the tubing up for now
took the actuator off
cleaned all the threads
installed the lower housing and the travel indicator
cage needs cleaned stem needs grease
packing's gonna have to be adjusted
and i gotta lap that seat
bonnet bolts need tightening
have to pull the positioner
regulator needs fixed
controller's gotta be inspected
body has to be drained
and the oil needs topped off
lock nut needs thread locker
guide still needs installed
that diaphragm's torn chuck it
seat's pitted flip her
plug's fine reuse it
top diaphragm's a little swollen but i'm leaving it
didn't grease the stem this time
didn't bother lapping the seat
not gonna flip the seat
and i'm sure not reusing that gasket
didn't pull the bonnet today
didn't clean the strainer this trip
didn't mess with adjusting the regulator
oh and i didn't drain the body
didn't put any thread locker on the stem connector
ran out of daylight so i didn't tighten that fitting
didn't fix the gauge
didn't install the breather
didn't inspect the solenoid
didn't add any oil
didn't throw out the old seat gasket
took the whole valve apart
vented the pilot calibrated the positioner
dressed the seat
positioner needs calibrated stem needs straightened
gotta take the actuator apart
seat needs dressed
body's gotta be vented first
didn't straighten the linkage
didn't dress the flange
didn't calibrate the controller
didn't take the pilot apart
didn't vent the actuator
had to replace the stem
left the old gasket in
cage is washed out bad replacing it
spring's fine so it's going back in
blew out the strainer rodded out the supply port
wire brushed the outlet threads
replaced six of the bonnet studs
replaced the torn diaphragm
replaced both backup rings they were flat
might need a new seat
i think the plug needs lapping
found the spring broken
hang on a sec
okay swapped it out
upper diaphragm's torn put a new one in
same deal on the bottom one
plug's scored bad
ditto for the stem
cage gasket's flat replaced it
same thing on the seat gasket
top diaphragm's got a pinhole in it
other one too
strainer's plugged
cleaned it
put it back
lower housing's pitted inside leave it
inlet threads are intact cleaned 'em up
same for the outlet threads
swapped both o rings
both diaphragms need replaced
worn on one side
flipped it
removed the solenoid
it's corroded
threw it in the scrap bin
seat's in good shape kept it
actuator spring's good to go back in
got the bonnet bolts at thirty two foot pounds
and the packing nut at one twenty inch pounds
i got ninety newton meters on the body bolts
sixty newton meters on the bonnet bolts
diaphragm nut's torqued forty to forty five foot pounds
packing nut between eighty and ninety inch pounds
upstream's sitting at eleven fifty psi
four and a half bar downstream
supply's running thirty five pounds
signal's twelve psi
signal's a hundred and five kilopascals
supply's one forty kilopascals
reading about six inches of water
up to nine and a half inches of water now
pressure on the line is two seventy five psi
travel's three quarters of an inch
that's nineteen millimeters of travel
fluid temp's one forty fahrenheit
she was running about sixty two celsius before
now it's seventy celsius
free length on the spring is five and three eighths inches
stem length's two hundred and ten millimeters
sitting at thirty five percent open
okay now it's eighty percent open
timed it twelve seconds
then let it sit fifteen minutes
signal's three to fifteen pounds
upstream's swinging ninety to a hundred and ten psi
we've got at least two hundred psi upstream no more than point eight bar downstream
bonnet bolts got thirty pounds on 'em
tightened the bonnet bolts to thirty foot pounds
travel's at least seven sixteenths of an inch
took no more than nine seconds
signal's at nine
bonnet bolts torqued to twenty six
fluid temp's a hundred and thirty degrees
travel's six hundred twenty five thousandths
hundred psi upstream and she's bubble tight
watched it ten minutes
eighty pounds on the seat test dead tight
two hundred psi on it and she's blowing by
getting four bubbles a minute with two fifty psi on it
forty cc a minute at seventy five pounds
two and a half milliliters a minute at six bar upstream
six drops a minute at a hundred psi
took her eleven seconds to stroke
no bubbles at a hundred fifty psi
no leak at three hundred pounds either
went ahead and did a stroke test and a shell test
then a packing test and an actuator test
ran the seat leak test
fifteen pounds of signal and she goes full travel
put signal to it and she won't open
shell test passed
packing test passed and it strokes full
air test on the actuator no leaks
seat's shot
flipped her
found a tear in the power diaphragm
gonna need a new one
okay so i pulled the bonnet and the stem's scored up pretty bad guide's wore out too so i swapped the guide for a new one and the stem i just dressed it
that plug done got ate up all the way around
bonnet gasket's toast eh
put a new one in there
i inspected the cage and i did not find any cracks in it
packing's weepin'
snugged up the packing nut
there's paraffin all over the trim
spring's broke had to change out the spring and the o ring
lower diaphragm came out hard as a hockey puck
no leak at sixty pounds
strokes full
bonnet bolts are torqued to twenty eight foot pounds
hold up now i smell gas
alright this here's l c v three oh six two inch air to open
she's leaking by at a hundred and ten pounds
got a new seat in there
plug went back in
tightened it
the upper diaphragm i mean the lower diaphragm has a pinhole in it
seat and plug are both washed out pretty bad gotta change 'em both
can't isolate it block valve's passin'
breather's packed shut with a wasp nest
rodded it out
travel indicator's gone
bring me a travel indicator
hmm is that a crack yeah that's a crack in the yoke
stem's locked up she won't budge
there's ice all over the pilot
cage is pitted
guide's galled
scratch that
fifteen psi signal and she strokes full
it took about six seconds to stroke
that lower housing rusted real bad down in the bottom
two of the bonnet studs are stripped replaced two studs
bled it down and there's still pressure on it
l c v one one two seat's worn l c v one one three seat's fine
note that the nameplate is painted over
cage is fine plug's wire drawn
spring's alright put her back in
regulator's sticky just a bit
ditto for the positioner
put a whole new kit in it
both backup rings are sliced
i replaced both backup rings
diaphragm's ripped
leavin' it for now
seat had a nick in it so i had to lap it
got sand all down in the seat area washed it out
stem drags a touch
greased the stem and the guide
counted five bubbles a minute at seventy five pounds
this valve is fail closed and it is in sour service
pulled the diaphragm plate it's rusty and the diaphragm nut's rounded off
inch and a half pressure to close p v two oh nine alpha
cage o ring's swole up
pitched it
top diaphragm's good bottom diaphragm's got a hole blown clean through it put a new one in
i think the seat gasket might be pinched
bonnet bolts were loose tightened them to thirty two foot pounds
won't open with twenty pounds of signal
vent hole stopped up with mud again
hey order me two cage gaskets and a seat gasket
replaced the actuator spring correction the indicator spring
linkage is bent
same on the yoke
straightened the linkage
upper housing got a hairline crack on the edge
oil's low and it's dirty so i drained it and filled it back up
i checked the inlet threads and the outlet threads
the inlet threads and the outlet threads are both intact
positioner looks good went ahead and calibrated it
gauge is busted
tossed it
float's got a dent in it left side
tubing's kinked and a fitting's leaking i fixed the fitting but i didn't replace the tubing
travel measures one and one eighth inches
seat's chipped a bit on the edge
flipped it over
plug's gouged went ahead and changed it
what's left
number on it's p v four one seven no wait p v four one nine and it's a three inch
supply pressure is thirty five
spring let go on me
busted my hand open i'm hurt
spilled condensate all over the pad
air's coming out the breather
guide's a little worn
ran it again
stem guide o ring's gone hard and the cage o ring's mashed flat
so seat's worn one side and the plug's nicked i flipped the seat and dressed the plug and torqued to twenty five
this is l c v five zero one
the seat is pitted
this is l c v five zero two
the seat is okay
ten drops a minute at the packing
order a solenoid
three of them body bolts got rust on 'em
pulled the cage scraped it looks good put it back in
i put thread locker on the lock nut
note the fence is down on the north side
strainer's clogged
blew it out
read it back
handwheel's busted and the flange got a little rust on it
we got a fire over here
the controller is not leaking and the fitting is not leaking
trim's plumb wore out
reckon the bottom diaphragm's tore
alright done with this one take a picture
the seat gasket was stuck to the body
removed it
actuator's fine but the pilot's leaking real bad gotta swap it
packing test failed replaced packing
packing test passed
valve disassembled body heavy corrosion inside
stem no scoring not bent
actuator spring weak needs replaced
order an actuator spring
spring length four and five eighths inches
stem connector came out misaligned adjusted it
indicator gasket brittle indicator spring snapped
process temp eighty five celsius
jam nut torqued to ninety inch pounds
packing nut torqued to forty newton meters
sitting at forty percent open
supply pressure one point four bar downstream pressure eleven inches of water
measured forty cc a minute at a hundred and twenty five pounds
ten minutes at a hundred psi no leak
guide clearance is twelve thousandths
holding at fifty to sixty psi
supply pressure at least thirty psi
signal pressure no more than twenty psi
no leak
bonnet bolts torqued to thirty foot pounds
make that twenty eight
upper diaphragm cracked
correction lower diaphragm
tag l c v two ten
correction two eleven
stem's pitted
cage is eroded replace it
correction i already replaced it
stem bent
cage cracked
never mind that
plug worn
cage is cracked scratch that cage is pitted
seat worn
plug scored
stop listening
seat's cracked he told me
start listening
plug's fine
the plug uh the seat is scratched
the cage no the guide is galled light galling both sides
upper diaphragm's torn replaced it
inlet threads are corroded wire brushed them
same on the outlet threads
upper o ring's nicked
same on the lower one
plug and seat gasket both came out damaged
replaced them
clean the strainer
plug's going back in body's eroded not replacing the body
seat maybe needs replacing
no lock on it yet
spring's still loaded
for the record customer wants the old parts boxed up
remark serial plate unreadable
breather missing installed a new breather
vented the lower housing took the actuator apart
put the bonnet back on tightened body bolts
left the old packing in
seals extruded badly threw the seals out
flange face has minor scratches
outlet threads are cross threaded nut is galled and needs replaced
housing dented on both sides not leaking
gasket got pinched edge of it is cut
bottom of the cage sand cut all the way around
seat area steam cut on the inlet side
plug washed out in the center excessive
rust on the right side of the yoke outside of the body is chipped
strokes full but it's blowing by at fifty pounds
at ninety psi she's bubble tight
fifteen pounds signal only half travel
no bubbles at a hundred and five pounds
three to five bubbles a minute at sixty psi
took eight to ten seconds to stroke
temperature's a hundred and eighty degrees
downstream pressure around one twenty
stem's bent and so is the linkage
neither the plug nor the seat is worn
nothing wrong with the positioner
no issues with the controller
die a fram is torn
pick up a kit and four bonnet bolts
cage is split unlike the guide which is fine
body okay bonnet okay stem light scoring packing worn
float is fine linkage is loose tightened the linkage
diaphragm punctured near the edge
what have you got
tag pee vee one oh four bravo
valve is seized
close it out
lima charlie victor three three zero normal service air to close
actuator test passed at twenty psi
actuator leak test failed diaphragm nut was loose
seat leak test at two hundred psi dead tight
shell test at four hundred psi failed
positioner probably needs calibrating
solenoid reused gauge scorched pilot cleaned
what we got here is a tore top diaphragm
bottom one's in good shape
well shoot that seat's plumb wore out
stem won't budge for nothing not even with a cheater pipe
packing's weeping a tad
snugged up the packing nut by hand
cage is gunked up with paraffin
went to town on it with a wire brush
came out looking good
hotter than blazes out here but i will say the plug looks good
stem's good too
shot that actuator spring just plain shot
is the yoke cracked nope not a crack on it
any sand in the body oh yeah
blew it out with the air hose
i'd call that seat washed out wouldn't you
lower diaphragm hmm let me see yeah it's got a pinhole
bonnet bolts well two of em was loose
jam nut had backed off on me
ran it back down tight and threadlocked it
some fella way back when cross threaded the diaphragm nut
seat's not too bad for its age
packing i did change mind you
no need to change the packing this go round
balance diaphragm's blown through
popped a new one in
linkage is bent like a pretzel
straightened it out over my knee
she's leaking by like a sieve
opens and closes fine slicker than snot
hang on i smell gas up here by the stack
whoa now still pressure on this thing back up
block valve's passing so no can't get it isolated
l c v four one two bravo inch and a half air to open
plug's chipped
on the two inch here sandy service the cage is eat up
stem drags some goin up
upper housing's rusted on the outside but the inside's clean
wire brushed it
travel indicator's gone just flat gone
whole valve's caked in mud and i mean caked
vent plug's stopped up again dirt daubers
dug it out with a pocket screwdriver
o rings they're swole up every one of em
replaced the whole lot
backup rings both cut seen it coming a mile off
wore on the one side this seat here
tossed that old seat gasket it was squished flat
hundred and four in the shade and wouldn't you know it the top diaphragm's ripped
pulled the bonnet and the plug's stuck won't come up for love nor money
controller i reckon it's full of dirt
reckon that spring's gone weak
put a spring on the list
seat's fine so i ain't replacing it
stem though that needs a new one
yep yep strokes full eighteen pounds on the signal
took about twelve seconds to stroke slow as christmas
three eighths of an inch that's what i got for travel
got forty five pounds upstream and she's holding
wiped the sweat off my glasses and put the bonnet back on
torqued the bonnet bolts to twenty eight and the body bolts to thirty five
sun's about to cook me but the new packing's in
that mark on the stem i'd call it a scratch
dressed it with some emery cloth
other than the seat being a little wore the rest of the trim looks good
same as before seat's sand cut just like last time
regulator's got ice all over it
wind's howling forty mile an hour and i can still hear it blowing by
ain't a thing wrong with this cage
put it back in
greased the guide
i didn't see no cracks in that bonnet
seat ring's busted in half
order me a seat ring and get me two o rings while you're at it
stem guide's wore egg shaped
tubing's kinked over yonder by the regulator
inlet threads had mud in em
cleaned em right up with a toothbrush
they're intact
four body studs gone
got me a seep at the bonnet gasket just a little one
tightened the bonnet bolts
torqued to thirty
is it leaking at the packing no sir it is not
this diaphragm got pinched right at the edge
seat looks good stem looks good cage looks good gauge looks good
plug's scored seat's scored guide's scored what a day
lapped the seat anyhow
greased the stem and gave the lock nut a shot of threadlocker
them outlet threads is boogered up bad
whoa hold up the spring's still loaded
cage back in bonnet back on
all done
seat's nicked
what all did i miss on this one
put a seat and two o rings on the list for me
bring me a bonnet gasket next trip out and a breather
been sitting in the rain all winter and the outside of the body's rusted real bad
drained the body into a bucket then drained the lower housing
oil was low so i went ahead and topped it off
seat's worn no the plug
seat's pitted
seat's fine it was just glare off the sun
torqued the bonnet bolts to thirty make that thirty two
p v seven oh three
seat's cut on the edge
now over at p v seven oh four
diaphragm's good
done with this one
wrench slipped and cut my hand pretty good i'm bleeding
we got a spill here it's running down the pad
spring's broke it's in three pieces down in there
replaced it
seat worn one side plug scored stem okay flip the seat
cage pitted guide galled spring good
guide replaced
spring back in
upper diaphragm replaced lower diaphragm reused
lapped seat cleaned cage greased stem
bonnet bolts thirty foot pounds
no leak at fifty psi
new seat new plug new packing
all good cage guide and stem
seat leak test pass sixty psi
stroke pass seat leak fail packing test pass
bonnet bolting torqued twenty eight foot pounds star pattern
lock nut torque sixty inch pounds
packing nut tightened to fifteen foot pounds
actuator spring length four and five eighths inches
signal range is six to thirty psi
supply pressure thirty five signal pressure nine
upstream pressure four bar downstream pressure one point five bar
nothing wrong with the yoke no issues with the bonnet
no damage upper housing no damage lower housing either
body no cracks slight corrosion at the inlet
bonnet gasket flattened
toss it
gaskets binned new ones in
cage is in good nick
seat's knackered
swapped it out
packing's fine leaving it
nipped up the packing nut half a turn
stripped down the actuator on bench two
upper diaphragm's torn
put a new one in
lower one's fine
breather's bunged up cleaned it out with a bit of wire
spanner slipped on the lock nut and now it's rounded
packing's weeping slightly reckon it needs replacing
diaphragm's gone proper hard
seat to be lapped plug needs replacing
the seat was flipped by the night crew
body bolting not replacing bonnet bolting replaced
strainer pulled rodded out put back in
three of the eight bonnet studs stripped
replaced all eight body studs
replaced a couple of o rings and a few seals
both backup rings swapped out both were cut
new seat gasket new cage gasket new bonnet gasket
to order one seat two cage gaskets four bonnet studs
note serial plate is unreadable
trim reused
for the record customer supplied the trim
correction plug worn
plug scored one side i mean both sides
stem replaced
no wait straightened
travel three quarters of an inch sorry seven eighths of an inch
cage pitted
ditto for the guide
upper diaphragm cracked replaced
inlet threads galled outlet threads fine dressed the inlet threads with a file
positioner calibrated on the bench seals checked over
actuator leak test at thirty five psi pass
shell test one fifty psi passed
seat leak test twelve cc a minute at fifty psi
packing two drops a minute
eleven seconds to stroke
f v dash two two zero three inch fail open normal service
lima victor three one
body washed out at the outlet badly
seat area also washed out
pilot disassembled and cleaned
new seals in it too
handwheel's bent a tad leaving it for now
torn at the center that lower diaphragm
diaphragm plate fine diaphragm nut fine diaphragm itself torn
indicator spring weak indicator gasket missing
replaced both
seat and plug lapped together
the trim reused as is
supply tubing kinked in two places replaced
oil drained refilled looks good
seals all hardened new seals in
linkage adjusted float adjusted handwheel greased
one inch valve severe service air to close
stem needs a new one guide needs cleaning
as found seat eroded heavy as left seat replaced
trim looked over with a torch and a mirror no cracks no pitting
nothing wrong with the yoke at all it's fine it's absolutely fine
okay so the see ring is worn on one side and the plug is scored so i flipped the seat and put a new plug in
torqued the bonnet bolts to thirty
upper die a fram is torn and the lower die a fram is good
steam is bent pretty bad need to replace it
talked the bonnet bolts to twenty eight foot pounds
pack in is weeping a little so i tightened the pack in nut
cage gas kit is flattened and the bonnet gas kit is torn
back up ring is cut an the oh ring is swollen up
breather is plug with mud so i blue it out with air
seat leak test she is leak in by at sixty pounds
stroked full at fifteen pounds sick null no problem
ell see vee two oh six is a two inch sour service and the trim is good
lock not was loose so i tightened it and put thread lock her on it
actuator spring is week and the indicator spring is broke
seat is wash doubt replace it
plug is a roded and the cage is a roded too
there is a nick on the edge of the seat ring and uh a scratch on the plug so i lapped the seat
bonnet bolts two are missing and one is stripped
cleaned the cage cleaned the guide greased the stem put the bonnet back on
no cracks in the body no cracks in the bonnet no wear on the guide
upstream pressure is eighty downstream pressure is twenty five and it is bubble tight
three bubbles a minute at fifty pounds on the seat leak test
uh hold on i smell gas over hear
the body is corrode it on the out side
stem is sees up it will not move
pee see vee one one nine alpha the controller is full of dirt and the regulator is sticking
cleaned the controller
regulator needs a new one
seat is pit it all the way around
uh replaced it
die a fram nut is loose die a fram plate is bent
flange is dented but the in let threads are intact
calibrated the positioner an adjusted the linkage an greased the yoke
trim is shot replace the hole thing
took ate seconds to stroke
bonnet gasket is leak in put a new one in
yolk is cracked but the hand wheel is okay
put a yolk on the list
float is dented an linkage is bent so i straightened the linkage out with a hammer
seat worn one side no wait both sides
cage is fouled with sand blew it out
read that back to me
pilot is plugged an the vent hole is plugged to
stem guide oh ring is cut but the stem guide is okay
lock nut torque is thirty correction thirty five foot pounds
three inch valve fail closed the seat is worn and the plug is worn so i replaced both
pulled the bonnet gasket's toast eh put a new one in
torqued the bonnet studs to forty newton metres
diaphragm's stiff as a board from the cold
breather's iced over
thawed it out and cleaned it
packing's dripping a wee bit gave the gland a quarter turn
travel's thirty eight millimetres
the seat's knackered needs a new one
gave the cage a good scrub
the jam nut had backed off two turns nipped it back up
bloody thing's passing at a hundred psi
spring's snapped clean in half chucked it
no worries with the guide it's good as gold
whacked a new packing set in it
she's a three inch air to open dirty service
breather's chockers with a mud wasp nest
that seat's wallered out bad on one side
bonnet bolts was finger tight tightened em all down to thirty foot pounds
that plug is ate plumb up
supply gas is thirty two pounds
she strokes fine top to bottom
fixing to order two of them cage o rings
trash in the seat dug it out
threads on the outlet's boogered up
them backup rings is both nicked i changed em
top diaphragm got a hole in it you could stick your finger through
salt's ate up the bolts on the body
lapped the seat and the plug
dressed up the seat face with a stone
stem's got a slight bend to it trued it up in the press
note customer wants the old seat kept in a bag
stem guide light scoring
replaced seat plug cage gasket
lower diaphragm okay upper diaphragm torn at the center
found cage o ring nicked action replaced
diaphragm is having a minor tear at the edge
packing is leaking slightly kindly order one packing set
spring is found broken same has been replaced
stem is not moving freely
this seat has spoiled we need to change it
the bush is worn oval ja
gave the stem a lick of grease
diaphragm's split from the centre out
there's a hairline crack running through the yoke
the seat ring's pitted to hell
swapped out the spring for a fresh one
already changed the lower diaphragm sir
takes fourteen seconds to close
won't go past half travel
recalibrated the positioner
controller supply's at twenty psi
gauge is junk needs replacing
strainer's plugged solid with sand blew it out with air
supply tubing's kinked right behind the regulator
fitting on the signal line is leaking tightened it and it quit
float linkage is bent
handwheel just spins it's stripped
oil's low in the controller topped it off
oil looks like chocolate milk
yoke's cracked i think hard to see under the paint
not sure but the lower housing might have a crack
no washout no pitting on the seat it's clean
looked for galling on the stem none
cage isn't eroded yet
two of the eight body studs are snapped
three backup rings extruded one o ring flattened
didn't have a seat with me so i flipped the old one
going to leave the packing alone till next trip
put the same spring back in
took the plug out it's scored a little put it back in for now
need to bring a bonnet gasket and four studs next time
put a seat and a pair of backup rings on the list
seat's cut
upper diaphragm torn
same on the lower
inlet threads galled
other ones are fine
replaced the stem guide
scratch that cleaned the stem guide
body bolts torqued to ninety
i mean ninety five
plug scored sorry plug scratched
seat worn on the left make that the right side
what's left on this one
read me back what you got
i'm smelling gas over here
hold up still got pressure under this bonnet
block valve upstream won't hold i can't isolate it
caught my hand in the yoke i'm bleeding
there's condensate all over the ground
spring's still got load on it
we're good here close out the ticket
six drops a minute out of the packing
two point five cc a minute at fifty
put twenty pounds on the actuator holding
spring free length six and three quarter inches
supply's between eighteen and twenty two
at least a hundred psi upstream
line temp is about one forty degrees
sitting at sixty percent open
got the bonnet off and the seat looks rough on the bottom
seat's eaten on the downstream side going to flip it
flipped the seat other side looked brand new
plug has a groove worn around it where it meets the seat
the stem has light scratches polished them out
spring is fine no cracks measured six and a half free
bottom diaphragm is toast has a slit about an inch long
upper diaphragm's still soft looks good
changed out both diaphragms while i was in there
every o ring in this thing is hard as a hockey puck
put all new o rings and backups in
the guide is egged out pretty bad
cleaned out the ports in the guide they were full of wax
inlet threads have some galling chased them with a die
outlet threads are decent
bonnet studs at twenty nine foot pounds all eight
torqued body bolts in three passes to one ten
snugged the gland down half a flat quit dripping
repacked it with new packing
put sixty pounds on it and there isn't a bubble
still blowing by at eighty lapped it again now she's tight
stroked it three times smooth both ways
with fifteen on the diaphragm it goes wide open
supply was at eighteen bumped it up to twenty
travel checks out at five eighths
hey put me down for a seat gasket and a bonnet gasket on next week's order
we're out of stem guide o rings order half a dozen
can somebody bring out a lower diaphragm tomorrow
hold up it just burped gas at me
my monitor just went into alarm
the upstream block won't seat there's still flow
bled it off but the gauge is still showing forty
sliced my palm open on the cage
oil's running out onto the gravel
watch it that spring's not backed off yet
cover's bent where somebody pried on it
breather's gone just an open hole
vent is packed with bugs cleaned it out
indicator's rusted to the stem freed it up
positioner arm's loose tightened the screw
regulator drip leg was full of water drained it
gauge glass is broke
the tubing to the actuator has a pinhole leak
replaced two feet of tubing and both fittings
handwheel won't turn it's froze solid
jam nut was missing altogether put one on
there's corrosion under the yoke clamp but nothing deep
body's got a washout spot below the seat about quarter inch deep
does not appear to be any erosion on the cage
nothing on the plug worth mentioning
seat gasket compressed flat and torn on one side
reused the cage gasket because i didn't have another
the kit was short a backup ring so i left the old one
leave the actuator for the next guy
removed cleaned and reinstalled the cage
cage plug and stem all washed in the parts bin no defects
seat worn one side no make that both sides
it's the lower sorry the upper diaphragm that's torn
torque bonnet bolts thirty
correction twenty eight foot pounds
inlet side of the body is pitted
outlet's the same
stem guide worn stem o ring cut
note pit liner needs a look next time out
what all have i not covered
go ahead and close this one out
snap a photo of that
broke the bonnet loose and the gasket came apart on me
plug is pitted on the face seat's not far behind
seat has a nick on the edge dressed it with a stone
swapped the seat end for end
top diaphragm has a blister the size of a dime
balance diaphragm is fine left it in
both springs look good
indicator spring is missing didn't have a spare
pulled the cage it was stuck in there good
cage bore is galled ran a hone through it
packing was leaking about ten drops a minute
added a ring of packing
guide bushing is loose in the bonnet
body threads on the inlet look fine
two bonnet studs galled replaced them with new
torqued bonnet to spec thirty foot pounds
signal line had a leak at the fitting re made it
air supply reads twenty two psi
opens at three and a half pounds and full at fourteen
it strokes but it's jerky about halfway
closed it in and watched the downstream gauge for five minutes no rise
leaks about two bubbles a minute with a hundred on it
won't shut off got sand under the seat
no leaks anywhere on the outside
needs a complete rebuild
bring a two inch trim kit next time
order me one seat and two backup rings
lower housing bolts were rusted wire wheeled them
vent on the bottom case was taped over
i think the stem might be bent but i can't tell for sure
no scoring or scratches that i can see on the stem
seat gasket was pinched put a new one in
upper diaphragm replaced lower one not
cleaned and greased the stem threads
replaced the seat
no wait i flipped it
plug eroded
i can still hear gas hissing out of the bonnet
nobody's hung a lock on this thing
okay that wraps it up here
what am i forgetting
seat is worn plug is fine
seat ring shows light erosion on the inlet side
plug has a nick on the seating edge reused it
cage is washed out at the bottom replaced
stem is bent slightly about ten thou
bonnet gasket crushed needs a new one
upper diaphragm has gone hard lower diaphragm still soft and good
three of the eight body bolts are corroded
found scale in the cage windows cleaned it with a wire brush
spring has lost its tension
replaced with new
threads on the bonnet are galled chased them with a tap
yoke looks alright no cracks
handwheel missing handwheel nut missing as well
no wear on the stem no scratches no galling
paraffin packed in the strainer pretty bad
blew it out with steam
gauge is pegged don't work get me another gauge
got a tear in the top diaphragm about an inch long
there's a pinhole in the float
there ain't nothing wrong with this plug
cracked that yoke is
worn out seat scored plug bent stem that's the whole story
she's got a busted spring in her and a torn diaphragm
o rings are shot both of them
changed em both
the seat's cut on one side and the plug's cut too so i flipped the seat and lapped the plug
i'm going to need to replace that cage
not today though
ended up not changing the packing
already lapped the seat
gotta clean the strainer and grease the stem
need to order two diaphragms and a seat kit
pick me up a can of oil and a new gauge
put four new studs in the bonnet
torqued them to sixty five foot pounds
turned the seat over and put it back in
old gasket's going in the trash
plug's going back in as is
put the actuator back on and hooked the tubing up
backed the packing nut off a quarter turn
supply pressure thirty five psi signal nine psi
upstream six hundred downstream two fifty
stroke test fifteen psi full travel four seconds
seat leak test at one thousand psi two bubbles per minute
shell test at fifteen hundred psi for ten minutes no leaks
packing test leaking one drop a minute
actuator holds thirty psi with no leak
valve opens to sixty percent and hangs up
won't hold at two hundred psi
valve is passing
no bubbles after lapping
it takes at least twenty pounds to get it moving
moving on to p v two twelve two inch air to open
this is f c v one oh one alpha fail open sour service
l v seven three inch valve in sandy service
seat's washed out
plug is scored
correction seat is scored
torqued the bonnet bolts to forty
make that forty five
seat's worn on the inlet side no wait the outlet side
stem is bent
never mind that straightened it
three bolts loose i mean four
block valve's leaking by i can't get it isolated
still got forty pounds on it after bleeding down
i smell gas over here
packing's leaking
smashed my finger in the yoke
oil all over the ground
for the record the customer declined a new actuator
what else have i got to do
take a photo of this
all finished here
cage has light scoring on the inside polished it out with emery reused
plug and stem assembly is bent replace
seat gasket and bonnet gasket both replaced
actuator spring rusty no cracks reused
diaphragm plate corroded on the bottom cleaned and painted
lower housing cracked at the vent hole needs replacing
two body studs galled replaced both two nuts also
positioner out of calibration recalibrated
travel indicator bent
straightened
good to go
flange face pitted dressed it
handwheel stiff greased the threads
solenoid checked okay
checked the regulator it's fine
inspected the bonnet no cracks found
strainer removed cleaned reinstalled
stem guide o ring missing installed new
cage o ring cut in two places
packing replaced packing nut torqued to twelve foot pounds
upper and lower diaphragms replaced
inlet threads damaged outlet threads okay
stroked the valve opens and closes fine
valve will not close fully
actuator leaks air at the diaphragm
oil level low topped up
gauge broken replaced
seat is good plug is good cage is good
nothing wrong with the trim
well this here plug's about as wore out as my truck
y'all seen this stem bent like a pretzel
had to beat the bonnet off with a hammer
packing nut was cross threaded so i chased the threads and put it back on
she's leaking around the packing gave the nut a half turn and it quit
seat's eat up plug's eat up whole trim's junk
both diaphragms look new leaving 'em in
that lower one's got a hole you could put your thumb through
changed it
got three bad studs out of eight on the bonnet
not a thing wrong with that cage stuck it back in
i think the spring's broke but i ain't pulled it yet
gonna flip the seat and run it
we flipped that seat last time so it's getting a new one
couldn't find anything wrong with the actuator
fitting on the supply line was weeping snugged it up quit
breather was gone put a new one on
somebody left the lock nut off
it's passing bad probably the seat
cleaned her up greased her up put her back together
seat and plug are cut same for the cage
replaced seat plug and stem
need a new gauge and a regulator put them on the list
bring me four half inch studs for the bonnet
forty two foot pounds on the body bolts thirty on the bonnet
between two and three drops a minute at a hundred pounds
less than one bubble a minute at six hundred
gas temp's about ninety five degrees
stem travel measured at twenty two millimeters
next one's l c v three oh five bravo four inch fails closed
plug's pitted correction scored
bonnet bolts at fifty
sorry fifty five
gonna replace the stem
correction already replaced it
upper diaphragm's torn i mean the lower
p v two oh one
correction p v two oh two
scratch that last one seat's fine
seat's worn
plug's worn
h two s alarm's going off
there's no lock on the upstream block
spring's still under load careful
he cut his hand on the flange
condensate running out on the pad
okay what do you have so far
snap a picture
that's it for this valve
note that the operator wants a call before startup
actuator failed its air test packing failed the test too
shell test failed
valve's passing can hear it
okay i'm on l c v three oh seven
opened her up seat area's pitted
body's washed out on the right side nothing i can do about that today
put in a new seat plug and cage gasket
bonnet bolts at forty foot pounds
eighty psi upstream dead tight
gasket's stuck in the body
supply port's plugged signal port is good
replaced eight bolts
greased the nut
lima victor four four alpha two inch
housing's cracked at the center
order me a housing
starting on foxtrot charlie victor six one two
one inch fails closed sandy service
it's a fail open valve in normal service
pressure to close on this one sour service
alright i got papa victor one one zero charlie here
seat's worn flipped it
l v one ten
seat's worn on the bottom
l v one eleven
plug's scored
working l c v twenty one
top diaphragm's holed
okay over to l c v twenty two
diaphragms look good on here
hotel victor three three strokes full
next one's hotel victor three four
she won't open
l c v five oh one two inch air to open
seat leak test passed
now l c v five oh two three inch air to close
seat leak test failed
ell vee eight alpha
replaced the packing
that's it on this one
ell vee eight bravo
packing's weeping tightened it
seat looks good to me
uh upper diaphragm's torn
ah scratch that
replaced the cage gasket
put four new bonnet bolts in
ah strike that
looks like the plug's pitted
nah never mind that
got thirty foot pounds on the bonnet bolts
nope forget that last one
thirty six foot pounds on the bonnet bolts
stem's bent for sure
seat's scored and so is the plug
hang on strike that
order me a gauge
and order two diaphragms
forget that last one
cage is cracked
scratch that one too
cage is pitted scratch that cage is fine
stem's bent
scratch that stem's scored
strike that
plug's pitted no wait it's scored
bonnet bolts to thirty make that thirty five foot pounds
i replaced the seat gasket sorry cage gasket
p v nine oh one correction p v nine one oh
nick on the inlet side of the plug i mean outlet side
order three make that four body bolts
cleaned the strainer i mean replaced it
stem's slightly bent no wait badly bent
seat's worn on one side correction both sides
body bolts at forty foot pounds
make that forty two
correction bonnet
swapped out four of the body bolts
make that six
travel's half an inch
correction five eighths
getting five bubbles a minute at a hundred psi
make that three bubbles a minute
correction seat's eroded
bring two cage o rings
make that three
plug no the seat's eroded
the plug uh the cage is cracked
seat's gonna need replaced
l c v four eleven
correction four twelve
i mean the lower
two inch normal service
correction severe service
bring me two seat gaskets next trip
gotta order a lower diaphragm
put a backup ring on the parts list
and order up eight cap screws for the bonnet
order one stem
pick up two fittings
and get me a float
stem's bent and scored order me a stem
whoa i smell gas
careful spring's still loaded
my h two s monitor's going off
i mashed my thumb getting out of there
hold up there's still pressure in this thing
upstream block valve's leaking by on me
i can't get this thing isolated
nobody put a lock on it either
cut my hand
just spilled condensate all over the pad
there's a fire over by the treater
bled her off and there's still pressure on it
we've got an oil spill here
something's on fire
cage is fine
snap a pic of it
what am i missing
grab a photo of that
quit listening for a minute
okay start listening again
okay what's still left on this one
say that again
seat's worn both sides
take a picture
quit listening
start listening again
close her out
note the ladder on this separator is loose
for the record operator was told about the vent line
remark next time bring the long socket
cage is clean
note that this well makes a lot of sand
upper diagram torn
replaced the bottom die a fram
bonnet casket is leaking
cage oh ring has a nick in it
back up ring is flat put a new won in
strain her is clogged
act you ate her spring is week
lock knot is loose
seat leak test past
el sea vee two oh nine
there's a whole in the diaphragm
got it apart seat's worn one side flipped it plug's fine cage had scale on it cleaned that up new seat gasket new cage gasket
two inch l c v one oh two fail closed seat's washed out on the inlet side put a new one in
top diaphragm's ripped bottom one's good spring's a little rusty diaphragm plate's fine
stem's scored packing's leaking need to replace the packing
bonnet bolts at thirty five foot pounds hundred psi upstream bubble tight strokes full that's it
guide's galled o ring's cut backup ring's brittle swapped the o ring new backup ring too
cage is eroded bad plug's okay seat gasket was stuck in the groove threw it away
okay so uh pulled the positioner it was full of crud cleaned it out and ran it again
you hear who they hired over at the plant
hang on phone's ringing
yeah babe i'll be home by six
my pickup's got a blown head gasket
man it's cold enough to hang meat out here
hand me that nine sixteenths wrench would you
you want a coffee
two sugars for me
truck's stuck in the mud again gonna need a tow
my knees are about wore out kneeling on this gravel
gonna be a hundred and five degrees by noon they say
did you catch the ball game
they blew it in the ninth
my boy benched a hundred and fifty pounds last night
turn that radio down i can't hear myself think
supervisor says he'll swing by after dinner
have a seat over there i'll be with you in ten minutes
sorry that was the wife on the phone
kid's got a dentist appointment at four thirty
good morning fellas who made the coffee
old man used to say measure twice cut once
that dog's loose again over by the tank battery
okay so uh
hmm let me think here a second
sand cut the seat real bad went ahead and put a new one in
found a crack in the cage right up at the top
ain't no cracks or pitting in this plug
stem ain't worn just dirty needs wiped off
tore the actuator down diaphragm's ripped clean across
packing's weeping a little snugged the packing nut up
bonnet gasket's mashed flat gotta change it
trim's wore plumb out gonna have to change it
actuator spring busted right in the middle done swapped it out
cage o ring's swole up big as a doughnut stem guide o ring's alright
two new backup rings in and i greased the stem
top diaphragm's ripped changed it out
same on the bottom one
seat ring's wire drawn one side so i went ahead and flipped it
plug's alright going back in
somebody buggered up the inlet threads
outlet threads are okay
breather was plugged with mud rodded it out
float's got a hole clean through it gonna have to change that
cage ain't washed out or nothing it's good to go back in
stem was bent a touch straightened it in the press
jam nut was loose slapped some thread locker on it and snugged it back down
packing nut had been left loose
solenoid got burnt order another solenoid
there's ice on the regulator and the supply port's blocked with it
guide's galled one side and scored on the bottom replaced it
plug and seat both wire drawn swapped em both
diaphragm plate's rusted on the edge
bottom diaphragm's fine
no damage to the bonnet
body's rusted outside pretty bad though
two of the bonnet studs are broke off replaced all four
linkage is loose as a goose float's dented and the handwheel's missing
yoke's cracked just a hairline
snap a picture of that
might be a hole in the top diaphragm can't tell till i get it out
cage gasket's gone brittle on me put a new one in
indicator gasket's stuck in the groove
finally got it pulled
signal port was stopped up blew it out
same on the supply port
tubing's kinked too
pulled the strainer it was plugged with sand blew it out and put it back in
stem's worse than last time scored real bad
indicator spring's weak travel indicator itself ain't broke
oil was dirty drained it and filled it back up
lower diaphragm's a touch hard leaving it for now
reckon the spring's weak
it might oughta be replaced
nothing wrong with the plug ran it again
stem guide o ring's cut and the backup ring's pinched put in all new seals
adjusting screw's rounded off can't get a wrench to bite on it
l c v four oh six
she's leaking by
put sixty pounds on the upstream side and it's holding dead tight
seat test no bubbles at forty five psi
four bubbles a minute at seventy psi
about ten drops a minute coming by the seat
strokes full with twenty pounds on it
won't stroke got thirty psi signal on it
only getting half travel at eighteen pounds signal
took about four and a half seconds to stroke
shell test's good at two eighty five psi
opens and closes just fine
actuator test failed the diaphragm's tore
went to forty two foot pounds on the bonnet studs and eighty five inch pounds on the packing nut
tightened the body studs to a hundred and ten foot pounds
diaphragm nut torqued to thirty newton meters
measured the travel at twenty two millimeters
spring measures six and an eighth inches long
supply's thirty five psi signal's running nine
upstream's one eighty psi downstream's forty two psi
running a six to thirty pound signal on this one
them body bolts got at least sixty foot pounds on em
got seven eighths of an inch of travel
fluid's coming through at about sixty degrees celsius
ten thou of wear on the stem
supply pressure two point one bar
signal's twelve inches of water
she's cracked open about fifteen percent
hold up we got a fire over by the tank
block valve's leaking by can't get her isolated
bled it down but it's still got pressure on it
mashed my thumb in the yoke got hurt pretty good
watch it the spring let go on me
h two s monitor's going off we're backing out
knocked the drain bucket over got a spill on the ground
seat's cracked
bring me two bonnet gaskets and a diaphragm
put a seat and four o rings on the list
note that somebody painted over the breather last fall
for the record the old packing went in upside down
take a picture of the plug
it's chipped on the edge
tell him i'll be there after lunch
stem's scratched on the left side
flange is nicked up some
okay p v two oh seven two inch fail closed
this here's lima charlie victor fifty two alpha
bonnet's rusted
cage is eroded on the inlet side
cage is good on this one
pcv nineteen oh four three inch air to close sour service
f c v one twelve seat's wore out replaced it
on hotel victor ten
and the stem won't budge
lv twenty two seat's pitted lv twenty three seat's fine
this one's a one inch pressure to open normal service
plug's got a dent in it
plug's nicked on the right side
seat's pitted bad no wait cage is pitted bad
took the bonnet bolts to fifty one foot pounds
make that fifty seven
sorry power diaphragm
swapped the packing out
correction packing nut
body bolts are galled bad
need replaced
correction already replaced em
on l c v thirty
housing's rusty inside
correction l c v thirteen
pv four hundred forty
i mean four hundred forty one
cage gasket scratch that seat gasket's tore
spring's broke
guide's worn
stem guide's fine
flange is dented
inlet threads are galled
same on the outlet
upper housing's got a crack in it
lower one too
cage is caked with paraffin scraped it off
ditto for the plug
backup ring got pinched swapped it
three bubbles a minute at fifty five psi
sorry five bubbles a minute
replaced three body bolts
no wait four
stem's scratched
no wait scored
took out the bonnet gasket
it's flattened and tore on one side
actuator diaphragm went hard on us replacing it
balance diaphragm's okay leaving it
seat area's corroded a little outlet threads are intact
checked the oil it's low added some
had a few nicks in the stem dressed it up with emery cloth
vented the actuator and took the upper housing off
still leaking by at fifty pounds
pilot's sticking some
took it off and cleaned it
gauge is busted needs a new one
controller's fouled with scale inside
gotta clean that out
fitting's cross threaded took it out and put a new one in
some knucklehead painted the vent hole shut
cleaned it out
lower o ring's extruded real bad upper one's nicked a little
put a new kit in
kept the old spring
changed the seat gasket and the cage gasket didn't change the seat
s d v three hundred
power diaphragm's split bottom one ain't
went ahead and changed the power diaphragm
bonnet bolts got forty foot pounds
opens and closes fine at twenty five pounds
tango victor six one six
shut in and she won't hold
pulled the trim
seat's washed out one side and the plug's cut on the edge
pv eighty eight
moving over to pv eighty nine
packing's leaking bad
gotta change it
l c v eighteen bravo
no leak at a hundred and twenty psi
cage is clean no wear no cracks
plug's worn about like last time put it back in
all the bonnet bolts are eat up with rust two of em are stripped
blowed a hole in the diaphragm
went ahead and changed it out
threw the old one out
didn't have a seat on the truck so i flipped this one
spring's rusty but it ain't broke going back in
tightened the packing
still seeping a bit
cleaned the strainer didn't get around to calibrating the positioner
seat test passed at eighty pounds packing test failed
six bubbles a minute out of the packing
seat's starting to pit but it's not cracked
reused it
tubing sprung a leak fixed it
signal port's plugged too
stem guide comm hole's plugged
stem needs a shot of grease and the regulator needs adjusted
bolts are seized and she's bled down but holding pressure
whole face of the plug's pitted and the seat's scored all the way around
five cc a minute through the seat at ninety psi
lower housing's full of mud cleaned it out
stem connector's misaligned adjusted it
somebody left the tailgate down and there went my lunch
gas is up over four dollars a gallon in town
dog chewed up the seat in my truck
sorry man couldn't hear you over the compressor next door
no wait let that water hauler get by first
boss said ten o'clock make that noon he's running late
be there in about twenty minutes
stopping for ice first
hundred and six in the shade today
and no wind
truck's leaking oil again couple quarts a week
my knee's froze up and my back's shot
scratch that let's eat at the other place
he got fired for sleeping in the truck
bring me a coffee two sugars
wife's car needs brakes gotta get to that this weekend
drove sixty miles on a washed out lease road to get here
ain't turkey season till the spring
i might take a week off
plug my phone in would you it's at ten percent
i mean it rained so hard you couldn't see your hood
cooler's leaking all over my floorboard
forty pounds of deer sausage in the freezer
correction about fifty
the seat ring shows light pitting all the way around and i have lapped it
no nicks in it
both backup rings had taken a compression set and have been renewed
the balance diaphragm has gone brittle and should be replaced at the next service
bonnet bolting was torqued to twenty six foot pounds in a star pattern
the diaphragm nut has been greased
seat leak test at fifty five psi seven bubbles per minute the plug will need lapping
no visible cracks in the yoke
there is however some rust on the outside of the upper housing
body bolts forty five ft lb
packing nut sixty in lb
actuator test twenty five psi okay
slt sixty five psi pass
stroke test twenty psi okay
neither the plug nor the cage is scored
the stem is not bent but it is scratched at the top
it has been reused
the bonnet gasket the seat gasket and the cage o ring were all replaced
the guide was not only worn but galled as well
the plug is chipped in the centre
the free length of the actuator spring is four and three quarter inches
it might be a little weak
this is lima charlie victor four one seven two inch air to open
i have taken the actuator apart
dismantled the valve
trim is washed out
the body is free of cracks
the threads are intact
the cage was cleaned inspected and put back in
the supply port is partially plugged
the packing nut was rounded off so a new one was fitted
two of the bonnet studs were stripped
seat leak test failed at forty psi so the seat needs lapping
stroked it at twenty psi full travel
it took six seconds to stroke
travel is twenty millimetres
actuator air test at thirty psi no leaks
shell test passed as well
the vent hole is not plugged
the seat has a nick on the inlet side
correction on the outlet side
the plug is badly eroded on one side
the upper housing is corroded on the inside
order two seat gaskets and a stem guide o ring
the float has been repaired
note that the customer wants the old trim returned
would you read it back please
there is still pressure on it
the plug and the seat are both worn
i have replaced them
the lock nut was loose so i tightened it and threadlocked it
the breather was plugged with mud
i blew it out and put it back in
the old packing was extruded so it was thrown away and new packing was fitted
the packing nut was tightened to seventy inch pounds
the indicator gasket has gone hard and must be replaced
the travel indicator is missing
signal pressure is six to thirty psi
i am not replacing the stem on this rebuild
it has a minor scratch at the bottom
the cage may be cracked so i replaced it
the disc is chipped on the edge
the disc is fine
stem diameter is four hundred ninety eight thousandths
the stem guide is worn
somebody left the packing slip for the new compressor on my stool
tag on the next one reads pv two thousand two hundred eight a
three inch fail closed sour service
bonnet gasket leaking needs replacing
order two bonnet gaskets
seat gskt flattened new one in
plug reused
stroke test pass
the linkage is bent and the handwheel is missing
i straightened the linkage
the body bolting was torqued to between fifty five and sixty foot pounds
replaced six body studs and torqued them to seventy newton metres
the positioner was recalibrated
it sits at fifty per cent open on a nine psi signal
the solenoid is burnt
the float is dented the pilot is fouled with paraffin and the strainer has scale on it
the outlet threads are cross threaded
the inlet threads are intact
the stem connector was misaligned and has been adjusted
the plug no the seat is pitted on the face
bonnet bolts torqued to twenty four ft lb
make that twenty six
the top diaphragm needs replacing
correction i have already replaced it
seat leak test at four bar twelve millilitres per minute
upstream pressure is ninety psi and downstream pressure is fifteen
the valve would not hold at seventy five psi
held eighty psi for ten minutes bubble tight
the oil is dirty and a bit low
i have drained it and filled it
the fitting was seeping so i have snugged it up
the signal tubing is kinked
the ports in the stem guide are plugged with scale
the nut is galled and a new nut was fitted
the comm hole in the diaphragm nut was plugged and i rodded it out
seat slight wear one side flipped
plug no pitting
cage okay
i looked over the regulator and the gauge and there is nothing wrong with either
the controller was calibrated but the regulator was not adjusted
the actuator has been vented
the adjusting screw will not budge
put an adjusting screw on the list
the seat is in good condition
stop i smell gas
do not touch the housing its spring is still loaded
i have pinched my finger in the yoke and it is bleeding
i have spilled oil all over the floor here
the seat area is washed out at the bottom
the stem has been greased
what is left to do
stop listening please
the plug is worn
the plug is galled
the upper o ring is pinched and the lower one is nicked
the actuator diaphragm has a pinhole at the edge
a new one has been installed
the diaphragm plate is not bent
the upper housing and the lower housing were both cleaned
the diaphragm plate was rusted i wire brushed it and reused it
the plug and the stem guide are both badly worn so both were replaced
my wife wants a new seat for her bicycle
she says the one it came with is worn on one side
the forklift has a flat tyre and its hydraulic oil is low again
the dentist tells me i have a cracked tooth and it needs replacing
the seat gasket was stuck in the groove
i took it out and fitted a new one
the seat is fine so it was put back in
the stem was straightened dressed and greased
i think the actuator spring is weak
the indicator spring is broken
the plug might need replacing but the cage is good to go back in
the cage is eroded at the inlet and pitted at the outlet
now lcv one hundred nineteen
body bolts torqued to ninety five nm bonnet bolts torqued to forty nm
supply twenty five psi
the packing nut was tightened to fifty five inch pounds
bonnet bolting torqued to at least twenty five foot pounds
supply pressure no more than fifty psi
travel is roughly nine sixteenths of an inch
the body temperature is about sixty degrees celsius
the oil temperature is a hundred and forty degrees
a seat leak test was carried out at sixty psi
stroke test opens and closes fine
stroke test failed only half travel
four drops per minute at the packing
the packing is leaking so i adjusted the packing nut
the actuator test failed
the upper diaphragm is torn at the edge
there is air leaking from the breather
new seat new plug new cage gasket
old plug discarded
i have put new seals in
installed a new rebuild kit
the post office has lost my parcel of o rings for the motorbike forks
pick up two indicator gaskets and one lock nut
for the record the spring had been painted blue by somebody
remark this one came in without a nameplate
the inlet and outlet threads are both corroded
i dressed the inlet threads
there is a hairline crack at the top of the housing
the diaphragm has blown through and needs a new one
there is no wear on the stem or the guide
the yoke is dented on the right side
the plug shows neither pitting nor galling but it is nicked on the edge
the signal port is blocked with ice
there is ice on the breather
the backup ring is extruded
l c v six oh two two inch
correction l c v six two oh
the tag is pcv four hundred ten
correction four hundred one
the flange is pitted on the face
no cracks in it
valve disassembled
bonnet gasket stuck to the body
no cracks pitting or corrosion on the bonnet
the bolting is corroded and loose
whoever borrowed my torque wrench left it set at forty foot pounds and never put it back
the kettle is fouled with scale and its lid is leaking
it was minus five degrees on the way in and my wipers were frozen
their keeper was worn out by half time
he should have been replaced at the break
valve on the bench is hotel victor seven zero five four inch air to close severe service
the bonnet was removed and the packing was removed
the packing is hard and both backup rings are swollen
seat leak test passed at one hundred psi
the cage is cracked scratch that the cage is worn
the backup ring was flattened and i replaced it
sorry i mean the cage o ring
the plug is scored
the stem is galled
strike that one as well
i cannot isolate it the block valve is passing
it has been bled down but it is still holding pressure
the seat needs lapping
the rag bin is on fire
the seat has been lapped
there was none of that cake left the night shift had cleaned it out
upper housing dented left side
lower housing okay
two bonnet studs are bent and one is missing
the stem guide o ring was cut so it was swapped out
the body was drained cleaned and inspected no pitting found
the seat is worn on both sides so a new one was installed
seat leak test at forty five psi no bubbles
close it out please
the spring is slightly rusted and it is going back in
trim is damaged leaving it for now
the packing needs adjusting and the stem needs greasing
seat leak test at seven bar bubble tight
stroke test at one point four bar passed
zero point four five in travel four s to stroke
body bolts torqued to forty pounds
signal pressure is nine inches of water
pv thirty one passed the seat leak test pv thirty two failed the seat leak test
seat leak test at fifty psi nine bubbles per minute
make that six bubbles per minute
the guide has light wear
correction heavy wear
order two cage gaskets
make that four
it is a one and a half inch valve pressure to close normal service
the plug is steam cut all the way around
the bonnet has been cleaned and put back on
the gauge needs calibrating
bonnet bolting torqued to thirty foot pounds sorry thirty two
the stem drags slightly
the plug was not replaced but the stem was greased
the bank wants me to come in and close out my old account
that lathe drinks oil
they have drained it and filled it twice this month
body is eroded below the seat
found two cracked bolts on the bonnet replaced all eight
plug tip is worn stem okay
stem has light galling near the top polished it
bonnet gasket was leaking replaced with new
cage gasket damaged during removal replaced
indicator spring weak indicator gasket cut replaced both
no corrosion no pitting no cracks on the yoke
diaphragm nut loose tightened to forty foot pounds
adjusting screw seized had to heat it still won't turn
pilot was dirty took it apart and cleaned it works fine now
backup rings extruded o ring swollen replaced the lot
supply tubing kinked at the fitting replaced the tubing
float punctured order a new float
controller oil is milky drained and refilled
positioner arm bent straightened
flange bolts rusty but usable reused them
seat ring threads galled seat won't come out
stem connector misaligned realigned
vent hole plugged with paint drilled it out
body drained and flushed
valve disassembled all parts cleaned and inspected
trim installed bonnet installed bolts torqued to eighty
seat is nicked slightly at the edge lapped it still nicked
guide bushing worn both sides
upper housing dented on the left side
leak at the body gasket
fail open three inch severe service
them bolts was so rusty i had to cut two of 'em off
ain't no way that plug's going back in
she was packed plumb full of paraffin steamed it all out
spring's fine diaphragm's fine plate's fine put her all back
i done replaced that packing twice this year
packing was just about gone so i put five new rings in
seat's a little rough hit it with some lapping compound
nut's rounded off so i had to cut it off and put a new one on
this regulator's froze up gonna thaw it out
gasket's still good left it
ports on the guide's plugged up solid rodded 'em out
whoever put this together left out the cage gasket
breather's full of dirt dauber knocked it out
tightened up the packing still weeping a little
both o rings was cut stem's scratched where they rode
the plug's okay i think but the seat's shot
got everything but the gasket bring me one next time
inlet threads are chewed up outlet's okay
upper diaphragm's hard
cage o ring's flat changed it
same for the stem guide o ring
supply port's clogged blew it out
ditto the signal port
seat test fifty pounds tight
seven bubbles a minute at forty five psi after lapping it
shell test failed leaking at the bonnet joint
packing test good at three hundred
actuator test twenty psi no leaks
it strokes but only three quarters of the way
eighteen psi signal to get full stroke
torqued the packing nuts to at least fifteen foot pounds
travel about five eighths
spring's four and five eighths long stem's three quarter inch
downstream's at eighty upstream's at four hundred
leaking more than ten drops a minute
thirty inches of water on the gauge
minus ten degrees celsius at the inlet
no wait that's the guide
sorry reused the seat
bolts at thirty no thirty five foot pounds
cage is worn and the plug's pitted
cage is worn
f v nine nine
no wait f v nine eight
one bubble a minute at a hundred
make that two bubbles
we got h two s at ten ppm
can't get the pressure off this thing
note bonnet was painted over
that'll do it close her out
it's spring break next week
he's wearing his seat belt wrong
man that burger was greasy
somebody stole the battery out of my truck
i need new tires and an alignment
we hit ninety percent humidity yesterday
the pump jack over yonder is squealing
right we're on p c v four one two two inch
cracked her open and the seat's cut up on one side
plug's grand
stem's got a bow in it
tried to straighten it but no dice gonna need a new one
bottom diaphragm has a pinhole near the edge
swapped that out for a new one
torqued the housing bolts to fifteen foot pounds
packing's dried out and weeping a little
no more weep
cage is sanded out at the bottom pretty bad
rest of it looks alright
strainer was packed solid with scale
rinsed it off and stuck it back in
bonnet bolts at twenty six no make that twenty eight foot pounds
body bolts at thirty
put eighty pounds on the inlet side and she held
stroked it four times opens and shuts fine
seat o ring i mean the cage o ring is nicked
skipped the packing this time
greased the stem though
somebody left gas in this line i can smell it
backing off till it clears
she's still got pressure behind the plug
block valve's letting by
top diaphragm's good bottom one's got a tear about an inch long
replaced the bottom one kept the top
guide's galled up and the stem won't slide in it
had to knock it out
honed the guide
put me down for two seat gaskets and a packing set
and one cage
positioner's reading off recalibrated it
feedback linkage was loose snugged it
leak test at fifty psi eleven bubbles a minute
retest at fifty two bubbles a minute
no way that seat is going back in
order me one
there's no way i'm putting that cage back in
it's wire drawn all the way around
gauge on the supply reads twenty two
signal at nine
yoke's cracked clean through on the left side
don't touch it shutting down
took the actuator apart spring's rusty but it ain't broke
got a hole in it
flange face has a gouge across it about ten thou deep
dressed it with a file
solenoid's not clicking might be burnt out
bring me one tomorrow
bleed hole in the nut had mud in it poked it out with a wire
air's hissing out the breather when i put twenty on it
upper diaphragm has to be busted
closed it up strokes smooth took six seconds full open
note customer wants it back on by noon
lunch truck's here
somebody move that hose before we trip on it
he said the compressor down the road blew a head gasket last week
the radio says ninety degrees and wind out of the south at thirty
my knee's shot too many years on ladders
you want the last sandwich or can i have it
nah go ahead
lock nut backed off put locker on it and snugged it to twelve foot pounds
ice all over the pilot signal line's blocked with it
thawed it out
strokes now
body's a touch pitted on the outlet side wall's still good
inlet threads look decent
gonna leave the cage it's only lightly scored
plug on the other hand is toast new one going in
seat's worn both sides nothing left to flip
had one on the truck so i changed it
tubing's kinked behind the controller
made up a new piece
fitting's dribbling cinched it down
indicator's bent over tweaked it straight
spring under it is gone
diaphragm plate's rusted bad wire wheeled it
needs paint but it'll go another round
dead tight at a hundred and twenty five
bonnet joint's dry packing's dry
nicked my hand on that cage bleeding pretty good
x v seven zero one bravo fail open clean service
stem's stuck hard
took penetrating oil and two hours but she moves now
on level valve l v six two three inch dirty service
seat's washed on one side so i rolled it over
stem's scratched up near the top polished it out
packing's got to go
order two sets
bonnet gasket's blown body face is clean though
vent hole in the lower housing's plugged with wasp nest cleared it out
seat not so good nicked on the edge
torqued the bonnet to thirty two foot pounds
actually make that thirty
took the top housing off
upper diaphragm's soft and oily
swapped it same with the lower
can't get this nut to budge
soaking it
seat leak at seventy five passed
bring me a breather and two lock nuts
gas detector's chirping moving upwind
o rings on the cage are both flat put new ones in
the seat looks alright but the gasket under it's shot
changed the gasket
inlet threads are beat up outlet ones are good
chased the inlet
threads on the packing nut are galled
replaced the nut
body's sound no washout no cracks
float arm's bent straightened it out
float's okay
regulator set at twenty
gauge on it's broke get me a new one
i put a new kit in it last fall
seat looks worn again on the bottom
plug has a bit of pitting nothing major
lapped it to the seat
housing bolts are all loose
ran them down to twenty foot pounds
note ladder needs a new rung
is there any more of that brisket
no he ate it all
my phone screen is cracked again
tell the gate guard we're leaving at four
six bubbles a minute at fifty pounds
cleaned the seat and retested
one bonnet stud stripped two more rusty
changed all three
seat's sand cut on the inlet side and the plug's tore up too
put in a new seat and plug
fixing to swap it
she's passing pretty bad at two hundred pounds
packing's weeping took up on the gland nut a flat and she quit
trash under the seat picked it out and she shut off tight at sixty
jam nut had backed off
ran it down and threadlocked it
breather's plugged plumb up with mud daubers rodded it out
body bolts is rusted bad changed out all eight thirty foot pound on em
don't need nothing on this one strokes good and holds at eighty
hold up i smell gas round the bonnet
tag pcv dash one one seven bravo three inch globe air to close
disassembled
seat ring face pitted
plug pitted light
lapped both in
packing removed and renewed
stem runout four thou within tolerance
spring free length six and a quarter inches
positioner relay fouled with oil cleaned it and recalibrated output tracks three to fifteen
hydro at four fifty for three minutes no external leaks
seat leak test air at fifty psi twelve bubbles a minute
bonnet gasket replaced bonnet studs lubed and torqued to one ten in three passes
actuator diaphragm cracked renewed
cage windows sand cut cage and cage gasket scrapped
order one cage two cage gaskets
handwheel stripped on its keyway not repaired
well now i've seen worse but that seat is about wore through on the one side and i flipped it over so she's got a fresh face up
back when i started we'd have run that gasket again but i went ahead and put a new one in there
my eyes ain't what they was but i don't see no cracks in that housing nowhere
tore the regulator down its strainer was stopped up blew it out
plug's a hair worn on the edge i'd leave it be
now the pilot was gummed up with paraffin so i washed it out in diesel
been doing this forty years and i never saw a stem bent that bad
straightened what i could needs a new one
the packing it is leaking little bit i make tight the nut
seat is have the scratches i changed it for new one
diaphragm of the actuator is broken hole in the center
valve no open complete only until the half
i did the test with sixty psi and no have leak
is missing one bolt in the bonnet i put new
spring is good no corrosion no crack
breather is blocked by paint i have cleaned it
gland's weeping a touch nipped her up a quarter turn
fitted a new one
all good on the test forty bar drop tight
bonnet studs are seized solid had to burn two off
spindle's bent needs a new one
supply's sitting at one point four bar
torqued the bonnet to forty newton metres
inspected trim okay packing nut loose tightened
order one stem two stem guide o rings
torque body twenty eight ft lb bonnet twenty six ft lb
seat one side worn flipped retest no leak eighty psi
supply gauge broken replaced regulator set thirty five psi
upper diaphragm looks good
lower too
no wait the lower's got a tear in it
replaced both cage gaskets
replaced one cage gasket reused the other
torqued the body bolts to twenty six
this is fcv three oh nine
polished it with emery
feels smooth now
took the actuator apart
spring's good diaphragm plate's corroded
is that threads galled yeah outlet threads are galled
took eleven seconds to close that's too slow
note operator wants it back on line by noon
still got pressure on the body after i bled it backing off
float's got a dent in it but no hole
travel's seven sixteenths
upstream one twenty downstream fifteen
you want the rest of this sandwich or not
his truck's leaking oil all over the pad again
that boy can't hold his liquor he was wrecked saturday
they had to replace my knee in april and it's still stiff
pressure's on for the home team this sunday
my wife replaced the kitchen faucet all by herself
seat belt light's been on in this truck for a month
she told him the spring dance was cancelled
bring me a cold drink when you come back
the plug on my phone charger's bent
doc says my packing days are over no more deer camp
the ice chest is cracked and all the ice melted
`;
