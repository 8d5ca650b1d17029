/** Lines of days on other skids: tags, readings, supplies, what was tried and how it went. Invented; a line a phrase, numbers and tags as spoken. */
export const OTHER_SKIDS = `
alright morning this is f v one oh one on the bench
came in last night off the north separator
sandy service so figure on trim
gonna start with the outside and work in
outside of the housing's got some rust on it nothing bad
breather's stopped up with mud
travel indicator's bent over
indicator spring's still in there and it's fine
indicator gasket's hard it'll crumble if you look at it
supply port's clean
signal port's got pipe dope down in it
before i break it down i'm putting twenty pounds on the actuator
holding twenty psi no air anywhere
stroke's five eighths of an inch
she ought to be seven eighths so only part stroke
took fourteen seconds and it dragged the whole way
breaking the bonnet loose now
pulled all eight bonnet bolts
two of those had galled threads
bonnet gasket came out in three pieces
bonnet's okay on the face
took out the cage
cage is cut up with sand on the outlet side
holes in the cage are washed out too
cage gasket flat as a pancake
cage o ring's swelled and it's extruded on one side
backed the lock nut off the stem
lock nut's corners are rounded
plug's wire drawn on the edge
seat has a groove cut in it i can catch a fingernail on
seat gasket's stuck in the body
seat's coming out
scraped the seat gasket out of there
stem measures point four nine eight up top
and point four eight five where the packing rides
so that stem's worn
replacing the stem
need a new plug too
new seat ring for sure
guide's alright just dirty
washed the guide out in solvent
ports in the guide were packed with paraffin rodded those out
both guide o rings brittle
put new o rings on the guide
stem went in with a little grease
packing nut just finger tight for now
new seat gasket down first
dropped the new seat in on top of it
new cage gasket
new cage o ring and it's greased
cage went back in after i wire brushed it
no wait i put a new cage in
plug's on the stem and the lock nut's down on it
thread locker on the lock nut
lock nut's at sixty five foot pounds
bonnet gasket's new
bonnet back on
bonnet bolts in a star pattern first pass fifteen foot pounds
second pass twenty five
final's thirty five foot pounds
packing nut to a hundred ten inch pounds
diaphragm plate's good
upper diaphragm has a split at the bolt circle
new upper diaphragm's in
bottom one's okay but it's coming out anyhow
replaced the bottom diaphragm
diaphragm nut at forty two foot pounds
actuator spring's got good length five and five eighths
put the spring back
upper housing's on
tightened the housing bolts twelve foot pounds all the way around
new breather screwed in
put a new indicator gasket on and a new travel indicator
okay going on the test bench
twenty psi to the actuator
no leaks at the housing
soaped the breather no bubbles
stroke test full travel seven eighths of an inch
opens in four seconds
closes in about five
hydro's next
fifteen hundred psi on the shell
held ten minutes no drop
shell's good at fifteen hundred
air under the seat a hundred pounds
two bubbles a minute at a hundred pounds
gonna work it a few times and check again
stroked it six times
okay zero bubbles now at a hundred psi
pass on the seat
put two seat gaskets on the list
order me another cage o ring
that's all on this one close it out
next one's lima victor two zero four
lima victor two oh four it's a one inch air to close
this one came in with a note says leaks by
let me check it as found
as found seat leak at sixty psi
she's passing about thirty cc a minute
signal at fifteen and it's supposed to be shut
bench set's off
it starts moving at five and a half pounds
fully closed at eleven
should be three to fifteen
backed the adjusting screw off two turns
adjusted the spring
starts at three pounds now
full stroke at fourteen and a half
that's close enough
still leaking by though
okay tearing it down
took the top off
top housing's scratched up on the inside
power diaphragm's fine not even stiff
yoke's good
stem connector's loose
pulled the trim out
plug's got a nick in the seating edge
seat's okay no scratches that i can see
plug needs replaced
don't have one on the truck
order one plug for two oh four
lapping what i got
lapped it twenty minutes
back together with the old gasket
fifty psi on it dead tight
hey what's left on this one
did i say the packing was okay
packing nut's snug
i didn't touch the packing
out here at the compressor station valve's a p v three one seven
three inch severe service and it fails closed
it's windy so bear with me
i'm backing off a minute
okay it's the fitting on the supply tubing
supply fitting's leaking bad
snugged it up half a turn
upstream gauge says four twenty
four hundred twenty psi upstream
downstream's eighty five
supply regulator's set at thirty two pounds
controller's putting out six psi
valve's forty percent open by the indicator
block it in
upstream block's not holding
can't get it isolated the block valve's passing
called operations they're shutting the next one
okay locked and tagged
still twelve pounds on the body
there's pressure trapped in there
cracked the bleeder again and it's down now
drained about a quart out of the body
now it's at zero psi
pulling the actuator first
took off the signal tubing and the supply tubing
signal tubing's kinked at the elbow
positioner's hanging by one bolt
positioner bolts are missing two of 'em
linkage on the positioner's worn
handwheel turns easy
actuator's off
spring's still loaded watch that
backing the adjusting screw all the way out
okay spring's slack
free length six and seven eighths
book says seven inches so it's a touch weak
putting the spring in anyway
no scratch that i'm replacing the spring
eight body bolts out
one body stud's broke off flush
had to drill it out
chased the threads in the body
body threads are good now
seat's washed out clear through on one side
body's washed out under it
seat area's eroded about an eighth of an inch deep
that's an eighth inch
that body might be done
could be the seat gasket let go and it cut the body
cage is sand cut
plug is plumb wore out
stem's scored heavy where it goes through the guide
stem guide's worn egg shaped
not reusing any of this trim
needs a full trim set and a kit
put a seal kit on the list
bring two body studs next time
and a stem guide
gonna need one cage one plug one seat
body's getting sent off to be repaired
flange face is okay
gasket on the inlet flange is torn up
replaced the inlet flange gasket
outlet flange gasket's fine left it in
blinded it off for now
note spare valve goes in thursday
okay back thursday with the rebuilt body
body's been repaired
seat area looks brand new
cleaned the bore with a scotch pad
seat gasket in new
new seat tightened to two hundred foot pounds
two hundred foot pounds on the seat ring
cage gasket's down
cage slid right in
plug and stem went in as a set
stem turns free
greased the guide and slid it on
backup rings two of 'em new
bonnet gasket
bonnet set down on the studs
bonnet nuts hand tight
cross pattern forty foot pounds
then eighty
then a hundred and fifteen final
one fifteen foot pounds on all twelve
went around once more at one fifteen none of 'em moved
packing's new five rings
packing nut at twenty foot pounds
stem connector's clamped
stem connector bolts to eighteen foot pounds
actuator set back on the yoke
yoke bolts forty five
bench set six to thirty
starts off the seat at six psi
wide open at thirty one
cut the adjusting screw back a quarter turn
now it's six to thirty on the money
travel one and a half inches
one and a half inches full travel
fifty percent open at eighteen pounds signal
eighteen psi and the indicator says fifty percent
positioner put back on
calibrated the positioner zero and span
four point oh at zero nineteen nine at full
leaving the old linkage on there
supply regulator at thirty five psi
got a new gauge from the truck
put the gauge in
shell test with the line gas four hundred psi
soap on the body joint no bubbles
bonnet joint's dry
seat test upstream four hundred pounds downstream open
getting eight bubbles a minute
still eight bubbles at four hundred pounds
stroke it again
down to three bubbles a minute now
i'll take three
packing's leaking a hair
quarter turn on the packing nut
packing's quit
stroke time nine seconds open
seven seconds shut
full stroke no sticking
all done here close it
take a picture of the tag
and one of the old seat
t c v four twelve in the glycol building
temperature valve one and a half inch
air to open spring to close
the thermometer on the line says one ninety five
a hundred and ninety five fahrenheit on the inlet
supply twenty psi
signal coming in at seven and a half
it's moving but it sticks about halfway
got half travel out of it
three eighths and then it hangs up
percent open's about forty five
packing's too tight i think
backed the packing nut off an eighth turn
still hanging up
okay gotta pull it
glycol all over the floor
got a spill here couple gallons
cleaned that up
body's drained
took the four bonnet bolts out
bonnet's stuck on there
bonnet's off finally
bonnet gasket's stuck to the body
scraped off the old gasket
stem's got gunk baked on it
some scoring on the stem too about an inch up
stem needs dressed
plug's okay
guide's fouled with burnt glycol
cleaned the guide
polished the stem with emery
miked the stem at three seventy four
point three seven four on the stem
guide bore's point three seven six
so two thousandths clearance
that's good the guide's reusable
reused the guide
grease on the stem
packing's hard as wood
packing has to be replaced
dug the old packing out
no pitting down in the packing box
new packing four rings
didn't replace the plug
didn't change the seat either
bonnet gasket's new out of the kit
bonnet's on
bolts at eighteen foot pounds
no make that twenty two foot pounds
signal three pounds it just cracks
nine pounds halfway
fifteen pounds full open
five eighths travel on the button
stroke's smooth
strokes full both ways
seat leak at thirty psi
held five minutes
and no leak at the packing with thirty on it
glycol's back in one eighty nine degrees and steady
controller looks fine
checked the controller
gauge on the controller's sticking
tapped it and it's okay
fixed the gauge
replace that strainer next time
note the strainer basket's got a hole in it
for the record operator asked for a faster stroke
done with four twelve
going over to l c v two one eight alpha
level valve on the free water knockout
two inch dump
three hundred pound vessel running at one ten
a hundred ten psi upstream
downstream's atmospheric call it zero
supply twenty eight psi
float's full of oil
there's a hole in the float
linkage is sticking
linkage pin's worn
greased the linkage it's free now
need a float
get me a float on order
pilot's bleeding air constantly
pilot is leaking from the exhaust
pilot seat's got dirt on it
blew the pilot out with air
new diaphragm in the pilot
pilot's back together
pilot quit blowing
output's zero with the float down
twenty seven psi with the float up
valve snaps open
took a second and a half to open
closes in three
there's still some blow by
listening to it with the screwdriver she's passing
i'd say twenty drops a minute
twenty drops a minute at one ten
that'll have to wait
didn't open the valve today
leaving the seat for next week
yep that's right
okay close that one
we went to lunch at the place with the big burger
my buddy's truck blew a tire
back at it in the shop
hydro on the four inch
whose valve is this
tag's gone off it
tag plate's missing
i think it's p v six oh two
four inch pressure to close
body's been bead blasted already
body bolts torqued one eighty
a hundred and eighty foot pounds on the body bolts
filled it with water
bled the air off the top
six hundred psi
losing pressure
lost fifty psi in two minutes
drip at the body joint
body gasket's leaking
bleed it off
bled to zero
took the body bolts back out
gasket's pinched on one side
new gasket
body bolts in fifty foot pound steps
fifty
hundred
one fifty
final one ninety five
okay six hundred again
holding at six oh five
fifteen minutes on the clock
five ninety eight at fifteen minutes
shell passes
vented it
drained the water out and blew it dry
okay who's next on the cart
p c v eighty seven bravo
back pressure valve inch and a half
as received it's all painted over
breather's painted shut
vent hole's painted over too
scraped the paint out of the vent hole
adjusting screw's rusted solid
adjusting screw won't budge
soaked it with penetrating oil
thirty minutes in the oil
screw's moving now
backed it out inch and a quarter
put a wrench on the jam nut and it stripped
jam nut's gone bad needs a new one
spring's rusty but not broken
spring rate looks okay compressed it to three inches
four and three quarters free
spring's going back in after i brush it
upper diaphragm is stiff
no holes in the upper diaphragm
i'm changing it anyway
diaphragm plate's bent
straightened the diaphragm plate in the press
diaphragm plate's flat now
diaphragm nut's cross threaded
chased the threads on the stem
new diaphragm nut
diaphragm nut torqued to thirty five
lower housing bolts are all different lengths
replaced eleven housing bolts
three of the bolts i reused
housing's cracked at one bolt hole
hairline crack in the lower housing by the hole
might get away with it
no i'm replacing the lower housing
bring me a lower housing off the shelf
balance diaphragm's good
lower diaphragm is fine put it back
vent the pilot
pilot needs calibrating
pilot's cleaned and calibrated
set at sixty five psi
pilot cracks at sixty three
reseats at sixty
set it up to sixty five and a half
let's say about sixty five
plug's got a flat spot
seat ring worn all the way around
sixty psi on it after lapping leaks ten bubbles a minute
lapped it again with the fine compound
two bubbles
one more time
bubble tight at sixty
also tight at a hundred and twenty
low pressure leaks worse than high
at five psi it's four bubbles a minute
okay cleaned the seat and tried it at five psi
tight at five pounds too
seat test pass
actuator test
thirty psi in the top housing
lost a pound in five minutes
there's a leak at the housing bolts
tightened them another quarter turn
holding thirty now
actuator passed
shell at two twenty five
shell passed no drips
stroke it
goes seven sixteenths
seven sixteenths of an inch on the dial indicator
stroke's good
breather's new
put the tag back on
all done next valve
f c v eleven hundred
f c v one one zero zero flow control on the reflux
two inch with a cage
as found starts at four and a quarter
as found full open at sixteen
so the bench set's shifted
span's okay it's just the zero
turned the adjuster down three quarters of a turn
as left three point one
as left fifteen even
travel as found one inch
travel as left one and one eighth
positioner supply thirty
positioner output nineteen at midpoint
it hunts a little
positioner's hunting
cleaned the positioner relay
blew out the nozzle
quit hunting
calibrated at zero fifty and a hundred percent
zero percent three pounds
fifty percent nine
hundred percent fifteen psi
tightened the feedback linkage
linkage was loose
linkage nut's missing
put a nut on the linkage
stem packing's weeping
four drops a minute out of the packing
snugged the packing nut a flat at a time
two flats and it quit
packing's dry at one seventy five
yoke's got a crack
crack's about two inches long in the yoke
needs a yoke
order a yoke and a stem connector
don't weld on it
didn't repair the yoke
it's safe till the turnaround
note recheck yoke in thirty days
took a picture of the yoke
get a picture of this crack
that's it for eleven hundred
okay the next one i got sitting here's a little three quarter inch
tag's m v nine
mike victor nine
motor valve normally closed
supply psi twenty
twenty pounds in she snaps open
drops shut when i vent it
full travel quarter inch
point two five on the stem travel
seat's leaking by a stream
pulled the seat
there was a rock in it
little rock stuck between the plug and the seat
plug has a dent in it
dressed the plug with a stone
seat's got no damage
seat was good so i left it
blew the body out
put it back together with the same gasket
torqued the bonnet fifteen foot pounds
tested at fifty
holding
at one hundred she's holding too
close it out we're good
evening callout
valve's x v seventy one at the flare header
x ray victor seven one
six inch on off with a spring return
they say it won't close
no signal on it and it's still wide open
solenoid's energized
killed the solenoid and nothing happens
air still on the cylinder
exhaust port's iced over
solenoid's vent is plugged with ice
thawed that out with warm water
now it's closing
took forty five seconds to close
supposed to be under ten
regulator's froze up too
ice all around the regulator body
outside it's eighteen degrees
air temp at the valve minus four celsius
drained the water off the regulator
regulator bowl was full of water
strainer in the supply's plugged with rust
pulled the strainer out and rinsed it
supply went from forty one up to eighty
eighty psi supply
closes in eight seconds
open in twelve seconds
stroke passes
three strokes eight seconds eight seconds and seven and a half
h two s alarm went off
moving upwind
all clear
gas alarm was the analyzer
okay where was i
solenoid needs replacing they're on order
get two solenoids
and a regulator filter
tubing from the regulator's pinched under the clamp
replaced two feet of tubing
new fittings both ends
fitting at the solenoid's cross threaded
swapped that fitting
soap test on the tubing nothing
actuator test sixty psi in the cylinder
dropped to fifty eight in ten minutes
that's okay
no air out of the vent
seat leak can't test it in the line
didn't test the seat
shell looks good nothing dripping
packing looks dry
handwheel's frozen with rust
handwheel needs grease
greased the handwheel gear
handwheel turns
gearbox oil is low
oil's milky it's got water in it
filled it with two quarts
oil's full
yeah close it out
new day shop bench
h v two two five
it's a hand valve two inch
stem's galled to the nut
yoke nut threads are stripped
stem threads are chewed up
handwheel's cracked at the hub
packing's blown out
bonnet's fine though
bonnet bolting's rusty but it's tight
body's got a pinhole at the bottom
pinhole leak in the body
body's junk
chuck the body
i'd throw the whole valve away
valve's toast
not fixing this valve
scrapped it
order a new two inch valve
and a handwheel if they got one
well hang on keep the bonnet
kept the bonnet
done with that
okay three inch level valve tag l v four four nine charlie
l v four forty nine charlie
comes from the inlet separator
sour service so kit's the special one
actuator off already from the field
no spring in it somebody lost it
actuator spring's missing
need an actuator spring
order one spring
cage out plug out seat out
cage is good just dirty
cage gasket's been cut
cage o ring missing
seat's pitted up
pits maybe ten thousandths deep
can't lap that
seat's gotta be replaced
plug's pitted same as the seat
guide's corroded on the outside
inside of the guide's good
stem's straight i rolled it two thou runout
runout's two thousandths
that's in spec
stem's a keeper
reusing the stem
upper diaphragm's got a blister
upper diaphragm is swollen around the center
lower diaphragm's pinched at the edge
both of those are getting replaced
housing's good upper and lower
diaphragm plate has rust on the bottom
sanded the diaphragm plate
inlet threads have a nick on the first thread
cleaned up the inlet threads with a file
outlet threads look great
washed everything
assembly now
seat gasket seat cage gasket cage in that order
greased the cage o ring
o ring's in the groove
stem guide o rings two new backup rings four new
plug on the stem
jam nut against it
thread lock on the jam nut
torqued the jam nut thirty eight pounds
bonnet bolts five pounds all around just to seat it
twenty
thirty two
thirty two foot pounds final on six bolts
bottom diaphragm first then the plate
then the top diaphragm
nut on at twenty nine foot pounds
spring's from stock
compressed the spring three quarters
upper housing set on it
housing bolts ten foot pounds
tightened the housing bolts in a cross
indicator's reused
indicator gasket new
breather's been replaced
test time
bench set four to twelve
begins to open at four
opens all the way at eleven point eight
travel was seven eighths
hydro to twelve hundred
twelve hundred psi on the body
no weep no sweat
ten minutes good
air at eighty under the plug
one bubble every two minutes
call it point five bubbles a minute
eighty pounds half a bubble a minute
good enough for me
packing holds
tag it and put it on the shelf
windy out here testing the microphone
okay you hear me
this here's p v one thirteen delta
gas regulator valve one inch threaded
inlet's got nine hundred pounds
outlet one twenty five
nine hundred in one twenty five out
creeping up on the outlet when there's no flow
outlet climbs to one forty in a minute
so the seat's leaking
lockup's no good
shut both sides and bled it
gauge says zero but she's still hissing
pressure behind the plug still
vented it through the downstream bleeder
okay it's dead now
bonnet nut's tight as heck
broke it loose with the four foot cheater
spring let loose and hit the table
nobody's hurt
got my thumb pinched it's bleeding a little
put a bandaid on we're okay
spring's good five coils no cracks
diaphragm's okay not hard not cut
seat disc has a ring worn in it
flipped the disc over
other side of it's fine
nozzle's got a scratch
polished the nozzle
stem's sticking in the guide
guide's dirty
cleaned guide and stem
o ring on the stem is flat
put an o ring in it
bonnet nut at seventy five foot pounds
set it back at one twenty five
locked up at one twenty eight
holds at one twenty eight five minutes
pass
no gas at the breather
soaped the bonnet it's good
inlet threads showing a little rust
put dope on the inlet threads
close it
over to the dehy
l c v dehy two
lima charlie victor nine nine eight
one inch water dump
it's plugged
line's plugged up with scale
hammer on it nothing
scale in the body clear up to the bonnet
drained it blew nitrogen through
one hundred psi nitrogen
got flow
plug's coated in scale
seat's got scale on it
soaked plug and seat in acid
thirty five minutes in acid
scale's gone plug's pitted underneath
seat's okay under the scale
need one plug
don't need a seat
put it back with the old plug for now
left the pitted plug in
torqued the bonnet twenty eight
seat test at forty psi fifteen drops a minute
it'll do till the plug comes
need a plug and a seat gasket on the next order
that's right except it was eighteen drops a minute
correction eighteen drops
okay finish
heading to s d v five fifty
shutdown valve eight inch fail closed
sierra delta victor five five zero
partial stroke test first
went to eighty five percent and back
ten seconds to get to eighty five
no hang up
now full stroke with the ops guy on the radio
shut in nineteen seconds
requirement's no more than thirty
open in twenty six seconds
limit switches are fine
supply sixty five psi during the stroke it dipped to fifty two
regulator's not keeping up
regulator might be undersized
dips to sixty only now
signal tubing's okay
solenoid clicked both times
solenoid's good no leaks
breather on the cylinder's missing its screen
screen's missing put a new breather in
actuator's hydraulic oil's a bit low
topped it off with half a quart
hydraulic oil looks clean
oil pressure's nineteen hundred
nineteen hundred psi on the hydraulic
pump kicks in at seventeen fifty
spring can's rusted at the bottom
no holes just surface rust
leak test this is the yearly
upstream seven sixty psi
downstream bled to zero
downstream built up two psi in ten minutes
so it's leaking by some
that's a pass by the book
i'd call it a pass
no i'd rather write it as fail
correction fail
the seat's leaking
needs grease in the seat
pumped sealant in it
retest
seven sixty psi and nothing downstream for fifteen minutes
tight
packing gland's okay
snugged the gland nuts to thirty
body's fine flange is fine
flange bolts need tightening on the outlet
tightened two flange bolts a hundred foot pounds
flange bolts were loose on the bottom
two of the flange studs are short
get eight flange studs three quarters by five
replace two of 'em next shutdown
the gauge on the hydraulic's cracked
gauge face is cracked but reads okay
not replacing the gauge
calibrate it in the shop maybe
okay done with five fifty
let me think what else
the one by the flare it's called b d v eighteen
blowdown valve two inch air to close
strokes open on loss of air in four seconds
four seconds flat
shuts in ten
seat leak can hear it a little
dripping at the drain about two drops a minute
probably trash on the seat
stroke it three more times see if it clears
cleared up
no leak now
read back
close this out
okay torque sheet on the big one
this is c v three zero one five bravo
eight inch cage valve severe service
studs are one inch and a quarter
lubed the studs
nuts are all new sixteen of 'em
replaced sixteen nuts and four studs
first pass two hundred
second pass four hundred foot pounds
third pass six fifty
final pass six hundred and fifty foot pounds around the clock
checked at twenty four hours
a couple of them moved a flat
retorqued to six fifty
bonnet gap's even thirty thousandths all around
gap's thirty thou left side thirty one right
gland follower's square
packing studs forty five inch pounds
no forty five foot pounds
packing's live loaded
belleville stack's compressed eighty five percent
flange bolts one oh five
seat ring's retained by the cage so no torque on it
cage clearance point oh oh eight
plug to cage eight thousandths
seal ring on the plug is new
old seal ring was chipped
plug was scored along one side
plug dressed and reused
seat's lapped
stem's new it's pinned to the plug
stem pin's in and staked
guide bushing pressed in new
guide's inside diameter one and a quarter
stem's one point two four six
okay stroke set at three inches
mechanical stop's at three and one sixteenth
three inches of travel
hooked up the positioner
supply eighty five pounds to the volume tank
signal's milliamps through the transducer nine psi at mid
at twenty five percent six psi
at seventy five percent twelve pounds
quarter travel at point seven five of an inch
opening's linear
open in seventeen seconds
close in twenty one
booster's sticking
volume booster needs cleaned
cleaned the booster
now seventeen down to nine seconds
hydro fifteen hundred on the body
held thirty minutes
no leaks at the bonnet
seat leakage class four at fifty psi
allowed's six hundred fifty cc a minute
got two hundred ten milliliters a minute
two ten m l a minute at fifty psi
run it again at forty five to sixty psi
between one ninety and two twenty m l
passing the class
packing test nitrogen at a thousand
a thousand pounds and no bubbles at the packing
get me a photo of the torque tag
picture of the stem pin too
put a ring seal set on the list
and a bonnet gasket for the spare
small one now
tag's p v four oh eight foxtrot
half inch control valve
signal pressure to the little actuator
six pounds to start nine and a quarter to finish
should be six to eighteen
spring's the wrong one
that's the wrong spring in there
need the six to eighteen spring
replaced the spring with the right one
it's blue with a white stripe
now it's six to seventeen point nine
stem travel three eighths
zero leak at seventy
bonnet torque eleven foot pounds
packing nut snugged by hand
done that was easy
look at this mess
tag looks like l c v thirty three
lima charlie victor three three
one inch dump valve and it's full of sand
sand in the body
sand behind the seat
sand on top of the guide
plug's end is gone
plug is just gone eaten off
cage has holes blown through it
body's thinned out on the outlet
body wall's a hundred and twenty thousandths there
supposed to be two hundred
body's eroded on the outlet
body needs a replacement
i'd say replace the valve
order a body
order a trim set for it
two bags of seals
don't order the actuator that's fine
actuator's in good shape keep it
wrote it up
we're through here
alright what's this paper say
m o v six
motor operated gate four inch
handwheel engages
stem's dry needs grease
greased the stem threads
packing leaks six drops per minute at one fifty
tightened the packing gland evenly
six drops went to one
good enough
bonnet leaking slightly at the back
bonnet bolts loose all of 'em
tightened eight bonnet bolts to fifty five
bonnet's dry now
shell's good at one fifty
seat can't isolate so can't check it
block valve won't close all the way
no lock on it either
alright that's not isolated
won't open this one today
didn't disassemble it
note need outage to isolate m o v six
finish that
back on the shop floor with a pilot valve
pilot for the p c v twenty
pilot's plugged at the orifice
orifice is point oh three one
cleaned out the orifice with a wire
pilot spring's weak
put a heavier spring in
pilot diaphragm's fine
pilot seat nicked
pilot o rings swollen three of them
pilot body's good
assembled it torque seven foot pounds
set point eighty five psi
crack at eighty three point five
full flow at ninety one
reset at eighty
repeatability's good plus or minus half a pound
no bubbles out of the vent
done with the pilot
mounted it back on the valve
quarter to six still here
last one's kilo victor one two
inch and a half water dump fails shut
got the work order says rebuild
first thing spring's supposed to be about four and seven eighths
this spring's four and three quarters
eighth of an inch short so it's took a set
spring's tired
it'll go another year so i'm not replacing the spring
both housings have rust inside
wire wheeled both housings
scraped the scale out of the lower housing
upper diaphragm's cracked where it bends
gonna replace the upper diaphragm
bottom diaphragm looks about new leave it be
diaphragm nut's on there so tight i had to cut it off
cut the diaphragm nut off
need one diaphragm nut
stem threads got boogered up on top
dressed the stem threads with a die
stem guide's got no scratches
stem guide holes are open
put the guide back
guide o ring's hard changed it
both backup rings are new out of the kit
seat's got a nick no bigger than a hair
i can lap that
lapped it with five hundred grit
plug got lapped at the same time
cage is okay no wear i can see
cage went through the parts washer
cage gasket replaced cage o ring replaced
seat gasket replaced that's all three
bonnet's going on
six bolts at twenty eight foot pounds
went to thirty by accident on one of 'em backed it off
diaphragm nut to thirty six
housing nuts eighty inch pounds
eighty inch pounds on all sixteen
travel indicator's going back on with the new gasket
indicator spring was good i reused it
packing nut and a half turn past snug
supply twenty five psi on the test stand
hear air at the breather
breather's blowing
diaphragm's pinched i bet
had to take the upper housing back off
diaphragm was wrinkled at one bolt
diaphragm not tore just wrinkled
smoothed it out and retightened
no air from the breather now
stroke's good nine sixteenths
seat's tight at a hundred thirty psi
body held two hundred and fifty
two fifty on the body for ten minutes no drop
packing's good
that wraps up kilo victor twelve
okay night shift tag is e v nine oh three
echo victor nine zero three
three quarter inch solenoid valve on the fuel gas
fuel gas is forty psi
there's a fire at the burner
small fire's out on its own
burner flame came back through
shut the fuel off
okay fire's out
coil smells burnt up
replaced the coil
plunger's sticking in the tube
plunger's got varnish on it
wiped the varnish off
spring under the plunger's okay
plunger seat's hard
seat rubber is hard and it's got a line in it
order a rebuild kit for the solenoid
i put a whole new solenoid in instead
cycled it ten times
clicks every time
no gas passing with it off
zero bubbles at forty pounds
left the old solenoid in the truck
needs to be sent back
what all do you have on the solenoid
alright next is tag l v two thousand six
two inch angle body
two thousand six not two hundred six
angle valve from the high pressure sep
choke style plug
plug's carbide and it's chipped
chip's maybe a sixteenth wide
seat's carbide and it's cracked
crack runs across the seat
seat insert's loose in the holder
holder's cut behind the insert
needs the whole seat assembly
plug's gotta be replaced too
stem came unscrewed from the plug
stem threads are pulled
replace stem plug and seat
got all three on the shelf
new stem in the plug pinned it
torqued the plug to the stem eighty foot pounds
seat holder in at three hundred foot pounds
had to use the multiplier on it
three hundred on the seat holder
bonnet seal ring's new
bonnet studs one ninety each
packing was the spring loaded kind
packing spring's broken
put a new packing spring in
packing set replaced too
packing box has no pitting
packing flange bolts ten foot pounds
full stroke is seven eighths
actuator opening pressure nineteen psi
opens all the way at thirty three
so bench set's nineteen to thirty three
hydro's at thirty seven fifty
three thousand seven hundred and fifty psi
pressure bled off thirty pounds while it settled
then held three thousand seven twenty for ten minutes
no water coming out anywhere
seat test with water two thousand pounds
no drips on the seat
air seat test ninety psi nothing in five minutes
good valve
paint it and ship it
finish up two thousand six
now the twin of it
two thousand seven same style
plug's not chipped on this one
stem's fine
packing's fine
dadgum bonnet's cracked though
bonnet crack runs from the stud hole in
bonnet's replaced
reused everything else
needed six new bonnet studs because those were rusty
torqued one ninety just like the other
hydro three thousand seven fifty no leaks
seat four drops a minute at two thousand pounds
hit it with the stroke twice
then it stopped
okay call that a pass
send that one
today's the vessel farm
six dumps all the same rebuild
first one's l c v six oh one alpha
ordinary one inch dump
kit's in it from two years ago
not too bad
o rings good
backup rings fine
packing okay
seat's just a little worn
plug's got no marks
replaced the packing anyway
did the seat gasket
bonnet bolts thirty foot pounds like before
dead tight at a hundred
six oh one bravo
this one's worse
diaphragm's gone hard
needs a diaphragm
don't have the diaphragm with me
put one diaphragm on the list
put it all back
leaks by three bubbles a minute at eighty
leave it till the diaphragm comes
next six oh one charlie
stroke's sluggish
supply's only fourteen
should be twenty
regulator's turned down
turned the regulator up to twenty
stroke's good now two seconds
nothing else wrong
six oh one delta
delta's leaking out the stem
packing's done for
repacked it three rings
torqued the packing nut to sixty inch pounds
still leaking one drop per minute
stem's scratched that's why
stem should be replaced
got no stem
order a stem for delta
now six oh one echo
echo's got a bolt missing
one housing bolt missing
put a bolt in
it's a little longer than the rest
torqued it to twelve
rest of it's fine
six oh one foxtrot
foxtrot's brand new
new valve put on last month
just checked the bolts
bolts are at thirty
okay what's left on all six
yeah delta's stem and bravo's diaphragm
done with the farm
driving to the next pad now
might rain
okay this is pad eleven
p v one one zero six on the meter run
four inch globe air to close
downstream's six eighty
upstream's seven ninety
hundred and ten pounds across it
it's sitting around sixty two percent
signal's ten point four
valve's noisy
noise sounds like cavitation
shut it in at two oh five
bled
took the bonnet bolts out they're rusty
studs are stretched
studs need replacing twelve of 'em
bonnet came off hard
bonnet gasket's a spiral wound and it's unwound
cage has pitting where the flow hits
pits in the cage about fifteen thou deep
fifteen thousandths deep on the pits
cage is eroded on the inlet side too
plug's pitted all around the skirt
plug seal's gone
piston ring on the plug is broke in two pieces
broken piston ring chewed up the cage
cage bore's scored
seat ring's cut on the edge
guide's good
gasket surface on the body's got a scratch across it
dressed the gasket face
body's wall's good two ninety on the thickness
point two nine oh on the wall
trim going to the shop
gotta send it to the shop
not replacing trim today
put the blind bonnet on
torqued the blind bonnet ninety five foot pounds
bring a trim kit and twelve studs
order two sets of trim
one for stock
close for now
shop day two on one one zero six
got the trim
seat's in cage's in
new plug with a new piston ring
end gap on the ring's twelve thousandths
stuck a new spiral wound in
bonnet studs ninety five then one thirty
one thirty final with the calibrated wrench
wrench cal's due in june
packing rings five of the graphite
packing follower torque seventeen foot pounds
stroked it dry
stroke's one and three quarters
three quarters in on the first half
stroke repeat's good
stem friction's about two pounds of signal
breakaway two point two running one point six
shell test two eighty
shell test at two hundred eighty five psi passed
seat leak fifty pounds upstream
flowmeter says seventy m l per minute
allowed is two hundred so it passes
we're done there
where'd i leave my wrench
okay photo
take one of the trim before i box it
morning again
shop's cold fifty five degrees in here
let me get p v four twenty in the vise
had a bad one come in
stem connector's split
split in the stem connector
stem connector bolts are gone two of 'em
linkage rod's bent pretty good
feedback arm's bent
positioner's case is cracked
positioner's gauges are all three bad
supply gauge reads ten with nothing on it
output gauge is stuck at twelve
signal gauge lens is broken
three gauges to replace
get three gauges zero to thirty
get me a stem connector too
straightened the linkage rod
replaced the feedback arm
patched the case with epoxy for now
actuator diaphragm has a tear at the bolt holes
new diaphragm in the actuator
diaphragm bolts seventeen foot pounds
spring rate's eighty pounds per inch
stem's bent just above the connector
straightened the stem no that didn't work
new stem from stock
plug screwed on pinned
plug's lightly scratched on the guide land
that's okay reuse it
seat's worn one spot
lap it
lapped the seat
seat gasket and bonnet gasket out of a kit
thirty nine foot pounds on the bonnet
packing adjusted to just snug
quarter turn on the packing after that
hundred and fifty on the body and no drips
seat tight at forty
bench set three to fifteen as left
positioner span's off
fifty percent signal gets me forty six percent
adjusted the span
fifty gets fifty
twenty five gets twenty five
seventy five gets seventy six
that's inside one percent
supply at thirty two signal at twelve
hold on phone's ringing
okay sorry about that
stroke six seconds up and five down
all good here
next is a regulator to rebuild
field regulator two inch low pressure
p c v forty one
upstream thirty psi downstream eight ounces
downstream's fourteen inches of water
fourteen inches water column
should be seven inches water
seven and a half inches at no flow
lockup is nine inches
body's fine
disc is cut
orifice is nicked
diaphragm's cracked
vent's screen is missing
vent hole's got a wasp nest
adjusting spring has rust
need a new disc
orifice swap
diaphragm changed
cleaned out the vent
spring cleaned up fine
reused spring
lower case bolts tightened to ten foot pounds
six inch pounds on the little screws
on the bench it's seven inches even
goes to eight and a quarter at lockup
locks up fine
no leak at the vent
held thirty psi on the inlet for fifteen minutes outlet didn't move
okay next
this belongs to the burner management
fuel gas shutoff one inch
tag is b v seventeen
gas train
proof of closure switch adjusted
seat test eighteen psi
zero bubbles in two minutes
body bolts checked at forty five
all of 'em were tight
what's the last reading
okay close it
i'm at the pump station now
p v nine nine one
relief valve actually
spring loaded relief
set at one hundred fifty psi
lifted at one sixty two
spring's stiff
seat's got rust on it
disc is scratched
lapped the disc and seat
spring adjusted down a turn
lifts at one fifty one
reseats one forty
pop test passes
no leak at ninety percent of set
one thirty five and not a bubble
seal wire's on
cap gasket's new
bonnet vent isn't plugged
blew out the vent
nozzle threads are good
flange gasket's gotta be replaced
got the flange gasket
flange bolts at eighty eight foot pounds
eight flange bolts
here's one the night crew started
they left it apart
no seat gasket in the box
seat gasket's missing
what'd they write down
read what they got
they said plug bad seat bad
i don't see anything wrong with the plug
plug looks fine to me
seat's got one pit
pit's about twenty thousandths
seat's leaking where the pit is
lap won't take it out
machined the seat ten thousandths
ten thou off the seat
still pitted
putting the valve on hold
not assembling it yet
kit's in the tub
tub's got the stem the cage and the guide
don't throw the cage out
okay listen
we're on the slug catcher
s v twelve oh six
hand me the flashlight
six inch dump severe
the actuator's been leaking since monday
air's coming out of the breather again
diaphragm again
third diaphragm this year
why's it tearing up
edge of the plate's sharp
there's a burr on the diaphragm plate
filed the burr off
polished the edge of the plate
new diaphragm twenty six bolts
twelve foot pounds all around and then fifteen
fifteen on the housing bolts final
twenty psi holds for five minutes
one pound lost in ten minutes that's fine
pulled the bonnet while i had it
plug has been cutting on one side
plug's cut pretty bad on the downstream side
cage port's eroded bigger
cage port's three quarters wide was five eighths
seat's fine just dirty
seat needs cleaning up
cleaned the seat with a rag
guide bushing's loose in the bonnet
bushing's worn thirty thou
thirty thousandths clearance in the bushing
new bushing pressed
swap the plug
plug's on
cage i'll order
order the cage and put this one back
spring needed a little oil nothing else
bonnet gasket again
hundred foot pounds on the studs
first twenty then sixty then the hundred
final check one hundred all around
stem moves okay by hand
opening pressure on the actuator is eleven psi
fully open twenty five psi
closes to zero in nine seconds
upstream one forty and no leakage
okay passed
who's got the soap
soap on the bonnet no
nothing on the flange
nothing at the packing
good shell
finish this
say what
yeah last one today
p v ninety six
pressure to open one inch
customer says it chatters
found seat disc loose on the stem
disc nut backed off
disc nut loose
tightened the disc nut to fifteen
put thread lock on it
disc is dinged up a bit
disc reused
spring's got a rub mark
spring's rubbing the housing
spring seat's crooked
spring button's out of line
lined the spring up
no chatter now
works good
stroke is okay
it holds ninety psi
close out
back at the house valve
g v ten twenty
gate valve four inch handwheel
stem won't turn
hit it with a wrench
stem's stuck in the packing
loosened the packing
freed it up
ran it open and closed
counted twenty two turns
stem's dry
body's full of water froze up
ice in the bottom of the body
thawed the body
drain plug's stuck
tried to drain it and couldn't
drain's plugged
rodded the drain
water ran out
no cracks in the body from the freeze
lucky
bonnet leak
two bolts loose on the bonnet
snugged the bolts forty
still seeps
gasket's shot
can't change it hot
gasket needs changed at the outage
leave the gasket for now
drip pan under it
note drip pan under g v ten twenty
seat passing some
closed it hard and it's still passing
put a chain on the handwheel
okay done with the gate
let me do the strainer
strainer basket's full of trash
pulled the basket
basket's torn on one side
screen's torn
replaced the screen
strainer gasket's new
strainer bolts at thirty foot pounds
pressure drop was eight psi
now it's one and a half psi
cleaned it with a hose
strainer's fine now
close it up
done done
i'm at the amine skid with p d v five one four
papa delta victor five fourteen
three inch ported cage signal closes it
fails open
lean amine's at one twenty two degrees
rich side runs a hundred and sixty fahrenheit
that's about fifty celsius on the lean
nameplate's corroded but i can read it
tag wire's broke
actuator housing has a dent in it
dent's on the outside top
somebody dropped a pipe on it
housing's dented but it's not cracked
checked it over for cracks no cracks
supply regulator reads twenty two
i set the supply to twenty psi
signal comes in at three point two with the controller at zero
at a hundred percent it's fourteen point nine
positioner's passing air out the relay
relay gasket blew out
relay gasket's torn
put a new gasket under the relay
pilot on the positioner is dirty
cleaned that with contact cleaner
positioner relay's quiet now
took it out of service at ten fifteen
flushed with water twenty minutes
body's drained and vented
gauge says zero bleeder's open and blowing nothing
safe to open
twelve studs on the bonnet
only had to cut one
replaced one stud and two nuts
seal weld's nicked no problem
trim slid out easy
amine foam all over the cage
washed the cage down
cage has no cracks no erosion
cage looks practically new
plug's balance seal is swollen
balance seal needs replaced
plug itself is in good condition
seat ring's stained but smooth
no scratch on the seat no pits
seat gasket's extruded to the inside
cage gasket's fine but i'm changing it
stem guide's got a crack
cracked guide i don't like that
guide has to come from the warehouse
waiting on the guide
they found a guide
guide's in twenty foot pounds on the set screw
stem o rings are mush
o rings all swelled up from the amine
need the right material on these o rings
note use e p d m in amine
four o rings in
two backup rings on each side of the o ring
packing was leaking amine at the gland
packing's gone to powder
new packing six rings and a lantern ring
lantern ring's corroded a touch but i reused it
packing box bore has a scratch up by the top
honed it out
gland bolts to twelve foot pounds
studs lubed and run in by hand
bonnet down
forty then seventy five then one ten on the bonnet studs
a hundred and ten foot pounds and a check pass
actuator back on coupling tight
coupling bolts twenty four
coupled it with a quarter inch of preload
seats at fourteen point six
no preload would've been fifteen two
stroke's a full inch and an eighth
eleven hundredths short at first
corrected with the stem adjustment
lock nuts on the stem are tight
open time three point five seconds
close time four and a quarter
leak check fifty pounds of nitrogen
got a hundred and thirty cc in a minute
one hundred thirty cc a minute at fifty psi
stroked twice
down to ninety cc a minute
that's a class four so it passes
shell with the amine pump on two ten
bonnet's dry at two hundred and ten pounds
packing's dry too
gave it back to operations
that's a wrap
hey did you get the fourteen point six
say it back
no i said fourteen point six
okay that's right
next thing is its spare in the crate
spare valve same body no tag
spare's never been opened
opened it up just to look
oil film on the trim still
trim's fine
gaskets flattened from sitting
kit number's on the box
just closed it and torqued it one ten
ran a leak test forty five psi nothing
set it back in the crate
done with the spare
one more before break
c v eighteen charlie the quench valve
inch and a quarter
trim size is small port
handwheel's stiff
handwheel pin's sheared
pin is broke
drove a new pin in the handwheel
jam nut on the handwheel missing
washer's missing too
put a nut and a washer on it
turned it all the way through fifteen turns
indicator's off by ten percent
indicator pointer loose
set the pointer at zero
pointer screw tightened
indicator reads right now
air set to twenty psi even
closed at three open at fifteen
positioner bypass is stuck
bypass won't move
bypass lever's seized
leaving the bypass
not touching it
order a bypass block
otherwise it's good
morning crew's got a leak at the wellhead
choke valve tag h c v three
hotel charlie victor three
two inch choke sandy service
tubing pressure twenty four hundred
line's at three eighty five
choke set at twenty two sixty fourths
can't get it below eighteen
needle's cut i bet
needle and seat are both cut
shut the wing and bled the choke
still got a hundred pounds on it
wing valve's passing
can't bleed it down
not going in till that wing's fixed
greased the wing valve and tried it again
wing's holding now
opened the needle valve nothing comes out
sand packed in the body
shoveled it out
body bore washed out on the far side
washout's about three eighths deep
body wall's thin
thickness three tenths of an inch
should be half an inch
body's no good anymore
seat is cracked in half
seat came out in two pieces
needle's tip's missing
nose of the needle broke off went down the line
stem's bent where the needle was
choke stem needs replaced
bonnet cap threads are galled
bonnet cap's galled on the body
o ring on the cap had a piece out of it
piece missing from the o ring
thumb screw's rounded
set screw's rounded off
new choke body
new choke needle and seat
seat torqued two fifty
bonnet cap hammered up
thread compound on the cap
packing's new
packing gland snug
indicator's set to zero on the seat
tested it twenty five hundred psi on the shell
no leaks twenty five hundred ten minutes
seat test two thousand pounds drip or two a minute
that's fine for a choke
put back on the well
opened to twelve sixty fourths
line's three ninety
order me a spare choke trim
and a pair of cap o rings
done with h c v three
next well over
p c v one well two
fuel regulator for the well
supply twenty psi to the pilots
regulator freezing up
frost on the bottom of it
hydrates in it
heated it with a hot rag
heat trace is off
heat trace breaker tripped
reset that
regulator's clear
pilot tubing's frozen
thawed out the pilot tubing
drip pot's full of water
drained the drip pot about a pint
high low pilot trips at forty low and three hundred high
low pilot trips at forty two
high pilot's at two ninety eight
good enough calibrated
sensing line's plugged
blew out the sensing line
hydraulic fluid low on the panel
filled it up a gallon and a half
panel pressure's three thousand
no leaks on the panel
fusible plug's intact
esd works
surface valve closed in seven seconds
fourteen seconds for the wing
subsurface not tested
done with well two
well three next
wing valve on well three
two and a sixteenth gate
five thousand pound
stem packing leaking grease
injected packing
stopped leaking
body bleed
body cavity held pressure twelve hundred for twenty minutes
gate's okay
grease fitting's broke
fitting snapped off in the body
fitting's got a broken tip
have to drill that
no pressure behind it i checked
drilled and put a new fitting in
grease fitting's holding
turns counted thirteen and a half
handwheel fine
bonnet nuts at six hundred ten
well three's done
rest of the list's tomorrow
what's still open on my list
bye for now stop listening
second shift picking up p v ten eleven
as found notes say diaphragm holed stem scored
confirm the diaphragm yeah it's holed
hole's about as big as a dime in the center
stem scored two inches up from the plug
yoke bushing's worn out
bushing's replaced
stem's in the lathe
turned it down five thousandths
five thou under now
new guide bored to match
clearance three and a half thousandths
that's alright
plug has a line across the face
plug's been hitting the seat crooked
plug and seat aren't lined up
stem's running true now
seat flipped once already so it's done
both faces used on the seat
need a seat new one not flipped
seat gasket went under it
seat torque two hundred and twenty
cage fits tight
cage got a nick putting it in
dressed that nick
bonnet on bonnet bolts
nine sixteenths bolts fifty foot pounds
i've got fifty foot pounds on all eight
packing's in
packing nut's at three turns
spring went in it's rated six to thirty
spring compressed an inch
actuator set pressure six
preload's six pounds
hold on
preload is seven
make it six and a half
okay preload six and a half psi
stem's coupled
breather screwed in
filter on the breather
supply filter's dirty
changed the supply filter
twenty psi supply after
stroke's one inch
stroke time's ten and a half
no leak off at packing
twenty eight psi on the actuator and hold
drops half a pound in fifteen minutes
body's at two seventy five test
held three minutes good
seat at sixty
seat test getting three drops a minute
seat test failed if you want the truth
lapped again
now zero drops
all good photo please
finish up ten eleven
let's go on with tag four four
p v forty four echo
this one's only the actuator leak
air leak at the top
leak's at the bolt by the port
bolt washers are missing
put washers under all of 'em
twenty four washers
torqued again eighteen foot pounds
no more air
actuator test passed twenty one psi
didn't touch the trim
it strokes
close that
then the tag says h v eight
old globe valve hand op
ran it out to see the stem
stem's rough
bonnet's sealed okay
body's crusty with salt
salt all over the body
washed the salt off
packing bone dry
oiled the stem
repacked with two rings
gland nut needs tightened tomorrow once it sets
handwheel nut's missing
ran a nut on
seat's good it shut off tight
downstream went to zero
stayed zero for twenty minutes
it's isolating good
lock and tag on it
who's next
this one's leaking oil all over the ground
spill under it
about five gallons of oil
boom's down
stuffing box blew out
packing blew clean out the top
packing nut's gone with it
packing nut must be in the ditch
found it
packing nut's threads are stripped
new packing nut
tightened that forty
box threads are okay
wrung it in by hand first
seat looks okay
stem okay
stroke okay
spill's cleaned up
call it in to environmental
note spill reported at nine twenty
valve's c v sixty one alpha
fcv on the amine flash
two inch
coil broke off
spring's shot
new spring
spring is seven and a sixteenth free
seven point oh six two five in inches
spring button's good
housing good
diaphragm good
just a spring
bench set five point five to fifteen
span two sixteenths off
tailgate meeting's over
first job is p v seven thirty three
tag's hard to read might be seven thirty eight
yeah it's seven thirty three
one inch and a half air to open normal service
work order says low supply and slow open
supply gauge says sixteen
they want thirty
regulator's knob's broke off
knob on the regulator's gone
turned it with pliers
supply's at thirty one now
open time went from nineteen seconds to six
six seconds open four closed
strainer upstream of the regulator
cleaned the strainer at least
needs a new strainer element
put a strainer element on the list
order a regulator knob
signal's good nine and a quarter at half
tubing's chafed against the rail
chafe on the tubing but no hole
cut the tubing and put a union in
patched tubing not replaced
tubing needs replaced later this week
positioner cover gasket's missing
cover gasket in
cover screws tight
gauge glass replaced on the positioner
level's fine
take a picture of the tubing
while i'm here shell check soap no bubbles
no bubbles on the bonnet no bubbles at the flange
two bubbles at the packing per minute
packing nut a sixth of a turn
didn't do the seat test
no stroke issue
alright the boss wants a price on p v eight hundred
what's wrong with it he asked
here's what i see
body fair bonnet fair
seat bad plug bad cage bad
stem fair guide bad
stem guide o ring hard
diaphragms both look fair
spring no good
housing upper fair lower rusted out
lower housing's rusted through
bolting rusty
packing worn
positioner okay
gauge okay
needs a kit a cage a plug a seat a guide a spring and a lower housing
plus sixteen bolts
might need body bolting
would cost more than a new one
declined the rebuild
not going to rebuild it
they want a new valve
order a new valve then
scrapped the old one
the next one's p v eight hundred one the replacement
new out of the box
box was beat up valve is fine
shipping plugs still in the threads
pulled the plugs
inlet threads clean
outlet threads have a chip
chip in the first thread on the outlet
nothing missing from the trim
bench set came six to thirty
needs to be three to fifteen
changed the spring
range spring's from the kit
checks out three to fifteen
set the stem connector twenty percent
fifty percent travel at nine psi signal
hundred percent travel at fifteen
travel's one and one eighth inches
shell at the factory so just gas test
gas test a hundred psi no drip
seat leakage two cc a minute
two cc at a hundred
that's inside spec
installed the valve at one thirty
flange bolts torqued one twenty foot pounds
gasket's new both sides
leak check at line pressure five hundred twenty
no leaks on the flanges
tubing connected
fittings tight no bubbles
signal connected
supply connected twenty psi
vent pointed down
okay this was my last but one
l v thirteen alpha reflux drum
valve's hunting and the level's all over
level controller displacer stuck
level controller gasket leaks
torque tube's bent
torque tube's dented on the side
controller needs zeroed
zero's at forty percent should be zero
zeroed the controller
span's good
displacer's got wax on it
wax knocked off
level's steady at fifty two percent
signal to the valve steady seven point eight
valve's not hunting now
looked at the valve anyway
valve stem's fine
stroke five eighths
fully strokes
positioner's got oil in it
oil in the positioner
drained the positioner
supply air's oily
check the compressor
note compressor is carrying over oil
where's my coffee
turned the light off
`;
