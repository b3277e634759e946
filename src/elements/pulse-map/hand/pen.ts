/** For this long after a pen was seen, in ms, touches count as the palm and are ignored. */
const PEN_QUIET_MS = 3000;
const ERASER_BUTTON = 5;
const BARREL_BUTTON = 2;
const ERASER_BUTTONS = 32;

/** Remembers when a pen was near, so that the palm beside it leaves no mark. */
export class PenWatch {
  #seen = -Infinity;

  note(event: PointerEvent): void {
    if (event.pointerType === 'pen') this.#seen = event.timeStamp;
  }

  /** Whether a pen was seen a moment ago. */
  near({ timeStamp }: Event): boolean {
    return timeStamp - this.#seen < PEN_QUIET_MS;
  }

  isPalm(event: PointerEvent): boolean {
    return event.pointerType === 'touch' && this.near(event);
  }
}

/** Whether a pen presses with its eraser end or its barrel button. */
export function erases({ pointerType, button, buttons }: PointerEvent): boolean {
  return (
    pointerType === 'pen' &&
    (button === ERASER_BUTTON || button === BARREL_BUTTON || (buttons & ERASER_BUTTONS) !== 0)
  );
}

/** Every position since the last event; identity comes from the event itself, since samples may lack it. */
export function samplesOf(event: PointerEvent): readonly PointerEvent[] {
  const samples = event.getCoalescedEvents?.() ?? [];
  return samples.length ? samples : [event];
}
