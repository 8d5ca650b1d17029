import { readFileSync } from "node:fs";
import type { AddressInfo } from "node:net";
import { SMTPServer } from "smtp-server";
import { expect, it, onTestFinished } from "vitest";
import { attempt } from "../../../server/mail/attempt.ts";
import { readSmtpUrl, type SmtpServer } from "../../../server/mail/smtp-server.ts";

/** A mail server that is known by our test certificate, which no authority signed. */
async function office(secure: boolean) {
  let arrived = 0;
  const smtp = new SMTPServer({
    secure,
    key: readFileSync("tests/server/tls/key.pem"),
    cert: readFileSync("tests/server/tls/cert.pem"),
    onAuth: ({ username }, _session, done) => done(null, { user: username }),
    onData(stream, _session, done) {
      stream.resume().once("end", () => {
        arrived++;
        done();
      });
    },
  });
  smtp.on("error", (error) => error);
  await new Promise<void>((resolve) => smtp.listen(0, "127.0.0.1", resolve));
  onTestFinished(() => new Promise<void>((resolve) => smtp.close(() => resolve())));
  return { port: (smtp.server.address() as AddressInfo).port, arrived: () => arrived };
}

const letter = { from: "log@example.com", to: ["a@example.com"], message: Buffer.from("Subject: x\r\n\r\nx") };
const sending = (server: SmtpServer) => attempt(server, letter, async () => true, new AbortController().signal);

it("a certificate that nobody vouches for is not trusted: nothing is sent, and it is tried again", async () => {
  const { port, arrived } = await office(true);
  const read = readSmtpUrl(`smtps://u:p@127.0.0.1:${port}`);
  expect(read.ok && (await sending(read.value))).toMatchObject({
    is: "not-taken",
    final: false,
    why: expect.stringMatching(/certificate/),
  });
  expect(arrived()).toBe(0);
});

it("where STARTTLS is insisted on it is used, or nothing goes", async () => {
  const { port, arrived } = await office(false);
  const insisting = {
    host: "127.0.0.1",
    port,
    secure: false,
    requireTLS: true,
    ignoreTLS: false,
    auth: { user: "u", pass: "p" },
  };
  expect(await sending(insisting)).toMatchObject({ is: "not-taken", why: expect.stringMatching(/certificate/) });
  expect(arrived()).toBe(0);
});
