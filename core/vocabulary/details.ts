import type { Acts, Extent, Place, Service, Severity } from "../shapes/codes.ts";
import type { Row } from "./row.ts";

/** How bad. `slight` words before a thing found ("some scale") and after ("extruded some"). */
export const SEVERITY_ROWS: Row<Severity>[] = [
  { code: "slight", name: "slight", say: ["light", "(bit|touch|trace|tad|wee bit) of", "lightly", "a little [bit] [of]", "little bit [of]", "a bit [of]", "a touch [of]", "a tad", "a hair", "a smidge", "slight", "slightly", "starting to [get]", "starting to (look|go|show)", "just starting to", "minor", "some", "hairline", "kinda", "kind of", "sorta", "sort of", "little", "beginning to", "mild", "mildly", "faint", "small", "tiny", "somewhat", "a wee bit", "just a (little|touch|bit|hair) [of]", "a trace of", "barely", "superficial", "shallow", "lightish", "a wee", "a smidgen", "a skosh", "a shade", "ever so slightly", "a hint of", "hint of", "the odd", "the (start|beginnings) of", "very (slight|slightly|light|lightly|minor)", "just barely", "hardly", "(a|an) (touch|tad|hair|smidge|bit)", "only slightly", "not (too|so|that|half|real|very|all that) bad [at all]", "not bad"], help: "a little" },
  { code: "severe", name: "severe", say: ["heavy", "heavily", "bad", "badly", "pretty bad", "pretty badly", "real bad", "really bad", "really badly", "excessive", "excessively", "really", "plumb", "all the way", "severe", "severely", "awful", "terrible", "horrible", "deep", "deeply", "serious", "seriously", "proper", "properly", "extreme", "extremely", "completely", "totally", "way bad", "big time", "something awful", "something terrible", "real good", "so bad", "that bad", "that badly", "very", "all to hell", "major", "massive", "major league", "real deep", "pretty heavy", "real heavy", "pretty heavily", "huge", "clear through", "quite badly", "considerable", "extensive", "extensively", "substantial", "pretty good", "significant", "significantly", "a lot of", "lots of", "plenty of", "(a ton|tons|loads|gobs) of", "mighty", "pretty severe", "plum", "thoroughly", "ridiculously", "super", "a whole lot of", "real", "to hell", "to death", "something fierce", "something chronic", "like crazy", "terribly", "horribly", "awfully", "well and truly", "a fair bit", "quite a bit", "a good bit", "a hell of a", "absolutely", "slap"], help: "badly" },
];

export const EXTENT_ROWS: Row<Extent>[] = [
  { code: "one_side", name: "one side", say: ["[(just|only)] [(on|along|down)] [(the|just|only)] one side [only]", "a single side", "1 side", "on one face", "single sided", "just one side"], help: "on one side only" },
  { code: "both_sides", name: "both sides", say: ["[(on|along|down)] both [of the|the|its] sides", "(on|along) either side", "on each side", "both faces", "two sides", "2 sides", "both sides of it", "on the both sides"], help: "on both sides" },
  { code: "all_around", name: "all around", say: ["all [the way] around", "all [the way] round", "the whole way around", "all over", "(clear|clean|right) around", "around the whole circumference", "the full circumference", "all around it", "all the way around it", "around the entire (circumference|edge)", "the entire way around"], help: "all the way round" },
  { code: "partial", name: "partly", say: ["partly", "partially", "half", "halfway", "part way", "partway", "part of the way", "in part", "mostly"], help: "in part" },
];

