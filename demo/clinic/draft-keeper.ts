import type { ClinicStore } from './database.js';
import type { Draft } from './types.js';

/**
 * Keeps every state of a form the moment it comes: the database writes in the order it is asked, so the last one stands, and
 * a reload right after a key press finds it.
 */
export class DraftKeeper {
  #last: Promise<void> = Promise.resolve();
  #closed = false;

  constructor(
    readonly store: Pick<ClinicStore, 'saveDraft'>,
    readonly told: (outcome: { readonly keptAt: string } | { readonly error: unknown }) => void,
  ) {}

  keep(draft: Draft): void {
    if (this.#closed) return;
    this.#last = this.store.saveDraft(draft).then(
      () => this.told({ keptAt: draft.keptAt }),
      (error: unknown) => this.told({ error }),
    );
  }

  /** Nothing is kept from now on; settles when the last write has. */
  async close(): Promise<void> {
    this.#closed = true;
    await this.#last;
  }
}
