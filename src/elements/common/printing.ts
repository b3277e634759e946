import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Whether a print is under way: what is rendered for it comes after its event. */
let underWay = false;

/** Notifies an element before printing, early enough to re-render for the page. */
export class PrintController implements ReactiveController {
  printing = false;
  readonly #media = globalThis.matchMedia?.('print');

  constructor(private readonly host: ReactiveControllerHost) {
    host.addController(this);
  }

  hostConnected(): void {
    this.printing = underWay;
    window.addEventListener('beforeprint', this.#before);
    window.addEventListener('afterprint', this.#after);
    // The events come with printing alone; a preview of the print style changes the medium.
    this.#media?.addEventListener('change', this.#changed);
  }

  hostDisconnected(): void {
    window.removeEventListener('beforeprint', this.#before);
    window.removeEventListener('afterprint', this.#after);
    this.#media?.removeEventListener('change', this.#changed);
  }

  readonly #before = (): void => this.#set(true);
  readonly #after = (): void => this.#set(false);
  readonly #changed = ({ matches }: MediaQueryListEvent): void => this.#set(matches);

  #set(printing: boolean): void {
    underWay = printing;
    if (printing === this.printing) return;
    this.printing = printing;
    this.host.requestUpdate();
  }
}
