/**
 * Talk about anything but the valve at hand. A clause about one of these gives no entries; an idiom hides the trade
 * words inside it.
 */
export const TALK = new Set(
  `sushi skillet tablespoon tablespoons bowling payment payments fee heart pickle pickles mattress homecoming parade pool hearing wine barber haircut blood draft ears wedding funeral movie movies diet pound-cake grocery groceries cash teacher homework daycare insurance mortgage rent landlord plumber electrician mechanic carpet curtains garden lawn tomato tomatoes corn beans rice soup stew gravy sauce pepper ketchup mustard
  truck trucks diesel pickup car tire tires tyre tyres trailer tailgate windshield engine transmission brake brakes clutch radiator tractor mower boat bike motorcycle rig hitch bumper
  wife husband kid kids boy girl son daughter mom momma dad daddy mama brother sister uncle aunt cousin grandma grandpa buddy babe baby honey neighbor family friend girlfriend boyfriend dog dogs cat cow cows horse snake
  runny coffee egg eggs biscuit biscuits slices slice bicycle lunch dinner supper breakfast sandwich burger burrito taco pizza donut donuts doughnut doughnuts beer water soda drink drinks eat eating ate sugar cooler jerky chips candy food hungry thirsty gum tobacco cigarette smoke smokes
  game ball football baseball basketball score touchdown coach team playoffs season inning ninth quarterback fish fishing hunting deer golf bass lake gym benched squat
  phone cell text texted called voicemail email radio tv music song movie show news
  weather rain raining snow snowing storm wind windy hot cold sun sunny humid forecast lightning thunder heat heatwave sunburn
  doctor dentist hospital appointment nurse surgery knee knees back shoulder elbow tooth teeth headache stomach belly cold flu fever hangover ears
  boots boot gloves glove hat hardhat jacket coat shirt socks pants jeans glasses sunglasses belt
  money paycheck check raise overtime pay paid bill bills taxes loan bank dollars bucks vacation holiday christmas thanksgiving birthday weekend friday saturday sunday monday tuesday wednesday thursday church school party meeting
  house home kitchen sink shower toilet roof garage couch bed yard fence gate road highway ditch motel hotel store town street driveway
  supervisor dispatcher boss hired fired quit promoted salesman inspector cop sheriff trooper
  chair couch sofa table stool recliner bleachers bus plane airplane concert theater
  joke funny laugh laughing story remember
  ladder hose extension generator compressor forklift crane welder grinder drill
  gutter gutters leaves attic sidewalk county
  mosquito mosquitoes bugs flies wasps bees fireants ants spider
  salad steak chicken barbecue brisket bread cookies pie cake ham bacon eggs milk tea juice apple
  computer laptop printer paperwork invoice password battery charger
  lotto lottery bet poker cards
  guitar drums band piano
  knees ankle hip wrist neck
  carburetor alternator muffler odometer pedal dashboard seatbelt horn headlights headlight wiper wipers piston crankshaft camshaft
  mattress bathtub faucet dishwasher freezer fridge microwave oven stove dryer lawnmower
  nap sleep tired sleepy bored drunk`.split(/\s+/),
);

/**
 * Words of the job that no entry is made of: they come back unread, and make nothing that stands beside them foreign
 * ("took eleven seconds to close, that's too slow").
 */
export const OF_THE_JOB =
  `item items retest retests retested retesting slow slower slowly fast faster quick keyway keyways globe complete completed relay nameplate gearbox
  soak soaked soaking penetrating penetrant overnight
  coil coils armature armatures terminal terminals wiring conduit conduits click clicks clicking clicked buzz buzzes buzzing hum hums humming
  leg legs lug lugs taper tapered radius chamfer chamfers bevel bevels window windows slot slots orifice orifices nozzle nozzles flapper flappers bellows
  bypass manifold manifolds header headers separator separators treater treaters vessel vessels bleeder bleeders drain sightglass pig launcher wellhead flowline
  tap taps tapped tapping bump bumped bumping jiggle jiggled wiggle wiggled popped creeping creep creeps drift drifts drifting
  stamped stamping casting forging quart quarts pint pints gallon gallons difficulty
  particularly advisable straightness flatness roundness squareness tolerances period stretch hurts access turnaround outage startup shutdown`.split(/\s+/);

