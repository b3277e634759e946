import type { Over } from './over.js';

/** What a hand on the slide may do. */
export interface HandTo {
  /** Lets a place be heard. @returns whether it can be */
  hear(place: string): boolean;
  /** Whether a tap steps now. */
  steps(): boolean;
  step(way: 'next' | 'back'): void;
}

/** A hand, mouse or pen on the slide: a tap steps on, in the first third back; a swipe goes the way the hand went; ink is drawn. */
export class Hand {
  #pressed: { readonly x: number; readonly y: number } | undefined;

  constructor(
    private readonly over: Over,
    private readonly to: HandTo,
  ) {}

  readonly down = (event: PointerEvent): void => {
    const target = event.target as Element;
    if (event.button !== 0 || target.closest('button, input, a, label, pulse-map')) return;
    const spot = target.closest<SVGElement>('[data-hear]')?.dataset.hear;
    if (spot && this.to.hear(spot)) return;
    this.#pressed = this.over.down(event) ? undefined : { x: event.clientX, y: event.clientY };
  };

  readonly move = (event: PointerEvent): void => this.over.move(event);

  readonly up = (event: PointerEvent): void => {
    this.over.up();
    const from = this.#pressed;
    this.#pressed = undefined;
    if (!from || !this.to.steps()) return;
    const box = (event.currentTarget as Element).getBoundingClientRect();
    const dx = event.clientX - from.x;
    if (Math.abs(event.clientY - from.y) > box.height / 8) return;
    if (Math.abs(dx) > box.width / 12) this.to.step(dx < 0 ? 'next' : 'back');
    else this.to.step(event.clientX < box.left + box.width / 3 ? 'back' : 'next');
  };

  readonly cancel = (): void => {
    this.#pressed = undefined;
    this.over.up();
  };
}
