import { describe, expect, it } from "vitest";
import type { Right } from "../../../core/index.ts";
import { ROLES } from "../../../core/shapes/roles.ts";
import { rightsOf } from "../../../server/accounts/roles.ts";
import { EVERY_OPERATION } from "../every-operation.ts";
import { DAY, nothing, type Things, twoSites } from "../two-sites.ts";

const PAGES: [name: string, right: Right][] = [["GET /report", "read_all"]];

/** The text with each thing that was named called by what it is: what is left must be alike whatever was named. */
function unnamed(text: string, of: Things): string {
  const all = Object.entries(of).sort(([, a], [, b]) => b.length - a.length);
  return all.reduce((left, [name, value]) => left.replaceAll(value, `<${name}>`), text);
}

describe("somebody kept to one site", () => {
  it("sees and changes nothing of another, and cannot tell what is there from what is nowhere", {
    timeout: 120_000,
  }, async () => {
    const { boss, must, south, keptTo } = await twoSites();
    const document = await must(boss, "GET", "/api/openapi.json");
    const operations = Object.entries(document.paths as Record<string, Record<string, { "x-right": Right }>>)
      .flatMap(([path, methods]) =>
        Object.entries(methods).map(([method, about]): [string, Right] => [
          `${method.toUpperCase()} ${path}`,
          about["x-right"],
        ]),
      )
      .concat(PAGES);
    expect(Object.keys(EVERY_OPERATION).sort()).toEqual(operations.map(([name]) => name).sort());

    const look = async () => {
      const { job, signed, phrase, asked, tag, clip, photo } = south.things;
      const paths = [
        `jobs/${job}`,
        `jobs/${signed}`,
        `review/${phrase}`,
        `review/${asked}`,
        ...[
          `valves/${tag}`,
          "valves",
          "sites",
          "people",
          "signing?state=signed",
          "signing",
          "words",
          "audit?most=1000",
        ],
        ...["stock", "words", "report", `reports/${DAY}`, "calendar"].map((what) => `sites/south/${what}`),
      ];
      const seen: Record<string, unknown> = {};
      for (const path of paths) seen[path] = await must(boss, "GET", `/api/${path}`);
      for (const path of [`clips/${clip}`, `photos/${photo}`])
        seen[path] = (await boss.call("GET", `/api/${path}`)).headers.get("etag");
      return seen;
    };
    const nowhere = nothing();
    const callers = [];
    for (const role of ROLES) callers.push({ role, who: await keptTo("north", role) });
    const before = await look();

    for (const { role, who } of callers) {
      for (const [name, right] of operations) {
        const [method = "", path = ""] = name.split(" ");
        const tries = (of: Things) => EVERY_OPERATION[name]?.(of) ?? { calls: [] };
        const ask = async (of: Things, n: number) => {
          const { at = "", calls } = tries(of);
          const call = calls[n];
          const filled = path.replace(/\{(id|site|tag)\}/, at).replace("{day}", DAY);
          const answer = await who.call(method, `${filled}${call?.query ?? ""}`, call?.body);
          return { status: answer.status, expects: call?.expects, text: unnamed(await answer.text(), of) };
        };
        for (let n = 0; n < tries(nowhere).calls.length; n++) {
          const what = `${role} ${name} ${n}`;
          const real = await ask(south.things, n);
          const made = await ask(nowhere, n);
          expect(real, what).toEqual(made);
          expect(real.status, what).toBe(rightsOf([role], ["north"]).includes(right) ? real.expects : 403);
          for (const tell of south.tells) expect(real.text.toLowerCase(), what).not.toContain(tell.toLowerCase());
          if (name === "POST /api/phrases" && real.status === 200)
            expect(JSON.parse(real.text).results, what).toMatchObject([{ status: "refused", entries: [], unread: [] }]);
        }
      }
    }
    expect(await look()).toEqual(before);
  });

  it("sees and does at his own what his roles allow", async () => {
    const { must, north, keptTo, app, speaker } = await twoSites().then((at) => ({ ...at, speaker: at.north.speaker }));
    const lead = await keptTo("north", "lead");
    const { job, phrase, tag, clip, photo } = north.things;
    const text = async (path: string) => {
      const answer = await lead.call("GET", path);
      expect(answer.status, path).toBe(200);
      return answer.text();
    };
    const lists = ["jobs", "valves", "due?days=3650", "follow-ups", "search", "review", "signing", "export"];
    for (const path of lists) expect(await text(`/api/${path}`), path).toContain(tag);
    for (const path of [`jobs/${job}`, `review/${phrase}`, `valves/${tag}`, `entries?site=north&from=${DAY}&to=${DAY}`])
      expect(await text(`/api/${path}`), path).toContain(tag);
    expect(await text(`/report?site=north&day=${DAY}`)).toContain(tag);
    for (const path of [`clips/${clip}`, `photos/${photo}`]) await text(`/api/${path}`);
    expect((await must(lead, "GET", "/api/sites")).sites).toMatchObject([{ site: "north" }]);
    expect((await must(lead, "GET", "/api/me")).sites).toEqual(["north"]);
    await must(lead, "PUT", "/api/sites/north", { name: "Northfield", zone: "America/Denver" });
    await must(lead, "PUT", `/api/valves/${tag}`, { site: "north", size_in: 3 });
    const answer = await app.request("/api/questions", { headers: { authorization: `Bearer ${speaker.token}` } });
    expect((await answer.json()).questions).toMatchObject([{ id: north.things.question }]);
  });

  it("may read the calendar of another site where he was given its address, as anybody may", async () => {
    const { app, south } = await twoSites();
    const feed = await app.request(south.calendar, {}, {});
    expect(feed.status).toBe(200);
    expect(await feed.text()).toContain(south.things.tag);
  });
});
