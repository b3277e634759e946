import { ClinicStore } from '../../../demo/clinic/database.js';
import type { Draft } from '../../../demo/clinic/types.js';
import { until } from './until.js';

/** Waits until the clinic keeps a draft that holds what was entered: the page says "kept" of every draft on the way there, too. */
export async function untilDraft(
  database: string,
  key: string,
  holds: (draft: Draft) => unknown,
  what: string,
): Promise<Draft> {
  const store = await ClinicStore.open(database);
  let draft: Draft | undefined;
  try {
    await until(async () => (draft = await store.draft(key)) && holds(draft), `a draft with ${what}`);
  } finally {
    store.close();
  }
  return draft!;
}
