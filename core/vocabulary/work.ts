import type { Work } from "../shapes/codes.ts";

/**
 * What is done to a part. Regular verbs are given by their base form and inflected; an irregular past stands after
 * a colon ("blow:blew,blown"). `with` verbs are work only together with one of the small words after them, which
 * may stand behind the part ("took the bonnet off").
 */
export interface WorkRow {
  code: Work;
  name: string;
  /** how the log asks for it */
  bid: string;
  verbs: string[];
  with?: { verb: string; words: string[] }[];
  /** said as a thing: "needs grease", "a good cleaning" */
  nouns?: string[];
  help: string;
}

export const WORK_ROWS: WorkRow[] = [
  { code: "replaced", name: "replaced", bid: "replace", verbs: ["replace", "swap", "change", "re new", "exchange", "renew", "changeout", "repl:repl,repld"], with: [{ verb: "switch", words: ["out"] }, { verb: "trade", words: ["out"] }, { verb: "change", words: ["out"] }, { verb: "swap", words: ["out"] }], nouns: ["replacement", "replacing", "changing out", "swapping out", "changing", "change out", "changeout", "renewal"], help: "a new one put in" },
  { code: "flipped", name: "flipped", bid: "flip", verbs: ["flip", "reverse", "invert"], with: [{ verb: "turn", words: ["over", "around", "upside"] }, { verb: "roll", words: ["over"] }], help: "turned over so that the other side seals" },
  { code: "cleaned", name: "cleaned", bid: "clean", verbs: ["clean", "cln:clnd", "wipe", "wash", "scrape", "scrub", "brush", "flush", "rinse", "degrease", "descale", "unplug", "unclog", "wire brush", "pressure wash", "hose", "sandblast clean", "power wash", "decoke", "unblock", "blast"], with: [{ verb: "blow:blew,blown,blowed", words: ["out", "off", "clear"] }, { verb: "rod", words: ["out"] }, { verb: "dig:dug", words: ["out"] }, { verb: "clear", words: ["out", "off"] }, { verb: "chip", words: ["off"] }, { verb: "knock", words: ["off"] }, { verb: "ream", words: ["out"] }, { verb: "steam", words: ["off", "cleaned"] }, { verb: "poke", words: ["out"] }, { verb: "wash", words: ["out", "off"] }, { verb: "pick", words: ["out", "clean"] }], nouns: ["cleaning", "a clean", "good cleaning", "wash"], help: "dirt taken off" },
  { code: "reused", name: "reused", bid: "reuse", verbs: ["reuse", "re use", "keep:kept"], nouns: ["reuse"], help: "the old one put back" },
  { code: "repaired", name: "repaired", bid: "repair", verbs: ["repair", "fix", "patch", "mend", "weld", "rebuild:rebuilt", "rethread", "retap", "refurbish", "overhaul", "refurb", "heli coil", "rectify", "reseal", "recondition", "make good", "touch up"], with: [{ verb: "build:built", words: ["up"] }, { verb: "chase", words: ["threads", "thread"] }], nouns: ["repair", "fixing", "patching", "an overhaul"], help: "made good without a new part" },
  { code: "lapped", name: "lapped", bid: "lap", verbs: ["lap"], with: [{ verb: "grind:ground", words: ["in"] }], nouns: ["lapping", "a lap"], help: "ground to its mate" },
  { code: "greased", name: "greased", bid: "grease", verbs: ["grease", "lube", "lubricate", "regrease", "lubed up", "oil the", "lub"], nouns: ["grease", "lube", "greasing", "lubrication", "lubricating", "lubricant", "silicone grease", "fresh grease"], help: "grease or oil put on" },
  { code: "adjusted", name: "adjusted", bid: "adjust", verbs: ["adjust", "readjust", "align", "realign", "reset", "reposition", "tweak", "re adjust"], with: [{ verb: "dial", words: ["in", "back", "down", "up"] }, { verb: "back", words: ["off"] }], nouns: ["adjusting", "adjustment", "an adjustment"], help: "set to where it belongs" },
  { code: "tightened", name: "tightened", bid: "tighten", verbs: ["tighten", "secure", "resecure", "snug", "retighten", "re tighten", "cinch", "nip", "torque", "retorque", "re torque", "firm"], with: [{ verb: "crank", words: ["down"] }, { verb: "run:ran", words: ["down"] }, { verb: "pull", words: ["down"] }], nouns: ["tightening", "retorquing", "torquing", "tightened up"], help: "made tight" },
  { code: "removed", name: "removed", bid: "remove", verbs: ["remove", "pull", "dismount", "unbolt", "unscrew", "extract", "uninstall"], with: [{ verb: "take:took,taken", words: ["off", "out"] }, { verb: "pop", words: ["off", "out"] }, { verb: "get:got,gotten", words: ["off"] }, { verb: "drop", words: ["out"] }, { verb: "slide:slid", words: ["out", "off"] }, { verb: "pull", words: ["out", "off"] }, { verb: "lift", words: ["off", "out"] }, { verb: "press", words: ["out"] }, { verb: "drive:drove,driven", words: ["out"] }, { verb: "drill", words: ["out"] }, { verb: "spin:spun", words: ["off"] }, { verb: "back", words: ["out"] }], nouns: ["removing", "pulling", "pulled", "removal", "to come out", "to come off"], help: "taken off or out" },
  { code: "installed", name: "installed", bid: "install", verbs: ["install", "mount", "reinstall", "re install", "fit", "refit", "hook up", "reassemble", "remount"], with: [{ verb: "bolt", words: ["on", "up", "down", "back"] }, { verb: "hook", words: ["up", "back"] }, { verb: "button", words: ["up"] }, { verb: "screw", words: ["on", "in", "back"] }, { verb: "thread", words: ["on", "in"] }, { verb: "slide:slid", words: ["in", "on"] }], nouns: ["installing", "installation", "mounting", "reinstalling"], help: "put on or in" },
  { code: "inspected", name: "inspected", bid: "inspect", verbs: ["inspect", "check", "investigate", "assess", "diagnose", "examine", "eyeball", "insp:insp,inspd", "chk:chkd", "recheck", "re check", "re inspect", "eyeballed"], with: [{ verb: "look", words: ["over", "at"] }, { verb: "go:went,gone", words: ["over"] }, { verb: "look", words: ["over"] }], nouns: ["inspecting", "inspection", "checking", "looked at", "a look", "a good look", "looking at", "an inspection", "a check"], help: "looked at" },
  { code: "drained", name: "drained", bid: "drain", verbs: ["drain"], nouns: ["draining"], help: "liquid let out" },
  { code: "filled", name: "filled", bid: "fill", verbs: ["fill", "refill", "top up", "re fill"], with: [{ verb: "top", words: ["off", "up"] }, { verb: "add", words: ["oil"] }], nouns: ["filling", "topping off", "topped off", "topping up"], help: "oil or fluid put in" },
  { code: "threadlocked", name: "threadlocked", bid: "threadlock", verbs: ["threadlock", "thread lock"], nouns: ["(blue|red|green|medium|high strength) (threadlocker|thread locker|thread lock)", "thread locker", "threadlocker", "thread lock", "locking compound", "thread locking compound"], help: "secured with threadlocker" },
  { code: "discarded", name: "discarded", bid: "discard", verbs: ["discard", "toss", "pitch", "scrap", "chuck", "trash", "binn", "junk"], with: [{ verb: "throw:threw,thrown", words: ["away", "out", "scrap", "trash", "bin", "dumpster", "junk"] }, { verb: "get:got", words: ["rid"] }, { verb: "go:went,goes", words: ["trash", "scrap", "dumpster"] }], nouns: ["scrapping", "tossing", "throwing away", "throwing out"], help: "thrown away" },
  { code: "straightened", name: "straightened", bid: "straighten", verbs: ["straighten"], with: [{ verb: "bend:bent", words: ["back"] }], nouns: ["straightening"], help: "made straight" },
  { code: "dressed", name: "dressed", bid: "dress", verbs: ["dress", "file", "stone", "hone", "polish", "deburr", "chase", "redress", "buff", "sand"], nouns: ["dressing", "chasing", "polishing", "stoning"], help: "surface or thread worked smooth" },
  { code: "vented", name: "vented", bid: "vent", verbs: ["vent", "bleed:bled", "depressurize", "depressure", "depressurise"], with: [{ verb: "blow:blew,blown", words: ["down"] }], nouns: ["venting", "bleeding"], help: "pressure let out" },
  { code: "calibrated", name: "calibrated", bid: "calibrate", verbs: ["calibrate", "recalibrate", "recal", "cal", "re calibrate"], nouns: ["calibration", "calibrating", "a cal", "recalibration"], help: "set against a known value" },
  { code: "disassembled", name: "disassembled", bid: "disassemble", verbs: ["disassemble", "dismantle", "teardown", "strip down"], with: [{ verb: "take:took,taken", words: ["apart", "down"] }, { verb: "tear:tore,torn", words: ["down", "apart"] }, { verb: "break:broke,broken", words: ["down", "apart"] }, { verb: "pull", words: ["apart"] }, { verb: "strip", words: ["down"] }], nouns: ["disassembly", "taking apart", "tearing down", "disassembling", "teardown", "taken apart"], help: "taken apart" },
];

/** Verbs of placing: what they say depends on what is placed and where ("a new one in", "it back", "on the list"). */
export const PLACING_VERBS = [
  "put", "stick:stuck", "slap", "drop", "throw:threw,thrown", "slide:slid", "pop", "shove", "set", "stuff",
  "screw", "go:went,goes,gone", "drive:drove", "get:got", "give:gave", "apply",
];
