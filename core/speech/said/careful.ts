/** Lines that people would say: complete and formal, in a shop. Invented; a line a phrase, numbers and tags as spoken. */
export const CAREFUL = `
starting on p c v three oh six a three inch globe
this one is air to open so it fails closed
stem is scored on the packing side about halfway up
plug seating face has a light wire drawn line all the way around
i'll lap the plug and seat together before it goes back
seat ring threads are intact
cage is fouled with black scale on the inlet side
scale came off with a wire brush cage is clean now
going to need a new guide bushing
packing was hard and brittle had to dig it out
bonnet gasket flattened and replaced
bonnet studs torqued to forty two foot pounds in a cross pattern
bench set is six to thirty psi as found
adjusted the spring so it starts moving at six psi
full stroke measured at one and one eighth inches
seat leak test at fifty pounds no bubbles in a minute
shutdown valve two inch spring to close on this one
solenoid won't shift even with supply on it
pulled the solenoid and the exhaust port is plugged with mud dauber nest
order a solenoid for xv twelve please
actuator diaphragm has a tear near the bolt circle
replaced the actuator diaphragm with one from stock
housing bolts went back in hand tight then twenty two foot pounds
scratch that housing bolts were twenty five
upper housing has some rust on the inside nothing deep
wire brushed the upper housing and greased the flange face
actuator held twenty psi for five minutes with no drop
limit switch arm is bent and doesn't make at the closed end
straightened the arm and set the switch back where it was
travel indicator is missing altogether
put a travel indicator on the list
what's missing on this one
take a picture of the seat ring
next up papa charlie victor one one four
four inch flanged in sandy service
body is washed out just downstream of the seat
not sure but the body wall might be cracked near the drain boss
no cracks in the bonnet that i can find
seat is sand cut clean through on one side
seat ring is scrap and it's going in the bin
install a new seat ring and a new seat gasket
the old seat gasket came out in three pieces
cage gasket extruded into the bore
plug tip eroded heavily
plug and seat both have to be replaced as a set
cage windows are eroded on the bottom edge
last time we had this apart the cage was already starting to go
stem thread where it screws into the plug is galled
couldn't get the stem out of the plug it's seized solid
the pin sheared so i drilled it out
stem connector has two stripped screws
need a stem connector and four cap screws for it
yoke lock nut was loose i could turn it by hand
tightened the yoke nut to one hundred and ten foot pounds
positioner output is weak never gets past fifteen psi
positioner feedback arm has worn through at the pin hole
supply regulator set at thirty five psi and it creeps
regulator diaphragm has a pinhole
rebuilt the regulator with a kit
gauge on the regulator reads twenty with nothing on it
change that gauge
tubing from positioner to actuator is kinked behind the yoke
made up a new length of three eighths tubing
fitting on the signal port is cross threaded
no make that the supply port
soap test on the tubing connections no leaks
zero to full stroke took four seconds
bubble tight at one hundred psi
read that back to me
done with one one four
moving along to l v two oh two bravo
level control valve one inch body threaded ends
inlet threads are corroded but still serviceable
outlet threads look cross threaded for the first two turns
chased the outlet threads with a die
plug has a nick on the seating edge
dressed the nick out with a stone
flipped the seat it's good on the reverse side
lower diaphragm swollen and soft
upper one is alright no swelling at all
reusing the upper diaphragm
balance diaphragm replaced
diaphragm nut torqued to thirty foot pounds
o rings on the stem guide are flattened
both backup rings cut
replaced the pair of them
stem guide bore scored lightly lengthwise
breather is plugged with paint
poked the paint out and air moves freely
spring is broken bottom coil snapped right off
spring let go when i backed off the adjusting screw
nobody hurt but the adjusting screw flew across the bench
there's still pressure on this body i can hear it hissing
bled it down through the drain and gauge is at zero
i can smell gas here stop for a minute
gas alarm just went off stepping outside
small oil spill on the floor under the bench
spring's still loaded under the cap mind your hands
stripped down the actuator on the bench this morning
actuator spring shows pitting on the outside of the coils
free length of the spring is seven and five eighths
lower housing dented but not holed
lower housing bore scratched where the plate has been rubbing
diaphragm's fine
diaphragm gone hard round the edge i'd change it
it's been changed
two of the casing bolts rusted solid and snapped coming out
remaining casing bolts are in decent condition
replaced all twelve casing bolts and nuts
casing bolts to eighteen newton metres
correction eighteen foot pounds not newton metres
put twenty psi of air on the casing and soaped the joint
one leak at the casing flange by the nameplate
nipped up the bolts there and the leak stopped
vent hole is clear
air is coming out of the breather so the diaphragm must be leaking
f c v seven one nine
two inch body and the trim is hardened type
trim is in good nick considering
plug seating surface pitted all round
lapped the two together until the line was unbroken
blued it up and the contact ring is complete
cage bore scored on the left hand side
cage o ring nibbled away at one spot
guide bushings both worn top more than bottom
packing follower is bent slightly
packing nut rounded off by somebody with the wrong spanner
swap the packing nut for a new one
packing box bore is smooth
packing flange studs one missing one bent
gland packing weeping at seventy psi
tightened the gland a flat and a half
still weeping roughly two drops a minute past the packing
repacked with five rings and no leak now
bonnet face scratched across the gasket seat
scratch isn't deep enough to matter
bonnet to body joint tested at two hundred and eighty five psi dry
flange faces clean serrations sharp
positioner calibrated four points
three psi it lifts off and fifteen psi it's wide open
valve sticks at about sixty percent open
it now tracks signal all the way up and down
hysteresis seems less than last year
seat passing three bubbles a minute at fifty pounds
make that four bubbles
wrap this job up
now on p v one oh nine
handwheel is seized
freed off after half an hour
no key in the handwheel shaft
bring a key for the handwheel
stem runout checked on vee blocks thirty two thousandths
stem replaced and pinned to the plug
plug's guiding surface galled at the bottom
seat ring threads in the body are damaged
not replacing the body
body threads cleaned up with a tap
seat gasket groove corroded
spiral wound gasket crushed flat as a pancake
new spiral wound fitted under the seat
bonnet bolting eight studs all sound
wire wheeled the studs and put anti seize on them
bonnet torqued in three passes thirty sixty then ninety
final figure on the bonnet was ninety five foot pounds
supply pressure forty psi
signal at nine psi gives half travel
percent open at nine psi was forty eight
travel is one and a half inches end to end
measured fifteen c c a minute across the seat
note seat leakage within allowance per site procedure
note that customer supplied the trim
for the record body serial plate is painted over
ditto for the seat gasket
likewise on the lower guide
other bushing's the same
and the second one as well
the spring plate is okay too
didn't touch the positioner
opening up tango victor four four oh on the bench
that's a temperature valve air to close fails open
inch and a half body screwed bonnet
removed the actuator as an assembly
bonnet unscrewed with no trouble
paraffin packed solid in the cage ports
steamed the cage and it came up like new
plug is coated with wax but not marked underneath
the wax has plugged the balance hole in the plug
rodded out the balance hole
seat ring chipped on the outlet edge
little chip but right on the line of contact
seat ring renewed
put the old gasket back as i had none
gasket was stuck to the bonnet and came off in bits
stem has a few scratches nothing that catches a fingernail
spring came out rusted but full length
spring rate feels weak compared with the new one
spring length four point two five against four and a half new
wouldn't trust that spring replace it
spring adjuster threads are stripped
adjusting screw needs a new one as well
lock nut on the adjusting screw is missing
jam nut torqued to fifteen
diaphragm cracked through at the convolution you'd say torn
new diaphragm in with the smooth side down
washers under the diaphragm nut were corroded replaced those too
diaphragm nut was just finger tight when i opened it
tightened to twenty eight foot pounds with thread lock
oil in the gearbox is low
oil is milky dirty drained it
refilled with fresh oil to the plug
positioner housing full of water
dried out the positioner and the boards look fine
positioner gauge glass broken
get me two one and a half inch gauges
remade the ferrule and tested at thirty psi no leak
strainer ahead of the regulator is choked with rust
basket has a hole in it
one strainer basket to order
regulator sticking at low flow
regulator passed thirty two psi steady after cleaning
stroke test from closed to open smooth
opens fine but won't close the last eighth of an inch
found the stem connector set too long
backed the connector off one full turn
now closes home and seats
seat test again at forty psi bubble tight
that's this one finished
p c v five one zero alpha is next up
two by one reducing body
customer complaint is hunting and not holding pressure
sense line plugged with ice
thawed the sense line out
no ice in the body itself
pilot frozen solid
pilot spring kinked
pilot vent is clear now
main valve seat has a slight nick on one side
flip the seat disc over
flipped disc seats nicely
o ring under the seat cut when i pulled it
put a fresh o ring in with silicone grease
i think the stem o ring may be swollen as well
changed it anyway
cage no wear to speak of
guide's got a bit of side play maybe ten thou
guide left as it is
bonnet bolts two stretched and four fine
two bonnet bolts replaced
bonnet bolting pulled up to fifty five foot pounds
downstream pressure set at twenty five psi
inlet at one hundred and twenty
it's holding
no creep after fifteen minutes
shell test at four hundred and fifty psi passed
no visible leakage anywhere on the body
are we missing anything here
read back what you have got
that last one was wrong strike it
forget what i said about the guide
correction the bonnet was fifty not fifty five
i mean the seat not the plug
sorry that's the lower diaphragm
hang on the torque was in inch pounds
x v two two one charlie
on off service four inch body spring return
actuator mounting bolts loose all four
tightened the mounting bolts to sixty
yoke cracked at the clamp
yoke has to be changed can't weld that
stem clamp screws stripped out
stem itself bent right at the clamp
likely bent when the yoke let go
seat leaking by badly before we took it apart
leakage as found was over two hundred bubbles a minute
plug has washed out on the inlet side
plug washed down to the base metal
seat not much better eroded three quarters of the way round
replace plug seat and stem together
cage has a burr on the top edge
burr filed off
went with a new cage gasket anyway
lower bushing galled onto the stem
pressed the bushing out and a new one in
packing rings hardened and shrunk
torqued the packing nuts to one hundred and twenty inch pounds
bonnet gasket pinched on the left
bonnet gasket torn taking it out so that's replaced
limit switch bracket rusted away
wiring gland on the switch is missing
note switch wiring left disconnected for the instrument tech
solenoid coil burnt
air supply to the solenoid fifty psi
solenoid exhaust leaking when energised
lapped the solenoid seat no good
solenoid has been binned
valve strokes open in three seconds and shuts in two
timed it again three point five seconds to open
full stroke fine no hang ups
seat test with air at eighty psi not a single bubble
actuator air test held for ten minutes at forty five psi
that'll do for two twenty one charlie
new job l c v eight eight
dump valve sour service one inch
wear the mask there's h two s with this one
fluid smells sour so i've opened the doors
isolated and bled but it's holding fifteen pounds
cracked the union and it's still got pressure behind it
pressure gone now
float arm bent
new float wanted
linkage pins replaced with stainless ones
stem sticking in the guide sand in there
flushed the sand out of the guide
plug stuck on the stem
freed the plug with a tap of the mallet
seat pitted badly can't be saved
put in a new seat and torqued it to thirty five foot pounds
body cavity full of sand and scale
washed it out with the hose
body corroded in the bowl maybe a sixteenth deep
bonnet cap screws rounded off
drilled out two cap screws and replaced the lot
bonnet o ring extruded through the gap
flattened too by the look of it
new o ring on the bonnet and both backup rings renewed
pinhole in the top housing near the vent
housing to be replaced
put an upper housing on the parts list
bottom housing is fine
diaphragm has small blisters swollen in patches
no holes in it
discarded the diaphragm regardless
replaced it with the thicker type
trying it at twenty pounds signal
strokes but slowly took twelve seconds
greased the stem and got it down to five
checked with air on the inlet at ninety psi and it weeps
two drops a minute
now one drop a minute after seating it hard
call that a pass i'm happy with it
finished with eight eight
beginning teardown of foxtrot victor six oh five
three inch control valve pressure to open fail closed type
as found stroke was only half travel
as found torque on the bonnet nuts was about thirty
packing gland had no adjustment left in it
actuator removed and set aside
spring still under compression so i'm backing the nuts off evenly
long bolts first so the spring unloads safely
spring unloaded
two springs in this one inner and outer
inner spring broken at the bottom turn
order one inner spring and a spring seat
diaphragm shows a crease mark but it's not cracked
old diaphragm kept as a spare and a new one put in
diaphragm plate corroded underneath
plate edges smooth to the touch
actuator stem nicked by pliers
dressed the nick down with a fine stone
stem seal in the actuator leaking air
bottom casing drain hole was blocked
casing halves bolted up at fifteen foot pounds
did them again at twenty to be sure
body off the line and on its stand
upstream flange face has a gouge
bonnet nuts seized on three studs
split those nuts off
studs damaged in the process so eight new studs are in
bonnet bore has erosion around the bushing
bushing spins in its hole
bushing retained with a new pin
plug skirt scored one side
balance seal torn in one place
balance seal replaced and the groove is clean
fouling in the seal groove scraped it out
cage lifted out with a puller
cage holes plugged with pipe scale
soaked it in acid overnight
no cracking between the cage holes
seat ring lifted by hand so it had been loose
two wire cuts roughly a quarter inch wide each
machined the seat face and lapped it in
plug reground to match
seat gasket seat in the body corroded slightly
cleaned with a scraper not replaced
body drain plug seeping
drain plug resealed with tape
drain plug torqued to fifty
assembly started at eleven o'clock
cage in seat in gaskets new top and bottom
bonnet lowered on and nuts run down by hand
torqued up to one hundred and forty newton metres
made a second pass at one fifty
packing rings cut at forty five degrees and staggered
packing nut set at eighty inch pounds
stem moves freely by hand
no binding anywhere
travel set to one and a half
travel came out at one and seven sixteenths
bench range set five to twenty five
starts to move at five point two psi
fully open at twenty four psi
closed tight at zero signal
hydro test on the body three hundred psi ten minutes
no seepage at the bonnet joint
seat test water at fifty psi zero point two millilitres a minute
signed off six oh five
take a photo before it goes out
say again
okay start on h c v nine
hand controller on this one with a chain wheel
chain missing entirely
stem nut in the yoke stripped
bronze yoke bushing worn to nothing
yoke arms straight
thrust bearing seized rusted in place
bearing replaced and packed with grease
handwheel turns with one finger now
dug out four rings and a lantern ring
packing chamber scored lengthwise lightly
stem pitted right where the packing rides
stem has to go because the pitting would chew packing
plug is loose on the stem
plug nut missing its cotter pin
fit a cotter pin
the disc has worn a ridge
turned the ridge off in the lathe
seat matches the disc now after lapping
body good no erosion
lifted bonnet gasket whole and it's hard as a board
four bonnet studs corroded at the waist
replaced the four bad studs
put fifty foot pounds on them
correction that's forty five
seat tight at one hundred and fifty psi
shell tight as well
ready for paint
close this one please
now working tag romeo victor three three
relief type spring loaded with a bonnet cap
cap wire seal missing
spring cap still loaded so don't stand over it
screw backed out counting seven and a half turns
spring corroded but not weak
stem tip mushroomed badly i'd say damaged
disc has a chip out of the rim
disc insert hardened and flattened
replaced the insert
nozzle seat scratched
lapped the nozzle with nine hundred grit
guide clean no scoring
bellows torn open
bellows is needed
steam cleaned the bowl
set at one twenty five psi and pops at that
reseats at one hundred and ten
blowing by at one hundred so it won't hold
lapped it a second time
tight at one hundred now
seal it up
next it's juliet victor eleven
pressure to close diaphragm on top
steam cut across the seat
steam has cut the plug also
severe wear top to bottom
new trim set required
trim set ordered last week still waiting
packing burnt
packing was charred black all the way down
body temperature was still one hundred and sixty when it arrived
let it cool down to thirty celsius
bonnet bolting heat discoloured but measures right
stud threads galled two off
renewed those two studs and all nuts
torque wrench set to sixty eight
sixty eight foot pounds all round done
positioner beam loose
positioner pivot worn
positioner nozzle blocked with oil
cleaned the nozzle with a fine wire
positioner mounting bracket bent
positioner output at half signal nine psi
zero and span adjusted
no air leaks at the positioner
regulator bowl full of water
drained the bowl twice
regulator output twenty psi
three sixteenths copper replaced with quarter inch stainless
one elbow fitting cracked
tube nuts tightened a quarter turn past hand tight
reflared that end
starting valve g v forty
yoke nuts both loose
stem lock nut backed off two threads
thread lock on the nut this time
indicator gasket torn
indicator spring rusted weak
indicator cover fogged and scratched
replaced the whole indicator with a kit
going on to kilo victor two seventy
sorry tag is k v two seven one
this is the big one with the piston actuator
cylinder bore scored from top to about midway
piston o ring cut and the wear band's gone
wear band missing i should say
backup ring on the piston chipped
cylinder honed and it cleaned up
tie rod nuts cross threaded on one
chased that thread and the nut runs on now
cylinder end cap gasket leaking at eighty psi
fitted an o ring where the gasket was wrong
volume tank check valve sticking
tank still holding ninety psi after we shut the supply
vented the tank to atmosphere
trip valve diaphragm ruptured
trip valve kit needed on the bench by friday
plug seal ring swollen out of its groove
plug crown eroded from cavitation
cavitation pitting on the lower third of the cage
cage pitted but usable says the planner
seat ring has light pitting i'd leave it
actually lap it
lapped for twenty minutes
stem has wear at the bushing roughly five thousandths
bushing changed stem kept
gasket set replaced throughout
sixteen bonnet studs cleaned oiled and reused
tensioned the bonnet to three hundred and fifty foot pounds
bonnet nuts checked again at three fifty none moved
stroke open two point eight seconds on full supply
stroke closed three point one
supply at ninety five psi during that
travel four inches full
travel stop adjusted by an eighth
seat leakage forty millilitres a minute at fifty psi
that's all for the eight inch
it's a dead match for the one we did on monday
last time the plug was flipped on this one
last visit showed seat worn one side only
now it's worn on both sides
same fault as before packing gone dry
this diaphragm is the one i put in last spring and it's holding up
last time we torqued these at thirty eight
going with forty this time
stem was straightened back then and it's bent again
inlet threads eaten up with rust
outlet threads intact and clean
body bolting brought up to fifty six foot pounds
body gasket flattened to a thirty second
body gasket new
seals kit installed everything in the packet used
no spare o rings left over
seat o ring in two pieces
stem guide worn and its o ring hard
lower guide hole plugged with scale
cleared the hole with a drill bit
upper guide doesn't need anything
seat washed out
washed out seat went in the skip
plug has a slight groove
cage nothing wrong with it
upper diaphragm torn at the stem hole
lower diaphragm fine
replaced the upper and left the lower
diaphragm plate nicks on the edge probably cut the diaphragm
filed the plate edge round
diaphragm nut rounded so i put a new one on
top housing bolts to seventeen
bottom housing bolts to seventeen as well
breather missing
fitted a bug screen on the breather
supply port threads good
signal port stripped
put a thread insert in the signal port
comm hole in the guide is full of mud
mud cleared
vent hole painted over scraped it open
gauge replaced reads zero now
regulator adjusted to thirty
controller wouldn't track setpoint
controller nozzle fouled with oil
controller relay leaking steadily
need a relay kit for the controller
strainer removed and not refitted
strainer screen torn
fit strainer screen
pilot valve stem scored
pilot tubing loose at both ends
tightened the pilot tubing
linkage seized at the clevis
drove the clevis pin out and cleaned it
linkage moves freely now
float ball dented
dent's harmless leave it
adjusting screw galled in its bush
flange bolts not fitted
flange gasket stuck on the inlet flange
trim is eroded pretty well everywhere
trim discarded
actuator filthy outside
cleaned the actuator with degreaser
actuator leaking at the stem bushing
actuator rebuilt with a full kit
actuator leak check forty psi for three minutes passed
valve won't open at all
valve opens a quarter then hangs
not stroking on the signal though it does on supply
works by hand so the trouble is the positioner
after the positioner swap strokes full
strokes without any hesitation at fifteen psi
slow on the close but gets there
goes shut hard with a thump
throttles nicely in the middle
fifty percent open at twelve point five milliamps on the loop
fully closed at three pounds signal
opening pressure six and a half psi
closing at twenty six
twenty eight psi wide open
bench set came out seven to twenty nine so i gave the spring two turns
spring preloaded one and three eighths
spring compressed height three inches
coil count nine one coil touching
seat leak four bubbles a minute at forty five psi
no bubbles after two minutes at fifty
leaking by at one hundred psi can hear it
won't hold anything
seat test failed take it apart again
second seat test passed
third time lucky dead tight at sixty psi
slight leak at thirty pounds but tight at sixty
packing test good to three hundred
packing leaking ten drops a minute
packing tightened to stop it
packing drops down to nothing
bonnet joint bubbles at two hundred pounds
retorqued the bonnet and that cured it
shell test repeated at the same pressure passed
hydro at five hundred and fifty held five minutes
hydro failed at the body drain
the body is porous so condemn it
valve can't be repaired
quote a new valve
tag oscar victor three four one
oh no that's o v three four two
ball type two inch on off
ball scratched across the sealing band
stem seal cut on installation my fault
order thrust washers quantity two
actuator rack teeth chipped
pinion worn
end caps fine gaskets fine
springs six in this actuator two broken
two springs replaced four reused
spring return closes in one second
torque to break ball loose eighteen foot pounds
now twelve after lapping
bubble tight at one hundred and fifty both ways
body seal weeping
body joint nuts tightened to thirty five
done with the ball valve
right then whiskey victor one seventeen on the stand
two inch angle body dirty service
smells of gas when i cracked the bonnet
it's gone to two percent on the detector
gas has cleared so carrying on
outlet blinded so it's not isolated on that side
lock fitted and proved
still seven pounds trapped above the plug
spring jumped when the nut came off
diesel on the floor under the stand clean it up
rag caught fire from the heat gun put it out
hissing from the bonnet area
back on with it the bonnet's off
ice all over the bonnet when it came in
the stem has frozen to the packing
thawed with warm water
water in the actuator too
drained about a cupful out of the bottom housing
vent plug frozen shut
vent plug replaced with an elbow pointing down
seat nicked where somebody used a screwdriver
is the seat nicked or scratched call it nicked
plug damaged beat up all over
don't think the plug can be saved
a plug and a seat for the two inch angle
cage wasn't fitted on this model
guide kinda sloppy
guide bush renewed and reamed to size
stem guide o ring swollen to twice its size
stem guide o ring thrown out and replaced
spring clip missing off the plug stem
kinked spring wire on the clip
new clip fitted
bonnet threads galled
anti seize brushed on the bonnet threads
bonnet screwed home at two hundred foot pounds
replaced lock ring nut
packing spring weak
all six washers replaced
packing load set by the washers now
parts washed dried and laid out
inspected with dye nothing showing
dye check on the stem found one hairline crack by the threads
ordered no stem because we have one
stem swapped
o ring groove corroded lightly
o ring groove polished
fit the o ring dry i mean greased
backup ring put in backwards so redone
upper backup ring split
both o rings are flattened
all the seals came out hard
seals all renewed
body corrosion light inside the outlet
body wall thickness checked three eighths at the thinnest
body wall thins down to five sixteenths near the seat
seat pocket eroded
weld repair needed on the seat pocket
repaired at the weld shop and machined
both flanges rust pitted
flange studs eight short ones corroded
inlet flange gasket surface scratched slightly left side
outlet one not marked
the inlet strainer is fouled
no debris past the strainer
diaphragm regulator passing a bit of air
changed the regulator
pressure at the regulator twenty two
supply gauge reads eighty
travel down to five eighths because the plate fouls the housing
stem connector two threads engaged only
need at least six threads in the connector
stem connector reset eight threads
pointer straightened and set to zero
replaced the positioner relay
positioner cover gasket missing
positioner feedback spring stretched weak
ordered feedback springs
positioner in good working order
signal three psi zero percent
at six psi twenty five percent open
nine psi fifty two percent
twelve psi seventy six
fifteen psi one hundred percent open
coming back down it lags by four percent
i to p reads fifteen point one at full scale
i to p zero drifted
i to p filter choked
solenoid seal kit installed
solenoid leaking past the plunger
solenoid mounting loose
switch lever loose on its shaft
switch number two failed on test
limit switch housing flooded
limit switch dried out and working
switches set at five and ninety five percent
adjusted the close limit
open limit not tested
jack screw greased
jack pin missing
order me a jack pin
all tubing inspected no kinks
one fitting weeping at the tee
retaped the tee threads
quarter inch tubing pinched under the bracket
that pinched piece replaced
tubing clips loose three of them
clips all tightened
bolt up complete
final torque check bonnet sixty two
sixty two foot pounds every one of them
packing gland nuts eleven foot pounds
casing cap screws nine foot pounds
stem nut thirty three
mounting yoke bolts ninety
torques not recorded for the gland
skipped the torque on the housing wrench was out
torque wrench out of calibration note that
wrench swapped and bolts retorqued
ambient was nineteen celsius for the test
oil temperature one hundred and ten degrees
water test fluid at twenty one
pressure came up to two hundred and held
drop of three psi in five minutes on the shell
found the drop at the test plug not the valve
retest zero drop
seat leak thirty seconds nothing then one bubble
class four leakage so we allow some
sixteen c c a minute at fifty
eight c c a minute after second lapping
lapping with finer compound brought it to three
three bubbles each minute that's acceptable
leaked on the reverse side too
zero bubbles at seventy five psi over three minutes
it passes the seat test
stroke test one hundred percent and back ten times
no sticking on any of ten strokes
smooth as silk
jerky between thirty and forty percent
packing too tight backed off an eighth of a turn
screw sealed and no bubbles
spring range confirmed eleven to twenty three
that spring is wrong for this tag get the right one
one one seven complete
close that job and open n v nineteen echo
three quarter inch needle type
needle bent
seat damaged beyond saving
body and seat are one piece so the body goes
unmute
start listening again
photo of the spring
photograph the tag plate please
read me the torques
repeat that
give me a read back on the last job
finish it
that's us done on nineteen echo
no more on this one thanks
take one more photo of the cage
disregard the torque i gave you
take that back it was the inlet
amend the bonnet torque to fifty one
change the count to three bolts not two
the tag should be two one six not two six one
correction on the stem it's pitted not scored
scratch the bit about the spring
undo the last two
upper diaphragm uh lower diaphragm swollen
i shall be starting with sierra victor two oh seven which is a two inch globe in normal service
the bonnet bolting was done up to forty eight foot pounds and then gone round a second time
yoke is misaligned with the bonnet by roughly a sixteenth of an inch
stem connector looks misaligned and that's put a side load on the upper guide
limit switch cam misaligned so it never quite makes on the closed side
positioner linkage misaligned after the last installation i'd reckon
gasket for the seat ring was misaligned when it was fitted and it's pinched on one edge
lower diaphragm is holed near the centre probably from a burr on the plate
diaphragm has been punctured just inside the bolt circle about an eighth across
signal tubing has worn a hole through where it rubbed against the yoke
the float has a pinhole along the weld
threads on the stem are intact and the lock nut runs down freely
all eight bonnet studs have intact threads so they can be reused
seating surface on the plug is intact apart from some light fouling
cage o ring has extruded into the clearance above the cage
lower ring of packing extruded past the bushing
backup ring extruded slightly on the outlet side
the gauge has a dented case but it still reads correctly against the test gauge
upper housing is dented on the left side from being dropped i suspect
travel indicator dented and the plastic's gone yellow
solenoid coil is burnt out and the housing smells of it
wiring to the limit switch burnt at the terminal
packing nut has all six corners rounded off
cap screws on the stem connector are rounded and i had to use a chisel
adjusting screw head rounded but i can still get a spanner on it
regulator came in frozen up with ice around the bonnet
supply line frozen at the drip leg
the gear oil is low by about half a pint
oil's dirty with brass flakes in it
topped the oil up to the mark
seat o ring has hardened and lost all of its stretch
bonnet gasket hardened and bonded itself to the body face
diaphragm's gone brittle and the cloth is showing through
cage is fouled with salt on the outside but the bore is clean
positioner filter fouled with oily sludge from the supply
the guide bushing is fouled with dried grease
found debris under the seat ring some weld slag and a bit of sand
plug stem threads cross threaded when somebody forced it into the connector
bonnet threads in the body are cross threaded at the start
supply fitting stripped and it spins in the port without tightening
one stud hole in the body has stripped threads the other seven are intact
the indicator spring is kinked in the middle and won't return
tubing between the regulator and the positioner is kinked behind the bracket
bonnet o ring was pinched when it went together last time and it's cut halfway through
diaphragm pinched between the casing flanges on the right hand side
seat ring has a chip out of the sealing edge no bigger than a match head
hard facing on the plug is chipped in two places
there's a hairline crack running from the bolt hole in the upper housing
can't see any cracks in the yoke though i've cleaned it and looked twice
bonnet isn't cracked it was only a casting mark
nothing scored in the packing box it's a lovely finish
no pitting on the stem this time which makes a change
the spring isn't broken and it isn't weak so it can go back
no corrosion under the diaphragm plate to report
there was no wear in the lower guide that i could measure
o rings weren't swollen but i have replaced them as a matter of course
the plug has not been replaced as we're short of stock
i did not replace the stem because the runout is under five thousandths
we haven't touched the trim it's staying as it is
customer asked us not to change the packing so the old set is back in
the seat ring will have to be replaced once the new one arrives
stem needs straightening before it can be put back
somebody's going to have to lap this seat again it's still showing a break in the line
would you put down two backup rings and one cage gasket to order
we'll be wanting a full soft goods kit for the four inch
please add an upper guide bushing and a packing set to the order
bring over a fifteen pound gauge and some quarter inch fittings
pick up eight bonnet nuts five eighths while you're at the stores
plug and seat both wire drawn on the same quarter
stem and guide are both galled and had to be pressed apart
the springs are corroded and the spring seats are worn through the plating
both housings are rusted on the outside and sound on the inside
cage and plug are fine and the seat is only slightly worn
bonnet gasket and seat gasket replaced and the cage gasket reused
cleaned the body and the bonnet and blew out the vent hole
greased the adjusting screw and ran the lock nut down onto it
having lapped the plug to the seat i checked with blue and there's contact right the way round
seat ring torqued into the body at one hundred and sixty five foot pounds
i've torqued the packing flange nuts to thirteen foot pounds each
put seventy two foot pounds on the body bolting
casing bolts taken to twenty four newton metres in a star pattern
diaphragm nut is at thirty six and the plate isn't turning
the lock nut on the stem connector was tightened to twenty seven
actuator supply is regulated to thirty eight psi for the stroke test
with the signal at twelve psi the valve sits at seventy four percent
it begins to lift at six point four psi and is fully open at thirty psi
bench set as received was eight to thirty four which is too high
after two turns off the adjuster the bench set reads six to thirty on the nose
travel measured with the dial gauge is one point one two inches
stroke is seven eighths and the plate calls for seven eighths
took nine seconds to open on a full signal and seven to close
with forty five psi under the plug there's not a bubble in three minutes
at fifty psi upstream it's passing eleven bubbles a minute
leakage came to zero point four millilitres a minute measured in the tube
raised the inlet to one hundred and twenty psi and it was still dead tight
it's leaking past the seat at anything under thirty five psi
held the shell at seven hundred and fifty psi for a full ten minutes no loss
body test at twenty bar with no sign of leakage at the bonnet
weep at the bonnet joint under test so i've called it a fail
packing is tight at one hundred and eighty psi with the stem cycling
there are five drops a minute coming off the packing at full pressure
actuator casing holds fifty psi and the soap shows nothing
losing air round the diaphragm casing at eighteen psi the joint needs doing again
valve strokes fully but there's a slight judder near the top
it refuses to come off the seat until the signal's at ten psi
it only travels five eighths on a full signal so the stroke's failed
strokes open and closed five times without sticking
be careful there is still pressure in the body and the drain's plugged
main spring has not been released yet so nobody undo those nuts
downstream isolation valve is letting by and i can't get it to hold
getting a whiff of gas near the vent so everyone stand back
supposed to be bled down but the gauge says twenty five pounds
one of the lads has pinched his hand between the casing halves
hydraulic oil has gone all over the floor by the test stand
the h two s monitor is sounding
scratch that the upper guide is fine it's the lower one that's worn
no make that sixty five foot pounds on the bonnet
correction the diaphragm is torn not just creased
i beg your pardon it's the cage gasket that was crushed
sorry i mean fifteen psi at full open not fifty
strike that last reading the gauge hadn't settled
let me correct that travel is one and a quarter
forget the last one i was looking at the wrong stem
no not replaced lapped
the same goes for the outlet side
lower diaphragm just the same as the upper
same condition on the other bushing and it's had the same treatment
and the cage gasket likewise flattened
exactly the same on the second positioner gauge
as with the inlet flange the outlet is lightly pitted
compared with last time the seat wear is about double
when we had this in last october the stem was already scored
the bench set was six to thirty last time and it hasn't drifted
previous report says the cage was replaced but it looks original to me
it's the third time this valve has come in with a torn diaphragm
seat's no worse than it was a year ago
could you tell me what's still missing for this valve
go ahead and read that last part back please
take a picture of the crack in the yoke
would you photograph the plug and the seat side by side
that completes the work on this valve so close it out
note that the tag plate is hanging by one rivet
note the stem was supplied a quarter inch longer than the original
note that the valve was received without its gauge or tubing
for the record the test gauge was checked this morning
make a note the customer wants the old parts returned
remark bonnet studs are a non standard length
moving on now to quebec victor five two two which is air to close
this next one's a p d v four oh one alpha three inch severe service
i've got tag h v one thousand and six on the bench now
we're doing lima victor eight one three and it fails open on loss of air
next valve is x c v three nineteen two and a half inch
job is f v six six with the actuator already off
body is eroded around the outlet bore but there's still plenty of metal left
steam has cut a channel across the lower seat gasket face
seat ring is corroded at the threads and took some shifting
the actuator spring has gone weak by nearly half an inch in free length
packing is leaking on the left side of the gland where the follower's cocked
i rather think the bushing is worn but i'll mike it to be sure
stem might be bent i'll put it between centres and see
plug could be cracked under the hard facing it rang dull when i tapped it
not certain but the solenoid may be sticking when it's cold
there's a touch of rust in the actuator casing nothing to worry about
spring is in very good condition no marks and no set
yoke clamp is broken on one lug so it has been condemned
positioner spool is sticking slightly so i washed it out with solvent
regulator is plugged on the inlet screen with pipe dope
valve plug is seized in the cage and we're using the press to get it out
three of the bonnet studs were loose enough to turn by hand
handwheel is stiff but it turns and the threads want a bit of grease
lantern ring is broken into two pieces and the packing below it has gone to powder
`;
