import { noChange } from 'lit';
import { directive, Directive, type ElementPart } from 'lit/directive.js';

/** What is done when a part tells of an entry, and when the entry is done. */
export interface PartEvents {
  input(part: HTMLElement): void;
  change(part: HTMLElement): void;
}

class Listening extends Directive {
  #acts: PartEvents | undefined;

  render(_acts: PartEvents): typeof noChange {
    return noChange;
  }

  override update({ element }: ElementPart, [acts]: [PartEvents]): typeof noChange {
    if (!this.#acts)
      for (const type of ['input', 'change'] as const)
        element.addEventListener(type, (event) => {
          if (event.target === element) this.#acts?.[type](element as HTMLElement);
        });
    this.#acts = acts;
    return noChange;
  }
}

/** Listens to the `input` and `change` events of the part it stands on. */
export const partEvents: (acts: PartEvents) => unknown = directive(Listening);
