import type { AddressInfo, Socket } from "node:net";
import { SMTPServer, type SMTPServerSession } from "smtp-server";
import { onTestFinished } from "vitest";
import type { SmtpServer } from "../../../server/mail/smtp-server.ts";

/** Steps of a delivery at which something can happen: before the office answers the client. */
export type Step = "connect" | "mail" | "rcpt" | "data" | "end";

export interface PostOffice {
  port: number;
  server: SmtpServer;
  url: string;
  /** what was taken, in order: the envelope's recipients and the message */
  arrived: { to: string[]; raw: string }[];
  /** what happens at a step; an error is its answer, unless it is none */
  at: Partial<Record<Step, (about: { address?: string; cut: () => void }) => unknown>>;
  /** whether a message is kept before the answer at "end" */
  keeps: boolean;
  close(): Promise<void>;
}

export function replying(responseCode: number, message: string): Error {
  return Object.assign(new Error(message), { responseCode });
}

/** A real SMTP server on a port of this machine; it takes everything unless told otherwise. */
export async function postOffice(port = 0, more: { auth?: { user: string; pass: string } } = {}): Promise<PostOffice> {
  const sockets = new Set<Socket>();
  const office: PostOffice = {
    port: 0,
    url: "",
    server: { host: "127.0.0.1", port: 0, secure: false, requireTLS: false, ignoreTLS: true, auth: more.auth },
    arrived: [],
    at: {},
    keeps: true,
    close: () => new Promise((resolve) => smtp.close(() => resolve())),
  };
  const cut = () => {
    for (const socket of sockets) socket.destroy();
  };
  const pass = async (step: Step, done: (error?: Error | null) => void, address?: string) => {
    const answer = await office.at[step]?.({ address, cut });
    done(answer instanceof Error ? answer : null);
  };
  const smtp = new SMTPServer({
    authOptional: !more.auth,
    allowInsecureAuth: true,
    disabledCommands: ["STARTTLS", ...(more.auth ? [] : ["AUTH"])],
    hideENHANCEDSTATUSCODES: true,
    onAuth: ({ username, password }, _session, done) =>
      username === more.auth?.user && password === more.auth?.pass
        ? done(null, { user: username })
        : done(replying(535, "authentication failed")),
    onConnect: (_session, done) => void pass("connect", done),
    onMailFrom: (_address, _session, done) => void pass("mail", done),
    onRcptTo: ({ address }, _session, done) => void pass("rcpt", done, address),
    onData(stream, session: SMTPServerSession, done) {
      const parts: Buffer[] = [];
      stream.on("data", (part: Buffer) => parts.push(part));
      void office.at.data?.({ cut });
      stream.once("end", async () => {
        const letter = {
          to: session.envelope.rcptTo.map((one) => one.address),
          raw: Buffer.concat(parts).toString("utf8"),
        };
        if (office.keeps) office.arrived.push(letter);
        await pass("end", (error) => {
          if (error && office.keeps) office.arrived.pop();
          done(error);
        });
      });
    },
  });
  smtp.server.on("connection", (socket: Socket) => {
    sockets.add(socket);
    socket.once("close", () => sockets.delete(socket));
  });
  // a client that is cut off is what these tests are about
  smtp.on("error", (error) => error);
  await new Promise<void>((resolve) => smtp.listen(port, "127.0.0.1", resolve));
  office.port = (smtp.server.address() as AddressInfo).port;
  office.server.port = office.port;
  office.url = `smtp://127.0.0.1:${office.port}`;
  onTestFinished(() => {
    cut();
    return office.close();
  });
  return office;
}
