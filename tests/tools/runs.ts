/** How often a property is tried: as often as said in `npm test`, as many times as often in `npm run test:long`. */
export function runs(count: number): number {
  return count * Number(process.env['PULSE_MAP_RUNS'] ?? 1);
}
