/** Lines that people would say: readings, tests, sizes, dates, tags. Invented; a line a phrase, numbers and tags as spoken. */
export const NUMBERS = `
starting on f v one oh one
supply's at twenty psi
got thirty five pounds on the supply
supply pressure is twenty two
supply reads one point four bar
regulator's set at thirty
the supply gauge says twenty one and a half
set the regulator down to eighteen psi
supply was only fourteen pounds
had to bring the supply up to thirty five
signal's three to fifteen
signal range is six to thirty
it's a six to thirty pound spring
signal at nine psi
put nine pounds on it and it went half way
starts to move at three and a half
it comes off the seat at four pounds
full open at fourteen and a half psi
fully stroked at twenty nine pounds
doesn't start moving till about seven pounds
bench set is three to fifteen psi
bench set came in at six to twenty eight
bench set's off it starts at five
nameplate says bench set five to thirteen
bench set checked at seven to twenty one pounds
adjusted the bench set to three point two
set it to start at six psi
bench set range zero point two to one bar
bench set twenty to a hundred kilopascals
forty to two hundred kilopascal range
upstream pressure's one twenty
upstream is at two hundred and fifty pounds
four hundred psi upstream
inlet pressure six hundred and fifty
downstream's sitting at forty five psi
downstream pressure is about sixty
outlet gauge reads thirty two pounds
two eighty on the inlet and ninety on the outlet
line pressure is seven bar
seven hundred kilopascals on the line
line's at one thousand and fifty psi
eleven hundred pounds upstream
it's got twelve fifty on it
there's no more than ten pounds on the line
still about five pounds in the body
still holding sixty psi in there
bled it down to zero
bled down but there's still fifteen pounds on it
gauge says zero but it's holding pressure
fourteen inches of water on the breather
seven inches of water column
regulator's set at eleven inches of water
vent pressure about two inches of water
output's nine psi at half signal
controller output is twelve pounds
positioner output reads eighteen and a half
positioner supply thirty psi
positioner needs at least twenty psi supply
pilot supply is fifteen pounds
pilot's set at one oh five
pilot pops at a hundred and ten psi
set point's at four fifty
set it for sixty psi downstream
back pressure set at eighty five pounds
holding back pressure at one sixty five
separator pressure is one thirty
at sixty psi it's bubble tight
put fifty pounds on it and no leak
no leak at one hundred psi
holding good at ninety pounds
bubble tight at two hundred
dead tight at three hundred and fifty psi
seat test at fifty psi passed
seat leak test passed at one ten
leak test at seventy five pounds wouldn't hold
seat leak test failed at forty pounds
seat test at four bar no bubbles
tested the seat with three hundred kilopascals and it held
it's passing at twenty pounds
blowing by at thirty psi
leaking by with sixty on the inlet
starts leaking through at one eighty
won't hold more than twenty five pounds
wouldn't hold fifty psi
held sixty psi for five minutes
held a hundred pounds for ten minutes no drop
dropped five pounds in three minutes
lost ten psi in two minutes
pressure fell off from ninety to eighty two
no drop after fifteen minutes
holding at four point five bar
three bubbles a minute at fifty pounds
ten bubbles a minute at sixty psi
about five bubbles a minute through the seat
counted twelve bubbles in a minute
maybe eight bubbles a minute
less than one bubble a minute
forty bubbles a minute that's too many
got two bubbles a minute at a hundred psi
seat's leaking about thirty bubbles a minute
no bubbles at fifty pounds
not a single bubble in two minutes
zero bubbles after three minutes
a bubble every ten seconds or so
steady stream of bubbles at ten psi
eleven bubbles a minute on the leak test
six bubbles a minute and class six allows three
class six allows four bubbles a minute on this size
meets class four
class six shutoff
doesn't make class six
it's a class four seat so that's okay
good for class five
tested to class six and passed
class four leak test passed at forty five psi
within class four limits
leaking more than class four lets you
point four five milliliters a minute
leak rate's fifteen milliliters a minute
about twenty millilitres a minute at fifty psi
leaking two point five millilitres a minute
measured sixty milliliters a minute through the seat
a hundred and twenty milliliters a minute at three bar
less than point one five milliliters a minute
no more than point nine millilitres a minute
eight c c a minute through the seat
four c c a minute at fifty pounds
five drops a minute out of the packing
packing's leaking ten drops a minute
two drops a minute at the stem
about a drop a minute from the bonnet
packing leaks three bubbles a minute with soap on it
twenty drops a minute off the packing nut
one drop every five minutes
seat leak two hundred milliliters a minute
stroke is three quarters of an inch
stroke's an inch and an eighth
travel is half an inch
got seven sixteenths travel
full travel three quarters
only getting half an inch of travel
five eighths of an inch total stroke
travel measured one and one eighth
nineteen millimeters travel
twenty millimetre stroke
stroke came out at thirty eight millimeters
travel's short by an eighth
it's an eighth short on the travel
getting eleven sixteenths out of three quarters
travel point seven four inches
point three seven five inches of travel
supposed to be three quarters and it's five eighths
set the travel at half inch
adjusted the stroke to one and a quarter
two inches of travel on this one
travel stops at ninety percent
opens to eighty five percent and quits
only opens sixty percent
it's at fifty percent with nine psi
twenty five percent open at six pounds
seventy five percent at twelve psi
a hundred percent at fifteen
stuck at forty percent
sitting ten percent open with no signal
won't go past seventy percent
won't close past five percent
closes all but about ten percent
stroked it zero twenty five fifty seventy five a hundred
off by two percent at mid stroke
within one percent all the way up
hysteresis about three percent
indicator reads twenty percent when it's shut
reads ninety five percent at full open
valve's at thirty percent in service
running about fifteen percent open
choked down to eight percent
full stroke in four seconds
took eight seconds to stroke
took twelve seconds to open
closes in three seconds
opens in six closes in nine
twenty seconds to go full open that's slow
stroke time's two and a half seconds
takes about half a minute to close
took at least forty five seconds to shut
one and a half seconds each way
fifteen seconds opening and eighteen closing
took a full minute to come open
went shut in under two seconds
strokes full at twenty psi
strokes full three to fifteen
full travel six to thirty
stroke test passed at thirty pounds
stroke test failed only got half
stroked it five times and it's smooth
stroked ten times no sticking
stroke test good three quarters of an inch
on to lima victor two zero four
bonnet bolts torqued to twenty eight
torqued the bonnet to forty five foot pounds
torque is sixty foot pounds
body bolts at a hundred and five foot pounds
torqued to one twenty
bolts pulled to eighty five pounds
went around twice at thirty five foot pounds
first pass fifteen second pass thirty
first pass at twenty then forty then sixty
final torque seventy two foot pounds
torqued in a star pattern to fifty five
packing nut's at eighteen foot pounds
packing nut torqued to ninety inch pounds
housing bolts at one sixty inch pounds
housing cap screws twenty two foot pounds
set the torque wrench at twenty six
torqued the seat to a hundred and fifty foot pounds
seat ring torqued to two ten
seat needs one eighty foot pounds
diaphragm nut at thirty foot pounds
lock nut torqued to twelve foot pounds
jam nut forty inch pounds
torqued to sixty newton meters
thirty eight newton metres on the studs
bolts at a hundred and ten newton meters
stem connector bolts nine foot pounds
yoke nut torqued to two hundred foot pounds
flange bolts torqued one forty five
flange studs done at two seventy foot pounds
found the bonnet bolts at only ten foot pounds
bonnet nuts were loose about eight foot pounds
retorqued all eight at fifty
retorqued the body bolting to seventy five foot pounds
checked torque after an hour still thirty three
one bolt was down to twenty foot pounds
two of them broke loose at fifteen pounds
couldn't get more than forty on it
it started to yield at ninety foot pounds
snugged them to about ten pounds
hand tight plus a quarter turn
a quarter turn past snug
half a turn on the packing nut
gave the packing nut a quarter turn
two flats on the packing nut
took it up one flat and it quit leaking
tightened to sixty five foot pounds
tightened the bonnet bolts to thirty two
tightened the packing to about twelve foot pounds
needs to be torqued to fifty five foot pounds
seventy five to ninety foot pounds on these
between twenty and twenty five foot pounds
no more than fifteen foot pounds on the packing
at least a hundred foot pounds on the body
don't go over thirty inch pounds
eight bolts at twenty eight foot pounds each
six nuts torqued to forty eight
torqued all twelve studs to one thirty
torqued top and bottom at twenty four
lower housing torqued to nineteen foot pounds
upper housing bolts seventeen foot pounds
spring length is four and a half
spring's four and three eighths inches free
free length five and a quarter
spring measures a hundred and twelve millimeters
actuator spring's six and seven eighths long
new spring is seven inches even
old spring's a quarter inch short
spring lost three sixteenths
spring's down to four and an eighth
spring's half an inch shorter than the new one
preload's about three eighths
adjusting screw's out an inch and a quarter
adjusting screw backed out four turns
took two turns on the adjusting screw
gave it three and a half turns in
one full turn is about two psi
spring's got twelve turns of compression on it
compressed the spring half an inch
stem's half inch diameter
stem measures point four nine eight
stem's three eighths
stem worn down to point three seven
stem's bent about ten thousandths
stem run out is five thousandths
runout three thou
got fifteen thousandths on the indicator
stem's scored about two thousandths deep
guide bore's five oh four thousandths
guide's worn eight thousandths over
clearance is six thou
too much clearance about twenty thousandths
point oh one five clearance on the guide
guide clearance point oh oh eight
stem to guide clearance is four thousandths
cage bore measures two point oh one five
cage is worn twelve thousandths
plug's one and a half inches
plug is worn an eighth of an inch
plug measures thirty seven point eight millimeters
seat bore's one and a quarter
seat's three quarter inch
half inch port in it
one inch port seat
it's got a three eighths orifice
seat width is about a sixteenth
seating line's a thirty second wide
seat's pitted ten thousandths deep
pit in the seat's about a sixteenth
wear mark's an eighth wide
groove's worn a thirty second deep
cut a thirty second out of the seat
lapped off about two thou
took five thousandths off the face
took off ten thou and it cleaned up
gasket thickness is a sixteenth
gasket's thirty two thousandths thick
sixty two thou gasket
gasket's one and a half millimeters
eighth inch gasket in there
bonnet gasket's crushed down to forty thousandths
seat gasket point oh six two
old gasket measured fifty five thou
new gasket's three millimeters thick
diaphragm's an eighth inch thick
diaphragm's about three millimeters
diaphragm's thinned to a sixteenth
upper diaphragm's got a half inch tear
two inch tear in the diaphragm
quarter inch hole in the lower diaphragm
tear's about an inch and a half long
crack's three inches long
hairline crack about half an inch
crack runs two inches off the bolt hole
body wall's three eighths thick
wall thickness point two eight
body's down to a quarter inch at the bottom
wall measured seven point one millimeters
got a reading of point three one on the wall
lost eighty thousandths of wall
washed out an eighth of an inch deep
quarter inch deep washout at the outlet
pitted about a sixteenth all around
corrosion's twenty thou deep
o ring groove's an eighth wide
groove is point one eight seven
o ring's a hundred and three thousandths
three sixteenths o ring
o ring cross section measured two point six millimeters
o ring's flattened about ten thousandths
backup ring's a sixteenth thick
packing's three eighths square
quarter inch packing
five rings of packing in it
pulled six rings of packing out
repacked it with four rings
put five new rings in
packing box is one and an eighth deep
packing follower's got a half inch left
packing nut's got three threads left
only two threads showing on the lock nut
half inch of thread showing
stud sticks out three quarters
lost about four threads
first two threads are stripped
inlet threads are two inch
outlet threads one inch pipe
two inch threads both ends
three inch flanged body
it's a two inch valve
four inch valve class three hundred
one inch three quarter port
two inch with a one inch trim
six inch valve with a fourteen inch actuator
it's a one and a half inch body
diaphragm actuator's about ten inches across
tubing's a quarter inch
three eighths tubing to the positioner
half inch tubing kinked about a foot from the fitting
need two feet of quarter inch tubing
six inches of tubing cracked
quarter inch fitting leaking
eighth inch vent hole's plugged
sixteenth hole in the breather
indicator's off a quarter inch
indicator reads an eighth high
travel indicator reset to zero
handwheel takes ten turns to close
thirty two turns open to shut
back to p v three twelve
temperature's one sixty
body's at a hundred and forty degrees
gas temperature is about eighty five degrees
it's running two hundred and ten degrees fahrenheit
sixty degrees celsius on the body
line's thirty eight degrees c
ice on it at thirty degrees
oil temperature's one thirty five
steam side's three sixty five degrees
inlet temperature ninety two degrees
minus ten celsius at the outlet
tested at sixty eight degrees
shop temperature seventy two degrees
temperature at least two hundred
not over one hundred and twenty degrees
gauge reads twenty low
gauge is off by five pounds
gauge reads ten psi with nothing on it
zero to two hundred gauge on the inlet
gauge pegs at one sixty
gauge sticks at forty pounds
new gauge reads a hundred and one
swapped in a zero to thirty gauge
checked the gauge at fifty it read forty eight
the old gauge was reading eight pounds high
gauge's cracked and stuck at seventy
relief goes off at one seventy five
solenoid vents in two seconds
solenoid supply is ninety pounds
zero's off two percent on the positioner
calibrated four to twenty
recalibrated the positioner three to fifteen
positioner zeroed at three psi
span's set at twelve pounds
span was four percent low
positioner bleeds about a pound a minute
positioner hunts plus or minus five percent
controller's off by three pounds
regulator creeps up two psi
regulator creeps from twenty to twenty six
regulator locks up at thirty three
regulator droops four pounds under flow
regulator won't go above fifteen
strainer had eight pounds across it
differential's thirty five pounds
forty five pound drop across the valve
pressure drop's one point five bar
maximum pressure four hundred psi
rated at twelve hundred and eighty pounds
nameplate says seven forty at a hundred degrees
no more than thirty five psi on the diaphragm
diaphragm's only good for fifty pounds
don't put over sixty on the actuator
at least eighteen pounds to open it
needs about twenty two psi to come open
need a minimum of thirty five pounds
never got over twelve psi
roughly a hundred and seventy pounds
just over forty pounds
a little under ninety
between sixty and sixty five psi
hydro test at four fifty passed
hydroed it to six hundred psi for ten minutes
hydro test held at eleven twenty five
hydro failed at three hundred
hydro's good no leaks at fifteen hundred pounds
shell test at nine hundred psi passed
shell test ten minutes no leaks
shell test failed leaking at the bonnet
shell tested to thirty bar and it held
shell test one and a half times rating
bonnet leaked at two hundred on the shell test
no leaks outside at one thousand
bench tested at one hundred psi all good
bench test failed at the seat
bench tested it and it leaks at thirty pounds
bench test bubble tight at fifty
passed on the bench at one fifteen
it held on the bench for twenty minutes
held on the bench but leaks in line
failed bench test two times
passed the second time after lapping
third try and it holds
second test was bubble tight
first test leaked twenty bubbles
first test failed second one passed
retested at sixty pounds and it's good
retest after the new seat no bubbles
leak tested again after an hour still holding
packing test good at two hundred
packing leak test failed at eighty psi
no leak at the packing with three hundred on it
packing's tight at five fifty
packing held at fifty pounds
soaped the packing no bubbles
soaped the stem at one fifty nothing
packing's leaking four bubbles a minute at ninety psi
packing holds static but leaks when you stroke it
packing leaks at anything over a hundred
packing quit leaking at fifteen foot pounds
stem leaks about a drop every ten seconds
actuator test held twenty pounds for five minutes
actuator leak test passed at thirty psi
actuator lost three pounds in five minutes
actuator won't hold fifteen
actuator's holding thirty no drop
put thirty psi on the diaphragm and soaped it
diaphragm case leaking at ten pounds
air out the breather at twelve psi
air coming out of the breather at five pounds
diaphragm leaks by about two pounds a minute
housing's tight at thirty five
case bolts bubble at twenty pounds
actuator drops from twenty to sixteen in a minute
shell test
seat test good no bubbles
bubble tight
it wouldn't hold
won't hold air
holding pressure fine
passed the leak test
failed the seat test
leaking by pretty bad
still leaking by
no leaks anywhere
didn't leak a drop
shuts off good
doesn't shut off
good shutoff at fifty pounds
shuts off up to about eighty psi
can feel it passing at twenty five
can hear it blowing by at forty
passed everything at one hundred
all tests passed at a hundred and fifty psi
passed seat and stroke
passed the shell but failed the seat
seat's good packing's leaking
seat test passed packing test failed
stroke good seat leaks three bubbles a minute
strokes fine but won't hold
starting on l c v two one three
replaced last september
diaphragm's from two thousand nineteen
seat was new last march
it was last done in june
last rebuilt two years ago
rebuilt in twenty twenty one
eighteen months since the last one
been in there three years
diaphragm's about five years old
packing's only six months old
spring's original nineteen ninety eight
this one's from nineteen eighty six
date on the diaphragm's april twenty twenty
stamped second of march twenty nineteen
tag says the fourteenth of october
last tested the ninth of january
last serviced on the third of may
changed out the first of november
trim was changed twelve months back
seat went in about eight months ago
been leaking for two weeks
it started leaking in february
hasn't been touched in ten years
not been apart since two thousand and eight
went three years on that seat
previous seat only made it five months
diaphragms last about two years here
four years on the packing
o rings are at least seven years old
kit's dated may twenty twenty two
kit's expired in december
gasket's eleven months old
put in last april
installed this past july
installed on august the twentieth
replaced the upper diaphragm in november
greased it last fall
cleaned last spring
due again in six months
check it again in ninety days
check back in two weeks
needs another look in three months
good for another twelve months
should make it another year
gets greased every ninety days
overdue by four months
brand new last week
calibrated on the twelfth of february
calibration's due the thirtieth of june
positioner was calibrated in march
gauge was calibrated seven months ago
relief was set in twenty twenty three
last hydro was two thousand seventeen
hydro tested in october of twenty twenty
last stroke test was in the summer
stroke tested ninety days ago
stroke tested every quarter
seat leak tested back in may and it passed
it passed last year
failed last time too
it failed in april at fifty pounds
packing was redone the week before last
repacked it yesterday
repacked three weeks ago and it's leaking again
put new seals in thursday
took about forty five minutes
twenty minutes to pull the bonnet
soaked it overnight
waited ten minutes and checked it again
left it on test thirty minutes
left pressure on it for two hours
held for an hour
five minute hold no drop
two minute test and it's tight
ten minute soak at one hundred psi
thirty seconds on the seat test
watched it for three minutes
timed it at seven seconds
seven and a half seconds by the watch
replaced four bolts
eight new bonnet bolts
two bolts broken
three studs bent
one stud's stripped
six of the eight bolts were loose
four bolts missing out of ten
missing two cap screws
twelve studs all good
all sixteen bolts rusted
replaced a couple of studs
a couple of the nuts are rounded off
few of the bolts were loose
one of the four bolts is cross threaded
half the bolts were loose
three out of six were finger tight
broke one bolt getting it apart
snapped two studs
need six bolts five eighths by two and a half
need four half inch nuts
order eight three quarter inch studs
order two seat gaskets
order three o rings
bring me two diaphragms
bring four bonnet bolts
pick up a dozen nuts
pick up one set of packing
get me two o rings and a gasket
put one kit on the list
order a half inch seat
need a three eighths plug
need one new gauge zero to sixty
both backup rings are cut
replaced both o rings
replaced two o rings and a backup ring
three o rings swollen
one o ring's nicked the other two are fine
all five o rings hard
both diaphragms torn
both springs are weak
two of the springs broken
six springs all good
three guide holes plugged
two holes plugged out of eight
four of the six cage holes are plugged
cage has eight holes two are washed out
two cracks in the cage
three nicks on the seat
one small nick on the plug
got four scratches on the stem
couple scratches about an inch long
two scratches half inch apart
one score mark full length
a dozen pits around the seat
five pits maybe ten thou deep
one big pit and two little ones
no pits over five thousandths
no cracks in all eight studs
three spots where it's cut
one side's worn about twenty thousandths
worn a sixteenth on one side
worn ten thou all the way around
flipped the seat and used the other side
flipped it once already so it needs replaced
used both sides so put a new one in
one pint of oil in it
two quarts to fill it
filled it with a quart and a half
oil's an inch and a half low
drained two gallons of condensate
quarter inch of sludge in the bottom
half an inch of sand in the body
about an inch of mud in the vent
starting on papa victor one oh four bravo
starting on fox victor six sixteen
starting on the two inch l v four oh seven
starting f c v eleven oh one now
okay starting on p c v two twenty
starting the dump valve l v three thirty one
starting on pee vee two hundred
starting on papa charlie victor one four zero
starting on tango victor eight eight one
starting on number three p v three oh three
starting job on f v one two four alpha
starting on e s d v two fourteen
starting on foxtrot charlie victor nine nine zero
on to f v two oh two
on to p c v seventy five
on to the next one t v one nineteen
on to l c v four forty b
on to papa victor five five one
on to foxtrot victor two one zero
on to lima victor eleven
on to x v twelve oh four
on to l v thirty a it's a one inch
on to hotel charlie victor three six nine
moving on to p v nine hundred
moving on to lima victor one seven six
moving on to t c v six twelve
moving to f v thirteen oh five
next is l v two twenty two
next up p c v five sixty
next one's f c v three hundred a
next valve is tango charlie victor four zero one
now on l c v one fifty seven
now for x v four eighteen
now working on lima victor six two
working on p v one thirteen
working on f c v twenty forty
this is l v eight oh six
this one's p c v three eighty one
this is tag t v fifty two
this is papa charlie victor one one nine
tag's f v seven twenty
tag is foxtrot victor eight two
back to f v one oh one
back to l c v two one three
back on p c v seventy five
back to papa victor one oh four
back on lima victor two oh four
back to tango victor eight eighty one
going back to x v twelve
back to the three inch p v six thirty
back to foxtrot victor six one six
opening up p v two seventy one
opened up l v nineteen
pulling f v five fifty five
pulled p c v eight forty for the shop
got l c v seven oh nine on the bench
on the bench f v three one six
f v one eighteen on the bench
foxtrot charlie victor one three zero alpha
level valve five nineteen
level control valve thirty one
temperature valve one oh seven
dump valve number two
f v two eleven two inch pressure to open
p v forty four one inch fail closed
l v three fifty six air to open six to thirty
t c v one twenty eight air to close three to fifteen
x v five oh one fail open severe service
lima victor one eight is a three inch
papa victor three zero two pressure to close
f v eight hundred sandy service twelve hundred pounds
l v one sixty four sour service
correction tag's p v two eighteen
correction that's f v one oh three
make that forty pounds
i mean fifty percent
no wait eighteen psi
scratch that it's eighty psi
pressure's up to one hundred and five
pressure's down to thirty five psi
pressure's steady at forty eight
pressure's building up past twenty
brought it up to a hundred and sixty slow
took it up to three fifty and it let go
reseats at eighty four
opens at one oh eight and reseats at ninety nine
cracks open at six and a half pounds
lifts at five pounds
lifts off at three point four psi
just cracks at four psi signal
seats at two and three quarter pounds
shut tight at zero signal
closed at three psi and open at fifteen
fully closed at twenty eight pounds
at fifteen psi it's three quarters open
at eighteen it's half open
it's a quarter open at nine pounds
moves an eighth for every two pounds
need twenty psi just to move it
takes thirty pounds to break it loose
takes forty psi to get it off the seat
sticks at twelve pounds then jumps
jumps from twenty to fifty percent
jumps about a quarter inch at mid travel
drags between forty and sixty percent
hangs up at half stroke
hangs at an inch and won't go
stops a quarter inch short of shut
stops an eighth before the seat
lacks about a sixteenth from closing
won't open past a half inch
only half travel at thirty psi
not stroking with twenty pounds on it
won't move at thirty five psi
won't open at all with fifty on the actuator
no movement till twenty five
strokes smooth zero to thirty
opens and closes fine at twenty pounds
full open in five seconds at twenty psi
signal one point two bar and full open
signal's point two to one bar
point six bar gets it half way
one bar on the signal
two bar supply
two point four bar on the actuator
supply's a hundred and forty kilopascals
sixty kilopascals and it starts to move
at one hundred kilopascals it's fully open
signal twenty to one hundred kilopascals
held three point five bar no leak
seat test three and a half bar passed
seat leak at ten bar is zero
leaks by at six bar
tested at five hundred kilopascals bubble tight
three hundred fifty kilopascal seat test good
inlet's at sixteen bar
outlet two bar
eight hundred and fifty kilopascals downstream
over to p c v one eighty six
ten inches of water downstream
holding at eight inches water column
set the pilot at six inches of water
pilot won't hold under four inches of water
lockup's nine inches of water
opens at twelve inches of water closes at ten
no leak at fourteen inches water column
spring range is five to fifteen inches of water
float's dented an inch in from the end
linkage is bent a half inch
linkage has an eighth inch of slop
quarter inch play in the linkage
stem connector's got a sixteenth of play
slack in the linkage about thirty thousandths
stem's got five thou side play
stem turned down to point six two four
stem length seven and three quarters
stem sticks out two and an eighth
stem's threaded in six turns
stem goes in nine and a half turns
screwed it in ten turns and locked it
four threads engaged
counted seven threads on the stem
gap's three sixteenths
flange gap about a quarter inch one side
bonnet gap fifteen thousandths all around
bonnet's cocked ten thou
bonnet gasket groove's a sixteenth deep
gasket face pitted maybe fifteen thou
flange face has a scratch two inches long
seat area's worn thirty thousandths
seat area washed out about a quarter inch
one inch washed out spot below the seat
pinhole about a thirty second
pinhole leaks at four hundred psi
weld's cracked about an inch
yoke's cracked two and a half inches
chipped about an eighth off the plug
chip in the plug maybe a sixteenth
dent's three quarters of an inch across
dent about two millimeters deep
half millimeter off center
misaligned by about an eighth
off center three thirty seconds
plug's tip wore down three eighths
trim's cut about a sixteenth deep
cage window's washed to half inch
cage is an inch and three quarters bore
port's worn from a half to five eighths
port measures thirteen millimeters
seat bore twenty five point four millimeters
plate's three sixteenths thick
diaphragm plate's bent about a quarter inch
diaphragm bolt holes pulled out an eighth
packing's down a quarter inch from new
packing's got a half inch of adjustment left
packing nut bottomed out no threads left
added one ring of packing
added two more rings
removed five rings and put in six
two shims under the spring
added a ten thou shim
shimmed it thirty thousandths
nut's seven eighths across the flats
five eighths bolts three inches long
bolts are half inch by an inch and three quarters
half inch bolts torqued to sixty
three quarter studs to one fifty foot pounds
seven eighths studs at two eighty
five eighths nuts seventy five foot pounds
three eighths cap screws torqued at eighteen
quarter inch screws ninety inch pounds
torque on the lower diaphragm nut's thirty four
plug nut torqued to fifty four foot pounds
bottom flange torqued to one sixty five foot pounds
bonnet studs final at ninety five
bonnet bolting checked at twenty seven foot pounds
rechecked them cold at sixty two foot pounds
two of the eight moved at thirty
all good at one hundred twelve foot pounds
lubed and torqued to seventy
twenty six newton meters on the bonnet
stem nut eighty newton meters
torqued to at least sixty foot pounds
about thirty six foot pounds by feel
book says forty four foot pounds
spec's thirty to thirty five foot pounds
manual calls for two hundred and twenty
book says three quarter travel
book calls for six to thirty bench set
maximum leak is ten bubbles a minute
allowed three it's doing nine
it's under the limit at one bubble
over the limit at fifteen a minute
eighty bubbles a minute at twenty psi
too many bubbles to count at forty
couple of bubbles a minute that's all
one bubble in five minutes at one hundred
bubbles quit after a minute
bubbles stopped at thirty pounds
bubbles start at about seventy psi
four bubbles in three minutes
seven bubbles a minute at two hundred fifty
fourteen bubbles a minute before lapping two after
went from thirty bubbles to three
down to one bubble a minute after lapping
leaked sixty a minute before now it's tight
three hundred milliliters a minute before and zero now
thirty five millilitres a minute on the seat
point five milliliters a minute at forty five psi
one point two millilitres a minute with air
seventy milliliters a minute at a hundred pounds
leak rate's up to twenty bubbles
leak rate at least a hundred milliliters a minute
leakage is point one percent
this seat's supposed to be class six
metal seat so class four's all it'll do
passed class five with water
failed class six by two bubbles
class six at fifty psi no bubbles
stem seal dripping six a minute
oil dripping about once a minute
bonnet drips fifteen drops a minute
drip every four seconds from the gasket
bonnet gasket leaking five bubbles a minute
indicator gasket leaking a few bubbles
fitting bubbles at twenty psi
tubing leak at thirty pounds
supply fitting leaks maybe ten bubbles a minute
signal port leaks above fifteen
breather bubbling once every few seconds
gauge port leaks at one fifty
threads leak at sixty
inlet threads hold five hundred pounds
outlet threads weep at three twenty
flange leaks at one seventy five psi
flange held nine hundred
body seeps at two fifty
lower housing leaks at eight pounds
upper housing held forty psi ten minutes
diaphragm held thirty for half an hour
top diaphragm leaks at four psi
bottom diaphragm's good to a hundred pounds
balance diaphragm holds one thousand psi
leaks at low pressure holds at high
good up to eighty five psi
tested low at twenty and high at six hundred
high test nine fifty low test fifty both good
low pressure test failed at five psi
low test passed high test didn't
tested both ways at one hundred
nitrogen test to four hundred held
air test at eighty psi fine
water test at three hundred no leaks
air tested at six bar bubble tight
seat leak test passed
bench test passed
stroke test failed
bleeding it down from two hundred now
hydro passed
put sixty psi on the inlet and got three bubbles a minute out the other side
stroked it from three to fifteen psi and it's getting the full three quarters
torqued the bonnet bolts in two passes fifteen then twenty eight foot pounds
hydro tested the body to four hundred and fifty psi for ten minutes no leaks
bench set was supposed to be six to thirty but it starts at eight
it took eight seconds to open and about eleven to close
seat's worn about ten thousandths on one side so i flipped it
supply's thirty five psi and the signal's at twelve right now
the diaphragm's dated march of twenty nineteen so it's been in there a while
packing was leaking about ten drops a minute so i gave the nut a quarter turn
with a hundred psi upstream it's leaking about two millilitres a minute
back to lima victor two zero four the seat leak test failed at fifty psi
starting on t v three oh five it's a two inch fail closed
on to f c v sixty one supply's at twenty two pounds
replaced the upper diaphragm and torqued the housing to twenty two foot pounds
it's only getting half an inch of travel out of three quarters at thirty psi
it held fifty pounds for five minutes so i'm calling that a pass
lapped the seat and retested it at one hundred psi and it's bubble tight
need eight bonnet bolts half inch by two inch and two gaskets
last time it was rebuilt was the second of march and it leaked by june
there's still about twenty pounds trapped in the bonnet so don't open it
supply is one forty kpa
bench set twenty to one hundred kpa
starts opening at forty two kpa and full open at a hundred and three
held seven hundred kpa for five minutes no drop
seat leaks at three fifty kpa
set the regulator at two forty kpa
regulator creeps up to two sixty kpa
tested the shell to two thousand kpa
diaphragm case holds three hundred kpa
pilot dumps at ninety kpa
signal is sixty kpa and it's half open
no leak at five hundred kpa
soap tested at two hundred kpa no bubbles
supply gauge reads one hundred and forty kpa
upstream's at eleven hundred kpa downstream six fifty
closes at twenty one kpa
needs at least one forty kpa to stroke
hydrotested at twenty one hundred kpa for ten minutes
dropped from seven hundred to six eighty kpa in five minutes
output is fifty five kpa
`;
