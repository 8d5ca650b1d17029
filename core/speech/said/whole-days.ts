/** Lines that people would say: whole jobs from opening to closing. Invented; a line a phrase, numbers and tags as spoken. */
export const WHOLE_DAYS = `
starting on l c v one one two
two inch dump valve pressure to open
bled it down and pulled the bonnet
seat washed out on one side
flipped it
plug has some wear but it's usable
stem's good
cage gasket flattened
put a new one in there
upper diaphragm's got a small tear by the bolt hole
replaced that too
lower one looks fine
bonnet bolts torqued to twenty eight foot pounds
strokes full on thirty psi
holding at one fifty no bubbles
that's it for this one
okay so this is f v three oh six the one by the heater
it's a one inch globe valve air to open
operator said it's been leaking by for a couple weeks
let's see what we got in here
yeah the seat is pretty bad
looks like sand got it all the way around
the plug is just as bad as the seat
i'm gonna put a whole new trim in it
cage is dirty but it cleaned right up
no cracks in the cage that i can see
guide feels a little sloppy on the stem
i'm going to leave the guide for now
new packing while i'm in here
packing nut snugged up
stroked it three times and it opens and closes fine
no leak through the seat at a hundred psi
alright we're all done here
papa victor two two one
isolated and locked out
no pressure on the gauge
removed the upper housing
the actuator spring is corroded
the spring length is four and a quarter inches
spring needs replacing
diaphragm plate is straight and clean
diaphragm nut is tight
top diaphragm is hard and has small cracks
replaced the top diaphragm
replaced the spring
upper housing bolts tightened to fifteen foot pounds
no air leak from the housing at thirty five psi
travel is three quarters of an inch
note that the tubing was replaced last month
close this one out
got l c v four oh nine here
it's a nasty one oil all over it
supply tubing's kinked
gonna need a new piece of quarter inch tubing
bottom diaphragm's got a hole in it
that's where all the oil's coming from
changed it out
breather was plugged with mud
cleaned the breather out and put it back
seat's chewed up
just flip that seat over
actually no it's already been flipped
so a new seat then
put the new seat in with a new o ring
plug's good to go back in
bolted it up to twenty five pounds
popped it with thirty and it went wide open
not leaking at one twenty five
done with that one
t v one fifteen alpha
three inch severe service fail closed
took the bonnet off
bonnet gasket was leaking on the right side
gasket stuck to the bonnet face
scraped the bonnet face clean
seat ring has a nick on the edge
lapped the seat and the plug
blued it up and it's good all around
stem has light scratches
polished the stem and reused it
new bonnet gasket
new studs and nuts on the bonnet
torqued to fifty five foot pounds
shell test good at three hundred psi no leaks
ten drops a minute through the seat at fifty psi
stroke took six seconds
job's finished
starting a new one l v five one four
it's froze up solid
there's ice all over the body
thawed it out with some hot water
moves now but it's sticking
took it apart
water was in the lower housing
drained the housing
spring is rusted pretty good
wire brushed it and put it back
stem guide is rusted up too
going to replace the stem guide
stem guide o ring is hard
new o ring on the guide
lower diaphragm is okay
greased the stem and slid it in
full travel now on twenty psi
i'd say we're done with five fourteen
this is charlie victor six zero two
in the shop on the bench
customer says it won't close
disassembled the valve
there's a rock under the plug
pulled the rock out
seat is dented where it was sitting
plug has a chip out of it
cage looks good
inlet threads intact
outlet threads are good as well
replaced the seat and plug
replaced all the o rings
body bolts to forty foot pounds
seat test at sixty psi three bubbles a minute
what did i miss
stroke test passed
ready to ship close it
l c v eight oh one at the separator
smell gas around this one
hold on i'm shutting the upstream block valve
block valve's not holding
had to go back to the next one upstream
okay it's isolated now
bled off to zero
packing was blown out
stem is scored where the packing rides
need a new stem
order me one stem and a packing set
put the old stem back with new packing for now
packing's not leaking at eighty psi
still need to come back for that stem
it opens fine and shuts fine
leaving it in service that's all
next up is p v seven oh three
been a long time since anybody's been in this one
bolts were rusted tight had to cut two of them off
replaced all eight bolts on the housing
well the diaphragm is original i reckon
it's plumb wore out
new diaphragm going in
spring's still got plenty in it
the plug's a little wire drawn
not bad enough to change though
i'm leaving that alone
seat looks better than i thought it would
cleaned up the seat with some emery
supply port was full of dirt dobber mud
blew it out with air
it holds a hundred pounds dead tight
wrap it up
valve tag h v one oh two
two inch globe valve pressure closes
handwheel is missing
order a handwheel
yoke is cracked at the bottom
can't fix that here
pulled the whole valve
installed the spare
flange bolts at eighty foot pounds
no leak at either flange
signal at nine psi and it's half open
closes all the way at fifteen
positioner needs calibrating
calibrated the positioner
read that back to me
take a picture of the yoke
good that's done
l c v nine twenty seven
dump valve one inch threaded
hadn't been dumping since yesterday
no signal at the valve
signal tubing was full of water
blew the tubing out
still won't open
pulled the top off
upper diaphragm is blown through
put a new diaphragm in
the plate's bent a little
straightened the plate
spring good nut good
dumped fine after that
leave the rest of it alone
finished here on to the next
unit is lima victor three three zero
doing the yearly on it
bled down tagged and locked
bonnet off
the seat looks good on both faces
plug is good with no marks on it
cage has paraffin in it
cleaned the paraffin out with hot diesel
nothing wrong with the guide
o rings changed as routine
both backup rings changed as well
lower diaphragm good no tears
upper diaphragm starting to get hard
replaced it anyway
bonnet bolting twenty eight foot pounds
seat tight at one hundred psi
stroke good breather clear
three thirty is complete
alright this is l c v two eighteen
my first time on one of these so i'm going slow
the indicator is pegged all the way down
indicator spring is broke
order an indicator spring and an indicator gasket
checked the breather and it's open
loosened the bonnet bolts a little at a time
it's still got pressure on it hang on
opened the bleeder and let it go down
okay now it's at zero
seat has a scratch across the face
i think it'll lap out
lapped it for ten minutes
scratch is gone
put everything back the way it came out
tightened the bolts in a star pattern to twenty eight
no bubbles at all at sixty pounds
can you read back what i've got
looks right close it out
f v four ten bravo on the fuel gas skid
one and a half inch body pressure opens
hunting bad according to the operator
packing nut's way too tight
backed off the packing nut a quarter turn
stem moves free now
stem's got a slight bend to it though
wanna replace that stem next time out
positioner linkage is loose
tightened up the linkage
supply pressure twenty psi
signal three to fifteen
fifty percent open at nine pounds
took four seconds to go full open
not hunting anymore
we're good on four ten
p c v twelve
regulator's creeping up on us
pulled the bottom cap off of it
seat disc is cut
got a little trash in the strainer
rinsed the strainer out
swapped the disc
the spring was okay
adjusting screw's stripped
need an adjusting screw for this one
cleaned up the threads best i could
set it at thirty five psi
holding steady at thirty five
gauge is reading five low
bring a new gauge next trip
that'll do for now
l v six oh six charlie
inspected the valve before work
corrosion on the outside of the body light
body bolting is intact
no evidence of external leakage
removed the bonnet and the trim
seat is eroded severe
plug is eroded on one side
cage has pitting on the inside
replaced the seat plug and cage
replaced the seat gasket and the cage gasket
stem is within tolerance
reinstalled the bonnet with a new gasket
bonnet bolting torqued to thirty two foot pounds
seat leak test at fifty psi passed
stroke test full travel
shell test passed at one seventy five
work on six oh six charlie is complete
hey so we're on delta victor one oh nine
sandy well so i bet the trim's gone
yep trim's gone
seat's sand cut clean through
the plug don't look like a plug anymore
there's a hole in the cage too
get me a trim kit for a two inch
found one on the truck
full trim kit installed
pitched the old stuff
body's washed a little below the seat
it'll run a while longer
bottom diaphragm was alright
tested it with seventy five pounds and it's bubble tight
opens right up on the switch
one oh nine done
got a valve here with no tag
looks like an inch and a half high pressure
somebody painted over the vent hole
scraped the paint out of it
the lock nut's loose on the stem
put some thread locker on it and tightened it down
stem threads are good
plug is galled up on the guide
pulled the guide out with it
new guide and a new plug
seat's fine
packing's alright
no air coming out the breather
it strokes good but it's slow
eight seconds to open
note tag is missing on this valve
close that job
starting l c v three four five
reported issue is leaking from the breather
air from the breather at twenty psi signal
upper housing removed
upper diaphragm torn at the center
diaphragm nut was loose
that's likely what tore it
put the new diaphragm in and lined up the holes
nut tightened to thirty foot pounds
spring has normal wear
housing face cleaned
housing bolts replaced two were rounded off
housing test no leak at thirty
no signal loss after five minutes
cycle tested ten times no problems
three four five is finished
well now this here is t c v eighty eight
she's leaking around the packing
tried to tighten it but there's no thread left
so she's gettin' new packing
pulled the old stuff out it was hard as a rock
stem's pitted up some where the packing was
might hold might not
put five new rings in
ran the nut down finger tight and a half turn
put a hundred and fifty on it
she's holding
no drips at the packing
controller was set too high
turned it down some
we'll call that one done
p v one oh one
before i start the lock is missing from the block valve
going to get a lock
lock is on now
downstream is zero upstream is zero
removed the actuator
actuator spring still loaded careful
backed the adjusting screw all the way out
spring is free
coil is broken at the bottom
got a new spring in there now
yoke okay stem connector okay
reset the bench set at three psi
full open at fourteen and a half
seat leak four bubbles a minute at fifty
packing tight
what's left on this one
nothing else finish it
l c v seventy four dump off the treater
dumps slow
signal's only getting eighteen pounds
should be thirty
regulator's plugged up
cleaned the regulator filter
now it's thirty one
pulled it apart and there's scale on the stem
scraped it off
guide's full of scale too
soaked it and blew it out
cage was plugged about halfway
rodded out the holes
seat and plug are both okay surprisingly
dumps quick now
done moving on
valve f c v eleven twenty
shop rebuild
inlet threads cross threaded
outlet threads good
ran a die over the inlet threads
body is pitted inside light
seat area has no washing
new seat
new plug and stem
new cage o ring and gasket
replaced both diaphragms
spring's going back in
bonnet to thirty foot pounds
seat test one hundred psi zero leak
stroke test zero to twenty psi full
shell test two fifty pass
tag it and done
l c v nineteen at the number two well
it's a hundred and two degrees out here today
alright let me get my gloves on
tank's overflowing a little 'cause this thing's stuck open
shut it in and bled it
got about a cup of oil on the ground
put a pad down for the spill
plug's stuck in the guide
had to tap it out with a hammer
it's galled real bad
stem's the same way
new stem plug and guide on the list
only got the plug and guide with me
dressed the stem with a file
it goes up and down okay now
closes off and holds fifty pounds
come back later for the stem
okay finish this one
working on golf victor two zero seven
four inch globe valve for the glycol
bonnet studs look corroded but they came off
six of them need to be replaced
gasket was in two pieces
seat gasket is extruded on the outlet side
new seat gasket and bonnet gasket
no damage on the seat
the plug isn't damaged either
stem guide worn a bit
we'll watch that next time
glycol was leaking from the packing
so i repacked the stem
torqued the studs to ninety in three passes
no leak at the bonnet at two hundred psi
opened and closed it from the control room
two oh seven back in service close
l v thirteen
not dumping
float's stuck
freed up the float
linkage pin's missing
made a new pin
level controller's working
pilot's leaking
changed the pilot seat
still leaks a bit
order a pilot kit
valve itself's okay
checked the stroke it's full
no leak by the seat
controller gain set at thirty percent
no more problems for today
end of this job
this'll be p c v five fifty
backpressure valve on the separator two inch
won't hold pressure
set point's seventy five and it only makes forty
pilot diaphragm's got a pinhole
put a kit in the pilot
cleaned the pilot filter while i was there
main diaphragm's been leaking too
see the wet spot on the side there
yep it's split along the edge
put a new main diaphragm on it
seat's got a groove in it
flipped the seat over to the good side
holding seventy five now
went up to eighty and back down smooth
five fifty's good to go
charlie victor one one eight
scheduled inspection
upstream pressure zero
no pressure downstream
signal disconnected
bonnet removed without difficulty
cage in good condition
minor fouling on the plug
plug cleaned and reused
seat face shows light pitting
lapped the seat and wiped it clean
stem was checked and is straight
new set of packing installed
packing nut tightened to ten foot pounds
bonnet gasket replaced
stroke time five seconds open five seconds closed
seat leakage two milliliters a minute at fifty psi
inspection complete
man this l c v sixty one again
third time this year
same old thing it's leaking by
water's just eating these seats up
this seat is toast
and so is the plug
i'm putting the hard trim in this time
new gaskets all the way through
the cage is still good believe it or not
top works are fine didn't touch them
twenty eight on the bolts
pressured it up to a hundred and no bubbles
for the record this needs a sand screen upstream
opens closes no sticking
see ya next time
close out sixty one
f v nine oh nine
air leak at the fitting
tightened the fitting
still leaks
fitting's cracked
replaced the fitting and the ferrule
tubing's pinched right behind it
cut it back and reflared it
no leak at thirty five psi
checked the other side it's okay
solenoid clicks but no air comes through
solenoid's junk
bring a twenty four volt solenoid
bypassed it for now
valve strokes by hand
f v nine oh nine not complete
leave it open i'll be back
starting on echo victor four four one
upper housing has a dent in it
took out the spring and plate
scratch on the plate
scratch that it's just a mark
the plate's okay then
spring free length is five and an eighth
should be five and a half so it's weak
needs a new spring
i've got one right here
spring's in
top diaphragm reused
gasket under the indicator is torn
changed that indicator gasket
no air leak on the top at thirty psi
full stroke three quarters of an inch
that's the end of four forty one
l c v two two nine
fail open two inch normal service
washed it down before i opened it
bolts came out easy
the o ring on the cage is nicked
put in a new cage o ring
seat's got wear on both sides
can't flip it then
new one installed
plug edge is worn some
went ahead and changed the plug too
lower diaphragm's swollen up
put the new diaphragm on with the fabric side down
diaphragm nut twenty foot pounds
body bolts forty
i mean thirty five
seat's tight at one ten
all finished with two two nine
next valve p v eighteen alpha
somebody's been in here with a pipe wrench
packing nut is rounded off
stem's got teeth marks all over it
stem has to be replaced
i've got the same stem for it in the truck
replaced stem packing and packing nut
seat and plug look brand new
didn't touch those
cage's good guide's good
checked the bonnet gasket and it was crushed flat
new gasket on
bolts tight at twenty six foot pounds
held one hundred for five minutes
moves smooth all the way up and down
take a photo of that old stem
then finish it up
l c v five oh three on the knockout drum
liquid level's way up
h two s monitor going off
backing out of here
okay it's clear i've got a mask on
bled it to the flare
sour service on this one
stem broke right at the plug
plug's laying in the body
fished the plug out
seat's dinged up from it
new stem and plug and seat
used the sour service parts
all the bolts look alright
bonnet torqued to thirty
no gas at the bonnet or the packing
dumping like it should
job closed on five oh three
valve is juliet victor seven seven
three quarter inch control valve
leaking past the seat at twelve bubbles a minute at fifty psi
took the cover off to look
there is tape on the seat
thread tape got in from the piping
picked all the tape out
the seat has a small mark on the edge
lapped it in
cleaned out the body
closed it back up
now it's one bubble a minute
that passes
stem packing dry and tight
strokes zero to a hundred percent
job complete thank you
okay we got l v one forty two
well site dump valve on the heater treater
cold one this morning it's about twenty out here
the signal line's froze
got the heat gun on it
there it goes
drained about a half cup of water out of the drip pot
valve's moving but slow
i'm gonna open it up since i'm here
grease on the stem is like glue
wiped it off and put on fresh grease
stem o ring's hard and flat
replaced both the stem o rings
backup rings weren't in there at all
added two backup rings
goes full stroke in about two seconds now
that's all for one forty two
tag number t v thirty three
steam service globe valve one inch
seat is steam cut
plug is steam cut in one place
tried lapping it but it's too deep
need seat and plug
parts are in the shop
picked them up and installed them
changed the bonnet gasket out
the packing is shot
six rings of packing put in
gland nuts tightened even
no steam at the packing now
shut off tight no steam downstream
stroke test okay at three to fifteen
finish t v thirty three
l c v eighty
pulled it off the line
brought it to the shop
body full of sand
washed the body out
seat's completely gone
cage gone on one side
plug gone as well
stem is okay to reuse
guide bushing loose
all new trim
both diaphragms checked good
got it all back together
bolts at twenty eight
tested sixty psi good
eighty's done
all right this one is kilo victor nine zero five
i'm here with the new guy so i'm gonna talk him through it
first thing is make sure it's bled down
see that gauge it's still showing twenty
so we've still got pressure trapped in there
cracked the plug and it bled on off
now the bonnet comes off
look at that seat it's worn on one side only
so we flip that one
the plug is scuffed but no cuts in it
clean it and run it again
that diaphragm's still soft so it stays
but the gaskets always get replaced
bolts go to twenty eight in a cross pattern
hook the air up and watch it stroke
now we put sixty on it and look for bubbles
none so it's good
done with nine oh five
p v two fourteen
controller output reads twelve but the valve's shut
disconnected the stem connector
stem turns free so it's off the plug
plug unscrewed itself
no lock pin in it
screwed it back and pinned it
seat marked up a little
seat still seals though
reconnected and set the travel
travel's half an inch
valve follows the signal now
six pounds quarter open
packing's weeping a little
gave it half a turn
that stopped the weep
closing two fourteen
l c v one oh seven delta
removed from service at nine this morning
trim pulled for inspection
plug shows heavy erosion at the tip
seat shows moderate wear
cage o ring has been cut on assembly
guide has some play
i recommend replacing the trim
approved so i replaced the trim
cage o ring replaced with a new one
upper diaphragm checked no holes
lower diaphragm has oil behind it
so the lower diaphragm got replaced as well
bolting lubed and torqued to twenty eight
seat test eighty psi no leak seen
stroke passed on first try
paperwork's done close it
f v twenty one
it's just the yearly grease and go
breather's clear
stem is nice and clean
dry at the packing
no leaks anywhere
greased the stem
stroked it a couple of times
goes all the way both ways
supply's at twenty
air filter's dirty
put a new filter element in
drained the drip leg
tightened one loose bolt on the yoke
nothing else to do here
mark it complete
l c v six six four
can't get the bonnet off
bolts are seized
soaked them for an hour
got three out and the last one snapped
drilled it out and chased the threads
threads cleaned up okay
need four new cap screws
got them on now
inside wasn't bad at all
seat's good on both sides
same with the plug
little bit of rust on the stem
emery clothed that off
all new gaskets in it
tight at twenty eight foot pounds with anti seize
passed at sixty
good enough call it finished
november victor zero five five
pressure to close one inch body
won't close all the way
there's about an eighth inch gap
stem's not adjusted right
loosened the jam nut
ran the stem in two turns
tightened the jam nut back down
closes now
it's still leaking a little on the seat
eight bubbles a minute at sixty
took it apart to look
seat has a little dirt on the face
wiped it down and looked it over no scratches
put it all back together again
no bubbles this time
that's a good one close it
hey start on l c v ten
let me find the tag here yeah it's ten
it's leaking out the weep hole
that'd be the lower stem o ring
yep it's cut
i've got a seal kit
installed the seal kit
stem had a burr on it that cut the ring
filed off the burr and polished it
greased all of it up good
put the bonnet back on
snug on all four then twenty five foot pounds
nothing out the weep hole now
thirty psi opens it wide
seat's dead tight at ninety
bag the old o rings for the engineer
done with number ten
going to t v two oh eight
before and after readings on this one
before it was leaking twenty drops a minute
upstream pressure one hundred
closed the valve in and drained it
bonnet's off and the gasket is fair
gasket replaced regardless
seat's wire drawn on the inlet side
plug has the same mark
lapped the two of them together
took about half an hour
stem runs true
packing stays it's not leaking
after it's one drop a minute
upstream's still one hundred
close two oh eight
l c v seven seventeen
on the compressor scrubber
diaphragm housing's leaking around the edge
bolts were loose all the way around
snugged them up
still hissing on the left side
took the housing apart
diaphragm's wrinkled and pulled out of the bolt circle
can't be repaired
new diaphragm on there
cleaned the lip on the housing
put sealant on no wait don't need sealant
went back with all the bolts at twelve foot pounds
put soap on it to check
no bubbles on the housing at all
it's dumping good again
scrubber's back down to level
job done on seven seventeen
p v six eleven in the shop
sent in for a new trim and a check over
stripped it down
found a crack in the bottom of the cage
seat ring's loose in the body
body threads are galled where the seat goes
body's no good
discard the body
customer wants a new body
built it up with a new cage seat and plug
stem and bonnet reused
bonnet bolts to forty five
seat test no leak at two hundred
shell test okay at four fifty
stroke looks good fifteen psi full open
painted and tagged it's done
yeah this is l c v thirty nine
getting late so let's make it quick
dump's leaking by
pulled the bonnet and there's a chunk of plastic in the seat
got the plastic out
the seat's got a ding from it
flipped it to the other side
reused the gasket it looked okay
no wait it's got a split in it
so a new gasket it is
torqued to twenty seven
holding sixty no problem
popped it a couple times
last one of the day close it out
lima charlie victor one two six
the actuator does not move with thirty psi on it
signal pressure is good at the port
stem is seized in the bonnet
removed the bonnet with the stem still in it
pressed the stem out
bonnet bore is scored
stem bent and scored
both o rings torn up
replaced bonnet with one off the shelf
replaced the stem with seals
the diaphragm was not damaged
spring not damaged
travel indicator is stuck
cleaned the indicator and it moves
valve opens at eight psi
fully open at twenty two
one twenty six is closed out
f v eight thirty three
pipe's vibrating real bad here
yoke bolts came loose
lock nut backed off too
stem connector's about to fall off
put it all back and thread locked it
plug's beat up from rattling
plug needs a new one
none with me put it on the list
seat's beat up some too
add a seat to that list
cage has a worn spot on the inside
maybe change the cage too not sure
gave the packing a little snug
it's controlling alright for now
note pipe support needed on the outlet side
stop here for today
got one on the bench p c v three oh two
relief on it was popping
gauge on the outlet says sixty should be fifty
seat's leaking is what it is
cut mark on the soft seat
changed out the soft seat
the orifice has a nick in it
dressed it with a stone
diaphragm has a crease but no hole
diaphragm can be used again
spring's the right one
adjusting screw greased
set at fifty
locks up at fifty three
no creep after ten minutes
soap on the bonnet no bubbles
she's ready finish her up
l c v fifteen bravo
nobody's touched this one in six years
breather's gone and there's a wasp nest in it
dug out the nest
order a breather for it
upper housing's rusty inside
spring has rust but no broken coils
diaphragm cracked where it rolls
plate's corroded around the hole
new plate new diaphragm and a new spring
trim's in good shape
seat good on one side worn on the other
oil's been getting past the lower diaphragm
that one's replaced now too
housing bolts all new stainless
thirty psi and no hiss
sixty pounds on the seat and it's tight
that was a big one done
sierra victor four one zero
severe service one inch angle body
plug tip is broken off
tip is not in the body
it probably went downstream
checked the downstream strainer and there it is
emptied the strainer and put it back in
seat cracked on one side
cage has washed out holes
all trim replaced
bonnet gasket replaced with spiral wound
torqued to sixty five in three steps
no leaks externally at seven hundred psi
seat leakage none at five hundred
strokes in three seconds
four ten complete
starting the l v at the east tank
tag says l v two
the valve's upside down somebody mounted it wrong
pulled it and turned it around
thread sealant all dried up on the threads
wire brushed the threads good
nothing wrong with the inlet threads
outlet threads got one flat spot
doped and tightened
while it's out i checked the seat
seat's okay plug's okay
flushed the inside out with water
hooked the tubing back up
tubing nut was stripped
put on a new tubing nut
no leaks on the threads at forty psi
works right this way close it
t c v four nineteen
travel's only half
signal's full at fifteen
supply's a little low at eighteen
turned the supply up to twenty two
still only half travel
packing's too tight or stem's bent
loosened the packing no change
stem's bent then
pulled it and yep it's bent at the threads
put a new stem in it
guide's got a bright spot on the left from the rub
guide okay otherwise
full travel at fourteen
leak test sixty nothing coming by
good deal close four nineteen
alright l c v seventy seven charlie
smells like condensate over here
it's dripping off the bottom of the valve
four drops a minute
it's coming from the body gasket
isolated it and drained it into a bucket
bucket got kicked over so there's a spill
cleaned that up with pads
body bolts were only hand tight
gasket's pushed out on one side
replaced the body gasket
bolts to thirty foot pounds this time
checked the trim since it was apart
the plug o ring was swollen
new plug o ring
seat had no marks on it
fifteen minutes at one hundred psi no drips
all good done with that
f c v five zero six
positioner feedback arm's broke
indicator says closed but it's open
stroked it manually and it moves
order one feedback arm
trim wasn't opened
air supply tubing leaks at the positioner
made up a new fitting there
leak stopped
relay in the positioner's dirty
cleaned the relay
gauge on the positioner's busted
need two gauges zero to thirty
ran it on the bypass
left it with operations
five oh six is waiting on parts
pause it there
whiskey victor one thirty one
water dump on the free water knockout
cage completely scaled over
knocked the scale off with a hammer and chisel
soaked it in acid
cage is pitted underneath
cage will do one more run
seat's scaled but not cut
cleaned the seat with a wire wheel
plug's stuck to the stem can't get it apart
diaphragm area's clean
bottom diaphragm's been changed recently
no need to change it
twenty eight on the bonnet bolts again
a little leak at sixty maybe two bubbles
note descale again in six months
done one thirty one
`;
