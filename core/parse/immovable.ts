/** Step 5a: "can't get the seat out", "couldn't break the bolts loose": what will not come is seized. */

import { spellings } from "../vocabulary/notation.ts";
import { range } from "./chunks.ts";
import { type ClauseState, settleSubject } from "./clause-state.ts";
import type { Scene } from "./scene.ts";

const CANNOT = spellings("(cant|couldnt)[ even]|cannot|(could|can) not|unable to");
/** Verbs that move a part by themselves, and those that need to say where to. */
const MOVE = /^(?:budge|turn|move|shift|free|spin|rotate|unscrew|loosen|undo)$/;
const BRING = /^(?:get|break|pull|take|back|work|knock|drive|press|screw|pry|twist|beat|crack)$/;
const AWAY = /^(?:out|off|loose|free|apart|up|to turn|to move|to budge|to come|to come off|to come out|moving)$/;

/** The index behind it, where a part was said to stay where it is. */
export function readImmovable(scene: Scene, state: ClauseState, at: number): number | undefined {
  if (!CANNOT.has(scene.at(at)?.text ?? "") || state.elsewhere !== undefined) return undefined;
  const verb = scene.at(at + 1)?.text ?? "";
  const noun = scene.noun(at + 2);
  if (!noun?.part || !(noun.det || noun.plural)) return undefined;
  let end = noun.to;
  if (BRING.test(verb.split(" ")[0] ?? "")) {
    const to = scene.at(end)?.text === "to" ? `to ${scene.at(end + 1)?.text}` : (scene.at(end)?.text ?? "");
    if (!AWAY.test(to)) return undefined;
    end += to.startsWith("to ") ? 2 : 1;
  } else if (!MOVE.test(verb)) return undefined;
  scene.drafts.push({
    entry: {
      type: "finding",
      condition: "seized",
      part: noun.part,
      ...(noun.place ? { place: noun.place } : {}),
      ...(noun.count === undefined ? {} : { count: noun.count }),
    },
    chunks: range(at, end),
    rule: "finding_immovable",
    named: true,
  });
  scene.use(...range(at, end));
  settleSubject(scene, state, [noun], false);
  state.since = end;
  return end;
}
