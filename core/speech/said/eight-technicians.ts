/** Lines of eight technicians, each over three or four valves from the tag to the hand back. Invented; a line a phrase, numbers and tags as spoken. */
export const EIGHT_TECHNICIANS = `
here at l v two twelve
two inch on the gun barrel
air to open i think
sand in it always
my lock's on it
both blocks shut
bleeding it off now
gauge was at forty five
down to ten
down to nothing now
still a little hiss
okay the hiss quit
got mud all over it
mud knocked off
tubing's off the top
nut on the tubing was loose
breather was full of dobber mud
knocked the mud out of the breather
yanked the top
spring came right out
that spring's rusty
it's five and a quarter long
five and a quarter is short
top rubber's split
got a split by the bolt circle
bottom rubber's soft yet
plate's okay just dirty
nut on the plate was backed off
stem's got a line on it
line's up where the packing is
packing's cooked
packing was hard as a bone
bonnet nuts off
one stud came out with the nut
gasket tore on me
bonnet gasket left half on the body
hung up on the cage a bit
got the cage
two slots cut in the cage
cage goes in the trash
plug's chewed on the nose
seat's cut on the back side
cut about a quarter inch wide
other side of the seat's good
so i flipped that seat
new plug on the old stem
sanded the line off the stem
four rings of packing in
a new cage in it
bonnet down with a new gasket
twenty eight on the nuts
twenty eight foot pounds all around
new rubber on top
kept the bottom rubber
put the spring back it'll do
fifteen on the housing bolts
twenty pounds and she moves
it went the whole three quarters
sixty on the inlet
no bubbles in the cup
the packing's dry
a little weep at the inlet union
snugged the union and it quit
need a spring for it
need one cage for the truck
pull my lock off
it's back on
that's two twelve done
okay next is l v thirty one
one inch this time
high pressure dump
this one's froze
ice on the whole bonnet
poured hot water on it
ice is gone
locked it out upstream and down
twelve hundred on the line before
took a while to bleed
zero on the gauge and zero at the bleeder
plug of ice in the signal line
blew the ice out
body's not cracked
looked it over twice no crack
six bolts all good
cage came right out
one port stopped up with wax
dug the wax out
the plug's fine
seat's fine too
wiped the seat off
maybe ten thousandths
it'll run like that
the guide's tight on it
reamed the guide a little
now the stem drops free
o ring in the guide was flat
got a new o ring on the guide
bonnet gasket's okay so it stays
same gasket back in
a hundred and five on the bolts
a hundred and five foot pounds i did it in three rounds
thirty then seventy then a hundred and five
oil's low in the snubber
filled it up to the plug
thirty on the signal
it jerks coming up
jerks about halfway then goes
backed the packing off a flat
smooth now
eight hundred on it and holding
i see two bubbles
two bubbles a minute
that's good enough
soap on the bonnet and nothing
thirty one's done for now
come back in a month
at the heater now
f v eleven
it's a three inch
air shuts it
been leaking they said
hear it hissing shut in
block won't hold
upstream block's passing
can't work on it like this
got the other block shut
that one holds
lock on the second block
bled it to the tank
still had five pounds in the body
body's empty now
split the bonnet
washed out bad
hole in the body wall nearly
body's eat up behind the seat
i could put my finger in it
pencil fits in the washout
seat ring's half gone
plug's worse
that whole trim's junk
threw the trim in the bucket
need a whole new body
need a three inch body
get me a body kit and bolts for it
stem's okay keep it
diaphragm's okay keep that too
spring's good six and a half
no sense putting it back
put the old one together loose
put a skillet blind in it
left it locked out
tag's hung on it
tell the pumper it's down
okay i'm back at f v eleven
got the body here
new body's on
flange bolts at one twenty
one twenty foot pounds two times around
new gaskets both flanges
seat went in with the long bar
seat at ninety
cage in it and bonnet on
bonnet at sixty five
top put on
air on it fifteen pounds
it shuts hard
seat holds at two fifty
not one bubble in five minutes
flanges are dry
opens full when i drop the air
inch and a half of travel
took nine seconds
the valve's in service
pumper's got it now
eleven's finished
last one is l v four
three quarter valve on the drip pot
little bitty thing
shut in and bled down
gauge don't work
gauge stuck at twenty
now it says zero
took the lid off
little spring's broke
broke in three pieces
got all three pieces
diaphragm's got a hole
hole's big as a match head
put a new one on
new spring from the box
spring's one and three eighths
plug's a ball on this one
ball's pitted some
seat's got a nick
lapped it quick
nick's out of it
eight screws in the lid
screws at forty inch pounds
pop it with ten pounds
it pops at eight
it shuts at four
put fifty on it
fifty and no drip
the vent's clear
bug screen's gone off the vent
need a bug screen
wiped it all down
done here let's eat
work order starts with the tag p v three forty four
tag on the body agrees with the tag on the paper
valve is a two inch globe in carbon steel
the action is air to open with the spring closing it
normal service according to the sheet
received with the actuator still mounted
received with no handwheel and no positioner
as received the stem is all the way down
as received condition dirty with scale on the outside
match marks were put on the bonnet and the yoke
spring was relaxed before the housing was opened
adjusting screw backed out eleven turns to relax the spring
counted the turns so i can set it back
actuator bolts removed twelve of twelve accounted for
long bolts came out last
upper housing lifted off and is clean on the inside
the diaphragm shows wear at the plate edge
diaphragm is hard at the rim and it measures ninety thousandths
new diaphragm measures one hundred twenty five thousandths
diaphragm replaced on account of age
actuator spring free length is seven and one eighth inches
drawing calls for seven and a quarter so the spring is an eighth short
spring wire is point two five in diameter
no cracks in the spring under the glass
stem connector separated and both halves are marked
stem measured at three places with a micrometer
stem at the packing is point four nine eight
stem in the guide is point four nine nine
stem runout is two thousandths which is within five
guide bore measures point five oh four at the top
guide bore at the bottom is point five oh six
clearance of the stem in the guide is five to seven thousandths
limit for the clearance is eight so the guide is reused
packing removed with a hook and six rings counted
the bottom ring of the packing was extruded past the washer
packing box is smooth with one light scratch
the scratch is below the packing and is left as it is
bonnet gasket was flat and it's been thrown out
cage was drawn with two jack screws
cage bore is one point eight seven seven
cage bore worn two thousandths out of round
plug skirt is one point eight seven one
plug to cage clearance works out at six thousandths
plug seating edge has one nick at about four o'clock
the plug was dressed in the lathe five thousandths taken
seat angle is thirty degrees on the plug
seat ring was marked before it was loosened
seat ring broke loose at one hundred and sixty foot pounds
seat ring face shows wire drawing over about a third
seat ring was refaced by twelve thousandths
after facing the seat is clean all the way around
blued the plug to the seat and the line is unbroken
contact line is one thirty second wide
body bore behind the seat is sound
the threads in the body are clean and intact
seat ring threads wire brushed and coated with anti seize
seat ring torqued to one hundred and twenty foot pounds
seat gasket is new and is point one two five thick
the cage gasket is new
bonnet gasket is new and seated in the groove
studs and nuts were cleaned and oiled
two nuts were rejected on the threads
bonnet torqued in three passes twenty forty and fifty five
final bonnet torque is fifty five foot pounds
checked with a second wrench and it reads fifty five
packing is a five ring set with the lantern ring
packing nut set to twelve foot pounds and backed off a quarter turn
packing friction is about four psi
stem connector torqued to eighteen newton meters
diaphragm nut torqued to thirty five foot pounds with thread locker
housing bolts torqued to two hundred and forty inch pounds
adjusting screw returned to eleven turns in
bench set is three to fifteen psi as found
bench set adjusted and now begins at three point one
full lift comes at fifteen point two
travel is point seven five on the dial indicator
rated travel is three quarters so travel's correct
hysteresis on the way down is half a psi
leak was eight milliliters a minute
allowed for the class is eleven milliliters so it passes
shell test with water at eleven twenty five for three minutes
shell shows no leak at any joint
the packing was dry at eleven twenty five
actuator held thirty psi for ten minutes without a drop
stroke time four point two seconds opening
stroke time three point eight closing
painted two coats and the tag wired back on
parts used are one diaphragm one packing set and three gaskets
parts to order are one actuator spring seven and a quarter
released to stores on the green tag
p v three forty four is closed
second on the sheet is l c v eighteen oh two
l c v eighteen oh two is a one inch angle body
the body is stainless with hard trim
severe service is stamped on the sheet
it was flushed and checked for h two s before it came in
zero on the monitor at the openings
as found test first before anything is touched
as found seat leak forty milliliters a minute at fifty
as found stroke full at eighteen psi
as found packing leaks at twenty drops a minute
disassembly started at the top
upper diaphragm is sound
lower diaphragm is cracked in the fold
crack in the fold is three sixteenths long
lower diaphragm thickness is eighty thousandths
diaphragm plate flat within three thousandths
diaphragm washer is bent about a sixteenth
the washer was pressed flat
spring checked at four point eight seven five free
spring rate not checked
stem is scored from the packing down for an inch and a half
depth of the score is about four thousandths
stem is rejected
plug and stem come as one piece so the plug's replaced with it
the old plug had erosion on the seating edge
seat was eroded on the outlet side to a depth of thirty thousandths
flip side of the seat is untouched
seat ring reversed and the good side is up
cage has no wear that i can measure
cage o ring is swollen ten thousandths over
cage o ring renewed along with both backup rings
the backup rings were cut on the bias as they should be
stem guide bore is point three eight one
should be point three seven eight so it's three over
the guide's replaced
guide hole is open and clear
body bore polished with a flap wheel
seat area in the body is good
inlet threads gauged and they take the plug gauge
outlet threads take it too but half a turn deep
body bolting is eight studs at seven sixteenths
one of the eight has a stretched thread
replaced all eight for the sake of one
bolts torqued to forty two newton meters cross pattern
diaphragm nut torqued to twenty four foot pounds
lock nut on the plug to sixteen foot pounds
indicator gasket is cut from thirty second sheet
indicator screws torqued to thirty five inch pounds
supply port chased with a quarter inch tap
breather removed and washed and put back
supply set at thirty psi for the tests
valve cracks open at nine and a quarter psi
fully open at twenty one and a half
travel is seven sixteenths
travel as marked on the plate is seven sixteenths
seat tested at one hundred with air under water
one bubble in the first minute and none in the second
seat leak accepted
packing tested to one and a half times with no drips
actuator soaped at thirty five and nothing showed
stem moves without stick slip
l c v eighteen oh two accepted
next inspection six months on account of the service
wrapped and the openings are plugged
third is the pilot regulator from f v sixty six
regulator is a quarter inch with a range of zero to sixty
outlet creeps from twenty to twenty six in five minutes
that creep's the seat in the regulator
the regulator seat has a ring pressed in it
ring in the seat is fifteen thousandths deep
regulator diaphragm is good
kit installed and the screen cleaned
spring on the regulator is two inches free
outlet set to twenty psi
outlet at twenty after ten minutes no creep
relief opens at twenty five and a half
gauge compared with the test gauge and reads one low
gauge is replaced
f v sixty six regulator is ready to go back
fourth on the sheet is a three inch body by itself
body has no tag the paper says l v fifty five
bonnet face has a cut across it at two places
deepest cut in the face is eight thousandths
face machined ten thousandths to clear it
the gasket groove was recut to depth
groove depth is now point one two oh
flange faces are serrated and undamaged
wall thickness by the meter is point three one two at the thinnest
minimum wall is a quarter so it's still good
stud holes were chased with a five eighths tap
the body's cleaned and oiled
hydro at twenty two fifty for ten minutes and dry
l v fifty five body is fit for use
well i've pulled up to l v two oh six
she's an old valve this one
i put this valve in myself about nine years back
it's a two inch dump on the free water knockout
it takes pressure to open it
they've had nothing but sand out of this well since spring
the pumper says it's been dumping every couple of minutes
before i touch it the vessel's at sixty two pounds
i can hear it blowing by with my ear on the pipe
i've got the vessel bypassed and my lock is on the handle
i opened the bleeder and it's coming down slow
it was holding about eight pounds in there so i waited on it
now it's down to nothing and i've left the bleeder open
i took the tubing loose first so nobody can put air on it
on the outside the paint's gone and the bolts are rusted
there's a dent in the upper housing where somebody hit it with a wrench
the travel indicator was painted over so i scraped it off
i let the spring down easy before i took the last two bolts out
when the top came off there was water standing in the upper housing
that water's what rusted the spring
the spring is rusted but it still measures five and seven eighths
new it was six inches so it's lost an eighth in nine years
i'll put that spring back because i don't have another
the upper diaphragm has gone stiff but there's no hole in it
held to the light it's got two little cracks by the bolt holes
so the upper one gets changed
the lower diaphragm was changed last year and it's still like new
the nut on the diaphragm plate was only finger tight
there's thread locker on the bench so i'll use it this time
stem's got a bright ring worn on it where it rides in the guide
i put the calipers on that ring and it's down about six thousandths
that's not enough to throw a stem away
the guide is wallowed out on one side though
you can rock the stem in it a sixteenth of an inch
so i knocked that guide out and drove a new one in
the packing came out in crumbs and somebody had mixed two kinds
i had to break the bonnet loose with a cheater
it took a good hundred and fifty foot pounds to move it
the gasket under the bonnet was pinched on the one side
it had been put on crooked
the cage was packed clear full of sand
i tapped the sand out of it on a board
there's three slots in the cage that have been cut wide
i've seen worse but i wouldn't run that cage another year
so there's a new cage going in it
the plug's washed on one side like it's been sitting cocked
and the seat is worn to match it right there
i turned the seat over and the underside is as good as new
the plug i had to replace since there's no turning a plug over
i cleaned the body out and felt around in there and it's smooth
there's a little erosion below the seat but it's nothing to worry about
i put a new gasket under the seat and ran it down to ninety
then i set the cage in and it went down flush
on this bonnet i go to thirty eight foot pounds
i went around twice and they didn't move any more
i packed it with five rings and staggered the cuts
packing nut's just snug and i'll take it up if it drips
the housing bolts got fifteen foot pounds apiece
i set the supply to thirty and gave it some air
she started to lift at about nine pounds and was wide open at eighteen
i ran it up and down a half a dozen times and it's smooth
full travel is three quarters and she makes all of it
i put the vessel pressure back on it and listened and it's quiet
there's not a bubble in the bucket at sixty two pounds
i wet the packing down with soap and it never made a bubble
i'd like somebody to order a spring and a top diaphragm for this valve
and i'd look at it again in about six months with that sand
i've taken my lock off and told the pumper that it's his
so that'll do it for two oh six
now i'm over on the gas side at p c v fourteen
this is the back pressure valve and it's supposed to hold eighty five
it's been holding anywhere from seventy to ninety five they say
it's a three inch and air closes it
if it loses air it goes wide open
it has a pilot on it and i believe that's the trouble
i pulled the little screen out of the pilot and it's slimed over
the screen was so plugged you couldn't see daylight through it
i washed the screen out with some solvent and blew it dry
the nozzle in the pilot had a fleck of pipe dope in it
the flapper's got a dimple worn in it but it's shallow
the pilot spring's fine and i put it back like it was
there's a crack in the tubing at the ferrule and that was leaking too
i cut an inch off the tubing and put a new ferrule on
the gauge on the supply was stuck
i can't tell you what it was running at
with a new gauge on it the supply reads thirty five
that's too high for this pilot so i brought it down to twenty
the valve itself i haven't opened because it shuts off fine
i put twenty pounds on top of it and it went shut
it stood shut with eighty five behind it and nothing went by
the diaphragm's holding and there's no air out of the vent
the packing had a weep so i gave the nut a quarter turn
it quit weeping and the stem still moves free
i set the pilot and it came in at eighty six
it's been sitting at eighty five for ten minutes now
it moved one pound either side when the compressor came on and that's all
i left the old gauge in the box with a tag on it
somebody ought to bring a new flapper out here next trip
and that's about all there is to say for number fourteen
the third one today is in the shop
they brought it to me in a bucket
there's no tag on it but the ticket says l v nine thirty
it's a one inch high pressure dump by the looks of it
the first thing i see is that two of the body bolts are missing
the others came loose with my fingers so it's been apart before
there's no gasket in it at all and that's why it leaked
the seat's been put in upside down with the chewed side up
somebody flipped it and then flipped it back i suppose
both sides of that seat are worn now so it's done
i got a new seat ring out of the drawer
it's the stainless one
the plug has a groove all the way around about ten thousandths deep
i chucked it up in the lathe and took fifteen off of it
then i lapped the two of them together till i got a full line
it's a nice thin gray line and it isn't broken anywhere
the stem's straight and i rolled it on the plate to be sure
the stem guide o ring was rolled up in the groove
i worked a new one in with a little grease on it
the cage o ring and the backup rings are all new
the balance diaphragm was put in dry and it's wrinkled
there's a crease in it that's going to be a hole
the plate had a burr on it that i took off with a file
the big spring is good and it's four and five sixteenths long
the threads in the inlet have been mashed by a pipe wrench
i ran a tap through the inlet and they cleaned up fine
the outlet threads weren't hurt
i put eight new bolts in the body and took them to twenty eight
the lock nut got thread locker and sixteen foot pounds
it sat on the bench overnight so the locker could cure
this morning i put a hundred and twenty pounds of air under it
it made one bubble when the pressure came on and then it stopped
i gave it five minutes and there was nothing more
it opened at eleven and it was full at twenty four
when i dropped the air off it snapped shut like it ought to
there's no air out of the little hole so the diaphragms are both holding
i ran water at two hundred to see if the body sweats
the body doesn't sweat at two hundred
i've stamped a new tag for it and wired it on the bonnet
it's ready to go home and i'd call it good for a year
the last one is tango victor fifty and it's only for a look
the foreman wanted to know if it'd go another season
i didn't take it down all i did was stroke it and listen
it makes its full inch and an eighth and it's not hanging
it took seven seconds going up and about eight coming down
with it shut there's a faint hiss so it's passing a little
i'd guess maybe twenty or thirty bubbles a minute
the bonnet's dry and the packing is dry
the indicator plate's missing a screw and i put one in
the yoke has surface rust and it'll need some paint
the diaphragm could be starting to go
there's a breath of air at the vent
i'd order a diaphragm and a seat kit for it before the fall
i tell them it'll make it to the fall but not through the winter
note that tango victor fifty was looked at and not opened
so that's that and i'm headed to the house
okay so um this is f v three seventeen i think
let me wipe it off yeah it says f v three seventeen alpha
it's a two inch i'm pretty sure or a one and a half
no it's two inch it's cast right there on the side
so does the air open it or close it let me look
spring's underneath so air pushes it down so air to close
okay so that's fail open then
did i lock it out yeah my lock's on there
and the other lock's on the downstream one good
how much is on it the gauge says twenty two
so i gotta bleed twenty two pounds off it
okay it's going down eighteen twelve six and zero
wait it's coming back up there's three pounds
so that block's leaking past it a little
let me crank on the block some more
okay now it's staying at zero
i'll leave the bleeder open just to be safe
alright what do we have on the outside
there's a drip under the packing nut looks like
and the breather's i don't know it's got paint on it
i'll dig the paint out of there
tubing looks okay no kinks that i can find
the fitting's a little green but it's tight
so bolts first there's eight of them
seven came out and the eighth is rounded off
got it with a pipe wrench so that one's trash
i need one bolt three eighths by an inch and a quarter
okay the housing's off and here's the diaphragm
it's got this like blister on it
does that count as swollen i'd say it's swollen
yeah it's swollen near the center
i'm not gonna put that back in
do i have one yes there's one in the kit
under it the plate's fine just a little rust
and the nut's tight so i'm leaving it
the spring's next let me measure it
so that's six and let me see six and five sixteenths
what's it supposed to be six and a half
so that's three sixteenths short hmm
i think that's okay it's okay
stem's kind of shiny on one side
feels smooth with my fingernail so it isn't scored
i'd call it worn a little on one side
okay now the bonnet how do i get this off
tap it there it goes
gasket stuck to the bonnet instead of the body
scraped it off and there's a scratch in the face
it's not deep maybe two thousandths
cage looks alright wait no there's a crack
there's a crack from the top slot down to the next one
so it's cracked at the top call it that
that cage can't go back then
and the plug what do i think about the plug
there's a shiny ring on it but no cuts
plug's good i'd say
and the seat's got well it's like a bunch of tiny holes
so that's pitted pitted all around
i could lap that couldn't i
lapped it for about five minutes and most of it's gone
still two pits left so five more minutes
okay that's got it the seat's clean
what size is this o ring two twelve i think it's a two twelve
put the two twelve o ring on the guide
cage o ring's next and i greased it first
don't forget the seat gasket okay it's in
new cage in does it go all the way down yes
bonnet gasket bonnet and the bolts
so it's thirty foot pounds no it's twenty eight isn't it
twenty eight foot pounds and i went across like you're supposed to
second time around one of them moved a bit
third time none of them moved so that's good
packing nut maybe fifteen inch pounds to start with
hooked the air back on it let's see
ten pounds nothing fifteen pounds it's moving
okay it's all the way shut at twenty four
how far did it go looks like eleven sixteenths
is that enough it says three quarters on the plate
so it's a sixteenth short let me turn the connector
two turns and now it's the full three quarters
so put some pressure on it a hundred pounds
i've got a bubble there's another one
that's like four bubbles a minute
is four okay for a two inch i'd better ask
wait it's slowing down
only one that minute so that's fine
soap on the packing and yeah there's foam
there's foam around the stem so it's leaking
quarter turn on the nut and now there isn't any
okay what am i missing here
oh the cage i need to order a cage and a bolt
and a diaphragm since i used the one in the kit
lock's off i think that's it on three seventeen
so the next one's hmm l v six oh nine
six oh nine is a dump it's right behind the treater
i already shut it in and it's bled to zero
somebody left a glove in the way of the indicator
so the indicator's bent from that i bet
i bent it back pretty close to straight
now let me try and move it before i open it
it doesn't move at all with thirty pounds on it
so either the stem's stuck or the diaphragm's torn
hang on i can feel air coming out of the vent
so the diaphragm it is
yep there's a tear about an inch long
the tear's right at the edge of the plate
how come it tore there let me feel the plate
okay the plate's got a sharp edge on it
so i filed the edge and now it's smooth
put a new diaphragm on it and the old nut
what's the torque for that nut thirty five i think
thirty five foot pounds with the blue stuff on it
the inside i'm not opening i don't think i need to
wait let me check the seat before i say that
eighty pounds on it and zero bubbles so no i don't
so it strokes now it starts at eight and it's full at sixteen
let me time it one two three about three seconds
feels a little sticky right at the top though
i put a drop of oil on the stem and it's better
do i need to write the breather down it was missing
so there's no breather on it i gotta get one
put a piece of screen over the hole for now
okay six oh nine is back in and it's dumping
third one let me find the tag here it is p v ten
p v ten it's a little one like half inch
i guess it's half inch the pipe's half inch
it's the supply regulator for the level controller no it's a valve
okay it's a control valve with a tiny actuator
it's locked and the line's open to the air
the line pressure was three hundred so i was careful
so the bonnet's screwed on like a cap
took the big wrench and it came at around eighty foot pounds
inside there's a needle instead of a plug
the needle's got a groove just off the tip
the groove's i don't know point oh one deep
so that's wire drawn right
and the seat goes with it i guess since they're a pair
yeah the seat's got the same mark on it
i have the set so both are going in new
the packing's just two rings in this one
they're kind of fuzzy so i changed them
spring's only two and a quarter long
it's the same as the new one so back in
cap on and what's it say sixty
sixty foot pounds on the cap
okay now three hundred pounds i'm going slow
one hundred two hundred three hundred and it's holding
no drips at the cap or around the needle
it moves with three pounds and it's open at fifteen
that's a three to fifteen so that's right on
is there anything else on it the gauge is foggy
the gauge is full of water but it works
i'd say bring a gauge zero to thirty
so that's p v ten and i'm done i think
one more it's getting dark l v twenty two bravo
twenty two bravo was done in march it says
so i'm only supposed to look at it
no leaks on the outside um there's one at the union
union's dripping about ten drops a minute
tightened it up and it still drips a little
so it probably needs a new gasket in that union
air supply's thirty two which is kinda high
turned it down to twenty five
it strokes i watched it dump two times
each time it was open like six or seven seconds
and it shut off clean i couldn't hear it
there's a bolt missing in the upper housing
found it in the gravel and put it back
snugged that to about fifteen
okay i'm gonna say it's good till next spring
that's everything on my list close it out
this is the l c v seven forty off the test separator
the tag is wired to the yoke and it's hard to read
the valve is a two inch and the air opens it
the service is dirty and it's full of the black stuff
the upstream pressure was a hundred and ten before i shut it
the downstream pressure was about thirty
the lock is on the upstream and the tag's with it
the drain is open and it's running
the gauge is at zero and it's staying there
the supply is off and the line is bled
the outside of it is caked with oil
the indicator is there but the pointer's gone off it
the breather is in it and it's clean
the yoke is fine it's just greasy
the upper housing came off and it is rusty inside
the nuts on the housing were loose the whole way around
the top diaphragm is soaked with oil
the oil is from the packing i think
the bottom diaphragm is the one with the hole in it
the hole is at the edge and it's about an eighth of an inch
the diaphragm plate has a wear ring on it but it's okay
the diaphragm nut is good and the threads on it are good
the spring is out and it's six and one eighth
the spring has a spot of rust on the bottom coil
the stem is out of the valve and it's straight
the stem has two scratches on it by the packing
the scratches on it are light so it's going back
the packing is worn out and it is swimming in oil
the packing nut is fine
the bonnet is off now and the gasket is in two pieces
the bolts on it are good except the one
the one bolt is bent so it's getting replaced
the cage is loose in the body and it shouldn't be
the cage gasket under it was gone
the cage o ring is flat on the one side
the cage itself has no cracks and it's clean now
the guide is tight on the stem and it's not worn
the o ring in the guide is good and i'm leaving it
the plug has a nick in it at the edge
the nick in the plug is a sixteenth wide
the seat is wire drawn on the inlet side
the seat was flipped before so it can't be flipped again
the seat gets replaced and it gets a new gasket with it
the body is worn a little under the seat
the seat area isn't washed it's only stained
the inlet threads on it are okay
the outlet threads are okay too
the new seat is in and it's torqued to a hundred
the plug got lapped to it and it shows a full line
the cage is back in it and it has the gasket now
the bonnet is on and the bolts are at twenty eight
the new packing's in and the nut is at ten foot pounds
the diaphragms are both new and the plate is cleaned up
the nut on the plate is at thirty five foot pounds
the housing is on it and the bolts are at eighteen
the signal port was stopped up and it's clear now
the supply is back on it and it's set at twenty five
the valve starts at seven pounds and it's open at twenty
the travel on it is five eighths and it should be three quarters
the connector was the trouble and i moved it
the travel is three quarters now
the seat test was at a hundred and it's tight
the packing was soaped and it isn't leaking
the bonnet was dry and the body was dry
the stroke is smooth and it takes about five seconds
the parts for it are a bolt and a pointer
the pointer needs to be ordered it's not in the truck
the valve is back in and the lock is off of it
the seven forty is finished
the next is the f v twenty nine it's an inch and a half
the line to it is shut in and bled down on both sides
the tag for the lock is on the handle
the pressure won't go off of it there's still fifteen in there
the drain was plugged and that's why it's holding
the drain got rodded out and the pressure came off it
the valve is dead now and it's safe to open
the handwheel on it is stuck and it won't turn
the handwheel was greased and it's turning again
the positioner has the cover off and there's water in it
the water in it was a cup full
the positioner was dried and it's working but the gauge in it is bad
the gauge is reading five pounds with the air off of it
the linkage on the positioner is loose and the pin in it's worn
the pin was an eighth and it's worn down to ninety thousandths
the new pin's in it and the slop is gone
the actuator bolts were tight and none of them was broken
the diaphragm in it looks new so it goes back
the actuator spring is eight and a half inches and it's good
the adjusting screw is rusted and it took some oil to turn it
the bonnet bolts came off at about a hundred and thirty
the bonnet gasket is good but it's getting changed
the trim came out of it in one lift
the plug is washed out on the bottom and the stem's fine
the seat is cracked and the crack goes through it
the crack is on the outlet side of the seat
the cage has the windows worn but it's in the limit
the wear on the windows was about twenty thousandths
the body was cleaned and it has the pits down in the bottom
the pits are shallow it's maybe a thirty second
the new plug is on the stem and it's pinned
the new seat is in it with the anti seize on the threads
the torque for the seat was one forty
the bonnet's on it and it's torqued to eighty five
the eighty five was in three passes
the packing in it is the carbon kind and it's six rings
the packing nuts on it are at forty inch pounds both of them
the stem connector's on and it's at twenty foot pounds
the bench set on it was at four to fourteen
the bench set is at three to fifteen now
the travel is one and an eighth and it's all there
the positioner was set and it's at fifty percent with nine pounds
the leak on the seat was six bubbles in the minute
the second time it was two bubbles and that's okay
the packing was tested at three hundred and it's dry
the f v twenty nine is on the line and it's controlling
the level is steady and the valve's at about forty percent
the operator has it and the lock's been pulled
the next time for it is in six months
the last one is the p v eighty three
the valve on it is a four inch and it's the fail closed kind
the crew has the line blinded so it's safe
the outside bolts were wire brushed and the nuts were soaked
the nut on the third stud was seized and it was cut off
the studs are five eighths and there's twelve of them
the bonnet was lifted with the hoist it's about a hundred and eighty pounds
the gasket on it is blown out between the two bolts
the face of the bonnet is cut where the gasket blew
the cut in it is a sixteenth deep so it's going to the shop
the cage is galled to the plug and it won't come apart
the plug is seized in the cage is what it is
the cage and the plug are both getting replaced
the stem is galled too at the bottom of it
the seat ring took two hundred and sixty to break it loose
the seat is good and it's the only thing in there that is
the gasket on the seat was replaced
the guide in the bonnet is worn it's eleven thousandths over
the guide is getting pressed out and there's a new one for it
the diaphragm is the fourteen inch and it's cracked at the bead
the spring is good and the length of it is eleven and a quarter
the yoke nut was loose and it's tight now
the order for it is a cage and a plug and a stem
the order has the bonnet gasket on it and the twelve studs
the valve is open on the stand and it's covered up
the bonnet's in the truck and it's going with me
the job isn't done so leave it open
the bonnet is back and the face of it is good
the face was cut by twenty thousandths and it's flat
the new trim is in it and it slides
the studs are new and the nuts on them are oiled
the bonnet went to two hundred and ten foot pounds
the last pass on it none of the nuts turned
the supply to it is forty and the signal is three to fifteen
the stroke is two inches and it's the full two inches
the opening took twelve seconds and the closing took nine
the seat at six hundred leaked ten c c a minute
the ten is under what it's allowed so it's passed
the vent is quiet so the diaphragm's holding
the blind is out and the valve is lined up
the p v eighty three is given back
`;
