import { useEffect, useState } from "../../parts/hooks.ts";
import { call } from "../../sync/door.ts";

/** The report as text, as it goes: `turn` changes whenever something may have changed in it. */
export function Preview({ address, turn }: { address: string; turn: string }) {
  const [text, setText] = useState<string | undefined>(undefined);
  useEffect(() => {
    let current = true;
    const show = (said: string) => current && setText(said);
    call(address, {}).then(
      async (reply) => show(reply.ok ? await reply.text() : "It cannot be shown now: look again later."),
      () => show("The server cannot be reached."),
    );
    return () => {
      current = false;
    };
  }, [address, turn]);
  return text === undefined ? <p class="none">Asking the server…</p> : <p class="preview">{text}</p>;
}
