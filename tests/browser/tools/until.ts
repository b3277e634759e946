import { waitUntil } from '@open-wc/testing';

/** Waits until something holds: as long as a cold server and a busy machine may take, and no longer than it takes. */
export const until = (holds: () => unknown, what: string): Promise<void> =>
  waitUntil(holds, what, { timeout: 30_000 });
