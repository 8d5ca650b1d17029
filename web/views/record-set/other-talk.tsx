import { readPhrase } from "../../../core/index.ts";
import { OTHER_TALK_SECONDS } from "../../../core/speech/record-set/phrases.ts";
import type { LentEar } from "../../speech/own-ear/lent-ear.ts";
import type { TalkKey } from "../../state/talk-key.ts";
import { RecordPad } from "./record-pad.tsx";
import type { Caught } from "./sitting.ts";
import { useListening } from "./use-listening.ts";

/** Some seconds of talk that is no job's: whatever leaves an entry was invented. */
export function OtherTalk(props: {
  ear: LentEar;
  talkKey: TalkKey;
  talk: readonly Caught[];
  caught: (what: Caught) => void;
  back: () => void;
  next: () => void;
}) {
  const { talk } = props;
  const listening = useListening(props.ear, props.caught, OTHER_TALK_SECONDS * 1000);
  const invented = talk.filter(({ heard }) => readPhrase(heard).entries.length > 0).length;
  return (
    <>
      <section class="record-card" aria-label="Talk of something else">
        <p class="record-phrase">Now talk of something else: the weather, your supper, the road here.</p>
        <div class="record-heard" role="status">
          {talk.length > 0 && listening.is === "shut" ? (
            <p class={`record-verdict ${invented ? "record-wrong" : "record-right"}`}>
              <b>{invented ? `${invented} invented` : "Nothing invented"}</b> in {stretches(talk.length)}
            </p>
          ) : (
            <p class="record-hint">It should make nothing of it.</p>
          )}
        </div>
      </section>
      <div class="record-controls">
        <div class="record-ways">
          <button type="button" class="glove" onClick={props.back}>
            Back
          </button>
          <button type="button" class="glove record-next" onClick={props.next}>
            {talk.length > 0 ? "The score" : "Leave it out"}
          </button>
        </div>
        <RecordPad
          listening={listening}
          again={talk.length > 0}
          talkKey={props.talkKey}
          words={`Go on talking. It shuts after ${OTHER_TALK_SECONDS} seconds.`}
        />
      </div>
    </>
  );
}

const stretches = (many: number) => `${many} ${many === 1 ? "stretch" : "stretches"} of talk`;
