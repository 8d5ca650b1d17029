import type { Role } from "../../core/index.ts";
import { makeCode } from "../../server/accounts/codes.ts";
import { enrolDevice } from "../../server/accounts/devices.ts";
import { addPerson, personOf } from "../../server/accounts/people.ts";
import { AT_COMMAND as AT_TEST } from "../../server/commands/at-command.ts";
import type { Store } from "../../server/db/open.ts";
import { from } from "./app-under-test.ts";

/** A person of these roles with one device, kept to these sites where any are named. */
export async function enrolled(
  store: Store,
  name: string,
  roles: Role[],
  until: string | null = null,
  sites?: readonly string[],
) {
  return store.write(async (tx) => {
    const made = await addPerson(tx, AT_TEST, { name, roles, sites });
    if (!made.ok) throw new Error(made.problem);
    const device = await enrolDevice(tx, AT_TEST, made.value, { name: `${name}’s phone`, until });
    return { person: made.value.id, device: device.id, token: device.token };
  });
}

/** A one-time code for a person. */
export function codeFor(store: Store, person: string, what: "device" | "password", until: string | null = null) {
  return store.write(async (tx) => {
    const row = await personOf(tx, person);
    if (!row) throw new Error("no such person");
    return makeCode(tx, AT_TEST, row, { for: what, until });
  });
}

interface App {
  request(path: string, init?: RequestInit, env?: unknown): Response | Promise<Response>;
}

/** A client that keeps its cookie, as a browser's page does, and says where its calls come from. */
export function client(app: App, about: { token?: string; address?: string; origin?: string } = {}) {
  let cookie: string | undefined;
  const { token, address = "203.0.113.7", origin = "http://localhost" } = about;
  return {
    cookie: () => cookie,
    bring(text: string | undefined) {
      cookie = text;
    },
    async call(method: string, path: string, body?: unknown, more: Record<string, string> = {}): Promise<Response> {
      const bytes = body instanceof Uint8Array;
      const answer = await app.request(
        path,
        {
          method,
          headers: {
            ...(method === "GET" ? {} : { origin }),
            ...(body === undefined ? {} : { "content-type": bytes ? "application/octet-stream" : "application/json" }),
            ...(token ? { authorization: `Bearer ${token}` } : {}),
            ...(cookie ? { cookie } : {}),
            ...more,
          },
          ...(body === undefined ? {} : { body: bytes ? new Uint8Array(body) : JSON.stringify(body) }),
        },
        from(address),
      );
      for (const set of answer.headers.getSetCookie()) {
        const [pair = ""] = set.split(";");
        cookie = /Max-Age=0/i.test(set) ? undefined : pair;
      }
      return answer;
    },
  };
}
