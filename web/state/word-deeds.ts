import { type Taught, type TaughtWord, teach } from "../../core/index.ts";
import { type Hands, problemWords } from "./hands.ts";
import type { Store } from "./store.ts";
import { type KeptWord, wordsHere } from "./taught.ts";
import { instantHere } from "./time-words.ts";

export interface WordDeeds {
  /** teaches a word of this site; it is read from then on, in what was said before too */
  teach(say: string, as: TaughtWord["as"]): Promise<Taught>;
  unteach(word: KeptWord): Promise<void>;
}

export function wordDeeds(store: Store, hands: Hands): WordDeeds {
  async function keepTaught(words: KeptWord[]): Promise<void> {
    store.happen({ is: "taught", words });
    try {
      await hands.shelf.keepTaught(words);
    } catch (problem) {
      store.happen({ is: "noticed", notice: `This device does not keep the word: ${problemWords(problem)}` });
    }
    hands.sendWords();
  }

  return {
    async teach(say, as) {
      const { taught, settings } = store.state();
      const answer = teach(say, as, wordsHere(store.state()));
      if (answer.ok) {
        const at = instantHere(hands.now());
        await keepTaught([...taught, { ...answer.value, site: settings.site, id: hands.newId(), at }]);
      }
      return answer;
    },
    async unteach(word) {
      const { taught } = store.state();
      // the server never took it: nobody else needs to be told
      if (word.problem || !word.id) await keepTaught(taught.filter((one) => one !== word));
      else await keepTaught(taught.map((one) => (one === word ? { ...one, withdrawn: true, sent: false } : one)));
    },
  };
}
