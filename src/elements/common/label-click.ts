import type { LitElement, ReactiveController } from 'lit';

/** A click on the label of a form control arrives as a click on the control itself: it moves the focus and changes nothing. */
export class LabelClickController implements ReactiveController {
  constructor(private readonly host: LitElement) {
    host.addController(this);
  }

  hostConnected(): void {
    this.host.addEventListener('click', this.#click);
  }

  readonly #click = (event: Event): void => {
    if (event.composedPath()[0] === this.host) this.host.focus();
  };
}
