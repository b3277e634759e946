import type { ReactiveController, ReactiveControllerHost } from 'lit';

type Host = ReactiveControllerHost & { readonly renderRoot: HTMLElement | DocumentFragment };

/**
 * Roving tabindex for every `role="toolbar"` of an element: Tab reaches the control used last; arrows, Home and End move
 * between the controls.
 */
export class RovingToolbar implements ReactiveController {
  constructor(private readonly host: Host) {
    host.addController(this);
  }

  hostConnected(): void {
    this.host.renderRoot.addEventListener('keydown', this.#keydown);
    this.host.renderRoot.addEventListener('focusin', this.#focusin);
  }

  hostDisconnected(): void {
    this.host.renderRoot.removeEventListener('keydown', this.#keydown);
    this.host.renderRoot.removeEventListener('focusin', this.#focusin);
  }

  hostUpdated(): void {
    for (const toolbar of this.host.renderRoot.querySelectorAll('[role=toolbar]')) {
      const controls = usable(toolbar);
      // The last used one may have been disabled by its own act, as Undo is when nothing is left to undo.
      stopAt(toolbar, controls.find((control) => control.getAttribute('tabindex') === '0') ?? controls[0]);
    }
  }

  readonly #focusin = (event: Event): void => {
    const control = event.target as HTMLElement;
    const toolbar = control.closest('[role=toolbar]');
    if (toolbar) stopAt(toolbar, control);
  };

  readonly #keydown = (event: Event): void => {
    const { key, altKey, ctrlKey, metaKey, target } = event as KeyboardEvent;
    const toolbar = (target as HTMLElement).closest?.('[role=toolbar]');
    if (!toolbar || altKey || ctrlKey || metaKey) return;
    const controls = usable(toolbar);
    const at = controls.indexOf(target as HTMLElement);
    const onward = getComputedStyle(toolbar).direction === 'rtl' ? 'ArrowLeft' : 'ArrowRight';
    const back = onward === 'ArrowLeft' ? 'ArrowRight' : 'ArrowLeft';
    const to = { [onward]: at + 1, [back]: at - 1, Home: 0, End: -1 }[key];
    if (to === undefined) return;
    event.preventDefault();
    controls.at(to === controls.length ? 0 : to)?.focus();
  };
}

function usable(toolbar: Element): HTMLElement[] {
  return [...toolbar.querySelectorAll<HTMLElement>('button:enabled, select:enabled')];
}

function stopAt(toolbar: Element, stop: HTMLElement | undefined): void {
  for (const control of toolbar.querySelectorAll<HTMLElement>('button, select')) {
    const index = control === stop ? 0 : -1;
    if (control.tabIndex !== index) control.tabIndex = index;
  }
}
