/** Cosines and sines of the turns of each length, of the size asked for last. */
const turns = { n: 0, cos: new Float64Array(0), sin: new Float64Array(0) };

function turnsOf(n: number): typeof turns {
  if (turns.n !== n) {
    turns.n = n;
    turns.cos = Float64Array.from({ length: n / 2 }, (_, k) => Math.cos((2 * Math.PI * k) / n));
    turns.sin = Float64Array.from({ length: n / 2 }, (_, k) => Math.sin((2 * Math.PI * k) / n));
  }
  return turns;
}

/** In-place fast Fourier transform (radix 2) of a power of two; `back` undoes it. */
export function fourier(re: Float64Array, im: Float64Array, back = false): void {
  const n = re.length;
  const { cos, sin } = turnsOf(n);
  for (let i = 1, j = 0; i < n; i++) {
    let bit = n >> 1;
    for (; j & bit; bit >>= 1) j ^= bit;
    j ^= bit;
    if (i < j) {
      [re[i], re[j]] = [re[j] as number, re[i] as number];
      [im[i], im[j]] = [im[j] as number, im[i] as number];
    }
  }
  for (let length = 2; length <= n; length <<= 1) {
    const step = n / length;
    for (let k = 0; k < length / 2; k++) {
      const c = cos[k * step] as number;
      const s = (back ? 1 : -1) * (sin[k * step] as number);
      for (let i = k; i < n; i += length) {
        const j = i + length / 2;
        const xr = (re[j] as number) * c - (im[j] as number) * s;
        const xi = (re[j] as number) * s + (im[j] as number) * c;
        re[j] = (re[i] as number) - xr;
        im[j] = (im[i] as number) - xi;
        re[i] = (re[i] as number) + xr;
        im[i] = (im[i] as number) + xi;
      }
    }
  }
  if (back)
    for (let i = 0; i < n; i++) {
      re[i] = (re[i] as number) / n;
      im[i] = (im[i] as number) / n;
    }
}
