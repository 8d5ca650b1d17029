/** Lines that people would say: explained in whole sentences. Invented; a line a phrase, numbers and tags as spoken. */
export const SENTENCES = `
the seat ring is worn on the outlet side so i flipped it over
i had to cut the old packing out and put in new
looks like the stem has been rubbing on the guide
i'm pulling the bonnet off now and the gasket is stuck to the body
the cage has got some sand cutting down around the bottom windows
there's a little bit of pitting on the plug but it'll lap out
i put new diaphragms in both top and bottom while i had it apart
the lower diaphragm is torn right at the inner bolt circle
i blew the signal line out and got a lot of water out of it
the spring was broken in two places so i put a new one in
we torqued the bonnet bolts to twenty eight foot pounds in a star pattern
the stem is bent about a sixteenth so it's gonna have to be replaced
i checked the o rings on the cage and they're all swollen up
i don't see any cracks in the cage but the face is scored pretty bad
the vent hole was plugged with mud so i cleaned it out with a wire
i had the valve closed with sixty pounds on it and it's not leaking
the seat gasket was pinched on one side and that's where it was leaking
i'm going to put the old plug back in because it still looks good
the packing nut was loose so i snugged it up a quarter turn
it's leaking out the breather so i think the upper diaphragm's got a hole
the diaphragm plate is rusted some but it's still flat so i reused it
i had a hard time getting the jam nut off because it was seized up
the threads on the stem were galled so i dressed them with a file
somebody had put the seat in without a gasket under it
we stroked it from three to fifteen and it goes full travel
the guide is worn egg shaped so the stem's got slop in it
i found two bonnet bolts broken off and the rest were loose
the inlet threads are cross threaded but i was able to chase them
there's paraffin all over the inside of the body so i steamed it out
i cleaned the cage up with solvent and a wire brush and it looks fine
the plug's washed out on the inlet side and the seat's washed out too
the backup rings were both cut so i replaced those along with the o ring
i lapped the seat and plug together until i got a good ring all around
it was blowing by at fifty pounds so i took it back apart
the travel indicator was bent over so i straightened it back out
i greased the stem and the o rings before i put it back together
the actuator spring looks good and it measured four and a half inches long
i had to heat the housing to get the bolts to break loose
there was ice in the supply port and that's why it wouldn't open
the bonnet gasket was hard and brittle and came off in pieces
i scraped the old gasket off the flange and cleaned the face up
the seat area in the body is eroded at the bottom right under the gasket
i can feel a groove in the stem about an inch from the top
the stem connector was loose so it was losing about a quarter inch of travel
we put air to it and the actuator diaphragm's leaking around the edge
the positioner was out so i calibrated it back to three to fifteen
i can smell gas coming out around the bonnet so i'm backing off
it's still got pressure on it so i'm not going to break it loose yet
the block valve is passing so we can't get it isolated
when i loosened the top plate the spring let go on me
i replaced the whole kit since everything rubber in it was shot
the lower housing has a crack coming off of one of the bolt holes
the upper housing was dented in on the left side but it's not leaking
i took the strainer out and it was full of scale and welding slag
the regulator was set at twenty so i turned it up to thirty five
the gauge was stuck on forty pounds with no pressure on it so i replaced it
i pulled the solenoid and the plunger was sticking so we're putting a new one on
the tubing to the pilot is kinked where it goes around the yoke
the fitting on the signal port was leaking so i tightened it a half turn
the handwheel was frozen up and i had to beat it loose
we got three bubbles a minute at fifty pounds so i'll call that
it took about eight seconds to stroke all the way open
i'm seeing twenty drops a minute coming out of the packing
the o ring was extruded out of its groove and had a piece missing
i put a little thread locker on the jam nut so it won't back off again
the old seat was junk so i threw it away
there's a nick in the seat right on the edge where the plug lands
it looks like something got caught between the plug and the seat
the ports in the guide were plugged solid with paraffin so i rodded them out
i measured the travel at three quarters of an inch and it should be more
the oil in the gearbox was dirty so i drained it and put in fresh
the oil was low so i filled it back up to the plug
i put the bonnet back on and ran the bolts up hand tight first
the float was full of liquid because it had a pinhole in it
the linkage is wore out at the pin and it's got a lot of play
i adjusted the packing down till it quit leaking but the stem still moves free
the plug was stuck down in the seat so i had to drive it out
i had to leave the old cage in because we didn't have one on the truck
the seat was a little worn but i'm leaving it for now
everything inside was clean so all i did was change the soft goods
this is a two inch air to open valve in sandy service
i'm on lima victor two zero four and it's a one inch pressure to close
we moved over to p c v one twelve and it's leaking through
i pulled the stem out the bottom and there's a burr on the threads
the diaphragm nut was backed off about two full turns so i tightened it
the top diaphragm was hard and cracked all around the bolt circle
one of the body bolts was stripped so i put in a new stud and nut
we shot the temperature and it was a hundred and eighty degrees on the body
the indicator gasket was missing so that's where the water was getting in
i found the indicator spring rusted in two so it needs a new one
the packing was burnt and hard so i dug it out with a pick
i put five rings of new packing in and staggered the cuts
i think the seat might be cracked but i can't tell until it's cleaned up
there was a piece of o ring stuck in the cage window
the cage gasket was flattened out and it had taken a set
i set the adjusting screw down two turns and it came up to forty five psi
the yoke's got some surface rust on it but it's solid
i looked the body over on the inside and i don't see any washing
the trim in this one is eaten up so it's going to need all new
we had to replace the plug stem and seat all together
the stem guide o ring had a flat spot so i changed that too
i put the same seat back in but i turned it over to the good side
the supply air was only eighteen pounds so it wouldn't go full open
there's a scratch on the stem but it's above the packing so it's okay
i wiped the o ring grooves out and there's no nicks in them
it was sticking about half way open so i pulled the actuator off
the stem was dry and rusty where it goes through the packing
i got the lower diaphragm out and it's swelled up from the condensate
both of the diaphragms look good so they're going back in
the nut on the bottom of the plug backed off and dropped down inside
i replaced four bolts on the bonnet because the heads were rounded off
the flange face has got a scratch across it about an eighth of an inch wide
i tested it at a hundred pounds upstream and didn't get any bubbles
we pressured up the body to one fifty psi and the joint held fine
i soaped the bonnet down and there's no leaks anywhere
the packing was tested with the pressure on and it's holding
it opened up fine but it won't go back closed all the way
the controller wasn't sending any signal so i checked the supply to it
the pilot was full of trash and the little seat in it was cut
i took the breather out and it was packed full of dirt dauber nest
the seat was threaded in so tight it took two of us to break it loose
i had to use a cheater on it to get the packing nut to move
there is corrosion on the plug mostly down at the bottom by the nut
the edge of the plug is chipped in one place but it's pretty small
the threads on the bonnet are good there's nothing wrong with them
i'm replacing the seat gasket and the cage gasket and reusing the bonnet gasket
the body was pitted around the seat area but the gasket surface was clean
i ran a tap through the body holes because they were full of rust
we're going to need to order a new cage for this one
can you get me two upper diaphragms and a spring for this valve
put a stem guide on the list because this one's about gone
the upper diaphragm was put in upside down so i flipped it over
i noticed the spring was rubbing on the housing and it's wore on one side
the seals in the actuator were leaking air so they've been replaced
the valve was locked up solid and wouldn't move with thirty pounds on it
i worked the stem up and down by hand and it moves free now
the seat leak was about ten cc a minute with forty pounds on the inlet
it's passing a little bit so i'm going to lap it one more time
the guide bushing was scored up from sand so i put in a new one
there was so much sand in it that the cage wouldn't come out
i had to tap the cage out from the bottom with a brass punch
the supply regulator was leaking out the vent so it's getting changed
we found the tubing was cut almost in two by rubbing on the bolt
the old gasket was still good but i went ahead and replaced it
i checked the bolting all the way around and two nuts were loose
the bonnet has a hairline crack in it up by the packing box
the stem was polished up with emery cloth and it's smooth now
i can see daylight between the plug and the seat on the left side
it seems like the plug isn't lining up with the seat
the plug is hitting on one side because the stem is bent
i straightened the pointer so it reads zero when the valve is shut
it's reading about fifty percent open with nine pounds of signal on it
we've got two hundred psi upstream and about thirty five downstream
the spring was weak so it wasn't closing against the pressure
i put in a heavier spring and now it closes all the way
the diaphragm had a pinhole in it you couldn't hardly see
i soaped the top housing and it's bubbling at the bolts on one side
all the housing bolts were just finger tight so i went around and tightened them
there was condensate sitting in the lower housing so i drained about a cup out
the outlet threads were eat up with corrosion so the body's got to go
i put new thread sealant on the inlet threads and made it back up
the seat came out in two pieces because it was cracked all the way through
i vacuumed the sand out of the body before i put the new seat in
it was cross threaded when somebody put it together last time
the nut was rounded off so i had to use a pipe wrench on it
i bled it down but it's still holding about twenty pounds
i don't have a lock on it yet so hold off
there's a bunch of condensate spilled on the ground under the valve
he got his finger pinched when the spring came loose
the gas alarm just went off so we're shutting down and moving out
i smelled h two s when i cracked the bonnet so i'm masking up
the stem packing was leaking when i got here so i tightened it first
i tightened the packing nut but it's bottomed out so it needs repacking
the plug had a ring worn in it all the way around from the seat
the face of the seat is smooth but there's a gouge in the edge
i turned the backup ring around because it was in backwards
there were no backup rings in it at all so i put two in
the gasket surfaces were scraped wiped down and inspected before it went back together
the cage was dropped and got a dent in the top so i'm not using it
i filed the burr off of the cage and it slides in good now
the valve was tagged wrong this is really f v one oh one
the signal tubing was plugged with ice from here to the panel
i thawed it out with hot water and it started working again
we've got water in the instrument air so the positioner is fouled up
i opened the drain on the regulator and got about a quart of water
the solenoid is stuck open and it won't vent the actuator
the vent on the solenoid was plugged up by a wasp nest
the float arm was bent so i bent it back where it's supposed to be
the pin in the linkage was missing and they had a nail in it
i installed a new stem and plug and pinned them together
the travel was set at one and an eighth and the stop was adjusted to match
the lock nut was missing off the adjusting screw so i put one on
i put a wrench on the stem connector and it wasn't even tight
it's been leaking by for a while because the seat's wire drawn on the bottom
okay i've got the actuator off and the diaphragm has a tear about two inches long
the old diaphragm was stuck to the plate so i had to peel it off
i'm looking at the seat and it's got a cut mark right across it
this gasket's been used before and it's mashed pretty flat
the bolts were rusted real bad so i'm putting all new ones in
i sprayed the nuts down with penetrating oil and let them soak
we finally got it to break loose after about twenty minutes
the stem has some light scratches but nothing that'll hurt the packing
i tried to get the seat out but it's not going to come without heat
the bottom of the plug has been hitting something and it's beat up
there's scale built up in the cage holes and most of them are plugged
i soaked the cage in solvent and got about half of the holes open
the guide was tight on the stem so i polished it out a little
i ran my finger around the o ring groove and i can feel some pitting
the pitting in the groove is small so the new o ring ought to seal
the body's good and the seat area's good but the trim is shot
i didn't find anything wrong with the spring or the plate
the upper half was clean but the lower half was full of mud
i cleaned everything up laid it out and here's what i found
the seat is pitted the plug is pitted and the stem's okay
looks like it's been running wet because there's rust on everything
i replaced the upper diaphragm because it was leaking when we put air on it
the lower one looked alright so i left the old one in
when i put ten pounds on the actuator i could hear it leaking
i can hear it blowing through so it's not shutting off
the plug comes down but it stops about an eighth short of the seat
i think there's trash under the plug so i'm going to flush it
we flushed it and got a bunch of sand out and now it's holding
it's dead tight at sixty pounds after i lapped it
i checked it again at one twenty and still no bubbles
the leak was coming from the seat gasket and not from the plug
i could see where the gas had been cutting underneath the seat gasket
the gasket had blown out on the outlet side so there's a piece gone
the shoulder under the seat is washed so a gasket won't seal there
we're going to send the body in to have it machined
i'm not replacing the body today but it needs to be done
that's about all i can do with it until we get parts
the bonnet bolts were all different lengths so i replaced the set
i put anti seize on the studs and torqued them to thirty five
the nuts were torqued to forty foot pounds and checked twice
we went around once at fifteen and then finished at thirty foot pounds
the housing bolts only take about twelve foot pounds so don't overdo it
the packing nut was tightened to sixty inch pounds and the stem still moves good
the diaphragm nut got torqued to fifty five with thread locker on it
i had it up to eighty newton meters on the body bolts
the jam nut is cracked on one corner so i'm putting on a new one
there was a washer missing under the diaphragm nut so i found another one
i counted eight bolts but only six of them had nuts on
three of the bolts on the inlet side are bent from somebody prying on it
the flange is pulled out of line so the bolts don't want to go in
the pipe's pulling on it so the valve is misaligned with the flange
i had to jack the line up to get the bolts back in
the actuator's sitting crooked on the yoke because a bolt is missing
we loosened it up lined it out and tightened it back down
the stem is out of line with the actuator by about a sixteenth
that side load is what wore the packing out on one side
i put a straight edge on the stem and it's bent in the middle
rolled the stem on the bench and it's out about ten thousandths
the seat ring measured point oh one five low on one side
i miked the guide and it's worn about twelve thousandths over
the spring is three sixteenths shorter than the new one so it's taken a set
free length on the spring was six and a quarter so it's good
i compressed the spring and it's got a crack on the second coil
the bottom coil of the spring is rusted about half way through
there's rust flakes all over the inside of the spring housing
i wire brushed the housing and put a coat of grease on the spring
the breather was plugged so the housing couldn't breathe and it filled up with water
i drilled the breather out because paint had it plugged off
they painted over the vent hole so i scraped it open again
the paint's all over the stem and that's what tore up the packing
i cleaned the paint off the stem with a rag and solvent
the packing was leaking a little bit even with the nut all the way down
i pulled the nut and there's only three rings of packing in there
the top ring of packing was hard as a rock and the rest were mush
the packing box is corroded on the inside so it might not seal up
i polished the packing box out with a little piece of emery cloth
the new packing was put in and the nut brought down finger tight
we put fifty pounds under it and the packing is not leaking
we saw ten drops a minute at first and then it quit
i gave the packing nut another flat and that stopped it
packing's dry at two hundred pounds so it's good to go
the stem o ring was cut when it went over the threads
i put tape over the threads this time so it wouldn't cut the o ring
the o ring on the bottom of the cage was rolled and pinched
the top o ring was fine but i changed it out with the rest
those o rings have gone hard so they all need replacing
i found pieces of o ring down in the body and fished them out
the o ring groove had sand in it so it never was sealing
i greased the groove and set the new o ring in by hand
the backup ring was on the wrong side of the o ring
one of the backup rings was missing and the other one was split
i replaced both backup rings and the o ring they go with
the seals were leaking bad so i put a whole seal kit in it
this kit came with the wrong gasket so i cut one out of sheet
i don't have a kit with me so we'll have to bring one
order me a kit for a two inch and a set of bonnet bolts
we need to bring a new seat and plug when we come back
bring two spring washers and one lower diaphragm for the next valve
get me a new gauge zero to sixty for the supply regulator
the gauge glass is broken but it still reads right
i swapped the gauge out with one off the truck and it reads thirty
we were reading twelve pounds signal and it hadn't moved yet
it starts to move at four pounds and it's full open at fourteen
the valve was jerky going up so i greased the stem and guide
it drags about half way then pops open the rest of the way
it's only getting about half travel so something's holding it
the stop was set wrong so it couldn't open past sixty percent
i backed the stop off and now it's going a hundred percent
we timed it and it took twelve seconds to open and nine to close
it's slow closing because the exhaust port is plugged on the positioner
i unplugged the exhaust and it closes in about three seconds
the feedback arm came loose on the positioner so it was hunting
i tightened the arm up and recalibrated it at four points
the positioner's got oil in it from the compressor so it needs cleaning
i cleaned the nozzle with a wire and blew it out with air
the controller is full of bugs but it works once it's cleaned out
i zeroed the controller and the output came up to three pounds
the output gauge on the controller is stuck at nine pounds
the supply gauge reads twenty two and the output gauge reads fifteen
the tubing nut was cracked so it leaked every time it got air
i cut off the bad end of the tubing and put a new fitting on
the fitting was cross threaded into the supply port so i took it out
i had to chase the threads in the signal port with a quarter inch tap
the threads in the port are stripped so it might need a bushing
there's a pinhole in the tubing about six inches from the pilot
i replaced about two feet of tubing and both fittings on the end
the pilot diaphragm has a split in it so it was bleeding all the time
i rebuilt the pilot with a new diaphragm a new seat and a new spring
the pilot was stuck open with a chunk of rust under the ball
i took the pilot apart cleaned the seat and put it back together
the pilot's holding good now and it shuts off clean
the regulator diaphragm's bad so it's getting replaced today
the regulator filter was black so i put a new one in
i drained the regulator bowl and it was about half full of oil
the strainer screen was torn so trash was getting into the valve
we put a new screen in the strainer and closed it back up
i blew the strainer down until it was running clear
the handwheel is loose on its shaft because the key is gone
the handwheel nut was missing so i found one that fit
i greased the handwheel threads and now you can turn it with one hand
the handwheel was left engaged and that's why it wouldn't close
the yoke nuts were loose so the whole actuator was moving around
there's a crack in the left leg of the yoke and it needs replaced
the yoke is bent a little bit but it doesn't touch the stem
the travel indicator's gone so i can't tell how far it's open
i put a new pointer on and lined it up with the closed mark
the indicator was full of water and you couldn't see through it
the indicator glass was fogged so i took it apart and wiped it out
the little spring under the indicator was rusted so i replaced it
the indicator gasket was dried out and cracked so water got inside
i put new gaskets in the indicator and tightened the cap down
the linkage was binding up so i oiled all the pins
the linkage has a bent rod so the float doesn't bring it shut
we straightened the rod and adjusted the linkage until it shut off
the float is coated with paraffin and it's too heavy to come up
i scraped the paraffin off the float and steamed the rest of it off
the float came loose off the arm and it's laying in the bottom
the adjusting screw is rusted in place and won't turn either way
i soaked the adjusting screw overnight and it turned this morning
i adjusted the screw to where it opens at one twenty five psi
the set point had drifted up about ten pounds so i brought it back
the lock nut on the adjusting screw was loose so it walked out
we set it to relieve at fifty and put the lock nut down tight
the actuator was full of water when i pulled the bottom plug
i emptied the water out dried it off and put it back on
the actuator is leaking air somewhere but i can't find it yet
i found the air leak it was the gasket under the top cap
we put twenty pounds on the actuator and shut it in and it held
the actuator lost five pounds in two minutes so the diaphragm's leaking
the diaphragm plate is bent up on one edge where it hit the housing
the plate had a sharp edge on it and it cut the diaphragm
i filed the sharp edge down so it won't cut the new one
the bolt holes in the diaphragm were pulled out on the right side
it looks like the diaphragm was pinched when they put it together
the diaphragm had folded over and got caught between the housings
i trimmed nothing just laid it in flat and started all the bolts
the rubber's coming off the fabric so that diaphragm is done
it's swollen so bad the bolt holes don't line up anymore
the balance diaphragm was torn loose at the center and the plate fell down
the power diaphragm's good but it's dirty so i wiped it off
i'm at f c v three eleven and we're fixing to tear it down
this one's a three inch fail closed valve on the dump line
it's an air to close so it should be open with no signal
we're on pressure to open here and it was stuck shut
i'm starting on papa victor one zero four bravo it's a one inch
the tag says l c v two one three and it's in severe service
it's in sour service so everything's coming out and getting replaced
this is a dirty service valve so i expected the seat to be cut
i shut the inlet and bled it off and there's no pressure on it
the valve is locked out and bled down so i'm taking the bonnet loose
i broke the top four nuts and it's still hissing at me
there's still pressure under the bonnet so i'm tightening it back up
the upstream block valve won't hold so i can't work on this
the spring is still loaded so don't take that bolt out yet
we've got a small fire on the heater so everybody's backing away
i cut my hand on the edge of the housing when it slipped
i got gas coming out of the packing and it's getting stronger
there's oil all over the pad from when we pulled the bonnet
the seat has a ring of rust on it but it wiped off clean
i wiped the seat off and it doesn't have a mark on it
the seat's been flipped once already so both sides are worn now
since both sides are worn it's going to take a new seat
i put a new seat in and a new gasket under it
we replaced the seat last year and it's already eroded on the inlet
the seat's got three little pits in it over on the right side
i lapped the seat for about ten minutes and the pits came out
the pits are too deep to lap out so it needs a new one
the seat is loose in the body and i can turn it by hand
the retainer backed off and let the seat move up and down
i cleaned the seat threads with a wire brush before i put it in
the inside edge of the seat is rounded off from all the sand
there's a flat spot worn on the seat where the plug's been sitting
it has a pretty deep groove across the seat face on the bottom
the seat is steam cut at about the six o'clock position
i'm going to take this seat out and turn it over and see if it holds
i flipped the seat and tested it and it's bubble tight
i flipped the seat over but it still leaks so it has to be replaced
the ball is scratched up and the seats behind it are scored
the ball won't turn at all it's rusted in place
the ball was pitted on the outlet side so i put a new one in
the disc is washed out so bad there's not much of it left
i had to replace the disc because it was cracked through the middle
the disc has got a chunk of rubber missing along the edge
the plug was loose on the stem and you could wiggle it
i tightened the plug back on the stem and pinned it
the plug's got a shiny spot on one side where it's rubbing the cage
the plug has galled to the cage and it won't come apart
i drove the plug out of the cage and both of them are galled
i think we can clean the plug up but the cage is done for
the plug is in good shape so i'm going to reuse it
the plug has some wear but it's even all the way around
the tip of the plug is broken off and i can't find the piece
we found the broken piece of the plug downstream in the strainer
the plug looks wire drawn right at the seating surface
the plug was eroded so i turned it down and lapped it back in
i couldn't find anything wrong with the plug so i kept it
the stem's worn down where it goes through the guide about ten thousandths
the stem was pitted under the packing so that's why it kept leaking
i pulled the stem and it's scored from top to bottom
the stem is bent at the top where it goes into the connector
we put a new stem in it and new packing and that fixed it
the stem threads are stripped out so the nut won't hold
i cleaned up the stem threads with a die and the nut runs on good
the stem broke right at the plug so the plug was just sitting there
the actuator was moving the stem but the plug wasn't coming with it
the stem was rusted to the guide so nothing would move
i got the stem to move by tapping on it and using oil
there's a burr on the end of the stem from somebody hammering on it
i dressed the burr down so it'll go through the packing
the stem's straight and smooth so it's good to go back in
the cage has a crack running from the top down to the first window
the cage is washed out at the bottom and it's cutting the body too
one of the cage windows is eroded bigger than the other ones
i looked in the cage with a light and there's no cracks
the cage was upside down when i took it out
the cage is scored up and down on the inside but it's not deep
i put the cage in a vise and honed the inside a little bit
we had to replace the cage because it was galled all around
the cage gasket was blown out so gas was going around the cage
the cage gasket's fine but i'm putting a new one in anyway
the cage o ring had a cut in it and it was leaking past
i put the cage back in with a new o ring and it went in smooth
the cage is stuck and i've got to make a puller for it
scale had the cage stuck in there so i soaked it with acid
the guide's worn so the stem moves side to side about a sixteenth
the comm hole in the guide was plugged up with salt
i ran a drill bit through the hole in the guide and it's open now
the guide has a groove wore in it on the left side
the guide came out easy and it's good so it's going back in
i pressed the old guide out and pressed in a new one
the stem guide is cracked across the top and needs to be replaced
the stem guide o ring was hard so gas was getting up into the actuator
i put a new o ring on the guide and greased it up good
the bonnet was hard to get off because the gasket was baked on
the bonnet is pitted on the bottom face but not where the gasket sits
the bonnet gasket was leaking on the right side so i changed it
the gasket between the bonnet and the body was torn in half
i used a new gasket on the bonnet and wiped both faces off
there's an old piece of gasket stuck in the groove on the bonnet
we had to scrape the groove out before the new gasket would sit down
the bonnet threads are galled up so i can't screw it all the way down
i checked the bonnet and the threads are all intact
the bonnet's eroded inside right across from the inlet
we leak tested the bonnet at two fifty and it's good
when i pressured it up the bonnet gasket started weeping a little
i tightened the bonnet a little more and it quit weeping
the body has got a hole washed in it down by the outlet
the body is worn thin on the bottom so i marked it for replacement
the body was cracked from freezing so it's going to be a new valve
the bottom of the body was full of sand about an inch deep
i rinsed the body out with water and blew it dry
i inspected the body inside and out and didn't find any damage
the outside of the body's rusted but it's only on the surface
the body is leaking at the bottom plug so i tightened that
the body bolts have been stretched so i'm not going to reuse them
one body bolt is missing a nut and one is just loose
two of the studs came out with the nuts so i put them back in
the studs are rusted down to about half their size
i replaced all eight studs and nuts on the body with new ones
the body bolting was torqued to ninety five foot pounds
the inlet threads look good but the outlet threads are chewed up
i cleaned the inlet threads out with a brush and they're fine
the outlet threads are washed out at the bottom where it was leaking
we got the nipple out and the threads in the valve are damaged
the threads are stripped so bad i don't think they'll hold pressure
the first two threads are flattened but the rest of them are fine
the flange gasket's leaking on the downstream side
i tightened the flange bolts and that took care of the leak
the flange is corroded around the bolt holes but the face is good
we put new gaskets in both flanges and new studs on the inlet
there's a dent in the flange face so i'm going to try to dress it out
i filed the flange face flat and it's sealing now
the spring was put in wrong side up so i turned it around
the spring's rusty but it's not broken so i'm leaving it
the spring has a bent coil on the bottom and it's rubbing the housing
i put a new actuator spring in and set it to three pounds
the spring seems kinda weak because it won't close it against a hundred pounds
the spring is okay but the spring button under it is cracked
i couldn't get the spring out because the top nut is seized
the upper housing is rusted through on top so rain's getting in
the upper housing has a crack by the supply port about an inch long
i swapped the upper housing for a good one we had in the shop
the lower housing was packed with mud and the vent was stopped up
i washed the lower housing out and dried it and it's good
the lower housing's bolt ears are bent so the bolts don't sit square
the housing is leaking air between the two halves on one side
i evened up the bolts on the housing and it quit leaking
the housing bolts were tightened to fifteen foot pounds in a cross pattern
the housing gasket surface has a scratch but the diaphragm will seal over it
the nut under the diaphragm was loose and the plate was rocking
i tightened the diaphragm nut and put a drop of thread locker on it
the diaphragm nut was rounded so i put a new one on there
the hole in the diaphragm nut was stopped up with dirt
the diaphragm plate was installed backwards so i fixed that too
the diaphragm plate's got a rough spot and i sanded it smooth
the supply port had old thread tape down in it so i picked it out
i took the fitting out of the supply port and it was plugged with rust
the signal port was full of grease so no air could get in
the signal port threads were good and so was the fitting
we ran a wire through the signal port and got it opened up
the oil looks like chocolate milk so it's got water in it
i drained the oil and there were some metal shavings in the bottom
i filled it with a quart of oil and it's up to the mark
the oil is about an inch low but it looks clean
somebody overfilled the oil so it's blowing out the breather
the trim's been in here six years and it's worn out
i put all new trim in this one the seat the plug and the cage
the trim is fouled up with salt but it's not damaged
the threads on the packing nut are galled so it won't go down straight
the packing nut is cracked on the side so we're changing it
i had to cut the packing nut off because it was seized
the packing nut was cross threaded and i got it started right
the stem connector was stripped so it slipped on the threads
both bolts in the stem connector were loose so i tightened them
the stem connector's cracked and i don't have another one with me
i moved the stem connector up two threads to get the travel right
the solenoid's burnt up so there's no way to test it today
the solenoid coil was hot and it smelled burnt so i changed it
i put power to the solenoid and it clicks but no air comes through
the solenoid was leaking air out the exhaust all the time
the breather's missing so i put a new one in with a screen
i found a little bit of oil coming out of the breather
air is coming out of the breather so the diaphragm has got a leak
there's no air coming out of the breather so the diaphragm is fine
i cleaned out the breather and put it back in pointing down
the vent hole on the side is plugged with ice so i'm thawing it
the vent hole was open and dry so the diaphragm's not leaking
the gasket on the valve cover was torn so we made a new one
i put a little grease on the gasket to hold it in place
so i've got it back together and i'm putting air to it now
it strokes full open and full closed on three to fifteen
i've got fifteen pounds on it and it's all the way open
i bled the signal off and it went closed like it's supposed to
it won't close with the signal off so the spring might be broke
we tried it three times and it opens and closes fine every time
it stuck the first time but after that it stroked good
it moved about an inch and stopped so i'm going to look at the stops
it's only opening about thirty percent on full signal
it opened to seventy five percent at twelve pounds
i put twenty pounds on it and got nothing it won't move
the valve moves but it's real slow in both directions
i measured the stroke and it's got a full inch and a half
the travel is short by about an eighth so i'm adjusting the stem
i'm putting pressure on the inlet now and watching the outlet for bubbles
it's closed with eighty pounds on it and i'm not getting anything downstream
i'm getting about five bubbles a minute at one hundred psi
the leak rate is around thirty milliliters a minute at sixty pounds
it was leaking two bubbles a minute before and now there's none
it's leaking past the seat at forty psi and the packing's holding
we held it for ten minutes at one fifty and it didn't drop any
it dropped three pounds in five minutes so there's something leaking
it won't hold any pressure at all it's blowing right through
we put seventy five pounds on it and it held for five minutes
the shell test was good at three hundred pounds for three minutes
it failed the shell test because it's leaking at the bonnet joint
it passed the seat test but the packing started leaking at one hundred
i did the actuator test at twenty pounds and it passed
the actuator didn't pass it's leaking air at the diaphragm
i ran a seat leak test and a stroke test and both were good
it failed the seat test so i'm going to pull it and lap it again
the second time i tested it there was no leak at fifty pounds
the valve's holding and the packing's holding so we're done with it
i put soap on the stem and there's no bubbles at all
there was a tiny bubble at the packing so i gave it another turn
we brought the pressure up slow and it started leaking at ninety
it holds at low pressure but it leaks by at a hundred and fifty
upstream is one ninety downstream is forty and the valve's controlling good
supply is at thirty five pounds and the signal is at nine
the supply pressure was forty psi so i turned it down to thirty
signal was showing twelve pounds but the valve was still shut
i've got about two inches of water on the manometer and it's steady
we had six bar on the inlet and it was holding steady
the gauge was reading four hundred kilopascals on the supply
it's running about ninety degrees celsius so the rubber got hard
the line's at two hundred and ten degrees so i'm letting it cool
we let it sit on pressure for fifteen minutes and checked it again
the gap between the plug and the seat is about three sixteenths
i set the travel to twenty millimeters and locked it down
the spring length was five and three eighths before i compressed it
i measured point oh two oh clearance between the stem and the guide
it's sitting at about forty five percent open right now
it took between six and eight seconds to go from closed to open
it needs at least twenty pounds of supply to get it to move
don't put more than thirty five psi on that diaphragm
i never got more than ten foot pounds on it before it stripped
this bolt stripped out at about twenty foot pounds
the torque on the bonnet was checked and it's right at thirty two
i set the torque wrench at forty five and went around it two times
each one of them was torqued to eighteen foot pounds
the packing nut's torqued to ten and the stem still moves easy
the note i want on here is note that the line has been moved
note that the next guy is going to need a longer wrench
for the record this valve was painted over when i got to it
remark the customer wants to replace the whole valve next time
note that the bypass has to be opened before you pull this one
go ahead and take a picture of that seat before i pull it
take a picture of the bottom of the cage for me
read that back to me so i can see if you got it
what have i got left to do on this one
tell me what i missed before i close it up
okay that's it for this one go ahead and close it out
i'm all done with this one so let's go to the next
stop listening for a minute while i talk to the operator
alright go ahead and listen i'm back on the valve
scratch that the seat was good it was the plug that's worn
no wait it was the lower diaphragm that was torn not the upper
correction i already replaced the packing when i had it apart
make that thirty two foot pounds on the bonnet bolts
i said three bolts broken but i mean four
sorry that was the cage gasket and not the seat gasket
strike that it was leaking at the packing nut
forget that last one i was looking at the wrong valve
the seat no the plug has a chip out of the edge
never mind that the o ring's okay it was just dirty
it's the same on the lower one it's cracked all around too
the other one looks the same so i'm replacing both of them
ditto for the cage it's washed out just like the seat
the inlet side is good but the outlet side needs the same thing
there's nothing wrong with the cage or the guide that i can see
no damage on the stem and no scratches on the plug
i don't see any leaks at the bonnet or around the packing
the seat isn't cracked it was just a line of rust
the plug's not worn enough to replace so it's going back
there's no rust on the spring and no cracks in the plate
i didn't see any holes in the diaphragm when i held it up to the light
there isn't any wear on the guide so i didn't replace it
none of the bolts were loose so i didn't touch them
the gasket wasn't torn it just didn't seat right
the o rings weren't cut but they were flattened pretty good
i'm not sure but i think the stem could be a little bent
the body might be washed under the seat but i can't see it
it's probably the lower diaphragm that's leaking but i haven't opened it
i reckon the spring is getting weak because it's slow to close
maybe the seat gasket's bad since the seat looks perfect
it could be trash in the seat so i'll flush it first
looks like it may have a crack starting at the bolt hole
i think somebody over tightened it and pulled the threads
the diaphragm might make it another year but i'd replace it
i believe the packing will hold but we'd better check it next month
the guide's probably okay but i'm gonna measure it to be sure
i can't tell if that's a crack or a scratch on the housing
the seat needs to be replaced and so does the plug
the gasket has to be replaced every time you pull this bonnet
i'm going to have to change the stem because it's pitted too bad
it's gonna need a new cage and a new seat next time it's down
we'll have to replace the housing because the ears are broke off
you need to put a new breather in it because this one's broke
somebody's going to have to clean the strainer before we start it up
it needs lapping but i don't have any compound with me
the stem needs to be greased before it goes back in
the packing has to be adjusted once it warms up
the bonnet bolts still need to be torqued when i get my wrench back
we still need to calibrate the positioner before we leave
the oil needs to be drained and changed while we're here
the linkage needs adjusting because it's hitting the bracket
that fitting should be tightened when the pressure's off
those nuts need to be snugged up after it gets hot
i didn't replace the spring because we don't have one
i decided not to replace the cage since it's only a little scored
they didn't want me to change the body so i left it
we're leaving the handwheel off because it's bent
i'm not replacing the guide on this one it's still tight
the old plug was left in because the new one didn't fit
we ran the same diaphragm again because it still looked brand new
i kept the bolts and the nuts but threw the washers away
the old packing got tossed and the follower was cleaned and put back
i threw out the gaskets and the o rings and saved everything else
the stem was cleaned polished greased and put back in
the seat was removed cleaned and lapped and then put back in
the actuator was taken apart cleaned and put back together with new seals
the valve was taken off the line and put on the bench
the bonnet was removed and the cage plug and seat were inspected
everything was blown out with air and wiped down before it went together
all of the o rings were replaced and greased
both diaphragms were replaced and the plate was cleaned up
the body was flushed drained and checked for cracks
the seat and the seat gasket have been replaced
the packing's been replaced and the nut has been tightened
the strainer was pulled cleaned and reinstalled with a new gasket
the regulator was taken off and a new one was put on
the pilot was rebuilt and set at sixty five pounds
the tubing was replaced from the regulator to the positioner
the spring was taken out measured and put back in
the bolts were wire brushed and reused with new nuts
the cage was flipped end for end because the bottom was worn
the lock nut was tightened and thread locker was put on it
the handwheel was freed up and greased and it turns good now
the float was removed scraped and put back on the arm
the yoke was straightened and the bolts were tightened back up
the linkage was oiled and adjusted and it moves free
the indicator was cleaned and the gasket was replaced
the solenoid was replaced and tested and it's working
the controller was calibrated and it's tracking the level good
the actuator was vented before i loosened any of the bolts
the line was vented and the gauge went to zero
i vented the housing and got a little bit of water out
i took the actuator all the way apart to find out why it was leaking
i disassembled the whole valve and laid the parts on the tailgate
i pulled the internals and everything's coated in black stuff
we opened it up because it was leaking by and here's why
the reason it wouldn't close is there's a rock under the plug
i got the rock out but it dinged the seat on the edge
the reason it was leaking is the o ring was never put in
that's why it was leaking the gasket slipped off to one side
it was leaking because the bolts weren't tightened even
it wouldn't open because the diaphragm was torn all the way across
it was hunting because the packing was too tight on the stem
it kept sticking because of the paint on the stem
the packing was leaking because the stem's got a rough spot on it
the plug wore on one side because the guide was wore out
the diaphragm failed because it was rubbing on a sharp plate
the cage got washed because the valve was running barely open
since the stem was bent it wore the packing and the guide
because the breather was plugged it pumped water into the spring side
with that much sand in it i'm surprised the seat isn't worse
after i cleaned it up i could see the seat was cracked
once i got the packing out i saw the stem was pitted
when i took the bottom off a bunch of water ran out
before i took it apart i checked it and it was leaking by
as soon as i put air on it the diaphragm blew out
every time i tighten the packing the valve starts to stick
i've got the top cover off and i'm looking down at the spring
first thing i see is the stem's got rust on it above the packing
next i'm going to pull the housing bolts and lift the top off
there's eight bolts in the housing and i'm leaving two long ones for last
i backed the spring off all the way before i took the bolts out
now i'm lifting the diaphragm out and it looks good on this side
on the bottom side of the diaphragm there's a bunch of little cracks
i'm going to change that one out while it's open
down below that the plate has a little corrosion but it's flat
the nut in the center was tight and the threads were clean
i'm working down to the stem guide and it's got mud around it
the seal in the stem guide is leaking so i'm going to replace it
alright the bonnet's off and there's a lot of scale in here
inside the cage it's clean but the outside's got build up on it
i'm pulling the seat out now and it came out real easy
under the seat the gasket is flat and one edge is gone
i wiped out the bottom of the body and it's smooth
so far everything looks good except for the seat
the only thing i found wrong was the cage o ring
the worst part was the plug it was cut about half in two
most of the wear is on the bottom of the seat
all the damage is on the outlet side of the cage
the whole inside of this thing is rusted up
it's clean in here no rust no scale and no sand
it's dirty inside but none of the parts are damaged
there was maybe a cup of sand in the bottom of it
i had to dig the mud out of the lower housing with a screwdriver
the salt had built up on the plug so it couldn't seat
there's asphalt or something on the stem and it won't wipe off
i used diesel to clean the paraffin out of the cage
we steamed the body out for about thirty minutes
i sandblasted the bonnet and it's got pits all over the face
i buffed the plug and there's still a line across it
i ran a hone through the cage and took out the high spots
i put some lapping compound on it and turned it back and forth
after three rounds of lapping the seat's got a full contact line
i blued the plug and it's touching about three quarters of the way around
it's only making contact on the left side so something's crooked
the new plug is making contact all around so it should seal
i put the new seat in and torqued it to one twenty foot pounds
i tightened the seat down with the seat wrench until it stopped
the seat wrench slipped and chipped one of the lugs on the seat
one of the lugs is broken off the seat from the last time
i soaked the seat threads and tried again but it's still seized
we ended up cutting the seat out with a torch
getting the seat out messed up the threads in the body
i chased the seat threads and the new one screwed right in
the gasket under the seat was stuck so i scraped it out
i laid a new gasket in there and made sure it was centered
the cage gasket is a different size than what's in the kit
i checked the old gasket against the new one and they match
put the cage back in put the plug in and it dropped right down
i slid the bonnet on over the stem and the packing's snug
i put the nuts on by hand and pulled it down even
pulled it down in a cross pattern first at ten then at twenty five
i put a wrench on the inlet nipple and it was loose
the nipple was leaking at the inlet threads so i resealed it
i put pipe dope on it and screwed it back in
the union was leaking so we put a new gasket ring in it
i hooked the supply tubing back up and checked the fittings with soap
the top fitting had a leak and the bottom one was okay
both of the fittings on the actuator were leaking so i changed them
i replaced the elbow on the signal port because it was cracked
the ferrule was on backwards so it would never have sealed
i redid the tubing with a bigger loop so it won't kink
the tubing's rubbing on the yoke and it's got a flat spot
the tubing's okay but the clamp that holds it is missing
i tied the tubing off so it won't rub anymore
the pilot line was frozen about two feet from the valve
i put the heater on it and it thawed out in ten minutes
ice was built up on the outside of the body about an inch thick
the stem's iced over so it can't move until we thaw it
the regulator froze up last night so that's why it wouldn't open
it's froze up on the supply side so there's no air getting to it
the regulator was putting out fifty so it blew the diaphragm
i turned the regulator down to twenty five before i hooked it up
the regulator won't hold a setting it keeps creeping up
i put a rebuild kit in the regulator and it's holding twenty
the adjusting screw on the regulator was stripped so i changed that
the gauge on the regulator reads ten pounds high
the gauge is broken off so i plugged the hole until we get one
i tapped on the gauge and it dropped to zero so it's bad
gauge is good i checked it against mine and it's right on
the positioner gauge is missing its glass and the needle's bent
the positioner was loose on the bracket so the arm slipped
i tightened the bracket bolts and set the zero and span
the cam in the positioner was turned around so it was acting backwards
the positioner has got a leak at the gasket on the back
a bolt was missing off the positioner bracket so it was leaning
the positioner passed air but it wouldn't respond to the signal
i replaced the positioner and ran it through zero fifty and a hundred percent
at fifty percent signal the valve is open about half an inch
at nine pounds it's right at mid travel so i left it
the zero was off about five percent so i adjusted it
i gave it three pounds and it came off the seat a hair
it should be closed at three pounds but it's still cracked open
i adjusted the stem down a turn and now it closes at three
the level controller's torque tube is stuck so i'm working it loose
the controller was set on the wrong action so i switched it
the controller vent was clogged up and it wouldn't bleed down
i cleaned the relay in the controller and it's still leaking
the flapper in the controller's bent so i'm straightening it
there's a fitting broke off in the side of the controller
the float shaft packing was leaking oil so i tightened it up
the float's hanging up on something inside the vessel
i worked the float up and down and the valve followed it
the float rod was bent and i straightened it in a vise
the linkage pin's worn about half in two so we need another one
i put a new cotter pin in the linkage and a washer
the linkage was set too short so the valve couldn't close
i let the linkage out about a half inch and it's closing now
the arm on the linkage was slipping so i tightened the set screw
the handwheel's rusted up and the stem on it is bent
i broke the handwheel trying to get it to turn
the handwheel rim is cracked but you can still use it
the handwheel is good it turns easy from stop to stop
i put the handwheel in neutral so the valve can stroke
i greased the fitting on the yoke and it took about ten pumps
the grease in the yoke nut was dried up and hard
the yoke bushing is worn so the handwheel has a lot of play
the oil plug was leaking so i put some sealant on the threads
the oil seal is leaking and it's dripping down on the bonnet
there's oil leaking from the gear box about two drops a minute
i checked the oil and it's clean and full
the solenoid has water in it and the wires are corroded
i dried the solenoid out and sealed the cover back up
the plunger in the solenoid was rusty so i cleaned it and it works
there was a wasp nest in the breather so i dug that out
the breather was pushed in and mashed flat by something
i turned the breather down so it wouldn't fill up with rain
the strainer basket's got a hole in it about the size of a dime
i put the strainer back in but it needs a new gasket
the strainer plug is seized and the corners are rounded off
the bottom plug on the body was leaking so i resealed it
i checked the bottom flange and one of the nuts is loose
the inlet flange has two bolts that are too short
i put longer studs in the inlet flange and torqued them to one ten
the outlet flange is okay but the gasket is squeezed out on one side
the gasket's sticking out on the left so it's not centered
i loosened the flange and centered the gasket and tightened it back
the flange bolts are corroded bad and the nuts are eaten up
four of the nuts were so bad that i had to cut them off
i split two nuts and heated the others with a torch
i broke one stud and had to drill it out
the broken stud's still in the body so i need an extractor
i drilled and tapped the hole and put a new stud in
the bolt hole threads are gone so i put an insert in it
the bolt's bottoming out before it gets tight so i added a washer
there's two different kinds of bolts in here so i matched them up
the bolts look new but they were never tightened
i replaced a couple of bolts that had bad threads
three nuts were missing and i had some on the truck
we replaced six of the bolts and kept the other six
every one of the bolts is stretched so they all need to go
the cap screws on the cover were stripped out
i used a hex key and it just rounded out the cap screw
all the cap screws are in good shape so i put them back
the nut on top of the stem is missing so it's been slipping
the jam nut was never tightened so the plug turned on the stem
i locked the jam nut down against the connector and checked the travel
the jam nut threads are cross threaded and it went on crooked
i put two jam nuts on it so it won't come loose again
the thread locker let go so i cleaned it and put on more
the threads on the actuator stem are beat up from a pipe wrench
there's pipe wrench marks all over the stem right where it goes through packing
somebody used a pipe wrench on this stem and ruined it
somebody over tightened the packing and burned it up
whoever put this together left the backup rings out
they used the wrong gasket so it was leaking from the start
the last guy put silicone on the gasket and it's everywhere
there was silicone in the supply port so it wasn't getting air
the old crew put the seat in backwards with the gasket on top
we've had this one apart twice already this year for the same thing
this is the third seat we've put in this valve
it was just rebuilt two months ago and it's already leaking by
this diaphragm is brand new but it's got a cut in it
the new o ring is too small so i used the old one
the new stem is a quarter inch longer than the old one
the new packing is a little tight so it'll have to wear in
i put in a new spring but it's the same length as the old one
the new gasket is thicker so i had to watch the travel
the seat's cut on the bottom and the plug matches it
i see a wear mark on the plug and another one on the seat
the stem and guide are both galled together and i can't separate them
the plug and the cage are both scored so i'm replacing both
the upper and lower housings are rusted but they're still good
the bonnet and body threads look fine i cleaned them both
the inlet's pitted and the outlet is washed out
the o ring is swollen and the backup rings are extruded
the spring and the plate are fine but the diaphragm is torn
the packing's leaking and the packing nut is already all the way down
the regulator's fouled and the gauge on it is broke
the seat gasket and the cage gasket were both flattened
the bolts are rusted the nuts are rusted and one stud is broken
the diaphragm's hard the spring is weak and the stem's okay
i replaced the diaphragm and the o rings and cleaned up the rest
i put in new packing new gaskets and a new seat
i changed out the plug and the stem but kept the cage
i cleaned the cage the plug and the guide and they all look good
i greased the stem the guide and all the o rings
i pulled the actuator the bonnet and the cage to get to the seat
i checked the stem the plug and the seat and nothing's worn
i tightened the bonnet bolts and the packing and it quit leaking
we took out the seat and cage and sent them to the shop
we're reusing the spring and the plate and throwing the rest away
i replaced the upper diaphragm flipped the seat and lapped the plug
i flipped the seat put a new gasket under it and tested it at sixty
i repacked it stroked it ten times and it's not leaking
i lapped it put it back together and it's holding eighty pounds
cleaned it up greased it and put it right back together
pulled it apart found the spring broken and put in a new one
took the bonnet off and the whole thing was full of sand
opened up the actuator and found water and rust in the bottom
checked the diaphragm for holes and didn't find any
looked it over real good and i couldn't find any cracks
went through the whole valve and everything checked out okay
ran the valve up and down a few times and it freed up
had to drill out the vent hole it was plugged so tight
had to beat on it to get the cage to come out
tried to lap the seat but it's too far gone
tried tightening the packing but it's still weeping a little bit
ended up replacing the whole actuator because the housing was cracked
going to leave the guide in there it's got some life left
going to put new o rings on it and run it again
got the new seat in and i'm fixing to test it
got a little bit of a leak at the bonnet on the left side
got about a sixteenth of wear on the bottom of the seat
found a crack in the housing about two inches long by the top bolt
found some pitting on the stem about where the packing rides
found the lower diaphragm with a hole in it about like a pencil
seeing a lot of rust on the bolts down at the bottom
seeing some light scoring on the cage about half way down
i'm seeing gas bubbles around the indicator so the gasket's leaking
i'm feeling a catch in it about half way through the stroke
i'm hearing air from somewhere around the signal port
i can feel it drag when i push the stem through the guide
i can see a line worn into the plug about an eighth below the edge
i can move the plug side to side so the guide's worn
i could turn the packing nut with my fingers so it was real loose
i could not get the seat to budge even with a four foot bar
i can't get it to seal with this plug it's just too worn
i can't get the packing out it's like concrete in there
you can see right through the crack in the diaphragm
you can see where the sand cut right across the seat
you can tell the spring's been rubbing on the side of the housing
you can put your finger in the hole washed in this cage
you can't get a wrench on the nut because the corners are gone
you could hear it leaking as soon as you walked up
it's got a real bad gouge in the stem right below the connector
it's got a little rust on it but it'll clean right up
it's got a nick in the o ring groove and i smoothed it out
it's got brand new packing in it so i only looked at the trim
it's got the wrong spring in it that's why it opens late
it's got slop in the linkage and the pins are worn
it's got fresh oil in it and the breather is clean
it's missing the travel indicator and the cover for it
it's missing two housing bolts and the rest are all loose
it's supposed to have a gasket here but there isn't one
it's supposed to travel an inch but it's only going five eighths
it's been leaking out of the packing and running down the yoke
it's been blowing by so long that the seat's eat clear through
it's worn on the face but the edge is still sharp
it's cracked on the outside but it doesn't go all the way through
it's only leaking when the pressure gets up over a hundred
it's hard to turn but it's not stuck so i greased it
it's fine i checked it with a light and it's not cracked
it's just dirty there's nothing the matter with it
it's pretty bad so i'd go ahead and order a whole new one
it was full of water so i drained it and blew it dry
it was put together dry so i greased everything this time
it was tight when i got here so i don't think it's been apart
it was stuck so i put some oil on it and worked it free
it was worn a little bit on one side so i turned it over
that one had a cut in it so i replaced that one too
that seat's had it there's more metal gone than there is left
that gasket is shot so i'm gonna make a new one
that bolt's gonna have to be drilled out it broke off flush
that spring's broken and it cut up the inside of the housing
that stem is straight i checked it with an indicator at two thousandths
that plug has been turned down before so i don't want to cut it again
that packing is all dried up and falling out in pieces
that leak is coming from the cage gasket on the bottom side
that cage is okay i'll just clean it and put it back
those bolts are supposed to be at twenty five so i redid them
those two o rings are different sizes so don't mix them up
those threads are pretty rough but the nut went on
these gaskets are hard as a board and they won't seal again
these diaphragms are both stiff so i'm changing both of them
these bolts have all got rust on them but they're not bad
this seat's good on one side and bad on the other
this is the worst cage i've seen it's cut clear in half
this valve hasn't been greased in years and it's about seized up
this actuator has a slow leak and it takes about five minutes to bleed down
this side of the plug is smooth and the other side's all pitted
this spring is the right one but it's bent at the bottom
this bonnet won't come off so i'm going to use a pry bar
there's a hole in the diaphragm plate that shouldn't be there
there's a leak at the top of the indicator so i tightened the cap
there's a little rust in the cylinder but the seals are good
there's a groove wore in the guide so i put a new one in
there's a burr on the seat and it scratched the plug
there's a bad spot on the stem so i polished it
there's a good bit of wear on the bottom half of the guide
there's dirt packed around the spring and it can't compress all the way
there's mud up inside the housing from the dirt daubers
there's not a gasket on the bottom so i'm going to put one in
there's only one backup ring in here and it takes two
there's something stuck in the seat it looks like a piece of weld
there's way too much play in the stem where it goes through the bonnet
there's supposed to be ten bolts and i've only got nine
there's still a little weep at the packing so i'll watch it
there was a lot of trash between the seat and the plug
there was oil in the signal line so i blew it out
there was no grease on the stem at all so i greased it
there was gas coming out of the vent hole when i got here
there was a split in the o ring where it was glued together
there was rust built up behind the plate and it wore through the diaphragm
there were four nuts loose on the bonnet and i tightened them
there were two gaskets stacked up under the seat
there were no leaks so i put the cover back on
the top of the stem is mushroomed so i ground it down
the top edge of the cage has a chip in it
the bottom of the seat's in good shape so i turned it over
the bottom nut on the plug was loose so i tightened it
the center of the diaphragm is worn thin where the plate sits
the left side of the gasket was cut by the edge of the bonnet
the right side of the housing has a dent but no cracks
the inside of the bonnet was rusted and the stem was hitting it
the inside of the guide is rough and it needs to be honed
the outside edge of the diaphragm's been leaking it's got a dirt trail
the outlet side of the body is thin so i'd watch that
the inlet side of the seat is just like new
the face of the plug has three or four little pits in it
the edge of the seat is knocked down in two places
the groove for the o ring is corroded so it's going to leak
the hole in the guide is only half open so i cleaned it out
the upper part of the stem is okay but the lower part's rusted
the lower part of the cage is all washed away
the threads in the top of the body are damaged for about two turns
the whole bottom end of the plug is missing it's just gone
the first ring of packing came out fine but the rest was stuck
the middle of the spring is rubbed shiny on one side
the back side of the diaphragm is okay and the front's cracked
the valve has got to come out of the line to be fixed
the valve came in with the stem broken and the yoke bent
the valve is in pretty good shape for how old it is
the valve was leaking from the packing and leaking by the seat
the valve is stuck open about an inch and won't go either way
the valve's working good now it opens and closes smooth
the valve won't shut off so i'm going to pull it and look at the seat
the valve was slamming shut so i adjusted the spring
the valve has a bad vibration and it shook the bolts loose
the actuator's rusted but it's working and it's not leaking
the actuator is the wrong size so it can't close against the pressure
the actuator was loose on the bonnet so i tightened the yoke nut
the actuator bolts have all been replaced and torqued to twenty two
we tested the actuator with soap and there's no bubbles
we checked everything twice and i don't think it'll leak
we couldn't test it because there's no air out here
we didn't get to the stroke test because the compressor was down
we put the valve back in the line and opened it up slow
we're at full line pressure two eighty and nothing's leaking
i shut it in and watched the gauge and it dropped from sixty to fifty two
i had to stop because the gas detector went off when i opened the vent
i thought it was bled down but the gauge came back up to fifteen
i'm not opening this up there's no lock on the upstream valve
i got sprayed in the face with condensate when the bonnet came loose
i mashed my thumb getting the cage out so we're taking a break
we spilled about a gallon of oil when we drained the gear box
the spring's still got tension on it so i'm backing the screw off first
sierra delta victor four ten is next and it's a four inch fail open
okay this is t v two twenty one it's air to open and it's stuck
i've moved to p v six oh five alpha and the seat's leaking on it
we're on level valve three zero eight now it's a one and a half inch
this is a six inch valve so we had to use the hoist to pull it
the one inch high pressure valve was next and it had a bad stem
i need a cage gasket and four bonnet studs to finish this job
i'll have to pick up a new solenoid and a strainer screen in town
put down that i need a lower diaphragm and a set of o rings
order a stem connector for this one because i can't weld it
bring me a packing set and three gaskets in the morning
we have to order the body since the threads can't be saved
the seals looked good but i replaced them since it's been five years
the seals are hard and they've got flat spots all around
i oiled the seals and worked the stem and the drag went away
the shaft seal was torn so oil was getting past and out the bottom
i bent the pointer back and set it on zero with the valve closed
i caught the cage on the edge of the body and it nicked the bottom
the kit had two o rings missing so i used some from another kit
i used the whole kit on this except for the indicator gasket
i chipped the scale out from around the seat with a small chisel
i've been soaking the guide since this morning and it still won't budge
i've already replaced the diaphragm once so the plate must be cutting it
i've checked all the fittings on this one and only one was leaking
i've got the plug out and it's worn about a thirty second on one side
i've seen worse but i would still change that seat
i'd say the cage is about half plugged with scale
i'd like to replace the guide but i don't have a new one
i'll leave the bonnet gasket alone since it's not leaking
i'll clean the strainer and blow out the line before we start it
i'll put the breather back on after i clean the screen
i was able to save the stem by polishing out the scratches
i was going to lap the seat but it's got a crack in it
i went ahead and changed the guide o ring while it was apart
i went back over the bolts at forty five and two of them moved
i had one nut strip out so i replaced it and the stud
i had the plug turned in the shop and it's ready to go back
i had to make a gasket for the bottom of the float cage
i had to force the stem through so i'm pulling the packing again
i just wiped the spring off and put it back it's fine
i just cracked the inlet open and it started leaking at the flange
i set the stop at half an inch and the indicator reads fifty percent
i looked at the guide and the hole on the left is plugged
i looked up inside the bonnet and there's a gouge in the bore
i double checked the travel and it's an inch and an eighth
i hooked up my gauge and there's thirty eight pounds on the supply
i opened the bypass so we could take this one out of service
i turned the o ring over and it's cut on that side too
i pried the diaphragm off the housing and it tore at the edge
i washed the gasket surface with solvent and there's no nicks
i held the plug up to the light and the edge is rounded
i scratched the seat with my pick so i'm lapping it again
we lost the gasket when it fell so we're using another one
we pulled the positioner because the diaphragm in it was leaking
we cut the bolts off since none of the nuts would turn
we let the packing sit overnight and it needed another half turn
we had the trim coated last time and it's still washing out
we hit the valve with steam and the paraffin let go
we loosened the packing and now it strokes smooth from top to bottom
we should have changed that gasket it's leaking about five drops a minute
one side of the gasket is compressed more than the other side
one of the windows in the cage has a crack in the corner
two of the packing rings came out in pieces and one was missing
half of the vent hole was covered with paint so i scraped it
nothing's loose nothing's leaking and the stem's straight so i greased it
nobody put any thread sealant on this so the outlet threads are leaking
other than the o ring being pinched i didn't find anything
after the new diaphragm went in we put thirty pounds on and it held
after i replaced the seat gasket the leak went from forty bubbles to none
if the packing nut goes down any more it'll be on the bottom
if that gasket leaks again we'll need to machine the flange
even with a new seat it's still passing so the body is washed
so the seat's been lapped the packing's new and it's all back together
now that the fitting's tight the actuator is holding twenty two pounds
while i had the cover off i noticed the diaphragm nut was cracked
`;
