import { describe, expect, it } from "vitest";
import type { ReviewPage } from "../../../core/index.ts";
import { bench, id, job, phrase } from "../app-under-test.ts";

async function said(tag: string, words: readonly (string | { text: string; confidence: number })[], site = "north") {
  const at = await bench();
  const one = job({ tag, site });
  const phrases = words.map((word, n) =>
    typeof word === "string"
      ? phrase(one, word, n)
      : { ...phrase(one, word.text, n), how: "heard" as const, confidence: word.confidence },
  );
  await at.ask("POST", "/api/phrases", { jobs: [one], phrases });
  const page = async (query = ""): Promise<ReviewPage> => at.ask("GET", `/api/review${query}`);
  return { ...at, job: one, phrases, page };
}

describe("the queue", () => {
  it("puts what can hurt first, then what can mislead, then the rest, each with its reason in words", async () => {
    const { page } = await said("LCV-213", [
      "seat worn one side",
      "replaced the cage o ring",
      "the frobnitz is wonky",
      "leaking by at sixty psi",
      "diaphragm torn",
      "no wait it's the left one in",
      "hold on I smell gas",
      { text: "stem bent", confidence: 0.4 },
      "cage o ring reused",
      "read it back",
    ]);
    const { items, waiting } = await page();
    const reasons = items.map((one) => one.reasons[0]?.reason ?? "certain");
    expect(reasons[0]).toBe("hazard");
    expect(reasons[1]).toBe("failed_test");
    expect(reasons[2]).toBe("contradiction");
    expect(reasons).toContain("low_confidence");
    expect(reasons).toContain("unread");
    expect(reasons.at(-1)).toBe("certain");
    const order = [
      "hazard",
      "failed_test",
      "contradiction",
      "changed",
      "low_confidence",
      "unread",
      "question",
      "assumed",
      "late",
      "certain",
    ];
    expect([...reasons].sort((a, b) => order.indexOf(a) - order.indexOf(b))).toEqual(reasons);
    expect(items[0]?.reasons[0]?.why).toMatch(/hazard was called/);
    expect(items[2]?.reasons[0]?.why).toMatch(/^Said replaced, and said reused\.$/);
    expect(items.some((one) => one.said === "read it back")).toBe(false);
    expect(waiting.reduce((sum, one) => sum + one.count, 0)).toBe(items.length);
    // what was said just before stands beside it
    expect(items[0]?.before).toEqual(["diaphragm torn", "no wait it's the left one in"]);
  });

  it("finds a seat flipped twice only by the record, and lets it go once the record is put right", async () => {
    const at = await said("LCV-213", ["seat worn one side", "flipped it"]);
    const later = job({ tag: "LCV-213", site: "north", startedAt: "2026-04-04T10:00:00-06:00" });
    const flip = { ...phrase(later, "seat worn one side, flipped it"), saidAt: "2026-04-04T16:00:00Z" };
    await at.ask("POST", "/api/phrases", { jobs: [later], phrases: [flip] });
    const first = (await at.page()).items[0];
    expect(first?.phrase).toBe(flip.id);
    expect(first?.reasons[0]).toMatchObject({ reason: "contradiction" });
    const earlier = (await at.page()).items.find((one) => one.said === "flipped it");
    await at.ask("POST", `/api/review/${earlier?.phrase}`, {
      id: id(),
      what: "amended",
      words: "replaced it",
      seen: 0,
    });
    const now = (await at.page()).items.find((one) => one.phrase === flip.id);
    expect(now?.reasons.map((one) => one.reason)).not.toContain("contradiction");
  });

  it("pages without missing or repeating one, though some are decided between the pages", async () => {
    const at = await said(
      "LCV-213",
      Array.from({ length: 23 }, (_, n) => (n % 3 ? "seat worn one side" : "leaking by at sixty psi")),
    );
    const seen: string[] = [];
    let next: string | undefined;
    do {
      const page = await at.page(`?limit=5${next ? `&after=${encodeURIComponent(next)}` : ""}`);
      for (const one of page.items) {
        seen.push(one.phrase);
        await at.ask("POST", `/api/review/${one.phrase}`, {
          id: id(),
          what: "accepted",
          seen: 0,
          meaning: one.meaning,
        });
      }
      next = page.next;
    } while (next);
    expect([...seen].sort()).toEqual(at.phrases.map((one) => one.id).sort());
    const left = await at.page();
    expect(left.items).toEqual([]);
    expect(left.waiting).toEqual([]);
  });

  it("is of one site where one is named", async () => {
    const at = await said("LCV-213", ["seat worn"]);
    const other = job({ tag: "LCV-9", site: "south" });
    await at.ask("POST", "/api/phrases", { jobs: [other], phrases: [phrase(other, "seat worn")] });
    expect((await at.page("?site=south")).items.map((one) => one.tag)).toEqual(["LCV-9"]);
    expect((await at.page()).items).toHaveLength(2);
  });
});
