/** Chance that falls the same way each time: what is learnt can be learnt again. */
export class Luck {
  #state: number;

  constructor(seed: number) {
    this.#state = seed | 0 || 1;
  }

  /** From 0 to 1. Marsaglia, Xorshift RNGs, J. Stat. Software 8 (2003). */
  next(): number {
    this.#state ^= this.#state << 13;
    this.#state ^= this.#state >>> 17;
    this.#state ^= this.#state << 5;
    return (this.#state >>> 0) / 4_294_967_296;
  }

  between(from: number, to: number): number {
    return from + (to - from) * this.next();
  }

  chance(share: number): boolean {
    return this.next() < share;
  }

  one<T>(of: readonly T[]): T {
    return of[Math.floor(this.next() * of.length)] as T;
  }

  /** Of the standard normal distribution. Box & Muller, Ann. Math. Stat. 29 (1958). */
  normal(): number {
    return Math.sqrt(-2 * Math.log(this.next() + 1e-300)) * Math.cos(2 * Math.PI * this.next());
  }

  /** In place, each order as likely. */
  shuffle(row: Int32Array | unknown[]): void {
    for (let i = row.length - 1; i > 0; i--) {
      const j = Math.floor(this.next() * (i + 1));
      const other = row[j] as never;
      row[j] = row[i] as never;
      row[i] = other;
    }
  }
}