/** Where on the part. Said before it ("top of the cage"), after what was found ("on the edge"), or as a side. */
export const PLACE_ROWS: Row<Place>[] = [
  { code: "top", name: "top", say: ["top", "top side", "topside", "up top", "top end", "top face"], help: "top" },
  { code: "bottom", name: "bottom", say: ["bottom", "btm", "bottom side", "underside", "underneath", "bottom end", "down at the bottom"], help: "bottom" },
  { code: "upper", name: "upper", say: ["upper", "upr", "upper side", "upper end"], help: "upper" },
  { code: "lower", name: "lower", say: ["lower", "lwr", "lower side", "lower end"], help: "lower" },
  { code: "inlet", name: "inlet side", say: ["inlet", "inlet side", "upstream side", "inlet end"], help: "inlet side" },
  { code: "outlet", name: "outlet side", say: ["outlet", "outlet side", "downstream side", "outlet end"], help: "outlet side" },
  { code: "inside", name: "inside", say: ["inside", "on the inside", "interior", "internally", "inner side", "bore"], help: "inside" },
  { code: "outside", name: "outside", say: ["outside", "out side", "exterior", "externally", "outer side"], help: "outside" },
  { code: "edge", name: "edge", say: ["edge", "edges", "outer edge", "inner edge", "rim", "lip", "leading edge", "outside edge", "inside edge", "(seating|sealing|throttling) edge"], help: "edge" },
  { code: "center", name: "center", say: ["center", "centre", "middle", "dead center"], help: "center" },
  { code: "groove", name: "groove", say: ["groove", "grooves", "o ring groove", "ring groove", "gland groove"], help: "groove" },
  { code: "face", name: "face", say: ["face", "faces", "sealing face", "seating face", "sealing surface", "gasket face", "gasket surface", "mating face"], help: "face" },
  { code: "hole", name: "communication hole", say: ["comm hole", "comm port", "communication hole", "communication port", "comm holes", "comm ports", "ports", "port", "balance hole", "balance port", "com hole", "comm hole", "(bolt|screw|stud) (hole|holes|circle|pattern)"], help: "hole that passes pressure" },
  { code: "left", name: "left side", say: ["[over] on the left [(side|hand side|leg|arm|ear|lug|end)]", "left side", "left hand side", "the left side", "left (leg|arm|ear|lug|end)"], help: "left side" },
  { code: "right", name: "right side", say: ["[over] on the right [(side|hand side|leg|arm|ear|lug|end)]", "right side", "right hand side", "the right side", "right (leg|arm|ear|lug|end)"], help: "right side" },
];

export const ACTS_ROWS: Row<Acts>[] = [
  { code: "pressure_opens", name: "pressure opens", say: ["pressure to open", "(air|gas) to open", "(fail|fails|failed|failing) (closed|close|shut)", "(opens|open) on (air|pressure|gas|signal)", "(goes|fails|go|fail) (closed|shut) on (loss of|no) (air|gas|pressure|signal)", "spring to close", "spring closed", "ato", "normally closed", "pressure opens", "pressure opening", "fail close", "air opens", "reverse acting", "fails to closed", "air opening"], help: "signal opens it; it shuts when the signal is lost" },
  { code: "pressure_closes", name: "pressure closes", say: ["pressure to close", "(air|gas) to close", "(fail|fails|failed|failing) open", "(closes|close|shuts) on (air|pressure|gas|signal)", "(goes|fails|go|fail) open on (loss of|no) (air|gas|pressure|signal)", "spring to open", "spring opens", "atc", "normally open", "pressure closes", "pressure closing", "air closes", "direct acting", "air closing"], help: "signal shuts it; it opens when the signal is lost" },
];

export const SERVICE_ROWS: Row<Service>[] = [
  { code: "severe", name: "severe service", say: ["severe (service|duty)", "(sandy|dirty|sour|erosive|abrasive|nasty|corrosive|bad|rough|gritty|dirty sour) service", "sand service", "in sandy [service]", "sandy", "sour", "(makes|sees|gets) (a lot of|lots of|heavy|plenty of) sand", "real (sandy|sour|dirty|corrosive)"], help: "sand, sour or dirty fluid" },
  { code: "normal", name: "normal service", say: ["(normal|clean|mild|regular|standard|sweet|ordinary|general) service", "normal duty"], help: "nothing out of the ordinary" },
];
