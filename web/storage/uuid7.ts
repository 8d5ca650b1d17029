let lastMs = 0;
let sequence = 0;

/**
 * A UUID version 7 (RFC 9562, section 5.7; method 1 of 6.2): 48 bits of milliseconds, a 12-bit counter, 62 random bits.
 * Ids of one page ascend even within a millisecond or when the clock steps back, so that phrases keep their order.
 */
export function uuid7(nowMs: number = Date.now()): string {
  if (nowMs > lastMs) {
    lastMs = nowMs;
    sequence = 0;
  } else if (++sequence > 0xfff) {
    lastMs++;
    sequence = 0;
  }
  const bytes = crypto.getRandomValues(new Uint8Array(8));
  bytes[0] = ((bytes[0] ?? 0) & 0x3f) | 0x80;
  const chance = [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  const time = lastMs.toString(16).padStart(12, "0");
  const count = sequence.toString(16).padStart(3, "0");
  return `${time.slice(0, 8)}-${time.slice(8)}-7${count}-${chance.slice(0, 4)}-${chance.slice(4)}`;
}
