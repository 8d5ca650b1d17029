import { execFile } from "node:child_process";
import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import { promisify } from "node:util";
import { onTestFinished } from "vitest";
import { folder } from "../app-under-test.ts";

const run = promisify(execFile);

/** A disk that fills up within a moment, and can be given room while a process is at it. */
export interface SmallDisk {
  dir: string;
  /** what starts a process so that it feels the limit: a command and its arguments before the script's own */
  under(command: string, args: string[]): { command: string; args: string[] };
  makeRoom(pid: number): Promise<void>;
}

/**
 * A file system in memory of its own, where whoever runs this may mount one: there writing fails as on a full disk
 * (ENOSPC). Elsewhere a limit on the size of the process's files (EFBIG), which the database meets in the same place.
 */
export async function smallDisk(megabytes: number): Promise<SmallDisk> {
  const dir = join(await folder(), "disk");
  await mkdir(dir);
  const mounted = await run("mount", ["-t", "tmpfs", "-o", `size=${megabytes}m`, "tmpfs", dir]).then(
    () => true,
    // no right to: the other way then
    () => false,
  );
  if (mounted) {
    onTestFinished(async () => {
      await run("umount", ["-l", dir]);
    });
    return {
      dir,
      under: (command, args) => ({ command, args }),
      makeRoom: async () => {
        await run("mount", ["-o", "remount,size=256m", dir]);
      },
    };
  }
  return {
    dir,
    under: (command, args) => ({
      command: "bash",
      // in blocks of 1 kB; the soft limit alone, which may be raised again
      args: ["-c", `ulimit -S -f ${megabytes * 1024}; exec "$0" "$@"`, command, ...args],
    }),
    makeRoom: async (pid) => {
      await run("prlimit", ["--pid", String(pid), "--fsize=unlimited:"]);
    },
  };
}
