import { glossary } from "../../../core/pages/index.ts";
import { DeskFrame } from "../../parts/desk-frame.tsx";
import { findWords } from "../../parts/find-words.ts";
import { useState } from "../../parts/hooks.ts";
import { SearchField } from "../../parts/search-field.tsx";
import { IsoNote, WordList } from "../../parts/word-list.tsx";
import type { Deeds } from "../../state/deeds.ts";
import type { State } from "../../state/state.ts";

const LINES = glossary();

/** Every word the log knows, by name, and a field to find one. */
export function Glossary({ state, deeds }: { state: State; deeds: Deeds }) {
  const [asked, ask] = useState("");
  const found = findWords(LINES, asked);
  return (
    <DeskFrame sign="GLOSSARY" state={state} deeds={deeds}>
      <SearchField asked={asked} ask={ask} found={found.length} />
      <section class="sheet sheet-one" aria-label="Words">
        <WordList words={found} />
        <IsoNote />
      </section>
    </DeskFrame>
  );
}
