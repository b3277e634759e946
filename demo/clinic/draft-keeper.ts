import type { ClinicStore } from './database.js';
import type { Draft } from './types.js';

/**
 * Keeps the latest state of a form, one write at a time: what changes during a write is written next, what was overtaken is
 * never written.
 */
export class DraftKeeper {
  #next: Draft | undefined;
  #writing: Promise<void> | undefined;
  #closed = false;

  constructor(
    readonly store: Pick<ClinicStore, 'saveDraft'>,
    readonly told: (outcome: { readonly keptAt: string } | { readonly error: unknown }) => void,
  ) {}

  keep(draft: Draft): void {
    if (this.#closed) return;
    this.#next = draft;
    this.#writing ??= this.#write();
  }

  /** Nothing is kept from now on; settles when the last write has. */
  async close(): Promise<void> {
    this.#closed = true;
    this.#next = undefined;
    await this.#writing;
  }

  async #write(): Promise<void> {
    while (this.#next) {
      const draft: Draft = this.#next;
      this.#next = undefined;
      try {
        await this.store.saveDraft(draft);
        this.told({ keptAt: draft.keptAt });
      } catch (error) {
        this.told({ error });
      }
    }
    this.#writing = undefined;
  }
}
