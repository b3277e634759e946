import { noChange } from 'lit';
import { Directive, directive, type ElementPart } from 'lit/directive.js';
import type { Typing } from './typing.js';

type Take = (text: string) => (() => boolean | void) | undefined;
type Entry = readonly [typing: Typing, field: string, take: Take, complain?: (text: string) => string];

class Typed extends Directive {
  #entry: Entry | undefined;

  render(..._entry: Entry): typeof noChange {
    return noChange;
  }

  override update({ element }: ElementPart, entry: unknown[]): typeof noChange {
    const first = this.#entry === undefined;
    this.#entry = entry as unknown as Entry;
    if (first) this.#listen(element as HTMLInputElement);
    return noChange;
  }

  #listen(field: HTMLInputElement): void {
    field.addEventListener('input', (event) => {
      event.stopPropagation();
      const [typing, id, take, complain] = this.#entry as Entry;
      const { value, validity } = field;
      // A date that is half typed in reads as empty, which must not take away the one before.
      const taken = validity.badInput ? undefined : take(value);
      typing.type(id, value, taken, complain && (() => complain(value)));
    });
    // Enter tells of a change without leaving; a field whose text was set by code meanwhile is left without one.
    for (const type of ['change', 'blur']) {
      field.addEventListener(type, (event) => {
        event.stopPropagation();
        const [typing, id] = this.#entry as Entry;
        typing.leave(id);
      });
    }
  }
}

/** Tells a {@link Typing} of every key in the text field it stands on, and when the field is left. */
export const typed: (...entry: Entry) => unknown = directive(Typed);
