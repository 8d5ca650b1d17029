import { readFileSync } from "node:fs";
import { z } from "@hono/zod-openapi";
import { siteKeySchema } from "../../../core/shapes/served.ts";
import { dateSchema } from "../../../core/shapes/valve.ts";
import { may } from "../../access.ts";
import { Refusal, refusalOf } from "../../errors.ts";
import { REPORT_CSS } from "../../places.ts";
import { dayData } from "../../reports/day-data.ts";
import { dayMail } from "../../reports/day-mail.ts";
import { makeReport } from "../../reports/day-report.ts";
import { reportPage } from "../../reports/page.tsx";
import { reportPdf } from "../../reports/pdf.ts";
import { reportText } from "../../reports/text.ts";
import { blank, type Given, router } from "../kit.ts";
import { settingsOf } from "../sending/store.ts";

const querySchema = z.object({
  site: siteKeySchema,
  day: blank(dateSchema.optional()),
  form: blank(z.enum(["page", "text", "pdf", "mail"]).optional()),
});

/** The day's report as a page, or with `form` as plain text, as PDF, or as the mail it goes in. */
export function reportRoutes({ store, mail }: Given) {
  const routes = router();
  const css = readFileSync(REPORT_CSS, "utf8");
  routes.get("/report/report.css", (c) =>
    c.body(css, 200, { "content-type": "text/css; charset=utf-8", "cache-control": "no-cache" }),
  );
  routes.get("/report", may("read_all").middleware, async (c) => {
    const query = querySchema.safeParse(c.req.query());
    if (!query.success) throw refusalOf(query.error, "query (/report?site=SITE&day=YYYY-MM-DD)");
    const { site, day, form } = query.data;
    const data = await dayData(store, site, day);
    if (!data) throw new Refusal(404, `No site ${site} is known here. GET /api/sites lists those that are.`);
    const name = `valve-work-${data.day}`;
    if (form === "mail") {
      const to = (await settingsOf(store.db, site))?.recipients;
      const letter = await dayMail(store, data, 1, { from: mail.from, to, date: mail.clock() });
      return c.body(new Uint8Array(letter), 200, file(`${name}.eml`, "message/rfc822"));
    }
    const report = makeReport(data);
    if (form === "pdf")
      return c.body(new Uint8Array(await reportPdf(report)), 200, file(`${name}.pdf`, "application/pdf"));
    c.header("cache-control", "no-store");
    if (form === "text") return c.text(reportText(report));
    return c.html(reportPage(report, { href: "/report/report.css" }));
  });
  return routes;
}

const file = (name: string, type: string) => ({
  "content-type": type,
  "content-disposition": `attachment; filename="${name}"`,
  "cache-control": "no-store",
});
