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
the packing's cooked
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
it's smooth now
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
the plug's worse
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
eleven's all finished
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
okay that's four let's eat
one more after lunch l v nineteen
two inch same as the first
shut it in at the wing
seventy on it
bled it into a bucket
bucket's full of black water
zero and stays zero
signal line's crimped
cut the bad foot off the line
lid's off it
mouse nest in the top
cleaned the nest out
rubber on top got chewed
chewed at the edge not through
still swapped it
the lower rubber's got a bubble in it
swapped that one as well
plate had a ding in it
hammered the ding flat
spring's six inches on the tape
spring's good then
stem won't slide
stem's stuck in the bushing
oil and a mallet and it came
scuffed the stem up some
emery on the stem and it's slick
bushing's scored up top
get me a bushing
no i got one here
drove the bushing in
seat's like new
plug's got two dings
stoned the dings off
cage had a rock in it
a rock the size of a pea
rock bent nothing
cage is in it
gasket's in and bonnet's down
thirty on the bonnet nuts
i mean twenty eight
twelve on the packing nut
put air to it
wide open at twenty two
shut at nine
seventy on it no drip
soaped all of it and it's dry
pulled the lock
nineteen's good now
bucket needs dumped
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
before i go there's one more and it's l v four oh one
it's the one inch on the fuel gas scrubber and it hardly ever works
it sat all winter so i expected the worst
the scrubber had thirty eight pounds on it when i came
i shut both sides and it bled right down to zero
the tubing was full of water and it ran out on my boot
when i loosened the lid the spring gave it a little push
so i backed the screw off before i took the rest of the bolts
the diaphragm looks like an old boot but it isn't torn
an old boot won't last so i put a fresh one on
the spring measured three and a half and it's as bright as a dime
the stem came out with a skin of rust on it
under the rust it was pitted up by the packing
the pits are only three or four thousandths so i dressed them
there were two rings of packing missing out of the five
i put all five back in and they're the soft kind
the bonnet gasket was paper and it had rotted
so i cut one from a thirty second sheet and it fits
the cage was free and there was a cricket in it
the plug has its shine yet and the seat has too
i wiped the two of them off and left them alone
the guide's good and the o ring in it is still round
i torqued the bonnet to eighteen foot pounds on those little bolts
the lid bolts i did by feel at about ten
the packing nut's at eight inch pounds and that's plenty
with fifteen pounds on it the stem came up a quarter inch and stuck
i worked it a few times and then it went the full half inch
it's been holding thirty eight pounds a good while with no leak
nothing's coming out around the stem or out of the bonnet
i'd put it down for a look every six months so it doesn't sit
somebody should blow the water out of that supply line too
order a bottle of soap for the truck while you're at it
that's four oh one and this time i'm really going
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
oh hang on there's one more on the back of the sheet
it's um l c v thirteen by the water tank
thirteen's shut in already somebody left their lock on it
okay so i hung mine next to it
is there pressure on it it says seven
let me tap the gauge it's zero it was just stuck
so the outside's all salty and the bolts are white
i can't read the size but it looks like a one inch
the bolts came out okay i counted six
let's see is the gasket any good it's got a split
the gasket's split so there's a new one
the diaphragm's soft and i can't find a hole
but there's salt on both sides of it so how'd it get there
oh i see it there's a pinhole right in the crease
good thing i looked so that's a new diaphragm
spring's kind of crusty but it's four and a half like it should be
cleaned the crust off it and it's pitted a little
is pitted okay for a spring i'd say replace it
i don't have one so it goes back and i'll order one
the stem has um green stuff on it by the nut
it wiped off and there's nothing under it
the nut's stuck on the stem it's like welded
soaked it ten minutes and it came off
threads are fine i think yeah they're fine
the seat looks shiny on top and kind of dull on the bottom
which way's it supposed to go shiny side to the plug
so no wear on it i'm gonna leave that alone
the plug has a chip on it like somebody dropped it
chip's on the edge and it's maybe a sixteenth
so that's chipped and it needs a plug
where's the plug in this kit there it is
all back in it and twenty eight on all six
was that twenty eight or thirty eight it's twenty eight for the one inch
gave it some air and it popped open at twelve
so it's full open at nineteen i guess that's fine
the tank's only got nine pounds on it to test with
nine pounds and it's not dripping so it's tight
let me do it again with the hand pump fifty pounds
still nothing at fifty okay it's a pass
give the other guy his lock back and we're done with thirteen
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
the one i forgot is the l v one eleven by the flare
the one eleven is a one inch and it's the pressure to open
the knockout is empty so there's no pressure on the valve
the lock's on it all the same
the line was drained and the water in it was a gallon
the tubing to it has a hole where it rubbed on the skid
the hole in the tubing is why it wouldn't open
the tubing's new now and it's tied away from the skid
the top of it was opened since the air was leaking
the diaphragm in the top is good and the leak was at the bolts
the bolts were loose and now they're at twelve foot pounds
the spring is fine it's three and three quarters
the stem moves by hand and it's smooth
the packing is dry but it's only got the three rings left
the three rings came out and the five went in
the nut on the packing is at six foot pounds
the bonnet was on tight and it stays on
the seat was tested with the twenty five pounds there is
the seat is passing a little it's about five bubbles a minute
the stroke was done twenty times and it's down to one
the one bubble is okay on a one inch
the gauge on the supply is cracked but it reads
the supply is at twenty two and the regulator's holding it
the filter on it had the bowl full and it's drained
the vent has the screen on it
the valve opens in the two seconds and it shuts in three
the indicator is bent and it's been straightened
the label for it is new and it's easy to read
the paint is for the spring time
the one eleven is closed out and it's the last of the four
two inch and air to open l c v four fifty five
four fifty five that's the number on the tag
sixty five pounds on the separator right now
thirty pounds on the supply
zero on the downstream since it dumps to the tank
two locks on it mine and the operator's
one bleeder open and one plugged
sixty five down to twenty and dropping
twenty down to five
five pounds that won't leave
five pounds trapped between the blocks i mean
zero now after i worked the handle
eight bolts on the bonnet all eight rusty
two of the eight wouldn't turn
one broke off flush
seven came out whole
twelve bolts in the housing and one's missing
eleven of them were tight
half an inch of water in the lower housing
five and three quarters on the spring
six even is what the spring should be so it's short a quarter
a quarter inch short that's a weak spring
one pinhole in the upper diaphragm
two cracks at the edge of the bottom one
both diaphragms replaced that's two out of the kit
thirty five foot pounds on the diaphragm nut
three seventy three on the stem at the worn spot
three seventy five on the stem above it
two thousandths of wear on the stem that's nothing
seven thousandths runout on it though
seven is over five so the stem's bent
four licks in the press and it's back to two thousandths
three eighty four in the guide
eleven thousandths between the stem and the guide
eleven is too much so it gets a guide
five rings of packing and the bottom two are hard
one backup ring's cut and the other's okay
two new backup rings anyway
three slots in the cage worn out of the four
twenty thousandths of wear at the widest slot
one side of the seat's wire drawn
a third of the way around the seat it's cut
zero wear on the flip side of that seat
one flat on the plug about an eighth long
ten thousandths off the plug to clean it up
a hundred and five foot pounds on the seat ring
one gasket under the seat and one on the cage
twenty eight foot pounds on the bonnet bolts
ten then twenty then twenty eight
fifteen foot pounds on the housing in a star
twelve inch pounds on the packing nut for now
nine pounds it starts to lift
nineteen pounds it's wide open
nine to nineteen is the bench set
three quarters of an inch of travel on the nose
four seconds up and three seconds down
fifty pounds under the seat no bubbles
sixty five pounds under it and one bubble
one bubble in two minutes on the seat
no drips in five minutes at the packing
a hundred and thirty on the body and no sweat
one bolt to order and one spring
one spring six inch free and one three eighths bolt
six months till the next look at it
one lock off and the other one off
four fifty five is in and dumping
one and a half inch and air to close f v sixteen
sixteen's on the suction scrubber
one twenty on the line as found
twenty two pounds of signal and it's shut
half a turn open on the bypass
one twenty bled to zero in about a minute
two drops a minute at the packing as found
forty bubbles a minute through the seat as found
forty is way over for that size
twelve nuts off and all twelve good
four and a half on the spring free length
four and a half's what it calls for so okay
a hundred and ten thousandths thick on the diaphragm
one twenty five new so it's wore some
one more year in that diaphragm i'd say
point four nine seven on the stem
point five oh one in the guide bore
four thousandths clearance that's fine
a sixteenth of rust scale in the bonnet
two pits on the seat ring at the outlet side
five thousandths deep on the pits
ten minutes of lapping and the pits are out
one thirty second wide on the seat line
zero cracks in the cage
one o ring flat and two that are okay
three new o rings went in it regardless
eighty newton meters on the bonnet
eighty newton meters is about sixty foot pounds
sixty five inch pounds on the packing flange nuts
six thousandths under the head of one bolt so i went again
fifteen sixteenths of travel and it wants an inch
one inch even after two turns on the connector
three point two on the low end of the bench set
fourteen point eight on the top end
zero bubbles at one twenty
zero leaks at the bonnet at one twenty
three parts used two gaskets and the o rings
twelve months on this one
sixteen's handed back at half past two
four inch and fail closed p v ninety seven
three hundred class flanges eight studs a side
two eighty on the inlet before the shut in
two eighty to zero in four minutes
zero on two gauges so i believe it
one crack on the yoke leg
an inch and a half long the crack on the yoke is
two hundred and twenty pounds this actuator so i got the hoist
nine turns out on the adjusting screw
nine and five eighths on the big spring
nine and three quarters is new
an eighth down on a spring that size isn't much
three inches of tear in the diaphragm
a hundred and ninety foot pounds to break the bonnet nuts
two of sixteen nuts galled on the studs
two studs and two nuts get replaced
point seven four eight the stem measures at the bottom
point seven four two up at the packing
six thousandths off where the packing rides
six is over the limit so that stem is done
two rings of wear on the plug
twenty five thousandths deep the upper ring
one side only on the seat washed about a half inch
a half inch of washout in a seat isn't worth cutting
a new seat a new plug and stem and the old cage
two eighty five foot pounds on the seat ring
one seventy five on the bonnet the last time around
fifty then one hundred then one seventy five
twenty four inch pounds on the breather if you want to know
two inches of travel it calls for two inches
one and seven eighths with thirty five pounds
two inches even with forty
forty pounds on the supply then
ten seconds opening and fourteen closing
six to thirty is the bench set on the plate
six and a half to thirty as it sits
five hundred on the seat with water
three milliliters a minute in the tube
three is under so it's a pass
four fifty on the shell for five minutes
zero drop on the gauge in five
one yoke to order for a four inch
two three quarter studs with nuts on the list
a year on the trim and three months on that yoke
ninety seven is up at quarter to five
three quarter inch angle valve l v sixty eight
fifteen hundred class on this little thing
nine hundred on the upstream as i found it
eighteen on the supply
nine hundred to six hundred and it hung up there
six hundred still in there and the bleeder's froze
ten minutes with the steam and it's bleeding
zero psi and the bleeder's blowing clean
six cap screws and every one's tight
two turns and it started to hiss so i stopped
thirty pounds was behind that bonnet
zero behind it now i waited on it
three and one eighth on the spring
one hole in the diaphragm like a pencil lead
eighty thousandths thick on the diaphragm
two hundred fifty on the stem and it's straight
a thousandth and a half of runout
two fifty three in the guide
three thousandths so that guide is fine
a quarter of the seat's gone
half of the plug tip's gone too
one seat and one plug in new
forty five foot pounds on the seat
twenty inch pounds on the lock nut and a drop of thread locker
thirty five newton meters for the six cap screws
three eighths of travel
five sixteenths is all i get at fifteen pounds
three eighths at eighteen so eighteen it is
nine hundred on the seat and no bubbles at all
nine hundred on the packing and it's dry
thirteen fifty on the shell three minutes
two bubbles a minute at the inlet threads
half a turn on the inlet and the bubbles quit
three months for the next one on account of the sand
a hundred percent back in service
that's four valves and i'm done
l v one forty and its bypass are both shut
the inlet and the outlet are both locked and tagged
both gauges say zero and i opened both bleeders
supply and signal are off and the tubing's down
breather and indicator both look alright
the bonnet joint and the packing are both dry on the outside
the upper housing and the lower housing are rusty but sound
both housings have the paint off
the plate and the nut came off together
top and bottom diaphragms are both stiff
top one's cracked and the bottom one's got a blister
both of them are getting changed today
spring's good and the spring seat's good too
the spring and plate are going back as they are
stem and plug came out in one piece
the stem's straight but the plug is nicked
stem is fine and so's the nut on it
the guide's loose and its o ring's flat
guide and guide o ring both went in new
packing's hard and the follower is bent a little
cage and cage gasket were stuck together
the cage's clean now and the gasket is trash
no cracks in the cage or in the bonnet
seat and plug match each other worn on the same side
the seat flipped okay but the plug had to be replaced
both the seat gasket and the cage gasket are new
o ring's swollen and the backup rings are pinched
changed the o ring and left the backups
no i changed the o ring and the backups both
inlet threads are good the outlet ones are galled
chased the outlet threads and wiped the inlet
body and bonnet faces are both scraped
seat's at ninety foot pounds and the lock nut's at sixteen
bonnet bolts at twenty eight and the housing at fifteen
diaphragm nut at thirty five and packing nut at ten
travel's three quarters and the indicator agrees with it
it opens at eight and it's full at seventeen
five seconds up and five seconds down
seat and packing both held at eighty pounds
no leak at the seat and none at the bonnet
the shell is dry and the vent's quiet
order me a plug and a guide for the shelf
need a seat gasket and a bonnet gasket for the truck
lock's off and the tag's off and it's dumping
one forty and the bypass are both back like they were
now f v two ten and f v two eleven are side by side
we'll do two ten first and then eleven
two ten is a two inch and eleven's a three
two ten is air to open and the other one's air to close
both are on the same supply at twenty eight pounds
both of them are bled to zero and locked
okay two ten the packing and the bonnet gasket both leak
packing nut was loose and two bonnet nuts were loose
stem and guide are both worn about four thousandths
stem's point three seven one and the guide is point three seven nine
that's eight thousandths so the stem and the guide get changed
plug face and seat face are both pitted
lapped the plug and the seat together and they cleaned up
there's sand in the cage and sand in the body
the cage and the body are both washed out clean with solvent
one bolt bent and one nut cracked
the bolt and the nut are replaced
spring is five and a half and the new one's five and a half
diaphragm and plate reused on two ten
seat to a hundred and five and the bonnet to thirty eight
packing to twelve inch pounds and the follower's level
stroke's full and travel's seven eighths
seat test and shell test both passed
seat at one fifty and the shell at two twenty five
now f v two eleven the spring is broken and the plate's bent
spring broke in two spots and wore into the housing
upper housing is gouged and the diaphragm's cut
the housing has a gouge but it's only a sixteenth deep
diaphragm and spring need changing the housing can stay
plate's bent about three sixteenths so order a plate and a spring
got a plate and spring off the spare valve
stem is bent from the spring and the connector's cracked
the connector and stem are both out of stock
straightened the stem to three thousandths and welded nothing
found a connector on the other truck so that and the stem are in
cage and seat look new the plug has a scratch
scratch on the plug's polished out and the seat's wiped
bonnet gasket and seat gasket were reused no they were replaced
both gaskets are new strike the reused
bonnet at sixty five foot pounds the seat i never touched
housing bolts and the yoke nut at twenty and forty
bench set is six to eighteen and travel is one inch
closes at eighteen and it's wide open at six
no bubbles at the seat and no foam at the stem
two ten and two eleven both stroke together off the one controller
the pressure's ninety upstream and thirty downstream
handing both of them back and both locks are off
next look for two ten is six months and for eleven it's three
p c v thirty six and its pilot are on the bench
valve and pilot came in with a ticket apiece
the ticket says it hunts and it won't hold set point
the filter and the restriction are both dirty
cleaned the filter and rodded the restriction
the restriction is point oh one eight and the nozzle's point oh four oh
pilot diaphragm's good the pilot spring is rusty
supply gauge and output gauge are both off by two
replaced the two gauges and calibrated the pilot
the bonnet and the yoke are one casting on this one
packing and follower both came out clean
packing is five rings and the lantern ring is on top of two
plug's washed and the stem's scored so that's one assembly
cage windows and plug skirt have the same wear
cage and plug clearance is twelve thousandths it should be six
cage and plug both on order they're ten days out
while it's down i'm sending the seat and the bonnet out to be cleaned
the body's good and the studs are good
seat and cage are back and so's the plug
seat at one forty and the bonnet at one twenty
packing nuts are at fifty inch pounds left and right
left one's at fifty the right one was at forty five
diaphragm nut's thirty five and the jam nut is twenty
supply at twenty and signal at nine gives half travel
half travel's nine sixteenths and full is one and an eighth
zero and span are set and the linkage is pinned
lift starts at three and a quarter and ends at fifteen
class four on the seat and it made six c c a minute
both sides of the diaphragm held and the o rings held
the valve and the pilot are wired together and wrapped
next are the two little dumps l v five and l v six
five's got a bad seat and six has a bad diaphragm
took the seat for five out of the kit and the diaphragm for six
five has sand and six has paraffin
scraped the paraffin off the plug and the cage on six
the seat and seat area on five are both cut
five's seat area is cut a thirty second of an inch
six's seat and plug are as good as they ever were
springs on both are four and three eighths
both breathers were stopped up one with mud and one with a wasp nest
both stems are straight and both of the guides are tight
bonnet gaskets on five and six are both replaced
five and six are both torqued to twenty eight
five opens at seven and six opens at seven and a half
both travel a half inch and both shut off tight
tested five at sixty pounds and six at seventy five
no bubbles on five and two a minute on six
six quit bubbling after two strokes so both pass
tighten the union and the elbow on six they're weeping
the union's fixed but the elbow needs to be replaced
put an elbow and a union on the list
both locks are off and both valves are dumping
that's the pair of them done
one more pair t v eight and t v nine on the glycol
both glycol valves are hot so the gloves stay on
steam's off to eight and off to nine
eight's at a hundred and ninety degrees and nine is at two ten
waiting on both to get down to a hundred
both drained and there's glycol in the pan and on the floor
spilled about a gallon off eight none off nine
eight's packing and bonnet gasket are both cooked
nine's packing is good but the bonnet gasket weeps
stem on eight is scored the stem on nine's okay
seat and plug on eight have scale on them
wire brushed the scale off the seat and the plug
nine's trim and cage are clean enough
both springs are five and an eighth one's a shade over
both diaphragms went hard from the heat
got the hot rubber for eight and for nine
diaphragm nuts are both at thirty five with locker on them
order a stem and a packing set for eight
i turned the stem end for end no you can't it's got threads
so the stem and plug on eight go back in for now
graphite packing in eight and in nine the same
packing nuts are both at fifteen foot pounds hot
bonnet bolts on eight and nine at eighty and eighty five
i set them both at eighty two no make both eighty five
eight strokes in six seconds and nine in seven
travel on both is seven eighths by the scale
bench set on eight is three to fifteen and on nine four to sixteen
nine's set was off a pound so i turned the screw
eight leaked six bubbles and nine leaked none at seventy five
both of the shells are dry and the packing on both is dry
hot again at one ninety and two hundred and nothing's leaking
check the packing on eight and nine again in a week
eight and nine are lined up and the floor's been mopped
alright i'm gonna start on l c v eight nineteen
it's gonna need a bleed down first
gonna hang my lock and then we'll see
this block valve needs grease it won't hardly turn
it's gonna take two of us to shut it
okay it's shut but it's gonna need to be watched
there's a hundred and forty on it and it needs to come off slow
gonna let it drain down for ten minutes
it's at zero now i'm gonna crack a bolt
needs some heat on that bolt it ain't moving
gonna have to cut this stud off
that stud needs replacing and so does the nut
four studs need to be cleaned the rest are okay
the breather's plugged so it's gonna need a new one
tubing needs to be cut back an inch it's split
the upper diaphragm's gonna have to go
it's torn and it needs a new one today
the lower one needs nothing it's good
i'm gonna leave the lower one
spring's gonna be alright it's six and a quarter
needs to be six and a quarter and it is
diaphragm plate needs a little cleaning
the nut's gonna need some thread locker on it
got a stem here that needs straightening
it's out fifteen thousandths it's gonna need the press
pressed it and it's four now that's gonna do
the guide needs an o ring and that's all it needs
packing's shot it's gonna need all six rings
the packing nut needs a new follower with it
gonna dig the old packing out with a pick
bonnet needs to be scraped before it goes on
bonnet gasket's gonna get replaced no matter what
cage needs to soak it's plugged with paraffin
gonna let the cage soak while i do the seat
seat's got a nick so it needs lapping
no it's too deep it's gonna have to be flipped
already flipped so it needs to be a new seat
the plug's gonna need to be lapped to that new seat
lapped it and it needs about five more minutes
okay it's got a line all around it's gonna seal
seat gasket needs to be new too i've got one
seat's gonna get one oh five foot pounds
it needs to go in dry no it needs anti seize
the cage's done soaking and it's clean
there's one crack in it so it needs to be thrown out
gonna order a cage for a two inch
we need it by friday
found a good used cage it's gonna work till then
cage gasket and o ring need to be replaced i'm doing it now
bonnet's on and it's gonna get twenty eight foot pounds
bolts need a second pass they moved a little
the housing's gonna get fifteen on every bolt
gonna put thirty pounds of air to it
it needs about ten to break loose
it's full open at twenty one that's gonna work
travel needs to be three quarters and i've got eleven sixteenths
gonna give it a turn on the connector
that's three quarters right there
it's gonna get a hundred and forty on the seat
there's three bubbles a minute it's gonna need a few strokes
stroked it ten times and it's down to none
packing needs a flat more it's weeping
took it a flat and it's not gonna leak now
it's gonna need looking at in ninety days
gonna take my lock off and call the operator
that's gonna be it for eight nineteen
next we're gonna do f v seventy four
it's a one inch and it needs air to close
this one's gonna be sour so i'm on air
the monitor's at zero but we're gonna leave it on
gonna purge it twice before i open it
still smells so it needs another purge
okay that's four parts on the monitor it's gonna be fine
the needle on the gauge is stuck it needs a gauge
eight body bolts and they're all gonna be replaced
they're pitted and i'm not gonna trust them
the body needs to be checked for cracks
put dye on the body and there's none so it's gonna go back
the seat's corroded and it's gonna need to be cut
took eight thousandths off the seat and it's clean
plug's corroded worse it needs replacing
the stem's got pits up by the packing it's gonna eat packing
that stem needs to be the hard kind this time
order a stem it's gonna be the hard one
for now i'm gonna polish the old one
the o rings are swollen every one of them needs to come out
four o rings and two backups that's what it needs
the guide's eaten up on the bottom it's gonna rattle
needs a guide and i don't have it
you're gonna have to bring me a one inch guide
got the guide now it needs to be pressed in
guide's in and the stem needs to slide free and it does
diaphragms need to be the other rubber for sour
put the right rubber in it top and bottom
actuator spring's gonna need paint it's rusted some
it measures four and seven sixteenths it needs to be four and a half
that's a sixteenth it's gonna be okay
bolts are gonna be forty two newton meters
needs three passes so that's fifteen thirty and forty two
lock nut's gonna need sixteen foot pounds and the locker
gonna test it with nitrogen not with gas
it's gonna see two hundred on the seat
the seat needs to hold for three minutes
it held three minutes it isn't gonna leak
soaped it up and nothing's gonna show i don't think
there's a bubble on the indicator that gasket needs a new one
put an indicator gasket on it and it's dry
signal needs to be fifteen to shut and it shuts at fourteen
stroke time's gonna be about two and a half seconds
seventy four needs a new tag this one can't be read
i'm gonna stamp the tag tonight
the operator's gonna sign for it
that one's not gonna need us till fall
third we're gonna pull p v one oh nine
it needs the hoist it's a six inch
twelve studs at an inch and an eighth they're gonna be tight
needs about four hundred foot pounds to crack one
one cracked loose at three eighty
gonna number the studs as they come
numbers four and nine need to be replaced
the gasket's gonna stay on the body side it needs scraping
plug's stuck in the cage it's gonna need the puller
puller got it and the cage is galled it's gonna need honing
gonna hone it five thousandths and see
it needed eight but it's smooth now
plug rings are worn and it needs a set
the plug's gonna run again with new rings
the seat needs nothing it's not even marked
seat gasket's gonna be left alone then
guide bushing's out nine thousandths it needs to be four
gonna press a bushing in the bonnet
stem's one inch and it needs to be measured
it's nine ninety six in the packing so it's gonna stay
the packing's gonna be the graphite kind seven rings
packing nuts need fifteen foot pounds each
gonna retorque those after it's warm
yoke bolts need checking they were at fifty
they need to be eighty so i took them to eighty
the diaphragm's gonna be good for years it's new
the spring's thirteen and a half it needs to be thirteen and three quarters
i'm gonna mark the spring weak and keep it
adjuster's gonna need two more turns to make up for it
bench set needs to start at seven and it starts at seven
it needs to be open at twenty four
open at twenty three and a half that's gonna be close enough
bonnet's gonna get three hundred and fifty foot pounds
needs four passes the last one in a circle
handwheel needs a pin it's gonna spin if you don't
put a pin in the handwheel
positioner's gonna have to be calibrated
needs to be fifty percent at twelve milliamps and it is
travel's two and a quarter it needs all of that
gonna take about fifteen seconds to stroke
took seventeen so it needs a bigger booster or more air
gonna turn the supply up to forty five
that's thirteen seconds so it's gonna pass
water test at eleven hundred and it's not gonna drip
seat leak's gonna be measured with the tube
twelve milliliters a minute it needs to be under forty
it needs two studs and a spring on the order
note that the hoist chain needs greasing
one oh nine's gonna go back on the line monday
it's gonna need a re torque in a week
last one's gonna be quick it's l v sixty one charlie
sixty one charlie just needs a float arm they said
the linkage is bent and it's gonna need bending back
float's got water in it it needs to be replaced
gonna shake it yeah it's half full
float needs to be the four inch ball
got one in the truck it's gonna fit
pilot needs to be cleaned and it needs a screen
the pilot's seat is gonna hold if i wipe it
the controller needs eighteen pounds and it's getting twelve
that regulator's gonna need to be turned up
turned it up to eighteen it's gonna stay i hope
the regulator bleeds so it needs a kit
gonna bring a regulator kit tomorrow
valve needs nothing it dumps and shuts
it's not gonna be opened today
leave it on the board it needs the kit yet
don't close it out i'm gonna be back
alright the kit's in and it needed that bad
it's holding eighteen and it's not gonna bleed anymore
sixty one charlie doesn't need anything else
gonna close this out and go home
got time for one more it's gonna be l c v two forty
two forty's a two inch and it needs pressure to open
they said it's gonna flood the tank if it sticks again
gonna lock both blocks and it needs a third on the bypass
there's fifty five on it and it needs to be none
bleeder needs rodding it's solid with scale
okay it's bleeding it's gonna take a while
zero so i'm gonna break the bonnet now
needs a bigger wrench they're on there at a hundred or better
the bonnet's gonna need prying there's scale all in it
scale's a quarter inch thick in the body it needs chipped out
gonna put the trim in the acid bucket
that needs about half an hour so i'm gonna do the top
top diaphragm's dry it's gonna crack before long
i'm replacing it so it isn't gonna be a problem
the bottom one needs changing too there's scale in the fold
spring needs to be five and a half and it's five and three eighths
an eighth short it's gonna get by
the guide ports need cleaning all three are stopped up
drilled them out they're gonna need the three sixteenths bit
stem's got scale rings on it that need to be polished off
polished it and it's gonna measure point three seven three
okay it's three seventy four even better
the trim's out of the acid and the plug's gonna be fine
seat's etched a little so it needs lapped
gonna use the fine on it for two or three minutes
lapped and blued and it isn't gonna need any more
the cage needs to have all the holes open and it does
every gasket needs to be new the acid gets them
seat needs a hundred and five and it got a hundred and five
bonnet bolts are gonna take twenty eight with oil on them
packing needs to be loose on this one or it's gonna hang
so ten inch pounds is all it's gonna get
air's on and it's gonna open at about eight
opened at eight and a half and it needs no help
it needs to shut by itself and it does every time
fifty five on the seat and it's gonna hold two bubbles in five minutes
scale's gonna be back so it needs cleaning every three months
order a seat kit it's gonna want one next time
the third lock needs to come off too okay that's off
two forty's gonna run now so close that out
`;
