import type { Readable, Writable } from "node:stream";
import { StringDecoder } from "node:string_decoder";
import { hear } from "../../core/index.ts";
import { sessionSchema } from "../../core/shapes/session.ts";

/**
 * One JSON object a line in, one a line out, in order, as they come; a line that is no session gives
 * `{"id": null, "error"}` in its place. Resolves with the number of such lines.
 */
export async function batch(input: Readable, output: Writable): Promise<number> {
  const decoder = new StringDecoder("utf8");
  let rest = "";
  let wrong = 0;
  const answer = (line: string): string => {
    const { text, ok } = answerLine(line);
    if (!ok) wrong++;
    return `${text}\n`;
  };
  for await (const chunk of input) {
    const lines = (rest + decoder.write(chunk as Buffer)).split("\n");
    rest = lines.pop() ?? "";
    // a whole chunk's answers in one write: a write a line costs more than the reading
    if (lines.length > 0) await put(output, lines.map(answer).join(""));
  }
  rest += decoder.end();
  if (rest !== "") await put(output, answer(rest));
  return wrong;
}

function answerLine(line: string): { ok: boolean; text: string } {
  let raw: unknown;
  try {
    raw = JSON.parse(line);
  } catch {
    // the parser's own words name a column of a line that the caller has; ours say what was wanted
    return wrongLine('not JSON: write one object a line, {"id": "...", "say": ["...", ...]}');
  }
  const read = sessionSchema.safeParse(raw);
  if (!read.success) {
    const [issue] = read.error.issues;
    return wrongLine(`${issue?.path.map(String).join(".") || "the line"}: ${issue?.message ?? "is no session"}`);
  }
  try {
    return { ok: true, text: JSON.stringify(hear(read.data)) };
  } catch (cause) {
    // a fault of our own must not take the lines after it along
    return wrongLine(`could not be read: ${cause instanceof Error ? cause.message : String(cause)}`);
  }
}

const wrongLine = (error: string) => ({ ok: false, text: JSON.stringify({ id: null, error }) });

function put(output: Writable, text: string): Promise<void> {
  if (output.write(text)) return Promise.resolve();
  return new Promise((resolve) => output.once("drain", resolve));
}
