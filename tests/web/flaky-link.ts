import { createServer, type IncomingMessage, request, type Server } from "node:http";
import type { AddressInfo } from "node:net";

/** What a link does to a request: `pass`, `lose_answer` after the server has acted on it, `cut` it half way up, `cut_answer` half way down, `fail` as a server in trouble does, or `busy`. */
export type Doing = "pass" | "lose_answer" | "cut" | "cut_answer" | "fail" | "busy";

export interface FlakyLink {
  address: string;
  /** what becomes of the request that is the `turn`-th, from 0, of those that `path` fits */
  does(path: RegExp, doing: (turn: number) => Doing): void;
  /** when each request that `path` fitted came, in milliseconds, and what became of it */
  seen: { path: string; at: number; doing: Doing }[];
  close(): Promise<void>;
}

/** A link to a server, real bytes both ways, that fails as the test says. */
export async function flakyLink(to: () => string): Promise<FlakyLink> {
  let fits = /^never/;
  let decide: (turn: number) => Doing = () => "pass";
  let turn = 0;
  const seen: FlakyLink["seen"] = [];

  const server: Server = createServer((asked, answer) => {
    const path = asked.url ?? "/";
    const doing = fits.test(path) ? decide(turn++) : "pass";
    if (fits.test(path)) seen.push({ path, at: performance.now(), doing });
    if (doing === "fail") {
      asked.resume();
      answer.writeHead(500, { "content-type": "text/plain" });
      answer.end("trouble");
      return;
    }
    if (doing === "busy") {
      asked.resume();
      answer.writeHead(503, { "content-type": "application/problem+json", "retry-after": "3" });
      answer.end(JSON.stringify({ title: "The log is busy", status: 503, detail: "Try again." }));
      return;
    }
    const on = new URL(to());
    const { headers } = asked;
    const passed = request({ host: on.hostname, port: on.port, path, method: asked.method, headers });
    passed.on("error", () => answer.destroy());
    passed.on("response", (reply: IncomingMessage) => {
      if (doing === "lose_answer") {
        // the server has acted and answered; nobody will hear of it
        reply.resume();
        reply.on("end", () => answer.destroy());
        return;
      }
      answer.writeHead(reply.statusCode ?? 502, reply.headers);
      if (doing !== "cut_answer") return void reply.pipe(answer);
      // some of it, then the link is gone
      reply.once("data", (some: Buffer) => answer.write(some.subarray(0, some.length / 2), () => answer.destroy()));
    });
    if (doing === "cut") {
      asked.once("data", (some: Buffer) => {
        passed.write(some.subarray(0, some.length / 2));
        asked.destroy();
        passed.destroy();
      });
    } else asked.pipe(passed);
  });
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    seen,
    does(path, doing) {
      fits = path;
      decide = doing;
      turn = 0;
      seen.length = 0;
    },
    async close() {
      server.closeAllConnections();
      await new Promise((done) => server.close(done));
    },
  };
}
