import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Found } from "../../../core/index.ts";
import { EVERY_SITE } from "../../../server/accounts/sites-seen.ts";
import { AT_COMMAND } from "../../../server/commands/at-command.ts";
import { daysToList, wordDays, wordsSaid } from "../../../server/db/tables.ts";
import { search as look } from "../../../server/routes/search/store.ts";
import { moveSite } from "../../../server/transfer/move-site.ts";
import { listAnew, listOlder } from "../../../server/when-said/list-older.ts";
import { bench, id, job, phrase } from "../app-under-test.ts";

type Bench = Awaited<ReturnType<typeof bench>>;

const search = async (at: Bench, query: Record<string, string>): Promise<string[]> =>
  (await at.ask("GET", `/api/search?${new URLSearchParams({ limit: "200", ...query })}`)).found.map(
    (one: Found) => one.text,
  );

/** A phrase at noon of a day, in a job of its own. */
function said(text: string, day: string, site?: string) {
  const of = job({ startedAt: `${day}T11:00:00Z`, tag: "LCV-1", ...(site ? { site } : {}) });
  return { job: of, phrase: { ...phrase(of, text), saidAt: `${day}T12:00:00Z` } };
}

async function tell(at: Bench, all: ReturnType<typeof said>[]) {
  for (let n = 0; n < all.length; n += 100) {
    const some = all.slice(n, n + 100);
    await at.ask("POST", "/api/phrases", { jobs: some.map((one) => one.job), phrases: some.map((one) => one.phrase) });
  }
}

/** As in a log that was made before days were listed. */
const forget = (at: Bench, sites: readonly string[]) =>
  at.store.write(async (tx) => {
    await tx.delete(wordDays);
    await tx.delete(wordsSaid);
    for (const site of sites) await listAnew(tx, site);
  });

describe("what is looked for by the days on which it was said", () => {
  it("is found however long ago it was, and by a device whose clock is wrong", async () => {
    const at = await bench();
    await tell(at, [
      said("packing dry", "1998-02-28"),
      said("packing dry", "2019-12-31"),
      said("seat worn", "2026-03-04"),
      said("packing wet", "2071-01-01"),
    ]);
    expect(await search(at, { words: "packing" })).toEqual(["packing wet", "packing dry", "packing dry"]);
    expect(await search(at, { words: "ackin DRY" })).toEqual(["packing dry", "packing dry"]);
    expect(await search(at, { words: "dry", from: "2000-01-01" })).toEqual(["packing dry"]);
    expect(await search(at, { words: "packing", to: "2019-12-31" })).toEqual(["packing dry", "packing dry"]);
    expect(await search(at, { part: "seat" })).toEqual(["seat worn"]);
    expect(await search(at, { part: "cage" })).toEqual([]);
  });

  it("is the same phrases as when all of them are looked through", { timeout: 120_000 }, async () => {
    const at = await bench();
    const words = ["seat", "seats", "Seat,", "worn", "cage", "plug", "bent", "flow", "100%", "stem_a", "x".repeat(90)];
    const chance = fc.sample(
      fc.record({
        text: fc.array(fc.constantFrom(...words), { minLength: 1, maxLength: 4 }),
        day: fc.constantFrom("2025-12-30", "2026-01-01", "2026-03-04", "2026-03-05", "2026-06-30"),
        site: fc.constantFrom(undefined, "north", "south", "a", "b", "c", "d"),
      }),
      { numRuns: 150, seed: 7 },
    );
    await tell(
      at,
      chance.map((one) => said(one.text.join(" "), one.day, one.site)),
    );
    const wishes: Record<string, string>[] = [
      ...["seat", "eat", "seat worn", "cage plug", "bent bent", "0%", "m_a", "x".repeat(50), "lo", "nowhere"].flatMap(
        (words): Record<string, string>[] => [
          { words },
          { words, site: "north" },
          { words, from: "2026-03-05" },
          { words, to: "2026-01-01" },
        ],
      ),
      { part: "seat" },
      { condition: "worn" },
      { part: "plug", condition: "bent" },
      { part: "seat", condition: "bent" },
      { words: "flow", condition: "worn" },
    ];
    const byDays: string[][] = [];
    for (const wish of wishes) byDays.push(await search(at, wish));
    await forget(at, ["", "north", "south", "a", "b", "c", "d"]);
    for (const [n, wish] of wishes.entries()) expect(await search(at, wish), JSON.stringify(wish)).toEqual(byDays[n]);
    expect(byDays.filter((found) => found.length > 0).length).toBeGreaterThan(25);
    expect(await listOlder(at.store)).toBe(150);
    for (const [n, wish] of wishes.entries()) expect(await search(at, wish), JSON.stringify(wish)).toEqual(byDays[n]);
  });

  it("is nowhere at once where the word was never said, among however many", async () => {
    const at = await bench();
    await tell(
      at,
      Array.from({ length: 40 }, (_, n) => said("seat worn", `2026-03-${String((n % 28) + 1).padStart(2, "0")}`)),
    );
    // the phrases themselves are not asked for: whoever looked through them would find it
    await at.store.write((tx) => tx.delete(wordsSaid));
    expect(await search(at, { words: "worn" })).toEqual([]);
  });
});

