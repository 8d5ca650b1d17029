/**
 * The small words that hold a phrase together. Each list is one role; a word may stand in several, and the reader
 * settles which by what stands around it. Notation as in row.ts.
 */
export const GRAMMAR = {
  /** not, and words that say something was looked for and not found */
  not: ["no", "not", "aint", "isnt", "arent", "wasnt", "werent", "nope not", "never", "without", "without any", "free of", "free from", "didnt (see|find|notice)", "not seeing", "dont see", "havent (seen|found)", "couldnt (see|find)", "zero", "no sign of", "no signs of", "no evidence of", "nothing", "not any", "no visible", "cant (see|find)", "did not (see|find)", "hasnt", "has not", "nary a", "see no", "saw no", "found no", "none of", "not a", "neither", "nor", "hardly any", "doesnt have", "doesnt show", "didnt have", "doesnt look", "dont look", "doesnt", "does not", "not showing", "showing no", "no trace of", "not noticing", "not finding", "isn t", "havent", "don t see"],
  /** said after what was looked for: "looked for cracks and didn't find any" */
  notAfter: ["(didnt|did not|dont|couldnt|havent|cant) (find|see|seen|found|notice) (any|one|none|it|nothing)", "found none", "saw none", "(there|and) (isnt|arent|wasnt|werent|is|was) (any|none)", "none there", "none found", "none seen", "came up (clean|empty)", "and (nothing|none)", "not a one", "none visible", "none noted", "and there (isnt|arent|aint) (any|none)", "but (found|saw) nothing", "nothing there", "none", "nope", "negative"],
  /** work not done, on purpose or for want of time */
  declined: ["[(theres|there is|there s|aint|isnt)] no way [in hell] [(that|im|i am|were|we are|i can|we can|you can)]", "didnt", "did not", "not gonna", "not going to", "wont", "will not", "wont be", "not", "never", "havent", "have not", "hasnt", "didnt bother [(to|with)]", "didnt get around to", "didnt get to", "didnt mess with", "no need to", "dont need to", "doesnt need [to be]", "couldnt", "could not", "didnt have time to", "not worth", "aint", "aint gonna", "skipped", "im not", "was not", "wasnt", "isnt", "werent", "held off on", "holding off on", "decided not to", "decided against", "did no", "didnt even", "ran out of time to", "dont", "chose not to", "passed on", "not going to be", "cant", "no", "without", "never did", "never got around to", "hold off on", "did not get to", "wouldnt", "were not", "was never", "opted not to", "no plans to", "elected not to", "not bothering (to|with)"],
  /** work owed */
  owed: ["need", "needs", "needed", "needing", "needs to [be]", "need to [be]", "gotta [be]", "got to [be]", "have to [be]", "has to [be]", "hafta [be]", "hasta be", "should [be]", "ought to [be]", "must [be]", "want to", "wants to be", "wants", "will need [to be]", "gonna need [to be]", "going to need [to be]", "is going to need", "will have to [be]", "gonna have to [be]", "going to have to [be]", "gonna [be]", "going to [be]", "will [be]", "ill", "im gonna", "well need [to]", "due for", "can be", "due to be", "ready for", "fixing to", "fixin to", "about to", "aiming to", "time to", "could use", "could stand", "calls for", "is to be", "to be", "requires", "require", "require to be", "better", "we better", "id better", "plan to", "planning to", "plan on", "recommend", "recommended", "recommend we", "suggest", "must be", "next time", "ill have to", "well have to", "supposed to be", "begging for", "let s", "lets", "still needs [to be]", "still need to", "please", "make sure to", "remember to", "dont forget to", "somebody needs to", "be sure to", "shall", "shall be", "make a note to", "well be", "ill be", "should get", "needs to get", "has got to be", "needs a good", "gotta get", "wanting", "want", "oughta [be]", "still to be", "yet to be", "awaiting", "needs some", "s gotta be", "is gonna need", "wants a", "due", "could do with", "crying out for", "due a"],
  /** work done after all: what follows is past, whatever its form */
  did: ["had to", "went ahead and", "already", "did", "i did", "have", "has", "ive", "had", "weve", "just", "got it", "gone and", "has been", "have been", "been", "was", "were", "ended up", "wound up", "finished", "got done", "went on and", "managed to", "got", "have now", "has now been", "i have", "we have", "having", "done"],
  hedge: ["might [be]", "might have [a]", "may [be]", "may have [a]", "maybe", "i think", "i believe", "i guess", "could be [a]", "could have [a]", "not sure but", "not sure if", "not sure whether", "not certain but", "reckon", "i reckon", "probably", "possibly", "possible", "looks like it (may|might|could) [be]", "looks like it (may|might) have", "perhaps", "suspect", "i suspect", "im thinking", "appears to be", "appears to have", "seems like it (may|might)", "hard to (tell|say|see) but", "cant tell but", "suspected", "im not (sure|positive|certain) but", "dont know but", "not positive but", "i would guess", "id guess", "id say", "i wonder if", "wonder if", "if i had to guess", "might could", "best guess", "could maybe", "i suppose", "supposedly", "think", "thinking", "looks to me like it might", "not a hundred percent but", "likely", "most likely", "potentially", "what might be", "im pretty sure", "pretty sure", "hard to tell", "hard to see", "cant tell", "hard to say", "not sure", "not certain", "cant say for sure", "questionable", "what looks like it could be", "may well", "what could be", "wouldnt be surprised if", "fairly sure", "i feel like", "not totally sure but", "suspicious of", "not convinced"],
  /** what follows is said of the part before it */
  is: ["its", "thats", "shes", "theyre", "hes", "is", "are", "was", "were", "s", "looks", "look", "looked", "looking", "feels", "felt", "feel", "seems", "seem", "appears", "appeared", "came out", "comes out", "has gone", "went", "gone", "goes", "be", "being", "been", "gets", "got", "get", "getting", "turned out", "stayed", "still", "just", "also", "both", "all", "is all", "found to be", "were found", "was found", "remains", "sits", "sitting", "sounds", "stays", "runs", "showing", "shows", "came", "has been", "have been", "is a", "ended up", "started"],
  has: ["has", "has got", "have", "had", "having", "with", "shows", "show", "showed", "showing", "got", "s got", "carries", "took", "taken", "has taken", "developed", "sporting", "has a", "had a", "exhibits", "exhibited", "displays"],
  /** what was found comes before the part */
  found: ["found", "find", "finding", "theres", "there is", "there are", "there was", "there were", "see", "seeing", "saw", "noticed", "noted", "noticing", "ive got", "i got", "i have", "weve got", "got", "spotted", "i see", "i can see", "can see", "here s", "heres", "discovered", "observed", "evidence of", "sign of", "signs of", "looks like", "got me", "looks to be", "there s", "showing", "shows", "showing signs of", "shows signs of", "indication of", "looked for", "looking for", "checked for", "inspected for", "checking for", "looks like theres", "discovering", "detected", "came across"],
  prep: ["cracked [(it|her|this|that|him|this one|that one|this thing)] open", "all over", "all up in", "all down in", "in", "on", "of", "to", "at", "into", "onto", "down", "around", "across", "along", "inside", "down in", "down on", "up on", "up in", "over on", "out on", "off", "from", "for", "by", "near", "under", "down at", "in the", "through", "between", "against", "on top of", "over in", "out of", "out", "in around", "with", "up at", "within", "over", "about", "up inside", "throughout", "outta", "where", "toward", "towards", "behind", "next to", "up under", "underneath"],
  det: ["the", "a", "an", "this", "that", "these", "those", "its", "a few", "few", "several", "a bunch of", "some of the", "all", "all of the", "all the", "each", "every", "any", "our", "another", "either", "of the", "couple of", "the other", "more", "my", "me", "em", "either of the", "set of", "pair of", "set", "pair", "most of the", "whole", "entire", "new set of", "bunch of", "couple", "nothing but", "what the", "said", "another set of"],
  and: ["and", "plus", "along with", "as well as", "n", "then", "together with", "and also", "and the", "&", "with", "+"],
  or: ["or", "nor", "or any", "or even", "neither"],
  but: ["but", "no (dice|luck|joy|go|bueno)", "to no avail", "without (luck|success)", "just", "only", "though", "however", "although", "except", "so", "because", "cause", "since", "otherwise", "which", "while", "even though", "yet", "other than"],
  it: ["it", "its", "thats", "shes", "hes", "theyre", "that one", "this one", "them", "em", "him", "her", "they", "those", "these", "both", "both of them", "all of them", "that", "this", "the thing", "that thing", "both of em", "this thing", "the old one", "old one", "all", "she", "he", "the same one", "the one", "this guy", "that guy", "the lot", "it all", "em both", "them both", "the two of them", "em all", "that sucker", "the pair", "themselves", "itself", "things", "thing"],
  fresh: ["new", "whole new", "a whole new", "brand new", "a new", "fresh", "another", "replacement", "spare", "nice new", "brand spanking new", "new set of", "new style", "a fresh", "fresh set of", "newer", "a different"],
  old: ["old", "same", "original", "existing", "same old", "same one", "old one", "used"],
  again: ["sos the", "so s the", "same", "ditto", "likewise", "same (thing|deal|story|again|here|issue|problem|condition|with|for|on|goes|as|way)", "same (thing|deal|story) (with|for|on)", "same as", "same goes for", "and so (is|are|was|were|does|did|has)", "so (is|are|was|were|does|did|has)", "samething", "that goes for", "identical on", "same for", "me too", "as (is|are|was) the", "just like", "repeat for", "repeat that for", "same on", "exact same (thing|deal)"],
  too: ["too", "as well", "also", "to boot", "likewise", "same way", "the same", "same"],
  other: ["other one", "the other one", "the other", "other", "the second one", "second one", "the next one", "another one", "opposite one"],
  one: ["one", "ones"],
  leave: ["leave it [alone|be|in|as is|as|for now]", "leaving it [alone|be|in|as is|as|for now]", "left it [alone|be|as is|in|as|for now]", "leave (that|them|her|em|this|him|those) [alone|be|in|as is|as]", "leaving (that|them|her|em|this|him|those) [alone|be|in|as is]", "left (that|them|her|em|this|him|those) [alone|be|as is|in]", "let it (go|ride|be)", "letting it (go|ride|be)", "left alone", "leave alone", "leave be", "leaving as is", "left as is", "leave as is", "let (that|her|them) (go|ride|be)", "live with it", "living with it", "run it as is", "running it as is", "gonna leave it", "leave for now", "letting (that|her|them) (ride|go|be)", "left in place", "leaving in place", "leave in place", "to be left", "not touching it", "didnt touch it", "let it run", "gonna let it ride"],
  reuse: ["good to go back in", "can stay [(in|put)]", "stays put", "good to stay [in]", "will stay in", "going back in", "goes back in", "went back in", "put back in", "back in", "back in service", "ran it again", "run it again", "running it again", "can go back in", "will go back in", "ok to reuse", "okay to reuse", "fine to reuse", "good to reuse", "staying in", "stays in", "good to run again", "can be reused", "ran (them|her|em|that one) again", "gonna run it again", "back into service", "good for another run", "good to run", "went right back in", "its going back", "left the (old|original|existing|same) (one|ones) in", "leaving the (old|original|existing) (one|ones) in", "left the (old|original|existing) in", "put (it|that|them|her|em|her|him|that one|this one|the same one|same one) back [(in|together)]", "stuck (it|that|them|em) back [in]", "(putting|sticking) (it|that|them|em) back [in]", "slid (it|them|em) back in", "used it again", "used (it|them|em) over", "reinstalled the same", "reinstalled the (old|original|existing)", "good to be reused", "popped (it|em|them) back in", "goes right back in", "back to work", "dropped it back in", "back it goes", "slapped it back in", "threw it back in", "run em again", "reused", "used again", "using it again", "(left|kept|ran) the (old|original|existing|same) (one|ones)"],
  need: ["order [up]", "order me", "bring [me]", "need to order", "gotta order", "have to order", "pick up", "get me", "get us", "grab me", "bring along", "bring out", "send [me|us]", "send out", "put in an order for", "gonna need to order", "pick me up", "bring us", "need you to bring", "need to bring", "need to pick up", "fetch me", "ill need to order", "need ordered", "remind me to order", "ordering", "haul out", "gotta bring", "requisition", "have somebody bring", "grab [me]", "add", "put", "list", "gotta get me", "gotta pick up", "need to get", "place an order for", "ordered", "on order", "well need to order", "ship me", "round up", "make sure to bring", "remember to bring", "need to have", "tell them to bring", "tell them to send", "need to be ordered", "have them bring", "have them send", "make sure we bring", "to order", "somebody bring", "please order", "please bring", "dont forget to bring", "dont forget to order", "lets order", "should order", "well order", "going to need to order", "want to order", "get", "put me down for", "sign me up for"],
  onList: ["on the (parts|order|shopping|bring|supply|truck|material|materials|buy|pick) list", "on the list", "to the (parts|order|shopping|material|materials) list", "to the list", "on order", "on my list", "on the ticket", "on the order", "for next (trip|time|visit)", "for the next trip", "ordered", "on (the|my|this|next|this weeks|next weeks|todays|tomorrows) order"],
  /** past visits: what is said of them is not today's */
  past: ["last (time|trip|visit|month|year|week|go round|job|rebuild|service|inspection|go around|summer|winter|spring|fall|quarter|round|tear down|one)", "back in (january|february|march|april|may|june|july|august|september|october|november|december)", "a (month|year|week) ago", "(two|three|four|five|six|few|couple) (months|years|weeks) ago", "last (weekend|monday|tuesday|wednesday|thursday|friday|saturday|sunday|january|february|march|april|may|june|july|august|september|october|november|december)", "(day|days|night|nights|week|weeks|month|months|year|years) ago", "[the] day before yesterday", "the other (day|week|night)", "yesterday (morning|afternoon|evening)", "[back] in (2015|2016|2017|2018|2019|2020|2021|2022|2023|2024|2025|2026)", "the time before", "previously", "before that", "yesterday", "months ago", "weeks ago", "years ago"],
  compare: ["than last (time|trip|visit|month|year)", "than before", "since last (time|trip|visit)", "like last (time|trip|visit)", "about like last time", "(worse|better) than (last time|it was|before|last trip|last visit)", "same as last (time|trip|visit)", "compared to last (time|trip|visit)", "just like last (time|trip)", "than it was [last time]", "as last (time|trip|visit)", "again"],
  /** somebody else said it, whoever stands before */
  reported: ["told (him|her|them|em) (to|two|too)", "according to", "they (say|said)", "word is", "rumor (is|has it)", "(was|were|been|got|getting) told", "(hear|heard) from", "from what (i|we) (hear|heard|gather|was told|were told|am told|understand)"],
  /** what one says of it, with a speaker before: "Dave says", "operator told me" */
  tells: ["says", "said", "(told|tells|telling) (me|us|them|everybody|everyone)", "claims", "claimed", "mentions", "mentioned", "reports", "reported", "thinks", "thought", "swears", "swore", "reckons", "reckoned", "figures", "figured", "complains", "complained", "complaining", "was saying", "is saying", "were saying", "let (me|us) know", "texted [(me|us)]", "called (in|me|us)", "radioed [in]", "hollered", "wrote (up|down) [that]", "wrote [that]", "noticed yesterday", "is telling (me|us)"],
} as const;
export type GrammarRole = keyof typeof GRAMMAR;

