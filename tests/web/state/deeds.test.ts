import { describe, expect, it } from "vitest";
import { hear } from "../../../core/index.ts";
import { deeds, type Hands } from "../../../web/state/deeds.ts";
import { type KeepsakeDeeds, keepsakeDeeds } from "../../../web/state/keepsake-deeds.ts";
import type { CardPhrase, JobCard } from "../../../web/state/state.ts";
import { createStore } from "../../../web/state/store.ts";

/** The deeds with hands that write down what they were told to do. */
function bench(change: Partial<Hands> = {}, keepPhrase?: Hands["shelf"]["keepPhrase"]) {
  const store = createStore({ screen: "bench" });
  const kept: CardPhrase[] = [];
  const jobs: JobCard[] = [];
  const spoken: string[] = [];
  const moods: string[] = [];
  let clock = Date.parse("2026-03-04T16:00:00Z");
  let ids = 0;
  const sounds: string[] = [];
  const keepsakes: KeepsakeDeeds = {
    ...keepsakeDeeds(store, {
      shelf: { keep: async () => {}, bytes: async () => undefined, ofJob: async () => [] },
      room: { write: (_bytes, put) => put() },
      encode: async () => undefined,
      fetchPhoto: async () => ({ ok: false, status: 0, problem: "no network" }),
      counts: async () => ({}),
      flush: () => {},
      speak: (text) => void spoken.push(text),
      newId: () => `kept-${ids++}`,
      now: () => new Date(clock),
    }),
    keepClip: async (phrase) => void sounds.push(phrase.text),
  };
  const hands: Hands = {
    keepsakes,
    shelf: {
      keepJob: async (card) => void jobs.push(card),
      keepPhrase: keepPhrase ?? (async (phrase) => void kept.push(phrase)),
      markSeen: async () => {},
      closeJob: async () => {},
      setOpenJob: async () => {},
      openJob: async () => undefined,
      job: async (id) => {
        const card = jobs.find((one) => one.id === id);
        return card && { card, phrases: kept.filter((one) => one.job === id) };
      },
      keepSettings: async () => {},
      askAgain: async () => {},
      keepTaught: async () => {},
    },
    flush: () => {},
    sendWords: () => {},
    knowValve: async () => undefined,
    keptValve: async () => undefined,
    turned(now) {
      if (now.is !== "answered") return;
      if (now.say) spoken.push(now.say);
      if (now.mood) moods.push(now.mood);
    },
    quiet: () => {},
    newId: () => `id-${ids++}`,
    now: () => new Date(clock),
    takeNewer: () => {},
    ...change,
  };
  const setClock = (at: string) => {
    clock = Date.parse(at);
  };
  return { store, acts: deeds(store, hands), kept, jobs, spoken, moods, sounds, setClock };
}

