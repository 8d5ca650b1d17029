/**
 * What a person says aloud to measure the ear: plain phrases of a job, in its order, of every kind of entry. Invented, and
 * chosen before anybody heard them: none was kept or dropped for how it comes out. None is a line that the ear was taught by
 * (`core/speech/said`), or the figure would be worth nothing; a test holds both.
 */
export const RECORD_SET: readonly string[] = [
  "this one here is f c v four oh seven",
  "now i'm on p v sixty one bravo",
  "it's a three inch valve and it takes air to open",
  "severe service with plenty of sand",
  "the seat ring is cut on one side",
  "plug has some pitting close to the edge",
  "that stem is bent just a little",
  "the cage looks good all the way around",
  "i see no cracks in the bonnet",
  "lower diaphragm has a hole in the middle",
  "the top diaphragm is getting hard",
  "both of the backup rings are pinched",
  "the cage o ring has gone flat on me",
  "packing is leaking a little bit",
  "two of the bonnet bolts are stripped",
  "breather was plugged up with mud",
  "i found the lock nut loose",
  "outlet threads are badly galled",
  "there might be a crack in the yoke",
  "inlet threads are still fine",
  "went ahead and flipped the seat",
  "put in a brand new stem guide",
  "cleaned up the cage and put it back in",
  "lapped the plug into the seat by hand",
  "the actuator spring needs to be replaced",
  "i did not change the bonnet gasket today",
  "i put some fresh grease on the stem",
  "order me two cage gaskets and a seat",
  "torqued the bonnet bolts to thirty two foot pounds",
  "packing nut was tightened to fifteen",
  "total travel is three quarters of an inch",
  "supply pressure reads twenty two psi",
  "the spring is six and a half inches long",
  "holding eighty pounds with no leak at all",
  "four bubbles a minute with sixty psi on it",
  "strokes all the way both directions",
  "there is still pressure trapped in the body",
  "correction make that thirty five",
  "note the tag plate has been painted over",
  "what did i miss on this one",
];

/** So long a person talks of something else, to see what the ear makes of it. */
export const OTHER_TALK_SECONDS = 10;