/** A bit for each role: one number holds all that a stretch of words may play, and asking it costs next to nothing. */
export const ROLE = {
  not: 1 << 0, notAfter: 1 << 1, declined: 1 << 2, owed: 1 << 3, did: 1 << 4, hedge: 1 << 5, is: 1 << 6,
  has: 1 << 7, found: 1 << 8, prep: 1 << 9, det: 1 << 10, and: 1 << 11, or: 1 << 12, but: 1 << 13,
  it: 1 << 14, fresh: 1 << 15, old: 1 << 16, again: 1 << 17, too: 1 << 18, other: 1 << 19, one: 1 << 20,
  leave: 1 << 21, reuse: 1 << 22, need: 1 << 23, onList: 1 << 24, past: 1 << 25, compare: 1 << 26, reported: 1 << 27,
  tells: 1 << 28,
} as const satisfies Record<GrammarRole, number>;
export type RoleBit = (typeof ROLE)[GrammarRole];

/** Undo, and the words that begin an amendment or a note. */
export const TURNS = {
  undo: ["(scratch|snatch) (dat|hat|bat)", "strike (dat|bat)", "scratch (that|this|it|the last|that last) [(one|bit|part|last one)] [(too|also|as well)]", "strike (that|this|it) [(one|last one|last)] [(too|also|as well)]", "never mind (that|it|this) [(one|last one)] [too]", "nevermind [(that|it)] [(one|last one)]", "never mind", "forget (that|it|this|the) [(last|one)] [one] [too]", "undo [(that|it|last|the last)] [one]", "delete (that|it|this|the last) [(one|last one)]", "take that back", "cancel that [(last one|one)]", "scrub that", "ignore that [last one]", "scratch the last one", "forget i said that", "disregard that", "disregard", "wipe that", "drop that last one", "scratch all that", "erase that", "drop that one"],
  amend: ["correction", "(core|cor|car) (rection|action)", "collection", "no wait", "wait no", "make that", "i mean", "i meant", "sorry", "or rather", "no make that", "no i mean", "no i meant", "correct that to", "change that to", "let me correct that", "no sorry", "sorry i (mean|meant)", "my mistake [(its|make that|that was|thats)]", "i should say", "or i should say", "wait make that", "i misspoke", "no actually", "actually no", "actually make that", "wait its", "no its", "no it was", "no thats", "amend that [to]", "that should be", "should say", "excuse me", "hold on make that", "oops", "wait i mean", "scratch no", "thats wrong its", "no thats wrong", "i mean to say", "meant to say", "correcting that", "no no"],
  note: ["note that", "note [down|this]", "make a note [that|of]", "remark", "remarks", "for the record", "take a note", "notes", "add a note", "make note that", "make note"],
} as const;

