// Rows are four numbers at a time: their lengths are multiples of four, and this is where all the time of learning goes.

/** The sum of a row times the row of `rows` that begins at `at`. */
export function dot(rows: Float64Array, at: number, row: Float64Array): number {
  let a = 0;
  let b = 0;
  let c = 0;
  let d = 0;
  for (let i = 0; i < row.length; i += 4) {
    a += (rows[at + i] as number) * (row[i] as number);
    b += (rows[at + i + 1] as number) * (row[i + 1] as number);
    c += (rows[at + i + 2] as number) * (row[i + 2] as number);
    d += (rows[at + i + 3] as number) * (row[i + 3] as number);
  }
  return a + b + c + d;
}

/** To the row of `rows` that begins at `at` is added a row so many times. */
export function addTimes(rows: Float64Array, at: number, times: number, row: Float64Array): void {
  for (let i = 0; i < row.length; i += 4) {
    rows[at + i] = (rows[at + i] as number) + times * (row[i] as number);
    rows[at + i + 1] = (rows[at + i + 1] as number) + times * (row[i + 1] as number);
    rows[at + i + 2] = (rows[at + i + 2] as number) + times * (row[i + 2] as number);
    rows[at + i + 3] = (rows[at + i + 3] as number) + times * (row[i + 3] as number);
  }
}

/** The other way round: to a row is added the row of `rows` that begins at `at` so many times. */
export function addRow(into: Float64Array, times: number, rows: Float64Array, at: number): void {
  for (let i = 0; i < into.length; i += 4) {
    into[i] = (into[i] as number) + times * (rows[at + i] as number);
    into[i + 1] = (into[i + 1] as number) + times * (rows[at + i + 1] as number);
    into[i + 2] = (into[i + 2] as number) + times * (rows[at + i + 2] as number);
    into[i + 3] = (into[i + 3] as number) + times * (rows[at + i + 3] as number);
  }
}
