import { type Examination, type RecordDifference, recordDifferences } from '../../examination/index.js';

/** By what act a person changed a record. */
export type RecordAct = 'edit' | 'undo' | 'redo' | 'new-record';

/**
 * A person changed the record of a control: `input` at once, at every key while they type; `change` once for each act, when a field is
 * left. Both say what differs, for audit trails.
 */
export class RecordEvent extends Event {
  #differences: readonly RecordDifference[] | undefined;

  constructor(
    type: 'input' | 'change',
    readonly act: RecordAct,
    /** The record as the event of this type before this one left it. */
    readonly before: Examination,
    readonly after: Examination,
  ) {
    super(type, { bubbles: true, composed: type === 'input' });
  }

  /** What differs between the two records; empty where a person came back to what stood there. */
  get differences(): readonly RecordDifference[] {
    this.#differences ??= recordDifferences(this.before, this.after);
    return this.#differences;
  }
}
