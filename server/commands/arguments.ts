import { SETTINGS_HELP } from "../env.ts";

/** What a command takes: options by name, with or without a value, and what each is for. */
export interface Option {
  value?: string;
  help: string;
}

export interface Asked {
  options: Map<string, string>;
  /** every value of an option that may be given several times, in the order given */
  every: Map<string, string[]>;
  words: string[];
}

/** Reads a command line. `--name value` and `--name=value` alike; after `--` everything is a word. */
export function readArguments(
  given: readonly string[],
  known: Record<string, Option>,
): { ok: true; value: Asked } | { ok: false; problem: string } {
  const asked: Asked = { options: new Map(), every: new Map(), words: [] };
  for (let at = 0; at < given.length; at++) {
    const word = given[at] ?? "";
    if (word === "--") {
      asked.words.push(...given.slice(at + 1));
      break;
    }
    if (!word.startsWith("--")) {
      asked.words.push(word);
      continue;
    }
    const [name = "", ...rest] = word.slice(2).split("=");
    const option = known[name];
    if (!option) return { ok: false, problem: `--${name} is not known here; see --help` };
    if (!option.value) {
      if (rest.length > 0) return { ok: false, problem: `--${name} takes no value` };
      asked.options.set(name, "");
      continue;
    }
    const value = rest.length > 0 ? rest.join("=") : given[++at];
    if (value === undefined || value === "") return { ok: false, problem: `--${name} needs a value: ${option.value}` };
    asked.options.set(name, value);
    asked.every.set(name, [...(asked.every.get(name) ?? []), value]);
  }
  return { ok: true, value: asked };
}

/** The text of `--help`: usage, options, and the settings that are read. */
export function helpText(
  usage: string,
  about: string,
  known: Record<string, Option>,
  settings: readonly (keyof typeof SETTINGS_HELP)[],
): string {
  const wide = (text: string) => `  ${text.padEnd(22)} `;
  const options = Object.entries(known).map(([name, option]) => {
    return `${wide(`--${name}${option.value ? ` ${option.value}` : ""}`)}${option.help}`;
  });
  const reads = settings.map((name) => `${wide(name)}${SETTINGS_HELP[name]}`);
  return [
    `${usage}\n\n${about}`,
    `\nOptions:\n${options.join("\n")}`,
    reads.length > 0
      ? `\nSettings read from the environment:\n${reads.join("\n")}`
      : "\nReads no settings from the environment.",
    "",
  ].join("\n");
}

/** Ends a command that was asked wrongly. */
export function wrongUse(command: string, problem: string): never {
  process.stderr.write(`${command}: ${problem}\n`);
  process.exit(2);
}