/** Things of a valve that the log has no code for, of two words. */
export const NAMELESS = [
  ...["snap", "retaining", "split", "lantern"].flatMap((kind) => [`${kind} ring`, `${kind} rings`]),
  "needle valve",
  "needle valves",
  ...["tag", "name", "data", "id", "stamp"].flatMap((kind) => [`${kind} plate`, `${kind} plates`]),
];

/** Said of a part and no fault of it: what is in it is drained. */
export const HOLDS_LIQUID = ["full of", "filled with", "half full of"].flatMap((full) =>
  ["water", "condensate", "liquid", "fluid", "air", "gas"].map((what) => `${full} ${what}`),
);

/** Tools and what stands about: named in passing, they neither help nor hinder. */
export const TOOLS = new Set("lathe wrench socket hammer screwdriver pliers ratchet torch vise rag rags bucket flashlight spanner mirror wire brush pipe bar pick scraper chisel gauge emery cloth pan tote rod bench sawhorse towel clamp bracket pin pins cotter clip key screw screws washer washers shim shims cap lid chain hook pry pried".split(" "));

const CALLED = "(base|dispatch|control|shop|office|(truck|unit|rig|crew|pad|car) [(one|two|three|four|five|six|seven|eight|nine|ten|1|2|3|4|5|6|7|8|9|10)])";

/** Who calls and is called on the radio: what stands beside it is said to the log all the same. */
export const CALLS = [
  `(copy|copy that|roger|roger that|ten four|10 4|10-4|go ahead|come in|stand by|standby|affirmative|come back) ${CALLED}`,
  `${CALLED} (to|this is|calling|from|go ahead|come in|copy|copies) ${CALLED}`,
  `${CALLED} (go ahead|come in|copy|copies|over|stand by|standby)`,
];

const TROUBLE = "(leak|leaks|problem|trouble|culprit|issue)";

/** What is said about what was found and finds nothing itself: "that's where your leak was". */
export const ASIDES = ["no problem", 
  `(thats|that was|that is|heres|here is|theres|there is) where (the|your|our|my|that) ${TROUBLE} (was|is|were|comes from|came from|is coming from|was coming from)`,
  `(thats|that was|theres|there is|heres|here is|found) (your|our|my|the) ${TROUBLE} [(right here|right there|there|here)]`,
  `so (thats|that was) (the|your|our) ${TROUBLE}`,
  "(heat applied|applied [some] heat|used [some] heat|with [some] heat|put [some] heat (on|to) it|heated it [up])",
  "in particular",
  "as a matter of (course|fact|routine)",
  "[way] out of (cal|calibration)",
  "[from] top to bottom",
  "blocked in",
  "(leaking|weeping|seeping|dripping|leak|weep|drip) (stopped|quit)",
  "[(its|it|and|has|have)] (quit|stopped) (leaking|weeping|seeping|dripping|sticking)",
  "(heat|heated) (the|that|it)",
  "(tighter|harder|stiffer|drier|looser|slicker|flatter|crookeder) than [(a|an|my|the)] [(old|new|wet|dry)] (drum|tick|rock|brick|bone|goose|glass|board|pancake|banjo|grandma|hammer)",
  "like (a|an) [(old|stuck|scalded)] (banshee|stuck pig|hog|sieve|faucet|freight train|dream|champ|rock|sponge|raisin|pancake|pretzel|banana)",
  `(thats|that is) why (its|it was|it is|shes|she was|its been|hes) (leaking|sticking|binding|leaking by)`,
];
