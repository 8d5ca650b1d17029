/** Lines that people would say: opening, correcting, answering, commanding, warning. Invented; a line a phrase, numbers and tags as spoken. */
export const SESSION = `
okay starting on f v one oh one
alright next one is lima victor two zero four
moving on to p c v three twelve
this is l c v one oh six alpha
let's open up a job on t v four oh two
okay i'm at p v one thirteen now
new valve tag is foxtrot victor two two one
starting a new one here l v five oh one
uh tag number is f c v eleven oh four
going over to papa victor three zero nine
got l v two seventeen on the bench
okay back on p c v one twenty
next valve h v sixteen
this one's a two inch pressure to open
it's a one inch air to close sandy service
three inch fail closed
four inch valve normal service
two inch fail open sour service
tag's painted over looks like f v one one eight
can't read the last number on the tag
it's l c v two thirty bravo i think
correction that's f v one oh three
no sorry tag is p v two zero six
make that two oh seven
i mean l v not f v
correction three fourteen
sorry wrong valve this is t v one oh eight
no wait it's the two inch not the three
uh scratch that it's air to close
seat's worn no scratch that it's washed out
seat worn on one side i mean both sides
upper diaphragm torn
correction that's the lower diaphragm that's torn
correction upper diaphragm
no make that the top one
i mean the lower one
i meant the stem not the plug
sorry i meant the cage gasket
scratch that
no scratch that last one
forget that last one
never mind that
uh never mind scratch it
scratch that and scratch the one before it too
strike the last thing i said
go ahead and strike that
scratch that the seat is fine
strike that the plug's the one that's scored
never mind the gasket's okay
torqued the bonnet bolts to twenty eight foot pounds
no make that thirty two
no twenty eight
correction forty five foot pounds
i mean inch pounds
inch pounds
thirty foot pounds sorry thirty five
bonnet bolts at twenty uh no twenty five foot pounds
sixty psi make that eighty
supply's at thirty five no wait twenty psi
bled it down to zero
bleeding it down now
it's bleeding down slow
still bleeding it off
okay it's all bled off
locked out and tagged out
i've got my lock on it
locked out both sides
inlet and outlet blocks are locked
isolated and bled down
blocked in and blown down
still got pressure on it
there's still pressure trapped under the bonnet
bled it down but it's still holding pressure
hold on it's got pressure on it
gauge still shows forty pounds after i bled it
pressure's building back up on me
got trapped pressure in the actuator
heard it hiss when i cracked the bolts
it's not bled all the way down
inlet block valve is leaking by can't isolate it
block valve won't hold
upstream block is passing
can't get it isolated
there's no lock on this thing
nobody's locked this out
somebody took my lock off
i smell gas
smelling gas over here
got a gas smell around the bonnet
my monitor's going off
h two s alarm
h two s alarm just went off
getting fifteen parts per million on my h two s monitor
gas alarm going off backing out
my four gas is chirping
strong gas smell by the packing
spring's still loaded
spring is under load be careful
actuator spring's still compressed
spring let go on me
spring shot out when i pulled the housing
that spring's got tension on it yet
watch it the spring's not backed off
cut my hand
smashed my finger in the yoke
got something in my eye
burned my arm on that hot line
line's hot
that's a hot line don't touch it
hot line right next to me
spilled some oil on the ground
there's a spill under the valve
got methanol dripping on the skid
chemical leaking out of the injection line
chemical spill by the pump
got fluid all over the floor
there's a fire
we got smoke coming off the skid
glycol running out of the bonnet
same on the other one
same on the lower
same with the upper
same thing on the outlet side
that one too
that one's torn too
other one's the same
ditto
ditto on the other side
ditto for the seat
ditto on the cage o ring
both of them
both of them are cut
swapped both of them out
they're both shot
both backup rings need to go
same deal on the inlet threads
and the same for the plug
same as the last one
lower one looks the same
the other one's fine
other one's good
the other diaphragm's okay
that one's junk
that one i'm reusing
it's going back in
i put the same one back in
put a new one in
needs a new one
gonna need a new one
cleaned them both up
greased it and put it back
tightened it back up
leaving that one alone
leave it for now
i'm not replacing it
didn't replace that one
going to leave that in there
upper
lower
the upper one
inlet side
done
yes
yeah
no
yeah that's right
no that's wrong
no it's not
yes it was replaced
yes both
no just the one
just the lower
three bolts
nothing wrong with it
good to go
both sides
all the way around
pressure to open
air to close
fail closed
about eighty psi
it passed
failed
what's missing
what am i missing
what's left on this one
what have i got left to do
what did i miss
did i miss anything
did i forget anything on this valve
anything else you need
what do you still need from me
what else do you need on f v one oh one
okay what's still missing
uh what's left to fill in
is there anything left on this job
tell me what's missing
what haven't i done yet
close it out
close this one out
go ahead and close it out
okay close out f v one oh one
close the job
that's it
that's it for this one
that's it close her out
that's all on this valve
all done
i'm all done with this one
done with this valve
okay we're done here
we're finished with this one
finish this one up
let's wrap this one up
alright that's a wrap on that one
that'll do it for this one
that does it
read that back
read it back please
read it back to me
read me back what you got
read back the last one
can you read that back please
okay read me that again
say that again
say that one more time
what was that
what'd you get
what have you got
what have you got so far
what do you have for the seat
could you repeat that for me
let me hear what you've got
take a picture
take a picture of that
take a picture of the seat
get a picture of this plug
go ahead and take a photo
take a photo of the lower diaphragm
grab a picture here
snap a picture of that crack
let's get a photo of this
i want a picture of the tag
can you take a picture of this for me
photo of the cage please
uh hold on take a picture of this first
stop listening
okay stop listening for a minute
stop listening i gotta take a call
go ahead and stop listening
mute
mute for a sec
okay you can start listening
go ahead and listen
listen up
unmute
alright i'm back start listening
note
note that the tag's missing
note the stem was painted over
note this valve was installed backwards
note customer wants the old parts back
note operator says it's been hunting all week
note needs a bigger ladder next time
note had to borrow a torque wrench
note come back next week for the positioner
note the nameplate doesn't match the tag
note that the upstream block needs greasing
note the air supply was off when i got here
note first time this one's been opened up
note well was shut in at nine thirty
note bonnet bolts are two different lengths
note somebody used the wrong gasket last time
note gasket was on upside down
note bug screen's gone off the breather
note old parts are in the truck
note talked to the operator about the sand
note separator's been making a lot of sand
note we need to check this one again in three months
note no spare kit on location
for the record the block valve was already shut
for the record it was like that when i got here
for the record operator asked me to leave it
for the record i didn't have the right seat
for the record the lock was on before i started
remark found the bypass open
remark valve is hard to get at
remark same trim as the one next door
remark tubing should be rerun
make a note the stem's been filed on
make a note that the supply gauge reads high
add a note the kit was short one o ring
note that we ran it with the old spring
note left it on the bypass for night shift
uh note the regulator's set at thirty five pounds
okay note that i'm leaving the old seat with the operator
order a kit for this one
order a new seat and plug
i need a lower diaphragm ordered
bring a diaphragm next trip
bring two o rings for the cage
put a seat on the list
put a stem guide o ring on the list
put both diaphragms on the list
pick up a bonnet gasket
pick up some packing
get me a two inch kit
get me four bonnet bolts
need to order a spring
gotta order an upper diaphragm
need to bring a new gauge out here
add a positioner to the list
i'll need a set of backup rings order them
have them send out a cage
go ahead and order two of them
order that too
order one of those
put one on the list
put that on the list too
bring one next time
scratch that we've got one on the truck
never mind i found one in the truck
no order three of those
seat gasket on the list and a cage gasket too
let's see
hold on a second
uh okay let's see what we got
let's see the seat's worn a little
uh plug's got some scoring on it
okay bonnet's off
yeah the seat's washed out
um the cage looks good
let me see here stem's bent
okay let me look at the diaphragm
uh it's torn at the edge
hmm the gasket's pinched
well the o ring's flattened out
yeah that's cut pretty bad
okay yeah that's shot
so the upper diaphragm's hard
and uh the lower one's fine
let's see seat gasket's okay cage gasket's okay
uh what else guide's scratched a little
um no cracks that i can see
okay no damage on the threads
yeah nothing wrong with the spring
okay so far so good
alright now the plug
on to the actuator
okay let's do the diaphragms
next is the stem guide
now i'm looking at the inlet threads
worse than last time
seat's a lot worse this time than last
plug's about the same as last time
same as it was last time
better than last year
it's a lot better than it was
seat looks the same as last visit
no change from last time
no different than last time
diaphragm's gotten worse since last time
stem was scratched last time now it's scored
last time it was slight now it's pretty bad
this is the same seat we flipped last time
we replaced this diaphragm last time and it's torn again
second time this year for that o ring
third time we've replaced this seat
same side as last time
it's wearing on the other side this time
last time i torqued these to twenty eight
last year it was leaking three bubbles a minute
leaking more than last time
took longer to stroke than it did last time
spring's the same one from last year
holding up better than the last one did
this seat lasted six months
it only lasted a couple months
compared to last time the cage is worse
threads haven't changed since last time
corrosion's about the same
a little more pitting than before
still got that same nick in the plug
that crack's grown since last time
operator says it's been leaking by
operator said it won't close all the way
the operator told me it was sticking
they said it's been chattering
he says they changed the seat last month
guy before me said the stem was bent
day shift said it was passing
pumper says it's been hunting
pumper told me he replaced the spring
they told me it was a pressure to open
work order says two inch
foreman wants the plug replaced too
he said it was seized but it moves fine
operator thinks the diaphragm's torn
they say it's leaking but i don't see it
supposedly this one got a new kit in march
paperwork says the upper diaphragm was replaced
the sheet calls for thirty foot pounds
according to the tag it's fail closed
control room says it's only going half way
control room called it strokes full on their end
company man wants it back on by noon
tag says it was rebuilt last fall
my helper says the lower housing's cracked
he found a crack in the yoke
she said the gauge was reading low
they were saying it froze up last winter
operator says go ahead and replace it
boss said leave it for now
they don't want it replaced
customer doesn't want a new seat
customer said just clean it
i was told the block valve leaks by
i heard they've been getting gas out of the breather
seat worn replaced it
plug scored replaced the plug
stem's bent straightened it
diaphragm torn put in a new one
o ring cut new one in
backup ring extruded tossed it
gasket was stuck to the body scraped it off
cage plugged with sand blew it out
threads corroded wire brushed them
packing's leaking tightened the packing nut
guide fouled with paraffin cleaned it
spring rusted but reusing it
bolts rusted up replaced all eight
two bolts broken replaced those two
lock nut was loose snugged it up
jam nut backed off
breather's plugged with mud cleaned it out
vent hole was plugged rodded it out
signal port's plugged with ice
supply tubing is kinked
fitting's leaking on the supply side
positioner needs calibrated
adjusting screw's seized up
oil looks dirty
body's washed out pretty bad
pinhole in the diaphragm
diaphragm blown through
diaphragm nut was loose
lower housing's full of water
water in the actuator
stem's got a light scratch on it
trim's sand cut all around
seat and plug both worn
stem and guide are galled together
upper and lower both torn
upper and lower are both okay
inlet and outlet threads look fine
all the seals are shot
packing is wore out needs replacing
bolts are rusty but okay
valve's in good shape
everything's full of sand
everything looks good
that's about all i see wrong
nothing else to report
no issues with the rest
seat's worn no the plug
it's the plug not the seat
the plug uh the seat's washed out
upper no lower diaphragm's torn
cage gasket i mean cage o ring's cut
stem guide's worn sorry stem guide o ring
bonnet gasket no seat gasket pinched
inlet threads uh outlet threads are galled
left side no right side
one side make that both sides
slight wear no make that heavy
two bolts broken make that three
replaced the seat i mean flipped it
replaced the spring no wait reused it
cleaned the cage correction replaced the cage
needs replaced no scratch that it'll go again
it's cracked no it's just scratched
torn no just cut
worn sorry washed out
it's pitted i mean corroded
corroded scratch that it's just dirty
sticking no it's plumb seized
loose no missing
leaking strike that it's dry
diaphragm's good scratch that there's a pinhole
seat's good no wait there's a nick on the edge
stem's straight no hang on it's bent
correction it's the bottom diaphragm
correction the outlet threads
correction seat's okay
correction i already replaced it
correction i already cleaned that
correction we're reusing it
correction it failed
correction it was two bolts not three
correction both of them are torn
correction thirty three foot pounds
correction one twenty five psi upstream
correction six seconds
sorry that was the cage
sorry that's the inlet side
sorry eighteen psi
sorry it was fifty not fifteen
sorry i said upper i meant lower
no i said fifteen
no i said the stem
no not the seat the seat gasket
no the other one
no that's the upper one
no it's the actuator spring
no it's lower housing
no it wasn't replaced
no it's three eighths
no it's point oh one five
no it's needed not done
no i flipped it
no i didn't replace it
wait that's not right
wait no it's the stem guide
hold on make that the upper housing
actually the plug's fine
actually make it forty
actually i did replace that gasket
actually leave the seat in there
actually it's holding now
change that to thirty psi
change that to the lower one
change it to severe service
that should be twenty two foot pounds
that should be fail open
should've said bonnet gasket
i misspoke it's the cage
make that a quarter inch
make that bubble tight
make that l v two oh three
make that two of them
make it four bolts
make that pitted
make that both diaphragms
bonnet bolts torqued to thirty foot pounds
torqued them to fifty five
torqued the body bolts to one ten
packing nut at twelve inch pounds
lock nut tightened to forty foot pounds
diaphragm nut's at eighteen foot pounds
ran the bolts up to sixty five foot pounds
bolts torqued same as before
what torque did i give you
seat leak test at sixty psi
no leak at a hundred psi
holding at one fifty psi
bubble tight at eighty pounds
dead tight
it's holding
it's not gonna hold
leaking by a little
it's leaking by at fifty
blowing by pretty bad
two bubbles a minute at forty psi
about ten bubbles a minute at a hundred pounds
got one bubble every now and then
one drop a minute off the packing
three drops a minute at the bonnet
five milliliters a minute at one hundred psi
strokes full
strokes full on twenty pounds
opens and closes fine
full travel both ways
only going half travel
won't stroke at all
starts to open at six psi
cracks open at three and a half pounds
took eight seconds to stroke
four seconds to open and five to close
travel's three quarters of an inch
spring length four and a half inches
shell test passed
shell test at two hundred pounds for five minutes
packing leaks at thirty psi
actuator holds air
no air out of the breather
air blowing out the breather
retested it and it passed
ran it again and it holds
seat test failed the first time passed the second
did the stroke test no problems
haven't tested it yet
didn't get to test it
testing it now
bringing it up to a hundred
supply pressure's twenty psi
supply's set at thirty five pounds
signal's at nine psi
upstream's eleven hundred psi
downstream's sixty five pounds
valve's about thirty percent open
held it for ten minutes
bonnet's back on
put the bonnet back on
put the cage back in
pulled the seat out
took the actuator off
took it apart
put it all back together
putting her back in service
it's back in service
greased the threads and put it back together
lapped the plug and seat in
dressed the stem with emery cloth
put thread lock on the lock nut
adjusted the packing nut a half turn
checked the spring it's okay
looked over the housing nothing wrong
scraped the old gasket off
tossed the old o rings
threw the old seat away
drained the water out of the strainer
installed a new kit
put a full kit in it
new plug and seat
new diaphragms top and bottom
new backup rings both of them
new lower diaphragm old upper
reused the upper replaced the lower
reused the spring
left the old stem in
good to go back in
flipped the seat over
seat can't be flipped it's worn both sides
already flipped once so i replaced it
had to replace the stem
went ahead and replaced the packing
swapped the regulator out
changed the solenoid
needs new bolts
needs to be lapped
cage needs replacing next time
stem's gonna need replaced
gotta replace that upper diaphragm
have to come back and do the packing
will replace the seat tomorrow
replace them both
clean the cage and put it back
fixed the leak on the tubing
did the same on the lower
did the same thing to the other one
same torque on these
same torque on the body bolts
cleaned that one as well
and that one
and the same with the guide
same for both
same goes for the outlet threads
same with the cage gasket
same story on the plug
same on the backup rings
same on both sides
plug's the same way
stem's like that too
the upper's like that too
might be a crack in the housing
i think the stem's bent
could be the diaphragm
not sure but i think it's leaking by
looks like it may be cracked
reckon that spring's weak
probably the lower o ring
probably needs a new seat
can't tell if it's torn or just creased
i don't think it's bad enough to replace
starting to wear on the one side
sand packed in the groove
ice on the breather
no sign of leaking at the packing
okay it's isolated go ahead
alright i've got it locked out now
upstream's blocked in
downstream's blocked and bled
bled the signal line off
opened the bleeder nothing came out
bleeder's plugged can't bleed it down
bleeder won't quit blowing
can't bleed it all the way off
gauge won't go to zero
it's down to five pounds
zero on the gauge
pressure's off of it
okay zero energy verified
block valve's holding good
block valve's leaking by a little
both blocks are leaking through
no way to isolate this one
isolation valve's seized open
i don't have a lock for this one
lock's off
pulled my lock
taking my lock off now
there's pressure behind that plug
plug's holding pressure behind it
there's still gas in the line
gas coming out around the stem
getting a whiff of gas
smells like rotten eggs
smell sour gas over here
monitor's reading twenty on h two s
h two s is at ten
alarm's going off
alarm's clear
all clear on the gas now
air's good now
false alarm on the gas monitor
backing off until it clears
stop there's pressure under it
spring's still got load on it i need the long bolts
spring is preloaded watch the last two bolts
actuator spring came out hot
let the spring tension off
spring's unloaded now
spring's backed all the way off
that line's too hot to touch
hot oil on the line
steam coming off that thing
hot condensate dripping on my boots
got some methanol on my glove
got acid on the outside of it
inhibitor all over the bonnet
chemical line's right above me
oil spill about a gallon
condensate all over the ground
i hit my head on the beam
skinned my knuckles
slipped off the ladder
something's on fire over there
grass is burning by the flare
sparks from the grinder
done with this one moving on
done with that next one's p v two eleven
okay that one's done going to l v three oh four
close this one and open f v two twelve
that's it for t v one oh nine
finished with lima victor one one five
next one
next one over is the dump valve
same valve different tag
going back to the first one
back to f v one oh four bravo
back on the last one
where was i
where were we
what valve am i on
which one are you on
which tag have you got
is this f v one oh two or one oh three
what did i say on the stem
what'd i say for the torque
did you get that
did you get the torque
you get all that
you got that
you got it wrong
no that's not what i told you
i didn't say that
take that off
take that last one out
get rid of that
cancel the last one
ignore that last part
back up one
there isn't one on this valve
this one doesn't have a cage
no positioner on this one
no travel indicator on it
it only has one diaphragm
i don't remember
can't see it
can't get to it
couldn't get the seat to come out
i did that already
i told you that already
just did it
two more bolts to go
bolts are coming loose now
all bolts are in
snugged up hand tight
replaced
seat gasket
cage o ring
actuator spring
normal service
pretty bad
it's the inlet
thirty two foot pounds
forty five
one fifty psi
two and a half
point four five
about fifteen
eight seconds
yes it's done
yes the upper
yeah the lower one
yeah go ahead
yes that's the tag
yep replaced
no leave it open
no not yet
no don't close it
no just slight
don't close it yet
hold off on that
keep it open for now
leave this one open i'm coming back
i'll come back to this one
put this one on hold
pick this one back up
open f v one oh one back up
reopen p c v two twenty
okay pick up where i left off
picking back up on l v one sixty
start over on this one
start that one over
let me start over
let me say that again
i'll say it again lower diaphragm torn
again seat's washed out
once more bonnet bolts thirty foot pounds
okay uh seat's worn on the outlet side
uh stem's good
uh the cage has got some sand in it
uh make that the cage gasket
uh no the inlet side
uh replaced it i think
uh about twenty five foot pounds
uh let's go with thirty
uh what was it forty two psi
um two bolts no three bolts missing
um lower diaphragm's got a split in it
um yeah replace that
um i don't know looks okay to me
let's see spring's good plug's good
let's see how it strokes
let's see what the packing looks like
let's see it's at sixty pounds
let's see if it holds
okay it holds
okay seat's in
okay new seat's in and torqued
okay that's good
okay diaphragm looks good going back in
okay so upper diaphragm's hard and it's cracking
okay no leaks
okay what's next
okay both diaphragms replaced
okay stroke it
okay put down two o rings for that
yeah the plug's got a gouge in it
yeah it's leaking by
yeah it's stuck alright
yeah that gasket's toast
yeah i flipped that last time
yeah no cracks
yeah nah it's fine
yeah that's a new one
well it's worn but it'll go again
well it's not great but i'm leaving it
well scratch that it's got a crack
alright seat's out and it's junk
alright test it at a hundred
alright strokes full no leaks
alright let's close this up
alright note that for next time
so that's a fail
so that's two diaphragms and a seat
so the seat's eroded but just on the one side
now it's holding at sixty
now it's leaking out the bonnet
now the lower diaphragm that one's torn
now that's a bad seat
that ain't going back in
looks pretty good for its age
somebody put the wrong spring in it
somebody left a bolt out
missing the breather cap
there's no backup ring in here
no gasket in there at all
found a piece of the cage in the body
found the bleeder plugged up
found the lower diaphragm torn replaced it
found the stem nut backed off tightened it
as found it was leaking three drops a minute
as left it's bubble tight at eighty psi
as left torque thirty five foot pounds
before it was passing now it's tight
before i took it apart it wouldn't stroke
it was sticking greased it and now it's fine
it was seized had to drive it out
moves but it drags
drags a little going up
plug won't come out of the guide
turns free now
galled the threads taking it apart
i scratched the stem getting it out
tore the gasket taking it off
cut the o ring putting it in
dropped the plug chipped the edge
last kit on the truck
that was my last diaphragm
only got one o ring so i used it on the lower
used one off the other valve
took the spring off the old one
wrong o ring scratch that it fits
this one takes two backup rings
it's got two springs in it
both springs measured four inches
both gaskets replaced
both diaphragms are hard as a rock
both backup rings are cut replaced them
replaced both diaphragms and the seat
replaced the seat the plug and the packing
replaced everything but the stem
replaced all the soft goods
okay i'm on f v two oh six it's a two inch pressure to open
starting l v three eighteen one inch air to close sandy service
that's it for p v one oh five moving over to p v one oh six
close out l v two oh one and let's go to l v two oh two
okay locked out bled down and the bonnet's coming off
it's blocked in both sides and i've got zero on the gauge
i bled it down twice and there's still thirty pounds on it
hold up there's still pressure on the downstream side
smelled a little gas when i cracked the bonnet open
my h two s monitor just went off i'm walking upwind
careful that spring's still under load back it off first
the spring's still loaded so i'm not pulling those last two bolts
upstream block won't seal so i can't work on this one yet
watch that line it's hot
got a chemical drip off the line above me
bonnet bolts torqued to twenty eight no make that thirty two
torqued the packing nut to fifteen foot pounds i mean inch pounds
seat's worn on one side flipped it scratch that i replaced it
upper diaphragm's torn no wait i mean the lower one
the plug's scored real bad sorry not the plug the stem
replaced both o rings correction just the lower one
seat leak at sixty psi no leak make that eighty psi
that should be the cage gasket not the bonnet gasket
upper diaphragm's hard and the lower one's the same way
inlet threads are galled and so are the outlet threads
seat gasket's flattened replaced it same on the cage gasket
top o ring's cut bottom one too replaced them both
plug's worn about like it was last time going to let it go
seat's got more wear on it than last time but i'm leaving it
last time i flipped the seat so this time it gets a new one
operator says it's been sticking so i pulled it apart to look
operator said it was leaking by but it's bubble tight at sixty
the night guy said he tightened the packing and it's still leaking
they told me the diaphragm was replaced but it's old and cracked
note that the operator wants us back before the end of the month
note the isolation valve needs to be fixed before the next service
for the record i told the operator about the bad block valve
before i close it what am i missing
okay what else do you need before i close it out
go ahead and read that back to me from the top
read me back what you've got for the torque
hang on take a picture of this gasket before i scrape it off
stop listening for a second i'm talking to the operator
okay i'm back go ahead and listen
uh the seat's uh worn on the inlet side i think
let's see uh cage is clean guide's good o ring's a little flat
yeah go ahead and replace that seat gasket too
okay yeah both diaphragms are shot replace them both
um what was that torque again thirty i think thirty foot pounds
okay new trim's in it strokes full and no leak at a hundred
lapped the seat put it back together and it's holding at eighty
cleaned the sand out of the cage and put it back in
it was leaking four bubbles a minute now it's dead tight
put a lower diaphragm and two cage o rings on the list
order me a two inch kit and a new stem for this one
stem's bent a little not enough to replace it
found the breather plugged with mud cleaned it out and put it back
no make that three bubbles a minute at fifty pounds
no i replaced the upper and reused the lower
yeah same on the other side a little lighter though
scratch that last part the rest is right
scratch that it was the seat gasket that was pinched
strike all that and start with the seat
never mind the plug it cleaned up fine
correction the tag is l v one fifteen not one fifty
correction the plug is okay it's the seat that's cut
i mean the bottom diaphragm is torn the top one's okay
make that thirty five psi on the supply
sorry that was twenty five foot pounds on the bonnet bolts
h two s alarm but it cleared i'm okay to go back
i smell gas over by the bleeder hold on
locked out the upstream side still need to lock the other one
bleeding it down through the bottom tap it's gonna take a minute
took a picture of the seat and one of the plug
okay start listening again
`;
