/** What time it is. Handed in from main.ts, so that tests need not wait for an evening. */
export type Clock = () => Date;

export const systemClock: Clock = () => new Date();
