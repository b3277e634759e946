import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { recordDifferences } from '../../examination/changes.js';
import type { Examination } from '../../examination/index.js';

/** So long a number must stand before it counts as typed whole, in ms: a pressure of 140 begins as 1. */
export const WHOLE_AFTER = 1000;

const isNumber = (value: unknown): boolean => value === undefined || typeof value === 'number';

/**
 * Where in the record a single number was set, changed or removed: the only thing that a key in a field of numbers does.
 * @returns its path, `undefined` where anything else changed, too, and `''` where nothing did
 */
function changedNumber(before: Examination, after: Examination): string | undefined {
  const [change, another] = recordDifferences(before, after);
  if (!change) return '';
  return !another && isNumber(change.from) && isNumber(change.to) ? String(change.path) : undefined;
}

/**
 * The record that counts while a number is typed in: the one before the first key until the number stands for a second. Any other
 * change lets everything count at once.
 */
export class TypedNumber implements ReactiveController {
  #before: Examination | undefined;
  #field: string | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(private readonly host: ReactiveControllerHost) {
    host.addController(this);
  }

  /** What counts of a record that was given. */
  counting(given: Examination): Examination {
    return this.#before ?? given;
  }

  /** Takes note that another record is given. */
  follow(before: Examination, given: Examination): void {
    const field = changedNumber(before, given);
    if (field === '') return;
    const isNext = field === this.#field;
    this.#stop();
    if (!isNext) this.#before = field === undefined ? undefined : before;
    if (field === undefined) return;
    this.#field = field;
    this.#timer = setTimeout(() => this.catchUp(), WHOLE_AFTER);
  }

  /** Lets the record count as it is. */
  catchUp(): void {
    this.hostDisconnected();
    this.host.requestUpdate();
  }

  hostDisconnected(): void {
    this.#stop();
    this.#before = undefined;
  }

  #stop(): void {
    clearTimeout(this.#timer);
    this.#timer = this.#field = undefined;
  }
}
