import type { Child } from "hono/jsx";
import { useEffect, useState } from "./hooks.ts";

/**
 * A room of screens whose code is fetched when it is first wanted, so that the bench opens without it. The service
 * worker has it from the first visit on; without a worker it takes a network, and the page says so.
 */
export interface Room<Screens> {
  load(): Promise<Screens>;
  /** the screens, once they are here: then they are drawn without a blink */
  here?: Screens;
}

export function Arriving<Screens>({ room, draw }: { room: Room<Screens>; draw: (screens: Screens) => Child }) {
  const [, setTurn] = useState(0);
  const [problem, setProblem] = useState<string | undefined>(undefined);
  useEffect(() => {
    if (room.here || problem) return;
    let wanted = true;
    room.load().then(
      (screens) => {
        room.here = screens;
        if (wanted) setTurn((before) => before + 1);
      },
      (cause: unknown) => {
        console.warn("A screen could not be fetched.", cause);
        if (wanted) setProblem("This screen is not on the device yet and the server cannot be reached.");
      },
    );
    return () => {
      wanted = false;
    };
  }, [room, problem]);
  if (room.here) return <>{draw(room.here)}</>;
  return (
    <main class="desk">
      <h1 class="unseen">Opening</h1>
      {problem ? (
        <div class="tell tell-bad" role="alert">
          <p>{problem}</p>
          <button type="button" class="tab" onClick={() => setProblem(undefined)}>
            Try again
          </button>
          <a class="tab" href="#/bench">
            Back to the bench
          </a>
        </div>
      ) : (
        <p class="none" role="status">
          Opening…
        </p>
      )}
    </main>
  );
}
