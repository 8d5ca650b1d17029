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
body ok bonnet ok stem light scoring packing worn
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
seat worn one side plug scored stem ok flip the seat
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
lower diaphragm ok upper diaphragm torn at the center
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
`;
