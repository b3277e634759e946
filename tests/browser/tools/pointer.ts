// Pointer events made by hand, for what no real device of the test browser sends: cancelled pens, erasers, palms, odd samples.

export interface Touching {
  readonly type?: 'mouse' | 'pen' | 'touch';
  readonly id?: number;
  readonly button?: number;
  readonly buttons?: number;
  /** When it happened, for hands that rest; now when left out. */
  readonly at?: number;
  /** What `getCoalescedEvents` gives; the browser's own empty list when left out, no such method when `null`. */
  readonly samples?: readonly PointerEvent[] | null;
}

/** Middle of an element, in px of the window. */
export function middleOf(element: Element): readonly [number, number] {
  const { left, top, width, height } = element.getBoundingClientRect();
  return [left + width / 2, top + height / 2];
}

/** Sends one pointer event to whatever lies at a point, or to `target`, as that is what capture and odd engines do. */
export function pointer(
  kind: string,
  [clientX, clientY]: readonly [number, number],
  { type = 'pen', id = 7, button = kind === 'pointermove' ? -1 : 0, buttons, at, samples }: Touching = {},
  target: Element = deepest(clientX, clientY),
): PointerEvent {
  const event = new PointerEvent(kind, {
    bubbles: true,
    composed: true,
    cancelable: true,
    clientX,
    clientY,
    pointerId: id,
    pointerType: type,
    isPrimary: true,
    button,
    buttons: buttons ?? (kind === 'pointerup' ? 0 : 1),
  });
  if (at !== undefined) Object.defineProperty(event, 'timeStamp', { value: at });
  if (samples !== undefined) {
    Object.defineProperty(event, 'getCoalescedEvents', {
      value: samples === null ? undefined : () => samples,
    });
  }
  target.dispatchEvent(event);
  return event;
}

function deepest(x: number, y: number): Element {
  let found = document.elementFromPoint(x, y) ?? document.body;
  for (;;) {
    const within = found.shadowRoot?.elementFromPoint(x, y);
    if (!within || within === found) return found;
    found = within;
  }
}

/** A press and release at one place. */
export function tap(point: readonly [number, number], how: Touching = {}): void {
  pointer('pointerdown', point, how);
  pointer('pointerup', point, how);
}
