import { eq } from "drizzle-orm";
import { expect, it } from "vitest";
import { record } from "../../../server/audit/record.ts";
import { AT_COMMAND } from "../../../server/commands/at-command.ts";
import { audit } from "../../../server/db/people-tables.ts";
import { bench } from "../app-under-test.ts";
import { run } from "../running.ts";

it("audit verifies the trail, and prints where it breaks", { timeout: 40_000 }, async () => {
  const { store, url } = await bench();
  for (let n = 1; n <= 3; n++) await store.write((tx) => record(tx, AT_COMMAND, "stock_set", { site: "north", n }));
  const whole = await run("server/commands/audit.ts", [], { DATABASE_URL: url });
  expect(whole).toMatchObject({ code: 0 });
  const [, noted = ""] = /last is (3:[0-9a-f]{64})\n$/.exec(whole.out) ?? [];
  expect(await run("server/commands/audit.ts", ["--expect", noted], { DATABASE_URL: url })).toMatchObject({
    code: 0,
  });
  await store.write((tx) => tx.update(audit).set({ about: "{}" }).where(eq(audit.n, 2)));
  const broken = await run("server/commands/audit.ts", [], { DATABASE_URL: url });
  expect(broken).toMatchObject({ code: 1, out: "broken at record 2: the record is not as it was written\n" });
});
