import { encode } from "uqr";

/** Modules of quiet around it, as the standard asks for (ISO/IEC 18004, 4 of them). */
const QUIET = 4;

/** A text as a QR code: dark on light in either theme, for a camera reads no other. */
export function QrCode({ text, label }: { text: string; label: string }) {
  const { data, size } = encode(text, { ecc: "M", border: 0 });
  const path = data.flatMap((row, y) => row.map((dark, x) => (dark ? `M${x} ${y}h1v1h-1z` : ""))).join("");
  const whole = size + 2 * QUIET;
  return (
    <svg class="qr" viewBox={`${-QUIET} ${-QUIET} ${whole} ${whole}`} role="img" aria-label={label}>
      <rect x={-QUIET} y={-QUIET} width={whole} height={whole} fill="#fff" />
      <path d={path} fill="#000" shape-rendering="crispEdges" />
    </svg>
  );
}