describe("at the bench", () => {
  it("a spoken tag opens the job; what was said beside the tag is its first phrase", async () => {
    const { store, acts, kept, jobs } = bench();
    await acts.say("L C V two one three, seat worn one side", "heard", 0.9);
    expect(jobs).toMatchObject([{ tag: "LCV-213" }]);
    expect(kept.map((one) => one.text)).toEqual(["L C V two one three, seat worn one side"]);
    expect(store.state().card?.tag).toBe("LCV-213");
  });

  it("a bare tag is only the name of the job", async () => {
    const { acts, kept, jobs } = bench();
    await acts.say("lcv-213", "typed");
    expect(jobs).toMatchObject([{ tag: "LCV-213" }]);
    expect(kept).toEqual([]);
  });

  it("a visit is told by its site's day, which may not be the device's", async () => {
    const history = [{ on: "2026-03-04", entries: hear({ id: "x", say: ["flipped the seat"] }).entries }];
    const known = { tag: "LCV-213", site: "north", valve: { tag: "LCV-213" }, history, fleet: [] };
    const { store, acts, spoken, setClock } = bench({ keptValve: async () => known });
    store.happen({ is: "listed", valves: [], sites: [{ site: "north", name: "North", zone: "America/Denver" }] });
    // ten at night in Denver, already tomorrow by universal time
    setClock("2026-03-05T05:00:00Z");
    await acts.start("LCV-213", "north");
    await expect.poll(() => spoken.join(" ")).toBe("Last seen earlier today; seat was flipped.");
  });

  it("words that name no valve are held in sight, and kept if asked", async () => {
    const { store, acts, kept } = bench();
    await acts.say("seat worn one side", "typed");
    expect(store.state().stray).toBe("seat worn one side");
    expect(store.state().card).toBeUndefined();
    await acts.startWithStray();
    expect(kept.map((one) => one.text)).toEqual(["seat worn one side"]);
    expect(store.state().stray).toBeUndefined();
  });

  const known = (...tags: string[]) => tags.map((tag) => ({ tag, site: "north" }));

  it("a part of a tag that one valve alone has is asked about, and a yes starts its job, with nothing said in it", async () => {
    const { store, acts, kept, spoken } = bench();
    store.happen({ is: "listed", valves: known("LCV-213", "LCV-214", "PCV-113"), sites: [] });
    await acts.say("two thirteen", "heard");
    expect(spoken).toEqual(["LCV-213. Right?"]);
    expect(store.state().card).toBeUndefined();
    await acts.say("yes", "heard");
    expect(store.state().card?.tag).toBe("LCV-213");
    expect(kept).toEqual([]);
  });

  it("a tag that is new, and with which others begin, is asked about before it opens a job", async () => {
    const { store, acts, spoken } = bench();
    store.happen({ is: "listed", valves: known("HV-201", "HV-202", "PCV-113"), sites: [] });
    await acts.say("h v two", "heard");
    expect(spoken).toEqual(["HV-2 is new here, and 2 valves begin so. Open HV-2?"]);
    expect(store.state().card).toBeUndefined();
    await acts.say("no", "heard");
    expect(store.state()).toMatchObject({ offered: undefined, stray: "HV-2" });
    await acts.say("h v two", "heard");
    await acts.say("h v two oh one", "heard");
    expect(store.state().card?.tag).toBe("HV-201");
  });

  it("a new tag with which others begin opens on a yes, and at once where more was said than the tag", async () => {
    const one = bench();
    one.store.happen({ is: "listed", valves: known("HV-201"), sites: [] });
    await one.acts.say("HV-20", "typed");
    expect(one.spoken).toEqual(["HV-20 is new here, and one valve begins so. Open HV-20?"]);
    await one.acts.say("yes", "typed");
    expect(one.store.state().card?.tag).toBe("HV-20");
    expect(one.kept).toEqual([]);
    const other = bench();
    other.store.happen({ is: "listed", valves: known("HV-201"), sites: [] });
    await other.acts.say("HV-20, seat worn one side", "typed");
    expect(other.store.state().card?.tag).toBe("HV-20");
    expect(other.kept.map(({ text }) => text)).toEqual(["HV-20, seat worn one side"]);
  });

  it("a part of a tag that several have is held in sight, and more of it is asked for", async () => {
    const { store, acts, spoken, moods } = bench();
    store.happen({ is: "listed", valves: known("LCV-213", "LCV-214", "PCV-113"), sites: [] });
    await acts.say("thirteen", "heard");
    expect(store.state()).toMatchObject({ stray: "thirteen", offered: undefined });
    expect(spoken).toEqual(["2 valves have that. Say more of the tag."]);
    expect(moods).toEqual(["doubtful"]);
  });

  it("a hazard with no job open is kept at once and spoken even with the read-back off", async () => {
    const { acts, kept, spoken } = bench();
    acts.set({ readBack: "tones" });
    await acts.say("I smell gas", "heard");
    expect(kept.map((one) => one.text)).toEqual(["I smell gas"]);
    expect(spoken.join()).toMatch(/^Stop\. Stop\. gas/);
  });

  it("nothing talks over an alert that nobody has seen, and the job does not close behind it", async () => {
    const { store, acts, spoken } = bench();
    await acts.start("LCV-213");
    await acts.say("I smell gas", "heard");
    await acts.say("seat worn one side", "heard");
    await acts.say("close it out", "heard");
    expect(spoken).toHaveLength(1);
    expect(store.state().card).toBeDefined();
    await acts.seenAlert();
    await acts.close();
    expect(store.state().card).toBeUndefined();
  });

  it("undo is a phrase like any other: nothing is taken off the record", async () => {
    const { store, acts, kept } = bench();
    await acts.start("LCV-213");
    await acts.say("plug cracked", "typed");
    await acts.undo();
    expect(kept.map((one) => one.text)).toEqual(["plug cracked", "scratch that"]);
    expect(store.state().heard.entries).toEqual([]);
  });

  it("what is overheard while muted is not taken down; a hazard, the word that ends it and typing are", async () => {
    const { acts, kept } = bench();
    await acts.start("LCV-213");
    for (const text of ["stop listening", "seat worn one side", "I smell gas", "start listening", "plug cracked"])
      await acts.say(text, "heard");
    expect(kept.map((one) => one.text)).toEqual(["stop listening", "I smell gas", "start listening", "plug cracked"]);
  });

  it("phrases keep their order when the clock is set back", async () => {
    const { acts, kept, setClock } = bench();
    await acts.start("LCV-213");
    await acts.say("seat worn one side", "typed");
    setClock("2026-03-04T15:00:00Z");
    await acts.say("flipped it", "typed");
    const [first, second] = kept.map((one) => Date.parse(one.saidAt));
    expect(second).toBeGreaterThan(first ?? Number.NaN);
  });

  it("a phrase that the device could not write is never shown as kept, and can be tried again", async () => {
    let full = true;
    const { store, acts } = bench({}, async () => {
      if (full) throw new Error("the disk is full");
    });
    await acts.start("LCV-213");
    await acts.say("seat worn", "typed");
    expect(store.state().phrases).toMatchObject([{ delivery: "not_kept", problem: "the disk is full" }]);
    full = false;
    await acts.keepAgain(store.state().phrases[0]?.id ?? "");
    expect(store.state().phrases).toMatchObject([{ delivery: "waiting" }]);
  });

  it("a closed job opens again as it was", async () => {
    const { store, acts } = bench();
    await acts.start("LCV-213");
    await acts.say("seat worn one side", "typed");
    await acts.say("close it out", "typed");
    await acts.say("yes", "typed");
    expect(store.state().closed?.tag).toBe("LCV-213");
    await acts.reopen();
    expect(store.state().card?.tag).toBe("LCV-213");
    expect(store.state().phrases.map((one) => one.text)).toEqual(["seat worn one side", "close it out"]);
  });
});

