/** Units as people write them, where the code is not so already. */
const WRITTEN: Readonly<Record<string, string>> = {
  ft_lbf: "ft-lbf",
  in_lbf: "in-lbf",
  N_m: "N·m",
  "bubble/min": "bubbles/min",
  "drop/min": "drops/min",
  in_H2O: "in H2O",
  degF: "°F",
  degC: "°C",
};

export function unitName(unit: string): string {
  return WRITTEN[unit] ?? unit;
}
