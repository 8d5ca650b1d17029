import { readFile } from "node:fs/promises";
import { describe, expect, it } from "vitest";
import { bench, folder, id, job, phrase } from "./app-under-test.ts";
import { client, codeFor, enrolled } from "./enrolled.ts";

const PLATE = new URL("./keepsakes/pictures/plate.jpg", import.meta.url);

/** The content policy as a table: what each kind of thing may come from. */
function policyOf(headers: Headers): Map<string, string[]> {
  const text = headers.get("content-security-policy") ?? "";
  return new Map(
    text.split(";").map((part) => {
      const [kind = "", ...from] = part.trim().split(/\s+/);
      return [kind, from];
    }),
  );
}

/** What a page may take from where: itself, and pictures and sound that it made or holds. */
const ALLOWED = /^('self'|'none'|data:|blob:|'wasm-unsafe-eval')$/;

describe("every kind of answer", () => {
  it("is kept in its place: no other host, no inline script, no frame, no guessing, no cache, no name of what runs it", async () => {
    const web = await folder();
    const { app, store } = await bench(web);
    const { token } = await enrolled(store, "A. Person", ["lead"]);
    const { call } = client(app, { token });
    const one = job({ tag: "LCV-213", site: "north" });
    const photo = id();
    await call("PUT", "/api/sites/north", { name: "North", zone: "Etc/UTC" });
    await call("POST", "/api/phrases", { jobs: [one], phrases: [phrase(one, "seat worn")] });
    await app.request(`/api/photos/${photo}?job=${one.id}&at=2026-03-04T17:01:00Z`, {
      method: "PUT",
      body: await readFile(PLATE),
      headers: { authorization: `Bearer ${token}`, "content-type": "image/jpeg", origin: "http://localhost" },
    });
    const { address } = (await (await call("POST", "/api/sites/north/calendar")).json()) as { address: string };
    // every read of the document, answered or refused, and what stands beside it
    const document = (await (await call("GET", "/api/openapi.json")).json()) as {
      paths: Record<string, Record<string, unknown>>;
    };
    const reads = Object.entries(document.paths)
      .filter(([, methods]) => "get" in methods)
      .map(([path]) => path.replace("{site}", "north").replace("{tag}", "LCV-213").replace("{id}", one.id));
    expect(reads.length).toBeGreaterThan(15);
    const paths = [...reads, `/api/photos/${photo}`, address, "/report?site=north&day=2026-03-04", "/report.css"];
    for (const path of [...paths, "/", "/nowhere.js", "/healthz", "/readyz", "/metrics", "/api/nothing"]) {
      const answer = await call("GET", path);
      const { headers } = answer;
      const policy = policyOf(headers);
      for (const [kind, from] of policy) for (const source of from) expect(source, `${path}: ${kind}`).toMatch(ALLOWED);
      expect(policy.get("default-src"), path).toBeDefined();
      expect(policy.get("frame-ancestors"), path).toEqual(["'none'"]);
      if (!policy.has("sandbox")) {
        expect(policy.get("object-src"), path).toEqual(["'none'"]);
        expect(policy.get("base-uri"), path).toEqual(["'none'"]);
        expect(policy.get("style-src"), path).toEqual(["'self'"]);
      }
      expect(headers.get("x-content-type-options"), path).toBe("nosniff");
      expect(headers.get("referrer-policy"), path).toBe("no-referrer");
      expect(headers.get("cross-origin-opener-policy"), path).toBe("same-origin");
      expect(headers.get("cross-origin-resource-policy"), path).toBe("same-origin");
      if (path.startsWith("/api/")) expect(headers.get("cache-control"), path).toMatch(/no-store|no-cache/);
      for (const name of ["access-control-allow-origin", "server", "x-powered-by"])
        expect(headers.has(name), `${path}: ${name}`).toBe(false);
      if (answer.status === 200) expect(headers.get("content-type"), path).toMatch(/^[a-z]+\/[a-z.+-]+/);
    }
  });

  it("sets one cookie only, at signing in, that no script reads and no other site brings along", async () => {
    const { app, store } = await bench();
    const { person } = await enrolled(store, "A. Person", ["lead"]);
    const { code } = await codeFor(store, person, "password");
    const page = client(app, { origin: "https://localhost" });
    const body = { code, password: "three valves in a row" };
    const answer = await page.call("POST", "/api/first-password", body);
    const set = answer.headers.getSetCookie();
    expect(set).toHaveLength(1);
    expect(set[0]).toMatch(/^__Host-handsfull=hfs_/);
    for (const word of ["HttpOnly", "Secure", "SameSite=Lax", "Path=/"]) expect(set[0]).toContain(word);
    expect(set[0]).not.toContain("Domain");
    expect((await page.call("GET", "/api/me")).headers.getSetCookie()).toEqual([]);
  });
});
