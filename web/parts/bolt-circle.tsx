/** A bolt circle from above: each bolt where it stands, numbered clockwise from the top, with its turn beside it. */
export function BoltCircle({ order, label }: { order: readonly number[]; label: string }) {
  const n = order.length;
  const place = (bolt: number, radius: number): { x: number; y: number } => {
    const angle = (2 * Math.PI * (bolt - 1)) / n - Math.PI / 2;
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
  };
  // Many bolts stand close: what is drawn of each must fit the gap.
  const size = Math.min(17, (0.8 * Math.PI * RING) / n);
  const path = order.map((bolt, turn) => {
    const { x, y } = place(bolt, RING);
    return `${turn === 0 ? "M" : "L"}${x.toFixed(1)} ${y.toFixed(1)}`;
  });
  return (
    <svg class="bolts" viewBox="-150 -150 300 300" role="img" aria-label={`${label}: ${order.join(", ")}`}>
      <circle class="bolts-joint" r={RING + 26} />
      <circle class="bolts-joint" r={RING - 26} />
      <path class="bolts-path" d={path.join("")} />
      {order.map((bolt, turn) => {
        const at = place(bolt, RING);
        const beside = place(bolt, RING + 39);
        return (
          <g key={bolt} class={turn === 0 ? "bolt bolt-first" : "bolt"}>
            <circle cx={at.x.toFixed(1)} cy={at.y.toFixed(1)} r={size.toFixed(1)} />
            <text
              class="bolt-number"
              x={at.x.toFixed(1)}
              y={(at.y + size * 0.36).toFixed(1)}
              font-size={size.toFixed(1)}
            >
              {String(bolt)}
            </text>
            <text class="bolt-turn" x={beside.x.toFixed(1)} y={(beside.y + 5).toFixed(1)}>
              {ordinal(turn + 1)}
            </text>
          </g>
        );
      })}
    </svg>
  );
}

const RING = 92;

function ordinal(turn: number): string {
  const last = turn % 100 > 10 && turn % 100 < 14 ? 0 : turn % 10;
  return `${turn}${last === 1 ? "st" : last === 2 ? "nd" : last === 3 ? "rd" : "th"}`;
}