describe("a word of the site", () => {
  it("is read at once, in what was said before it was taught too, and kept", async () => {
    const { store, acts } = bench();
    await acts.start("LCV-213");
    await acts.say("doohickey is bent", "typed");
    expect(store.state().heard.entries).toEqual([]);
    const taught = await acts.teach("Doohickey", { part: "positioner" });
    expect(taught).toEqual({ ok: true, value: { say: "doohickey", as: { part: "positioner" } } });
    expect(store.state().heard.entries).toMatchObject([{ type: "finding", part: "positioner", condition: "bent" }]);
    expect(store.state().taught).toMatchObject([{ say: "doohickey", as: { part: "positioner" }, site: undefined }]);
  });

  it("is not taught twice, and is forgotten when told so", async () => {
    const { store, acts } = bench();
    await acts.start("LCV-213");
    await acts.teach("doohickey", { part: "positioner" });
    expect(await acts.teach("doohickey", { part: "plug" })).toMatchObject({ ok: false });
    const [word] = store.state().taught;
    if (word) await acts.unteach(word);
    // kept, no longer read, until the server has been told
    expect(store.state().taught).toMatchObject([{ id: word?.id, withdrawn: true, sent: false }]);
    await acts.say("doohickey is bent", "typed");
    expect(store.state().heard.entries).toEqual([]);
  });

  it("stays with the site it was taught at", async () => {
    const { store, acts } = bench();
    acts.set({ site: "north" });
    await acts.teach("doohickey", { part: "positioner" });
    await acts.start("LCV-1", "south");
    await acts.say("doohickey is bent", "typed");
    expect(store.state().heard.entries).toEqual([]);
    await acts.start("LCV-2", "north");
    await acts.say("doohickey is bent", "typed");
    expect(store.state().heard.entries).toMatchObject([{ part: "positioner" }]);
  });
});

