/**
 * The key that opens the microphone: any key of a keyboard, a foot pedal, a ring or a remote, chosen by pressing it
 * once. Such things are keyboards to a browser; some name the key by `code`, some by `key` alone.
 */
export interface TalkKey {
  code: string;
  key: string;
}

/** Until another is chosen. */
export const USUAL_KEY: TalkKey = { code: "F2", key: "F2" };

export interface Pressing {
  code: string;
  key: string;
}

export const isKey = (chosen: TalkKey, pressed: Pressing): boolean =>
  chosen.code ? chosen.code === pressed.code : chosen.key === pressed.key;

/** Why a key cannot be chosen, in words; undefined where it can. */
export function whyNot({ key, code }: Pressing): string | undefined {
  if (key === "Tab") return "Tab moves from one control to the next. Press another.";
  if (key === "Escape") return "Escape leaves this as it was. Press another.";
  if (key === "Unidentified" || key === "Dead" || (!key && !code))
    return "This browser cannot tell that key. Press another.";
  if (/^(?:Control|Shift|Alt|AltGraph|Meta|CapsLock|Process)$/.test(key))
    return "That key works together with others. Press another.";
  return undefined;
}

/** Where the focus is: in a line to write in, with nothing in it yet, or on something that is pressed or turned. */
export interface Focus {
  line: boolean;
  empty: boolean;
  control: boolean;
}

/**
 * Whether the press is left to what has the focus: a key that writes, moves or submits does that in a line, and a key
 * that presses does that on a control, or nobody could type or work the page by keys any more. In an empty line there
 * is nothing to submit and no reason to begin with a space: pedals that send those work there too.
 */
export function isElsewhere({ key }: Pressing, { line, empty, control }: Focus): boolean {
  if (line && empty && (key === "Enter" || key === " ")) return false;
  if (line) return key.length === 1 || /^(?:Enter|Backspace|Delete|Home|End|Arrow\w+)$/.test(key);
  return control && /^(?:Enter| |Home|End|Page\w+|Arrow\w+)$/.test(key);
}

/** What the key is called on the screen. */
export function keyName({ key, code }: TalkKey): string {
  if (key === " ") return "Space";
  if (key.length === 1) return key.toUpperCase();
  return (key || code).replaceAll(/([a-z])([A-Z0-9])/g, "$1 $2");
}
