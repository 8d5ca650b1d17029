/** What any calendar file is written with (RFC 5545). */

/** A value of free text (3.3.11). */
export const calendarText = (text: string): string =>
  text.replace(/[\\;,]/g, (sign) => `\\${sign}`).replace(/\r\n|\r|\n/g, "\\n");

/** Lines one below the other, each folded (3.1) where it is longer than 75 bytes, never within a letter. */
export const calendarLines = (lines: readonly string[]): string => lines.map(folded).join("\r\n");

/** Of the 75, one is the space that a further line begins with. */
const MOST_BYTES = 74;

function folded(line: string): string {
  if (Buffer.byteLength(line) <= MOST_BYTES) return line;
  const parts: string[] = [];
  let part = "";
  let bytes = 0;
  for (const letter of line) {
    const more = bytesOf(letter);
    if (bytes + more > MOST_BYTES) {
      parts.push(part);
      part = "";
      bytes = 0;
    }
    part += letter;
    bytes += more;
  }
  return [...parts, part].join("\r\n ");
}

/** In UTF-8. */
function bytesOf(letter: string): number {
  const code = letter.codePointAt(0) ?? 0;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
}
