/** A shop man at the bench: what he measures, tightens, tests and orders, dictated in plain phrases. Invented; a line a phrase, numbers and tags as spoken. */
export const AT_THE_BENCH = `
valve's in the vise starting with the bore
body bore is two point zero zero three
body bore comes up two thousandths over
put a mic on the stem at three hundred seventy four thousandths
stem is point three seven four new is point three seven five
stem's down one thousandth where the packing rides
measured the stem in three places all the same
top of the stem measures point four nine nine bottom point four nine seven
stem diameter is twelve point seven millimeters
stem's nine point five millimeters and that's what the drawing says
stem runout's two and a half thousandths in the middle
put the stem on v blocks and got six thou runout
indicator shows three thousandths runout so it's good
that's under the limit of five thousandths
ten thousandths runout that stem is bent
bent stem twelve thou at the middle
runout point one millimeter on the stem
checked the runout again after i straightened it two thou now
spring free length is six and three quarters
free length of the spring is six point eight inches
spring should be seven inches and it's six and five eighths
spring lost an eighth of an inch
spring is short by a quarter inch it's weak
both springs are the same free length
spring free length one hundred seventy two millimeters
old spring measures six and a half new one seven even
indicator spring's one and a quarter free
spring wire is three sixteenths
solid height on the spring is four inches
spring coils are pitted near the bottom
one coil of the spring has a crack in it
spring ends are square and flat
gap between the plug and the cage is eight thousandths
gap at the bonnet is even all around
feeler gauge goes in at four thousandths on one side
no gap on the other side
flange gap is a thirty second left and a sixteenth right
two thou gap under the seat ring
cage to bonnet gap is fifteen thousandths
gasket crush is ten thousandths
gasket is one sixteenth thick new
old gasket measured forty thousandths
got full travel three quarters on the dial
travel measured eleven sixteenths short a sixteenth
stem travel nineteen millimeters
travel's seven eighths and it calls for seven eighths
only half an inch of travel should be three quarters
set the travel at one and a half inches
travel stop is out two turns
full stroke is twenty point one millimeters
guide bore is point three seven eight
guide bore measured three hundred eighty thousandths at the top
stem to guide clearance is five thousandths
clearance in the guide is three thou should be two
guide's worn egg shaped seven thousandths one way four the other
bushing's worn six thousandths on one side
plug diameter is one point two four five
plug o d measures one and a quarter inches less five thousandths
seat bore is one inch and two thousandths
seat ring i d is point seven five zero
seat orifice is three quarters
half inch orifice in this one
seating line on the plug is a thirty second wide
seat contact's about a sixteenth wide all around
seat land is eighty thousandths wide
contact is good three quarters of the way around
blued the seat and it shows contact all around
blued it and there's a gap on the one side
bluing shows a low spot on the outlet side
lapped it again and blued it now it's full contact
seat angle is thirty degrees plug is twenty nine
cut the seat at thirty degrees
skimmed five thousandths off the seat
took ten thou off the seat in the lathe
turned the plug down three thousandths to clean it up
polished the stem took off half a thousandth
cage i d is two point five zero four
cage windows are washed out a sixteenth
cage height is three point one two five
cage is five thousandths short
wall on the body is three eighths at the thin spot
wall thickness quarter inch at the bottom
wall thickness is six point four millimeters below the seat
pit in the body's forty thousandths deep
deepest pit is a sixteenth
scratch on the stem is two thou deep i can feel it with a nail
scratch is less than a thousandth it'll polish out
groove in the plug is twenty thousandths deep
groove for the o ring measures one thirty nine wide
o ring groove's ninety five thousandths deep
o ring is one eighth thick
old o ring's flat down to one hundred thousandths
backup ring is fifty thousandths thick
packing box is seven eighths across and an inch and a half deep
packing box bore is point eight seven six
packing box is smooth no scratches
packing box has a score from top to bottom
diaphragm is an eighth thick at the edge
diaphragm thickness is three millimeters
diaphragm's down to ninety thousandths where it folds
diaphragm plate is nine inches across
eleven inch diaphragm in this actuator
bolt circle is twelve and a half inches
bolts are half inch by two
studs are five eighths by three and a quarter
studs measured long one's stretched a sixteenth
stretch on the studs is three thousandths
flange face is flat within two thousandths
flange face is out eight thousandths
checked flatness on the surface plate three thou low in the middle
bonnet face is flat
raised face is a sixteenth high
face to face is ten inches
face to face is ten and five eighths
height over all is twenty one inches
thread engagement is one inch
stem is eight turns into the connector
screwed the stem in nine turns and locked it
lock nut is down two threads showing
three threads showing past the nut
okay now torques
bonnet bolts first pass fifteen foot pounds
second pass thirty foot pounds
third pass forty five foot pounds
last pass all the way around at forty five
went around once at twenty foot pounds
then forty then sixty in a star
star pattern in three passes to sixty foot pounds
cross pattern thirty percent then sixty then full torque
first pass at thirty percent is eighteen foot pounds
final pass sixty foot pounds nothing moved
final torque on the bonnet fifty five foot pounds
final torque seventy five newton meters
body bolts torqued to ninety foot pounds in three passes
body studs are at one ten
torqued the body studs to one hundred and ten foot pounds
torqued the top housing bolts to twelve foot pounds
housing bolts one hundred fifty inch pounds crisscross
housing bolts torqued to one sixty inch pounds
casing bolts got sixteen newton meters
casing bolts at a hundred and forty inch pounds
diaphragm nut torqued to thirty five foot pounds
diaphragm nut at forty seven newton meters with thread locker
packing nut's at ninety inch pounds
packing nut torqued to ten newton meters
gland nuts even at sixty inch pounds
gland nuts are eight newton meters each
seat ring torqued to one hundred twenty foot pounds
seat ring's in at one sixty three newton meters
seat torqued to eighty five with the socket
stem lock nut torqued to twenty five foot pounds
jam nut on the connector twenty foot pounds
connector bolts torqued to two hundred inch pounds
yoke nut torqued to one hundred fifty foot pounds
yoke bolts are at forty two foot pounds
positioner bolts seven foot pounds
bracket bolts torqued to nine newton meters
bottom plug torqued to sixty five foot pounds
pipe plug's tight about thirty foot pounds
solenoid nut forty inch pounds
indicator cover screws twenty inch pounds
indicator cover's at two newton meters
spring adjuster lock nut at thirty foot pounds
two kilogram meters on the housing bolts
four point five kilogram meters on the bonnet
torqued it dry to fifty
torqued it oiled to forty two
oiled the studs and torqued to seventy
anti seize on all the studs then ninety foot pounds
checked torque after the test still fifty five
one bolt moved an eighth of a turn at fifty five
rechecked torque after ten minutes two of them moved
retorqued after the shell test all held
retorqued to sixty none of them moved
breakaway torque was only twenty foot pounds on the old bolts
took ninety foot pounds to break the bonnet nuts loose
took two hundred foot pounds and a cheater to break the seat loose
seat ring came out at one hundred forty foot pounds
seat wouldn't move at two fifty
found the packing nut at hand tight
found two of the bonnet bolts at ten foot pounds
they should be forty foot pounds
wrench clicks at thirty five
torque wrench was calibrated in august
book calls for eighteen foot pounds plus or minus two
spec's fifty to sixty foot pounds so fifty five
spec is twenty seven newton meters
that's twenty foot pounds on the book
went to twenty and it squashed the gasket right
no torque spec on that one just snug
snug plus a quarter turn on the gland
finger tight plus half a turn
tightened the packing one flat
packing nut one more flat and it quit leaking
now it goes on the test bench
on the bench now seat leak test first
seat leak test with air at fifty psi
seat test fifty psi air no bubbles in a minute
seat leak two bubbles a minute at fifty psi
seat leak is four bubbles in one minute allowed is eleven
three bubbles per minute so it passes class six
seat leak is zero in five minutes
seat leak zero bubbles at sixty pounds
seat leak's twelve milliliters a minute
seat leak twelve cc's a minute allowed is forty
leaked point three milliliters a minute at fifty psi
seat leak one point two liters a minute that's too much
failed the seat test twenty bubbles at fifty
seat leak test failed so i lapped it again
lapped and tested again down to one bubble
third try on the seat and it's bubble tight
passes class four
passes class five with water
class four allows more than that so we're good
class six on the soft seat
measured leak at forty five psi with the flow meter
flow meter reads point four s c f h
leak rate is point two standard cubic feet an hour
seat leak with water at full pressure was five drops a minute
water test on the seat five hundred psi no drops
seat tight in both directions
tight from the inlet leaks from the outlet
shell test fifteen hundred psi with water
shell test at fifteen hundred held for three minutes
shell test at twenty two twenty five no drop in pressure
shell test at four fifty for two minutes passed
shell test passed no leaks no sweat
shell test is one and a half times working
body sweats at the bottom flange at a thousand psi
dropped five psi in three minutes on the shell test
found the leak it was the bottom plug
tightened the bottom plug and it held
hydro at eleven twenty five for ten minutes
hydro'd the body at thirty bar
hydro test at thirty one bar for five minutes no drop
pressure's holding at twenty two hundred
no drop on the gauge after five minutes
gauge dropped ten pounds in two minutes
dried it out with air after the hydro
drained the water and blew it dry
stroke test next
stroke test good full travel both ways
stroked it ten times no sticking
stroked three times and it's smooth
stroke test shows a jump at half
it jumps from a quarter to a half
strokes slow on the way up
strokes smooth from three to fifteen
starts to lift at three psi and it's full open at fifteen
starts at three and a half full at fourteen
starts moving at six point two full open at thirty
first movement at five psi
full open at twenty nine and a half psi
bench set is three to fifteen
bench set's six to thirty
bench set came out five to twenty eight so i turned it up
bench set was four to sixteen adjusted it to three to fifteen
set the bench set at three psi start to move
bench set is point two to one bar
bench set checked six to thirty stem moves at six
turned the adjuster in two turns to get six psi
two more turns and the start point's right
low end is three high end is fifteen point two
span is twelve pounds
spring rate's heavy it takes thirty four pounds for full travel
wrong spring in it the bench set is off by eight pounds
packing leak test at three hundred psi no leak
packing is tight at fifteen hundred
soaped the packing at two hundred psi no bubbles
packing leaks one bubble every five seconds at a hundred psi
packing leak stopped after another quarter turn
packing holds after ten strokes
packing drag is about four pounds
packing friction's high nine pounds to move it
stem friction is two psi up and down
dead band's about one psi
hysteresis is two percent
linear within one percent
put ten pounds on the diaphragm and it held
put twenty psi on the case held for five minutes
case leaks at the bolts at fifteen psi
soaped all around the housing no leak
diaphragm case holds thirty psi no drop in ten minutes
actuator leak test thirty five psi lost half a pound in five minutes
actuator lost two pounds in a minute leaks at the stem seal
actuator's tight at forty
air to open on this one
air to open and the spring shuts it
air to close spring opens it
it's air to close three inch
takes nine psi air to close it
takes eighteen psi to open against pressure
takes twenty two pounds of air to shut it off tight
shuts off at three pounds falling
opens in two seconds closes in three
opening time one point five seconds
closing time two point two seconds
close time four seconds should be under five
stroke time up six seconds down four
full stroke takes eight seconds with the small tubing
fails closed when i take the air off
took the air off and it went shut
took the air off and it stayed open the spring is broke
fails open like it should
supply at thirty five psi for the test
supply twenty psi signal twelve milliamps
four milliamps zero percent good
eight milliamps twenty five percent good
twelve milliamps reads fifty one percent
sixteen milliamps seventy five percent
twenty milliamps full open
zero's off two percent
span is long by three percent
set zero at four milliamps and span at twenty
gave it nine psi and it sits at half
positioner output is twenty eight psi
positioner supply is at forty
positioner gauge reads two pounds high
checked at zero twenty five fifty seventy five and a hundred
at twenty five percent the stem's at three sixteenths
at fifty percent it's at three eighths
at seventy five it's nine sixteenths
at a hundred it's three quarters on the nose
up readings match the down readings
coming down it lags by one pound
pilot set at fifty psi
pilot pops at fifty two and resets at forty eight
regulator set at twenty psi lockup at twenty two
regulator droops to seventeen with flow
regulator creeps up to thirty in a minute
set the regulator to thirty and it holds
relief pops at one twenty five
relief reseats at one fifteen
tested the relief three times one twenty five each time
wrote it down as a pass
result is pass on the seat and pass on the shell
seat test pass shell test pass stroke test pass
all three tests passed
everything passed but the packing
failed on the seat passed on the shell
as found it leaked thirty bubbles a minute
as left it's zero bubbles
as found bench set was five to seventeen
as left bench set is three to fifteen
as found travel half inch as left three quarters
as found torque on the bonnet was thirty as left fifty five
as found seat leak one hundred milliliters a minute
as left seat leak less than one
didn't test the seat as found the stem was stuck
couldn't test it as found no spring in it
no as found test it came in a box
not tested yet waiting on the gasket
haven't done the shell test yet
still need the seat leak and the stroke
seat leak test is still to do
shell test not done no blind flange that size
skipped the bench set the gauge is out for calibration
will test tomorrow when the packing's in
test gauge number eleven zero to one hundred
test gauge is a zero to three thousand
test gauge was calibrated march of this year
test water's about sixty degrees
tested with nitrogen at a hundred psi
tested with shop air at ninety
test pressure was one and a half times the rating
rating is one fifty pound class
it's a three hundred class body
six hundred class flanged
body's stamped fourteen eighty at a hundred degrees
nameplate says max seven hundred forty psi
nameplate travel is one and an eighth
nameplate's gone can't read the bench set
serial number on the tag's eight eight one four two
serial is six zero three three seven nine
part number on the cage one bravo two two eight
part number on the seat is five five oh two one
part number four four oh nine dash one for the plug
part number for the diaphragm is two echo eight nine oh
drawing number's three one seven rev b
stamped three one six on the stem
heat number on the plug is h seven two four
plug is four sixteen hardened
seat ring is three sixteen with a hard face
stem's three sixteen stainless
studs are b seven nuts are two h
new studs are b eight
packing is p t f e v rings five of them
packing's graphite six rings
five rings of packing and the lantern ring
lantern ring was below the port moved it up
packing spring is under the rings and it's good
packing follower's scored on the inside
packing box rings go cup down
put in seven rings and two spacers
one ring short in the packing set
top diaphragm is nitrile with cloth
diaphragm number is on the edge and it says two thousand twenty two
diaphragm's from march of nineteen
diaphragm cured in the second quarter of twenty one
need to order a diaphragm eleven inch
order one seat ring three quarter orifice
order two packing sets three eighths stem
order three packing sets for half inch stem
order six bonnet gaskets for the two inch
order a dozen five eighths nuts
order ten half inch by two inch bolts
order sixteen b seven studs five eighths by four
order one stem three eighths with the lock nuts
order one plug and one stem pinned together
order two springs six to thirty
order one spring for three to fifteen
order one cage with the small windows
order a soft goods kit for the three inch
order four kits two for stock
order one positioner gauge zero to sixty
order two supply gauges zero to thirty quarter inch back
order one filter regulator quarter inch
order fifty feet of three eighths tubing
order a bag of quarter inch ferrules
order a travel indicator and two screws
order one yoke nut it's cracked
order one bonnet no spare on the shelf
put a spring on the order
put two diaphragms on order
put the stem down on the order sheet
add a seat gasket to the order
add two o rings dash two fourteen to the order
need o rings dash two twenty two four of them
o ring is a dash one sixteen
need a dash two ten for the stem guide
one dash three twenty five for the cage
need one bonnet gasket spiral wound
need two flange gaskets three inch one fifty
need a new seat ring before i can close it up
need two lock washers and a cotter pin
need to order the stem connector it's stripped
need three more studs to finish
have one diaphragm on the shelf
none on the shelf it's on order
last one on the shelf order two more
used the last packing set order more
used one seat ring and one gasket from stock
used eight nuts and eight studs from the bin
two seats left in stock
spring is six weeks out
gasket's coming thursday
parts are two days out
plug comes in on the twelfth
waiting on a seat ring should be here monday
stem came in but it's the wrong length
new stem's an eighth too long
new gasket's too thick sent it back
wrong o rings came in they're too fat
got the right diaphragm this time
next inspection in twelve months
next inspection in june
next inspection due october next year
next inspection six months because of the sand
set next inspection for the first of march
inspect again in ninety days
check it again in three months
look at the seat again in six months
check the packing again in thirty days
change the diaphragm next time
replace the spring at the next inspection
watch the stem next time it's down a thousandth
plug's good for one more run
cage will go another year
seat won't go another year so i changed it
stem's at the limit replace it next time
next overhaul in two years
overhaul due in eighteen months
soft goods due every twelve months
due for a shell test in twenty twenty eight
last shell test was in twenty twenty three
last time the seat was changed was april
opened it last in september
last bench set was done two years ago
this one's back in eight months same seat
same trouble as last time the guide's worn
worn more than last time by two thou
last time the stem was point three seven four five
runout was two thou last year four now
seat leak was zero last time it's three bubbles now
less wear than the one before
spring's shorter than the other one by a sixteenth
this seat is worse than the last one
top guide's worn more than the bottom one
bottom guide is better than the top
inlet side measures fine outlet side is eight thou over
left side of the seat's lower than the right
same on both sides two thou
measured both ends same number
checked it twice same reading
checked it with the other mic same thing
second reading is point seven five one
average of three is point four nine eight
that's two thou over the limit
two thousandths under size
one thou over nominal
it's within tolerance
out of tolerance by three thousandths
inside the limit but close
right at the limit on the stem
over the limit so it gets a new one
under the limit so i used it again
limit on the guide is eight thousandths
limit for runout is five thou on this stem
max gap is six thousandths
minimum wall is point one eight seven
minimum thickness is a quarter and it's five sixteenths
minus two thousandths on the plug
plus one thousandth on the bore
plus or minus half a thou
a half a thousandth taper top to bottom
two thou taper in the bore
bore's out of round three thousandths
stem's out of round a thousandth and a half
guide bushing is pressed in with two thou
pressed a new guide bushing in and reamed it
reamed the guide to point three seven seven
honed the bore to one point five zero one
honed the cage two passes and it's clean
bored the body over ten thousandths
sleeve in the body measures one point seven five
chased the threads with a half inch tap
ran a die over the stem threads five eighths eighteen
ran a tap in all eight holes
one hole's stripped put an insert in it
put a thread insert in the bonnet hole half thirteen
threads are half thirteen
stem threads three eighths twenty four
threads on the stem are half twenty
inlet threads are one inch pipe
half inch pipe on the supply
thread gauge goes all the way in
go gauge goes no go doesn't
no go gauge went in the threads are worn
threads measure good with the pitch gauge
first three threads are flat on the stem
threads at the top of the stem are galled
threads in the connector are stripped half way
bolt threads are rusty but a die cleaned them up
nut face is galled
nuts are rounded off replaced all eight
two nuts were hand tight
one washer missing on the bonnet
bonnet nut's cracked replaced it
studs are necked down threw them out
stud's broken off flush with the body
drilled out the broken stud and tapped it
got the broken stud out with an extractor
stud hole cleaned up good
seat threads are clean in the body
seat threads have a burr filed it off
seat bore's washed at the bottom an eighth deep
step in the seat bore is ten thou
seat pocket's pitted twenty thousandths deep
seat pocket is clean and flat
gasket face on the seat pocket has a cut across it
faced the gasket surface ten thousandths
bonnet groove has rust in it cleaned it with a wire wheel
bead blasted the bonnet and the body
blasted the yoke and painted it
painted the actuator two coats
washed everything in the tank
parts are clean and laid out
took pictures of the seat and the plug
stem and plug are pinned drove the pin out
pin's sheared in the plug
plug was loose on the stem a quarter turn
plug pin's tight
new pin in the plug and peened it
threaded the plug on and pinned it at one eighth
plug's cut at the seat line all the way around
plug skirt has scoring on two sides
plug face has a pit about thirty thou
plug's guide is worn four thousandths
plug rubs the cage on the outlet side
cage is scored where the plug rides deep as five thou
cage has a crack at the window a half inch long
crack in the yoke is two inches long
dye check on the bonnet shows no cracks
dye check on the cage shows a crack by the top hole
dye check on the plug is clear
dye checked the seat nothing showed
checked the yoke for cracks none
magnet says the stem is stainless
hardness on the plug is forty two
hardness of the seat ring's thirty eight
finish on the stem is sixteen or better
stem finish is rough at the packing
buffed the stem with fine cloth
polished it to a mirror where the packing rides
diaphragm has a hole by the third bolt hole
diaphragm hole's a sixteenth across
tear in the diaphragm is an inch and a quarter long
bolt holes in the diaphragm are pulled
diaphragm is stretched a quarter inch
diaphragm's hard at the bead
rubber's cracked on the pressure side
diaphragm plate has a burr on the outside edge
filed the plate smooth
plate's bent an eighth at the rim
plate is flat within ten thousandths
lower housing has rust pits forty thou deep
upper housing is rusted through at the vent
upper housing flange is bent by two bolts
straightened the housing flange in the press
vent in the upper housing's plugged
put a new vent cap in the top
stem seal in the actuator leaks at ten psi
put two new o rings in the stem seal
stem bushing in the yoke is worn ten thou
brass bushing measures point six three oh
spring seat is rusted to the spring
spring button's cracked
adjuster threads are dry greased them
adjuster is seized in the yoke soaking it
heated the adjuster and it turned
adjuster's at seven turns from loose
counted eleven turns coming out
put it back the same eleven turns
bottomed the plug and backed off half a turn
half a turn more on the stem and it shut tight
one full turn in on the connector
set the pointer at zero with the plug down
pointer reads an eighth open when it's shut
indicator scale's on crooked by a sixteenth
moved the scale up to zero
travel plate replaced it was bent
feedback arm's loose on the stem
feedback pin is worn an eighth
cam's on number one should be on number two
positioner beam's out of level
leveled the beam at twelve milliamps
nozzle is dirty cleaned it with a wire
orifice is twelve thousandths and it was plugged
relay in the positioner leaks air
relay leak stopped with a new gasket
booster set at half a turn open
solenoid pulls in at nineteen volts
solenoid drops out at eight volts
coil reads one hundred ten ohms
coil reads open no good
solenoid coil two hundred eighty ohms good
solenoid vents in one second
twenty four volts on the coil
one twenty volt coil in this one
limit switch makes at ninety five percent
closed switch makes an eighth early
set the closed switch at zero
open switch doesn't make at all
filter was brown with oil new one in
drip well had about an ounce of water in it
air set holds twenty with no leak
tubing's quarter inch stainless thirty five wall
replaced eighteen inches of tubing
three fittings replaced on the air line
soaped the fittings no leaks at thirty five
one fitting bubbling at the booster
tightened that fitting a quarter turn and it quit
next one on the bench is l v four one two
this is p v two two six out of the box
f v three oh nine on the bench for a seat leak
opening t v one eighteen now
tag says p c v six oh four three inch air to close
job on l c v seven one one is a full rebuild
tag's gone but the paper says f c v one forty
two inch globe three hundred class from the east pad
one inch angle valve six hundred class
four inch valve nine inch actuator
it's a two inch with an eleven inch diaphragm
came in dirty washed it before i opened it
came in with the bonnet loose
came in missing two bolts
packing was blown out when it came in
it was painted shut
pressure's off and the valve is drained
vented the case before i took the bolts out
backed the spring off before i split the case
spring's under load so long bolts come out last
let the spring down on the two long bolts
lifted it with the hoist it's about two hundred pounds
weighs ninety pounds with the actuator
smells like sour gas inside so it's outside for now
checked it for h two s and it reads zero
monitor reads two parts per million at the body
some scale in the body might be hot set it aside
put it under the hood to wash it
careful the plug edge is sharp
cut my glove on the seat burr
there's pressure trapped in the bottom cavity
bled the trapped air out slow
hose came off the test bench shut the air down
test hose is leaking changed it
bench gauge stuck at forty tapped it
shield's down for the shell test
standing clear while it comes up to pressure
brought it up in three steps to fifteen hundred
five hundred first then a thousand then fifteen hundred
held five minutes at each step
brought it back down slow
went up to two thousand two hundred and fifty psi
holding twenty two hundred fifty after three minutes
point five percent drop is okay and it's point two
shell's dry no leaks anywhere
wet at the bonnet gasket one side
drip at the bonnet after two minutes
weep at the packing at five hundred
weeps at the weld on the bottom
pinhole in the body casting low on the inlet
pinhole showed up at eight hundred psi
body casting has a sand hole it's scrap
casting's good all around
seat leaks at ten psi and not at fifty
seat leaks at high pressure only
low pressure seat test at ten psi no bubbles
high pressure seat test at six hundred psi one drop
air test at eighty under water no bubbles
dunked it in the tank and no bubbles
one stream of bubbles from the seat gasket
leak is under the seat not on the face
leak's at the thread of the seat ring
leak's past the cage seal not the seat
leak is at the balance seal
balance seal leaks so the plug won't hold
changed the balance seal and tested it again
now it holds three bubbles in two minutes
two bubbles in three minutes at seventy five
eleven bubbles a minute at fifty it's three inch so that's okay
ten bubbles then none
it burped twice and quit
zero bubbles after one minute so i let it run five
still zero after five
about a bubble every twenty seconds
one bubble every half a minute
six to eight bubbles a minute
too many bubbles to count
steady stream at thirty five psi
dribbles at a hundred with water
two drops in ten minutes on the seat
less than a drop a minute
five milliliters in one minute in the tube
point six milliliters per minute
thirty cubic centimeters a minute on air
half a liter a minute on the meter
meter says two s c f m
meter's at zero
needle on the meter never moved
tube reads one point five at fifty psi
went from forty cc's to two after lapping
went from class two to class four
lapped with two twenty grit then four hundred
lapped ten minutes with the fine
lapped it by hand thirty turns and wiped it
lapped plug and seat together
lapped till the gray line went all around
gray line's a sixteenth wide
gray line is broken at one spot
seat line's too wide narrowed it
narrowed the seat to a thirty second
re cut the seat and left three thousandths less
seat's been cut before no more left to cut
seat ring flipped once already so a new one goes in
both sides of the seat ring are used
used the good side of the seat
soft insert's cut a quarter inch long
soft seat has a chip of metal stuck in it
soft seat is swelled out ten thousandths
replaced the soft seat and torqued the retainer
seat retainer torqued to fifty foot pounds
retainer screws thirty inch pounds with blue thread locker
retainer's bent so the cage sat crooked
cage sits flush now
cage stands above the body twelve thousandths
cage stands proud by fifteen thou so the gasket gets crushed
cage is down in the body five thou too low
shimmed the cage with ten thousandths
spiral wound's crushed down to one twenty five
flat gasket sixty two thousandths under the cage
two gaskets under the seat somebody doubled them
took one gasket out only needs one
gasket surface scraped and checked it's good
gasket i d is two and a quarter o d three inches
cut a gasket from sixteenth sheet
made the bonnet gasket from thirty second sheet
used the new gasket from the kit
kit had the wrong backup rings
kit's missing the stem o ring
kit has everything but the diaphragm
soft goods all changed out
soft goods were two years old and hard
all o rings changed dash numbers are on the sheet
stem o ring is hard and flat on the inside
guide o ring's cut clean through
cage o ring rolled in the groove
lower o ring has a flat spot half an inch long
upper backup ring is split on the cut
backup rings go on the low pressure side
o ring swelled to one fifty five from one thirty nine
o ring stretched and won't stay in the groove
greased the o rings before they went in
put a light coat of grease on the stem
no grease on the seat
dry fit the stem in the guide and it drops free
stem drops through the guide by its own weight
stem binds in the guide half way down
stem rubs in the bushing at one spot
stem's scored four inches up from the plug
stem scored an inch and a half long where the packing sits
scoring on the stem is over two thou new stem
stem has pits under the packing
pits on the stem are five thousandths deep
rolled the stem on the plate and there's light under it
can get a four thou feeler under the stem
straightened the stem in the press down to two thou
pressed it again now runout's one and a half thou
can't get it under five so it's scrap
threw the old stem in the scrap
new stem runs true within one thou
new stem checked point five zero zero on the nose
new plug checked good against the print
print says one point one two five plus zero minus two
measured one point one two three so it's good
print calls for point six two five
guide measured point six two eight it's over
that guide is over by one thousandth
bore's one point five oh oh up top one point five oh four below
bore is tapered four thousandths
bore one and a half inches even
piston is one point four nine six
clearance is four thousandths all around
four thou clearance new limit eight
ring gap on the piston is twelve thousandths
piston ring gap's thirty five thousandths worn out
piston rings worn down to sixty thousandths
ring groove has a nick at the top
ring land's cracked
new rings gapped at ten thousandths
seal ring is cracked at the gap
seal ring's got a flat on it one inch long
spring seal has three coils broken
spring in the seal is gone
yoke boss measures two and an eighth
yoke is bent an eighth to the left
yoke legs are even
yoke's cracked at the foot
stud holes in the yoke are worn long
mounting pad on the yoke is rusted but flat
actuator stem measures three eighths
actuator stem's bent twenty thou
actuator stem threads are good
actuator's got water in the bottom about a cup
poured out half a cup of water from the lower case
dirt dauber nest in the vent
vent's clear now blew it out with ninety pounds
lower case gasket's new
case bolts are mixed two different lengths
eight of the twelve case bolts are rusted
twenty four case bolts all new
all twenty case bolts torqued
case bolts in a cross eight foot pounds then fifteen
case bolts went eight then twelve then sixteen
went around the case three times at fifteen
diaphragm bulged out at one bolt so i took it apart
diaphragm's in with the cloth side up
diaphragm went in with the bead down
diaphragm plate nut torqued to forty foot pounds
plate nut was only ten foot pounds coming off
put thread locker on the plate nut and took it to forty
plate washer's cracked replaced it
put six psi under it to line the holes up
set the stem with eight psi on the case
put air on it to lift the plug off the seat then turned the stem
never turn the plug on the seat
connector halves don't match
connector's tight fifteen foot pounds on both screws
both screws in the connector at fifteen
stem connector replaced with a three eighths by half
stem lock nuts tight against each other
lock nut torqued to thirty two newton meters
bonnet went on straight
bonnet pulled down even on all four corners
gap at four corners is eighteen seventeen eighteen eighteen
gap's even within a thou
tightened the low corner and it evened up
bonnet nuts first pass twenty newton meters
next pass forty newton meters then seventy
last pass seventy newton meters twice around
fifty percent torque then a hundred
hundred percent torque is eighty one newton meters
that's sixty foot pounds
sixteen bolts two passes at thirty then one at sixty five
sixty five foot pounds checked clockwise
check pass clockwise no nuts turned
check pass two nuts turned a hair
one nut turned a full flat
hot torque isn't needed on this one
hydraulic wrench at eleven hundred psi on the body studs
body studs four hundred fifty foot pounds with the big wrench
two hundred and twenty foot pounds on the one inch studs
three hundred forty newton meters on the body studs
inch studs at two seventy five
three quarter studs at one fifty
seven eighths studs torqued to two hundred foot pounds
half inch studs forty five foot pounds
quarter inch screws at seventy inch pounds
number ten screws at twenty five inch pounds
five sixteenths bolts eleven foot pounds
three eighths bolts twenty foot pounds
m ten bolts at thirty five newton meters
m twelve at sixty newton meters
m sixteen studs one hundred forty newton meters
packing nuts torqued even to seven foot pounds
packing torqued to eighty four inch pounds stroked it and torqued it again
lost twenty inch pounds after five strokes so i went back to eighty
gland follower's cocked evened it up
follower is in three eighths and there's a quarter left
quarter inch of adjustment left on the packing
no adjustment left on the gland
one more ring went in the box
live loaded packing springs pressed flat then backed off half a turn
packing washers are stacked two up two down
stacked wrong turned them around
scratch that the stem is point three seven three
scratch that runout was three not four
scratch that it's twelve foot pounds not inch pounds
no scratch that free length is six and a quarter
make that forty five newton meters
make that six bubbles a minute
make that point four nine six
make that three studs on the order
make that two packing sets and one diaphragm
sorry that's inch pounds
sorry newton meters not foot pounds
sorry i meant thousandths
correction travel is five eighths
correction the bore is two point zero zero five
correction shell test was at fifteen hundred fifty
correction the seat passed and the packing failed
correction it's the lower guide that's worn
change that to seventy foot pounds
change the bench set to five to fifteen
change that reading to eleven thousandths
take off the last torque i read it wrong
take that last number out
no it was the top guide
no i said fifty not fifteen
i said thirteen not thirty
that's sixteen one six
that's sixty six zero
that's point zero one five
that's point one five not point zero one five
that's one five zero
fifteen as in one five
yes four thousandths
yes both springs
yes with the new gasket
yes it passed at fifty psi
no it was not tested at fifty
no only the one side
no i put the old one back
about two thousandths i'd say
it's three sixteenths
it was the outlet side
it's in inch pounds
in newton meters
psi on that one
bar not psi
at the top of the stroke
at the bottom of the bore
in the middle of the stem
around the bolt holes
down by the seat threads
on the face of the plug
at the edge of the plate
under the packing
between the cage and the body
inside of the bonnet where the stem goes through
right at the weld
just under the gasket face
on the pressure side
on the spring side
toward the inlet
same spot as the last one
all of the bolts
all but one
half of them
none of the nuts were loose
none of the studs are stretched
no stretch on the studs
no wear on the guide it measures new
no wear to speak of on the plug
no runout that i can see
no gap anywhere with the two thou feeler
no scoring in the packing box
no cracks on the yoke or the bonnet
no taper in the bore
no burrs on the stem
no leak at the bonnet no leak at the packing
no bubbles at fifty and none at a hundred
no drop in five minutes
no sticking on ten strokes
no air out the vent
no play in the guide
no side play on the stem
no water in the actuator
no sand in the body this time
no rust on the spring
seat isn't cut
seat isn't worn past the limit
stem isn't bent but it's pitted
spring isn't short it's right at seven inches
bolts weren't torqued the same
packing wasn't greased
packing didn't leak at all
diaphragm didn't hold twenty psi
plug doesn't turn on the stem
stem doesn't rub anywhere
gauge doesn't match the test gauge
positioner doesn't reach twenty eight psi
travel doesn't match the nameplate
spring doesn't match the nameplate
it doesn't close all the way stops a sixteenth off the seat
it won't go past five eighths
it won't seal with less than twelve psi
it won't hold a hundred psi under the seat
it didn't pass and it won't until the seat's cut
i didn't measure the bore
i didn't change the spring
i didn't order the cage
did not torque the packing nut yet
haven't measured the spring
haven't torqued the body studs
never got a reading on the stem
can't measure the guide it's pressed in
can't get a torque wrench on that nut
couldn't read the part number
seat needs to be cut
seat needs lapped and tested again
seat needs a new gasket too
plug needs turned two or three thousandths
stem needs polished before it goes in
stem needs straightened or replaced
stem needs replaced it's under by four thousandths
guide needs a new bushing
guide bushing needs pressed out
cage needs honed
packing box needs cleaned and polished
packing needs replaced all five rings
spring needs replaced it's a quarter inch short
adjuster needs soaked
bonnet needs faced off
bonnet needs checked for cracks
body needs blasted
body needs a shell test
body wall needs measured again
flange needs faced
housing needs straightened at two holes
diaphragm needs replaced and so does the gasket
positioner needs calibrated after it's mounted
positioner needs a new relay
gauge needs replaced it's off six pounds
regulator needs a rebuild it creeps
pilot needs set at forty psi
solenoid needs a coil
studs need replaced all eight
nuts need replaced they're rounded
threads need chased
bolts need torqued one more time
o rings need replaced every one of them
yoke bushing needs replaced it's ten thou over
seat ring will need ordered
has to be retested with a new seat
has to get a new stem before it's tested
gotta cut the seat and blue it
gotta torque the bonnet again after the shell test
got to drill the pin out of the plug
have to measure the cage yet
going to hone the cage ten thousandths
going to turn the plug tomorrow
going to flip the seat and try it
will lap it by hand
will have to weld up the washed spot in the body
weld repair on the body then machine it
welded the washed spot and ground it smooth
ground the weld flat and checked it with dye
built up the seat pocket and cut it back to size
machined the pocket to two point one two five
drilled the orifice out to five thirty seconds
drilled the vent hole clear with an eighth bit
reamed the holes to nine sixteenths
pressed the new bushing and checked it point five oh two
pulled the bushing with the press
drove the guide out from the bottom
chucked the plug up and trued the face
chucked the stem runout is one thou at the jaws
filed the burr off the cage window
stoned the seat face lightly
stoned a nick off the bonnet face
wire brushed the studs and oiled them
cleaned the threads and put anti seize on them
sanded the packing box with four hundred
scraped the gasket off the body and wiped it down
blew the body out with air
soaked the cage overnight in solvent
soaked the stuck seat with penetrating oil
heated the bonnet nut to get it off
cut two nuts off with the torch
split a nut to get it off
hammered the wrench to break the seat loose
pulled the seat with the puller
puller broke a lug off the seat
seat lug's broken off
put the seat in the freezer and dropped it in
installed the new seat and torqued it
installed the cage plug and bonnet in that order
installed the spring with the button on top
installed the packing one ring at a time
put the stem through the packing with tape on the threads
mounted the actuator and made up the connector
mounted the positioner and set the arm level at half travel
hooked up the air and stroked it
set the travel and locked it down
set the pointer and closed the cover
tagged it and put it on the rack
wired the tag on with the test date
put caps on the flanges
put a plug in the vent for shipping
painted it and stamped the date
crated it up with the new gasket
ready to ship
goes back to the field friday
on hold for the stem
on hold till the cage comes in
job's done except for the indicator
job's half done the actuator is next
body's done bonnet's done actuator is left
nothing else on this one
that's all the measurements
that's all the torques now the tests
that's it for the parts
sign it off as passed
call it a fail and put it on the bench again
call it good
scrap the plug keep the stem
scrap both the plug and the seat
keep the cage it's within three thou
keep the spring for parts
spring's good and it goes back in
reused the studs after i measured them
reused the bonnet nuts they're good
reused the diaphragm plate
reused the lower guide replaced the upper
replaced the upper guide it was eight thou over
replaced the seat and plug as a set
replaced the stem pin and both lock nuts
replaced the packing follower and the packing
replaced the spring with the six to thirty
replaced all the soft goods and the travel pointer
replaced four studs kept the other four
replaced the gauge with a zero to a hundred
replaced the bushing and the wiper
wiper is torn
wiper's hard and full of sand
rod wiper torn on one side new one in
stem boot is split put a new one on
boot's missing order one
bug screen is missing in the vent
name tag's loose put two new drive screws in
supply pressure is one point four bar at the positioner
signal is point two to one bar
put six bar on the inlet for the seat test
seat test at three point five bar no bubbles
seat tested at three hundred and fifty kilopascals
shell at twenty nine bar for two minutes no leak
shell test at two thousand kilopascals
shell at one hundred and fifty five bar took ten minutes
case test at two bar and it held
case test two hundred kilopascals no drop
bench set point four to two bar
bench set's forty to two hundred kilopascals
spring range is point two to one bar
moves at point four bar and it's full at one point nine
lost point one bar in five minutes
regulator set at ten inches of water
holds eight inches of water on the outlet
lockup's eleven inches of water set was nine
pilot opens at fourteen inches of water
low pressure regulator at six ounces
six ounces on the outlet and it locks up at seven
eight ounces in the case
four kilos on the case
two point one kilos a square centimeter on supply
twenty nine pounds at the case and it's just off the seat
forty two pounds at the inlet
just under three hundred on the inlet
a hair over six psi to start
right around fourteen and a half
right at thirty psi full open
anywhere from five to seven to start it
between four and five thousandths
between sixty and sixty five foot pounds
somewhere near forty foot pounds
close to an inch and a quarter
a little less than seven eighths
a little more than two and a half inches
a full sixteenth short
a good eighth of an inch deep
a bare sixteenth
a heavy three thousandths
a light two thousandths
less than half a thousandth
more than ten thou
over a sixteenth
under a hundred
one and three sixteenths
two and seven sixteenths across the flats
wrench size is one and a quarter
nuts are fifteen sixteenths across
socket's thirty six millimeters for the seat
nineteen millimeter nuts on the case
seat tool for the one inch is two lugs
seat ring has four lugs one is bent
three and nine sixteenths on the cage height
four and thirteen sixteenths from the bonnet to the seat
five and eleven thirty seconds
seven and a quarter to the top of the stem
stem stick out is four and three eighths
stem sticks out eighty five millimeters
stem sticks out an inch and seven eighths with the plug down
overall on the stem thirteen and a half inches
stem length is ten point six two five
bottom of the stem to the pin hole's an inch and an eighth
depth of the guide is two point two five
depth of the pocket point five six two
depth mic says one point zero one five
caliper says twelve point six five
caliper reads nine point four nine millimeters
dial reads plus four minus two
indicator swings six thousandths
total indicator reading is five thousandths
needle swings three thou each way
t i r is four thousandths at the plug end
t i r is two thou by the threads
zero at one end five at the other
point zero zero one five on the bore gauge
point zero zero three clearance
point one two five wall
point one eight eight at the thinnest
point two five zero wall all the way around
point three one two on the pin
point six two four stem
point seven four nine at the packing point seven five oh above it
one point zero zero zero on the plug
one point two four nine even
two point one two five seat pocket
two point three seven five on the cage
three point zero zero four bore three point zero zero zero piston
twenty five point four millimeters bore
twenty five point three eight at the worn spot
thirty eight millimeters and a tenth
fifty millimeter stroke
forty eight millimeters of stroke out of fifty
stroke's two inches and it gets one and fifteen sixteenths
point oh eight millimeters on the guide
point zero five millimeters runout
two tenths of a millimeter of play
six tenths deep on the pit
half a millimeter of gap on the outlet side
one millimeter deep scratch in the bore
three millimeters of wear on the plug nose
two point four millimeters off the seat
ultrasonic says three hundred forty thousandths
thickness tester reads eight point six millimeters
wall reads eight point nine at the top seven point one at the bottom
wall reads four point eight by the outlet that's low
thin spot by the outlet a quarter inch
thin at the bottom two hundred ten thousandths
wall was three hundred last time it's two sixty now
lost forty thousandths of wall in a year
lost twenty thou since the last inspection
wears about ten thou a year
at that rate it's got two years
body is under minimum wall so it's scrapped
ordered a new body three inch six hundred
ordered the seat and the plug monday
ordered two of the packing sets
ordered a spring and a lower spring seat
ordered ten of each o ring
on order one cage one plug one seat
stem's on order due the fifteenth
part number seven seven oh four is the top diaphragm
part number two one one eight bravo
part number for the packing set is nine three six
part number's r six six two for the repair kit
kit number is k four two oh one
kit number four oh nine for the two inch
spring number's on the tag eleven eighty two
spring is color coded green
spring's the blue one six to thirty
red spring is three to fifteen
plug's equal percent
cage is quick opening
linear trim in this one
reduced trim one step down
full port plug
number two trim
trim's hard faced plug and seat
trim is three sixteen no hard face
seat material's in the drawing
lower diaphragm is number four four two
gasket number's eleven dash six
quantity two on the guide o ring
quantity one on the yoke nut
quantity eight on the washers
one each of the gaskets
two each of the backup rings
a pair of lock nuts three eighths twenty four
a set of rings for the piston
a full set of bolts for the case
a tube of thread sealant and some grease
six feet of packing rope
rope packing quarter inch cut five rings
cut the rings on a bevel and staggered them
torque on the seat was good at one sixty
torque on the yoke nut's one twenty
torque on the case is in inch pounds one ninety
torque for this gasket is forty eight foot pounds
torque at first pass was ten newton meters
torque didn't hold on number three bolt
number three bolt yielded replaced it
number seven stud pulled out of the body
bolts one and five first then three and seven
one five three seven then two six four eight
snugged all eight then went to thirty
hand tight then twenty then thirty five
wrench was set at sixty six
wrench slipped at seventy so check it
used the inch pound wrench
used the big wrench set at two fifty
ran the nuts down with the air gun and torqued by hand
impact's off limits on these
left them at half torque till the gasket settles
brought them up to eighty after an hour
gasket settled two nuts took another flat
all nuts have full threads
torqued and marked
torqued and witness marked each nut
paint marks on all the nuts
lock wire on the two cap screws
lock tab bent over on the nut
cotter pin in the castle nut
set screw's in with thread locker five foot pounds
set screw on the handwheel's tight
handwheel bolt torqued to eighteen foot pounds
handwheel takes fourteen turns to close
handwheel's stiff for the last two turns
manual override works both ways
put it in neutral and pinned it
opens in one and a half seconds on thirty psi
opens in under a second
takes five seconds to open it used to take nine
takes twelve seconds to close with the vent plugged
three seconds faster with the bigger tubing
slower to close than to open by two seconds
needs twenty six psi to get it open
needs eight pounds over the spring to seat
cracked open at seven and full at thirty one
just cracks at six point four
lifted off the seat at six and a quarter pounds
back on the seat at five and a half
closed at three point one
closed tight at two psi falling
air to open leaks at nothing and shuts in three seconds
air to close with a ten pound spring
air's on top of the diaphragm
air's under the diaphragm so it opens
opens on air two seconds closes on spring four
ran it open and shut twenty five times
cycled fifty times and tested the packing again
cycled it hot no change
after ten cycles the seat's still tight
after twenty strokes packing leaks one bubble a minute
after the repair travel is seven eighths on the dot
before the repair it was nine sixteenths
before lapping twenty eight bubbles after lapping two
before it was five thou and now it's two
was eight foot pounds now it's thirty
was leaking forty cc's now nothing
was three bubbles a minute at fifty now it's dry
was set at five to twenty three
went from six psi to nine psi with the new packing
went up a pound since the packing was tightened
went through two seats to get it tight
tested at twenty forty and sixty no leak on any
tested at ten percent and at full pressure
tested at room temperature seventy degrees
tested the shell before the seat
tested the seat with the actuator at three psi
tested the seat with the spring only
tested with twelve pounds on top of the spring
test took fifteen minutes
test date's the third of may
test passed on the second try
test failed at the bonnet gasket
test stopped hose let go
started the test at nine ten and ended at nine twenty
held from ten to ten fifteen and lost nothing
hold time is three minutes
hold time two minutes for this size
hold it one minute at each pressure
allowable is point one five milliliters a minute
allowable's six bubbles for the three inch
allowable is two bubbles on the inch and a half
limit's eleven bubbles for the four inch
it's twice what is allowed
it's half of what is allowed
well under what's allowed
zero point zero one percent of capacity
one tenth of a percent for class three
half a percent for class two
class five water test at the full drop
class four air at fifty psi
class four allowed is three s c f h it's at one
class six needs a soft seat
class six with metal on metal it passed
stem's under by two thou and the guide's over by three
seat's cut on the outlet side and the plug matches it
plug is scored and the cage is scored in the same place
spring measures good but the button's cracked
spring's short a quarter inch and the ends are rusted
bonnet's flat but the groove is pitted
bore measures good packing box is scored
bushing's worn out and the stem has a groove from it
packing's dry and the follower's stuck in the box
packing is good for now torqued it to seventy inch pounds
diaphragm's good at an eighth thick but the plate is bent
diaphragm is torn at the stem hole two inches long
gasket blew out on one side bolts on that side were at fifteen
gauge reads right at twenty and three pounds low at sixty
gauge checked at twenty fifty and eighty it's within one
positioner's in cal but the feedback arm is worn
bottom guide is cracked top guide has four thou wear
seat ring's cracked half way through by the lug
seat gasket's good left it in
seat is flat within half a thou
plug face runs true within two
plug and seat were lapped and they blue all around
lower case is pitted inside but it holds thirty psi
upper case has a dent by the vent doesn't matter
yoke's straight checked it with a square
body is within size bored it once already
body has washed spots under the seat quarter inch deep
body's eroded on the outlet wall is still five sixteenths
outlet flange is pitted around two of the bolt holes
inlet flange face is good
flange bolts are half inch too short for this one
vent line measures three eighths
vent's a quarter inch and it's clear
cage windows measure three quarters tall
cage has a burr at one window
cage gasket is crushed flat on one side only
balance seal's worn an eighth flat
balance seal groove measures one ninety wide
balance holes in the plug are plugged with wax
opened the holes in the plug with a three sixteenths bit
wax all over the cage and the plug
scale on the plug an eighth thick
salt scale in the body sixteenth thick chipped it out
sand packed under the seat ring about an inch of it
about a cup of sand out of the body
piece of weld rod stuck in the cage
found a gasket piece in the seat
metal chip was stuck in the seat that's why it leaked
nick in the plug lines up with the nick on the seat
wire drawn at one spot about a sixteenth wide
wire drawn across the seat gasket face twenty thou deep
seat's dished ten thousandths
plug's dished in the middle an eighth
stem's worn flat on one side two thou
stem has a ring worn in it at the wiper
stem's blued from heat at the packing
connector's cracked between the bolts
yoke nut threads are good but the nut's rounded
jam nut's cracked replaced with a new half twenty
lock washer is broken in three pieces
snap ring's stretched put in a new one
snap ring groove measures fifty thousandths
key's worn in the shaft two thou loose
shaft's worn seven thousandths at the bushing
float shaft measures point four nine zero it's ten under
float arm is eleven inches long
float holds air under water so it's good
linkage has a sixteenth of slop
linkage pin is worn half way through
pin hole's egg shaped by thirty thou
lever's worn where the pin rides
rocker has ten thou of play
trunnion packing leaks at a hundred psi
trunnion nut torqued to thirty five foot pounds
trunnion bearing's rough
torque tube turns free
controller output is zero to twenty on the bench
controller gain is at three
controller gauge is off by two at full scale
relay orifice measures fourteen thousandths
nozzle gap is two thousandths
flapper's bent and the nozzle's dirty
flapper is square to the nozzle now
bellows leaks at fifteen psi order one
bellows holds twenty no drop
needle valve's a turn and a half open
proportional band set at thirty percent
set point's at forty five on the dial
transducer puts out three to fifteen on four to twenty
transducer is a pound low at the top
`;
