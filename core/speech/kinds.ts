/**
 * Kinds of words: those that stand in like places in what is said, a kind a line. Found by `findKinds` in the lines of
 * `said` and written here by `npx tsx server/commands/kinds.ts`, since finding them takes too long for a phone.
 */
const FOUND = `
the its their welding
one two three four five six seven eight nine drifted
it them her everything 'em em something refilled bear ladders
and showed
a per anti deer very
on under across behind below plugging clothed beside
is isn't arm's pin's bore's groove's bowl's tip's tube's spokes can's rod's insert's bleeds holder's relay's lever's
in brushed wheeled dated
was wasn't keeps
at between point's
seat piston allowed sniffer torques bean
L_a L_b L_c L_d L_e L_f L_g L_h L_i L_j L_k L_l L_m L_n L_o L_p L_q L_r L_s L_t L_u L_v L_w L_x L_y L_z number dash ray dehy
out away thin overnight late true
i we i'm they somebody we're i've he never she we've nobody haven't whoever nobody's you're always pumper should've spill's anybody treater's supervisor doc
stem bellows plunger motorbike
no external visible maximum dye loses depth sick
it's she's they're they've he's everything's something's nothing's gland's dump's delta's
with without
ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen spec limits
up together solid eggs slapped tooth realigned
bonnet cap cover pointer temporary wedge
new fresh different single bronze heavier doughnut goose manual
pounds meters pound metres days
cage which liner grass kettle
that those thrust
put ran add snap using popped pumped facing grab standing stamped whacked backups blowed
diaphragm gear model
packing bench jam burner stuffing lighter lean sample
plug face groove disc tip span clamp lathe vise flapper retainer skirt union fence sleeve forklift
alpha bravo charlie delta echo foxtrot golf hotel india juliet kilo lima mike november oscar papa quebec romeo sierra tango uniform victor whiskey xray yankee zulu unit fox
gasket O_ring bore bushing windows bush holder casket
so when before after since while if otherwise best means everybody
replaced reused installed replacing used removed calibrated lapping rebuilt fitted ordered repaired careful changing cleaning renewed blue zeroed discarded tightening calibrating saved scrapped redone centered borrowed stole retightened greasing logged faced fighting refitted released reconnected repacking
good cold rough sharp decent sound fair original nice shiny perfect chirping undersized
got getting putting compressed called seeing calling smelled lasted howling swing cinched
psi minutes seconds percent thousandths degrees bar times thou millimeters celsius kilopascals fahrenheit o'clock milliamps millimetres sugars fourths miles millimeter kits mil
off freely altogether upwind jumped square weighs hissed mentioning
bolts studs nuts bolting screws joint faces bolt's bolting's halves stud's cavity clamp's bearings
has shows hasn't hadn't collapsed drinks light's
body flange yoke gland shaft bracket cylinder nipple mounting stack
all brand nearly bouncing
back ahead creeps arrived cool tripped boxed
nut plate nut's plate's box arm itself rides follower set's cam cam's follower's flame ups pivot beam ruptured pot knot appointment
spring hmm spanner scrubber noise pipe's inside's burger other's rack kitchen
inch inches years months kilopascal
are look side's weren't binned band's charger's
hundred thousand roded mirror
for temp's gives lets humidity team
this another vee phone's preload blowdown
side pieces place places leg coils hours spots points steps milk gain extinguisher niner
threads corners edges manifold wires ears
valve line job bypass separator limit shift temp trace afternoon result location drum gun room crew style gravel customer's installation reflux operated socket
guide connector connector's runout assembly diameter diameter's forks
not already being hardly partly partially sticky three's action bleeder's removal
been slowed gotten
leaking holding threaded passing weeping blowing sitting loaded seeping showing hunting dripping hissing stroking dumping jumps controlling swinging burning warped turning bubbling staying making weeps venting overtightened serviceable leaning rated overdue seeps shallow windy
but because where till until except chuck sideways trued tweaked
test listening rate rate's test's detector's issue trips slip
be bother stay worry bare
down apart enough station clicks safe guard returned hunts acting rained
actuator pilot block level needle compressor day choke main gate fuel instrument bleeder wing isolation suction inner motor process house rush reminder outside's fifth
foot newton
about least maybe reading measures within minus roughly length's preloaded
eighth eighths sixteenth sixteenths quarter quarters thirds tenths turns hour weeks feet gallons sets alignment pictures barrels
found seen due heard reported given applied season
cleaned greased pulled changed checked lapped flipped drained blew swapped dressed straightened opened stroked inspected scraped polished leaving rodded vented filled chased kept threw hit soaped soaked fixed reset drilled thawed tossed repacked dug reusing loosened recalibrated hooked flushed honed picked retested pitched pressed oiled watched machined reinstalled worked rinsed steamed timed tapped welded heated undo sanded patched cycled keeping mounted bumped doped fished poked resealed matches redid smoothed soaking skipped unplugged reflared reassembled retapped bringing sparks cancel emptied vacuumed miked watching tied wrote assembled bagged leavin strain dismantled
both my his your these most coupling
housing case casing slag adjuster boot office
leak leaks wait damage leakage issues problem drips seep hiss problems drag sir rise debris meter's jumping blank creep further worries defects dice
open shut closed turn touch move budge match chisel mess lift hook atmosphere powder death gall hell
okay alright yeah working actually man hey yep jerky whoa pee nope retest ell unmute correct evening ah slowly partial static supposedly
washed coming wore running blown dried plumb runs thrown wall's squeezed fire's pushed blow wallered carried egged buffed bottomed pushing thinned spilling blazes meat
now passed then failed please passes confirmed stays string later inspection finishes staggered settled quits thanks overall position surprisingly
bottom top rest size lip account outer stores nose twin hoist capillary
minute bit picture couple fire piece photo lot rock file tap brush stone quart hair washer cup hammer chunk gallon bunch board pair matter dime screwdriver pint cheater hone bag pancake scraper torch tad pretzel whiff whistle coat stream sec sixth puff mask ridge million grinder sieve toothbrush lick pic tow camp
half die halfway star mile tolerance scuff
were aren't dog's turkey
O_rings hand seals gaskets diaphragms sides fittings ports ones seats springs gauges housings thumb ways phone flanges noon ends washers flats eye valves blocks wife knee directions hands pins others fingers lengths glasses things fault sizes lips flashlight palm pickup's knees hood floorboard stool parcel wipers tires rung liquor herself
by past once onto soon spit
needs had ain't gets drags ought makes re sprung
still only cross quit probably cycling live dribbling
edge inside outside list end center truck shop ground heater middle tank shelf treater floor press skid flare bin battery vessel money bead age plant centre panel road corner header findings seam wellhead freeze ninth clock tenth own lease truth conduit warehouse twentieth summer machine snubber bed hub farm crate plugs crane sun ticket freezer
lower upper balance power remaining bloody post
rust cracks wear pitting wrench corrosion scratches scoring erosion drawn mark pits galling nicks washout trouble marks tears bend cuts wheel drawing sweat score dull chips sheet puck flakes movement fouling loop kinks pan lube stretch sludge dents number's goin null knucklehead sleeping
pretty real severe slightly sour normal sandy badly better lightly egg kinda really oval heavily wrecked
cut pinched tore bleeding hurt cloth also rolled rubbing caught cutting gouged daubers hitting smashed crossed melted letting column chattering baked wearing sprayed sliced likewise blinded corrode coupled red forgotten
seat's plug's spring's stem's packing's body's guide's valve's bonnet's regulator's tubing's breather's actuator's trim's pilot's float's oil's positioner's fitting's controller's handwheel's yoke's line's solenoid's stroke's strainer's kit's air's truck's shell's ball's outlet's needle's lock's somebody's cage's fluid's filter's lower's disc's vent's drain's span's inlet's block's plunger's ferrule's linkage's gauge's job's operator's nozzle's spindle's wind's kid's vessel's fabric's tank's flange's blind's wing's salt's dog cooler's keyway
fine gone shot junk ripped toast stainless milky reusable knackered crimped unloaded acceptable flowing relaxed empty weepin passin grand
full fail none wide fully fails mid speak kind minimum lots rid normally cent
loose galled stripped seized intact damaged misaligned sealed unreadable unscrewed fogged slipping simmering engaged seated mush freezing separated cancelled
says think mean reads smell said wants mind reckon told miss believe meant saw missed asked supplied smelling guess thought bet doubt connected stepped prying pried declined tells noticed burped forgetting rode
torqued tightened adjusted snugged retorqued tried lubed pinned threadlocked decided forgot blued trying able capped talked heading reamed remachined staked uneven
left wrong well why saving received skip button major chocolate trimmed outstanding christmas gold
air gas nothing anything wind adjustment smoke readings
set tested held opens looked measured closes holds supply's signal's started upstream's takes shuts downstream's disassembled leaked sticks counted looking sit stops reseats lifts stayed pops leak's dumped disconnected gap's noted proved meets hydro's sat zero's clicked
travel adjusting clearance hysteresis energy breakaway
me us him daylight love myself dressing correctly direct force paper snot
as like plus wiring separator's beyond flipping y'all cake
inlet outlet reverse tee fabric
supply signal upstream downstream operator customer output seating exhaust boss meter book elbow foreman sensing discharge volume paperwork bank
there's that's what's here's who's shifts lockup's acts
from than or near into along above against nor during follows crosses unlike
some any light slight heavy hot pipe spilled minor hydraulic silicone penetrating warm oily losing cavitation pads excessive iron teeth dust bottom's
cracked torn stuck nicked dented flattened swollen kinked burnt split holed black hardened laying punctured covered wrinkled pegged squashed carbide slack lying
worn bent scored pitted corroded rusted eroded sticking rusty scratched extruded chipped dragging cocked sloppy mushroomed dropping faded carrying weathered frosted jammed however squealing
going went strokes goes starting moving starts supposed ready fixing wired according compared plain picking begins talking pot's breaker hotter glare appear hired
bled backed turned locked taken wiped run made moved dropped topped filed brought backing touched knocked upside built lifted sent freed screwed cleared doing laid marked fell shutting pressured write slid touching walked pointing taped stoned tearing shrunk twisted lifting rolling necked pressuring signed straightening switched strip dragged breaking grabbed
oh zero point class output's allows
just bubble dead finger mashed crushed feels almost likely quite having bone quiet proper putty slicker squished absolutely benched eyes
bad here service deep shape spot monday tuesday wednesday thursday friday saturday sunday easy crooked condition thick shaped hose town lengthwise shutoff kneeling shim weather scrub kindly ja drink
gauge positioner tubing breather regulator linkage trim strainer controller solenoid handwheel float fitting ball filter orifice nameplate ferrule ladder field gearbox bearing keeper lockup lid lugs booster
there port january february march april may june july august september october november december port's surface backwards surfaces yonder instead bits climbing chunks
little crack wire nick pinhole small dent tear spill hairline chip gouge pit few rag bigger coffee brass seize ding fingernail dozen blister burn crease pocket slide kink rub hockey bow track casting slit tiny special matching hammering matched pencil recheck wee sausage
an scorched
indicator screw indicator's screw's verified cap's fourth
oil soft ditto condensate rubber fluid contact dope metal grit glycol mute double hammered calls life methanol washing paint's sulfide screened welder joker fella stopping fired tyre
right parts ok steady each head tests home amine max south
bubbles more drops drop milliliters less millilitres quarts dollars pinholes
water sand scale ice mud grease paraffin dirt paint trash steam soap emery solvent weld stock play slop nitrogen operations acid calibration salt diesel wax bugs plastic rain threadlocker crud liquid hydrates varnish pliers course whack gunk wood shells
hole kit holes screen pin nest hole's coil relay glass nozzle rod bucket bowl tube puller insert circle thickness basket element window pack key throughout replacement heads clip wiper game stub nicely rim spool constantly engages lens wire's knob dryer won
have need want show ever rather talk recommend
missing clean broke broken rounded painted clear worse busted needed stretched snapped slipped rubbed wet somewhere worth sheared ruined mine shifted rotted rattling
tight hard flat dirty dry weak smooth slow straight brittle stiff tagged snug usable cracking spins completely bright great eh knife greasy eating yellow creased gritty early barely energized stained
plugged done froze stopped fouled packed finished chewed swelled beat frozen blocked eaten eat lined ate hung iced caked hanging hangs bolted clogged swole dinged coated locks buggered rotten creeping boogered binding sees ended gummed sluggish choked happy doubled scaled green evened clamped crusty aligned gunked bunged chockers
last next thread first second every third final spiral chemical crack's flash previous lead quitting wife's
over around through round anywhere underneath band soak
stroke shell stop start pick hydro listen closing opening nipped count testing setting pop
close go hold come check finish work bleed heat break wrap drill strong flush measure fill bite remember mix follow sea
vent bolt seal drain rebuild stud comm wall weep dauber repair goods wasp bug raised cotter jack bourdon mouse tie clevis sight chest
old same other whole spare big relief north blind sense worst dial
looks came moves works comes level's smells checks seems upper's dumps slides swings retained clips itself's grooves mikes button's faucet
lock tag torque burr drip hang tag's switch feedback serial wash fram waiting chain handle frost notes yolk dentist pinch tear's date white
took correction did sorry uh gave lost travel's does verify neither pulling yes um taking nah temperature's waited drove burned what'd where's photograph preload's corrosion's differential's reopen torque's where'd sun's spoiled
you what else how am many finally you've who we'd he'll thank act babe fellas brakes clicking
time thing pass locker year morning week trip tape part sealant month fall visit wound report guy deal try winter site story door weekend sandwich time's outage ringing week's figure serviced grown aid item car
ring rings area ring's area's belt four's killing
too again yet today isolated sure twice though even either complete tomorrow alone sits anyway type compound anymore anyhow yesterday stuff regardless evenly clears barrel everywhere fits nowhere aside certain naturally bends bicycle brisket
won't didn't can't can don't gonna might should could gotta i'd will i'll let's it'll doesn't wouldn't couldn't would we'll that'll must they'll el snaps oughta cannot wanna that'd shouldn't hauler
order note make scratch bring let take remark strike forget added remind repeat fit carbon delete shoot
low free long dump high short far control trapped globe much night ago shutdown lunch longer quick knockout angle turnaround felt flanged shorter dinner injection butterfly cast startup
get replace see change do read say leave call flip tell lap hear reuse find pull watch isolate swap give use feel keep fix scrape tighten know straighten send stick save throw push toss calibrate log catch dress wiggle install adjust dig trust pry drive thaw reach repack restock ship chase wipe help inspect cook knock
way record pad pattern scrap stand sealing building pump reason tailgate radio shade yearly joints wraps thicker river permit meantime chucked
diaphragm's gasket's one's housing's O_ring's seal's bushing's basket's cover's thing's screen's joint's coil's weld's handle's diagram
backup alarm monitor monitor's alarm's lantern knee's boy back's lucky detector smell's
pressure length pressure's temperature flow load range tension gap compression dent's loss complaint return tracks sign plenty travels height switches dance
`;

/** The words of each kind, by its name. */
export const KINDS: Readonly<Record<string, readonly string[]>> = Object.fromEntries(
  FOUND.trim()
    .split("\n")
    .map((line, at) => [`K_${at}`, line.split(" ")]),
);
