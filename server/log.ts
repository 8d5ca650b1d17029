/** JSON lines on standard error. Words said by people are never logged. */
export interface Log {
  debug(what: string, about?: Record<string, unknown>): void;
  info(what: string, about?: Record<string, unknown>): void;
  warn(what: string, about?: Record<string, unknown>): void;
  error(what: string, about?: Record<string, unknown>): void;
}

const LEVELS = ["debug", "info", "warn", "error", "silent"] as const;
export type LogLevel = (typeof LEVELS)[number];

export function makeLog(level: LogLevel, write: (line: string) => void = (line) => process.stderr.write(line)): Log {
  const least = LEVELS.indexOf(level);
  const at =
    (name: (typeof LEVELS)[number]) =>
    (what: string, about: Record<string, unknown> = {}) => {
      if (LEVELS.indexOf(name) < least) return;
      write(`${JSON.stringify({ at: new Date().toISOString(), level: name, what, ...about })}\n`);
    };
  return { debug: at("debug"), info: at("info"), warn: at("warn"), error: at("error") };
}
