/** Lines that people would say, quantity by quantity and test by test, and the talk around a job. Invented; a line a phrase, numbers and tags as spoken. */
export const READINGS_IN_TURN = `
bonnet bolts torqued to twenty eight foot pounds
torqued the body bolts to forty five
took the packing nut up to fifteen inch pounds
lock nut is at about sixty foot pounds
diaphragm nut got thirty five foot pounds on it
seat torqued to a hundred and five foot pounds
bonnet bolting came up to eighty newton meters
all eight studs at fifty five foot pounds
i went to forty foot pounds on the bonnet
between forty and forty five foot pounds on the body bolting
at least twenty five foot pounds on every one of them
no more than ten inch pounds on the gland
seat ring torque one twenty
final torque on the cap screws was thirty two foot pounds
had to go to seventy foot pounds to get it to seal
first pass twenty then forty then the full sixty
put ninety inch pounds on the indicator gasket screws
the jam nut took twelve foot pounds
torque on the flange bolts two hundred and ten foot pounds
one thirty five on the seat with the long wrench
bolts checked at twenty eight and they haven't moved
torque's twenty two and a half newton meters
tightened the bonnet bolts to fifty pounds
tightened up the packing nut to about eight foot pounds
stem connector snugged to eighteen foot pounds
yoke nut was only at ten foot pounds
broke loose at around ninety foot pounds
it took a hundred and fifty foot pounds to crack that seat loose
upper housing bolts torqued thirty foot pounds in a star pattern
lower housing done to thirty as well
re torqued everything to forty eight
torqued them to spec twenty eight foot pounds
cap screws are torqued fifteen to eighteen foot pounds
somewhere around sixty foot pounds on the body bolts
didn't go over thirty five foot pounds on that nut
minimum of forty newton meters on the bolting
packing nut torque sixty five inch pounds
six bolts at twenty five foot pounds each
torque wrench clicked at forty two
the solenoid nut only gets twenty inch pounds
body bolts one eighty foot pounds
torqued that seat ring to two hundred foot pounds
packing studs eleven foot pounds both sides
set the wrench at seventy five and went around twice
half inch bolts so i gave them fifty foot pounds
three quarter studs at one sixty foot pounds lubed
torque came out a little low at thirty three foot pounds
diaphragm plate nut went to nineteen newton meters
handwheel nut is good at fourteen foot pounds
finished up at a hundred and ten foot pounds
supply pressure is thirty five psi
got thirty psi on the supply
supply's reading twenty pounds
supply regulator set at twenty two psi
air supply is a hundred psi at the header
instrument gas coming in at thirty pounds
only eighteen psi supply getting to the positioner
supply gauge shows about thirty three
set the regulator for twenty five psi
regulator output is sitting at twenty psi
bumped the supply up to forty pounds
dropped the supply back to thirty
supply drops to fifteen when it strokes
supply pressure at least twenty psi the whole time
supply no more than fifty psi
air's coming in at six bar
two bar on the supply side
one point four bar supply
regulator creeping up past forty psi
house air is ninety five pounds
gas supply was down to twelve psi when i got here
turned the supply down from forty to thirty psi
supply holding steady at thirty five
regulator won't go over fifteen pounds
i've got sixty psi of instrument air here
signal is at twelve psi
nine psi signal gives me half open
three to fifteen psi signal
signal range is six to thirty psi
putting fifteen pounds of signal on it
signal at three psi and it's shut
it starts to move at four and a half psi
wide open at fourteen psi signal
fully shut at thirty pounds on the signal
signal pressure's reading eighteen
controller output is eleven psi
controller's putting out about nine pounds
output of the positioner twenty six psi
cracks open at six psi on the diaphragm
needs at least eight psi to come off the seat
lifts off at three point two psi
no signal from the controller it's at zero psi
point two bar on the signal port
one bar signal and it's all the way open
gave it twenty psi signal and it didn't do anything
signal hunting between ten and twelve psi
signal bouncing around from eight up to ten
signal steady at twelve and a quarter
thirty pounds on top of the diaphragm
actuator's got twenty eight psi on it
diaphragm pressure about eighteen pounds
twenty psi on the actuator and holding
put thirty five on the actuator
fifty psi max on this actuator
don't put more than sixty pounds on that diaphragm
bench set is six to fifteen psi
bench set three to thirteen
bench set came out at five to eleven and a half
spring range six to thirty psi
spring range three to fifteen on the nameplate
spring is an eight to fifteen pound spring
nameplate says seven to twenty four psi
bench set's off by two pounds
starts at six and finishes at twenty nine
set the bench set at ten psi
bench set was four and now it's six
spring's set to start at five and a half psi
adjusted it to start moving at seven pounds
adjusting screw backed off to get six psi at the start
spring range point two to one bar
nine to thirty three pound range on this one
line pressure is two fifty
line pressure's about three hundred psi right now
got eleven hundred pounds on the line
upstream pressure nineteen fifty
upstream is at one twenty
upstream gauge says four hundred and sixty psi
four hundred upstream and eighty down
inlet pressure is six hundred pounds
we've got seven hundred fifty psi on the inlet
upstream's running nine hundred to a thousand psi
upstream at least five hundred
no more than fourteen forty on the upstream side
twelve hundred and fifty pounds upstream
upstream swinging from two hundred to two sixty
inlet's at thirty two bar
downstream pressure is forty five psi
downstream's holding at sixty pounds
got zero on the downstream side
downstream reading a hundred and ten
outlet pressure is about seventy five
downstream crept up to ninety psi
outlet gauge shows three and a half pounds
downstream side bled down to nothing
eighty five psi downstream when it's flowing
separator pressure is one eighty
discharge pressure around a hundred and thirty psi
downstream climbing about five psi a minute
downstream at four bar and steady
twelve inches of water on the downstream side
vent line has six inches of water on it
tank side's only got seven inches of water on it
down to thirty psi on the low side
three thirty on the high side
set point's at one fifty psi
pilot's set for eighty pounds
controller set point moved to two twenty five
it's controlling at one oh five
pops at one twenty five and reseats at one ten
relief side set for three hundred pounds
differential's about thirty five psi
fifty pounds of drop across it
pressure's two hundred psi
gauge reads one seventy
gauge is showing eighteen hundred
about twenty five hundred pounds on that gauge
reading point five psi on the gauge
pressure is up around three thousand
ten bar on the test pump
test pressure is four fifty
test pressure fourteen hundred and forty psi
hydro pressure was twenty two fifty
pumped it up to three hundred pounds
bumped the test up to six hundred psi
took it to one and a half times so four fifty
testing at sixty psi air
put a hundred psi of nitrogen under the seat
fifty pounds of shop air on the inlet
test at eighty psi with water
pressured it up to two seventy five
low pressure test at forty psi
high pressure test at one thousand
brought it up slow to five hundred pounds
lost ten psi in five minutes
dropped from three hundred to two ninety in ten minutes
pressure fell off about two pounds in the first minute
held three hundred for five minutes
it held at sixty for two minutes
held pressure fifteen minutes no drop
holding a hundred and twenty psi
still at fifty after ten minutes
three bubbles a minute at fifty pounds
ten bubbles a minute at sixty psi
leaking about twenty bubbles a minute
seat leak was four bubbles per minute
getting one bubble every minute or so
no bubbles in five minutes
zero bubbles at fifty psi
a couple bubbles a minute at forty pounds
five or six bubbles a minute
eight to ten bubbles a minute through the seat
less than two bubbles a minute
no more than eleven bubbles a minute
at least thirty bubbles a minute too many to count
leak rate is twelve bubbles a minute
leak rate's fifteen cc a minute
measured thirty milliliters a minute at sixty psi
about forty five cc's a minute
point one five mils a minute
two and a half cc a minute at fifty psi
a hundred milliliters per minute past the seat
got three drops a minute on water
six drops per minute at three hundred psi
one drop a minute from the packing
packing's dripping ten drops a minute
two drops a minute out of the bonnet joint
stem leak about five drops a minute
packing bubbling at four a minute
it was twenty bubbles now it's down to two
leak went from fifteen drops a minute to none
counted seven bubbles in a minute
bubble test gave me nine a minute
leaked forty bubbles a minute at fifty psi before the rebuild
after lapping it's down to three bubbles a minute
seat leaks two hundred cc a minute
sixty bubbles a minute that's way too much
can't count the bubbles it's a steady stream
travel is one and a half inches
travel's three quarters of an inch
full travel one and an eighth
only getting half an inch of travel
travel indicator shows five eighths
stem moves about seven sixteenths
stroke measured at two inches even
travel one point one two five
nameplate says inch and a half travel
we're short a quarter inch on travel
got nineteen millimeters of travel
travel is thirty eight mil
twenty millimeter stroke
fifty millimeters of stem travel
travel checked at point seven five
it moves three eighths and stops
a good inch of travel on it
stem travels at least an inch and a quarter
travels no more than five eighths of an inch
travel between one and a half and one and five eighths
reset the travel to three quarter inch
travel stop set at an inch
took eight seconds to stroke
strokes in about four seconds
opens in three seconds closes in five
twelve seconds to go full open
stroke time was six and a half seconds
stroke time twenty two seconds
it took close to a minute to close
closing time fifteen seconds
slow it's thirty five seconds to stroke
two seconds open to close
opens in under ten seconds
takes at least half a minute to open
shuts in one point five seconds
eight to ten seconds each way
held it for ten minutes
let it sit fifteen minutes
soaked for half an hour
five minute hold
watched it for three minutes
ran the test for two minutes
thirty seconds on the clock
left it under pressure for twenty minutes
an hour under pressure and nothing
ninety seconds with no drop
gave it a full ten minutes
body temperature is one eighty
temperature's about two hundred degrees
line's running at one forty degrees fahrenheit
process temp is ninety five
ninety degrees celsius on the body
it's sixty c at the bonnet
skin temp reads two twelve
it's minus ten degrees on the line
twenty below zero degrees at the valve body
steam's at three sixty five degrees
oil temperature one fifty five
temp gun says a hundred and eighteen on the housing
body got up over two fifty degrees
between one sixty and one seventy five degrees
no more than four hundred degrees
inlet side was down to thirty four degrees
valve was hot about three hundred f
gas temp seventy two degrees
spring length is four and a half inches
spring measured six and a quarter free length
free length five and seven eighths
spring is a sixteenth short
stem diameter half inch
stem mikes at point four nine eight
stem's three quarter diameter
stem is point five oh one
plug measures two point two four five
seat bore is one and five eighths
seat bore mikes out at one point six three
guide i d is point seven five four
guide clearance is eight thousandths
eight thou clearance stem to guide
about fifteen thousandths of slop in the guide
clearance is point oh one two
got three to five thousandths on the guide
clearance no more than ten thou
at least six thousandths between the plug and the cage
cage bore worn twenty thousandths over
stem's bent about thirty thou
runout on the stem is four thousandths
stem run out is point oh oh three
took five thousandths off the seat
lapped about two thou off it
groove in the plug is a thirty second deep
pit in the seat area is forty thousandths deep
seat's cut about a sixteenth deep
scratch is maybe ten thousandths
gap's an eighth all the way around
gasket is a sixteenth thick
diaphragm's three sixteenths thick
gasket thickness is point one two five
packing box is an inch and a quarter deep
packing stack height two and three eighths
three sixteenths of thread showing above the lock nut
five eighths of adjusting screw showing
adjusting screw's sticking up an inch and a half
indicator is set a quarter inch low
stem's sticking out of the connector half an inch
flange gap is three millimeters
gap of point two millimeters between them
plug is fifty four point five mil across
o ring groove is three point six millimeters
stem's twelve point seven millimeters
wall's down to a quarter inch
body wall is point four five
wall thickness came out three eighths
port is one and a quarter
two and a half inch port in it
orifice is seven sixteenths
trim's five eighths
half inch trim in this one
three quarter trim
tubing is three eighths
quarter inch tubing on the signal line
face to face is fourteen and a half inches
bolt length three and a quarter
studs are four inches long
valve's fifty percent open
sitting at twenty five percent
it's about thirty percent open
stuck at sixty percent
ten percent open and hunting
indicator says eighty
running seventy to eighty percent open
at least ninety percent open
never gets over forty percent
it's wide open a hundred percent
opens to ninety five percent and quits
half open at nine psi so fifty percent
five percent off the seat
won't close past fifteen percent
positioner says forty two percent valve says thirty
at fifty percent signal it's at forty five percent travel
two bolts broken on the bonnet
four studs were loose
three nuts missing
one bolt's stripped out
replaced eight bolts
put in two new studs
replaced a couple of cap screws
swapped out both backup rings
six of the eight bolts were rusted
found a few loose nuts on the housing
needs two o rings
changed all three o rings
two of the springs are broken
five rings of packing in it
put six rings of packing back
pulled four rings and one was torn
replaced one gasket
ten bolts tightened
stroke test passed
stroke test's good
passed the stroke test no problem
strokes full
it strokes fine now
full travel open and closed
opens and closes fine
strokes smooth all the way
got full stroke on twenty psi
stroked it five times and it's good
failed the stroke it won't open
it won't stroke
not stroking at all
only getting half travel
only goes about half way
won't open past a third
won't close all the way
it opens but it won't shut
stroke's jerky but it gets there
hangs up about mid stroke
stroked full at thirty psi signal
stroke good six to thirty
stroked it from three to fifteen and it's smooth
stroke test at twenty psi passed
strokes full travel in six seconds
doesn't move with thirty pounds on it
nothing no movement on the stroke
valve moves fine by hand but not on air
stroked it with the handwheel okay
did the stroke test
doing a stroke test now
running the stroke check
ran a full stroke on it
haven't done the stroke yet
stroke's okay both ways
opened it up and closed it and it's working right
it's opening fully with fifteen psi
snaps open like it should
closes tight and opens full
seat leak test passed
seat test's good at fifty psi
no leak at sixty psi
holds pressure
it's holding
holding good at eighty pounds
bubble tight
bubble tight at fifty
it's dead tight
dead tight at a hundred psi
shuts off tight
shutting off one hundred percent
no leak by
not passing anything
seat's holding with sixty upstream
nothing coming through on the downstream side
tight shut off at one fifty psi
seat leak test failed ten bubbles a minute
failed the seat test
leaking by
still leaking by a little
it's leaking by at forty psi
blowing by bad
it's blowing right through
passing
it's passing gas with the valve closed
won't hold
it won't hold sixty pounds
won't hold any pressure at all
can't get it to shut off
doesn't seal
leaks through the seat at fifty psi
i can hear it passing
still passing after we cleaned it
seat leak passed after lapping
seat leak test at sixty psi for two minutes no bubbles
zero leakage at four hundred
leak test came out good
leak test no good
leak tested it at fifty and it passed
tested the seat at sixty psi air got three bubbles a minute
seat leak six bubbles a minute at fifty psi
did a seat leak test at forty five pounds
running the seat leak now
seat test next
ran the seat leak test with nitrogen
leakage is within limits
that's over the limit on seat leak
it held for a minute then started leaking by
seat's tight one way and leaks the other
shell test good at three hundred psi held five minutes
the shell test went fine it passed
shell test at four fifty no leaks
shell test failed at the bonnet joint
did the shell test at six hundred psi
body test held fifteen minutes at twenty two fifty
body's tight no leaks outside
no external leaks at three hundred
hydro passed at fourteen fifty
hydro test failed it's leaking at the body joint
shell's good ten minutes at four hundred and twenty five
soaped the whole body and no bubbles
sprayed it all down with soap and it's dry
shell test two and a half minutes at fifteen bar
body joint leaked at two hundred psi on the shell test
no leaks to the outside
held shell pressure with no drop
shell test seven fifty psi three minutes pass
tried the shell test again and it passed
shell failed got a drip at the bottom
packing passed its test
packing's tight no leak at the stem
packing test good at one hundred psi
packing test failed it's bubbling
no leak on the packing at sixty pounds
soaped the stem and there's nothing
stem leak test no bubbles
packing leaks at three hundred on the test
packing held at two fifty
packing leak test failed two drops a minute
checked the packing under pressure and it's dry
packing's weeping at four hundred psi
packing test five minutes no leak
did the packing test with soap
stem's bubbling a little on test
quit leaking when i snugged the packing nut
tested the actuator and that passed
actuator holds air
actuator held thirty five psi for five minutes
no leak on the actuator at forty psi
actuator test failed air coming out the vent
diaphragm won't hold air
actuator bleeds down in about a minute
leaks air around the housing at twenty psi
soaped the housing bolts no leaks
actuator lost five psi in two minutes
diaphragm leak test good
air leak on the actuator failed the test
actuator's tight at thirty pounds
put thirty psi on the diaphragm and it held
lost all the air out of the top housing
did the actuator leak test held ten minutes at twenty five psi
all tests passed
everything passed
passed all the tests except the packing
seat and shell both passed
stroke good seat good shell good
passed seat leak failed packing
stroke passes but it's still leaking by
shell's fine but the seat won't hold
failed the first time passed the second
retested and it passed
re ran the seat leak after tightening and now it's tight
test again at lower pressure
haven't tested it yet
no test done on this one
bench tested okay
field tested with line pressure good
leak check on the tubing good
checked all the fittings with soap no leaks
this is valve f v one oh one
valve f v one oh two
on lima victor two zero four now
starting p v three one two
next one's t v four oh five
moving on to l c v two one three
opening up p c v eleven ten
i'm at f c v one one seven
we're on pee vee one oh four bravo
this one is papa victor six oh one
tag is foxtrot victor two two zero alpha
tag number l v three thirty one
tag reads x v five oh nine
s d v one zero one is next
starting work on e s d v two oh one
working on tango victor one nine
here's h v seven oh four
okay this is lima charlie victor nine one one
going to f v two fifteen
got b d v three oh three open here
p v twelve oh six alpha on the bench
pressure valve p v four four one
level valve l v one eighteen
the flow valve f v six twenty six
m o v one oh seven
temp valve tango victor three thirty bravo
back on p v one oh four
go back to l v two zero two
new valve tag f v eight oh eight
new job p c v five five zero
valve number two one three
okay next valve lima victor one one six
that's f v one twelve charlie
tag plate's gone but they call it p v nine oh one
says l c v four ten on the tag
tag's painted over i think it's p v one thirty two
unit two dump valve l v two twenty one
dump valve on the separator l c v one oh one
back pressure valve p c v three oh six
suction valve x v seven seventeen
ell vee six fifteen
two inch valve
it's a two inch pressure to open
one inch pressure to close
three inch fail closed
four inch fail open severe service
six inch valve air to open
eight inch air to close
inch and a half valve
one and a half inch fail closed
two and a half inch body
three quarter inch control valve
half inch air to open
ten inch ball valve
twelve inch butterfly
it's a four inch globe
two by one trim pressure opens
this one's a six inch
body's a three inch
the size is two inches
line size is four
size one inch
fail closed
it fails open
fails shut on loss of air
it's fail closed two inch
air to open valve
air opens it spring closes it
air closes it
pressure opens it
pressure to close on this one
spring to close
the spring's what opens it
loses air it goes closed
goes open when it loses signal
normally closed dump valve
it's set up pressure to open
they've got it flipped to pressure to close
f v one oh one two inch fail closed
l c v two one three three inch pressure to open
p v four oh four one inch air to close severe service
lima victor one zero eight two inch normal service
t v two thirty four inch fail open
papa charlie victor five one two a two inch in sandy service
f v six ten six inch air to open clean gas
normal service
this valve is severe service
it's in sandy service
dirty service on this one
sour service on the gas side
sour gas valve
lots of sand in this well
this one sees a lot of sand
clean service no sand
regular service nothing special
produced water service
high pressure gas
dump valve on the oil side
water dump
it's on steam
it's on hot oil
this one's on fuel gas
wet gas line
pretty corrosive service
it's on the inlet of the heater
pretty rough service on this valve
last serviced in march
last visit was six months ago
last time it was rebuilt was two years ago
we were here last october
it was done in twenty twenty four
last rebuild may of last year
nobody's touched it in five years
first time this one's been opened
last man in here replaced the seat
we changed the diaphragm last time
same trouble as last time
worn out again since last visit
it was lapped on the last job
put a kit in it three months ago
been in service eighteen months
last test was january tenth
last service date's on the tag june fourth
due for service this month
overdue by about a year
serial number four four one seven two
serial is six one nine zero three b
serial number's on the body
can't read the serial number
serial plate is missing
serial ends in two seven eight
serial number a one two three four five
s n eight oh five six six
nameplate serial ninety one forty two
model plate's rusted over
nameplate reads two inch class six hundred
class three hundred flanges
class one fifty body
six hundred pound body
it's a fifteen hundred class
carbon steel body
stainless trim
soft seat in this one
metal seat
hard trim in this valve
i smell gas
stop everybody i smell gas
smell gas here
gas gas back up
gas alarm's going off
my gas alarm just went off
gas monitor's beeping
monitor's reading ten percent
i'm getting an h two s alarm
h two s back off
there's h two s here about ten parts
smell of rotten eggs over here
there's a gas leak at the flange
gas coming out get back
i'm smelling gas around the bonnet
a little bit of gas smell near the vent
four gas meter's in alarm
it's venting gas at my feet
we've got gas in the air shut it down
got gas in the building
strong gas smell by the separator
still got pressure on it
there's still pressure on this thing
whoa it's still got pressure
hold on there's pressure behind it
it's bled down but still holding pressure
pressure trapped in the bonnet
trapped pressure under the plug
it won't bleed down
can't bleed it off there's pressure trapped
gauge says zero but it hissed when i cracked it
pressure came off when i loosened the bolts
careful it's not bled off
we've still got fifty pounds locked in there
bonnet's still pressured up don't loosen it
actuator's still got air on it
hissing at the bonnet stop
stop there's pressure under there
bleed valve's plugged so it may still have pressure
building pressure back up on us
it's pressuring back up
block valve's passing
the upstream block is leaking by
can't isolate it
can't get it isolated
we can't isolate this one the block won't hold
there's no lock on it
nobody put a lock on the block valve
it's not locked out
lock out's missing
no tag and no lock
not isolated
valve's not isolated yet
isolation valve won't close
isolation is passing we need to stop
bypass is leaking into it
somebody opened the block valve
who took the lock off
inlet block doesn't hold
double block is leaking through
the line isn't blinded
spring's still loaded
spring still has load on it
the spring let go
spring just let go
watch it the spring's still compressed
adjusting screw isn't backed off the spring is loaded
careful there's still tension on that spring
that spring shot out
spring came flying out
housing jumped the spring isn't relaxed
spring's under compression don't pull those bolts
the last bolts are holding the spring back
never backed the spring off
somebody's hurt
i cut my hand
he's hurt bad call somebody
he got hit in the face
pinched my finger
i smashed my thumb
burned my arm on the body
got something in my eye
man down
man down over here
i need first aid
he's bleeding
got a cut on my finger need a bandage
hurt my back lifting that actuator
call an ambulance
he's passed out
got sprayed in the face
she slipped and hit her head
we've got a spill
oil on the ground
there's oil spilling out
spilled some oil out of the body
spilled about a gallon
it's spilling all over the pad
condensate's running out on the ground
got water and oil coming out onto the floor
small spill at the drain
leaked oil all over the skid we need pads
it's dumping out on the ground shut it in
bucket tipped over got a spill here
fire
there's a fire
fire get out
we've got a fire at the heater
something's burning
i see smoke
it caught fire
flames coming off the stack
rags are on fire
get the extinguisher
grass is burning by the fence
sparks and fire over there
flash fire get back
done with this one
i'm done with this valve
close it out
go ahead and close it out
close this job out
that's it
that's it for this one
all done
we're all done here
that's all for this valve
finished with it
this one's finished
wrap it up
okay that one's done
end of job
finish this one
we're through with this one
job's complete
what's left
what have i got left to do
what did i miss
did i miss anything
what else do you need
what's missing on this one
anything left to do
tell me what's left
is there anything i forgot
what am i missing
what do you still need from me
have we got everything
anything else on this one
read it back
read that back to me
read back what you've got
say that again
say it again please
what have you got
what have you got so far
what did you get
what did you put down
tell me what you have
repeat that for me
repeat the last one
can you read me the list
give me that back
did you get that
take a picture
take a picture of this
get a photo
take a photo of the seat
grab a picture of that
snap a picture here
get a shot of the plug
let's get a picture of that crack
take one more picture
i want a picture of this
stop listening
quit listening for a minute
mute
go to sleep
hold on stop listening
stop listening i've got a phone call
don't listen to this
alright start listening
listen up
go ahead and listen
okay start listening again
unmute
you can listen now
scratch that
scratch that last one
no no scratch that
scratch that it was the upper
scratch that the seat's okay
scratch that thirty five
strike that please
strike that last part
strike that it's fifteen
never mind that
never mind the last one
never mind that one's fine
forget that last one i said
forget that for now
forget what i just said
take that back
delete that entry
delete that last thing i said
erase that one for me
undo
correction thirty not twenty eight
correction forty foot pounds
correction it's the lower diaphragm
correction that's the inlet side
correction i already replaced it
correction seat not plug
correction make it twelve bubbles
correction the valve is f v one oh three
correction two inch
correction fail open
correction it passed
correction three bubbles not five
correction that should be sixty five psi
correction it's the cage gasket that's torn
no wait the lower one
no wait it's the upper
no wait thirty two
no wait that was the outlet side
no wait i cleaned it i didn't replace it
no wait it's the bonnet gasket
wait no it's the stem
wait that's not right it's twenty five
wait make that lower
make that forty
make that forty five foot pounds
make that a two inch
make that fifty psi upstream
make that two bolts
make that badly worn
make that the packing nut
make that needs replacing
i mean the plug
i mean the bottom one
i mean eighteen psi
i mean l v two oh five
i mean it's pitted not worn
seat i mean plug is scored
upper no lower diaphragm torn
the plug uh the seat is washed out
inlet sorry outlet threads are galled
thirty sorry thirty five foot pounds
sorry that's the cage
sorry it was four bolts
sorry sixty not fifty
sorry meant the stem guide
sorry it's fail closed
sorry two oh four
not the seat the plug
it's not torn it's just cut
not twenty it's thirty
should be twenty two not twenty
that's supposed to be one twenty
change that to fifteen pounds
change it to slightly worn
change the last one to replaced
let's call it forty
call it a hundred even
fifty no fifty five
bonnet no body bolts at sixty
eight bubbles no nine bubbles a minute
it's a three inch no a four inch
l v two zero two no two zero three
two one four not two one three
that's alpha not bravo
worn no eroded
needs replacing no wait i can reuse it
i replaced it i mean i cleaned it
passed no hang on it failed
actually it's the left side
actually it's fine now
actually that's the seat gasket
actually i did replace that one
actually the torque was thirty
hang on that's the wrong one
hold on it was inch pounds not foot pounds
psi not bar
that was downstream not upstream
signal not supply
supply i mean signal's at fifteen
let me fix that it's six to thirty
let me say that again seat worn one side
say that over stem bent slightly
okay again packing's leaking
same on the other one
same on that lower one too
same for the upper
same thing on the outlet
same with the bottom diaphragm
same thing on the other side
same deal on the cage
same here
other one too
other one's the same
other side's good
the other one's fine
ditto for the cage
ditto on the lower
ditto the stem guide
and the same on the backup ring
upper one's the same way
and the lower one too
both of them
both the same
both are torn
both backup rings cut
swapped both
went ahead and replaced both of them
replaced them all
cleaned them off
put them back in
flipped it over
flipped the seat
lapped it in
it's fine like it is
looks pretty good
looks okay to me
that one's okay
no issues with it
nothing wrong with it
that one's pretty bad
it's shot throw it out
that thing's junk
good
they're all good
everything looks good in there
they're both fine
that's good to go back in
going back in
needs a new one
needs replacing
i replaced it
put a new one in
i'm leaving it
leaving it for now
didn't replace it
gotta change that
had to replace it
put it right back in
kept the old one
just reused it
we're reusing that
ran it again
cleaned it all up
cleaned it and put it back
greased it good
note the customer wants it back by friday
note that the block valve handle is missing
note that access is tight on the north side
note tag is hard to read
note bring a bigger wrench next time
note the bolts were over tightened
note that the supply line's undersized
note upstream gauge reads ten pounds low
note that this valve hunts in cold weather
note they want the set point left at one fifty
note paint's coming off the housing
note that the old parts are in the blue box
note no spare seat on the truck
note that we used the last o ring kit
note operator says it sticks in the morning
remark body should be replaced at next shut down
remark wrong size bolts on the bonnet
remark check this one again in three months
remark valve was installed backwards
for the record it was leaking when i got here
for the record nobody locked out the bypass
for the record the operator was told about the spill
for the record we tested it twice
make a note that the packing is the old style
make a note spring range doesn't match the nameplate
add a note the tubing needs rerouting
put a note on there that it needs paint
order a new seat
order two diaphragms for this
order a seat kit for the two inch
need to order a stem
bring a packing kit next time
bring six studs and nuts
bring a gauge that reads to sixty
pick up some three eighths tubing
pick up a bonnet gasket for this one
get me a cage gasket
get me four half inch bolts
put a breather on the list
put two backup rings on the list
put a regulator down to order
add a strainer to the parts list
we'll need to order a positioner
somebody bring me an actuator spring
bring one o ring kit out
order a dozen bolts three quarter by four
i need to get a new gauge ordered
gauge is stuck at twenty pounds
supply gauge is broken reads zero
signal gauge is good reads twelve
regulator leaking and only puts out ten psi
positioner's out of calibration by about five percent
calibrated the positioner four to twenty
calibrated it at three nine and fifteen pounds
positioner supply twenty two output fifteen
output gauge won't go past eight
zeroed the positioner and set the span
solenoid's stuck but it's got air
solenoid tripped at forty psi
strainer's plugged with about ten pounds drop across it
cleaned the strainer now it's two psi drop
filter regulator was full of water drained it
blew down the regulator and set it at twenty five
controller's hunting around the set point
controller gain's way too high
set the controller at one hundred sixty psi
pilot set at two eighty psi and holding
float's got a hole in it
float arm's bent
linkage is loose and sloppy
adjusted the linkage so it opens at half
moved the linkage up one hole
oil's low in the actuator
oil level's down about an inch
oil's dirty drain it
drained the oil and filled it back up
topped off the oil
handwheel's stuck won't turn
handwheel turns free now
backed the handwheel all the way out
yoke's cracked on one side
yoke bolts loose tightened them to forty foot pounds
flange is leaking a little at the bottom
flange bolts tightened to one twenty and it quit
flange face is pitted
indicator's missing
travel indicator's bent straightened it
travel indicator reads a quarter inch high
indicator spring is weak
breather's plugged with mud
cleaned out the breather it had dirt in it
air's coming out of the breather
vent hole's plugged
rodded out the vent hole
supply port threads are cross threaded
signal port is plugged up with ice
there's ice on the bonnet
frozen up solid at twenty below
tubing's kinked at the positioner
tubing fitting is leaking tightened it
replaced about a foot of tubing
fittings are all tight
bonnet gasket's leaking at two hundred psi
replaced the bonnet gasket and torqued to twenty eight
cleaned the gasket off it was stuck to the bonnet
body looks good inside no wash
body's washed out by the outlet
some pitting in the seat area
seat area's fine no pits
inlet threads are intact
outlet threads a little rusty
threads galled on the stem
chased the threads and they're okay
lock nut's rounded off
lock nut was loose about half a turn
put thread locker on the lock nut
packing nut's loose snugged it down
packing's dried out and hard
replaced packing with a new set
stem's scored from the packing down
stem's got a slight bend maybe twenty thousandths
dressed the stem with emery cloth
stem's straight checked it at two thousandths
stem connector's cracked replaced it
stem guide's worn at least ten thou
guide's okay just dirty
stem guide o ring is flat
cage is good no cracks
cage windows are eroded a little
cage gasket's torn put a new one in
cage o ring swollen
cage was stuck had to pull it with a puller
plug's cut pretty bad
plug face is wire drawn
plug's chipped on the edge
plug has a nick about a sixteenth
ball's scratched up
disc is fine
seat's worn on one side
seat's worn all the way around
seat flipped to the good side
seat ring's loose
lapped the seat and plug together
seat gasket's extruded
seat gasket pinched on the inlet side
seat's sand cut real bad
seat's got a groove about thirty thousandths deep
upper diaphragm's got a pinhole
top diaphragm's torn
lower diaphragm is hard and cracking
power diaphragm blown through
balance diaphragm's okay
diaphragm's weak and stretched
diaphragm plate's corroded
diaphragm nut was loose torqued it
actuator spring is broken in two
actuator spring's got rust on it
spring's weak measured four and a quarter
spring looks good still six inches
upper housing's dented
lower housing has a hairline crack
housing bolts are rusty but okay
housing's full of water drained it
o rings are shot replace all of them
one o ring's cut
backup rings are extruded
seals are hard as a rock
all the seals look good
kit installed
put a full kit in it
trim's worn out
trim's good for another year
actuator's sticking about half way
actuator moves free now
whole valve's caked with paraffin
valve's full of sand
blew it out and there's sand in there
wire brushed the body
scraped the old gasket off
greased the stem and the adjusting screw
adjusting screw's seized
adjusting screw turned in two full turns
backed it off a turn and a half
gave the packing nut a quarter turn
half a turn on the lock nut
three turns in from loose
one flat on the packing nut stopped the leak
it's a sixteenth of a turn off
bolting's good reused all of it
two studs stripped in the body
bolts are different sizes replaced four
supply thirty five signal fifteen
supply twenty signal nine output twelve
upstream four hundred downstream sixty
upstream two fifty downstream zero and holding
torqued to twenty eight and the shell test passed
strokes full on thirty psi in five seconds
stroke's good at six to twenty eight with an inch and a half travel
fifty percent at nine pounds and a hundred at fifteen
seat's tight at sixty psi packing's dry
packing nut at ten foot pounds no leak at three hundred
three hundred psi five minutes no drop shell's good
actuator held forty psi ten minutes
travel three quarters stroke time four seconds
bench set six to fifteen travel one inch
it's a two inch body one inch trim class six hundred
spring's four and a half long and the stem's half inch
bonnet bolts forty body bolts sixty
bolts at forty five packing at twelve
lapped it retested it two bubbles a minute at fifty
before it was thirty bubbles now it's zero
as found ten bubbles a minute as left none
as found torque eighteen as left twenty eight
as found travel was five eighths
as left bench set six to thirty
as found it was leaking by
as left it's bubble tight
leave it at thirty five psi
left the supply at thirty
left it in service at two hundred upstream
put it back in service
back in service and it's controlling at one seventy
bypass is closed valve's back on line
line's up to pressure no leaks
bringing the pressure up now
pressure's coming up slow
pressure's coming down
bleeding it down now
it's bled down to zero
bled off and locked out
isolated and bled down we're good to open it
lock's on tag's on
block valves are shut both sides
checked for pressure and there's none
zero on both gauges
vented the air off the actuator
vented off the bonnet
spring's backed off all the way
spring tension's off
no gas on the meter
meter reads zero
opening it up now
taking the bonnet off
bonnet's off
bonnet's back on
pulled the actuator
pulled the plug and stem
took the cage out
pulling the seat out now
seat's out
putting it back together
it's all back together
tore it down completely
disassembled the actuator on the bench
put the actuator back on
hooked the tubing back up
hooked up the test pump
hooked up the gauge to the test port
getting ready to test
waiting on pressure
wait a minute i'm still pumping it up
watching the gauge
give it another five minutes
it's still holding right where it was
so far so good
no change at all
dropped a hair maybe half a pound
it's dropping pretty fast
looks like it's going to hold
i think it's leaking at the packing
might be passing a little
could be the seat
not sure but i think the diaphragm's torn
probably needs a new stem
maybe replace the packing
i reckon it's about fifteen pounds
looks like it may be cracked
hard to tell but maybe three bubbles
can't see any leak
don't see any cracks in the cage
no damage to the threads
no wear on the guide
no scratches on the stem
no rust inside
isn't leaking
wasn't leaking before
didn't find anything wrong
never had a leak
i'm smelling a little gas by the vent it's normal for this site
gas alarm went off and cleared
gas meter's at five percent now
h two s monitor's at eight parts per million
it looks like it still has some pressure on it
there may be pressure behind the plug
bled it down but it keeps coming back to ten psi
pressure builds back up every couple minutes
the block valve's not holding all the way
can't lock it out the handle's gone
lock's missing off the inlet block
spring hasn't been backed off yet
there's still some spring load on these bolts
he cut himself a little on the housing
i've got a small cut on my hand nothing bad
hit my head on the pipe i'm okay
we've had a little spill about a quart
some oil dripped on the ground cleaned it up
there's a small fire in the grass it's out now
smoke coming from the heater
help me over here
stop stop there's gas
shut it in right now
hey hey hey back off
don't touch that it's still hot and pressured up
man that spring just came out
oh man that's gas
whoa whoa it's blowing
we need to get out of here gas
my h two s badge went off
that alarm is mine it's gas
okay we're ready
alright what's next
give me a second
let me check that
you got it yet
yeah i've got it
yep that's it right there
it's about lunch time
it's hot out here
a hundred and two degrees today
cold this morning about twenty degrees
we've got two more after this
three valves to go
that's number four today
we've done six so far
sorry i'm late
sorry go ahead
take a seat over there
my phone's at ten percent
yeah i'm on the phone
i'll be done in twenty minutes
that looks about right
close enough leave it
that'll work
we'll come back to that
skip that one
skip the packing for now
i'll do the stroke test later
can't do the shell test here
no pressure available for the test
no air here to stroke it
let me look at it real quick
`;
