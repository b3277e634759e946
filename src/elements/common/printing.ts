import type { ReactiveController, ReactiveControllerHost } from 'lit';

const connected = new Set<PrintController>();

/** Whether a print is under way: what is rendered for it comes after its event. */
let underWay = false;
let watching = false;

/** The page is watched as long as it lives: its last element may leave while it is printed, and the next must not take it for printing still. */
function watch(): void {
  if (watching) return;
  watching = true;
  window.addEventListener('beforeprint', () => set(true));
  window.addEventListener('afterprint', () => set(false));
  // The events come with printing alone; a preview of the print style changes the medium.
  window.matchMedia?.('print').addEventListener('change', ({ matches }) => set(matches));
}

function set(printing: boolean): void {
  underWay = printing;
  for (const controller of connected) controller.follow(printing);
}

/** Notifies an element before printing, early enough to re-render for the page. */
export class PrintController implements ReactiveController {
  printing = false;

  constructor(private readonly host: ReactiveControllerHost) {
    host.addController(this);
  }

  hostConnected(): void {
    watch();
    connected.add(this);
    this.printing = underWay;
  }

  hostDisconnected(): void {
    connected.delete(this);
  }

  /** Takes over whether the page is printed. */
  follow(printing: boolean): void {
    if (printing === this.printing) return;
    this.printing = printing;
    this.host.requestUpdate();
  }
}
