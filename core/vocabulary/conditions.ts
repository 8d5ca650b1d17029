import type { Condition } from "../shapes/codes.ts";

/**
 * What the eye or hand finds. Words stand apart by how they are used, since that decides what they are said of:
 * `is` follows its part ("seat is worn") or stands before it ("worn seat"); `has` is a thing found on a part
 * ("a crack in the bonnet"); `does` is what the part does ("it leaks") and never stands before it.
 */
export interface ConditionRow {
  code: Condition;
  name: string;
  is?: string[];
  has?: string[];
  does?: string[];
  help: string;
  iso?: string;
}

export const CONDITION_ROWS: ConditionRow[] = [
  { code: "ok", name: "good", help: "looked at and good", is: ["[(pretty|real|very|still|all|in)] good [shape]", "fine", "ok", "okay", "o k", "in (good|great|decent|fine|okay|excellent|nice) (shape|condition|order|nick)", "good condition", "decent", "alright", "all right", "like new", "serviceable", "perfect", "great", "acceptable", "satisfactory", "sound", "clean", "usable", "(nothing|not a thing|nothin) wrong [with (it|that|this|them|her)]", "[no] complaints", "(within|in) spec", "(checks|checked) out", "as good as new", "not [(too|so|that|half)] bad [at all]", "(aint|isnt|wasnt) (a thing|anything|nothing) wrong [with (it|that|this|them|her)]", "excellent", "solid", "looks great", "(looks|look|looking) [(like|brand)] [brand] new", "straight", "slick", "smooth", "clear", "in tolerance", "within tolerance", "no (issues|issue|problems|problem|defects|defect|faults|complaints) [with it]"] },
  { code: "worn", name: "worn", help: "material gone from use", iso: "2.4", is: ["worn [out|down|through]", "worn beyond limits", "bald", "thinning", "wore [out|down]", "worn out", "worn down", "wore out", "wore down", "wearing [out|down]", "wearing thin", "worn thin", "wallowed out", "egged out"], has: ["wear", "wear (mark|marks|pattern|groove|ring|line|band)"] },
  { code: "eroded", name: "eroded", help: "cut away by flow or sand", iso: "2.3", is: ["eroded", "sand cut", "sandcut", "sand blasted", "sandblasted", "wire drawn", "wiredrawn", "steam cut", "flow cut", "cut by sand", "eroding", "wire cut", "fluid cut"], has: ["erosion", "sand cutting", "wire drawing", "wiredrawing", "sand cuts", "sand erosion"] },
  { code: "washed_out", name: "washed out", help: "seat or body cut away by flow", iso: "2.3", is: ["washed out", "washed", "wash out", "flow washed", "washed away"], has: ["washout", "washing"] },
  { code: "corroded", name: "corroded", help: "eaten by rust or chemicals", iso: "2.2", is: ["corroded", "rusted [up|out|over|through]", "rusty", "rusting", "corroding", "eaten up", "eaten away", "eat up", "ate up", "rusted solid", "acid cut", "acid eaten", "eaten", "rotted [out]"], has: ["rust", "corrosion", "rust pits"] },
  { code: "pitted", name: "pitted", help: "small pits", iso: "2.2", is: ["pitted"], has: ["pitting", "pits", "pit", "pit marks", "pock marks", "pin pits"] },
  { code: "scored", name: "scored", help: "deep lines along the travel", iso: "2.4", is: ["scored", "gouged", "grooved", "scored up"], has: ["scoring", "gouge", "gouges", "score marks", "score mark", "score", "score line", "score lines", "gouging"] },
  { code: "scratched", name: "scratched", help: "shallow lines", iso: "2.4", is: ["scratched [up]", "scuffed [up]"], has: ["scratch", "scratches", "scratching", "scuff", "scuffs", "scuff marks"] },
  { code: "nicked", name: "nicked", help: "a small chip from an edge", is: ["nicked [up]", "dinged [up]"], has: ["nick", "nicks", "ding", "dings", "burr", "burrs"] },
  { code: "cut", name: "cut", help: "cut by an edge or a blade", is: ["cut", "sliced", "got cut", "cut up", "cut through", "sliced through", "cut in two"], has: ["a cut", "cuts", "slice", "slices", "cut mark"] },
  { code: "cracked", name: "cracked", help: "a crack, or a split in metal", iso: "2.5", is: ["cracked", "cracking", "split", "fractured", "checked with cracks"], has: ["crack", "cracks", "split", "splits", "fracture", "fractures", "cracking"] },
  { code: "torn", name: "torn", help: "rubber ripped or split", iso: "2.6", is: ["torn [up|out|loose]", "tore [up]", "ripped [up]", "ruptured", "shredded", "tearing", "blown", "blew out", "blown out", "busted out"], has: ["tear", "tears", "rip", "rips", "rupture"] },
  { code: "holed", name: "holed", help: "a hole through it", is: ["holed [through]", "punctured", "blown through", "perforated", "has a hole", "poked through", "worn through", "pinholed", "wore through", "eaten through", "rusted through"], has: ["pinhole", "pin hole", "pinholes", "pin holes", "puncture", "punctures", "perforation", "(hole|holes) [[(blown|worn|rusted|eaten|cut|punched|poked|burned|rubbed|wore)] [(clean|right|all the way|plumb|clear)] (through|in it)]"] },
  { code: "bent", name: "bent", help: "not straight any more", iso: "1.4", is: ["bent", "deformed", "distorted", "bowed", "bent up", "not straight", "out of straight", "warped", "twisted", "buckled", "bent over"], has: ["bend", "a bow", "kink in the stem"] },
  { code: "broken", name: "broken", help: "in pieces", iso: "2.5", is: ["broken [off|up|in two|in half|in pieces]", "severed", "come apart", "fell apart", "parted", "broke [off|up|in two|in half|in pieces]", "busted [off|up|in two|in half|in pieces]", "snapped [off|in two|in half|clean in two|clean off]", "sheared [off|clean off]", "shattered", "twisted off", "(snapped|broke|broken|sheared) clean (off|in two|in half|through)", "in two pieces", "bust"], has: ["break"] },
  { code: "stripped", name: "stripped", help: "threads pulled away", is: ["stripped [out|off]", "stripping", "pulled out threads", "stripped out"] },
  { code: "galled", name: "galled", help: "metal smeared by rubbing", is: ["galled [up]"], has: ["galling", "gall marks"] },
  { code: "seized", name: "seized", help: "will not move at all", iso: "1.5", is: ["seized [up|solid]", "stuck [solid|fast|tight|closed|shut|open]", "froze up", "frozen up", "froze solid", "frozen solid", "frozen in place", "locked up", "rusted solid", "bound up", "rust welded", "seized in place", "jammed [up]", "hung up", "froze"], does: ["wont (move|budge|turn|come loose|come apart|back off|come out|break loose|slide|spin)", "will not (move|budge|turn|come loose|come out)", "doesnt move", "does not move", "cant (move|budge|turn) it", "refuses to move", "wouldnt (budge|move|turn)"] },
  { code: "sticking", name: "sticking", help: "moves but drags", iso: "1.5", is: ["sticky", "draggy", "binding", "gummed up", "gummy", "stiff"], does: ["sticking", "sticks", "drags", "dragging", "binds [up]", "hangs up", "hanging up", "catches", "catching", "jerky", "moves rough", "slow to move", "notchy"] },
  { code: "loose", name: "loose", help: "not tight", iso: "1.5", is: ["loose", "came loose", "come loose", "backed off", "backed out", "backing off", "backing out", "not tight", "rattling", "sloppy", "wobbly", "wobbles", "came unscrewed", "worked loose", "vibrated loose", "finger tight", "slack", "loosened [up]", "wiggles"], has: ["slop", "play", "looseness"] },
  { code: "missing", name: "missing", help: "not there", is: ["missing", "gone", "not there", "wasnt there", "isnt there", "fell off", "fell out", "lost", "no longer there", "nowhere to be found", "not in there", "never put back", "left out"] },
  { code: "leaking", name: "leaking", help: "lets fluid by", iso: "1.1", is: ["leaky", "(sprung|sprang) a leak"], does: ["leaking", "leaks", "leak", "weeping", "weeps", "seeping", "seeps", "dripping", "drips", "blowing air", "leaked", "bleeding air", "leaking air", "passing air", "spraying", "blowing", "weeped", "wept", "hissing"], has: ["leak", "leaks", "leakage", "seep", "weep", "seepage", "drip", "(air|gas|oil|fluid|grease) [is] (coming|blowing|leaking|hissing|bubbling|squirting) out [of]", "air leak", "air leaking", "gas leaking out", "air hissing", "external leak", "(air|gas) (from|blowing from|coming from|hissing from|leaking from)"] },
  { code: "plugged", name: "plugged", help: "a hole or line blocked", iso: "5.1", is: ["plugged [up|off|solid|shut]", "restricted", "blocked [up|off|solid]", "clogged [up|solid]", "stopped up", "choked [off|up]", "packed (full|solid|up) [of|with]", "obstructed", "bunged [up]", "painted", "mudded up", "plugging [up|off]", "clogging [up]", "blocked by", "iced shut", "painted over", "painted shut", "caked shut"], has: ["blockage", "obstruction", "plugging", "mud dauber nest", "dauber nest", "wasp nest", "ice plug"] },
  { code: "fouled", name: "fouled", help: "dirt, scale, paraffin, sand or debris on it", iso: "2.7", is: ["fouled [up|out]", "dirty", "filthy", "nasty", "gunked up", "caked [up|with|in|over]", "crusted [up|over|with]", "coated [with|in]", "scaled [up|over]", "sanded up", "full of", "packed with", "cruddy", "grimy", "crudded up", "covered in", "covered with", "loaded with", "paraffined up", "waxed up", "salted up", "gritty", "scaly", "muddy", "sandy inside", "filled with", "mucked up", "paraffined [up]", "stuck to", "contaminated"], has: ["scale", "paraffin", "debris", "sand", "dirt", "crud", "gunk", "buildup", "build up", "deposits", "wax", "salt", "mud", "trash", "sludge", "grit", "fouling", "scale buildup", "sand buildup", "paraffin buildup", "iron sulfide", "scaling", "gunk in it", "rubbish", "rocks", "grime", "junk in it", "residue", "asphaltene", "asphaltenes", "shavings", "metal shavings", "swarf", "solids", "deposit", "muck", "goo", "metal filings", "thread tape", "pipe dope"] },
  { code: "swollen", name: "swollen", help: "rubber has taken up fluid", is: ["swollen [up]", "swelled [up]", "swelling [up]", "swole [up]", "puffed up", "bloated", "blistered", "ballooned"], has: ["swelling", "blisters"] },
  { code: "hardened", name: "hardened", help: "rubber gone hard or brittle", is: ["hardened [up]", "hard [as a rock]", "brittle", "gone hard", "hardening [up]", "cooked hard", "stiffened", "dried out", "rock hard", "dry rotted", "perished", "stiff as a board", "crispy", "hard as rock", "hard as a brick", "petrified", "dry rot", "hard and brittle", "embrittled"], has: ["dry rot", "hardening"] },
  { code: "flattened", name: "flattened", help: "has taken a compression set", is: ["flattened [out]", "flat", "squashed [flat]", "smashed flat", "(taken|took|taking) [a] [compression] set", "compressed", "mashed flat", "crushed", "gone flat", "flat spotted", "squished [flat]", "smashed", "mashed", "compression set"], has: ["flat spot", "flat spots", "[a] compression set"] },
  { code: "weak", name: "weak", help: "no longer pushes as it should", is: ["weak", "tired", "lost its (tension|temper|rate)", "lost tension", "soft", "worn down spring", "lazy", "fatigued", "sagged", "relaxed", "saggy", "sacked out"] },
  { code: "misaligned", name: "misaligned", help: "out of line", iso: "1.4", is: ["misaligned", "out of line", "not lined up", "crooked", "cocked", "off center", "out of alignment", "not aligned", "not straight in", "out of square", "cockeyed", "off centre", "canted", "skewed", "isnt lined up", "not lining up", "not square", "sideways"], has: ["misalignment"] },
  { code: "frozen", name: "frozen", help: "ice on it", is: ["frozen", "iced up", "iced over", "icy", "icing up", "frosted [up|over]", "iced", "freezing up", "froze off", "freezing off"], has: ["ice", "frost", "icing"] },
  { code: "damaged", name: "damaged", help: "damage, kind not said", is: ["damaged", "shot", "junk", "toast", "beat up", "beaten up", "chewed up", "torn all to pieces", "trashed", "ruined", "messed up", "tore all to hell", "had it", "no good", "beat all to hell", "beat to death", "wasted", "hosed", "done for", "bad", "gone bad", "chewed", "mangled", "buggered [up]", "boogered up", "in bad shape", "in rough shape", "rough shape", "rough", "tore up", "banged up", "boogered", "wrecked", "knackered", "goosed", "duff", "shagged", "bad shape", "wiped out", "smoked", "beat to hell", "no good anymore", "not good", "in poor condition", "poor condition", "poor shape", "destroyed", "faulty", "defective", "failed", "unserviceable", "inoperative", "inop", "out of order", "malfunctioning", "not operating", "not functioning", "not working", "(pretty|real|really|so) bad"], has: ["damage"] },
  { code: "intact", name: "intact", help: "threads or surface whole", is: ["intact", "still intact", "in one piece", "all there", "undamaged"] },
  { code: "chipped", name: "chipped", help: "a piece out of it", is: ["chipped [up|out]"], has: ["chip", "chips", "chunk out of", "chunk missing", "chip out of"] },
  { code: "dented", name: "dented", help: "pushed in", is: ["dented [up|in]", "caved in"], has: ["dent", "dents"] },
  { code: "kinked", name: "kinked", help: "tubing folded", is: ["kinked [up|over]", "crimped", "pinched off", "crimped off"], has: ["kink", "kinks", "crimp"] },
  { code: "pinched", name: "pinched", help: "seal caught between parts", is: ["pinched"], has: ["pinch", "pinch mark"] },
  { code: "extruded", name: "extruded", help: "seal pushed out of its groove", is: ["extruded [out]", "squeezed out", "pushed out", "blown out of the groove", "extruding"], has: ["extrusion"] },
  { code: "cross_threaded", name: "cross-threaded", help: "started crooked on the thread", is: ["cross threaded", "crossthreaded", "cross thread", "crossthread"] },
  { code: "rounded", name: "rounded", help: "corners gone from a nut or bolt", is: ["rounded [off|over|out]", "rounding off"] },
  { code: "burnt", name: "burnt", help: "heat has damaged it", is: ["burnt [up|out]", "burned [up|out]", "scorched", "charred", "fried", "cooked", "heat damaged", "melted", "overheated"], has: ["burn mark", "burn marks", "scorch marks"] },
  { code: "low", name: "low", help: "oil level low", is: ["low", "down a (quart|pint)", "running low", "half empty", "empty", "dry", "a quart low"] },
  { code: "dirty", name: "dirty", help: "oil dirty", is: ["black", "milky", "cloudy"] },
];

/** Words so common in talk that they say something of a part only right behind it. */
export const EVERYDAY: ReadonlySet<string> = new Set([
  "straight",
  "slick",
  "smooth",
  "clear",
  "ok", "okay", "good", "fine", "alright", "all right", "great", "clean", "bad", "gone", "hard", "low", "black",
  "dry", "soft", "rough", "empty", "solid", "sound", "perfect", "decent", "tired", "lazy", "lost", "flat", "stiff",
  "in good shape", "not good", "not bad", "excellent", "toast", "junk", "shot", "o k", "nasty", "dirty", "no good",
  "good shape", "rusty", "backing out", "backing off", "backed off", "backed out", "catches", "drags", "catching",
  "hung up", "play", "not there", "left out", "fell off", "fell out", "score", "break", "jammed", "big", "froze",
]);

/** Conditions that somebody or something does to a part: "somebody stripped the threads". */
export const DEEDS: ReadonlySet<Condition> = new Set<Condition>([
  "stripped", "cross_threaded", "kinked", "bent", "broken", "cracked", "torn", "cut", "dented", "damaged", "galled",
  "rounded", "pinched", "burnt", "scored", "scratched", "nicked", "eroded", "holed", "chipped", "washed_out",
  "flattened", "plugged",
]);
