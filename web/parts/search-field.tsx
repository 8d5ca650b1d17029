/** A field that narrows a list while it is typed in. */
export function SearchField({ asked, ask, found }: { asked: string; ask: (asked: string) => void; found: number }) {
  return (
    <search>
      <form class="search" onSubmit={(event: Event) => event.preventDefault()}>
        <label>
          <span>Search the words</span>
          <input
            class="field"
            type="search"
            autocomplete="off"
            autocapitalize="off"
            spellcheck={false}
            value={asked}
            onInput={(event: Event) => ask((event.target as HTMLInputElement).value)}
          />
        </label>
        <p class="count" role="status">
          {asked.trim() ? `${found} ${found === 1 ? "word" : "words"}` : ""}
        </p>
      </form>
    </search>
  );
}
