/** The phones of the dictionary (ARPAbet without stress). */
const PHONES =
  "AA AE AH AO AW AY B CH D DH EH ER EY F G HH IH IY JH K L M N NG OW OY P R S SH T TH UH UW V W Y Z ZH".split(" ");

/** One "word" a phone, any after any: how well the sound would fit if it could be anything anybody says. */
export const PHONE_DICTIONARY = `${PHONES.map((phone) => `G_${phone} ${phone}`).join("\n")}\n`;

const going = 0.98;
export const PHONE_NETWORK = [
  "FSG_BEGIN phones",
  "NUM_STATES 2",
  "START_STATE 0",
  "FINAL_STATE 1",
  ...PHONES.map((phone) => `TRANSITION 0 0 ${(going / PHONES.length).toPrecision(5)} G_${phone}`),
  `TRANSITION 0 1 ${(1 - going).toPrecision(5)}`,
  "FSG_END",
  "",
].join("\n");
