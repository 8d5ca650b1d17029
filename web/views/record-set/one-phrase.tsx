import { sameWords } from "../../../core/speech/same-words.ts";
import type { LentEar } from "../../speech/own-ear/lent-ear.ts";
import type { TalkKey } from "../../state/talk-key.ts";
import { RecordPad } from "./record-pad.tsx";
import type { Caught, SpokenTake } from "./sitting.ts";
import { useListening } from "./use-listening.ts";

/** One phrase in large type, what was heard of it, and the pad to say it by. */
export function OnePhrase(props: {
  ear: LentEar;
  talkKey: TalkKey;
  phrase: string;
  take: SpokenTake | undefined;
  caught: (what: Caught) => void;
  back: () => void;
  next: () => void;
}) {
  const { phrase, take } = props;
  const listening = useListening(props.ear, props.caught);
  const shut = listening.is === "shut";
  return (
    <>
      <section class="record-card" aria-label="Say this">
        <p class="record-phrase">{phrase}</p>
        <div class="record-heard" role="status">
          {take && shut ? <Verdict take={take} /> : <p class="record-hint">In one breath, the way you talk.</p>}
        </div>
      </section>
      <div class="record-controls">
        <div class="record-ways">
          <button type="button" class="glove" onClick={props.back}>
            Back
          </button>
          <button type="button" class="glove record-next" onClick={props.next}>
            {take ? "Next" : "Leave it out"}
          </button>
        </div>
        <RecordPad
          listening={listening}
          again={take !== undefined}
          talkKey={props.talkKey}
          words="Say it. It shuts by itself."
        />
      </div>
    </>
  );
}

function Verdict({ take }: { take: SpokenTake }) {
  const right = sameWords(take.wanted, take.heard);
  const sure = take.heard ? `, ${Math.round(take.confidence * 100)} % sure` : "";
  return (
    <p class={`record-verdict ${right ? "record-right" : "record-wrong"}`}>
      <b>{right ? "Word for word" : take.heard ? "Not word for word" : "Nothing of ours heard"}</b>
      {sure}
      {!right && take.heard && <q>{take.heard}</q>}
    </p>
  );
}