/** Words without a meaning of their own here. Said or left out, they change nothing. */
export const PLAIN = new Set(
  `uh um er ah oh hmm hm mm mhm yeah yep yup yes okay ok so well like you know man boy hey whoa alright right now here there then
  okay alrighty lets see let me i im ive id ill we weve were you your youre he hes she shes her it its they them their theyre em this that these those the a an
  and but or to of on in at for with from by as is are was were be been being am do does did done got get gets getting have has had having
  just still too also again though really actually basically kind sort pretty quite very real all some any one ones two up out off down over back
  about around around into onto through until till when where while which who what why how if because cause since than such only even
  go goes going went gone come comes came look looks looked looking see sees saw seen seeing seem seems feel feels felt find finds found finding
  thing things stuff bit little lot way time today tonight morning afternoon evening now next first second last
  think thought guess say says said call tell told know knows knew want wants put puts take takes took taken make makes made
  can could cant couldnt will would wont wouldnt shall should shouldnt may might must gonna gotta wanna tryna oughta
  not no nope nah never dont doesnt didnt isnt arent wasnt werent aint havent hasnt hadnt
  mine ours yours his hers my me us our itself myself ourselves
  free times ago altogether completely entirely apparently obviously anyway anyhow somehow already maybe perhaps almost nearly exactly definitely certainly probably unfortunately luckily finally eventually suddenly recently lately sometimes always usually often mostly together apart away ahead between behind beneath beside above below inside outside near far along across against upon within without instead rather else ever soon later early late once twice sir folks site job trip visit
  action actions result results finding findings status comment comments observation observations condition
  working work works worked doing showing shows show side sides end ends part parts piece pieces area spot spots place places
  starting start started opened open opening closed close closing apart together side sitting sits sat set running runs run ran
  good bad fine kinda sorta maybe probably please thanks thank sir buddy guys fellas bud boss dang damn darn heck hell lord sure
  else every everything anything nothing something somebody someone nobody anybody everybody each other another others both either neither same more most much many few
  there's heres theres thats whats wheres itll thatll shell hell theyll weve youve
  hand hands eye bench shop wrench vise flashlight light finger parts washer wash tank
  job valve valves trip visit day days week month line lines
  upper whole entire pattern cross ahead anyhow anyway meanwhile after before during already yet ever always usually
  appears appear observed visible noted note noticed evident condition assembly unit number
  hang hold second sec minute moment hour check alright reads read reading tag tags tagged says number
  bolted screwed turned turn turning moved move moves moving pushed push pulled pull hit hitting caught catch
  able help helped using used use uses old new brand left right once twice per pass full
  both um uhh umm huh ha haha eh aw ooh gosh golly wow nice great cool sweet
  her himself herself lookin gettin goin doin nothin somethin
  inch plus minus point percent degree degrees
  fairly rather nearly almost mostly simply clearly obviously apparently definitely certainly exactly slightly
  without within between behind under above below along across against toward near far away
  long short big small high low wide thin thick heavy
  reckon suppose figure figured pretty dadgum doggone stinking freaking frickin old ol
  joker idiot fella guy kid hand monkey genius
  by means due per via upon
  s t m re ve ll d n
  stroke strokes stroking strike cycle
  wrench socket hammer screwdriver pliers ratchet torch vise rag rags bucket flashlight spanner mirror wire scraper emery cloth pan tote bench towel mind plain rest round
  balanced unbalanced reversible pneumatic hydraulic
  finally eventually fluid liquid condensate water gas coming process flow flowing
  fresh better best worse worst less least enough plenty extra
  standing stood stands laying lying lay hanging hung stays stayed stay keep keeps kept keeping
  wonder wondering believe believed hope hoping wish
  easy hard easily hardly barely
  good-to-go shape condition order needs need needed needing
  sure for-sure perfectly pretty
  kneeling rolling cranking hammering prying fighting
  outside inside between meanwhile overall
  opens closes shuts starts stops begins began lifts seats final spec specs specification whatever lined fully starting stopped beginning
  shape done`.split(/\s+/).flatMap((word) => word.replaceAll("'", "").split("-")),
);
