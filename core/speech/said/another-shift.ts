/** Lines of an older hand on another shift: short, part by part, bench and back. Invented; a line a phrase, numbers and tags as spoken. */
export const ANOTHER_SHIFT = `
alright i'm on f v one oh one
this is the two inch dump on the heater treater
pressure to open on this one
sandy service they've been fighting it all summer
before i pull it upstream's at sixty five pounds
downstream's reading maybe twelve
she's passing pretty good right now you can hear it
got it locked out and bled down
bonnet bolts are coming off easy
four bolts out two of 'em rusty
the other two look alright
bonnet's off and the gasket stayed on the body
bonnet gasket's torn on the inlet side
body's full of sand clear up to the cage
cage is packed solid with paraffin
had to pry the cage out it was seized in there
cage is sand cut all around the bottom
two holes washed out on the cage outlet side
plug's got wire drawing across the face
seat's about the same wire drawn one side
stem looks straight no scratches
well there's one little nick down by the threads
guide's worn on the bottom top half's fine
guide o ring's hard it just broke in my hand
seat gasket is flat as a pancake
cage gasket don't look bad but i'm changing it
both backup rings are cut in the same spot
upper one's cut worse than the lower
top diaphragm's good bottom one's starting to crack at the edge
no hole in either one of 'em
diaphragm plate's a little corroded around the hole
diaphragm nut's fine reuse that
spring's okay no rust on it
lower housing's got some pitting inside down at the bottom
upper housing's clean
breather was stopped up with mud
travel indicator is bent but it still reads
leave the indicator
okay so what goes back in
plug's junk that gets a new one
seat i can flip it's only bad on the one side
cage is done throw it away
stem goes back in
spring and plate and nut all going back
bottom diaphragm gets replaced top one stays
new o rings and backup rings too
put a new guide in while i had it apart
cleaned the body out with diesel and a rag
seat's flipped plug's in
lock nut's snugged up with thread locker on it
cage in gasket in bonnet's on
bonnet bolts at twenty eight foot pounds
replaced the two rusty bolts
put ten pounds of signal on her and she opened right up
closes good too
sixty pounds on the inlet and not a bubble
shell's dry no leaks outside
packing's dry
take a picture of that old cage
okay next one lima victor two zero four
one inch high pressure valve pressure to close
normal service clean gas
found it with the packing weeping
packing's hard and it's cracked on top
not much wear on the stem
a little galling up at the packing nut but the stem's okay
there's a burr on the packing nut threads not bad
cleaned up the threads on the packing nut
no damage on the bonnet
seat's good plug's good nothing wrong with either one
cage looks brand new
some light rust in the body nothing to worry about
inlet threads look okay outlet threads are chewed up
outlet threads are stripped about halfway around
not sure we can save that body
stem guide's fine guide o ring is swollen up
gasket's fine
the seat gasket though is pinched on one side
spring's weak it's shorter than the new one
free length is four and an eighth
should be closer to four and a half
diaphragm's hard all the way across the center
no tears in it no holes just hard
upper housing's dented on the left side
don't leak though so i'm leaving it
lower housing's okay a little rust around the vent hole
vent hole's open
had to wire brush the lower housing
new packing in new packing nut too
put a new diaphragm in and a new spring
reused the stem reused the plug
greased the stem before i slid it in
seat gasket replaced
guide o ring replaced
chased the outlet threads best i could
put it on the list we need a body for this one
order me two sets of packing
packing nut's at sixty inch pounds
stroked it twice full travel both times
no leaks at the packing with three hundred on it
seat's holding at three hundred too
note the operator wants the body changed next shutdown
morning i'm out at the compressor station
tag says p c v three one two
it's a three inch back pressure valve
i smell gas at this thing hold on
okay it was the fitting on the supply tubing
fitting was loose and the ferrule was cracked
tightened it and it quit
supply gauge is broken the needle's laying on the bottom
gauge face is full of water too
regulator's leaking out the bottom
supply pressure's about twenty eight
signal to the actuator is around six
valve's hung up half open
only going about half travel
stem's scored up where it goes through the packing
all the way around the stem it's scored
packing's tore up from it
that's why she's sticking
stem guide's galled to the stem had to drive it out
plug's alright a touch of erosion on the edge
seat's alright too
cage has sand in the holes but it isn't worn
no erosion on the cage none
cage o ring's missing somebody left it out
cage gasket's in there though and it's fine
bonnet's pitted on the face not deep
bonnet gasket's squashed out on the one side
diaphragm's got a tear about an inch long at the bolt holes
plate's bent where it rubbed the housing
spring's rusted top two coils
it's not broke but it's rusted bad
lower housing is all scratched up inside
nut on the diaphragm was loose
two bolts loose on the upper housing as well
yoke's okay
handwheel's good it turns free
stem connector's got rounded bolts on it
positioner linkage is wore out it's sloppy
positioner itself is full of water
pilot's clean nothing wrong with that
tubing to the positioner's kinked at the bracket
new stem new guide new packing for sure
diaphragm and plate both getting replaced
spring i'll clean up and run it again
no scratch that put a new spring in it
plug and seat can go back like they are
the cage too after i wash it
bonnet face i'll dress it with a flat stone
need a gauge zero to sixty for the supply
and pick up a regulator kit
bring me some quarter inch tubing
straightened out the kinked piece for now
drained the positioner and blew it out
calibrated it three to fifteen
travel's one and an eighth now
took about six seconds to open
four seconds closing
actuator's holding air good
seat test at one fifty psi no bubbles
no it's three one three not three one two
correction the stem was scored not the plug
alright finish it up
got a call about a valve not closing on the water side
l c v four zero six bravo
two inch dirty service
acts pressure to open
tried to bleed it and it's still got pressure on it
block valve upstream's passing i can't get it to zero
operator went and got the other block
okay now she's dead
pulled the bonnet bolts all eight of them
one of them's stripped and one's bent
trim's all scaled up
scale on the plug scale on the seat scale everywhere
chunk of weld slag stuck between the plug and the seat
that's what was holding it open
plug's dented where the slag was
seat's got a matching gouge right side
the rest of the seat's good
cage is fouled but not eroded
gonna soak the cage
stem's bent a hair
you can feel it in the guide
guide's okay itself
o ring in the guide's got a cut on the bottom edge
backup ring's alright
seat gasket's okay cage gasket's shot
upper diaphragm and lower diaphragm both look fine
gasket on the indicator's hard
indicator spring's rusty but it still pushes
seat can't be flipped it's bad on both sides
flip side of the seat's already been used
so new seat new plug
stem i'm gonna try to straighten
nope can't straighten it replace the stem
put the old cage back in after i scraped it
old diaphragms went back in they're good
didn't change the spring didn't need it
replaced the bad bolts with new ones
greased the o rings going in
gasket surfaces cleaned up good
put it together and torqued it to thirty foot pounds
shut in at forty pounds and it holds
not passing anymore
full stroke up and down
took a look at the strainer too it's about half plugged
blew the strainer out
somebody's gotta get that block valve fixed
note that the upstream block valve leaks by
done here
just got to the next site it's blowing dust like you wouldn't believe
where'd i put that nine sixteenths
okay f v two two zero
three inch cast body severe service
found the handwheel rusted up it won't turn
handwheel's not missing anything it's just stuck
put some oil on it let it soak
yoke has a crack on the left leg
flange bolts are corroded all eight
flange face itself is good
inlet flange gasket's leaking a little
gonna tear it down now
actuator's off housing bolts came loose pretty easy
upper housing's rusted through at the top
there's a hole you can stick your finger in
the lower one's only got surface rust
power diaphragm is rotten it tore when i lifted it
fabric's showing on the diaphragm all around the center
balance diaphragm's in better shape
it's stiff though
spring's got a broken coil at the bottom
plate's rusty and the nut's seized on the stem
had to cut the nut off
stem threads got buggered up from that
so stem's done for
indicator stem is bent and the sight glass gasket leaks
breather's gone altogether
mud daubers in the vent hole
cleaned out the vent hole with a wire
now the body
body's washed out behind the seat
it's eroded pretty deep on the outlet side
inlet side of the body is fine
seat area's cut up where the gasket sits
seat won't come out it's froze in there
finally got the seat out it was full of scale
seat ring's chipped in three places
plug has a chunk out of the edge
cage is cracked top to bottom on the right side
cage gasket's gone wasn't one in there
lower guide's worn egg shaped
there's not one good part in here
well the bonnet's good
bonnet bolting's good too after i clean it
body's too far gone to save
need a three inch body on the next truck
seat's junk cage is junk plug's junk
keeping the bonnet keeping the lower housing
upper housing gets replaced
put the whole thing on the list as a rebuild
order a repair kit and a trim set
bring four studs five eighths
leaving it out for now there's a spool in the line
take a photo of the body
close this one up i'll come back to it
afternoon same pad
tango victor one one five
one inch regulator style with a pilot
the pilot's frosted over
pilot's frozen solid can't turn the adjusting screw
ice in the sensing tubing
thawed it with warm water
downstream's hunting between forty and fifty five psi
pilot diaphragm's got a tiny split
pilot seat's good pilot spring's good
adjusting screw's corroded and the threads are dry
screw's not bent
lock nut on the adjusting screw's rounded off
main diaphragm's okay
no cracks no tears a little stretch in the middle
plug's disc is cut on one side
seat's sharp still good
stem's clean
o rings flat both of them
the cap o ring too
gasket is hard as a board
strainer's plugged with pipe dope
gauge upstream reads fine the downstream one's pegged
tubing fittings all tight
one fitting cross threaded at the pilot
the body's corroded some under the paint
nothing through it
cleaned the pilot put a diaphragm in it
new lock nut
disc gets flipped the other side's good
changed both o rings and the gasket
rodded out the sensing port
set it for forty five pounds downstream
locks up good
no leak through the seat
watched it ten or fifteen minutes steady as a rock
gauge is next trip
get me a zero to one hundred gauge
okay good all done with that one
day's just started and i already spilled my coffee
tag's d v seven one nine
inch and a half dump valve on the free water knockout
throttle oil all over the ground here
oil spill about a five gallon bucket's worth
called it in
body bolting was loose that's where it came from
body gasket's blown out on the bottom
three bolts loose one missing
rest of them were tight
took the float off first
float's got a dent and there's liquid in it
linkage pin's worn about half through
linkage is okay besides the pin
the trim's pretty clean
ball's scratched lightly
ball's good other than that
seats are both worn more on the downstream one
no pitting on the ball
stem seal's leaking a bit
packing's low needs another ring
the stem's corroded just above the packing
below it's shiny
threads on the stem okay
spring's intact
stem nut's stripped
body's alright inside
inlet threads a little rusty outlet threads galled
didn't have to replace the body
both seats replaced
flipped nothing on this one can't flip 'em
new stem nut
packing's been redone
wire brushed the stem up top
bent the float arm back straight
float's gotta be replaced it's got a hole somewhere
pin for the linkage is on order
order one float for the seven nineteen
body gasket new and four new bolts
shell test after that and it's dry
ran the float up and down by hand and it strokes
tank level pressure's only twelve pounds
no leak by at twelve
what else is left on this
okay that's all
next p v one zero four bravo
this is the gas back pressure on the separator
four inch pressure closes it
found it clean for once
no leaks anywhere on it when i walked up
only complaint is it's slow
slow as in twenty seconds to close
spring's not weak spring's alright
stem's dry no grease on it at all
stem's dragging in the guide
guide o ring swelled up twice its size
guide's not scored
just the o ring
ports on the guide are about three quarters plugged
comm hole in the nut's plugged clean off
that's the trouble right there
packing's tight as well a little too tight
poked out the ports with a piece of wire
o ring in the guide replaced and greased
comm hole's open now
seat and plug i looked at they're fine
cage fine
no wear on the trim anywhere
diaphragm had a wrinkle but no damage
housing bolts snugged back down
fifteen foot pounds on the housing bolts
strokes in six seconds now
that's with eighteen pounds on it
much better
no bubbles with a hundred ten upstream
need to bring more of those guide o rings
put three on the list
finish
back in the shop this morning got six of these on the bench
first one's tagged l v five five one
two inch from the north battery
cage first
cage is eroded on the inlet side and fouled on the outlet
not cracked
holes in the cage are about double what they ought to be
so the cage is scrap
plug
plug's worn all the way around the seating edge
face of the plug's okay
a little corrosion at the top of the plug where the stem goes in
seat ring
washed out both sides no saving it
seat gasket was stuck to the body had to scrape it
stem's reusable
slight scratch on it nothing you can feel with a fingernail
stem guide's good enough
i'd say the guide's ten thousandths worn
no galling on it
lower o ring's flat upper's cut
lower backup ring missing
upper backup ring extruded
diaphragms next
top one's good no cracks no pinholes
bottom one's blistered
i mean swollen the bottom diaphragm's swollen
swollen and soft around the center
diaphragm plate's straight
actuator spring checks out four point two inches
housing's both fine wash and paint
inlet threads got one thread buggered up
outlet threads intact all the way
bonnet's scratched on the gasket face
not deep leave it
bonnet bolts two good two rusted two stretched
toss all six
travel indicator's faded but it works
indicator gasket leaking replace it
okay parts for this one
seat plug cage bottom diaphragm gasket set
and six bonnet bolts
reuse list is stem guide spring plate nut top diaphragm
repainted the housings
installed the seat with a new seat gasket
set the cage and the cage gasket
plug's threaded on with thread locker
body bolts pulled down to thirty five
bench tested at two hundred psi
eight bubbles a minute
pulled it back apart lapped the plug to the seat
two hundred again one bubble a minute
let it sit five minutes and now zero bubbles
actuator holds thirty pounds no drop
strokes full at twelve
first one's done
next one on the bench
f c v three zero zero two
three inch air to close
somebody's been in this one before
wrong gasket in it it's been trimmed with a knife
thread tape hanging off the plug threads
seat's in backwards
seat was flipped once already
both sides of it pitted now
plug's got pits to match
pitted worse on the seat than on the plug
stem's not original
stem's bent in the middle and the threads are rolled over
guide's cracked where the stem hit it
the cage is just dirty
carbonate scale on the outside of the cage
inside's clean
soaked it an hour came out fine
packing was put in upside down
packing's torn up naturally
o rings look new
they're not new they're pinched
somebody rolled the cage o ring when they put it in
bonnet's missing a bolt
two of the others are cross threaded
body threads for those are damaged
one bolt hole in the body's stripped
gonna have to repair that hole
spring's upside down but the spring's good
diaphragm's on the wrong side of the plate
the diaphragm's holed where the nut rubbed through
plate's scored from the nut
lower housing got wore on the inside from the plate
what a mess
okay replace the stem the guide the seat the plug
diaphragm's replaced plate's replaced
housing's not that bad so that's staying
cage goes back
put a thread insert in the body
threads are good now
all new bolts eight of 'em
stem's in and it's straight
greased everything up
packing's in right side up
torqued to fifty two
shell test at five hundred no leaks
seat test five hundred no leak
stroke test good opens at four closes at fourteen
make that opens at five
travel's one and three eighths
close her out
third one r v one eight
it's a little one inch relief pilot job
pilot's scored inside the bore
no it's the piston that's scored the bore's fine
o rings on the piston hard and flat
there's rust under the spring
pilot spring's weak i think
set point drifted to ninety it's supposed to be one ten
seat's nicked at the edge
disc's got a ring worn in it
flip the disc
disc's flipped seat's lapped
new o rings new spring
cleaned the rust out of the body
set it at one hundred ten psi
pops at one eleven
reseats at one oh two
no leak under ninety
done next
fourth one's the big one
six inch p v nine zero one
yoke's bent and the flange is chipped
looks like it got dropped
handwheel has two spokes cracked
positioner cover's smashed in
tubing all mashed flat
solenoid's busted off at the conduit
actuator looks okay from outside
upper housing dent's maybe half an inch deep
doesn't touch the diaphragm
stem bent no question
stem connector's cracked and its bolt's missing
body looks fine flange face got nicked in two places
trim's in great shape
seat's perfect plug's perfect cage is perfect
not a mark on any of it
gaskets are all fresh
packing's good it's just had the stem jammed sideways in it
packing could be damaged i'll change it anyhow
gonna reuse all the trim
stem needs replaced
stem connector too
yoke can't be straightened it's cast so new yoke
dress the nicks out of the flange face
dressed 'em out fine
need a positioner a solenoid and a handwheel
order tubing and fittings for it
and one indicator
all that's ordered
setting it on the shelf till parts show up
keep this one open
fifth valve
tag's rubbed off can't read it
might be l c v six six or six eight
it's two inch pressure closes
seems like a clean one
body's good cage good seat good plug good
everything's good except the diaphragm
diaphragm's ripped from the center to the edge
and the spring's got a crack in one coil
nut came off that's what done it
diaphragm nut was backed all the way off
no thread locker on it
plate's not hurt
lower diaphragm's okay
threads on the nut okay
threads on the stem okay too
new diaphragm new spring same nut
thread locker this time
twenty five foot pounds on the diaphragm nut
actuator test thirty psi twenty minutes no drop
strokes fine
tag is six eight they called me back
that one's finished
last one before lunch
m v two two one one
another water dump out of the brine plant
corroded is the word
body corroded inside and out
bonnet corroded and the bolts are worse
seat ring eaten up all around
plug eaten up on the bottom
cage isn't even there it's rotted off
stem's pitted from top to bottom
guide's okay bronze one
spring's rusted in two
diaphragms are both fine believe it or not
housing's are swiss cheese
nothing to save but the diaphragms and the guide
and i'm not putting old diaphragms in a new valve
scrap it
whole valve's getting replaced
note get stainless trim for this location
foxtrot charlie victor eight one five is the tag
two inch body half inch port
it's on a sandy well they go through seats every month
they said it quit holding last night
upstream ninety pounds downstream's about the same so it's wide open
line's blocked in both sides
bled it off through the drain
nothing on the gauge now
i don't trust that gauge it's been stuck before
cracked the bonnet bolts slow no pressure
alright she's open
plug came off the stem
plug's laying in the bottom of the body
that's why it was wide open
threads on the plug are gone stripped clean
threads on the stem are not much better
lock nut's in there too it's beat to death
cage has a dent in it from the plug bouncing around
dent's on the lower left
cage otherwise isn't cut or cracked
seat has a ding on the edge
a couple of dings actually
and it's wire drawn all the way around
seat gasket looks okay surprisingly
can't see any cracks in the body
inside of the body is polished from the sand
a little thin at the bottom
body's not leaking anywhere though
packing good stem packing area good
guide's loose on the stem it's wore out
guide o ring's still soft that's the only good o ring
cage o ring is chewed up
backup rings are chewed up worse
okay the upper end
housing bolts every one rusted
soaked 'em and got all of 'em but one
that one broke off in the housing
drilled it out
upper housing's corroded around that bolt
diaphragm's stretched out but it's not torn
diaphragm has nut marks in the center
reuse no i wouldn't
plate's dished
spring has good length but there's some rust
nut's okay
indicator's okay its gasket's okay its spring isn't
breather's half plugged
here's the list plug stem seat lock nut guide
and all the o rings and the backup rings
cage i'll file that dent out of it
filed it out and it slides right in
diaphragm and plate new ones
cleaned the spring it's going back
breather i just blew out
all the bolts on the housing are new
put it all together at eighteen foot pounds on the housing
thirty three on the bonnet
lock nut i threadlocked twice
stroked it with twenty pounds opens up clean
shuts on its own
ninety psi upstream and no sound at all
put my hand over the outlet there's nothing
so that's a good seat
no leaks at the joints
what'd i say about the backup rings
anything missing
close this job
l v three one niner is up next
this is the treater oil valve
same size same make as the last one
acts the other way it's pressure to close
oil temp's one sixty five
fluid's sour so i've got the monitor on
monitor went off h two s backing out
okay clear now wind shifted
signal's reading eight pounds and she should be shut
seat's passing you can feel the pipe's hot downstream
bunch of asphaltenes on the trim
sticky black stuff all over the plug and the cage
seat's got the same crud
not eroded just gummed up
under the crud the plug's pitted a bit on the face
seat's not pitted
stem's gummy
stem's sticking on account of the crud in the guide
guide ports stopped up
o rings have gone hard from the heat every one
bonnet gasket's brittle it came off in pieces
cage gasket the same
diaphragm's hard at the outside edge and soft in the middle
i wouldn't run that again
spring's discolored but it's good
oil's black in the snubber
it's low too about half
topped it up no i drained it and refilled it
solvent on the cage solvent on the plug
cage cleaned up like new
plug got polished a little and i'm running it again
seat is reused
stem's cleaned and greased with the high temp stuff
every o ring replaced
bonnet gasket cage gasket both replaced
upper diaphragm's new
left the lower one
guide got its ports cleaned
bolts torqued to twenty five
ran the signal up shuts at fifteen
sixty on the inlet two drops a minute
that's okay for this service but i'd like better
gave it another couple strokes and now it's dry
seat's holding now
packing's dry shell's dry
all buttoned up
done with three one niner
you still there
l c v seven oh seven alpha
the body's froze
ice around the bonnet and the yoke
had to steam it
it's thawed out now
body's cracked from the freeze
crack runs down the left side from the flange
goes all the way to the bottom
can't fix that
bonnet's not cracked
cage is okay i guess
plug and stem okay
seat's okay
diaphragms okay
so it's just the body
strip the trim out and put it in a good body
got a body on the truck
trim came out with no trouble
everything moved over to the other body
seat gasket cage gasket bonnet gasket are new
old seat old plug old cage old stem
put antiseize on the seat threads
body bolting's from the old one two were bent so i swapped them two
tightened up crossways to thirty eight
pressure tested the body at two twenty five no leaks
seat test at two twenty five passed
scrapped the old body
note heat trace was off when i got here
moving over to p c v two two two
this is a fuel gas regulator for the burner
two stage
supply gauge says seventy output gauge says nothing
lighter flame flashed out the vent a minute ago there was a little fire
fire's out
shut the gas off
regulator diaphragm's blown
it tore across the middle
breather was blowing gas on account of that
breather's not plugged or anything
seat in the regulator's cut
disc is embedded with dirt
there's trash in the strainer
screen's got a hole in it
spring and adjusting screw alright
lock nut on it was loose
body threads fine
one fitting's leaking at the inlet
inlet fitting has cracked nut
put in a new diaphragm new disc new screen
dressed the seat on the regulator with a stone
changed the fitting
set at thirty five psi
lock nut's tight
no leak on the vent with soap
it locks up at thirty eight
photo please
thanks that's a wrap on this one
got to get some lunch that gas station burrito's looking at me
okay back at it
h v four four five
hand valve two inch
handwheel's missing they been using a pipe wrench
stem's all chewed up from the wrench
the flats on the stem are rounded
packing's leaking pretty steady
heated the packing nut and broke it loose
packing is fossilized
had to dig it out with a pick
stuffing box is scored a little
yoke bushing threads worn bad
yoke itself is solid
seat's got a line across it
plug's got the same
no erosion just the one line
lapped it in about ten minutes
line's gone
stem i turned around no can't do that i replaced it
new yoke nut
new packing five rings of it
need a ten inch handwheel
packing nut's snug about forty inch pounds
opens and shuts by hand with the wrench
hundred and fifty psi on it holding
packing's not weeping
no further work on it
all done on four four five
okay it's friday let's get this done
level valve at the slop tank
tag l c v one two oh
two inch threaded
normal service supposedly
found inlet threads leaking at the collar
inlet threads are galled they've been crossed before
outlet's fine
valve's cycling good as of now
i'm here for the leak and a look see
took it out of the line
inlet threads are damaged about three threads in
rest of the thread's intact
chased it with a tap
still got one bad thread but it'll make up
went ahead and opened it
seat's worn a little more on the left
plug looks alright maybe a little dull on the edge
cage is good just greasy
stem's good guide's good
o rings are all good soft and round
backup rings too no cuts
gasket on the bonnet was leaking i see a track
track on the outlet side of the gasket
gasket surface has a pit right there
shallow pit
dressed that with emery
everything else put back
i did not flip the seat
seat will go another six months i think
diaphragm's original but it's fine
breather screened and clear
spring fine housing fine plate fine
doped the inlet threads and made it up
bonnet bolts twenty nine foot pounds
shell test one hundred twenty five psi no leaks
at the threads no leak either
stroke and seat both good
send it
p v three three six delta
intermediate scrubber
pressure to open two inch
severe service lots of condensate
block valve won't hold can't isolate this thing
no lock on the bypass either
operator's putting a blind in
alright blind's in and locked
zero energy checked
pulled actuator first this time
spring was still loaded when i backed off the bolts
caught me off guard but nobody's hurt
let the spring down slow with the long bolts
spring's okay
upper diaphragm's got bolt hole tears on three holes
the center's good
diaphragm plate nothing wrong
housing lip's got corrosion left side
lower housing too same place
cleaned both lips with a wire wheel
no cracks in either housing
balance diaphragm's good there's a mark on it
just a mark not a cut
indicator's sticking in the bore
cleaned the indicator and oiled it
now the trim
plug's eroded on the inlet side face
it's about a sixteenth deep
seat's eroded to match
cage's wire drawn at the lower holes
i don't see any cracks
cage gasket's blown out between two holes
cage o ring partly missing
piece of it's in the seat
stem's straight and bright
stem guide has a groove worn in it
o ring groove on the guide's corroded
o ring there's flat
guide's gotta go
bonnet's washed a little by the gasket
i'd call it minor
body is washed out worse on the outlet
body's still thick enough i think
measured the wall at five sixteenths
put that down wall thickness five sixteenths of an inch
it started out at seven sixteenths
bolting's all good
reuse the body reuse the bonnet reuse the bolts
stem goes back plate goes back spring goes back
seat plug cage guide new
diaphragm up top new
bottom diaphragm same one
seals all new
cage came with the gasket so that's new
cleaned out the groove anyway
stem greased packing greased
bolts at forty two foot pounds
fifteen pounds on the diaphragm air test no loss
strokes smooth top to bottom
hundred fifty upstream no leak
three hundred upstream no leak
watched the downstream gauge for ten it stayed at zero
blind's coming back out
note body wall is thin replace next turnaround
complete
r v two zero seven
oh and my knee's killing me today anyhow
relief's been simmering
upstream's eighty eight set's a hundred
nozzle's leaking
disc is steam cut
it's cut on the one side
nozzle's cut same side
disc holder's galled
spindle's straight
spring's corroded but not pitted deep
adjusting screw's frozen up with rust
bonnet vent hole's plugged with paint
cap gasket's missing
body bowl's full of rusty water
drained it
dug the paint out of the vent hole
lapped the nozzle lapped the disc
couldn't lap it all out replaced the disc
holder got polished
wire wheeled the spring
adjusting screw's freed up and greased
cap gasket new
set pop one hundred
held at ninety tight
what's next f v eight eight
one inch three way mix valve
ports are side by side
right hand side's leaking through
left side's holding
lower seat's scratched
upper seat isn't
plug bottom is scratched the top of the plug's fine
stem's a bit corroded at the connector
connector's loose
no damage to the stem threads
packing's soft still good
linkage has slop in it
pin hole's wallowed out
positioner cam's loose on the shaft
gauges on the positioner one's fogged one's broke
solenoid hums but it don't shift
tubing's pinched behind the bracket
tubing's been rubbing it's nearly through
no hole in it yet
breather's good
lower seat lapped
plug's dressed on the bottom
stem's cleaned up
connector tightened to fifteen foot pounds
cam's tightened
bushed the linkage hole
solenoid replaced
new piece of tubing bent up and installed
gauges i don't have so that's needed
put two thirty pound gauges on the list
positioner calibrated at three nine and fifteen
strokes both ways
right side's holding at sixty
left side's holding at sixty too
took seven seconds each direction
no air leaks at any of the fittings
fine piece of work if i do say so
close out f v eight eight
t v one four one
cooler temperature valve
fail open butterfly type
disc's corroded at the edge
about a third of the way around
disc pin's loose
liner's torn by the disc edge
liner is torn at the bottom
shaft's scored at the packing
shaft bushing bad on one end
it's the outboard bushing
packing's weeping
flange gaskets good
body good
actuator spring side's broken
spring can's rusted inside
actuator diaphragm alright no holes
handwheel override's disengaged and stuck
freed the override
needs a liner a disc and a shaft
none of that's on the truck
order one liner one disc one shaft
gotta leave it in service for now
tightened the packing to slow the leak
still drips about one a minute
glycol temp's one seventy two
valve opens to sixty percent and stops
stroke's no good then
leave this job open
back tomorrow on it
now mute for a minute
we're on whiskey victor six one two
two inch water dump fail closed
just gonna go top to bottom on this one
breather okay indicator okay indicator gasket no good
indicator spring's okay
upper housing rust on the bolt flange
lower housing no rust nothing
housing bolts and nuts rusty usable
upper diaphragm hard slight cracking on the outside edge
plate and nut both fine
spring good no broken coils
lower diaphragm torn on the inlet side
gasket between the bonnet and the body torn in two places
bonnet no pits no cracks
bonnet bolts two missing four good
stem straight light scratches up near the top
upper guide o ring flat
lower guide o ring cut
stem guide worn on the bottom
cage washed out lower half
cage o ring good cage gasket good
plug bad all around
seat good on one side
seat gasket stuck to the seat
body pitted at the bottom not bad
inlet threads good outlet threads a little rusty
that's everything
now what i did
replaced upper and lower diaphragms
replaced cage plug and guide
flipped the seat and put a new seat gasket under it
reused the stem the spring the plate and the nut
cleaned the body the bonnet and both housings
brushed off the outlet threads
installed two bonnet bolts
didn't do anything to the breather
bonnet bolts torqued at thirty one pounds
housing's at fourteen
signal fifteen full open
signal off she shuts
seat's tight at one seventy five
did i say anything about the lower housing
same site sister valve
whiskey victor six one three
the twin to the last one and it's worse
the cage on this one's washed out worse than the other
seat's bad on both sides not just the one
plug's about the same as the other plug
stem's better though
upper diaphragm's better too
bottom diaphragm's worse it's in two pieces
the body's not as pitted
inlet threads not as good as the outlet threads
both guide o rings gone
guide's more worn at the top than the bottom
spring's shorter than the other by a quarter inch
i think it's weak
backup rings upper's good lower's split
bonnet gasket's no worse than any other
housings both rusted more outside than in
cage and seat and plug all junk
keep the stem keep the plate keep the nut
spring's questionable so i changed it
new diaphragm on bottom ran the top one again
guide replaced and both its o rings
chased the inlet threads
one backup ring replaced
didn't mess with the housings
everything's greased
together and torqued same as before
thirty one on the bonnet
strokes good holds good at one seventy five
packing's got no leak
on to whiskey victor six one four then it's quitting time
this one hasn't been touched in years
bolts all painted over
paint in the vent hole
paint on the stem too
it's sticking on the paint
scraped the stem off and it moves now
had to chisel the bonnet loose
gasket's petrified
trim's actually decent
cage is dirty plug's dirty seat's dirty but none of it's worn
slight corrosion on the stem in the packing
o rings all flat every last one
backup rings are hard
both diaphragms hard neither one torn
spring's fine
no scoring no galling no pitting
just old rubber is all
kit it and put it back
soft goods kit is in
cleaned the trim reused all of it
emery clothed the stem
opened up the vent hole
gasket face got scraped and stoned
new packing
strokes fine at twelve pounds
no leak one seventy five
that's it for today
okay new day no coffee yet
echo victor four four one
two inch on the test separator
leaks through about a cup a minute they say
call it two hundred cc a minute
pressure's eighty five
bolts off bonnet off
well there's your problem
piece of a rag in the seat
rag in the seat and the seat's not hurt
plug's not hurt
cage isn't hurt either
i'll look at everything else since i'm here
guide's snug stem's straight
packing's okay
seals are all okay
diaphragms looked at both okay
no damage whatsoever
rag's out blew the body out
new bonnet gasket since it's apart
back together
twenty seven foot pounds
eighty five on it no leak by
easy money
close that one
l v two five two
three inch flanged severe service sandy
upstream block's good
downstream check is leaking so it won't bleed down
it's still got twenty pounds trapped behind it
bled it through the bonnet plug
zero now
dropped the bottom flange bolts
body bottom's sand cut right through the liner
not through the body though
seat retainer threads are eroded
seat's eroded too
seat ring came out in my hand there was nothing holding it
plug tip's gone
about an inch of it just gone
cage you could read a newspaper through
stem's bent and scored
guide bushing's oval
bonnet's cut on the bottom where the cage sits
packing full of sand
packing follower's scored
packing nut's okay
bonnet studs are okay but four nuts are rounded off
flange gaskets are junk naturally
yoke good actuator good
actuator spring good diaphragm good
positioner good tubing good
so the top works is fine and the bottom's garbage
body's probably a throwaway
could maybe weld it but i wouldn't
swap the body bonnet and all the trim
yoke and actuator go back
we need carbide trim in here
put carbide plug and seat on the list
have the shop send me a three inch body and a bonnet
also nuts for the studs
i pulled the whole thing and put a blind flange on
sand all over the ground and some water spilled
not a lot of spill couple gallons
pictures of the plug and the cage
what all have i told you about two five two
yeah close it
h i c eight zero five
choke on the wellhead line
hundred psi downstream nineteen fifty up
inlet pressure's way up there so careful
isolated at the wing and the header
waited twenty minutes still zero
cap's off
needle's wire drawn on the tip
seat's cut in one spot
body's got a groove right behind the seat
indicator on the barrel's loose
set screw's missing
handwheel's good
stem threads dry and galled some
o ring on the bonnet extruded
backup ring extruded along with it
packing's chewed
bleed plug's cross threaded
seat needed a special wrench but it came out
needle and seat come as a set so both new
bonnet o ring and backup new
packing new
stem threads cleaned and greased
new bleeder
set screw in the indicator
groove in the body's shallow so it's going back
pressured it up slow
five hundred no leak
a thousand no leak
nineteen fifty and no leak
choke shut holds no flow
set at twenty two sixty fourths
no i don't think you need that
close out the choke
f c v nine one
chemical injection half inch valve
corrosion on everything
tubing's ate up at the fittings
two fittings leaking and a third one seeping
gauge is dead
stem is pitted all over
diaphragm on this is a little disc and it's swelled up
swelled so bad it won't come out
cut it out
seat's plastic and it's melted looking
plug's good
spring's stainless so it's good
body's good it's stainless too
regulator on it's junk
replaced the tubing and all three fittings
replaced the stem diaphragm seat
plug and spring and body reused
new gauge
regulator needed bring one next time
holds fifteen pounds with no leaks on soap
that's done
stop listening i've got a call
okay listen up
starting on papa charlie victor one seven three
pressure control off the flash drum
it's four inch globe fail open
dirty service
stem's got a wobble in it
lock nut's loose at the connector
travel indicator's off about an eighth
actuator air's leaking at the tubing nut
it's a hissing leak not a big one
signal's coming and going three to nine
positioner relay's plugged i believe
orifice in the positioner's plugged for sure
cleaned the orifice with the little wire
pulled the actuator off the yoke
yoke studs fine
here's the plug
top of the plug guide's galled
skirt's fine
seating surface is a little dull no cuts
ports in the plug aren't plugged
seat ring's good got a slight line
line's only about a third of the way around
that'll lap out
seat gasket spiral wound and it's flattened
bonnet gasket same
cage has galling where the plug galled
it's on the right side about two inches long
can i hone it maybe
seal ring on the plug's broken
backup ring behind the seal's okay no it's cracked
stem scratched lengthwise
packing's leaking past the scratch
upper packing set's okay the lower set's eaten up
packing flange is bent
body's clean as a whistle
no erosion in the webs
flange faces no damage
bolting not corroded not stretched
alright the cage i honed and it's smooth
plug's guide i dressed with a file
seat lapped fine compound
seal ring and backup replaced
spiral wounds replaced
stem's replaced
packing upper and lower replaced
packing flange straightened in the press
tightened the bonnet in a star to one ninety foot pounds
positioner's back
hooked up fifteen pounds she shuts all the way
bled it off she opens all the way
two inch travel on the money
ten seconds down eight seconds up
packing box dry at one hundred forty
seat leak is one bubble every ten seconds that's six a minute
okay with me
fixed the air leak at the tubing nut
retorqued bonnet after an hour all good
get a picture of the tag
did i tell you about the packing flange
okay finished
l c v five zero one
two inch dump off the gun barrel
first thing the pilot
pilot's vent is plugged with bugs
pilot diaphragm wet but okay
pilot plug has a piece of teal colored sealant on it
pilot spring adjusting screw's bent
float's waterlogged
float rod's pitted
float's got to go and so does the rod
linkage is stiff full of dirt
adjusting screw needs a new one
supply regulator's creeping
supply regulator's set for twenty and it's up at thirty one
regulator seat's got trash on it
cleaned it and it's holding twenty
filter bowl's full of water
drained the filter bowl
o ring on the bowl's cracked
replaced that
main valve diaphragm i looked at it's good
stem didn't stick any
trim didn't look at it there was no reason to
dump's shutting off fine
four psi on the vessel so not much test
get me a float and a rod
for the record the pilot had the wrong spring
done no wait
what's left to do
okay done now
f v three one
gas lift control one inch
thousand fifty on the casing
supply's pulled from the line
the drip pot's full
liquid in the supply tubing
signal port has oil in it
supply port has scale in it
both ports cleaned
controller's nozzle is plugged
flapper's bent
bourdon tube's fine
controller gauge stuck at six
straightened the flapper
blew the nozzle clear
controller needs calibrating
calibrated three to fifteen at zero and a thousand
valve itself
seat's clean
plug's clean
packing i gave a flat
one flat on the packing nut and it quit seeping
stroke's okay nine seconds
done and done
b d v one one eight
blowdown valve four inch ball
fail open
spring return actuator it's a big spring so careful
don't open the spring can
spring can's okay outside
shaft seal's leaking air
piston's scored
cylinder wall is scored less
piston o ring's flattened and nicked
piston guide band's worn
cylinder end cap bolts rusted
two end cap bolts snapped off
solenoid exhaust's plugged with mud
solenoid plunger's sticking
quick exhaust diaphragm's stiff
supply strainer plugged up half way
ball valve itself's okay
seats aren't leaking
stem isn't leaking
flanges aren't leaking
piston seal replaced band replaced
honed the cylinder a touch
end cap bolts replaced
extracted the two that broke
quick exhaust kit's in
cleaned out the strainer
air test at eighty psi no leak
opens in three seconds
has to be under five so that's a pass
closes in eleven
it was fourteen before
finish one one eight
s d v two zero two
shutdown valve
won't go closed they say
checked it and it only goes half way
air's bleeding off slow
breather on the spring side plugged solid
that's why
now it goes shut in six seconds
stem's okay packing's okay
actuator doesn't leak
limit switch linkage is loose
tightened that
no parts needed
all good
kilo victor nine two six
this is the kill line valve two inch plug type
plug won't turn
sealant fitting's plugged
wrench flats rounded on the stem
worked sealant into it and it's turning
plug's stiff but it turns
no body leak
gland's weeping
gland bolts tightened
stopped weeping
stem needs a new one someday
not replacing it today
hundred pounds downstream bled off it's holding
close kilo victor nine two six
evening call out on the p v two nine
the diaphragm's leaking gas out the vent plug
gas smell's strong downwind
shut it in
upper diaphragm ruptured clean across
it's torn from two bolt holes to the middle
plate has a sharp edge
that edge is what cut it
lower one's okay
stem nut wasn't tight
spring good
filed the edge off the plate
diaphragm replaced
plate's reused now that it's smooth
nut tightened to twenty two
housing bolts back in and tight
thirty pounds air on the actuator ten minutes nothing
strokes
smell's gone
i'm going to bed
`;
