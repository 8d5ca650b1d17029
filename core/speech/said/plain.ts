/** Lines that people would say: the commonest wordings of everything. Invented; a line a phrase, numbers and tags as spoken. */
export const PLAIN = `
seat's worn on one side flipped it
replaced the stem o ring
torqued the bonnet bolts to twenty eight foot pounds
supply pressure twenty psi
put a new gasket in the bonnet
plug is washed out
got a little wear on the seat ring
cage looks good
stem's bent
upper diaphragm is torn
bottom diaphragm has a pinhole in it
packing was leaking
guide is scored pretty bad
it's worn out
had to replace the plug
seat and plug are both eroded
backup rings are extruded
cut o ring on the cage
both backup rings were cut so i put new ones in
no cracks in the body
the spring's broke
actuator spring has a crack in it
jam nut was loose
tightened the lock nut
snugged up the packing nut
breather was plugged with mud
cleaned out the vent plug
travel indicator is missing
indicator gasket's leaking
indicator spring is okay
threads are galled on the stem
inlet threads look fine
outlet threads are intact
bonnet threads cross threaded
stripped a bolt on the body
two studs were broken
replaced four bonnet bolts
oil is dirty
oil level's low
drained all the old oil out
filled it back up with clean oil
bent tubing on the supply side
fitting is leaking
put another fitting on
supply port's plugged with ice
there's ice on the pilot
pilot was froze up
regulator got stuck
gauge is busted
gauge reads forty five psi
strainer full of sand
pulled the strainer and cleaned it
solenoid isn't working needs a new one
float is full of holes
linkage is worn and loose
somebody took the handwheel off and lost it
adjusting screw's seized
lubed the adjusting screw
yoke is cracked on the left side
flange face is pitted
positioner's out of whack
zeroed and calibrated the positioner
controller is sticking
had to adjust the controller a little
inside of the body's eroded
sand cut seat
wire drawn on the plug
steam cut all the way around
seat area is badly corroded
body's rusted on the outside
housing has a dent in it
upper housing is chipped
lower housing looks fine
diaphragm plate is bent
diaphragm nut was loose tightened it
stem connector's cracked
put a new stem connector on
vent hole is plugged up
rodded out the vent hole
signal port is clean
blew out the signal line
seats shot
plug is junk threw it away
the kit's been replaced
put a new seal kit in it
seals are hard and brittle
all the seals look good
swollen o rings
o ring got flattened
stem guide o ring's pinched
replaced the o ring on the stem guide
stem guide is a bit worn
seat gasket was stuck to the body
scraped the old gasket off
cage gasket is torn
cage o ring has a nick in it
put a new cage gasket in
bonnet gasket blew out
bonnet gasket needs replacing
the bonnet was leaking a little
took the bonnet off
put the bonnet back on
tore the valve down
had to pull the actuator off
put it all back together
valve is f v one oh one
working on lima victor two zero four
this is p c v three twelve
next one is l c v two one three
p v one oh four bravo two inch air to open
two inch valve pressure to open
one inch fail closed
three inch pressure to close
it's a fail open valve
four inch severe service
sandy service on this one
it's in normal service
sour service three inch fail closed
dirty service air to close
holding at sixty psi
no leak at a hundred pounds
bubble tight
it's leaking by
seat is blowing by at fifty psi
won't hold pressure
dead tight at one fifty psi
strokes full
opens and closes fine
only goes half way
won't open
it's not stroking
full travel at twenty psi signal
took eight seconds to stroke
three bubbles a minute at fifty pounds
ten drops a minute at the packing
packing's leaking two drops a minute
packing test passed
shell test was good at two hundred psi
shell test failed
no leaks on the actuator
actuator's leaking air
air coming out the breather
actuator test is good
seat leak test passed
seat leak test failed at eighty psi
stroke test okay
did the stroke test
leak test on the seat no bubbles
upstream pressure one twenty
downstream pressure is forty
signal pressure's fifteen
signal's at nine psi
supply's thirty five
travel is seven eighths of an inch
travel's three quarters
spring length four and a half inches
temperature is a hundred and eighty degrees
sitting at fifty percent open
stem is point four nine eight inches
wear is about ten thousandths
got fifteen thou of clearance
smell gas
i'm smelling gas over here
gas alarm's going off
got h two s
there's still pressure on it
it's still holding pressure
bled it down but it's still got pressure
can't get it isolated
block valve is passing
there's no lock on it
spring is still loaded
careful the spring let go
cut my hand
somebody got hurt
got an oil spill
there's a fire
done with this one
close it out
okay that's it
okay all done
what all is left
what did i miss
read it back
say that again
what have you got
take a picture
stop listening for now
start listening
scratch that
no strike that
okay never mind that
forget that last one
correction thirty two foot pounds
no wait make that the lower one
order a new plug
need to bring a bonnet gasket
put a seat on the list
get me two o rings
note that the paint is coming off
the seat ring is washed out on both sides
seat's got a nick in the edge
flipped the seat and put it back
turned the seat over it was worn on the one side
seat is good on the other side
lapped the seat and plug
lapped it in and it looks better
there's a scratch across the seat face
seat's pitted a little on top
no wear on the seat
nothing wrong with the seat
leaving the seat for now
didn't replace the seat
reused the old seat
we're going to need a new seat
seat's wire drawn replaced it
seat is chipped on the bottom edge
somebody cross threaded the seat
seat won't come out
seat ring's stuck in the body
got the seat out finally
installed a new seat ring
seat has some pitting around the center
seat's cracked all around
ball is scratched up
the disc is eroded on the edge
disc looks brand new
plug tip is washed out real bad
plug's sand cut all the way around
plug has slight wear
plug's okay put it back in
swapped the plug out
plug and stem got replaced
plug and stem are fine
plug threads are stripped
new plug
new seat in
new stem and new packing
plug is galled to the cage
plug's stuck in the guide
couldn't get the plug out it's seized
worked the plug loose and cleaned it
cleaned the plug with a wire brush
plug could be reused
i think the plug is cracked
plug might be bent not sure
stem is scored where the packing rides
stem's a touch bent straightened it
stem is corroded
polished the stem with emery cloth
stem threads are rounded off
put the same stem back in
stem is straight and clean
pitting on the stem heavy
stem drags a little
greased the stem
stem's in good shape
need a new stem
stem broke off at the connector
changed out the stem
cage is plugged with sand
cage has paraffin in it
cleaned the cage
wire brushed the cage and blew it out
washed the cage out
cage is eroded on the inside
holes in the cage are washed out
cage is cracked at the bottom
no damage to the cage
cage is stuck in the body
pulled the cage and looked it over
cage needs to be replaced
we put a new cage in last time
went ahead and replaced the cage
cage is going back in
there's a lot of scale on the cage
guide's worn out of round
guide bushing is scored
put in a new guide
guide is galled
guide's got trash in it
cleaned up the guide and put it back
ports in the guide are plugged
blew out the holes in the guide
guide looks alright
comm hole's plugged on the nut
stem guide's worn replace it
stem guide needs a new o ring
stem guide is fine reuse it
pulled the stem guide
diaphragm's torn
the diaphragm is starting to crack
diaphragm is hard as a rock
diaphragm has a hole in it
diaphragm looks good no holes
replaced both diaphragms
top diaphragm is split on the edge
power diaphragm's punctured
balance diaphragm is swollen
bottom diaphragm's in good shape
put a new upper diaphragm in
lower diaphragm needs to be changed
upper and lower diaphragms both torn
top one's okay bottom one's torn
same on the lower one
other one too
ditto for the cage
same with the stem
diaphragm was pinched in the bolt circle
diaphragm's leaking around the bolts
not replacing the diaphragm today
left the old diaphragm in
diaphragm is weathered and brittle
diaphragm plate's corroded
cleaned the rust off the diaphragm plate
nothing wrong with the plate on the diaphragm
straightened the diaphragm plate
diaphragm nut is rounded off
diaphragm nut torqued to thirty foot pounds
put thread locker on the diaphragm nut
lock nut's been threadlocked
thread locker on the nut
spring is weak
spring's rusted but it works
spring is in two pieces
replaced the actuator spring
actuator spring's good
spring's gone flat
took a turn out of the spring
put a new spring in it
spring has a lot of corrosion on it
backed the spring all the way off
bonnet is fine
bonnet's corroded on the inside
bonnet bore is scored
crack in the bonnet
bonnet face is scratched
dressed the bonnet face
cleaned the gasket groove
groove is pitted
old gasket was stuck in the groove
gasket surface is intact
gasket's flattened out
gasket is torn on one side
changed all the gaskets
no gasket in it
there's a gasket missing
gasket was reused
bonnet gasket is hard
replaced the bonnet gasket and the o ring
made a new bonnet gasket
bonnet gasket's seeping
bonnet bolts are loose
retorqued the bonnet bolts forty five foot pounds
one bonnet bolt's missing
bonnet studs are rusted bad
bonnet bolts were just hand tight
body bolts are good
body bolting at sixty foot pounds
a couple of the body bolts are bent
replaced the nuts and bolts on the body
cap screws are stripped out
three cap screws broke off
bolts torqued to one oh five
torqued it to eighty five foot pounds
two ten inch pounds on the housing bolts
torque forty newton meters
tightened to twenty five foot pounds
nut is rounded
nut's seized on the stem
nut's been over tightened and it's cracked
put a new nut on
lock nut is missing
the lock nut was tight
packing is worn out
packing's dried out and hard
repacked the valve
new packing set
packing's been leaking for a while
packing is weeping a bit
tightened the packing it quit leaking
packing nut's loose
packing nut is stuck
packing nut tightened to ten foot pounds
put two rings of packing in it
packing's good no leaks
packing is extruding out the top
gave the packing nut a quarter turn
that packing's going to need replacing
stem seal's leaking
f v one oh one is a two inch air to open
now on p c v four fifteen
starting on t v seven oh two
moving to l v three thirty one alpha
next valve is foxtrot victor one two two
tag is papa charlie victor five zero six
okay this one's l c v eighty eight
on h v twenty one now
over at s d v nine oh one
tag number p v six eleven
el see vee three oh five
pee see vee one seventeen
valve tag is l v four hundred
that tag is f c v one two three charlie
valve's a one and a half inch
this one's a six inch
it's a half inch pressure closes
eight inch fail open in dirty service
two inch severe service fail closed
three quarter inch valve
it takes pressure to open
air to close two inch
this one fails open
actuator is pressure to close
fluid's sandy call it severe service
upstream one fifty psi downstream sixty
inlet pressure two hundred pounds
outlet pressure's twenty two psi
we've got eighty on the upstream
upstream's at one hundred and ten
sixty pounds upstream and no leak
put fifty psi on the seat and it held
seat holding at seventy five
seat is tight
seat test no bubbles
tested the seat at one hundred psi bubble tight
seat's passing a little gas
leaks through the seat at thirty psi
still leaking by some
leaking past the seat bad
valve won't shut off
it's holding good now
held for five minutes
held sixty psi for ten minutes no drop
it held good and tight
blowing by
passing a bunch
ten bubbles a minute
five bubbles a minute at one hundred psi
twenty c c a minute through the seat
leak rate's fifteen c c a minute
about six bubbles a minute
less than ten bubbles a minute at eighty pounds
two to three bubbles a minute
no bubbles at one twenty
zero bubbles
measured four milliliters a minute at fifty psi
seat leak test did it
valve strokes good
strokes smooth full open to full closed
stroked it three times
full stroke at eighteen psi
stroke it with twenty pounds on the signal
starts to open at six psi
full open at fifteen pounds
opens at three psi and it's wide open at fifteen
it opens about half way and quits
only half travel
won't close all the way
it hangs up half way
it's sticking when it strokes
stroke's jerky
it won't move
valve is stuck shut
it's stuck wide open
strokes in four seconds
six seconds open to close
closing time twelve seconds
travel's one and an eighth
full travel three quarters of an inch
got an inch and a half of travel
travel is nineteen millimeters
valve's at thirty percent
it's seventy five percent open
shell test's good no leaks
no leaks to the outside
body's leaking at the flange
shell tested at three hundred psi and it held
leaking between the body and the bonnet
body test passed at one fifty
external leak test good
soaped it all up no leaks
soaped the packing it's fine
failed the packing test
no leak at the packing
packing leaks on the packing test
stem's leaking at forty psi
packing held at one hundred
one drop a minute off the packing
actuator holds air
actuator won't hold air
no air leaks on the diaphragm housing
put twenty pounds on the actuator no leak
housing leak on the actuator test
air test on the actuator passed
diaphragm case leaking air on the left side
breather's blowing air
breather is missing
put a new breather on it
the breather's open and clean
mud daubers in the breather
unplugged the breather
breather was painted over
gasket on the indicator is torn
travel indicator's bent
travel indicator is broke replace it
put the travel indicator back on
straightened the indicator
indicator spring's weak
indicator gasket was replaced
indicator won't go up or down
vent's stopped up
vent hole was full of dirt cleaned it out
vent hole is clear
supply port is cracked
supply port threads are cross threaded
cleaned the supply port
signal port's leaking
signal port is full of ice
supply line's kinked
tubing is pinched
tubing was loose at the nut
replaced the tubing
ran new tubing to the positioner
tightened the fittings
two fittings were leaking tightened them
cracked fitting on the supply
fitting's cross threaded
tubing looks okay
tubing is corroded and needs changed
supply regulator set at thirty five psi
regulator's leaking out the vent
set the regulator to twenty
regulator isn't holding
diaphragm in the regulator tore
regulator froze up on us
gauge has gone bad
replaced the gauge on the supply
gauge glass is cracked
gauge is stuck at zero
gauge doesn't work we need a new one
strainer was plugged solid
strainer screen has a hole in it
cleaned the strainer and put it back
blew down the strainer
solenoid is burnt
the solenoid sticks every now and then
swapped out the solenoid
solenoid coil burnt up
solenoid works fine
trim's worn
trim is in good shape
trim is washed out replaced it all
new trim all the way around
put new trim in it
order trim for this one
the yoke got bent
bolts on the yoke were loose
tightened up the yoke
the yoke's in good shape
flange has a leak
flange bolts need to be tightened
flange face has a gouge in it
flange is rusted up
cleaned the flange faces
handwheel's broken
handwheel is stuck won't turn
put grease on the handwheel threads
adjusting screw is bent
adjusting screw's good and free
backed out the adjusting screw two turns
adjusting screw stripped
float's stuck
float is dented on one side
the float's got a hole and it's full of water
replaced the float and the linkage
cleaned paraffin off the float
linkage is out of alignment
linkage is bent straighten it
adjusted the linkage
linkage pin is missing
pilot's got dirt in it
pilot's plugged
had to take the pilot apart and clean it
the pilot's been rebuilt
pilot is leaking out the vent
new pilot kit
positioner's leaking air out the relay
positioner won't calibrate
swap the positioner
positioner's working fine
controller is plugged up
controller's putting out nine pounds
cleaned the controller and adjusted it
controller needs a new relay
oil looks clean
oil's low add some
topped off the oil
oil's got water in it
changed the oil
the oil was black
replaced it
just flip it
needs a new one
put a new one in
cleaned it up and put it back in
leaving it alone
leave it for now
going to have to change it
already changed that
that one's good
looks fine to me
there's nothing wrong with it
no issues there
it's just toast
threw it in the trash
tossed the old ones
pitched the old one
good to go back in
ran it again
kept the one that was in there
didn't change it
not going to replace it this time
it's probably cracked
maybe needs replacing
might want to replace that
i reckon it's worn
replaced them both
swapped both of them
put them back in
inspected it and it's okay
checked it over
looked at the seat it's fine
checked the plug no damage
checked the bonnet bolts all tight
inspected the body no cracks or pitting
had a look at the stem it's scratched
took the cage out and cleaned it
pulled the plug and it's pitted
removed the seat
removed the old packing
broke the bonnet loose
took the upper housing off
installed the lower diaphragm
installed two new backup rings
installed new cage gasket and seat gasket
put the plug back in with the same stem
actuator's back on
reinstalled the spring
put it together with new gaskets
vented the air off the actuator
vented it down to zero
bled off the pressure
opened the plug and drained the body
drained the water out
filled the housing with oil
greased the o rings
greased the threads and put the nut back
put some grease on the packing
put some anti seize on the bolts
lubed it up
repaired the cracked yoke
fixed the leak on the tubing
patched the float
weld repaired the body
dressed up the threads
chased the inlet threads they were galled
ran a tap through the outlet threads
filed the burr off the stem
sanded the rust off
ran a hone through the cage
cleaned and inspected all the parts
everything else looks good
all parts are okay
whole valve's in bad shape
valve is in good condition
valve's beat up
it's corroded real bad on the outside
whole thing's full of sand
body's full of paraffin
paraffin all in the cage
scale in the body
mud and trash in the body
body is cracked down by the inlet
got a pinhole in the body
body is washed out on the outlet side
body's okay
slight erosion in the body
some pitting in the seat area
seat area is scored on the bottom
seat area's clean
seat pocket's washed out
inlet threads are corroded
inlet threads are stripped out
inlet and outlet threads are good
outlet threads galled pretty good
outlet threads were cross threaded by somebody
threads intact on both ends
threads are damaged on the bonnet
threads are a little rough
rusty threads on the stem
housing's cracked
housing is rusted through
housing bolts torqued to two hundred inch pounds
upper housing's bent on the lip
the upper housing looks okay
lower housing has a hole in it
lower housing is pitted on the inside
replaced the upper housing
lower housing's dented in
cracks in both housings
actuator is seized up
actuator's sticking
actuator checks out good
the actuator got rebuilt
actuator has water in it
actuator is leaking around the stem
actuator is full of mud
actuator needs a new diaphragm
found some loose bolts on the actuator
seals are leaking
seals are worn out
replaced all the seals
seals got chewed up
new seals all the way through
lip seal's torn
o ring's cut
o ring was missing
o ring is nicked
o rings are swelled up
o ring's gone hard replace it
replaced three o rings
o ring rolled out of the groove
o ring is flat on one side
all the o rings look good
changed the o rings while i was in there
two o rings torn
o ring on the plug is shot
o ring has a piece chipped out of it
backup ring's broken
backup ring is missing
one backup ring was nicked
replaced the backup rings
backup rings look good
backup rings went back in
put a new backup ring on
cage o ring's extruded
cage o ring is flattened out
cage o ring okay
replaced cage o ring
cage gasket's stuck on the cage
cage gasket looks alright reused it
need a cage gasket
seat gasket's gone
seat gasket is eroded on one side
replaced the seat gasket
the seat gasket looks good
seat gasket crushed flat
stem guide o ring is worn
stem guide o ring has gone hard
stem guide o ring's cut up replace it
new o ring on the stem guide
lock nut needs to be tightened
lock nut's cracked
lock nut torqued to fifteen
jam nut's rusted on there
backed off the jam nut
stem connector is loose
stem connector's worn at the pin
nothing wrong with the stem connector
tightened the stem connector
stem connector bolts are stripped
kit needs to be ordered
replaced the whole kit
rebuild kit's in
bring a soft goods kit
order two gaskets and a stem
order an upper diaphragm
gotta order a new spring
bring four bonnet bolts next time
pick up some packing
pick up a gauge in town
get me a breather
get me another positioner
put a pilot kit on the list
add two diaphragms to the list
need to order a two inch cage
bring me a new lock nut
we need six cap screws
order one solenoid
order new tubing and fittings
bring a strainer screen
get a travel indicator ordered
note customer wants it back by friday
note that the block valve handle is broken
note the bypass is open
remark insulation's wet around the bonnet
for the record this valve was rebuilt last year
note needs paint
note that we left it in manual
remark no tag on the valve
for the record the old seat was the wrong size
note that the operator was here for the test
note check it again in six months
gas alarm went off just now
i can smell gas around the packing
smells like gas in here
h two s alarm
monitor's showing h two s
there's pressure trapped in the bonnet
still got pressure in the body
it's still got fifty pounds trapped on it
it won't bleed down all the way
bled it off and it built back up
can't isolate this valve
upstream block valve is leaking through
isolation valve won't close
nobody locked it out
no lock no tag on it
it's not isolated yet
spring's still got compression on it
spring shot out when i took the nut off
watch that spring it's loaded
pinched my finger
i hurt my hand
he smashed his thumb
hurt my back on that one
spilled oil on the ground
we've got a spill under the valve
condensate spill
fire on the location
it's on fire
caught fire
scratch that it's the stem
scratch that the cage is fine
strike that it's bent not broken
never mind
forget what i just said
correction that's the lower diaphragm
correction forty psi
correction it's a three inch
correction i already replaced it
no wait it's the plug
no wait that was the inlet side
make that two bolts
make that thirty five foot pounds
i mean the cage gasket
sorry that's the stem guide
sorry sixty psi
i mean one twenty upstream
seat's worn no make that pitted
the plug uh the seat is worn
plug no the stem is scored
torque is thirty no forty foot pounds
correction two fourteen
correction tag's l c v two one four
replaced the upper i mean the lower diaphragm
plug's cracked sorry chipped
we're done here
finished with this valve
that's all for this one
that'll do it
close this one out
i'm done with it
wrap this one up
what else do i need
tell me what's missing
anything i missed
what am i missing
what's left to do on this one
did i miss anything
read that back to me
read back what you've got
say it again please
can you repeat that
what do you have so far
get a picture of this
take a photo of that
snap a picture of the seat
picture please
quit listening for a minute
mute
unmute
listen up
go ahead and listen
okay start listening again
seat's in pretty good shape just a little wear on one side
the seat was washed out so i put a new one in
seat had a cut in it flipped it over and it's good
seat's scratched up but it'll go back in
seat and seat gasket both replaced
plug's worn on both sides and the stem is bent
cage has some erosion but we're going to reuse it
bonnet gasket was torn put a new one in
packing was leaking tightened it and it stopped
spring's broke in three pieces need to order one
upper diaphragm's torn lower one is okay
stem is scored replaced the stem and the packing
body's good no cracks no corrosion
bolts were rusted wire brushed them and put them back
ice had the breather plugged
vent plug is plugged with paint
lock nut was loose threadlocked it
guide's worn and the guide o ring is cut
the seat area's pitted and the body is eroded
two bolts stripped out of the bonnet replaced them
got everything apart and the trim is washed out
plug and seat both worn
seat and cage both look good
cage gasket and seat gasket are both shot
stem and guide are galled together
both diaphragms look good
both diaphragms are torn replaced both
both housings are okay
both o rings were flattened
seat cracked replace
stem scored needs replacing
packing hard changed it
spring was okay
diaphragm torn replaced
bonnet good
gaskets all new
plug eroded
breather clear
bolts all tight
the threads are all good
yoke's fine
worn seat
bent stem
torn diaphragm
broken spring
plugged vent
leaking packing
pitted flange
cracked housing
missing bolt
dirty oil
loose linkage
washed out plug and cage
scored stem and a bad packing
heavy corrosion on the bonnet studs
light scratches on the plug
minor pitting on the inlet flange
hairline crack in the housing
a few nicks on the seat edge
deep gouge in the cage
a lot of sand in the guide
trash under the seat
debris in the strainer
salt built up on the plug
hydrates in the pilot line
ice in the breather
scale on the stem
rust in the supply line
iron sulfide all over the cage
a piece of gasket stuck in the groove
sand in the packing
paraffin on the float
mud in the vent
carbon on the plug
it's wore out on one side
it's eat up with rust
it's washed out bad
it's all beat up
it's bent a little
she's stuck won't budge
it's froze solid
can't get it to turn
won't move at all
it drags going closed
it's a little loose
has a crack in it
there's a hole in it
it's got a split in it
split down the middle
that's ruined
stripped clean out
it's pinched on one side
it's galled up
it's hard and cracked
it's out of line
kinked right at the fitting
leaks
it isn't leaking
not leaking anymore
it's not cracked anywhere
no pitting
no corrosion on it at all
no scoring on the stem
no nicks or cuts in the o rings
no holes in the diaphragm
didn't see any cracks
doesn't look bent
didn't find any damage
no wear on it
no erosion on the trim
hole isn't plugged
nothing's broken on it
the surface was intact
threads look intact
bonnet bolts at thirty five
body bolts torqued to ninety foot pounds
torqued the packing nut to twelve foot pounds
tightened the bonnet bolts to forty
housing bolts tightened to fifteen foot pounds
seat torqued to one hundred and twenty
seat ring torque one fifty foot pounds
torque on the seat is two hundred foot pounds
stem nut torqued to twenty two
lock nut at eighteen foot pounds
diaphragm bolts a hundred and forty inch pounds
flange bolts torqued to one ten
put sixty five foot pounds on the flange bolts
cage torqued to seventy five foot pounds
all the bolts are at fifty foot pounds
torqued in a star pattern to twenty eight
torqued to ninety six inch pounds
torque's thirty three
fifty five newton meters on the body bolts
torqued everything
regulator's set at thirty
supply's at twenty five psi
supply gauge says thirty two pounds
supply pressure was low fifteen psi
twenty two psi on the supply
signal nine pounds
signal is twelve pounds
three to fifteen psi signal
six to thirty signal
signal pressure eighteen and a half
put fifteen pounds of signal on it
upstream pressure's two fifty
upstream nine hundred and fifty psi
upstream is nineteen fifty
downstream three hundred and ten pounds
downstream's eighty five psi
downstream pressure's holding at fifty five
pressure's one hundred psi
pressure is at twelve hundred
line pressure's four fifty
pressure two hundred kilopascals
seven bar on the inlet
pressure's five bar
ten inches of water on the pilot
twenty inches water column
set point's one oh five psi
set it at forty five pounds
temperature's ninety five degrees
line temp is one thirty
it's forty degrees celsius
two hundred and ten degrees fahrenheit at the body
temp's thirty two degrees
spring length's five and three eighths
spring is six and a quarter inches long
stem's eleven and a half inches long
stem diameter's three eighths
stem measured point three seven four
plug diameter one point two four nine
cage bore is two point oh oh five
seat bore measures one inch
guide clearance is point oh oh six
clearance point oh one five
stem runout is three thousandths
out of round about five thousandths
seat's worn twenty thousandths
gap is about thirty thou
pitting's point oh two oh deep
scratch is ten thou deep
gasket thickness one sixteenth
gasket's an eighth of an inch thick
stem is up five eighths of an inch
fifty millimeters of travel
travel's set at one and a half inches
travel only a quarter inch
travel is point seven five
travel adjusted to three quarters
got half an inch of travel out of it
forty percent open at nine pounds
hundred percent open
it's twenty five percent open right now
opened it to sixty percent
takes about ten seconds to close
took fifteen seconds to open
stroke time six seconds
held it for three minutes
two minute hold no leak
ten minutes at one fifty psi no drop
waited thirty seconds no bubbles
at least sixty psi on the supply
no more than five drops a minute
about forty pounds upstream
maximum signal's twenty psi
somewhere around eighty five psi
between twenty and twenty five foot pounds
fifty to sixty psi on the supply
thirty drops a minute out of the stem
leaking six drops a minute through the seat
one bubble a minute at two hundred psi
twelve bubbles a minute at sixty pounds
bubbles about eight a minute
forty c c a minute at one hundred
packing's making two bubbles a minute
got fifteen bubbles a minute off the seat
seat leak's a hundred milliliters a minute
no bubbles at all at one fifty
seat test at ninety psi is good
seat test at sixty failed
retested the seat it passed
lapped it and retested no leak at eighty
tested it at two seventy five psi on the shell
hydro tested the body four fifty psi good
shell leak at the bonnet gasket
shell was fine
seat test good stroke test good packing good
all tests passed
stroke and seat leak both passed
seat leak passed but the packing failed
actuator test failed diaphragm's leaking
stroke failed only got a half inch
strokes fine but it's leaking by
won't shut all the way leaking by at forty psi
valve closes tight
valve opens all the way
valve's stroking slow
it strokes but it's slow takes twenty seconds
valve's not opening
valve won't stroke
stroke test fail it's hanging up
bubble tight at two hundred psi upstream
shuts off tight at fifty pounds
no leak by
no leakage through the seat
it's holding
it won't hold any pressure
holds good at ninety psi
passed
cleaned the seat and retested holding at seventy
packing's tight at one twenty five
packing leaked when we bench tested it
packing leak test's good
no stem leak
stem's dry no leak
actuator's holding at thirty psi
soap tested the housing no leaks
diaphragm held air no problem
little bit of air leaking at the housing bolts
air leaking from the vent hole
leak around the travel indicator
leaking at the signal port fitting
leaking out the weep hole
pilot's venting all the time
regulator creeps up to forty
bonnet gasket is leaking at one hundred psi
leak at the inlet threads
leaks out the packing nut
leaking between the housings
lost the old one put a different one in
changed out the cage seat and plug
replaced the seat plug and stem
put new o rings and backup rings in the guide
new seat gasket and cage gasket
new stem new plug new seat
swapped the lower diaphragm and flipped the seat
cleaned the cage guide and plug
wire brushed the threads on the bonnet
blew the tubing out with air
steam cleaned the body
washed it out with solvent
soaked the cage overnight
scraped the paint off the vent
cleaned all the sand out of it
cleaned the old grease off the stem
rodded out the signal port
polished out the scratches
flipped the cage end for end
reversed the plug
didn't put any grease on it
haven't torqued the bolts yet
still need to put the handwheel back on
the pilot needs cleaning
needs to be lapped
needs adjusted
should be replaced next time
that spring needs to come out
gonna need to repair the yoke
will replace the gauge next trip
will need a new bonnet
have to change the packing
got to clean this strainer
we'll leave the stem in there
didn't bother with the guide it's fine
we aren't replacing the cage
leaving the old bolts in
keeping that plug
used the old gasket again
used the same bolts
put the old spring back
the old diaphragm's going back in
handwheel shaft is bent so we pulled it
put the breather back in
`;
