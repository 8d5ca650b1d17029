/**
 * How long a reply asks to be left alone, in milliseconds: seconds or a date (RFC 9110, 10.2.3). Undefined where it
 * does not ask, or in no way that can be read.
 */
export function retryAfterMs(header: string | null, nowMs: number): number | undefined {
  if (!header) return undefined;
  if (/^\d{1,9}$/.test(header)) return Number(header) * 1000;
  const at = Date.parse(header);
  return Number.isNaN(at) ? undefined : Math.max(0, at - nowMs);
}