describe("a look for which there is no more time", () => {
  it("says how far back it came, and the next goes on there: in the end all is found, each phrase once", async () => {
    const at = await bench();
    const days = Array.from({ length: 40 }, (_, n) => `2026-0${(n % 8) + 1}-${String((n % 28) + 1).padStart(2, "0")}`);
    await tell(
      at,
      days.flatMap((day, n) => [
        said("seat worn", day),
        said("cage bent", day),
        said(n % 10 ? "seat ok" : "cage and seat bent", day),
      ]),
    );
    const inTime = await search(at, { words: "cage seat" });
    expect(inTime).toHaveLength(4);
    const found: Found[] = [];
    const lookedTo: string[] = [];
    let after: string | undefined;
    do {
      const page = await look(at.store, { words: "cage seat" }, EVERY_SITE, { most: 50, after, forMs: 0 });
      for (const one of page.found) expect(one.saidAt >= (page.lookedTo ?? ""), one.saidAt).toBe(true);
      found.push(...page.found);
      if (page.lookedTo) lookedTo.push(page.lookedTo);
      after = page.next;
    } while (after);
    expect(found.map((one) => one.text)).toEqual(inTime);
    expect(new Set(found.map((one) => one.phrase)).size).toBe(4);
    // a day a look, and each further back than the one before
    expect(lookedTo.length).toBeGreaterThan(20);
    expect(lookedTo).toEqual([...new Set(lookedTo)].sort().reverse());
  });
});

describe("what was stored before days were listed", () => {
  it("is found all the while, and its days are listed beside what is said and amended meanwhile", async () => {
    const at = await bench();
    const before = Array.from({ length: 600 }, (_, n) =>
      said(`seat worn ${n}`, n % 2 ? "2026-03-04" : "2024-02-29", n % 3 ? "north" : undefined),
    );
    await tell(at, before);
    const amended = before[1]?.phrase.id as string;
    await at.ask("POST", "/api/corrections", {
      id: id(),
      phrase: amended,
      text: "gasket leaks",
      madeAt: "2026-03-05T00:00:00Z",
    });
    await forget(at, ["north", ""]);
    expect(await search(at, { words: "599" })).toEqual(["seat worn 599"]);
    const listing = listOlder(at.store);
    await tell(at, [said("cage cracked", "2020-01-01", "north")]);
    expect(await search(at, { words: "cracked" })).toEqual(["cage cracked"]);
    // one that came before its turn is listed twice, which changes nothing
    expect([600, 601]).toContain(await listing);
    expect(await at.store.db.select().from(daysToList)).toEqual([]);
    expect(await search(at, { words: "cracked" })).toEqual(["cage cracked"]);
    expect(await search(at, { words: "599" })).toEqual(["seat worn 599"]);
    expect(await search(at, { words: "leaks" })).toEqual(["seat worn 1"]);
    expect(await search(at, { words: "worn", part: "gasket" })).toEqual(["seat worn 1"]);
  });

  it("stops between two commits when the server does, and goes on from there", async () => {
    const at = await bench();
    await tell(
      at,
      Array.from({ length: 400 }, (_, n) => said(`seat worn ${n}`, "2026-03-04")),
    );
    await forget(at, [""]);
    let looks = 0;
    const first = await listOlder(at.store, () => ++looks > 1);
    expect(first).toBe(250);
    expect(await listOlder(at.store)).toBe(150);
    expect(await search(at, { words: "399" })).toEqual(["seat worn 399"]);
  });

  it("of a site that was moved here is found too", async () => {
    const from = await bench();
    const to = await bench();
    await from.ask("PUT", "/api/sites/north", { name: "North", zone: "Etc/UTC" });
    await tell(from, [said("seat worn", "2026-03-04", "north")]);
    await moveSite({ site: "north", from, to, address: "https://north.example", who: AT_COMMAND });
    expect(await search(to, { words: "worn" })).toEqual(["seat worn"]);
    await listOlder(to.store);
    expect(await to.store.db.select().from(daysToList)).toEqual([]);
    expect(await search(to, { words: "worn", part: "seat" })).toEqual(["seat worn"]);
    expect(await search(to, { words: "bent" })).toEqual([]);
  });
});
