import { emptyExamination, type Examination, isEmptyRecord } from '../../examination/index.js';
import { RecordStore } from '../common/record-store.js';

/**
 * What the room marks on a map of its own: a record beside the lesson's findings, never part of them. It has the undo of any map, and
 * what another window wipes can be taken back here, too.
 */
export class Marks {
  readonly store = new RecordStore(emptyExamination());
  #taking = false;

  /** @param told called with what a person marked in this window; nothing where the map is empty */
  constructor(told: (marked: Examination | undefined) => void) {
    this.store.addEventListener('record-change', () => {
      if (!this.#taking) told(this.marked);
    });
  }

  get marked(): Examination | undefined {
    const { examination } = this.store;
    return isEmptyRecord(examination) ? undefined : examination;
  }

  /** Another lesson, or the same after a reload: there is nothing to undo. */
  begin(marked: Examination | undefined, scale: Examination['scale']): void {
    this.#quietly(() => this.store.restart(marked ?? emptyExamination(scale)));
  }

  /** What another window has. */
  take(marked: Examination | undefined): void {
    if (marked === this.marked) return;
    this.#quietly(() => this.store.commit(marked ?? emptyExamination(this.store.examination.scale)));
  }

  /** Takes every mark away, as one step of the undo. */
  wipe(): void {
    if (this.marked) this.store.commit(emptyExamination(this.store.examination.scale));
  }

  #quietly(change: () => unknown): void {
    this.#taking = true;
    try {
      change();
    } finally {
      this.#taking = false;
    }
  }
}
