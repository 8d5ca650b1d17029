/** Lines of one who speaks in whole sentences: what has been found, done and left, in the passive where others clip. Invented; a line a phrase, numbers and tags as spoken. */
export const IN_FULL_SENTENCES = `
starting on p v two one seven this morning it's a two inch
this valve was brought in from the separator yesterday afternoon
it is a pressure to open valve in normal service
the tag plate reads papa victor two one seven
before disassembly the valve was put on the bench for an as found test
as found seat leak test was run at one hundred and twenty psi
valve was found leaking by at eighty psi upstream
as found stroke was checked and it only made half travel
the actuator was found to be holding air with no leaks
the packing was tested as found and no leak was seen
body bolting was removed and two of the studs were found galled
all of the bonnet nuts were rusted and had to be worked off slowly
bonnet was lifted off and the gasket came out in one piece
the bonnet gasket was found flattened and it has been discarded
seat ring was found to be wire drawn on the outlet side
plug has been washed out badly along the lower edge
the cage was inspected and no cracks were found in it
some erosion was noted at the bottom of the cage
stem was rolled on the bench and found to be slightly bent
stem guide is worn on one side and it will have to be replaced
the guide o ring was hard and it broke when it was removed
both backup rings were found extruded and they've been thrown out
upper diaphragm was taken out and a small tear was found at the edge
lower diaphragm appears to be in good condition with no holes
the diaphragm plate has light pitting on the face
diaphragm nut threads were inspected and they are intact
actuator spring was measured at five and seven eighths inches free length
the spring is rusted on the outside but it is not broken
upper housing was found corroded inside and it has been cleaned
lower housing has a dent on the left side but it will be reused
the breather was plugged with paint and i have cleaned it out
supply port and signal port were both blown out with air
the vent hole in the lower housing was found packed with mud
travel indicator is bent and the gasket under it is missing
i have installed a new indicator gasket and a new indicator spring
a new seat has been installed with a new seat gasket
i have replaced the plug and the cage was put back in
both diaphragms have been replaced as a set
the stem was straightened and then it was checked again
new packing has been put in and the packing nut was adjusted
packing nut was torqued to ninety five inch pounds
body bolts were tightened in a cross pattern to forty two foot pounds
thread locker was applied to the diaphragm nut before it was torqued
the diaphragm nut was torqued to thirty eight foot pounds
as left seat test was run at one fifty psi and it is bubble tight
as left stroke is full at eighteen psi signal
stroke was timed at seven seconds from shut to open
the shell test was done at four hundred psi and it passed
packing was checked with soap and no leak was found
actuator air test was held ten minutes and it passed
travel was measured at thirteen sixteenths of an inch
note that the customer asked for the old seat to be kept
please read that back to me before i go on
that is everything on this one so close it out
what have i missed on this valve
next valve is p v two one eight and it's a one inch
p v two one eight came from the same skid as the last one
this one is fail open so it's air to close
outside of the valve has some rust but nothing that matters
the handwheel was found broken off at the hub
yoke was looked over and no cracks were found
the gauge on the supply side has been broken and needs replacing
i've removed the gauge and i need one more to go back in
regulator was found set at thirty five psi and it's sticking
regulator has been taken apart and it was full of dirty oil
strainer ahead of the regulator was plugged with scale and sand
strainer was cleaned and it has been put back in
tubing between the regulator and the positioner is kinked
a new piece of tubing was made up and installed
one fitting was cross threaded and it has been replaced
positioner was found out of calibration and the linkage was loose
linkage was tightened and the positioner has been calibrated
positioner now gives three to fifteen pounds on a full signal
the controller was not touched today because it looked fine
solenoid was tested and it is burnt so it needs to be replaced
i would like a solenoid put on the list please
seat was lapped by hand and it's been dressed on the face
the plug was found in good shape and it'll be reused
the trim looks okay overall with just a little wear
no damage was found on the inlet threads or the outlet threads
the stem connector was found loose and it has been tightened
lock nut was rounded off so i had to replace it
adjusting screw is stripped and needs a new one
the pilot was vented and then it was taken apart
pilot seat was found dirty and it's been cleaned
the float is dented and it may have a hole in it
i think the float will have to be replaced
oil was low and it was found to be dirty as well
oil has been drained and the housing was filled with fresh oil
the seals were found swollen and i've replaced all of them
a full seal kit has been installed in this valve
the flange face was nicked and it has been dressed with a file
seat area in the body is pitted partway around
i've left the body alone since the pitting is only slight
correction the pitting in the body is severe not slight
scratch that last one please
the body was cleaned with a wire brush and inspected again
as left seat test gave two bubbles a minute at one hundred psi
the seat was lapped a second time and now it is dead tight
stroke as left was smooth with full travel
it took twelve seconds to stroke with twenty psi supply
okay so that finishes p v two one eight
take a picture of the tag before it goes back
you can stop listening while i take this call
start listening again i'm back at the bench
next up is lima victor three one two
lima victor three one two is a three inch in sandy service
valve was received with mud packed around the bonnet
valve could not be stroked as found because the stem is seized
the stem was freed with penetrating oil and then removed
stem was found scored from top to bottom
galling was found on the stem and inside the guide
upper and lower o rings were both cut
i have replaced both o rings and both backup rings
the seat has been flipped and a new gasket put under it
cage gasket was stuck to the body and had to be scraped out
cage o ring was found pinched and i replaced it
cage has been sand cut on the inlet side
since the cage was so badly cut it was replaced
the body was found full of sand and has been washed out and cleaned
bonnet has a hairline crack at the top next to a stud hole
i'm not certain but it could be just a scratch in the bonnet
bonnet was looked at again and it is cracked for sure
a new bonnet is needed and i've asked for one to be ordered
order one bonnet and eight bonnet studs for this valve
in the meantime the valve has been set to one side
the spring was found weak and about a quarter inch short
free length of the spring came out at four and five eighths
new spring was measured at four and seven eighths inches
the new actuator spring has been installed
lower diaphragm has a pinhole near the center
upper one was found to be hardened but it's not torn
replaced the two of them and the diaphragm plate was reused
the housing bolts were found loose on one side
housing bolting was tightened to twenty two foot pounds
seat leak as left was checked at two fifty psi and held for five minutes
no bubbles were seen for the full five minutes
the packing was adjusted twice before it quit leaking
packing is now dry at three hundred and fifty psi
shell was checked at six hundred and no leak was found anywhere
all work on this valve has been completed so go ahead and close it
good morning we're going to start with t c v four zero six
t c v four zero six has been in service about nine years i'm told
the valve is a four inch and it is air to open
it was tagged as not holding temperature by the operator
upstream block valve was found passing so the line can't be isolated yet
lock was put on the second block and the line's been bled down
there is still pressure on the body so i'm standing back
gauge shows it bled down but it's still holding about fifteen pounds
okay now the pressure's been vented and the gauge is at zero
signal tubing was disconnected and found frozen at the fitting
the positioner cover was removed and water was found inside
the inside of the positioner is badly corroded
positioner linkage is worn and the pin has been bent
positioner will be sent in for repair and a spare has been put on
the spare positioner was calibrated at zero fifty and a hundred percent
at fifty percent open the signal was nine psi
actuator was removed from the yoke with the spring still loaded
spring tension has been let off and it's safe to go on
actuator diaphragm was found torn all the way around the bolt circle
the diaphragm plate was chipped at the edge where it hit the housing
diaphragm plate chip was filed smooth and the plate was reused
the upper housing has a crack running from the vent hole
no cracks were found in the lower housing after it was cleaned
a replacement upper housing was taken from the shelf and installed
twelve housing bolts were replaced and three nuts were stripped
nuts were replaced and the rest of the bolting was reused
the stem connector was found cracked on the right side
a new stem connector has been installed and the lock nut was tightened
packing was found to be hard and dry with no grease left
the old packing had to be dug out one ring at a time
five rings of new packing have been installed
the packing nut was found cross threaded onto the bonnet
packing nut has been replaced and the threads were chased
i've greased the stem where it runs through the packing
bonnet bolts were found tight and none of them were broken
the bonnet was pulled and the cage gasket was found torn
plug was found seized inside the cage and had to be pressed out
galling was seen on the plug and scoring on the inside of the cage
plug and cage have both been replaced from stock
the seat ring was found eroded at the top edge all around
seat ring could not be removed by hand so the puller was used
the seat threads in the body were found intact
body has been inspected and light corrosion was noted at the bottom
a new seat gasket and a new cage gasket have been installed
bonnet gasket was replaced and the flange face was cleaned
studs were greased and nuts were torqued to fifty five foot pounds
second pass on the nuts was done at seventy five foot pounds
the final pass was at a hundred and ten foot pounds
as left leak test was done at three hundred psi with no flow felt downstream
seat held dead tight for ten minutes
stroke was tested with a nine to fifteen pound signal and it goes full travel
travel indicator was reset and it now reads a hundred percent
there was no leak seen around the packing during the stroke
leak check on the bonnet joint was good at one thousand psi
the fluid is running at two hundred and ten degrees
downstream temperature has come down to one sixty five
note the block valve upstream is passing and needs to be looked at
tell me what's left to do on this one
okay we are all done with t c v four zero six
now moving over to golf victor one one nine which was pulled last week
golf victor one one nine is severe service sour gas
please be aware there's a gas alarm going off at the building
the gas smell was coming from the drain and it's been cleared
i can smell gas again by the vent so we're backing off
all clear was given and the work has been started again
the pilot was found plugged with paraffin and it would not shift
pilot was cleaned in solvent and blown dry
the pilot o rings were found swollen from the solvent
new o rings have been installed in the pilot
the adjusting screw on the pilot is rusted but it still turns
pilot supply was found at thirty psi and it should be twenty
supply pressure was adjusted down to twenty psi
the controller was checked and it's reading four pounds high
controller has been calibrated and now reads correctly
the gauge on the controller is sticking at about ten psi
gauge has been replaced with a zero to thirty
fitting on the back of the controller was leaking air slightly
that fitting was tightened and the leak has stopped
tubing was inspected and found dented but not leaking
the tubing clamp was missing and a new one was installed
on the main valve the seat was found washed out on one side
the seat has been flipped over since the other side is good
the seat was flipped last time as well so it needs a new one
plug was found pitted on the face and nicked on the edge
it was decided to lap the plug and the seat together
lapping took about twenty minutes and the contact looks even now
stem guide comm hole was plugged with sand
the ports in the guide have been rodded out and blown clean
there is some corrosion in the o ring groove of the guide
guide groove was cleaned up with fine cloth and it'll be reused
the balance diaphragm was found kinked but not torn
balance diaphragm has been replaced while it was apart
power diaphragm is stiff and starting to crack so replace it
diaphragm nut was found loose with no thread locker on it
the diaphragm nut was cleaned and thread locked and put back
actuator spring is good with no cracks and was reused
indicator spring was found missing altogether
an indicator spring has been ordered and the hole was plugged for now
breather cap is broken and it needs to be replaced
body studs were found rusted and two were broken off in the body
the broken studs were drilled out and the threads were chased
threads in the body are a little galled but they're usable
i have installed two new studs and six new nuts
inlet flange has a gouge across the face
flange was dressed and the gouge is nearly gone
as found test could not be done because of the broken studs
as left test on the seat was done with air at ninety pounds
a leak of three bubbles a minute was counted at ninety pounds
after ten minutes it had slowed to one bubble a minute
shell test was held at two hundred and eighty five psi for three minutes
no leak was found at the gasket or the studs
the actuator was pressured to thirty five psi and it lost nothing
it was stroked five times and it's smooth both ways
i'm satisfied with this one so finish it
is there anything still missing on golf victor one one nine
say that again i didn't hear the torque
read back the findings on the seat
that was torqued to sixty five i mean fifty six foot pounds
the spring was five inches no wait five and a quarter
it was the upper o ring that was cut correction the lower o ring
the cage was scored sorry i meant the guide
make that three studs missing and not two
never mind that about the gauge it's fine
forget that last one it was from the other valve
strike that the packing has not been replaced yet
correction the packing's already been replaced
it was tested at one hundred psi make that one twenty five
the tag is golf victor one one nine alpha not bravo
remark the shop air was low so the test was run twice
for the record the old trim was returned to the customer
note the spare spring is on the second shelf
let me get a photo of the seat before i clean it
would you take a picture of this crack
go ahead and mute for a minute
listen up please we're starting on the next one
don't listen for a bit i've got somebody here
what do you have on the packing so far
how many studs did i say were replaced
did i give you the stem length already
what was the torque i gave for the bonnet
i can't remember if i told you about the gasket
the coffee's cold and this valve is not helping
my hands are froze but the valve is almost done
the parts truck is late again so we'll wait on the kit
lunch is at twelve so i'd like to have this apart by then
he told me this valve was rebuilt in the spring but i doubt it
the last fellow that worked on it left his rag in the body
that radio's too loud turn it down would you
first job after lunch is foxtrot victor six zero one
foxtrot victor six zero one is a two inch pressure to close
paperwork says normal service but it was found full of sand
the valve was leaking by when it was pulled out of line
as found leak rate at the seat was sixty cc a minute at one hundred psi
as found the actuator would not hold more than eleven pounds
air was found coming out of the breather when signal was put on
air leak at the housing joint on the left side was also found
the actuator test has failed so the diaphragm will be replaced
the diaphragm's been holed right at the center by the plate
top housing was removed and found to be pitted but usable
housing was cleaned and painted and has been put back on
housing bolts were replaced with new ones ten in all
the bolts were tightened evenly to eighteen foot pounds
actuator has now been held at thirty psi for fifteen minutes
actuator leak test passed as left
stem was seen to be dragging through the packing
the packing had been overtightened by somebody and it's extruded
packing was removed and the box was cleaned with a brush
the packing box is scratched a bit on the inside
three new rings of packing were put in with the lips down
packing nut was run down finger tight and then a quarter turn
the packing test was done at one fifty and it's dry
bonnet nuts were found at only about fifteen foot pounds
one bonnet nut was found missing and one was finger loose
missing nut has been replaced and all of them retorqued
retorqued the bonnet nuts to forty eight foot pounds
bonnet gasket was reused by the last crew and it was leaking
bonnet gasket has been leaking on the right side from the looks of it
a new bonnet gasket was put in and the faces were wiped clean
bottom of the plug is steam cut and the seat matches it
the plug and seat are both steam cut all the way around
since both were cut i have replaced the whole trim set
new trim was installed and the stem was threaded in and pinned
stem threads were found slightly damaged and have been cleaned up
lock nut on the stem was found loose and it was tightened
the jam nut has been thread locked
the cage was found to be fouled with scale on the outside
cage was soaked overnight and the scale came off
after cleaning the cage was found to have two small cracks
two cracks were found in the cage near the bottom
cage cannot be reused so i've scrapped it
a new cage is needed and there are none on the shelf
please put a cage on the list and a cage o ring with it
bring two cage gaskets the next time you come out
i will need one seat kit and a tube of grease
pick up a packing set for a two inch
the strainer was found torn and full of rust
strainer screen was discarded and a new one has been installed
solenoid is chattering and it's hot to the touch
solenoid was rewired and it's working now
the regulator was adjusted to twenty five psi supply
regulator will not hold its setting and it needs a kit
regulator diaphragm was torn and so it was replaced
the supply fitting has been stripped and a new one was put in
signal line was leaking at the lower fitting before i got here
controller gauge is reading six pounds with the signal off
linkage on the controller was found out of adjustment
the linkage was adjusted until the pointer sat at zero
the float was removed from the cage and found intact
float arm is a little bent and it was straightened by hand
the handwheel turns freely and has been greased
adjusting screw was locked down with its nut
yoke threads have some rust on them and were wire brushed
travel was set at one and one eighth inches
the travel indicator is misaligned by about an eighth
travel indicator has been aligned with the stem and tightened
stem travel was measured again and came out at twenty eight millimeters
it was found that the valve opens only to seventy five percent
full travel was obtained after the adjusting screw was backed off
the valve was then stroked from zero to a hundred percent
as left stroke time was four seconds open and six to close
the as left leak rate was zero at one hundred psi
not one bubble was seen in five minutes at sixty pounds
valve was shell tested at four fifty psi with no leaks
this valve's been tagged and put on the outgoing rack
foxtrot victor six zero one is complete
the next one is h v seven two and it's a manual valve
there is no actuator on this one just the handwheel
handwheel was found seized and would not turn either way
handwheel nut is missing so the wheel was just sitting there
the yoke nut was found stripped and has to be replaced
yoke bushing has been greased and it turns easy now
stem was found bent just below the handwheel
the disc was found loose on the stem but not damaged
disc nut was tightened and locked
seat faces were found scratched on both sides
both seat faces have been lapped until they were clean
gasket under the bonnet had gone hard and broke apart
bonnet threads were damaged on the first two turns
threads were dressed with a file and a die
the packing was weeping a little before it was taken apart
packing gland was adjusted but it still weeps
it was repacked and there's no weeping now
four drops a minute were counted at the packing before repacking
seat was tested with water at one hundred and fifty pounds
no drops were seen downstream for three minutes
the body was found to have a pinhole on the lower left side
pinhole is leaking so the body fails the shell test
shell test failed at two hundred psi from the pinhole
i wouldn't weld that so the valve should be replaced
the body is being scrapped and the stem will be kept
order one complete valve two inch flanged
this one's going to be left open until the new valve gets here
hold on that is the wrong tag let me check
it's h v seven three and not seven two
please change the tag to h v seven three
is this the valve that was leaking last month
which valve am i on right now
what did i say the stroke time was
that should be everything let me know what's missing
okay go ahead and close that one out for me
this afternoon we have delta victor eight one zero on the stand
delta victor eight one zero was rebuilt here two years ago
it is a six inch valve with air to open and spring to close
the complaint was that it hunts and it won't settle
positioner was suspected but the linkage turned out to be the trouble
linkage pin has been worn nearly through and it was loose
a new linkage pin was made and it's been installed
the linkage was then greased and checked for free play
positioner feedback arm was found bent about ten degrees
feedback arm has been straightened and the positioner recalibrated
at twelve milliamps the valve sat at fifty percent open
zero was off by four percent and it's been adjusted
supply to the positioner was measured at twenty two psi
output was found to be dropping to sixteen pounds under load
a leak was found on the output tubing behind the positioner
the output tubing was cracked at the flare and has been replaced
soap was put on all the fittings and no leaks were found
the signal port on the positioner was partly plugged with tape
tape was picked out of the port and it was blown clean
there's a little rust on the outside of the actuator and that's all
the actuator was not taken apart this time since it tests good
actuator held twenty five psi without losing any
upper diaphragm was not replaced because it held air
the yoke bolts were found loose and they've been tightened
yoke bolts were torqued to eighty newton meters
stem connector halves were found misaligned by a thread
stem connector was taken loose and lined up and tightened again
packing looks okay but it has been tightened about as far as it goes
packing needs to be replaced at the next outage
i have decided to leave the packing for now
no leak was seen at the packing at six bar
seat leak was checked at seven bar and it's holding
there was a slight leak past the seat at first then it stopped
it was measured at two milliliters a minute at seven bar
the bonnet was not pulled on this visit
bonnet bolting was inspected and none of it is loose
body bolting looks fine and the gaskets are dry
customer wants the trim looked at anyway so we'll open it
bonnet has been removed and the trim is out on the bench
trim was found in good shape with no wear to speak of
some fine scratches were seen on the plug but nothing deep
the seat is clean and there are no nicks on the edge
guide was checked for wear and none was found
cage has a bit of scale on the inside and it was brushed off
all of the soft goods were replaced as a matter of course
the seals were all replaced even though they looked good
two backup rings and two o rings have been installed on the plug
lower backup ring was found cut when it was taken off
the old o rings were brittle and they've taken a set
the seat gasket was found flattened to about half
studs were cleaned and checked and four of them were replaced
four studs and four nuts have been replaced on the inlet side
torque on the body nuts was brought up to one hundred and sixty foot pounds
bonnet nuts were torqued to two hundred newton meters in three passes
stroke was smooth as left with no sticking
as left the valve makes full travel on three to fifteen
travel was measured as left at one and a half inches
opening time was nine seconds and closing time was eleven
a shell test was carried out at eight hundred and it passed
no leak was found on the body or at the bonnet joint
the hunting has stopped and the customer is happy
note the positioner should be changed out next year
delta victor eight one zero can be closed out now
next we've got november victor zero four four
november victor zero four four is a one and a half inch
it's air to close and it was found failed open on site
the spring was found broken in three pieces inside the housing
pieces of the spring had scored the inside of the lower housing
be careful the other half of that spring is still under load
spring came loose and caught my thumb it's just a small cut
i've cut my hand on the housing and i'm going to get it wrapped
we're back on it now and the spring has been made safe
new spring was installed and the load was set with the adjusting screw
the adjusting screw was turned down six turns from loose
lower housing was cleaned and the scoring is only light
lower housing will be reused with the scoring as it is
lower diaphragm was cut by the broken spring
lower diaphragm's been replaced and the upper one was left in
upper diaphragm looks new so it was not replaced
the diaphragm plate has been bent by the spring
diaphragm plate was pressed flat and it went back in
the diaphragm nut was found rounded and a new one has been put on
diaphragm nut torqued to twenty six foot pounds with thread locker
the breather was found missing and a new one is in
a wasp nest was found in the vent hole and cleaned out
the stem has some light rust where it sits in the guide
stem was polished up and greased before it went in
stem guide was found sticking and had dried grease in it
the guide was cleaned out and it slides free now
stem guide o ring was found swollen to almost twice its size
the stem guide o ring has been replaced and greased
plug was found with a chip out of the lower edge
a chipped plug can't be lapped so replace it
the seat under it has a nick at the same place
seat nick was dressed out and the seat's been lapped
seat gasket was found fouled with old sealant
the old sealant was scraped off and a new gasket was put in
inlet threads were cross threaded by somebody and are damaged
inlet threads were chased with a tap and they look decent now
outlet threads were found clean and undamaged
the body shows a little pitting in the seat area
body's been reused since the pitting doesn't reach the gasket
valve was assembled and set up on the test bench at four
first seat test failed with a heavy leak at fifty psi
it was opened up again and a piece of grit was found on the seat
grit was wiped off and the valve was put back together
second seat test passed with no bubbles at a hundred and fifty
stroke test as left took six seconds and it's smooth
packing test as left is good with no leaks at two hundred
actuator test as left held at twenty psi for ten minutes
the valve's ready to go back out to the field
read it all back to me slowly please
yes that is right so finish it up
we're out at the compressor station now and it's cold this morning
the valve is sierra victor two two six on the suction line
sierra victor two two six is two inch and it's in dirty service
tubing to the pilot was found frozen solid first thing
tubing has been thawed out with warm water and it's flowing
ice was found in the bowl of the regulator
the regulator has been drained and the ice is out of it
vent hole on the pilot was blocked with ice too
ice was seen all over the outside of the body but it's normal here
supply to the pilot is reading twenty nine psi on the gauge
the pilot was found leaking out of the vent so the seat's dirty
pilot diaphragm has a small split at the edge
a new diaphragm was put in the pilot and it quit venting
the pilot spring was found rusted and it's been replaced
pilot is now adjusted to hold four hundred and ten psi upstream
upstream pressure has settled at four hundred and five
downstream is sitting at about sixty five psi
it's been swinging between three ninety and four twenty
the controller has been found with the wrong gain so i've changed it
the travel indicator can't be read because it's faded and bent
a new travel indicator will be needed on this one
the packing has been leaking and there's ice on the stem
packing nut was found loose by two full turns
the packing nut has been snugged and the leak is gone
stem is scratched above the packing where the ice has been
stem scratches are slight and it'll be left in service
the bonnet joint was checked with a sniffer and it's not leaking
gas was picked up on the sniffer at the body flange
my monitor's going off so there's gas here somewhere
the flange bolting was found loose on the bottom side
flange bolts have been tightened and the gas is gone
the inlet flange gasket may have been pinched
i think that flange gasket needs to be replaced when it's down
the valve was stroked by hand and it's moving all the way
when the supply was shut off the valve closed by itself
valve is passing a little when it's shut you can hear it
seat can't be checked properly until the line is isolated
the outlet block valve won't shut so we can't isolate it
there's no lock on the upstream valve and i want one before we start
lock has been put on and the tag is hung
line was blown down and the gauge reads nothing
when the bonnet was cracked there was still pressure under it
pressure was trapped in the body between the seat and the block
that has been bled off now and the bonnet's coming loose
four cap screws had to be cut off because they were seized
the rest of the cap screws came out all right
cage came up hard because the o ring had swollen
a cup of sand was found sitting on top of the seat
seat face is pitted and it's worn down on the inlet side
seat has been taken out with the spanner and flipped
the other side of the seat was found to be in good condition
the plug has been washed out on the bottom so it can't be used again
a new plug was carried in from the truck and installed
the stem and the connector were both reused
both cage o rings were replaced along with the gasket
body gasket face was scraped clean and no nicks were found
six cap screws out of the twelve have been replaced
cap screws were torqued to thirty three foot pounds dry
the valve was brought back on line and there are no leaks outside
it was left controlling at four hundred psi and sixty percent open
please finish this one and we'll move up the road
the next location has two valves on it and they're both one inch
first one's tango victor one five alpha
second one's tango victor one five bravo
starting with the alpha valve since it's the one that's leaking
alpha valve was found with oil running out of the breather
oil coming from the breather tells me the lower o ring is gone
the oil level was found low by half
oil was dark and dirty and had a burnt smell
all of the oil was drained out into the bucket
some oil was spilled on the pad and we've put down absorbent
there's been a spill at the skid and it's being cleaned up
the housing was filled with a quart of clean oil
the seals in the lower housing have been replaced as well
the stem o ring was found torn in half
o ring groove has a burr in it and the burr was filed off
lower diaphragm was found soaked and swollen
upper diaphragm was dry and it looks okay to me
since the lower one is swollen both of them will be changed
i didn't have two diaphragms so only the lower was replaced
order me one upper diaphragm for tango victor one five alpha
actuator spring was wiped down and it is in fine shape
the lower housing has been washed in solvent and dried
upper housing has a chip at the bolt flange
that chip isn't in the sealing area so i'm leaving it
it was put back together and air was put on it
the actuator was leaking at one bolt until it was tightened
now the actuator is holding at twenty two psi
seat was not touched as it tested dead tight
the alpha valve strokes all the way in about five seconds
moving to the bravo valve now
tango victor one five bravo was found in better shape
no oil was found at the breather on bravo
the packing on bravo is weeping just a touch
its packing nut was adjusted about an eighth of a turn
gauge glass on bravo is broken and the needle is stuck
new gauge was put on and it's reading twenty psi
the regulator on bravo was leaking from the bonnet
regulator bonnet was tightened and the leak has slowed down
it has slowed but it's still leaking so the regulator gets replaced
a rebuilt regulator was installed and set to twenty
solenoid coil on bravo was found burnt and open
solenoid was replaced with the spare from the truck
bravo was stroked three times with the new solenoid and it works
the handwheel on bravo is missing and has been for years
note bravo has no handwheel and one can't be found for it
that's both of them finished for today
back in the shop with whiskey victor nine nine one
whiskey victor nine nine one came in on the late truck
tag was painted over and it had to be cleaned to be read
as found condition of the outside is corroded and dirty
as found seat test at forty five psi showed ten bubbles a minute
at ninety psi the leak went up to more than fifty a minute
as found stroke was jerky and it stopped at eighty percent
as found packing was leaking six drops a minute on water
shell was tested as found and there was a leak at the bonnet gasket
so the as found results are fail on the seat and fail on the packing
the reason for the seat leak was a washed out seat
the reason for the jerky stroke was galling on the stem
the packing was leaking because the stem is scored
bonnet gasket was found torn on the side that leaked
stem has been replaced and the plug was pinned to it
the plug was turned over and there's no damage underneath
the guide was found galled to match the stem so it's been replaced
packing has been replaced with a new set of five rings
cage was good except for a nick on the top edge
the nick was dressed with a stone and the cage was reused
seat was replaced because it was too far gone to lap
all gaskets have been replaced and the old ones thrown away
as left seat test at forty five psi showed no bubbles
as left at ninety psi there were no bubbles either
as left stroke is smooth and it goes to a hundred percent
as left packing is dry and shell is dry
bolting on the bonnet was torqued to seventy two foot pounds
bolting on the body was torqued to ninety five foot pounds
packing nut came up to one hundred and forty inch pounds
the time to stroke was fourteen seconds at eighteen psi
at fifteen psi it took nineteen seconds
valve whiskey victor nine nine one is done
let's start on the one with the broken yoke
tag on this one is echo victor zero one six charlie
i believe it's a two inch but i'd like to measure it first
yes it's been measured and it's a two inch
yoke was found broken clean through at the lower leg
it looks like the yoke has been hit by something
yoke can't be repaired so a new one has been ordered
the stem was bent when the yoke let go
stem runout is point oh four five so it's not usable
the new stem runs true within point oh oh two
actuator was hanging by the tubing when it was found
both pieces of tubing were pinched and have been replaced
elbow fitting on the supply side was broken off in the port
the broken fitting was drilled out of the supply port
supply port threads were chased and are intact
positioner case was cracked and the cover's missing
positioner's damaged too much to be fixed so it's being replaced
gauge block was found okay but the gauges are junk
two gauges have been replaced on the positioner
linkage was found bent double and it has been thrown in the scrap
a new linkage kit was installed and adjusted
bonnet was checked for cracks because of the impact
no cracks were found in the bonnet or in the body
bonnet studs on the right side have been bent a little
the bent studs were replaced and the straight ones reused
upper housing is dented on top but the diaphragm is all right
dent was left as it is because it doesn't touch anything
diaphragm was inspected on both sides and nothing's wrong with it
the spring was inspected and no damage was seen
the seat has light wear but no erosion at all
the seat was lapped since it was apart anyway
plug has some wear on the guide end and it'll go again
cage is clean and it's in good shape
the guide was found cracked most likely from the same hit
a cracked guide is no good so it was swapped for a new one
the o rings weren't bad but they've been changed out
new seat gasket was put in with a bit of grease to hold it
there's a gouge in the outlet flange that was filed down
the flange face was checked with a straight edge and it's flat
the yoke came in this morning and it's been installed
yoke lock nut was tightened with a hammer and a brass bar
stem connector was installed with the travel set at three quarters
actuator was put back on and lined up with the stem
it's misaligned slightly so it was loosened and shifted over
now it's lined up and the stem moves freely
stem stroke was measured as nineteen millimeters
a signal of three psi starts it off the seat
it is wide open at fourteen and a half pounds signal
the seat test was done with nitrogen at one ten and it passed
the packing was tested at the same time with no leaks
the body was shelled at five fifty for five minutes with no leak
it went back out the door at three thirty this afternoon
all right i'm done with echo victor zero one six charlie
this next one has been sitting on the shelf since last fall
shelf valve is tagged kilo victor five five
it was rebuilt but nobody has tested it since
rubber parts may have hardened so it'll be opened and checked
the diaphragm has stiffened up but it isn't cracked
o rings were found dry and they've flattened on one side
seals kit has been put in because of the age
grease on the stem was dried out and has been cleaned off
stem was greased again with fresh grease
some surface rust was found in the inlet threads
inlet threads were wire brushed and they're intact
outlet threads were capped so they stayed clean
spring has been sitting compressed and it's taken a little set
spring length was measured at six and one sixteenth inches
book says six and a quarter so the spring is weak
it was decided to put in a new spring
the plug and seat have no marks on them
seat and plug were wiped off and put back
the packing had shrunk so two more rings were added
packing nut was tightened to sixty inch pounds to start
body was found clean inside with no sand or scale
breather has been stopped up by a mud dauber
a new breather was installed with a screen in it
bench test was started at nine fifteen
seat leak at seventy five psi was zero bubbles
stroke was slow the first time but it loosened up
eight seconds was the last time i had on the stroke
actuator test was good at thirty three psi
shell was left out because there's no blind for the flange
the shell test has not been done yet
put that down as not tested please
kilo victor five five will go back on the shelf
are there any tests still missing
okay then close it out
i have another one here with a bad controller
controller is on x ray victor one one two
x ray victor one one two has a level controller with a float
float was found full of water from a cracked weld
a float with a crack can't be patched so it was replaced
the float arm was found seized in its bushing
bushing was greased and the arm swings free
the seals on the float shaft were leaking oil
both shaft seals have been replaced and there's no more leak
nozzle in the controller was plugged and it was rodded out
the controller relay has been sticking and it's dirty inside
relay was taken apart and cleaned and then put back
controller output was eighteen psi when it should have been fifteen
controller was calibrated from three to fifteen pounds
the bellows was found holed and i couldn't fix it
so the whole controller is going to have to be replaced
bring one controller and one float out of stock
gauge on the output was found to be off by two pounds
linkage between float and controller has been adjusted
a missing cotter pin in the linkage has been replaced
the dump valve itself has been fouled with paraffin
paraffin was melted out of the body with steam
seat was scraped clean and no damage was found
plug has a rubber face and it's been cut
the plug with the cut face was replaced with a new one
the diaphragm on the dump valve is leaking out of the vent hole
diaphragm was found to have two pinholes near the nut
a new one's been put in and the nut has been tightened
stem packing on it was just a single o ring and it's worn
o ring was replaced and the stem wiped down
when it was put back the valve dumped twice with no trouble
closing was slow because the spring is weak
a heavier spring was installed and it snaps shut now
no leak was felt downstream when it was shut at fifty pounds
fluid temperature was a hundred and forty five degrees fahrenheit
level was held steady for thirty minutes
it is finished as far as i'm concerned
this one is bravo victor seven three four and it's for high pressure
the last report on bravo victor seven three four said the cage was reused
i've got the report here and the cage had some wear back then
the wear on the cage has gotten a lot worse since
holes in the cage have been opened up by sand
the inside of the cage has been scored by something hard
a piece of weld slag was found in the bottom of the body
there's slag stuck in the cage ports as well
one edge of the plug was chipped by the slag
both the plug and cage have been damaged so they're being replaced
cage gasket was torn when the cage was pulled
seat was cut across the face in two places
cuts on the seat were too deep to be lapped out
a new seat has been ordered and should be here tomorrow
the body under the seat is eroded on the outlet side
the erosion in the body was measured at sixty thousandths deep
erosion has not reached the seat gasket face yet
the seat gasket has been blown out on that side
bonnet and body faces have been cleaned and are smooth
two bonnet bolts have been stretched so they won't be used again
all eight bonnet bolts were replaced to be safe
bonnet nuts were found to be good and were reused
bonnet o ring was extruded all around and it was replaced
backup rings behind it had been put in backwards
backup rings were chewed up and have been replaced
stem has been worn down at the packing by about ten thousandths
a stem that worn won't seal so a new one's been put in
packing was found burnt and hard as coal
packing has been changed to the high temperature type
actuator seals are leaking air past the piston
the actuator was pulled and stripped down to the piston
piston seals were found hardened and flattened
all actuator seals were replaced and the bore was greased
there is some scoring in the actuator bore left side
that scoring was honed out as much as it could be
actuator was closed up and tested at eighty psi with no leak
the seat came in today and it's been installed with a new gasket
seat was torqued to one hundred eighty foot pounds with the spanner
bonnet studs have been torqued to two hundred and fifteen foot pounds
seat test as left was run at a thousand psi with water
two drops a minute at one thousand was all that i saw
after the plug was cycled it went to zero drops
so the seat has passed at one thousand psi
shell test at twenty two fifty psi was held for ten minutes
no sweat or drops were seen on the body
packing was dry at twenty two fifty as well
it strokes in three seconds open and three and a half closed
bravo victor seven three four can be shipped
take a photo of the old cage for the file
i'd like the findings read back now
okay that's it for that one
now i have a regulator that was sent in with it
this regulator is tagged romeo victor zero zero three
the regulator was found to be leaking out of the vent
diaphragm inside the regulator was found split near the center
it has been fitted with a new diaphragm and gasket
the valve plug in it was dirty and was wiped off
regulator spring was found broken at the last coil
a new regulator spring was installed and adjusted
the adjusting screw was seized and had to be heated
a little grease was put on the adjusting screw
the lock nut on the adjusting screw has been lost
a lock nut was found and put on
inlet screen was stopped up with pipe dope
the inlet screen was cleaned out and put back
outlet gauge port has damaged threads
gauge port has been plugged off since it isn't used
body of the regulator has a crack by the outlet
crack doesn't go all the way through i don't think
when the regulator was pressured up the crack leaked
so the body's cracked through and the regulator is scrap
throw the regulator away and order another
this next valve will be quick it's only for packing
hotel victor two eight is in for a packing leak
the packing leak was measured at ten drops a minute
packing nut had no more threads left to tighten
packing follower was found cocked to one side
old packing was removed and it fell to pieces
stem was checked and there's no scoring on it
the box was cleaned out and looked at with a light
no pits were found down in the packing box
packing box has a groove worn in it near the bottom
six new rings were put in and each one was seated
follower was put back straight and the nut was run down
the packing nut was tightened to seventy five inch pounds
it was cycled ten times and then tightened again
at three hundred psi there is no leak at the packing
the rest of the valve was not opened
the rest of the valve hasn't been looked at
nothing else is needed on hotel victor two eight
the next on the list is juliet victor three nine zero
juliet victor three nine zero was reported as stuck open
with the signal removed it stays at forty percent open
the spring should be closing it so something is in the way
the actuator was taken off and the stem still would not move
so the trim is seized and not the actuator
bonnet was removed with the stem and plug still in it
plug had been galled to the guide and wouldn't come apart
the plug and guide were separated in the press
the guide is junk and the plug is scored all around
both of them were thrown in the bin
new plug and new guide were fitted and checked for clearance
clearance was checked with a feeler gauge at six thousandths
the seat has been hit by the plug and has a dent in it
a dent in the seat like that won't lap out
so i've replaced the seat too
cage was okay so it has been cleaned and put back in
the actuator was inspected while it was off
actuator diaphragm has no tears and the spring is fine
upper housing has some rust at the bolt holes
lower housing was found to have standing water in it
water was drained out and the housing was dried
the breather was pointing up and letting the rain in
breather was turned down so water can't get in again
diaphragm plate was rusty and has been wire brushed
the diaphragm nut has been checked for torque at thirty foot pounds
the actuator has been put back on with a new connector
when signal was applied it opened all the way
when the signal was taken off it shut with no sticking
it was stroked twelve times and was free every time
seat was proved at one hundred psi with no bubbles
i forgot to mention the packing was replaced as well
i also forgot that the stem was polished
and the travel indicator was put on upside down so i fixed that
what did you put down for the guide
that was the lower guide we replaced but put guide
okay you can finish juliet victor three nine zero
evening shift and we're on mike victor four four seven
mike victor four four seven is air to close three inch and dirty
day shift has already pulled the bonnet and cage
they left a note that the seat's washed out
i've looked at the seat and it's washed out in one spot only
it can be flipped so that's what i'm going to do
seat was turned over and the gasket under it was replaced
the gasket on the cage has been lost so a new one is needed
cage gasket was found on the floor and it's damaged
i've put a new cage gasket in from the kit
the kit was short one o ring
the missing o ring was taken from another kit
two backup rings were left in the bag and they've been installed
stem guide was left soaking and it came out clean
no wear was seen in the stem guide
the ports in it are open all the way around
plug has been lapped to the seat and shows a full ring
the upper diaphragm was checked by day shift and it is torn
lower diaphragm wasn't checked so i have checked it and it's good
upper diaphragm was replaced with the diaphragm plate nut torqued to twenty four
the spring has a little rust but its length is right
length of the spring is four and eleven sixteenths
housings were bolted up and torqued to twenty foot pounds
bonnet was bolted up to fifty two foot pounds
the indicator spring was put in and the gasket was greased
breather was checked and air passes through it
there's a small air leak at the indicator gasket
indicator gasket was pinched so it was taken out and replaced
no more air is leaking at the indicator
signal was raised to twenty psi and it closed fully
the signal was dropped and it opened fully
shut at eighteen psi with one hundred upstream it's leaking by
the signal was raised to twenty two and it went tight
bubble tight at one hundred with twenty two pounds signal
note it needs twenty two pounds to shut off tight
shell is dry at three hundred and packing is dry too
this job is finished and the bench has been cleaned
overnight we had another one come in tagged oscar victor six six
the driver said oscar victor six six caught fire
there's been a fire at the heater and this valve was in it
all of the rubber in it has been burnt up
upper and lower diaphragms are burnt to ash
o rings and backup rings have burnt away
positioner has been melted and burnt
solenoid is burnt and so is the tubing
paint's burnt off the housing but the metal is straight
spring has lost its temper and it's weak
the packing is burnt but the stem is okay
bonnet gasket was metal and it came through intact
body was inspected and no cracks were found after the fire
seat and plug look fine because they were under water
the valve isn't worth rebuilding in my opinion
remark that the insurance man wants to see it first
leave it as it is and don't clean anything
nothing has been replaced on this one
close that one for now
good morning it's six thirty and the first valve is ready
zulu victor one zero one has been taken apart and laid out
parts were laid out in order and i'll go from the top down
the travel indicator is fine and the spring behind it is weak
indicator gasket has been crushed flat and is no good
upper housing has no cracks and only a little rust
actuator spring is straight and it isn't broken
spring measures seven and one eighth inches and that's in limits
upper diaphragm is cracked all around where it bends
diaphragm plate has a nick and the nut has a rounded corner
the lower diaphragm has a soft spot and it might be going
lower housing is pitted under the diaphragm on one side
the stem has been scratched lengthwise but it's straight
stem guide has galling in the bore and scale in the ports
the guide o ring is flat and the backup ring is split
bonnet threads are intact and the face is clean
the bonnet gasket is torn and stuck to the body
bonnet bolting is all here and none of it is bad
cage is worn on the inside and eroded on the outside
the cage o ring has been nicked going in
plug is pitted on top and cut on the bottom
seat is worn on both sides so it can't be flipped
seat gasket was missing and had never been put in
the body is okay except for scale in the bottom
inlet threads have been galled and outlet threads are intact
that is the as found for zulu victor one zero one
now for what has been done to it
indicator gasket and spring have been replaced
upper housing was wire brushed and painted
the actuator spring was reused
both diaphragms were replaced along with the diaphragm nut
the diaphragm plate was dressed up and put back
lower housing was replaced because of the pitting
stem was polished and it's been reused
a new guide was installed with new o ring and backup ring
bonnet gasket was scraped off and a new one installed
bonnet bolting was cleaned and greased and reused
new cage and new cage o ring were fitted
new plug and new seat were fitted with a new seat gasket
scale was cleaned out of the body with a chisel
inlet threads were chased and they're usable now
so what's left is the torque and the tests
bonnet bolts came up to thirty four foot pounds
body bolts came up to forty six foot pounds
housing bolts came to fourteen foot pounds and the diaphragm nut to thirty
packing nut was left at eighty five inch pounds
supply was set at twenty psi and signal at three to fifteen
stroke passed on the first try in nine seconds
seat leak test at one fifty was dead tight for three minutes
packing passed with no leak at one fifty
actuator passed with no drop at twenty five
shell passed at three fifty with no leak anywhere
zulu victor one zero one has passed everything
that one can be closed out and tagged
i'd like to go back to the valve before that
go back to oscar victor six six for a second
oscar victor six six needs a note added
note the customer has decided to scrap oscar victor six six
okay close it for good this time
alright this is uniform victor three zero three and i'll dictate the whole thing
the stem was found bent and scored and the packing extruded around it
the cage was cracked at the top and eroded at the bottom
seat is pitted on the face and nicked on the inside edge
plug has been chipped on the lower edge and it's loose on the stem
the upper housing is rusted inside and the breather is plugged
lower diaphragm is swollen and the upper has a hole near the edge
spring was found rusted and weak but it isn't broken
o ring was flattened and the backup ring was cut in two places
bonnet gasket is hard and the bonnet face is pitted on the left
two studs were found broken and three nuts were rounded
inlet threads are damaged and the outlet threads are a bit corroded
the travel indicator is loose and the indicator spring's missing
controller was found dirty inside and the gauge on it is broken
positioner was sticking and its linkage is bent and worn
regulator is leaking and the strainer below it is full of rust
the pilot's plugged and the pilot tubing is dented in two spots
the yoke is rusty and the stem connector has a crack in it
handwheel is bent and the adjusting screw is seized in the housing
the float has been holed and the linkage to it is corroded
flange is scratched across the face and one bolt is cross threaded
trim is badly eroded and the seat gasket has been washed out with it
oil was dirty and low and it had water in it
seals are hard and the packing nut is stripped
the fitting is cracked and the tubing beside it is kinked
solenoid is corroded and its tubing is leaking
i have replaced the stem and the packing and the packing nut
the cage and the seat have been replaced and the plug has been lapped
i've cleaned the upper housing and put in a new breather
both diaphragms have been changed and the spring was put back in
the o rings and the backup rings have all been replaced
bonnet face has been dressed and a new gasket was put on it
five studs and five nuts were replaced and the threads were greased
inlet threads were repaired and the outlet threads were cleaned
indicator was tightened and a new spring was put under it
the controller has been cleaned out and it was calibrated after
positioner was repaired and the linkage has been straightened
regulator was rebuilt and the strainer was flushed out
pilot was cleaned and the tubing to it has been replaced
the yoke was wire brushed and the connector has been replaced
handwheel was straightened and the adjusting screw was freed up
a new float has been installed and the linkage was greased
flange face was dressed and the bolt has been replaced
trim was replaced as a set with new gaskets all through
the oil was drained out and new oil was put in
seals were changed and the leftover ones were tossed
the fitting was changed and the tubing was straightened out
solenoid has been removed and a blank was installed in its place
torque on the bonnet was fifty foot pounds and the body sixty five
seat was tested at eighty psi and the packing at one eighty
the valve was stroked in ten seconds with thirty psi supply
as left everything is good and nothing is leaking
uniform victor three zero three is closed
i've got a new hand with me today so i'll be talking slow
he's going to hold the light while i read off what i see
valve is quebec victor one four and it's a two inch high pressure
we found the upstream pressure still at six hundred when we walked up
it has been shut in and bled down to zero on both sides
the bleed valve was plugged so we thought it was empty but it wasn't
there was trapped pressure behind the bleed so we cleared it with a rod
it has been proved empty now and the lock is on
bonnet nuts were broken loose one at a time
none of the bonnet nuts were seized and none were stripped
the bonnet o ring has been pinched on the inlet side
a pinched o ring was what was leaking to outside
it has been replaced along with the backup ring
there's no damage to the groove that it sits in
stem was pulled up through the packing and it's smooth
the packing was left alone because it was done in june
the packing nut was checked and it was tight
the cage lifted out easy and there's paraffin all over it
paraffin has plugged about half of the holes in the cage
cage was taken to the truck and cleaned with hot water
all the holes are open now and there's no erosion in them
i was asked to look for cracks and there aren't any
seat was scraped clean with a brass scraper
there's a light score on the seat but it's not across the face
seat is being left in because it's still sealing
the plug tip was found loose and has been thread locked
plug has no chips no cuts and no cracks
body was wiped out and it's good on both sides
outlet side of the body has slight erosion to keep an eye on
everything was put back and the bonnet was torqued to eighty foot pounds
it was brought back up slow to three hundred then six hundred
at three hundred there wasn't any leak
at six hundred there's a drip at the bonnet so it was retorqued
after eighty five foot pounds the drip has stopped
it was stroked from the panel and it follows the signal
at twelve psi signal it's seventy five percent open
the signal and travel agree within two percent
the line temperature was a hundred and eighteen degrees
i'd call quebec victor one four good so finish it out
is that all you need for quebec victor one four
we'll go over to yankee victor two zero two
yankee victor two zero two has a piston actuator on it
the actuator cylinder was found dented on the right side
a dent in the cylinder is holding the piston up
cylinder was taken off and the dent was bumped out
the piston o ring was cut by the dent and it's been replaced
cylinder was cleaned and greased and reinstalled
tie rod nuts were tightened to forty newton meters
the actuator was tested at four bar with no air leak
the solenoid on it exhausts slow because the vent is plugged
the vent on the solenoid was cleaned and it's quick now
it took fifteen seconds before and it takes five now
ball is scratched and the seats are worn on both sides
both seats have been replaced and the ball was polished
the ball was polished with fine cloth until it was smooth
seat gaskets were replaced along with the body seals
body seals were found extruded on the outlet side
stem seals were found okay and they've been reused
body bolts have been tightened to eighty five newton meters
the seat was tested at six bar from both sides
left side held and the right side is leaking by
right side gave fifteen milliliters a minute at six bar
it was cycled and tested again and now it's tight on both sides
shell test at ten bar passed without a leak
yankee victor two zero two is complete so close it
good evening i have just one valve to put in the log
it's a one inch on the fuel gas and the tag is gone
tag is missing so call it fuel gas number one for now
i found the tag in the mud and it's f g v one two
f g v one two had a strong gas smell around it
gas was found coming from a split in the pilot diaphragm
the supply was shut off and the area was left to air out
pilot was taken off and a spare was put on in its place
spare pilot has been set to hold thirty five pounds downstream
downstream was checked and it's running thirty four to thirty six
outlet gauge is good but the inlet gauge is sticking at sixty
inlet gauge was tapped and it still sticks so it needs replacing
the main diaphragm could not be checked without shutting down
no leak was found on the main body with soap
note come back and check the main diaphragm at the shutdown
close f g v one two when you're ready
okay so the next report is for victor one seven two and it's urgent
operations said that it won't open and the vessel is filling up
signal at the valve is fifteen pounds and it hasn't moved
supply has been checked at twenty five so it's not the air
air was heard blowing out of the breather when i got close
the upper diaphragm has been blown through most likely
actuator was opened and the diaphragm is torn from the plate to the edge
the torn diaphragm was taken out and a new one was put in
diaphragm nut was found backed off by several turns
the nut was run back on with thread locker and torqued to twenty eight
plate was checked for burrs and there were two small nicks
nicks on the plate were filed off so it won't tear again
bolts around the housing were replaced where they were rusted
seven of the housing bolts have been replaced
the housing bolts were brought up to sixteen foot pounds
signal has been put back on and it opened right up
valve went to full travel in six seconds
the breather was checked with soap and there's no air coming out
the vessel's been drawn down and things are back to normal
i'd like to finish this one and get some supper
the following morning it was back to kilo charlie victor two one
kilo charlie victor two one was left disassembled on the bench overnight
the parts were cleaned overnight in the tank
the seat was cleaned and there's wire drawing across it in one spot
stem came out of the tank with no rust but it's a little bent
the cage ports are clean but their edges are worn round
the plug looked fine before cleaning but now i can see a crack
a crack was found running up the side of the plug
a cracked plug has to be replaced no matter how it seals
plug with stem was ordered as one piece and it's on the way
in the meantime the seat has been sent to be machined
body gasket surfaces were cleaned by hand with a scraper
gasket surface has one scratch but it does not go all the way across
bonnet was found okay and the packing box is smooth
packing set and all of the gaskets are on hand
the backup rings are on hand but there's only one o ring
please order two o rings for the cage
the springs were both measured and they're both within a sixteenth
actuator spring was four point seven five and now it's four point seven
it has shrunk a little but it will be reused
positioner was blown out and put in a bag
controller has been left on the skid
the solenoid was tested with a battery and it clicks
tubing was thrown away since it's all kinked and corroded
fittings were saved and cleaned for reuse
i've done all i can do on it so leave it open
plug and stem have come in and we can go on
new plug was blued to the seat and it shows contact all around
it was lapped lightly and the contact got better
seat was put in with new gasket and torqued to ninety foot pounds
cage was put in with new o rings top and bottom
the bonnet went on and was torqued to one hundred twenty five foot pounds
new packing was put in and the nut brought up to one ten inch pounds
the actuator was bolted to the yoke and the connector was tightened
new tubing was bent and put on with the old fittings
one of the old fittings was leaking so it was replaced
the positioner was mounted and the linkage was adjusted to center
calibration was done at zero twenty five fifty seventy five and a hundred
seat was tested at one hundred psi and no bubbles were counted
it was tested also at five hundred and it's holding
packing and bonnet were soaped at five hundred and both are dry
the shell was hydro tested at one thousand fifty for five minutes
valve made full stroke in eight and a half seconds
kilo charlie victor two one has been put on the pallet
and we're done with it so close the job
now papa charlie victor six four nine is on the bench
papa charlie victor six four nine is a half inch control valve
half inch trim so everything in it is small
small stem on this one and it has been bent by hand i'd say
the stem was rolled on the plate and it's out by twelve thousandths
plug tip is worn and there's a ring worn in the seat
the seat was lapped by the last man until it was too thin
seat's too thin to be lapped any more and must be replaced
plug and seat came as a matched pair and have been installed
packing is a single ring type and has been torn
packing ring was replaced and the follower was cleaned
the diaphragm is only six inches and it's gone hard
diaphragm replaced with a new one and the bolts snugged
bolts on the little housing were torqued to ninety inch pounds
spring has been replaced because the old one was kinked
adjusting screw was turned in until it lifted at three psi
it's lifting off the seat at three and wide open at fifteen
travel is seven sixteenths and that's what it should be
the bench set was checked three times
leak test was done at fifty psi and no bubbles came up
the stem still drags just a bit going down
the packing was backed off a little and it's not dragging now
packing was checked again for leaks and there were none
i had to make a new gasket for the bonnet
the gasket i made was tested at one fifty and didn't leak
put that one down as passed on everything
close out papa charlie victor six four nine
i'm looking at one that came in without any paperwork
there isn't a tag on the valve or the actuator
it has been stamped on the flange with t v one one
alright so call it t v one one until we hear different
outside is covered in mud and it has to be washed first
mud has been washed off and there's corrosion under it
the body is heavily corroded on the bottom side
corrosion on the body is down about an eighth deep
a stud was found that had corroded through
all sixteen studs and nuts are going to be replaced
four were removed by hand and twelve were cut off
gaskets inside are the old type and they're stuck to the flange
old gasket was scraped off of both flanges
gasket was stuck in the groove and had to be picked out
flange grooves are okay after being cleaned out
the plug could not be pulled as it's frozen to the cage with scale
scale was softened with acid and the plug came free
cage has scale and corrosion all over the inside
the plug is corroded and pitted from top to bottom
i'd say the trim is all junk and needs to be replaced
seat might be saved if it's lapped but i'm not sure
the seat was lapped for half an hour and still shows pits
the seat isn't any good either so add it to the list
order a full trim set for t v one one
the actuator is in better shape than the body
actuator was air tested at twenty five and it has no leak
but the spring was never checked because it isn't apart
leave the actuator the way it is for now
put the whole thing on hold until the parts get here
what's on the need list for t v one one
okay mute yourself i've got to take a phone call
unmute and go on with the same valve
trim arrived and has been installed with new gaskets and studs
sixteen studs and thirty two nuts were installed and torqued
studs were torqued to one hundred and forty five foot pounds with grease
seat leak was tested at one hundred psi and the result was pass
stroke was tested at eighteen psi and the result was pass
shell was tested at four twenty five and the result was pass
packing was tested along with the shell and that passed as well
the actuator result was pass from before
please finish t v one one
valve number one today is india victor nine one seven
it's been out in the field for six years without being opened
on receipt the valve was photographed and the tag was read
the packing nut was found to be seized on the bonnet threads
packing nut was heated and then it backed right off
bonnet threads under the packing nut have galled
the bonnet threads were repaired with a thread file
new packing nut has been fitted as the old one was galled too
stem was found corroded where the packing sits
corrosion on the stem is heavy so it was not reused
stem was replaced and the old one went in the scrap barrel
plug was unscrewed from the old stem and the threads were found intact
the plug has slight wear on one side where it rides in the guide
guide is worn on the same side and both have been replaced
guide o ring was found to be missing and it's been put in
the seat was found loose and had been turning in the body
seat's been turning so there are marks on the bottom of it
the seat was tightened but it won't tighten up
seat threads in the body have been stripped on the first three turns
body threads were inspected with a gauge and they are not repairable
i can't repair the body here so it needs to be replaced
a used body was found on the shelf and it has been cleaned
used body was inspected and there's no pitting and no erosion
the seat area in the used body was dressed and wiped
new seat was installed in the used body and torqued to one fifty
seat gasket was new and it has been greased lightly
cage gasket and bonnet gasket have been replaced too
cage went back in since it had no wear and no cracks
the actuator spring was measured and found a half inch short
new spring was put on with the load set at nine psi
upper diaphragm was found to be pinched under the housing
lower diaphragm has a cut along the outside edge
upper and lower diaphragm were replaced and centered this time
diaphragm plate was found installed upside down
diaphragm plate has been turned over so it's right now
the diaphragm nut was retorqued to thirty four foot pounds
both housings were cleaned and only the top one was painted
housing bolts have been tightened but not torqued yet
the housing bolts have been torqued to twenty four foot pounds now
travel indicator was found painted over and it's been scraped
indicator gasket was hardened and has been replaced
the vent plug was replaced because it was rusted shut
supply port was stripped and has been fitted with an insert
signal port was found blocked with thread tape and cleaned
vent hole was found open but it was rodded out anyhow
all tubing was replaced and the fittings were doped
a fitting was overtightened and cracked so i used another
air was put on and the tubing is not leaking
seat leak as found was not done because of the seized packing
seat leak as left was done at two twenty psi and it passed
as left the valve needs eleven psi to start to move
it goes to full open with nineteen psi signal
stroke was timed going up at six and coming down at four seconds
packing did not leak at two twenty
the shell did not leak at five hundred
india victor nine one seven may be closed
okay next valve is hotel charlie victor one eight
hotel charlie victor one eight was found to be painted shut
paint was found on the stem and it had been dragged into the packing
paint was stripped from the stem with solvent
there's paint in the vent hole as well and in the breather
vent hole was drilled out by hand and the breather changed
there was paint covering the travel indicator so it's been cleaned
after the paint was off the valve strokes freely
packing was wiped off and it isn't leaking
packing will probably leak soon because of the paint that got in
i reckon the packing should be replaced while it's here
it has been repacked and the nut was set at seventy inch pounds
the nut on the stem was found finger tight
lock nut has been tightened against the connector
oil in the gear box was found to be low
gear box oil was topped off with half a pint
the handwheel clutch was found sticking and has been greased
handwheel engages now and it's been left in auto
the limit switch linkage was found loose and was adjusted
linkage bolts were thread locked to keep them there
it tested good at one hundred and it strokes all the way
nothing has been replaced on it but the packing and the breather
hotel charlie victor one eight can be finished
this is going to be a long one so bear with me
alpha victor five two one is being done for the plant turnaround
the valve was cleaned before it came in so it's easy to see
seat ring was removed with very little trouble
the seat ring was found in fair shape with one small nick
nick in the seat ring is on the edge and outside of the contact
the seat ring will be used again with a new gasket
plug was checked and there's a little erosion below the contact line
the plug will go back in after it has been lapped
guide bushing was found tight and there's no slop in it
the bushing was left in and greased
cage was found nicked where the puller had grabbed it
bonnet was set on blocks and the packing was driven out
the packing box was honed because it was slightly pitted
stem finish was found good so only the packing is new
gasket set was opened and one of the gaskets is bent
the bent gasket can't be used so get me another one
another bonnet gasket has been brought over from stores
yoke was cleaned and the threads were found damaged at the top
yoke threads were run with a die and the nut goes on now
yoke nut was tightened to two hundred foot pounds
actuator was taken down and the diaphragm was found to be good
diaphragm was replaced regardless since it's turnaround
spring was left in its can and was not inspected
spring adjuster was greased and left where it was
the actuator was bench set at six to thirty psi
when set at six it started to move right at six
at thirty psi it's on the stop with one and a half inches travel
the positioner has been replaced with one that was rebuilt
the positioner's gauges were found off and were replaced as well
the regulator filter was full of water and has been drained
regulator filter element was black and has been replaced
the filter bowl was cracked but it wasn't leaking
a new bowl was put on the filter regardless
solenoid was energized and it shifts every time
calibration of the positioner was done by the instrument man
the instrument man left it reading one percent low
bonnet torque was ninety foot pounds with the studs oiled
leak test with air at fifty gave twenty cc a minute
twenty cc a minute at fifty pounds is what i measured on the seat
allowed leak is more than that so it'll be left
actually the customer wants less so it was lapped again
after being lapped it gave five cc a minute at fifty
no leak to the outside was found on the shell
no leak was found past the packing either
stroke was checked in both directions and it doesn't stick
alpha victor five two one has been tagged ready to install
you can close that one when the numbers are in
can you tell me the last leak rate i gave you
what was the bench set i said
how long did i say the spring was
did we do an actuator test on this one or not
i don't think the shell test was ever written down
do you have the old seat as flipped or replaced
you've got that wrong it was the upper housing
no the lower housing was the one that had been cracked
that should be two nuts sorry three nuts replaced
scratch that one it was the wrong valve
forget the last thing i said about the packing
never mind that reading my gauge was shut
strike that last line and i'll say it again
we have three from the same plant and they'll be done in order
first of the three is charlie victor one one
second will be charlie victor one two and then charlie victor one three
charlie victor one one has a seat that was found holed
the seat has a hole washed right through from one side to the other
seat hole is about an eighth of an inch across
whatever washed out the seat has also marked the body
the body behind the seat was found gouged on the lower side
gouge in the body isn't deep so it was left
seat was replaced and the gasket was doubled up
doubling the gasket was a mistake so one has been taken out
there is one gasket under the seat now as there should be
the stem was replaced last year and it's been kept
stem on charlie victor one one has hardly any wear on it
the upper backup ring was found split and the lower was missing
new backup rings have been put on top and bottom
o rings were found nicked from going over the threads
the o rings were replaced with grease on the threads this time
plug retainer nut was stripped and it's been replaced
diaphragm on the actuator has a few cracks but none go through
since the diaphragm was cracked i've put in another
the housing had four loose bolts and one that's missing
all the housing bolts have been tightened and one installed
charlie victor one one was tested at eighty pounds and it holds
it strokes full with fourteen pounds and it doesn't stick
packing looked dry and the body looked dry at one sixty
done with charlie victor one one let's go on
charlie victor one two has a bad leak at the bonnet
bonnet gasket was found to have been put in off center
gasket was squashed on one side and hanging out on the other
bonnet face has been steam cut about an inch across
steam cut on the bonnet can't be dressed out by hand
the bonnet was sent to the machine shop to be faced
bonnet came back from machining and it is flat now
new gasket was centered and the bolts were run up evenly
bonnet bolts were torqued in steps of twenty up to sixty foot pounds
no leak was found on the bonnet at two seventy five
the seat was also tested and it's leaking by a little
seat leak was measured at one bubble a minute at forty psi
a bubble a minute isn't enough to take it apart again
the stroke is good and the travel is five eighths
charlie victor one two is finished
charlie victor one three is the worst of the three
the body is cracked from the flange down to the seat
the flange is broken off on the inlet side
everything inside has been beat up by the break
trim has been broken and the cage is in two pieces
the plug was found jammed down in the outlet
stem was snapped off just under the packing
bonnet isn't cracked but the studs are bent
diaphragms and springs might be saved but nothing else
i'd recommend that charlie victor one three be replaced
the actuator has been kept for parts and the rest scrapped
two diaphragms and a spring were removed and put on the shelf
the regulator and gauges were removed and kept
that's the three of them so close out charlie victor one three
now for something smaller i have a relief pilot to look at
the relief pilot is tagged p s v nine zero four
p s v nine zero four lifts early according to the operator
it was found set at one ten and it should be one twenty five
spring was found rusted and a little bit weak
seat was found cut and it was simmering at one hundred
disc has a gouge on the face from something hard
the disc and seat were both lapped and then polished
new spring has been installed and the screw was adjusted
the adjusting screw was turned in a turn and a half
the lock nut was tightened and the cap was put back
it was popped three times at one twenty five and shuts at one fifteen
no leak was seen at ninety percent of set pressure
outlet flange was cleaned and a gasket has been left loose
drain hole in the body was found plugged with rust
the drain hole was rodded out and water ran out of it
body was drained and it's been dried with air
p s v nine zero four was sealed and tagged
mark it complete and close it
sierra delta victor one zero is next and it is a shutdown valve
the shutdown valve was reported slow to close
on the first stroke it closed in twenty five seconds
it's supposed to close in ten or less
breather on the spring side was found almost closed with dirt
a dirty breather was holding it back i think
breather was cleaned and now it closes in eighteen
eighteen is still slow so i kept looking
the solenoid exhaust was found to be plugged with a bug nest
solenoid exhaust was cleared and it closes in nine seconds
linkage between the actuator and stem was greased too
seals on the actuator are okay and no air is leaking
the supply strainer was found dirty and it's been cleaned
supply was found set at sixty psi and left there
the ball was turned by hand and there's no drag
seat test on it was done in place with no flow felt downstream
stem seal was found weeping but it stopped after cycling
the stem seal should be replaced next time it's down
note that closing time is now nine seconds
sierra delta victor one zero has passed so close it out
my next one is a choke and it's tagged c h one seven
trim in the choke has been badly washed out by sand
tip was found broken off and lying in the body
the broken tip was fished out with a magnet
bean was eroded on the outlet and can't be reused
new bean and new tip have been installed
stem threads were worn and sticky so they've been cleaned and greased
bonnet nut was found hammered and its edges are rounded
bonnet nut has been dressed and put back on
o ring on the bonnet has blown out at the bottom
o ring and backup ring were replaced together
the handwheel set screw was missing so the wheel was loose
set screw has been put in and the handwheel is tight
travel indicator was reset with the choke shut
body was wiped out and has erosion on the outlet side
body erosion was measured with a pit gauge at forty thousandths
it isn't a lot but i'd like that noted
note check the choke body again in six months
no leak was found at the bonnet at eleven hundred psi
it opens and closes by hand with no sticking
the choke has been finished up so that's all for it
back after the weekend and there's a rush job waiting
rush job is romeo victor four one four and it's a three inch
the man wants romeo victor four one four back by noon if we can
it was leaking past the seat so bad they could not shut in the well
as received there was still fluid in it so be careful opening it
the body was found full of oil and water and it's been drained into a pan
there was some h two s smell when the plug came out of the drain
h two s monitor read eight so we moved it outside
my monitor has gone back to zero and we can go on
the seat has been eaten up with the face gone on the outlet half
plug has the same wash as the seat but not as bad
a hole was found in the cage the size of my finger
cage is holed and cracked so there's no saving it
cage plug and seat have been changed out as one set
all three gaskets were changed along with them
the stem was found slightly scored and was polished with cloth
guide is in good order and the ports in it are clear
packing was found to be fouled with sand
sand had got in the packing and cut the stem a bit
packing was replaced with the sand type
a wiper was missing at the top so one has been installed
actuator was left off to one side and wasn't opened
it was given twenty psi and it held so it's good
the actuator was put back on with the old connector
old connector has one stripped thread but it holds
stem connector bolts were tightened to thirty five foot pounds
both lock nuts are on and they've been tightened
it has been bolted up and torqued to one hundred and thirty foot pounds
inlet side flange was scratched but not enough to matter
leak test at three hundred has been done and it's bubble tight
it held three hundred for a quarter of an hour
packing was checked at the same time and nothing was seen
stroke is good and it only took it five seconds
rush job's done and he can have it so close it out
i was told to look at a positioner on tango charlie victor zero nine
positioner on tango charlie victor zero nine is reading backwards
the cam was found installed on the wrong side
cam was turned around and the positioner was calibrated again
the linkage was found to have a bent rod and a loose ball joint
ball joint was replaced and the rod was straightened in the vise
air to the positioner was found with oil in it
oily air has fouled the relay so it was cleaned
relay gasket was torn in cleaning and a new one was cut
the restriction was found plugged and was cleaned with a wire
output gauge was fogged over and is hard to read
output gauge has been replaced with a zero to sixty
supply was set at thirty five psi at the regulator
the regulator's gauge agrees within one psi
the valve was stroked at four twelve and twenty milliamps
at twelve milliamps it's fifty one percent open
there was no hunting and it doesn't overshoot
nothing was found wrong with the valve itself
finish tango charlie victor zero nine
now we've got a job in the meter house
this one's papa charlie victor eight and there are two of them in series
the monitor valve is papa charlie victor eight alpha
working valve is papa charlie victor eight bravo
with alpha wide open bravo is holding at sixty pounds
bravo was found to lock up at sixty eight which is a bit high
lockup is high because the seat in bravo is damaged
rubber seat on bravo was found cut by a piece of grit
seat disc has been replaced and the orifice was wiped off
orifice edge was found nicked in one place
nick was too small to feel so it's been left
the boot has been stretched and has a tear at the outlet
torn boot was taken out and a new one put in
o rings in bravo were replaced with the boot
closing spring was found intact and at the right length
diaphragm was found dry and starting to crack around the bolt holes
i have a diaphragm with me so it's been replaced
diaphragm case bolts were tightened to twenty five foot pounds
control line was found partly plugged with dust
the control line was blown out and the needle valve was cleaned
pilot on bravo was set for sixty and the screw locked
it now locks up at sixty two and holds there
alpha was checked by lowering bravo out of the way
alpha took over at sixty six as it should
the breather on alpha had a nest in it so it's been changed
strainer on alpha was found clean
no gas was picked up on any of the joints in the house
outlet pressure has been steady for twenty minutes at sixty psi
inlet pressure was one hundred and ninety
that's both of them so let's finish
what else is missing on papa charlie victor eight bravo
here we've got a dump valve off the treater
the dump valve is lima victor zero two nine
it was found to be sticking open with sand under the plug
sand has been washed out from under the plug
seat was found with a wire draw mark on each side
plug's rubber was hard and chunks were missing out of it
both of those have been replaced and the body was rinsed
a chunk of the rubber was found down in the outlet
the stem had paraffin on it from top to bottom
paraffin was wiped off and the stem has no scratches
stem o rings were found swollen so bad the stem wouldn't move
two stem o rings have been replaced with the harder type
the diaphragm was found to be soft from the oil
diaphragm was replaced with one that's made for oil
breather was dripping oil so the bottom seal was leaking
bottom seal has been replaced and the housing was dried out
spring is in good shape apart from some rust
linkage to the float was found worn at both ends
linkage has been replaced from the float to the pilot
pilot was found weeping at the stem and the o ring was changed
float was checked and there's no fluid inside of it
fluid coming through is a hundred and thirty five degrees
it dumps in four seconds and shuts in five
there's no leak by when it's shut with sixty pounds on it
lima victor zero two nine is back in service so finish
the boss wants me to say the torque slower so here goes
bonnet bolts on this one were torqued to thirty six foot pounds
diaphragm nut on this one was torqued to twenty seven foot pounds
packing nut on this was torqued to one hundred and five inch pounds
body bolts were torqued to one hundred and seventy five newton meters
seat ring was torqued to two hundred and forty foot pounds
housing bolts were torqued to between fifteen and twenty foot pounds
the body nuts were torqued to at least ninety foot pounds
no more than sixty inch pounds was put on the packing nut
about forty five foot pounds is what the bonnet bolts came to
stem connector bolts were tightened to twenty two newton meters
lock nut was tightened to roughly fifty foot pounds
they were found at eighteen foot pounds before i touched them
some were found as low as ten foot pounds and some at thirty
nuts were found to be uneven so they were all loosened and redone
all of the bolts were lubed before they were torqued
thread locker was put on the bolts so they went in wet
the torque on the adjusting screw nut was never taken
upstream was held at one seventy five and downstream at fifteen
the supply gauge says thirty two and the signal gauge says nine
at nine pounds signal it's about half open
the stem length came to eight and three sixteenths inches
spring length went from six and a half to six and three eighths
the stem travel came out at twenty two millimeters
travel was short by a hundred and twenty five thousandths
seat bore was measured at one point four three eight inches
stem diameter was found at point three seven four
it has been sitting at two hundred psi for thirty minutes
temperature at the bonnet was two hundred and fifteen fahrenheit
it was seventy eight celsius when i put the gun on it
the vent line is reading three and a half inches of water
casing pressure was at least one hundred and less than one twenty
the signal was one hundred kilopascals and it didn't move
supply was brought up to two hundred and ten kilopascals
downstream was at three point two bar when we left it
as found the valve was ten percent open with no signal
as left it's a hundred percent shut with no signal
opening took no less than twelve seconds on each try
bubbles were counted at seven a minute at eighty pounds
leak rate was thirty milliliters a minute with fifty psi behind it
at two hundred psi it was about eight cc a minute
drops at the packing were three a minute then none
there were no drops at four hundred and no bubbles at one hundred
on to xray kilo victor two two which has been apart since tuesday
day one it was found that the actuator spring was broken near the top
the broken end of the spring has scored the upper housing
scoring in the upper housing was smoothed out with cloth
a spring was borrowed from another valve and it's in
the borrowed spring was measured and is within a thirty second
upper diaphragm wasn't hurt by the spring
upper diaphragm has been reused and its bolt holes look good
lower diaphragm is only a year old and it was reused too
the nut on the diaphragm was found without thread locker
nut's been taken off cleaned thread locked and put back on
on day two the bonnet was pulled and the packing was removed
packing had swollen and locked on the stem
stem was pulled through with a slide hammer
some scratches were put on the stem by pulling it
stem has been dressed up and the scratches are gone
guide was pushed out and it has a crack at one of the ports
a crack at the port isn't acceptable so the guide was discarded
another guide was put in with a new o ring
cage and seat are stuck together with scale
cage was separated from the seat and neither one was damaged
both have been cleaned and both of them look good
seat gasket was replaced since it tore coming out
the plug's fine except for a light scratch
body was found with some rust below the seat and it was brushed
on day three everything was put back together
bonnet gasket is new and the bonnet bolts were torqued to fifty eight
packing is new and it's been set at eighty inch pounds
actuator was mounted and the indicator was lined up
the indicator gasket was forgotten so it was taken apart again
indicator gasket is in now and the screws are tight
testing was started with the actuator at twenty eight psi
housing leaked a little at the bottom joint and was tightened
a second actuator test was good with no leak
seat was tested at one thirty and it's holding tight
packing was seen to weep and the nut was brought to ninety
packing isn't weeping any more at ninety inch pounds
full stroke was made in nine seconds with no jumping
shell was tested at four hundred and there's nothing to report
xray kilo victor two two is done with so close it out
this is my notes on golf charlie victor seven
golf charlie victor seven was found with the seat in upside down
since the seat was in upside down it was worn on the wrong side
seat has been put in right and it'll be used on the good side
seat gasket wasn't sitting in the groove and had been cut
body groove was found to have a bit of old gasket in it
groove was cleaned and a fresh gasket was put in
cage was also found turned with the small holes on the bottom
cage has been turned back over and there's no damage to it
plug was hitting the cage and it is nicked on the top edge
the nick on the plug was stoned off
plug and stem were found to be tight together
somebody had left out both backup rings
i've put in both backup rings with the o rings
bonnet was found on crooked with two bolts not tight
bonnet face was dented by being on crooked
the dent has been filed flat and a gasket was put on
bolts for the bonnet were replaced where the threads were galled
three of the bonnet bolts were galled so three were replaced
after that they were torqued up to sixty eight foot pounds
positioner was connected with the tubing crossed
tubing has been switched around and the positioner works right
the pilot was not on this one but the bracket is
controller has been reset by operations
it was tested for seat and shell and it passed both
i also stroked it and checked the packing and they passed
that's it for golf charlie victor seven
another report for the file on echo charlie victor three three
as found the breather is missing and dirt has got into the housing
dirt was found on top of the diaphragm and under the plate
there's wear on the diaphragm from the dirt
diaphragm hasn't torn yet but it's worn thin
worn diaphragm was replaced before it could go
housing was vacuumed out and wiped with a rag
spring was dirty and it's been cleaned and greased
breather has been replaced with a new one
supply port was full of dirt also and was blown clear
signal port looks okay and nothing came out of it
stem has been dragging dirt down into the packing
packing is dirty but it isn't leaking
it was cleaned around the top and a wiper was put on
linkage is gritty and was washed with solvent then oiled
trim was not pulled because it tests tight
it's tight at eighty five psi with no bubbles in three minutes
body and bonnet have no leaks on them
i've left the bonnet gasket and the packing as they were
echo charlie victor three three needs nothing else
go ahead and finish the job for me
good afternoon the valve in front of me is lima victor five zero zero
lima victor five zero zero is a four inch globe with a diaphragm actuator
the valve was found leaking in three places
it's leaking at the packing and at the bonnet and through the seat
packing was found with only three rings left in it
two of the rings were missing and the rest are hard
bonnet leak was due to four loose nuts and a cracked gasket
seat leak was from a washed out place the size of a dime
plug has a matching spot but it can be lapped out
plug was lapped and looked at under the glass
seat could not be lapped so a new one was put in
bonnet gasket was replaced and eight studs were replaced
the four nuts that were loose had stripped threads
four nuts have been replaced with heavy nuts
five rings of packing were cut and put in with the joints staggered
the packing nut was tightened then backed off then tightened again
stem was checked while the packing was out and it's not scored
there was a rust ring on the stem that was polished off
actuator was found all right apart from a slow leak at the stem seal
stem seal in the actuator has been changed
stem seal bushing was a little worn but it went back in
the yoke has a chip out of the casting but it's only paint deep
diaphragm is four years old so it should be replaced next time
i did not replace the diaphragm because i don't have one
please add a diaphragm for lima victor five zero zero to the order
the seat is tight now at one hundred and ten psi
bonnet is dry at three twenty five and so is the packing
stroke came in at eleven seconds on eighteen psi
with no signal the spring takes it shut in seven
all three leaks have been fixed
close lima victor five zero zero
give me back the last three things i said
read the whole report back to me please
stop listening please i have to go get the crane
i'm back you can start listening now
photo of the nameplate please
snap a picture of the stem before it's polished
we need a picture of this broken spring
this needs a photo of the pitting in the body
note that the flange needs new paint
note to check the block valve it's hard to turn
remark the customer has no spare positioner
remark that the insulation was wet
for the record i told them the spring was weak last year
note body was hydro tested by others
seven o'clock and it's raining so we'll stay in the shop
first off is victor charlie zero three from the water plant
victor charlie zero three has been leaking from the bonnet since spring
bonnet was found to be warped by somebody overtightening it
warped bonnet won't seal so it's going to be replaced
they've overtightened the bolts and stretched three of them
the stretched bolts have been thrown away
packing was found to be fine and it has been left
seat is bronze and it's a bit scratched on the face
bronze seat was lapped with fine compound
disc rubber was found cut in a ring where it sits on the seat
disc rubber has been replaced and the nut was thread locked
disc guide was fouled with scale and the holes are plugged
the guide was soaked and rodded out
the diaphragm in this is a big flat one and it has a hole
hole in the diaphragm is right beside the washer
diaphragm washer was corroded through and it has a sharp edge
new washer and diaphragm were fitted and the nut tightened
the spring is stainless and there's nothing wrong with it
pilot tubing was found broken at the fitting on top
a new tube was bent and two fittings were changed
pilot strainer was plugged with weed and scale
the pilot strainer was cleaned and the screen is good
needle valve was found closed and it was opened a turn
pilot diaphragm is good and the pilot seat has been cleaned
new bonnet was installed and torqued to eighty five foot pounds
it holds sixty downstream with ninety five upstream
shut off was tested and there's no flow felt downstream
there was no drip from the bonnet after ten minutes
victor charlie zero three's finished let's go to the next
next is an old one tagged hotel victor zero zero nine bravo
hotel victor zero zero nine bravo hasn't moved in years
the stem would not move even with a four foot bar
stem was seized by corrosion where it goes through the gland
gland was soaked in oil for a day and it still didn't move
packing was drilled out and then the stem came free
the stem is corroded down by a sixteenth so it's no good
gland studs were rusted off and were replaced
gland nut was found cracked across two flats
cracked gland nut has been replaced
yoke sleeve was found galled on the stem and had to be cut off
a new sleeve has been ordered along with a stem
wedge was found stuck in the seats and was knocked loose
wedge faces are pitted and the seats are pitted to match
seats are part of the body so they were lapped in place
lapping in place took two hours each side
one side cleaned up good but the other still has a pit
the pit on the right side isn't across the seat
wedge was lapped on the plate and it is flat
bonnet gasket had been made of rubber and it was rotten
a proper bonnet gasket was installed with new bolts
bonnet bolts were torqued to forty four foot pounds
with the new stem in it turns easy by hand
handwheel has a crack in one spoke but it was put back
the seats were tested at seventy five psi from each side
left seat is tight but the right is leaking by
the right seat's leaking thirty drops a minute at seventy five
the customer has accepted that leak so it will go as it is
shell was good at one seventy five
packing is good and has been set at fifty inch pounds
done with hotel victor zero zero nine bravo
i've got one here with a bellows seal and it's uniform victor six
bellows was found cracked at the bottom weld
with the bellows cracked the packing above it has been doing the work
packing above the bellows is holding but it's getting hard
the bellows and stem have to be ordered together
order a bellows and stem assembly for uniform victor six
bellows gaskets were both flattened and have been pitched
two new bellows gaskets will be needed as well
the plug can be used over since it's not worn
seat is hard faced and there isn't a mark on it
body and bonnet were cleaned up and put in a bag
the actuator was put on the shelf with its tag
we'll leave uniform victor six open until parts come
parts for uniform victor six have come in this morning
bellows assembly was installed with two new gaskets
packing was changed while the stem was out
bonnet studs were torqued to one fifty five foot pounds crosswise
bellows was leak tested with helium and nothing was found
seat was tested with nitrogen at one hundred and it's tight
it strokes three quarters of an inch in five seconds
uniform victor six can be closed now
okay let me get the next one up on the vise
this here is sierra victor zero seven one inch severe service
sierra victor zero seven has had its trim changed three times this year
trim has been eroded again in about the same place
it's the outlet side of the seat that always goes first
seat is washed and the plug is washed but the cage isn't
cage has hardly been touched and was put back in
hard trim has been ordered and we're putting plain in for now
plain seat and plug were put in with new gaskets
there's sand packed in the guide ports and in the lock nut hole
the comm hole in the lock nut was plugged solid
comm hole was drilled clear and the nut was put back on
the guide ports were flushed out until water ran through
stem guide has a little wear but it isn't loose
guide o ring and backup were changed on account of the sand
lower diaphragm had sand on it but it isn't worn
it was rinsed off and both sides were inspected
lower diaphragm is good to run again
top diaphragm wasn't looked at on this trip
the actuator was checked with air and nothing leaked
body has a wash mark on the outlet wall
wash mark in the body is slight and it was noted last time
it was closed up with the bonnet bolts at thirty one foot pounds
shut off was checked at two hundred psi and it's dead tight
it opens at ten pounds and it's full open at seventeen
packing doesn't leak and neither does the body
note send the old trim to engineering
sierra victor zero seven is finished
before we go on what have i forgotten
did i say what the supply pressure was
supply was twenty eight psi if i didn't say
i meant to say the seat gasket and not the cage gasket
the number was sixty five not sixty sorry
it took fifteen seconds no sorry that was sixteen
correction that valve is fail closed
correction the nut was reused and not replaced
correction there were five bolts missing
no wait it's the outlet threads that were galled
i said the plug but it's the stem that was scored
let me correct that it was bar and not psi
make the travel seven eighths and not three quarters
okay we're in the shop and the next work order is for november charlie victor one
november charlie victor one was disassembled completely on friday
it was disassembled and every part was inspected
the seat was found with slight wear on one side only
the same was found on the plug
same condition on the other end of the cage
the lower one was found the same way
the outlet side is the same as the inlet side
and the same goes for the backup ring under it
other diaphragm was found to be torn as well
ditto for the lower housing
both of the springs were found in good condition
they've both been put back where they came from
it was cleaned and then it was put back in
that one was too far gone so it has been replaced
those were all tossed and new ones were put in
neither of the o rings can be used again
none of the gaskets were reused
all of the studs have been reused except for two
a couple of nuts were replaced and a few were cleaned
half of the bolts on the housing were found loose
stem guide looked alright and was greased and put back
a hairline crack was found in the yoke near the bonnet
hairline crack has been marked with paint and left for now
the crack in the yoke hasn't grown since last time
yoke isn't going to be replaced on this trip
cage has not been replaced since it's not eroded
seat wasn't flipped because both sides are worn
the stem was not straightened because it would not help
positioner has not been calibrated because we've no air
linkage wasn't adjusted since it was already right
the pilot was not taken apart as it's working
strainer wasn't opened because the plug is seized
the oil was not changed as it's clean
packing nut was not touched since it's dry
seat was not lapped because it's already bubble tight
body hasn't been drained yet and it needs to be
the actuator has to be vented before it comes apart
actuator has now been vented and the tubing's off
the controller must be calibrated before it goes back on
positioner needs to be inspected by the instrument shop
seals will have to be replaced and the bore greased
cage will need to be cleaned before it can be judged
the stem ought to be replaced but we don't have one
the plug should be lapped and the seat dressed
bonnet bolts still need to be torqued
packing nut needs to be adjusted once it's hot
the diaphragm nut is to be thread locked when it goes back
lower housing needs a coat of paint on the inside
breather ought to be changed for one with a screen
solenoid will have to be removed to get at the fitting
tubing is going to need replaced from end to end
gauge is to be replaced when one comes in
the regulator is going to need a rebuild kit
handwheel has to come off before the yoke can
float is to be removed and checked for holes
strainer needs to be pulled and cleaned out
the inlet threads need to be chased
flange wants dressing before the gasket goes on
lock nut should be tightened after the travel's set
the fluid has been drained and the plug put back
the gear case has been filled to the mark
it has been filled with about two quarts
bonnet was put back on but it isn't tight yet
new seals were put in the upper end but not the lower
the lower seals will be put in tomorrow
november charlie victor one has been put together as far as it can be
tomorrow i'll need a gasket set and two o rings
get me a stem guide and a backup ring from the store
put one packing nut and one lock nut on the list
bring a positioner gauge and some tubing
order four diaphragms two upper and two lower
we'll be needing another breather please add it
pick me up an indicator gasket when you go
morning again and november charlie victor one is being finished
the lower seals are in and the housing is bolted
a stem guide was brought over and it's been fitted
gasket set was opened and the right ones were found
the right bonnet gasket is in and the bolts are at forty one
as left actuator test was held at eighteen psi and is good
seat was tested but it's passing quite a bit
quite a bit of air was passing by at thirty pounds
the stem was turned a quarter turn and it sealed better
still passing though so it has to come apart again
on opening it up a thread of gasket was found on the seat
seat was wiped clean and the plug wasn't marked
it's been put back together with the same gaskets
this time the seat held at one hundred and fifty
it held for eight minutes and no bubbles came up
stroke is fine and so is the packing
shell was pumped to two seventy five and held
november charlie victor one can finally be closed out
let's go on with delta charlie victor two
on delta charlie victor two the operator complained of a noise
a squeal was coming from the stem guide which was dry
stem guide had no grease left and was starting to gall
starting to gall but the damage is slight
the guide was polished and greased and the noise has stopped
stem has a shiny spot but no score
i looked at the spring while the cover was off and it's fine
there was a bit of rust on the spring and some in the housing
cover gasket was reused because it's in good shape
no air leaks were found on delta charlie victor two
it goes from shut to full open in six seconds quietly
that's done and it's not going to be opened any further
hey watch that spring there's still load on it
stop the spring in that can has not been backed off yet
hold it there's still pressure on this thing
pressure's building up again with the block valve shut
block valve is not holding so we aren't isolated
upstream valve has been passing and the body won't bleed down
it can't be isolated because the handwheel's off the block valve
nobody has put a lock on this one yet
i smell gas over here let's get back
the alarm's gone off on my h two s monitor
there has been a gas release at the vent
he's pinched his finger in the linkage
one of the men was hit by the bonnet and he's hurt
i got oil in my eye and i'm going to wash it out
condensate has been spilled all over the floor
we've had a small spill from the body drain
there's a fire at the pit so we're leaving the area
fire's out now and no one has been hurt
we still have trapped pressure in the actuator
bonnet lifted when the nuts were loosened so there's pressure under it
spring was still loaded when the nut came off and it jumped
all the pressure has been bled off and it's safe now
area has been checked for gas and it's clear
this last batch is five valves for the heater skid
number one of five is hotel tango victor one and it's three quarter inch
hotel tango victor one was found clean but the stem is sticking
stem sticks at about halfway and then jumps
at halfway there's a rough place on the stem and in the packing
rough place was stoned off the stem and the packing was replaced
the packing was cut too long the first time so it was cut again
packing nut has been left at fifty five inch pounds
there's no jumping now and it moves smooth
seat holds at one hundred pounds and there are no bubbles
two of five is hotel tango victor two
on hotel tango victor two the diaphragm is leaking at the bolts
diaphragm bolts were all loose and the diaphragm has been pulled in
the diaphragm was pulled off of three bolts so it's torn there
it's been replaced and the bolts were torqued to one twenty inch pounds
actuator was then soaped at thirty psi and it isn't leaking
everything else on it was checked and found to be good
three of five is hotel tango victor three
a hammering noise is heard on hotel tango victor three when it closes
plug was found loose from the stem and the pin was sheared
pin has been replaced and the hole was reamed
the plug's been dented by it and the seat is dented too
plug and seat were machined and then lapped together
now the seat is fully sealed at ninety pounds
four of five is hotel tango victor four
the bonnet on hotel tango victor four is cross threaded
cross threaded bonnet was backed out but the threads are ruined
body threads and bonnet threads are both stripped
body and bonnet are to be replaced with one unit
the trim from it is good and it's been moved to the new body
seat cage and plug were all put in the new body
new body tested at four hundred with no leak on the shell
seat was tested too and it's dead tight at one twenty
and the last one is hotel tango victor five
hotel tango victor five has only a bad gauge and a kinked tube
gauge was replaced and the tube was made over
signal gauge reads twelve pounds and the controller says twelve
tubing is not kinked any more and doesn't leak
all five are ready and the skid can be put back
finish the last one please and that's all for me today
next morning there's a big one on the floor so bring the crane
the big one is foxtrot charlie victor eight and it's an eight inch
eight inch valve with air to open and a spring the size of a bucket
spring compression was let off with the long bolts
long bolts were backed off evenly until the spring was loose
the spring was lifted out and measured at fourteen and one eighth inches
spring has corrosion on the lower coils but no cracks were seen
the lower coils were wire brushed and coated with grease
diaphragm is two years old and it has a slight set
since it's set and not cracked the diaphragm will be reused
diaphragm plate weighs a ton and it's got no damage
plate bolts were found loose so they have been thread locked
stem is an inch and a quarter and it has been scored on one side
the score in the stem could be felt with a fingernail
stem was sent out to be ground and plated
the stem has come back and measures one point two four eight
packing for the bigger stem was ordered and it's been installed
packing box bushing was found worn oval and it's been replaced
bonnet weighs two hundred pounds and was lifted with the hoist
bonnet gasket was spiral wound and had come apart
new spiral wound gasket is in and the face was polished first
cage was found stuck and came out with wedges
there's heavy scale in the cage windows and one edge is chipped
chipped edge on the cage was blended with a grinder
the plug has a broken seal ring and the groove is damaged
seal ring was in four pieces and one of them is missing
the missing piece was found down in the body
seal ring groove was cleaned up in the lathe and a new ring was fitted
seat ring was bolted in and two of the cap screws are broken
broken cap screws were drilled out and replaced
seat gasket was blown out between the two broken screws
body has a cut across the gasket face where it was blowing
the cut in the body was welded by our welder and dressed flat
seat ring was put in with a new gasket and torqued to thirty four newton meters
cage and plug were put in and turned by hand to check
turning by hand it's free all the way around
bonnet studs were torqued to three hundred and fifty foot pounds
torque was done in four passes with the big wrench
packing nuts were brought up to twelve foot pounds each
actuator was set down on the yoke and the nuts were tightened
yoke nuts were torqued to two fifty foot pounds
stem connector was lined up and the travel was set at two inches
two inches travel at twenty seven psi is what we got
full stroke took twenty two seconds with the small tubing
tubing was changed to half inch and it took thirteen seconds
seat was tested at fifty pounds with a flow meter downstream
the meter showed one hundred and ten milliliters a minute
for an eight inch that should be within the class
shell was tested at seven hundred and fifty with water
there was a sweat at one stud and it was retorqued
shell was tested over and it is good
packing didn't weep at seven fifty
the actuator held its air for fifteen minutes
foxtrot charlie victor eight has been painted and tagged
okay we are through with it close the job please
we'll do one more small one before quitting time
small one is papa india victor two and it's leaking air
leak was traced to the signal fitting which is cracked
the fitting was replaced but the port behind it is cracked as well
port's cracked so the upper housing will need to be replaced
an upper housing was borrowed and the diaphragm was put back in
housing bolts are short so longer ones were used
ten bolts and ten nuts were installed and tightened
the signal port was sealed with dope and the fitting's tight
it was put up to twenty psi and left for ten minutes
it's down half a pound after ten minutes so there's still a leak
remaining leak was found at the indicator and the gasket was changed
now it holds at twenty and doesn't drop at all
papa india victor two is back the way it should be
it's a quarter to five so let's close up
what's my last torque reading for today
what have you got for the whole day
did every valve get its seat test today
starting the day with sierra charlie victor one nine off the tank battery
sierra charlie victor one nine has got oil running down the yoke
oil was found to be getting past the stem seal into the actuator
stem seal was found cut and the backup ring has a notch
there was oil standing on the lower diaphragm and it's gone soft
a soft diaphragm won't last so we've replaced it
upper housing was dry and the spring was clean
the stem seal and backup ring have been changed out
a little scratch on the stem is what cut the seal
stem was smoothed with emery cloth and then greased
seat was looked at through the port and it's alright
plug was also seen and there's nothing on it but oil
it has been washed down so that new leaks will show
no oil has come down the yoke in the last hour
okay sierra charlie victor one nine is done
mike charlie victor two is up next and it's for travel
it's only getting three eighths of an inch travel and needs five eighths
travel stop was found run down too far and was backed off
the travel stop nut was seized and had to be cut off
new nut was put on the stop after travel was set
stem connector had slipped and it has been tightened to thirty
travel after that was measured at point six two five
indicator plate was moved to match and screwed down
the indicator is now reading right at both ends
with ten pounds signal it's at sixty percent open
i'm happy with mike charlie victor two so close it
the foreman wants the seat on oscar charlie victor nine looked at
oscar charlie victor nine had a new seat three months ago
the new seat has been cut through already by sand
seat was cut on the inlet edge and the gasket's gone with it
gasket has washed out and left a groove in the body
groove in the body was filled and machined by others
the plug is scored but it's not cut through
plug was replaced along with the seat because they're a pair
the cage has no holes in it and no cracks but it's dull
upstream strainer was found with a hole in the screen
hole in the screen is how the sand's been getting by
the screen has been replaced and the strainer body cleaned out
about a quart of sand came out of the strainer
seat tested tight at two forty psi on the bench
stroke was smooth and the packing didn't drip
oscar charlie victor nine is going back in the line today
and that will do for oscar charlie victor nine
the next valve had better be easy because i'm behind
it's tagged yankee charlie victor five and it won't shut all the way
plug was found to be hitting on something a quarter inch off the seat
a bolt was found lying in the seat and it's not one of ours
the bolt has dented the seat and chipped the plug
both were looked at and neither of them can be lapped
seat ring and plug have been replaced and the bolt was kept
for the record the bolt is a half inch by two
it now shuts all the way and seals at one hundred psi
nothing else was damaged by the bolt that i can see
cage has a small ding on the inside but it's okay
yankee charlie victor five is closing in four seconds now
it can be finished and sent
valve for the afternoon is golf tango victor six on the fuel skid
golf tango victor six was locked out by operations this morning
i've checked the lock myself and the tag's on it
the valve was bled down and the gauge stayed at zero for ten minutes
tubing was taken loose and capped to keep the dirt out
actuator came off with four nuts and none of them are damaged
the packing and the stem are in good shape
bonnet was pulled and the gasket was in one piece but flat
the trim is clean and shows normal wear for fuel gas
a slight ring was seen on the plug where it seats
seat has a matching ring and it's not pitted
seat and plug were given a light lap and wiped down
the o ring on the cage had taken a set so it was replaced
bonnet gasket replaced and the four nuts torqued to fifty one
actuator was put on again and the tubing was reconnected
one of the tubing nuts was stripped and has been replaced
leak check with soap was good all over
stroked from the control room and it was full both ways
upstream pressure is back to one eighty and there's no leak through
seat was checked for twenty minutes with the outlet open
the lock's been taken off and the tag was turned in
golf tango victor six is done and signed for
well the kit for this next one has the wrong gaskets in it
kit was opened and the seat gasket is too big
the wrong kit has been sent back and another ordered
until the kit comes the old gaskets are going to be used
old gaskets were cleaned and they aren't torn or hard
we'll reuse the old ones and test it and see
with the old gaskets it's leaking at the bonnet at one hundred
so the old ones are no good and we'll wait for the kit
kit's here and all the soft parts have been replaced
the seal kit had two of everything but the indicator gasket
indicator gasket was kept from before
retested with the new gaskets and it didn't leak at three hundred
that is the lesson don't reuse gaskets
my knee hurts from kneeling by that valve all day
did you see the game or were you stuck with that cage too
i'd give a hundred dollars for a decent seat puller
tell your brother his trim carpentry looks real nice
the forklift has a leak too but it's not on my list
we ought to have this body washed before it comes in here
hand me the three quarter wrench and the brass hammer
let me wipe my hands and then i'll read you the number
hang on i dropped the nut under the bench
just a moment the light is bad in here
where's the torque wrench it was here before lunch
you wouldn't believe how much sand was in this one
okay where were we i think it was the lower housing
yes we were on the diaphragm nut and it's intact
one more thing the breather has been turned down
one other item on this valve is the gauge which has been left off
before i forget the seat gasket was greased
also the tag has been wired back on
and lastly the outside has been wire brushed and painted
that should cover the findings so now to the work
all of that was as found and now here's as left
as left readings to follow so get ready
last week's valve is back and it's leaking again
the tag is whiskey charlie victor four and it was done on monday
seat tested tight on monday so something has got in it
on opening it there was a bit of wire found across the seat
wire has marked the seat and the seal edge of the plug
the mark on the seat was lapped out in ten minutes
the plug was turned in the lathe and put back
all else was as i left it on monday
gaskets were changed again though they were only four days old
bonnet was torqued to the same fifty four foot pounds
it's holding two hundred and sixty with no bubbles
this time it was flushed before it was put together
whiskey charlie victor four is closed again
here's one for the training book and it's tagged lima charlie victor one
oil in the positioner and water in the actuator and ice in the tubing
tubing was frozen because water has been getting in the supply
water was drained out of the supply and out of the regulator bowl
actuator had a cup of water in it and the plate's rusted
plate was sanded and the spring was dried and oiled
the lower housing has been eaten up with rust and must be replaced
lower housing was replaced with the one off the scrap valve
positioner was washed out with solvent and it's working now
the pilot valve in the positioner was sticking and was polished
its diaphragms looked swollen from the oil so they've been changed
gauge faces are full of water and can't be read
three gauges have been replaced and the tubing was blown dry
a dryer ought to be put in the supply line
note a dryer is needed on the instrument air
signal was put on at nine pounds and it went to half
when it was taken to fifteen it went all the way
no leaks were found in the actuator or the positioner
lima charlie victor one is good for now so finish that
next one's a foot valve sort of thing with no tag on it
call it spare number two and put it down as one inch
spare number two was found rusted inside and out
rust is heavy on the body and light on the trim
trim was cleaned with a wire wheel and it isn't pitted
stem has rust pits in the packing area so replace it
the seat's got one deep pit on the face left side
deep pit won't come out so the seat was flipped over
the flipped side was lapped and is clean
threads on both ends are rusty but they're intact
they were brushed with a wire cup and oiled
o rings have cracked from age and been thrown out
all rubber is to be replaced before it's used
i've not got rubber for it so it's staying apart
spare number two isn't finished so leave it open
we're at the lease and the valve is bravo charlie victor one three
bravo charlie victor one three had its controller hit by lightning
controller is burnt inside and the tubing is melted
the solenoid next to it was burnt up too
valve body wasn't touched by it and it still strokes by hand
pilot has a burn mark on it but it works
controller and solenoid have both been removed and discarded
a new controller was mounted and set for direct
tubing was replaced with stainless from the supply to the valve
there was one leaking fitting and it was tightened up
controller was calibrated and the level is holding
level has been steady for forty five minutes
supply is at thirty and output is at seven and a half
the valve's running about twenty five percent open
that's all for bravo charlie victor one three
back on the bench is tango x ray four and it's been waiting on a stem
stem came and it's an inch too long so it can't be used
another stem was ordered at six and seven eighths inches
the right stem is here and was measured before it was unwrapped
plug was threaded to it and pinned and checked for runout
runout on the plug was under two thousandths
guide was slipped on and there's no drag on it
packing was slid over the threads with a piece of shim
none of the packing was cut by the threads
the stem nut was tightened to forty foot pounds and locked
it's in the body and the bonnet's down to sixty three
seat passed at one forty and the packing passed at three hundred
shell has passed at four hundred and twenty five as well
only the stroke is left and the air is off
air is on and it strokes in ten seconds flat
tango x ray four is finished at last
there's one more thing to do on papa victor three which is the pilot
pilot on papa victor three was leaking from the vent constantly
it was taken down and the pilot seat had a nick
pilot seat was replaced and the little spring was stretched
stretched spring is bad practice so a new one was put in
two screws were missing from the pilot cover
cover screws were replaced and the gasket was too
the pilot does not vent at rest any more
papa victor three is controlling at ninety five psi
downstream has been between ninety four and ninety six since
close papa victor three and give me the totals
today four seats were replaced and one was flipped
in all nine diaphragms have been changed this week
i believe the bonnet on that first valve was never torqued
go back to the first one because the torque was missed
torque on that first bonnet was sixty one foot pounds
also on that valve the stroke was eight and a half seconds
put those in and then you can close it for good
everything else that was found today has been logged
i would say the seat is fair but the plug is poor
the seat's seen better days but it's sealing
you could call the cage worn but it's serviceable
it isn't pretty but the body is sound
gasket surfaces are good apart from one scratch on the outside edge
nothing at all was found wrong with the actuator
no problems were found with the linkage or the positioner
trim was inspected and it was put back as it was
valve was opened inspected cleaned and closed with new gaskets
the valve was rebuilt tested and painted and it is ready
that'll be all thank you and good night
`;
