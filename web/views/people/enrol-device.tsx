import { DeskFrame } from "../../parts/desk-frame.tsx";
import type { Deeds } from "../../state/deeds.ts";
import type { DoorDeeds } from "../../state/door-deeds.ts";
import { addressOf } from "../../state/route.ts";
import type { State } from "../../state/state.ts";
import { DoorForm } from "./door-form.tsx";

/** Opened by a code that the desk shows: one touch, and this device speaks for its person. Nothing is typed. */
export function EnrolDevice({
  code,
  state,
  deeds,
  door,
}: {
  code: string;
  state: State;
  deeds: Deeds;
  door: DoorDeeds;
}) {
  const { caller } = state;
  const before = caller?.by === "device" ? caller.name : undefined;
  return (
    <DeskFrame sign="ENROL" state={{ ...state, barred: undefined }} deeds={deeds}>
      <div class="sheet sheet-one">
        <section class="paper-column narrow-column" aria-label="Enrol this device">
          {before && (
            <p class="tell">
              This device speaks for <b>{before}</b> so far. From now on it would speak for somebody else.
            </p>
          )}
          <DoorForm
            button="Enrol this device"
            submit={async () => {
              const answer = await door.enrol(code, deviceWords(navigator.userAgent));
              // the code is spent: it does not stay in the address
              if (answer.ok) location.replace(addressOf({ screen: "me" }));
              return answer;
            }}
          >
            <p>
              What is said on it then goes to the log in the name of the person for whom the lead made the code. The
              code is good once, for ten minutes.
            </p>
          </DoorForm>
        </section>
      </div>
    </DeskFrame>
  );
}

/** What the list of devices calls this one: enough to tell a phone from a desk. */
function deviceWords(agent: string): string {
  const kinds: [RegExp, string][] = [
    [/iPhone/, "iPhone"],
    [/iPad/, "iPad"],
    [/Android.*Mobile/, "Android phone"],
    [/Android/, "Android tablet"],
    [/Windows/, "Windows computer"],
    [/Mac OS/, "Mac"],
    [/Linux|CrOS/, "Linux computer"],
  ];
  return kinds.find(([sign]) => sign.test(agent))?.[1] ?? "a device";
}
