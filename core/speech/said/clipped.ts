/** Lines that people would say: short, in slang, at a well site. Invented; a line a phrase, numbers and tags as spoken. */
export const CLIPPED = `
alright starting on fv one oh one
this here's the dump valve on separator three
l v two twelve next
okay lima victor two zero four is on the tailgate
we're tearing down l c v three oh seven bravo
two inch dump off the heater treater tag l v eighteen
next valve is p c v four forty one
moving over to the water dump level valve twenty two
got the oil dump apart tag reads l c v one sixteen
tag's near rubbed off but i make it f c v five oh nine
back pressure valve on the gas line p v one ninety
she's a one inch high pressure dump pressure to open
three inch globe air to close sandy service
this one fails closed two inch body
it's a fail open valve off the suction scrubber
sour service dump one inch pressure closes it
new job tango victor six oh two alpha
old lv thirty three again
let's do the other separator's dump l v two fourteen
four inch control valve on the compressor bypass f v eight eleven
put me down on echo victor seventy
seat's wore out on the one side
plug's got a groove wire drawn clean across it
found the seat ring washed out on the bottom
stem's scored about halfway up
got some light pitting on the plug face
cage is packed with sand
guide looks fine no wear to speak of
upper diaphragm's torn at the bolt holes
bottom diaphragm has a pinhole in it
spring's broke in two places
seat gasket flattened plumb out
the cage gasket's gone it just ain't there
that cage o ring came out swole up like a doughnut
backup rings are both cut
packing's hard as a rock
stem guide is galled up pretty bad
stem guide o ring nicked on the edge
lock nut's froze up solid
jam nut was loose when i got here
diaphragm plate bent a little on the outside
diaphragm nut is rounded off
actuator spring has lost its tension it's weak
upper housing cracked right at the vent
rust all inside the lower housing
bonnet gasket is weeping a touch
couple of bonnet bolts stripped
body studs are rusted real bad
inlet threads are good and clean
outlet threads got cross threaded by somebody
seat area down in the body's eroded kinda bad
indicator's bent over like somebody stepped on it
travel indicator gasket is brittle
indicator spring's missing
dirt dobbers plugged up the breather
supply port has a bunch of scale in it
signal port's wide open no trouble there
vent hole's mudded shut
packing nut's backed off loose
stem connector is cracked down the middle
positioner's bleeding air out the bottom
controller is stuck wide open
the regulator won't hold it's leaking
gauge is busted
strainer's full of paraffin
solenoid's burnt up
trim is sand cut all to pieces
yoke's fine
flange face has a gouge on it
handwheel is froze won't turn for nothing
adjusting screw's rusted up
float has a hole in it
linkage is bent and dragging some
pilot's fouled with iron sulfide
flipped her over
had to put a new one in
gonna lap that seat and run it again
reused the cage
wire brushed the threads and doped em
tossed the old packing
went ahead and swapped the upper diaphragm
put in a whole new kit
blew out the vent hole with air
that plug'll go back in
leaving the stem alone for now
didn't bother changing the guide
greased up the o rings good
snugged the packing nut a quarter turn
rodded out the signal port
scraped the old gasket off the bonnet
pulled the bonnet no trouble
spring needs changing
better replace it
gotta get a new seat in this thing
lapped the plug to the seat took about ten minutes
dressed the nicks off the flange with a file
straightened the linkage best i could
drained the oil out of the bottom housing
topped the oil back up
thread locked the lock nut
vented the actuator before i broke it loose
set the positioner and calibrated it
disassembled down to the body
bonnet's back on
bonnet bolts torqued to twenty eight foot pounds
pulled the body studs down to one forty foot pounds
lock nut at eighteen foot pounds
thirty five on the diaphragm nut torque that is
torque on the housing bolts sixty inch pounds
took the seat to two hundred ten foot pounds
packing nut forty inch pounds
forty newton meters on the bonnet studs
tightened the cap screws to twenty two pounds
torqued her to a hundred and five
spring length four and a half inches
free length of the spring is five and three eighths
travel's three quarters of an inch
stroke measured point four five
seat bore's point oh one five over
stem is worn down about eight thousandths
got twelve thou clearance in that guide
supply's at thirty five pounds
one fifty psi on the inlet
downstream is reading sixty psi
signal starts moving her at six psi
full open by thirty pounds signal
upstream four hundred and eighty
bench set three to fifteen pounds
bench set checks out six to thirty psi
it cracks open at nine pounds signal
bled the supply down to twenty psi
twelve degrees off the trim it's froze up
gas temp's one hundred and ten degrees
line's running about ninety five fahrenheit
no leak at sixty psi
seat's holding one hundred pounds bubble tight
leaking by at fifty psi
three bubbles a minute at fifty pounds
ten c c a minute at a hundred psi upstream
strokes full
won't open past half
took eight seconds to stroke
packing dripping two drops a minute
soaped the bonnet joint no bubbles
shell test held at fifteen hundred pounds
blowing air out the housing bolts diaphragm's leaking
dead tight at one twenty
she's passing you can hear it
opens and closes fine on thirty pounds
only getting half travel
hold up i smell gas
monitor's going off h two s
still got pressure trapped under that bonnet
bled it down but it built right back up
block valve's passing i can't get it isolated
ain't no lock on this thing
spring's still loaded don't touch it
the spring let go on me
mashed my thumb
spilled oil on the location
scratch that
no make that thirty two
correction it's the lower diaphragm
i mean the stem not the seat
no wait forty not fourteen
strike that last one
never mind that
sorry that's the outlet side
same on the other one
that one too
ditto for the backup ring
same deal on the bottom diaphragm
other gasket's the same way
worse than last time
that's the same seat we flipped back in march
last time this plug was just starting to wear
about the same as it was last fall
what am i missing
close it out
take a picture of that
read that back to me
what have you got so far
done with this one
quit listening for a bit
go ahead and listen
note that the tag is wired to the wrong valve
for the record this valve was never isolated by operations
no cracks no pitting
no damage on the cage
nothing wrong with the yoke
not leaking at the packing
didn't see any scoring on the stem
order two seat gaskets
bring me a kit for a two inch
put an actuator spring on the list
need to pick up a three eighths fitting
starting in on the dump at the free water knockout l v three fifty two
opening up papa victor one oh four bravo
this'n is f v two two seven it's a two inch globe
pressure to close valve one inch tag l v nine
heading to the next one hotel victor thirty one
alright what we have here is t c v six fifteen severe service
tag l c v two one three off the test separator
dump valve number four we'll call it l v four oh four
level valve fifty five air to open
let me get started on the scrubber dump s d v twelve
bypass valve on unit two tag f v one three oh charlie
got p c v oh seven broke down on the bench
on to delta valve twenty one no make that d v twenty two
three inch dirty service fail closed
bonnet off and there's scale baked on the cage all the way around
plug came out looking like somebody took a chisel to it
seat's good on this side and washed out on that one
a little bit of wire drawing on the seat ring
ball's pitted up some
chunk missing out of the plug it's chipped on the edge
stem's a hair bent
stem has rust on it up top
there ain't a scratch on that stem
stem threads are galled to the connector
cage ports got sand cut pretty good
hairline crack in the cage from the second hole down
guide bushing's egged out wore bad
comm hole in the guide's plugged with paraffin
diaphragm's shot
top diaphragm got pinched when they put it together
power diaphragm is stiff it's gone hard
balance diaphragm's still soft and looks good
diaphragm is blown through dead center
spring has rust pits on three coils
inner spring cocked sideways it's misaligned
gasket's extruded out one side
o ring had a flat spot wore on it
old o ring squeezed out of the groove extruded i reckon
backup ring's chewed up on the inside
rings in the packing are cold flowed and leaking
seals look okay
all the seals are shot might as well kit it
bonnet has a dent in the top
there's a crack running through the bonnet
body's ate up inside with corrosion
washed a hole clean through the body
body is sound no washout
housing's dinged up but it ain't cracked
bolting is all there and tight
two studs snapped off flush
nuts are rounded over on the outlet side
threads buggered up beyond saving
some fool cross threaded the supply fitting
tubing's kinked right behind the actuator
supply tubing is crimped flat
fitting's weeping oil
valve's froze plumb shut
actuator's seized up
oil in the bottom is black as tar
oil's low about half
oil's clean and full
ice all over the outside of the body
ice in the signal line blocking it
old seat gasket was stuck down in the body
seat gasket got a cut in it
bits of cage gasket still stuck in the groove
cage gasket's flat but it ain't tore
cage o ring rolled and cut going in
stem guide wore on one side
stem guide's dry and dragging the stem
stem guide o ring is hard and cracked all over
can't budge that lock nut
lock nut's corners are gone
upper diaphragm's coming apart at the center hole
lower diaphragm maybe starting to crack i'm not sure
diaphragm plate has corrosion underneath
plate's okay ain't bent
diaphragm nut wasn't even tight
actuator spring's rusted but she's still got plenty of push
actuator spring collapsed a coil
upper housing's got a bad dent over by the air port
lower housing's full of water and mud
bonnet gasket blown out on the inlet side
bonnet gasket's intact still got the shape to it
bonnet bolting is rusty but the threads are good
one bonnet stud stretched and necked down
body bolts were finger loose
inlet threads washed out two or three turns
outlet threads eaten up
inlet threads intact
wear in the seat area i can hang a fingernail in
seat area's smooth as glass
travel indicator's broke off
indicator's stuck down
gasket under the indicator is leaking air
indicator spring's weak don't hardly push back
breather's missing bugs got in there
air coming out of the breather
breather looks good
supply port threads are stripped
rust flakes in the signal port
paint over the vent hole plugged it
packing nut's froze to the bonnet
packing nut cross threaded going on maybe
stem connector slipped it's loose on the stem
connector's out of line with the stem
positioner arm's bent and the cam's worn
controller's dirty inside full of condensate
pilot on the controller is leaking gas out the vent
regulator's drifting i think the seat in it's bad
regulator diaphragm's hard
gauge glass is broken and the needle's stuck
gauge reads ten pounds with nothing on it
strainer screen has a hole tore in it
solenoid coil's burnt
solenoid's sticking takes two tries
trim's in good shape for five years old
trim parts galled together
yoke is cracked at the boss
yoke nut's loose
outlet flange is pitted around the raised face
flange bolt holes don't line up
handwheel's bent
handwheel spoke's broke off
adjusting screw stripped out
adjusting screw's got a bend in it looks like
float's full of fluid and won't rise
float arm is corroded some
linkage pin's about wore in half
pin's gone out of the linkage
pilot's stuck open
pilot screen plugged solid
no scoring no galling stem's slick
ain't nothing wrong with this seat
not a crack anywhere in that cage
guide's not worn at all
no rust in the housing which is a first
diaphragm ain't torn
threads aren't pulled
no sand in it this time
didn't find any holes in the float
no corrosion on the bonnet bolts
turned the seat over good side up
seat's been flipped already so put a new one in
flip the seat it's only bad on top
knocked the rust off the spring and put it back
cleaned up the plug with some emery cloth
cage cleaned up real nice going back in
washed it out with diesel
threw the diaphragm in the trash
changed both diaphragms while i was in there
new gaskets top and bottom
put two new backup rings on the stem guide
seat replaced
ran the old plug again
not replacing the cage it'll make another year
i'll have to come back and change that spring
that stem's gonna need replacing next go round
maybe swap the guide i ain't decided
left the old packing in
repacked the stem with all new rings
packing swapped for new
repaired the linkage with a new pin
welded up the yoke
tightened down on the fittings
pulled the indicator off and stuck a new gasket under it
installed new breather
fresh oil in the bottom filled to the plug
adjusted the spring up two turns
backed off the adjusting screw a turn and a half
looked over the body didn't see nothing
checked all the studs
chased the inlet threads with a tap
threads got dressed up and they'll go
removed the positioner set it off to the side
stripped the actuator down to bare parts
put new studs in all eight
replaced four bolts
a couple of cap screws got replaced
changed out a few nuts
still need to grease the stem
lube that o ring before it goes in
put some thread locker on the jam nut
clean the strainer
seat wants lapping
that flange needs dressing
get rid of that regulator
spring went back in
putting the wrench on it fifty five foot pounds bonnet
body bolting pulled up in a star to ninety foot pounds
seat ring's torqued one seventy five
stem nut went to thirty three foot pounds
hundred twenty inch pounds on the little housing screws
diaphragm nut i gave her fifteen
gland nuts are at eight foot pounds each
broke loose at three hundred foot pounds that lock nut did
housing bolts twenty newton meters all around
ran the body bolts up to sixty five pounds then to eighty
second pass at one ten foot pounds
torqued it to somewhere around forty
no less than seventy on those studs
torque on the stem connector twelve and a half foot pounds
cage retainer made up to two fifty foot pounds
flange bolts are at one sixty
i set the wrench on twenty six
packing snugged to about ten foot pounds no more
upstream's sitting at eleven hundred psi
two twenty five in and forty out
downstream pressure twelve pounds
nineteen fifty on the upstream gauge
supply gas thirty psi steady
supply's sagging to twenty two when she strokes
instrument air's at eighty
signal at three it starts to lift
give it fifteen pounds signal and she's wide open
six hundred kilopascals on the supply
case pressure's seven bar
separator pressure running one thirty five
vessel's at eight oh five psi today
bench set's off it starts at five and finishes at seventeen
reset the bench set four to sixteen pounds
needs eleven psi to come off the seat
eighteen to thirty three is what the spring range came out to
pilot vent's forty inches of water
output from the controller nine psi
regulator's putting out twenty two pounds
line pressure between ninety and a hundred
minimum supply was twenty eight psi
max i saw was a thousand and fifty psi
bottle test at two fifty
one and an eighth inch of stroke
travel came out seven sixteenths
stroke's short by an eighth only got five eighths
thirteen millimeters of travel
measured the spring four point seven five inches
stem diameter's point three seven two
seat's cut twenty thousandths deep
groove in the plug is about a sixteenth
gap at the yoke is half an inch
there's point oh oh six play in the guide
plug's wore thirty thou under
sitting at forty percent open with no signal
hung up at sixty five percent
she'll go to ninety percent and quit
controller's calling for twenty five percent
takes four and a half seconds to open
closes in three seconds
eleven seconds full stroke that's slow
held it for five minutes never moved
ten minute hold lost two pounds
body's at one eighty degrees hot to touch
forty celsius on the inlet
oil temperature one sixty fahrenheit
valve body's down around twenty eight degrees
seat test good at seventy five psi
put two hundred pounds on it and it's dead tight
bubble tight both directions
ain't a bubble one at one hundred psi
it's blowing by bad
leaking through at eighty pounds
she won't hold
seat leak five bubbles a minute with thirty psi upstream
seven bubbles in a minute
a hundred and fifty c c a minute at four hundred psi
twenty milliliters a minute at fifty
leak rate's forty cubic centimeters a minute down from two hundred
seat test passed
failed the seat test twice
seat leak test still to do
retested after lapping no bubbles
pumped her up to three hundred and she's seeping past the plug
stroke test good full travel up and down
stroked it six times smooth as butter
not stroking at all with thirty pounds on her
jumps a little on the way down but gets there
opens but won't close
sluggish coming open
no movement on the stem with twenty psi signal
strokes full at twenty five pounds no hang ups
stroke's jerky packing's too tight i reckon
comes up a quarter inch and stops
going to stroke it now
it took eighteen psi to get it all the way open
fifteen hundred on the shell five minutes no leaks
body joint's leaking on the shell test
passed the shell test no sweat
bonnet joint sweating at a thousand
hydro'd to twenty two fifty good
packing's tight soaped it nothing
packing leak four drops a minute at nine hundred psi
packing test failed blew right out the top
stem leak's gone after i snugged it
no air out of the breather diaphragm's good
put thirty pounds on the actuator and soaped it up no leaks
actuator test held five minutes
actuator's bleeding down pretty quick won't hold air
top works leaking between the flanges at eighteen psi
air leak at the diaphragm case three bubbles a second or so
smell gas over here shut it in
got a whiff of rotten eggs
h two s monitor just chirped ten parts
alarm's going back off everybody off the pad
gas blowing out the vent
whoa there's still pressure on this thing
bonnet's puffing at me there's pressure behind it
gauge shows zero but she's holding pressure in the cavity
fifty pounds trapped between the blocks
can't get the upstream block to hold
nobody locked this out
the isolation's leaking through
bolts are loose but that spring's pushing the housing up still loaded
careful spring under compression in there
spring shot the cap off
cut my hand on the housing
got oil in my eye
we got condensate all over the ground
fire on the heater
grass is burning by the pit
there's a sheen running off the pad from the drain
bled off to zero twice still building
double block won't hold pressure's climbing
get back that thing's fixing to let go
scratch that last bit
strike that it was the cage
forget i said that
no no the upper not the lower
make that two bolts instead of three
correction thirty eight foot pounds
correction tag is l v two one four
i mean it's worn not washed out
sorry one fifty not one fifteen
wait no the bonnet gasket
the plug uh the seat i mean is pitted
actually scratch the whole thing
ring's cut no it's nicked
correction i already replaced it
torque was forty two sorry forty four
tag's two oh nine correction two nineteen
no wait that's the inlet
put eighty down no make it eighty five
travel was a half scratch that five eighths
never mind that about the gauge
never mind the last one it cleaned up
i said seized i mean sticking
lower housing i mean upper housing's the one cracked
no the jam nut is what's stripped
strike that and the one before it
same thing on the inlet side
bottom one's just as bad
same goes for the other'n
that one's the same only worse
ditto on the diaphragm plate
and the same for the cage gasket
backup rings likewise both of em
it needs one too
replaced them both
cleaned those and put em back
other side same story
upper's okay lower's the same
same torque on the other set
did the same to the plug
flipped that one also
so's the guide
seat was pitted last time too
it's wore a lot more than in june
had a new diaphragm in it last trip and it's tore already
last year we got forty foot pounds out of this
same leak as before
leaked twenty c c last time it's nothing now
stroke used to take five seconds
not as bad as last visit
this is the third seat in two years
that spring's the one we put in last winter
packing was snugged last go round and it's leaking again
been flipped once already according to the paint mark
i replaced this stem not six months back
what did it have for torque before
how'd this compare to the last time
what's left on this one
anything i ain't told you yet
what did i miss
that's it
all done here
wrap this one up
finish her out
say again
read it back
snap a picture of that crack
get a photo of the plug before i clean it
picture of the seat please
hush for a minute
stop listening
listen up
start listening again
note operator says it's been dumping gas for a week
note that we ran out of studs and reused two of the old
remark packing nut needs a bigger wrench next time
for the record supply line was off when i got here
note there's no name plate on the actuator
note somebody painted over the tag
remark valve installed backwards flow arrow points to the separator
note that the road's washed out past the cattle guard
order me a plug and a seat for a one inch
put three bonnet gaskets on the list
bring two springs next trip
get me a couple of o rings for the stem guide
pick up a new gauge thirty pound
i need you to order a positioner
need a lower diaphragm ordered
add a box of half inch studs to the list
bring out a regulator and some quarter inch tubing
order a full set of trim for this thing
order up a float
okay this is x v one oh two alpha
over here is the oil leg dump on the three phase l c v six
tag two eleven l v two eleven
back on f v one oh one
this is a fail open three inch
inch and a half globe pressure closes
that's an air to open with the spring on top
victor one seven
this is the one by the flare knockout drum l v ninety nine
f c v one eighteen delta two inch body normal service
the sour gas one p v three oh three
water dump's tagged l v one forty
let's tear into the gas back pressure valve p c v twenty six
guess we're doing mike victor ten now
compressor suction control valve s c v four
finished with that one starting l c v one seventeen
two more to go this is l v six sixty
the big four inch on the inlet manifold h c v fifteen
yep she's pressure opens one inch sandy
plug and seat both wore
seat and cage are both washed out bad
stem and guide are in good shape
diaphragm and spring okay
gaskets all flattened
both diaphragms have gone stiff
cage good plug bad
seat's pitted and the plug's got a nick in it
upper housing fine lower housing rusted through
stem's good but the packing ain't
bonnet's got pits in the gasket face
threads inside the bonnet are intact
bonnet bolts all galled came out fighting
one cap screw missing off the bonnet
bonnet's warped a touch can't say how much
rust on the bonnet nothing serious
bonnet had a sand hole blow through it
body wall's thin it's eroded on the outlet side
body has a scratch in the bore
body's plugged with paraffin
scale in the bottom of the body
there's a chip out of the body flange
found a pinhole leak in the body below the seat
housing bolts are rusty and two of em broke
housing split along the seam
water in the housing's rusted everything
housing's leaking around the edge
mouse nest in the upper housing
upper housing's seized onto the gasket
upper housing flange is bent up on one side
upper housing don't have no damage
lower housing's scored inside
lower housing had a crack i might have missed last time
lower housing threads stripped out of the air port
actuator has a big old dent from a wrench
actuator's sticking on the upstroke
actuator sits crooked on the yoke misaligned
actuator is sound
actuator's eat up with rust outside
spring's flat as a pancake
spring is real rusty
springs are good
spring's scratched up nothing to fret over
spring's off its seat and rubbing the can
spring missing altogether
spring corroded to where it's thin
cage scored on the inside where the plug rides
cage got a chip off the bottom edge
cage is stuck in the body
cage holes half plugged with scale
cage threads are galled bad
cage has a slight dent
couple of nicks in the cage don't amount to much
cage ain't eroded none
plug's galled to the cage
plug's loose on the stem
plug broke clean off the stem
plug shows steam cutting all around
plug looks brand new
plug's wire drawn across the one side
plug's corroded green
disc is cut across the face
disc insert's swelled up and hanging
soft disc is hard and chipped
ball's scratched slightly
some kind of burr on the plug
plug sticks about halfway
heavy scoring on the plug skirt
trash wedged under the plug
plug tip's wore to a nub
seat has a hairline crack on the inlet side
seat's loose you could turn it with your fingers
seat ring rusted in the body
seat face all nicked up
seat ring's not cracked
seat gouged on the left side
seat ring's dented where it got hammered
seat's wire cut nearly all the way around
seat's caked with scale
seat won't come out it's stuck
seat threads cross threaded
little pits on the seat i can lap out
seat ring cocked in the bore
seat's leaking
seat ring bottom side's clean as a whistle
seat got holed by sand at two o'clock
stem's bent bad
stem's broke at the threads
stem's stuck in the guide
pits along the stem right where the packing rides
stem has a groove wore in it
nicked stem
stem's corroded to beat all
stem threads stripped the last half inch
stem's dragging some through the guide
stem's polished no marks
stem's eroded under the plug
burnt lookin' spot on the stem
stem's got mud caked on it
guide has a crack
guide's full of trash in the ports
guide scored one side
guide's loose in the bonnet
guide plumb rusted in place
guide bent from somebody prying
guide o ring groove's nicked
guide's cocked
stem guide's broken at the lip
stem guide has paraffin down in the holes
stem guide's clean
stem guide corroded around the top
stem guide cracked i believe not sure till i wash it
stem guide chipped on the bottom
that diaphragm's done swole up
diaphragm bolt holes stretched and tore
fabric's showing on the diaphragm it's wore thin
diaphragm has a split in the rubber about an inch
diaphragm's in good shape
there's a hole in the diaphragm you could poke a finger through
diaphragm stuck to the plate
diaphragm got cooked hard as a board
diaphragm wrinkled up and pinched on the edge
upper diaphragm's holed
upper diaphragm swollen from the oil
top diaphragm cut where the plate edge sits
upper one's a bit stiff otherwise good
upper diaphragm not torn just dirty
actuator diaphragm leaking past the nut
balance diaphragm's blown out
bottom diaphragm pulled out from the bolts on the left
lower diaphragm's hard and flattened
lower diaphragm got sand packed against it
lower diaphragm's got a cut in it from the plate
diaphragm plate scored
diaphragm plate's cracked between two holes
plate got rust holes
upper plate's upside down
plate's sharp on the edge nicked all around
diaphragm nut's missing
diaphragm nut stripped
diaphragm nut is rusted solid had to cut it
ditto
diaphragm nut galled to the stem
lock nut split down one flat
had to cut that jam nut off it was rusted to the stem
somebody left the lock nut off altogether
lock nut's got its threads pulled need another one
packing's wore out and dry nothing left in there but string
bottom ring of the packing's chewed and the top two are okay
packing squeezed up past the follower extruded a good eighth
seeping around the packing just enough to wet your finger
packing's so swelled it's grabbing the stem
packing nut's split on the side where it's been over tightened
took a pipe wrench to that packing nut and rounded it off years ago
packing nut came off easy threads are pretty
stem connector's bolts are loose you can wiggle it
two halves of the stem connector are corroded together
threads inside the stem connector pulled out
broke stem connector no wonder she wasn't moving
tore seat gasket tore clear across
seat gasket squeezed out toward the outlet extruded bad
got a wash through the seat gasket from the inlet to the hole
seat gasket was okay but i changed it anyhow
they pinched the seat gasket when they built it
nobody ever put a seat gasket in it
cage gasket come out in pieces brittle as a cracker
cage gasket might be weeping i couldn't swear to it
somebody cut the cage gasket with a screwdriver
cage o ring's took a set it's flat on two sides
nick in the cage o ring about the size of a match head
whoever built this left the cage o ring out
cage o ring is still round and soft putting it back
there's hardly any rubber left on the stem guide o ring it's wore flat
stem guide o ring tore in two when i fished it out
gas got into the stem guide o ring and swelled it
pinched o ring between the guide and the bonnet
all the o rings are hard as plastic
one o ring missing out of the upper groove
grit stuck all in the o ring
backup ring shattered like an old record it was that hard
one backup ring's nicked and the other's just fine
found only one of the two backup rings the bottom one's missing
backup rings look decent i'm gonna run em again
gasket tore when i lifted the bonnet so that's a new one
that gasket don't look half bad
bonnet gasket pinched on the left and leaking there
had to scrape the old bonnet gasket it was baked to the face
hunk missing out of the bonnet gasket on the inside edge
one of the bonnet studs is bent like a banana
took heat to get the bonnet nuts off seized every one of em
bonnet bolt heads wallered out rounded on three of em
bonnet bolting's been eat up on the side facing the wellhead
snapped three bonnet bolts getting it apart
body bolts show heavy rust but they broke loose alright
two of the eight body bolts are stripped
nut missing off the back body stud
body bolting came apart easy it's all good
threads rolled over on the end of the stem
old dope and dirt packed in the threads
outlet threads have a crack running in from the end
three turns galled up on the outlet threads
inlet side's leaking at the threads where the nipple goes in
a little corrosion on the inlet threads nothing a brush won't fix
wash behind the seat it's eating into the seat area
wire drawn place in the seat area maybe a quarter inch long
scratch across the seat area but it don't reach the edge
light rust down in the seat area buffed right out
whoever was here last lost the travel indicator
travel indicator's flopping around loose
indicator hangs up at the halfway mark then pops free
that indicator gasket tore soon as i touched it
indicator spring snapped at the hook
breather's been painted over shut
screen's tore on the breather
i can blow through the breather so it ain't plugged
breather's rusted into the housing won't come out for love nor money
pipe dope squeezed into the supply port and plugged it
boss around the supply port has a crack started
looks like the signal port got crossed threads from a wrong fitting
bug nest in the signal port dug it out with a wire
vent hole's iced over solid
gas coming steady out the vent hole
vent hole's clear i run a wire through it
positioner feedback arm is loose
positioner's hung at mid stroke
inside of the positioner is green with corrosion
positioner works good tracks right with the signal
controller's froze up with hydrates in the relay
orifice in the controller's stopped up
flapper on the controller is loose as a goose
checked the controller it's okay
regulator's stopped up with trash from the supply line
spring case on the regulator has a crack in it
regulator's holding steady i'd call it good
no gauge on the supply it's been stole
gauge threads are leaking put some tape on em
gauge is true within a pound
strainer basket's rotted through
strainer was clean this time for a change
solenoid passing gas out the exhaust it's leaking
mice cut the wires on the solenoid
solenoid clicks and shifts no problem
whole trim set is pitted heavy like it's been in acid
can't get the trim out of the body it's stuck
trim's wearing a touch but within reason
yoke's got a bow to it
yoke bolts backed out about two turns
outlet flange leaking at the bottom
flange has a ding at the edge won't hurt nothing
handwheel's gone they used an adjustable wrench on the stub
turned the handwheel all the way easy it's good
jam nut missing off the adjusting screw
adjusting screw galled in the cap wouldn't budge till i heated it
adjusting screw backs in and out free it's fine
float collapsed from somebody pressuring it too quick
float's coated in paraffin weighs twice what it ought to
float arm's good swings free
every hole in that linkage is wore egg shaped
linkage binding up with rust on the pivot
missing cotter on the linkage so it fell apart
diaphragm in the pilot tore
pilot's alright shifts crisp
flare's cracked on the supply tubing
tubing rubbed a hole through where it lays against the yoke
tubing's full of ice
brass fitting cracked soon as i put the wrench on it
fitting was just hand tight
good clean fitting no leak on the soap
valve's rusty outside but it's solid inside
the whole valve is junk tell you the truth
valve's hanging up a little at the end of the stroke
seals in the top are leaking all around
seal kit's wrong size somebody ordered the three inch
seals went hard like they been in there ten years
found the spring broke and a piece of it laying on the plate
i got a worn cage a scored stem and a plug that ain't worth saving
seat's pitted on both sides so no sense flipping it we'll just put a new one in
the plug's good the seat's good and that stem guide is the only thing giving us trouble
guide's scored up one side so i honed it and it'll go back in
pulled the seat it was washed out on top flipped it and put a new gasket under it
bonnet off cage out plug and stem out everything's dirty but nothing's broke so far
upper diaphragm's torn at three of the bolt holes and the lower one's fixing to go
scraped the bonnet face cleaned the groove laid in a new gasket and torqued her to thirty two
replaced both o rings and both backup rings on the stem guide greased em and stuck it back together
put the seat in at one ninety foot pounds and checked it twice
shut in with two hundred and ten psi upstream and she's not leaking a drop
set three hundred on the inlet waited five minutes and got two bubbles a minute
i ran the signal up to thirty she come full open in about six seconds and closed the same
spring was four and three quarters last time and now it measures four and nine sixteenths
bench set wants to be six to twenty but i'm reading eight to twenty four
with eighteen pounds on the diaphragm she moves half an inch and stops dead
stroke it again i only saw half travel
had forty c c a minute before i lapped it and now it's down to six
soap on the packing soap on the bonnet soap on the fittings not one bubble anywhere
actuator held thirty psi for ten minutes didn't lose nothing
nah the diaphragm's not leaking it was the fitting all along
i don't see any wear on the guide or the stem either one
nothing bent nothing broke just dirty
without a doubt that cage is cracked
no pitting no wash no wire drawing seat's like new
plug's not chipped that's just scale
didn't have to replace nothing on this one but gaskets
gasket ain't pinched it just looks that way
no rust on the bolts somebody used anti seize
wasn't no lock nut trouble like i thought
the yoke isn't bent after all
never found any water in the housing
not a nick on them backup rings
left the cage o ring be it was fine
honed out the guide a touch
polished the stem with crocus cloth and it's going back
reseated the plug with lapping compound till it showed a solid ring
seat got lapped third time in its life
cut new threads on the stem with a die
chased out the supply port and blew it clean
packing got one more turn
pitched that float and hung a new one
swapped the regulator out for one off the truck
hung a new gauge on the supply
ran new tubing from the regulator to the positioner
changed the fitting at the signal port
straightened out the indicator and set it back to zero
dug the ice out of the vent hole
drained about a quart of water from the lower housing
poured in half a pint of oil
oil's milky dirty so i dumped it and filled it fresh
bled the case through the breather before pulling any bolts
cranked the adjusting screw in three turns till she closed
re zeroed the positioner it was off ten percent
adjusted the linkage out one hole
swapped the solenoid yesterday
pulled the strainer and rinsed it in the bucket
upper housing back on with all twelve bolts
bonnet needs to come off again
we oughta change the breather
stem guide's gotta be pulled
somebody needs to grease that linkage
the lower diaphragm could probably stand replacing
don't replace the spring yet
gonna leave them outlet threads the way they are
plug stays
kept the positioner threw out the controller
the guide'll get changed next time
cage went in the scrap barrel
put two turns of tape on the nipple
running the same stem again
went back with the old cage gasket cause there ain't a new one on the truck
eight new cap screws on the housing
needs one stud and two nuts
six bonnet bolts replaced the rest i cleaned and reused
torque check on the body studs they're all right at one hundred
tightened the packing till it quit dripping fifteen foot pounds
seventy inch pounds on the indicator cap
pulled the lock nut to thirty seven and a half
upper housing bolts done at two hundred inch pounds crisscross
yoke nut at eighty five foot pounds
broke the seat loose at better than four hundred
torque wrench says fifty that's what it gets
breakout on the bonnet nuts was about one thirty foot pounds
all bolts to spec sixty eight foot pounds
hundred and twenty newton meters on the flange studs
sixteen kilopascals downstream
suction's two psi and discharge is seven twenty
static on the line two ninety five
inlet twelve hundred outlet ninety big drop across this one
set the regulator at twenty eight psi
flange gap measures point one two five all around
diaphragm stud sticks out an inch and three quarters
two tenths of an inch short on travel
thirty eight thousandths wore off the skirt
forty five seconds to close way too slow
thirty six degrees at the outlet fixing to freeze
`;
