import { createInterface } from "node:readline";
import {
  byValve,
  type Consequences,
  consequences,
  type Listening,
  listen,
  openedKits,
  startListening,
  type Valve,
} from "../../core/index.ts";
import { dateSchema, valveSchema } from "../../core/shapes/valve.ts";
import { partName } from "../wording/names.ts";
import { type Painter, paint } from "../wording/paint.ts";
import {
  checkSentence,
  countedPart,
  dueSentence,
  entrySentence,
  followUpWords,
  whenWords,
} from "../wording/sentences.ts";
import { helpText, readArguments, wrongUse } from "./arguments.ts";
import { batch } from "./batch.ts";

const OPTIONS = {
  batch: { help: "JSON Lines: sessions on standard input, results on standard output; exit code 1 if a line was none" },
  on: { value: "YYYY-MM-DD", help: "date of the job (today)" },
  tag: { value: "TAG", help: "the valve's tag" },
  family: { value: "FAMILY", help: "the valve's family (balanced_dump)" },
  size: { value: "INCHES", help: "nominal size" },
  service: { value: "SERVICE", help: "normal or severe" },
  help: { help: "this text" },
};
const HELP = helpText(
  'npm run -s say -- "PHRASE" ["PHRASE" ...] [options]\nnpm run -s say -- - < phrases.txt\nnpm run -s say -- --batch < sessions.jsonl',
  "Prints what was understood and what follows from it. Each argument is a phrase; `-` reads one a line.\nNothing is stored. Colour only on a terminal, and never where NO_COLOR is set.",
  OPTIONS,
  [],
);

process.stdout.on("error", (cause: NodeJS.ErrnoException) => {
  // whoever read our output has gone: no one is left to tell
  process.exit(cause.code === "EPIPE" ? 0 : 1);
});

const asked = readArguments(process.argv.slice(2), OPTIONS);
if (!asked.ok) wrongUse("say", asked.problem);
const { options, words } = asked.value;
if (options.has("help")) process.stdout.write(HELP);
else if (options.has("batch")) {
  if (words.length > 0) wrongUse("say", "--batch reads sessions from standard input and takes no phrases");
  process.exitCode = (await batch(process.stdin, process.stdout)) > 0 ? 1 : 0;
} else await sayForPerson();

async function sayForPerson(): Promise<void> {
  const on = dateSchema.safeParse(options.get("on") ?? today());
  if (!on.success) wrongUse("say", `--on: ${on.error.issues[0]?.message}`);
  const valve = valveSchema.safeParse({
    tag: options.get("tag")?.toUpperCase(),
    family: options.get("family"),
    size_in: options.has("size") ? Number(options.get("size")) : undefined,
    service: options.get("service"),
  });
  if (!valve.success) {
    const [issue] = valve.error.issues;
    wrongUse("say", `${issue?.path.join(".")}: ${issue?.message}`);
  }
  const phrases = words.includes("-") ? await linesOf(words) : words;
  if (phrases.length === 0) {
    process.stderr.write(HELP);
    process.exit(2);
  }
  const colour = process.stdout.isTTY === true && !process.env.NO_COLOR;
  let heard = startListening();
  for (const phrase of phrases) heard = listen(heard, phrase);
  process.stdout.write(tell(heard, valve.data, on.data, paint(colour)));
}

/** The phrases as read, then valve by valve what follows. */
function tell(heard: Listening, valve: Valve, on: string, p: Painter): string {
  const lines: string[] = [];
  for (const one of heard.phrases) {
    lines.push(p.phrase(one.text, one.marks));
    for (const alert of one.alerts) {
      if (!one.entries.some((entry) => entry.type === "hazard")) lines.push(`  ${p.alarm(entrySentence(alert))}`);
    }
    for (const entry of one.entries) {
      const sentence = entrySentence(entry);
      lines.push(`  ${entry.type === "hazard" ? p.alarm(sentence) : sentence}`);
    }
    if (one.touched.length > 0)
      lines.push(`  ${p.faint(`changes phrase ${one.touched.map((n) => n + 1).join(", ")}`)}`);
    if (one.unread.length > 0)
      lines.push(`  ${p.doubt(`Not understood: ${one.unread.map((u) => `"${u.text}"`).join(", ")}`)}`);
    for (const { question } of one.ask) lines.push(`  ${p.doubt(`? ${question}`)}`);
  }
  for (const stretch of byValve(heard.entries, valve.tag)) {
    const about = stretch.tag === valve.tag ? valve : { tag: stretch.tag };
    lines.push("", p.head(`What follows${stretch.tag ? ` for ${stretch.tag}` : ""}, job of ${on}`));
    lines.push(...follows(consequences(about, [], stretch.entries, on), about, p).map((line) => `  ${line}`));
  }
  return `${lines.join("\n")}\n`;
}

function follows(after: Consequences, valve: Valve, p: Painter): string[] {
  const inspection = after.due.find((one) => one.task === "seat_inspection")?.on;
  return [
    ...after.followUps.map((one) => {
      const line = `${followUpWords(one)}, ${whenWords(one, inspection)}: ${one.why}`;
      return one.do === "stop" ? p.alarm(line) : one.when === "now" ? p.strong(line) : line;
    }),
    ...after.checks.map((one) => `${checkSentence(one)} ${p.faint(one.source)}`),
    ...after.due.map((one) => `${dueSentence(one)} ${p.faint(`(${one.why})`)}`),
    ...(after.parts.used.length > 0 ? [`Parts used: ${after.parts.used.map(countedPart).join(", ")}`] : []),
    ...(after.parts.needed.length > 0 ? [`Parts needed: ${after.parts.needed.map(countedPart).join(", ")}`] : []),
    ...openedKits([...after.parts.used, ...after.parts.needed], valve).map((line) => `  ${p.faint(line)}`),
    ...(after.missing.length > 0 ? [`Not heard yet: ${after.missing.map(partName).join(", ")}`] : []),
    p.faint("Nothing here says that the valve is safe: site procedure governs."),
  ];
}

async function linesOf(given: readonly string[]): Promise<string[]> {
  const read: string[] = [];
  for await (const line of createInterface({ input: process.stdin })) if (line.trim() !== "") read.push(line);
  return given.flatMap((word) => (word === "-" ? read : [word]));
}

function today(): string {
  const now = new Date();
  const two = (n: number) => String(n).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
