import type { Caller, Enrolled } from "../../core/index.ts";
import type { EnrolmentShelf } from "../storage/enrolment.ts";
import type { Answer } from "../sync/ask.ts";
import type { Store } from "./store.ts";

/** What signing in and enrolling need from the rooms that touch the world. */
export interface DoorHands {
  shelf: EnrolmentShelf;
  send<T>(method: string, path: string, body?: object): Promise<Answer<T>>;
  holdToken(token: string | undefined): void;
  /** somebody else is known now: what waits is sent, lists are fetched */
  known(): void;
}

export interface DoorDeeds {
  /** asks the server who this page is taken for */
  look(): Promise<void>;
  signIn(name: string, password: string): Promise<Answer<Caller>>;
  firstPassword(code: string, password: string): Promise<Answer<Caller>>;
  changePassword(was: string, password: string): Promise<Answer<Caller>>;
  enrol(code: string, device: string): Promise<Answer<Caller>>;
  /** ends the session, or gives the device back; what it has not sent stays on it */
  leave(): Promise<Answer<unknown>>;
}

export function doorDeeds(store: Store, hands: DoorHands): DoorDeeds {
  /** grows whenever somebody becomes known: an answer asked for before that is about somebody else */
  let turns = 0;

  async function look(): Promise<void> {
    const before = turns;
    const answer = await hands.send<Caller>("GET", "/api/me");
    // without a network whoever was known stays so: nothing was found out; that nobody is known every call tells
    if (answer.ok && before === turns) take(answer.value);
  }

  function take(caller: Caller): void {
    store.happen({ is: "known_as", caller });
  }

  async function become(answer: Answer<Caller>): Promise<Answer<Caller>> {
    if (answer.ok) {
      turns++;
      // first who it is: what is fetched for him next goes by it
      take(answer.value);
      hands.known();
    }
    return answer;
  }

  return {
    look,
    signIn: async (name, password) => become(await hands.send<Caller>("POST", "/api/sign-in", { name, password })),
    firstPassword: async (code, password) =>
      become(await hands.send<Caller>("POST", "/api/first-password", { code, password })),
    changePassword: (was, password) => hands.send<Caller>("PUT", "/api/password", { was, password }),
    async enrol(code, device) {
      const answer = await hands.send<Enrolled>("POST", "/api/enrolments", { code, device });
      if (!answer.ok) return answer;
      const { token, caller } = answer.value;
      hands.holdToken(token);
      await hands.shelf.keepToken(token);
      return become({ ok: true, value: caller });
    },
    async leave() {
      const byDevice = store.state().caller?.by === "device";
      const answer = await hands.send("POST", "/api/sign-out");
      if (answer.ok && byDevice) {
        hands.holdToken(undefined);
        await hands.shelf.keepToken(undefined);
      }
      await look();
      return answer;
    },
  };
}
