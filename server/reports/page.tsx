/** @jsxRuntime automatic @jsxImportSource hono/jsx */
// said here as well as in tsconfig: tsx follows no project references
import { raw } from "hono/html";
import type { Child, FC } from "hono/jsx";
import { sentences } from "../wording/sentences.ts";
import type { CountedPart, Report } from "./day-report.ts";

/**
 * The report as a page: by itself in a mail (`css` inside), or served with its style beside it (`href`),
 * because the served pages allow no inline style.
 */
export function reportPage(report: Report, style: { css: string } | { href: string }): string {
  const page = (
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="color-scheme" content="light dark" />
        <title>{report.title}</title>
        {"css" in style ? <style>{raw(style.css)}</style> : <link rel="stylesheet" href={style.href} />}
        {"css" in style ? null : <link rel="icon" href="/icon.svg" type="image/svg+xml" />}
      </head>
      <body>
        <Body report={report} />
      </body>
    </html>
  );
  return `<!doctype html>${page.toString()}`;
}

const Body: FC<{ report: Report }> = ({ report }) => (
  <main>
    <h1>
      Valve work <bdi>{report.site}</bdi> <span class="day">{report.day}</span>
    </h1>
    {report.correction ? <p class="review">{report.correction}</p> : null}
    <Section title="Hazards" show={report.hazards.length > 0} kind="alarm">
      <ul>
        {report.hazards.map((one) => (
          <li>
            <strong>
              <bdi>{one.valve}</bdi>: {one.what}
            </strong>{" "}
            at {one.time}, in the words <q dir="auto">{one.words}</q>
          </li>
        ))}
      </ul>
    </Section>
    <Section title="Failed tests" show={report.failed.length > 0} kind="alarm">
      <ul>
        {report.failed.map((one) => (
          <li>
            <bdi>{one.valve}</bdi>: {one.what}
          </li>
        ))}
      </ul>
    </Section>
    <p class="review">{report.reviewed}</p>
    <Valves report={report} />
    <FollowUps report={report} />
    <Section title="Parts used" show={report.parts.used.length > 0}>
      <Parts parts={report.parts.used} />
    </Section>
    <Section title="Parts needed" show={report.parts.needed.length > 0}>
      <Parts parts={report.parts.needed} />
    </Section>
    <Section title={`Due within ${report.dueDays} days`} show={report.due.length > 0}>
      <ul>
        {report.due.map((one) => (
          <li class={one.overdue ? "urgent" : ""}>
            <bdi>{one.valve}</bdi>: {one.what} <span class="why">{one.why}</span>
          </li>
        ))}
      </ul>
    </Section>
    <Section title="Not understood, word for word" show={report.notUnderstood.length > 0}>
      <ul>
        {report.notUnderstood.map((one) => (
          <li>
            {one.time} <bdi>{one.valve}</bdi>: <q dir="auto">{one.text}</q>
            <span class="why">
              <bdi>{one.what}</bdi>
            </span>
          </li>
        ))}
      </ul>
    </Section>
    <Section title="Totals" show>
      <table>
        <tbody>
          {report.totals.map((one) => (
            <tr>
              <th scope="row">{one.what}</th>
              <td>{String(one.count)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Section>
    <footer>
      <p class="caution">{report.caution}</p>
      <p>Times: {report.zone}.</p>
    </footer>
  </main>
);

const Section: FC<{ title: string; show: boolean; kind?: string; children?: Child }> = ({
  title,
  show,
  kind,
  children,
}) =>
  show ? (
    <section class={kind ?? ""}>
      <h2>{title}</h2>
      {children}
    </section>
  ) : null;

const Valves: FC<{ report: Report }> = ({ report }) => (
  <section>
    <h2>What was found and done</h2>
    {report.valves.length === 0 ? <p>No job was recorded on this day.</p> : null}
    {report.valves.map((one) => (
      <article>
        <h3>
          <bdi>{one.valve}</bdi>{" "}
          <span class="why">{[one.about, one.time, byWords(one.by)].filter(Boolean).join(", ")}</span>
        </h3>
        {one.done.length + one.tests.length === 0 ? <p>Nothing was understood for this valve.</p> : null}
        {one.done.length > 0 ? <p dir="auto">{sentences(one.done)}</p> : null}
        {one.tests.length > 0 ? <p>{one.tests.join(" ")}</p> : null}
        {one.checks.length > 0 ? <p class="why">{one.checks.join(" ")}</p> : null}
      </article>
    ))}
  </section>
);

const FollowUps: FC<{ report: Report }> = ({ report }) => (
  <Section title="Follow-ups" show={report.followUps.length > 0}>
    <ul>
      {report.followUps.map((one) => (
        <li class={one.urgent ? "urgent" : ""}>
          <bdi>{one.valve}</bdi>: {one.what}, <strong>{one.when}</strong>{" "}
          <span class="why">
            {one.owner}. {one.why}
          </span>
        </li>
      ))}
    </ul>
  </Section>
);

const Parts: FC<{ parts: CountedPart[] }> = ({ parts }) => (
  <ul>
    {parts.map((one) => (
      <li>
        {String(one.count)} × {one.part} <span class="why">{one.valves}</span>
      </li>
    ))}
  </ul>
);

const byWords = (names: readonly string[]) => (names.length > 0 ? `by ${names.join(", ")}` : "");
