/**
 * Runs the work when no other tab of this device does the same. A browser that keeps nothing for the page refuses locks
 * as well: then the work runs all the same, for what it sends is taken once however often it comes.
 */
export async function alone(name: string, work: () => Promise<void>): Promise<void> {
  let begun = false;
  try {
    await navigator.locks.request(name, () => {
      begun = true;
      return work();
    });
  } catch (problem) {
    if (begun) throw problem;
    await work();
  }
}
