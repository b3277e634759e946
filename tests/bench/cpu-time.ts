/** Processor time of one run in milliseconds, in the median of its batches. */
export interface CpuTime {
  readonly name: string;
  readonly ms: number;
}

const ROUNDS = 11;
const WARM_UP = 250;
const BATCH_MS = 40;

function batch(run: () => void, times: number): number {
  const before = process.cpuUsage();
  for (let i = 0; i < times; i++) run();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)]!;

/** Measures several runs in turn, batch by batch, so that whatever else keeps the machine busy falls on all of them alike. */
export function cpuTimes(runs: Readonly<Record<string, () => void>>): CpuTime[] {
  const measured = Object.entries(runs).map(([name, run]) => {
    batch(run, WARM_UP);
    const times = Math.max(2, Math.ceil((20 * BATCH_MS) / Math.max(1, batch(run, 20))));
    return { name, run, times, all: [] as number[] };
  });
  for (let round = 0; round < ROUNDS; round++)
    for (const one of measured) one.all.push(batch(one.run, one.times) / one.times);
  return measured.map(({ name, all }) => ({ name, ms: median(all) }));
}
