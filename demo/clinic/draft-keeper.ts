import type { ClinicStore } from './database.js';
import type { Draft } from './types.js';

/**
 * Saves every state of a form immediately: writes are executed in order, so the last one wins and is found even by
 * a reload right after a key press.
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

  /** Stops saving; resolves after the last write. */
  async close(): Promise<void> {
    this.#closed = true;
    await this.#last;
  }
}