describe("the camera", () => {
  async function opened() {
    const all = bench();
    await all.acts.start("LCV-213");
    for (const words of ["seat worn one side", "bonnet bolts torqued to twenty eight"])
      await all.acts.say(words, "typed");
    await all.acts.say("take a picture", "heard");
    return all;
  }

  it("opens at a word, for the last finding that stands", async () => {
    const { store, spoken } = await opened();
    expect(store.state().camera).toEqual({ phrase: store.state().phrases[0]?.id });
    expect(spoken.at(-1)).toBe("Say now.");
  });

  it("belongs to the job alone once the finding was scratched", async () => {
    const { store, acts } = bench();
    await acts.start("LCV-213");
    for (const words of ["seat worn one side", "scratch that", "take a picture"]) await acts.say(words, "typed");
    expect(store.state().camera).toEqual({ phrase: undefined });
  });

  it("takes orders that are no phrases of the job, and nothing else is lost on it", async () => {
    const { store, acts, kept } = await opened();
    await acts.say("Now.", "heard");
    expect(store.state().camera?.order).toEqual({ is: "take" });
    await acts.say("in three", "heard");
    expect(store.state().camera?.order).toEqual({ is: "timer" });
    await acts.say("plug cracked", "heard");
    await acts.say("never mind", "heard");
    expect(store.state().camera).toBeUndefined();
    await acts.say("now", "heard");
    expect(kept.map((one) => one.text).slice(3)).toEqual(["plug cracked", "now"]);
  });

  it("keeps a photograph with what it was opened for, and says so only after it is on the device", async () => {
    const { store, acts, spoken } = await opened();
    const picture = { bytes: new ArrayBuffer(4), type: "image/jpeg", width: 2, height: 2 };
    expect(await acts.keepsakes.keepPhoto(picture)).toBeUndefined();
    expect(store.state().keepsakes).toMatchObject([{ kind: "photo", phrase: store.state().phrases[0]?.id, size: 4 }]);
    expect(spoken.at(-1)).toBe("Photo kept.");
  });
});

describe("the sound of a phrase", () => {
  it("is kept with what was heard into the job, not with a bare tag nor with an order to the camera", async () => {
    const { acts, sounds } = bench();
    const sound = Promise.resolve({ samples: new Float32Array(1600), rate: 16_000 });
    for (const words of ["LCV-213", "seat worn one side", "take a picture", "now"])
      await acts.say(words, "heard", 0.9, sound);
    expect(sounds).toEqual(["seat worn one side", "take a picture"]);
  });

  it("is not wanted where the device or the site says so", async () => {
    const { store, acts } = bench();
    const keeping = { clips: "none", days: 30 } as const;
    store.happen({ is: "listed", valves: [], sites: [{ site: "north", name: "North", zone: "Etc/UTC", keeping }] });
    expect(acts.keepsakes.wantsSound()).toBe(true);
    await acts.start("LCV-213", "north");
    expect(acts.keepsakes.wantsSound()).toBe(false);
    await acts.start("LCV-213", "south");
    expect(acts.keepsakes.wantsSound()).toBe(true);
    acts.set({ keepSound: false });
    expect(acts.keepsakes.wantsSound()).toBe(false);
  });
});
