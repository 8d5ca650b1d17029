import { type ChildProcess, execFile, execFileSync, spawn } from "node:child_process";
import { promisify } from "node:util";

const run = promisify(execFile);

/** Whether this machine can press a headset's button: Linux carries it over D-Bus. */
export const HAS_BUTTONS = has("dbus-daemon") && has("gdbus");
if (!HAS_BUTTONS && process.env.REQUIRE_BROWSER === "1")
  throw new Error("D-Bus is required here: apt-get install -y dbus libglib2.0-bin");

const OBJECT = "/org/mpris/MediaPlayer2";
const PLAYER = "org.mpris.MediaPlayer2.Player";

/** The buttons of a headset, as Linux passes them on to whoever plays: the MPRIS D-Bus Interface Specification 2.2. */
export interface MediaButtons {
  /** to be given to the browser that shall hear of them */
  env: Record<string, string>;
  press(button: "PlayPause" | "Play" | "Pause" | "Stop" | "Next" | "Previous"): Promise<void>;
  /** "Playing", "Paused", "Stopped"; undefined where nothing plays that has buttons */
  status(): Promise<string | undefined>;
  remove(): Promise<void>;
}

/** A bus of its own, so that nothing else on this machine is played or paused. */
export async function mediaButtons(): Promise<MediaButtons> {
  const daemon: ChildProcess = spawn("dbus-daemon", ["--session", "--nofork", "--print-address"], {
    stdio: ["ignore", "pipe", "ignore"],
  });
  const ended = new Promise<void>((done) => daemon.once("exit", () => done()));
  const address = await new Promise<string>((found, failed) => {
    daemon.stdout?.once("data", (line: Buffer) => found(line.toString().trim()));
    daemon.once("exit", (code) => failed(new Error(`dbus-daemon ended with ${code}`)));
  });
  const env = { DBUS_SESSION_BUS_ADDRESS: address };
  async function call(dest: string, path: string, method: string, ...given: string[]): Promise<string> {
    const words = ["call", "--session", "--dest", dest, "--object-path", path, "--method", method, ...given];
    const { stdout } = await run("gdbus", words, { env: { ...process.env, ...env } });
    return stdout;
  }
  async function player(): Promise<string | undefined> {
    const names = await call("org.freedesktop.DBus", "/org/freedesktop/DBus", "org.freedesktop.DBus.ListNames");
    return /org\.mpris\.MediaPlayer2\.[\w.]+/.exec(names)?.[0];
  }
  return {
    env,
    async press(button) {
      const dest = await player();
      if (!dest) throw new Error("nothing plays that has buttons");
      await call(dest, OBJECT, `${PLAYER}.${button}`);
    },
    async status() {
      const dest = await player();
      if (!dest) return undefined;
      const told = await call(dest, OBJECT, "org.freedesktop.DBus.Properties.Get", PLAYER, "PlaybackStatus");
      return /'(\w+)'/.exec(told)?.[1];
    },
    async remove() {
      daemon.kill();
      await ended;
    },
  };
}

function has(command: string): boolean {
  try {
    execFileSync("sh", ["-c", `command -v ${command}`], { stdio: "ignore" });
    return true;
  } catch {
    // that it is not there is the answer
    return false;
  }
}
