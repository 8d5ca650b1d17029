import { openedKits, type Share } from "../../../core/index.ts";
import { EntryLines } from "../../parts/entry-lines.tsx";
import { CheckLines, DueLines, FollowLines, PartChips } from "../../parts/follow-lines.tsx";
import { addressOf } from "../../state/route.ts";
import { Bolting } from "./bolting.tsx";

/** What stands and what follows for one valve of a job. */
export function ShareSheet({ share, site, today }: { share: Share; site?: string; today: string }) {
  const { consequences } = share;
  return (
    <section class="share" aria-label={share.tag ? `What follows for ${share.tag}` : "What follows"}>
      <h2 class="rule-head">
        {share.tag ? (
          <a href={addressOf({ screen: "valve", tag: share.tag, site })}>{share.tag}, its history</a>
        ) : (
          "No tag said"
        )}
      </h2>
      <h3>To do</h3>
      <FollowLines followUps={consequences.followUps} full />
      {consequences.checks.length > 0 && (
        <>
          <h3>Checked against limits</h3>
          <CheckLines checks={consequences.checks} />
        </>
      )}
      {consequences.due.length > 0 && (
        <>
          <h3>Next dates</h3>
          <DueLines due={consequences.due} today={today} />
        </>
      )}
      <Bolting share={share} />
      <PartChips parts={consequences.missing} label="Not heard in this job" />
      <PartChips parts={consequences.parts.used} label="Parts used" />
      <PartChips parts={consequences.parts.needed} label="Parts needed" />
      {openedKits(
        [...consequences.parts.used, ...consequences.parts.needed],
        share.valve,
        share.family && [share.family],
      ).map((line) => (
        <p key={line} class="why">
          {line}
        </p>
      ))}
      {share.entries.length > 0 && (
        <>
          <h3>On the card</h3>
          <EntryLines entries={share.entries} />
        </>
      )}
    </section>
  );
}
