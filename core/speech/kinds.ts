/**
 * Kinds of words: those that stand in like places in what is said, a kind a line. Found by `findKinds` in the lines of
 * `said` and written here by `npx tsx server/commands/kinds.ts`, since finding them takes too long for a phone.
 */
const FOUND = `
the its their
one two three four five six seven eight nine drifted dehy
it them everything her 'em em daylight bear
and always
a brand per very
on under across behind near below above onto plugging beside unlike
is isn't pin's arm's feels groove's bowl's coil's tube's spokes can's rod's insert's clamp's relay's wire's
in brushed against wheeled ups
was wasn't keeps
at between temp's point's
out head true
i we they somebody i've she we've nobody haven't whoever re should've spill's babe
L_a L_b L_c L_d L_e L_f L_g L_h L_i L_j L_k L_l L_m L_n L_o L_p L_q L_r L_s L_t L_u L_v L_w L_x L_y L_z ray dash
stem bellows tailgate pipe's
it's she's they're they've everything's nothing's gland's
with without
no ah beyond tracks teeth sick
ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen spec
up together solid
bonnet flange cap gland temporary
new fresh different single bronze heavier
pounds meters metres kilopascal
cage adjusting grass gearbox river
that those who
put ran snap neither smashed popped burned where's facing drove backups
diaphragm bearing
alpha bravo charlie delta echo foxtrot golf hotel india juliet kilo lima mike november oscar papa quebec romeo sierra tango uniform victor whiskey xray yankee zulu fox
packing handwheel burner operator's torques
plug disc orifice cylinder span refilled union fence boot capillary bean shade
gasket gasket's holder joint's clip switches casket
so when before while if best where'd
good worse cold crooked decent fair nice reusable perfect mine unloaded early
replaced reused installed used calibrated rebuilt ordered fitted fixed reset careful repaired disassembled zeroed marked saved discarded missed redone centered shrunk binned retightened faced fighting stole released reconnected trimmed soaking uneven forgotten
got getting mashed called making smelled dated gotten lasted benched
off spot away type altogether spots jumped square
bolts studs nuts bolting screws joint bolt's bolting's halves stud's cavity cap's game bearings
psi minutes seconds percent thousandths degrees bar times millimeters thou kilopascals celsius pattern fahrenheit days milliamps o'clock quarts points hours fourths kits mil sugars
body yoke operator ball customer bracket tank nameplate boss foreman lean
has shows hasn't weighs hadn't
all along plumb verified nearly bouncing clothed frosted
back ahead hangs overnight locks creeps cool
spring pin arm coil cover relay glass shaft bowl pointer cam spanner mounting result basket noise flame stub pivot screened bleeds gain lens knob
inch inches years months millimeter
nut plate nut's box itself rides follower stack follower's pan rim ruptured pot knot
hundred thousand star roded mirror
are look weren't tip's likewise band's
for gets plus showed gives during thank lets follows crosses
valve tag dump job level number control bypass separator needle choke globe switch shutdown compressor pump valves station knockout suction scrubber location drum complaint angle room flanged handle house style gravel customer's separator's lucky model butterfly reflux
this another vee unit
threads corners edges manifold wires clips grooves ears
side pieces place places leg coils compound steps niner barrels millimetres
guide connector soft connector's assembly diameter's
not just already badly being kinda hardly almost partly having partially rather absolutely
been slowed spoiled
leaking holding passing weeping blowing sitting loaded bleeding showing hunting dripping seeping looking stroking hissing dumping smelling controlling seeing swinging burning home turning bubbling pegged staying melted weeps venting eating serviceable rated overdue tripped windy burped swing
but because where since until till except chuck means sideways trued
be bother stay worry force
down apart steady thin clicks safe lengthwise hunts arrived hissed clears bends
found seen received plain given applied separated squished
eighth eighths sixteenth sixteenths quarter quarters thirds tenths turns hour weeks feet gallons bone stream sets pictures
about maybe least reading measures within roughly makes minus preloaded height howling
actuator shell bench hydro maximum allowed wedge clevis lighter sight
foot newton
test rate set's rate's test's rack engages
cleaned greased pulled checked changed lapped flipped drained dressed swapped opened straightened removed scraped inspected polished rodded chased vented filled kept soaked dropped hit tossed repacked drilled thawed dug loosened hooked built lifted sent freed flushed honed pitched oiled picked watched retested cleared machined recalibrated reinstalled tapped welded heated undo patched slid rinsed steamed mounted scrapped doped disconnected sanded walked fished resealed redid smoothed buffed unplugged overtightened poked reassembled retapped bringing sparks cancel emptied vacuumed miked evened watching tied dragged assembled bagged
both cross these
housing face surface case casing surfaces
okay correction alright sorry uh yeah actually ok yep yes whoa um nope ell waited unmute nah what'd blinded thanks torque's fourth coupled bloody
open shut closed turn move chisel mess lift likely atmosphere powder mix death bed follow gall chucked hell
leak leaks wait damage leakage trouble issues problem drips seep saving sweat hiss problems sign drag notes sir rise washing jumping creep further permit worries defects
now passed then failed please passes tomorrow confirmed anyhow mute stays correct later inspection staggered settled shutoff quits shifted position surprisingly
lower piston seating thrust scuff
half die halfway mid limits mile plenty manual blank
washed coming wore locked running taken blown dried rolled upside runs pressed rubbed squeezed thrown fire's pushed blow wallered pointing taped egged bottomed necked pushing rotted retained thinned mikes carried blazes meat
were aren't ever dog's
minute bit picture couple piece fire photo lot rock tap brush file stone quart fram hair bucket cup hammer chunk bunch board pair matter dime screwdriver pint loss hone gallon bag pancake torch puck tad pretzel whiff whistle slit knife coat sec sixth sieve toothbrush lick pic tow appointment
O_ring screw O_ring's bore bushing ports screw's clearance rubber which tip goods windows bushing's bore's retainer otherwise bush sleeve holder's
by from or past into once
edge list end center truck shop ground pad heater middle shelf treater skid floor press flare vise vessel money bin bead age plant lathe turnaround panel phone skirt corner header findings seam freeze ninth clock own outage truth conduit warehouse hoist extinguisher snubber hub farm flashlight crate plugs crane sun ticket
still only quit probably he'll live
needs had ain't drags ought wiring travels begins spit
upper balance power raised remaining
rust cracks wear pitting grease corrosion scratches scoring erosion drawn pits galling hang nicks washout marks tears bend dope cuts drawing adjustment score threadlocker frost flakes movement life fouling loop debris kinks sludge dents number's joker null
cut broke pinched split tore snapped also cloth slipped rubbing wash caught waiting cutting gouged hitting daubers spins column baked bright sprayed sticky sliced sluggish corrode stamped spilling shallow
here replacing sure hurt alarm changing why cleaning tightening touching calibrating great upwind dressing straightening creased certain repacking yonder
full fail free none wide fully fails quick speak most minimum lots partial normally
seat's diaphragm's plug's spring's stem's packing's body's guide's valve's housing's bonnet's regulator's tubing's plate's actuator's breather's trim's pilot's oil's positioner's fitting's float's controller's handwheel's line's yoke's solenoid's stroke's strainer's upstream's kit's air's seal's shell's ball's needle's basket's lock's cover's screen's cage's filter's outlet's disc's truck's cam's vent's drain's span's inlet's block's plunger's linkage's gauge's job's paint's inside's nozzle's kid's vessel's fabric's weld's tank's outside's flange's handle's blind's lever's salt's diagram
fine gone dry smooth slow straight junk easy toast crushed freely original unreadable late milky ruined knackered faded crimped guard acceptable grown flowing relaxed wind empty weepin passin mentioning socket
loose stripped galled intact damaged misaligned sealed crossed unscrewed slipping simmering engaged seated mush
set tested held looked measured holds lost supply's moved signal's takes leaked counted stops reseats stayed due leak's dumped soak fluid's testing reported noted proved retest meets hydro's sat clicked trips
air gas high nitrogen metal chips methanol smoke external readings dust
as like after y'all
there's what's spilled temperature's losing grab who's shifts preload's corrosion's differential's lockup's sun's whacked
says than reads wants mind asked supplied nor declined fellas
left think well mean said smell lapping reckon told compressed miss believe meant push strong saw guess thought skip button bet heard stepped prying pried noticed christmas gold forgetting hired
torqued tightened adjusted snugged listen brought retorqued tried pinned lubed pressured threadlocked decided forgot cycled blued matches trying able capped talked heading reamed remachined clamped staked
travel stroke torque length travel's gap runout count diameter double return gap's hysteresis adjuster preload length's pop breakaway
supply signal upstream downstream output each exhaust glycol elbow process sensing wellhead sense discharge dial injection operated scorched
have need did do want am show quite talk recommend
me listening us him pads rid everybody correctly direct paper snot
bubble dead finger severe sour normal sandy pee rotten phone's ferrule's supposedly cast coupling
zero oh point class output's allows
inlet outlet reverse other's tee fabric
took blew bled backed turned stroked leaving gave wiped run made threw putting soaped topped opening filed touched reusing pulling backing knocked laid worked doing taking timed write using shutting pumped bumped stoned tearing letting lifting wraps rolling pressuring signed reflared switched strip acts breaking grabbed leavin glare strain
worn bent cracked torn scored pitted corroded eroded sticking nicked rusty scratched swollen dented extruded chipped kinked needed holed hung ripped jerky sound warped wrinkled punctured chattering dull mushroomed wearing undersized jammed stained
clean dirty low painted clear isolated working tagged complete closing snug black dragging stainless rough wet somewhere cracking sloppy quiet refitted carrying leaning rattling barely
some nothing any light anything slight heavy hot blue minor silicone warm hydraulic penetrating oily excessive myself dye bottom's depth fella
gauge positioner breather regulator pilot linkage trim strainer controller solenoid float filter feedback ferrule meter book lip nipple flapper field motor plunger yolk centre lockup pinch lugs booster
went strokes goes opens closes moving moves starts started works comes shuts sticks screwed sit lifts jumps pops dumps twisted slides swings zero's pot's breaker
little crack wire nick wrench pinhole small mark dent spill tear chip hairline burr pipe gouge pit few rag bigger brass coffee ding fingernail cheater dozen blister crease scraper pocket kink rub hockey track casting tiny special matching burn puff ridge stretch putty slide million hammering matched recheck wee dentist
indicator block indicator's limit main gate wing cotter isolation inner rush blowdown issue fifth
bad deep long shape short far though much ago condition thick sharp longer shaped many worth dinner kneeling weather scrub ja startup
backup fuel instrument lantern loses
missing hard broken flat rounded weak flattened shot brittle stiff stretched busted renewed squashed sheared shiny eh borrowed proper thicker gritty weathered energized
go going come starting enough supposed ready fixing wired according compared picking dropping standing talking appear
there hand january february march april may june july august september october november december monday tuesday wednesday thursday friday saturday sunday something backwards stock operations acid grit lunch string hands noon town others instead cavitation stores bits pliers installation shim wood chunks palm knees
bottom top inside outside rest size kind outer nose tenth account twin twentieth machine meantime
oil water sand scale ice mud paraffin dirt paint trash steam soap condensate emery solvent fluid contact play slop calibration salt wax bugs diesel plastic rain crud sheet liquid hydrates varnish course whack gunk outstanding shells
hole kit groove holes screen nest hole's nozzle rod tube washer puller circle thickness slag hose element window blind pack key throughout replacement heads wiper spool grinder constantly weekend dryer won
tight service usable eggs slowly ringing
bubbles more drops drop milliliters pound millilitres pinholes
over around through round band barrel action yellow
my thread your his spiral anti acting iron white
that's i'm one's we're tag's does downstream's here's side's monitor's alarm's he's something's nobody's thing's somebody's you're three's finishes lower's dump's crack's wind's bleeder's reopen smell's delta's wing's anybody treater's
vent bolt seal drain rebuild stud wall comm weld weep clamp repair bug dauber wasp battery bourdon welding sniffer mouse tie
looks came level's fell smells wall's checks seems upper's collapsed itself's button's
lock jam ditto drip monitor serial gear stuffing mask date carbon wife
you what gonna never he else better how hey less that'll hmm you've finally shorter evening love paperwork pumper wanna we'd hotter slicker kindly act supervisor
old same other whole second spare third big relief north chain volume yearly worst reminder previous
close replace see hold change say leave call check flip finish lap touch hear reuse find work pull bleed watch budge match isolate break swap feel keep wrap fix scrape drill tighten know stick save throw toss straighten calibrate flush measure catch fill dress wiggle hook install adjust setting dig trust pry drive bare reach flipping photograph repack restock remember ship chase wrote inspect sea
time thing pass locker year morning tape trip week man part sealant thumb shift insert visit wound month report guy deal seize try eye winter trace fall site stuff afternoon story gun crew fingers time's milk glasses boy knee week's sulfide figure fault serviced door pencil aid item pickup's
plugged done finished packed fouled blocked caked coated covered clogged felt calls calling choked happy logged overall slack crusty aligned chockers
note make scratch pick remark strike forget verify repeat keeping nipped chemical doubt jack ended lube max delete shoot
ring rings area ring's area's four's energy welder
too again pretty yet real today twice even slightly either anywhere alone sits anyway lightly underneath egg anymore really soon regardless evenly completely oval everywhere cycling fits green heavily aside naturally
last next first every day heat night final amine yesterday chocolate flash lead quitting sample
won't didn't can't can don't should could might i'd will gotta i'll let's doesn't it'll wouldn't couldn't we'll would must they'll el snaps that'd shouldn't
tubing line port fitting port's wheel bleeder liner beam
stuck rusted seized burnt froze stopped swelled chewed beat frozen eaten lined eat iced hardened ate hanging cocked bolted dinged laying swole hammered fogged creeping boogered binding sees carbide buggered doubled scaled nicely returned freezing gummed lying boxed gunked bunged
order get bring let take read start stop tell add added give use remind send fit log wipe help killing cook
way right wrong record scrap stand sealing tests reason ladder joints radio summer lips goin
O_rings seals diaphragms gaskets threaded sides parts fittings ones seats springs faces gauges housings ways flanges ends washers flats blocks directions pins lengths things sizes
pressure pressure's temperature flow trapped load range tension temp building compression dent's connected meter's climbing static detector tear's seeps red
`;

/** The words of each kind, by its name. */
export const KINDS: Readonly<Record<string, readonly string[]>> = Object.fromEntries(
  FOUND.trim()
    .split("\n")
    .map((line, at) => [`K_${at}`, line.split(" ")]),
);
