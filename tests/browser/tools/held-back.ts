import { later } from '../../../src/elements/pulse-map/fetched.js';

/** Holds back what a map fetches after its first paint, as a slow connection does, until `arrive`; `restore` ends that. */
export async function heldBack(): Promise<{ readonly arrive: () => void; readonly restore: () => void }> {
  const { load } = later;
  await later.load();
  const { part } = later;
  let arrive: () => void = () => undefined;
  const arrived = new Promise<void>((resolve) => (arrive = resolve));
  later.part = undefined;
  later.load = () => arrived.then(() => void (later.part = part));
  const restore = (): void => {
    later.load = load;
    later.part ??= part;
  };
  return { arrive, restore };
}
