/**
 * What this page shows at the server's door with every call: the bearer token of the device. The cookie of whoever is
 * signed in at this browser goes along by itself, and goes first. The one way to fetch from the server.
 */
let token: string | undefined;
/** grows whenever somebody else is known: what was asked before says nothing of who is known now */
let since = 0;
let told: (words: string) => void = () => {};

/** The token this device was enrolled with; undefined: it is enrolled no more. */
export function holdToken(held: string | undefined): void {
  token = held;
  since++;
}

/** Somebody signed in or out at this browser: answers to what was asked before are answers to somebody else. */
export function knownAnew(): void {
  since++;
}

/** Whom to tell, with the server's words, when a call is turned away because nobody is known by it. */
export function whenBarred(tell: (words: string) => void): void {
  told = tell;
}

export async function call(path: string, init: RequestInit = {}): Promise<Response> {
  const headers = new Headers(init.headers);
  if (token !== undefined) headers.set("authorization", `Bearer ${token}`);
  const asked = since;
  const reply = await fetch(path, { ...init, headers });
  // a wrong password says nothing of who is known here so far
  if (reply.status === 401 && path !== "/api/sign-in") void tellWhy(reply.clone(), asked);
  return reply;
}

async function tellWhy(reply: Response, asked: number): Promise<void> {
  try {
    const body: unknown = await reply.json();
    if (asked !== since) return;
    if (typeof body === "object" && body !== null && "detail" in body && typeof body.detail === "string")
      told(body.detail);
  } catch {
    // not the server's own answer, such as a network's sign-in page: it says nothing of this device
  }
}
