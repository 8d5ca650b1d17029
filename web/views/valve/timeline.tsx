import { type Due, taskName } from "../../../core/index.ts";
import { useEffect, useRef } from "../../parts/hooks.ts";
import { addressOf } from "../../state/route.ts";
import { dayWords } from "../../state/time-words.ts";
import { dayNumber, type Kind, type Lane, monthTicks, type Point } from "./timeline-points.ts";

const WIDTH = 1000;
const LEFT = 90;
const RIGHT = 30;
const LANES: { lane: Lane; name: string; y: number }[] = [
  { lane: "seat", name: "Seat", y: 58 },
  { lane: "seals", name: "Seals", y: 118 },
  { lane: "other", name: "Other", y: 178 },
];
const NAMES: Record<Kind, string> = {
  inspected: "seen, sound",
  worn: "fault found",
  flipped: "flipped",
  replaced: "replaced",
  failed: "test failed",
  hazard: "hazard said",
};

/** A valve's history drawn as a line: each job's weightiest mark in its lane, today, and what is due. */
export function Timeline({ points, due, today }: { points: readonly Point[]; due: readonly Due[]; today: string }) {
  const box = useRef<HTMLElement>(null);
  const days = [...points.map((one) => one.on), ...due.map((one) => one.on), today].map(dayNumber);
  const from = Math.min(...days) - 20;
  const to = Math.max(...days) + 20;
  const x = (day: number) => LEFT + ((WIDTH - LEFT - RIGHT) * (day - from)) / (to - from);
  const now = x(dayNumber(today));
  useEffect(() => {
    // a narrow screen shows what was last, and a little of what comes
    const { current } = box;
    if (current) current.scrollLeft = (now / WIDTH) * current.scrollWidth - 0.7 * current.clientWidth;
    return undefined;
  }, [points.length]);
  return (
    <figure class="timeline">
      {/* it scrolls sideways, so the keyboard must reach it */}
      <section class="timeline-scroll" ref={box} tabindex={0} aria-label="Timeline, scrolls sideways">
        {/* the names stay at the edge while the years pass behind them */}
        <svg class="tl-names" viewBox={`0 0 ${LEFT - 8} 240`} aria-hidden="true">
          {LANES.map(({ lane, name, y }) => (
            <text key={lane} class="tl-lane" x="4" y={y + 6}>
              {name}
            </text>
          ))}
        </svg>
        <svg
          class="tl-drawing"
          viewBox={`0 0 ${WIDTH} 240`}
          aria-label={`Timeline of ${points.length} marks; the list below says the same`}
        >
          {monthTicks(from, to, 12).map((tick) => (
            <g key={tick.day}>
              <line class="tl-tick" x1={x(tick.day)} x2={x(tick.day)} y1="28" y2="206" />
              <text class="tl-label" x={x(tick.day)} y="226" text-anchor="middle">
                {tick.label}
              </text>
            </g>
          ))}
          {LANES.map(({ lane, y }) => (
            <line key={lane} class="tl-line" x1={LEFT} x2={WIDTH - RIGHT} y1={y} y2={y} />
          ))}
          <line class="tl-now" x1={now} x2={now} y1="22" y2="206" />
          <text class="tl-label" x={now} y="16" text-anchor="middle">
            today
          </text>
          {due.map((one) => {
            const at = x(dayNumber(one.on));
            const y = one.task === "seat_inspection" ? 58 : 118;
            const late = one.on < today;
            return (
              <g key={one.task} class={`tl-due${late ? " tl-late" : ""}`}>
                <title>{`${taskName(one.task)} due ${dayWords(one.on)}`}</title>
                <path d={`M${at} ${y}V${y - 34}L${at + 20} ${y - 26}L${at} ${y - 18}`} />
              </g>
            );
          })}
          {points.map((one) => {
            const y = LANES.find((each) => each.lane === one.lane)?.y ?? 0;
            return (
              <a key={`${one.job} ${one.lane}`} href={addressOf({ screen: "job", id: one.job })}>
                <title>{`${dayWords(one.on)}: ${NAMES[one.kind]}`}</title>
                <Sign kind={one.kind} x={x(dayNumber(one.on))} y={y} />
              </a>
            );
          })}
        </svg>
      </section>
      <figcaption class="legend">
        {(Object.keys(NAMES) as Kind[]).map((kind) => (
          <span key={kind}>
            <svg viewBox="-14 -14 28 28" aria-hidden="true">
              <Sign kind={kind} x={0} y={0} />
            </svg>
            {NAMES[kind]}
          </span>
        ))}
        <span>
          <svg viewBox="-4 -36 28 40" aria-hidden="true" class="tl-due">
            <path d="M0 0V-34L20 -26L0 -18" />
          </svg>
          due
        </span>
      </figcaption>
    </figure>
  );
}

/** Shapes differ as well as colours: the sheet may be printed, the eye may not tell red from green. */
function Sign({ kind, x, y }: { kind: Kind; x: number; y: number }) {
  const shapes: Record<Kind, string> = {
    inspected: "M-8 0A8 8 0 1 0 8 0A8 8 0 1 0 -8 0Z",
    worn: "M-10 9L0 -10L10 9Z",
    flipped: "M-11 -2L0 -12L11 -2ZM-11 2L0 12L11 2Z",
    replaced: "M0 -12L12 0L0 12L-12 0Z",
    failed: "M-9 -9L9 9M9 -9L-9 9",
    hazard: "M-11 -11H11V11H-11Z",
  };
  return <path class={`tl-sign tl-${kind}`} d={shapes[kind]} transform={`translate(${x.toFixed(1)} ${y})`} />;
}
