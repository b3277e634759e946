/** Hears, while a panel is open, of every press on the page and of whatever moves what it hangs beside. */
export class WhileOpen {
  #on = false;

  constructor(
    private readonly pressed: (event: Event) => void,
    private readonly moved: () => void,
  ) {}

  /** @param on whether the panel is open */
  set(on: boolean): void {
    if (on === this.#on) return;
    this.#on = on;
    const change = on ? 'addEventListener' : 'removeEventListener';
    document[change]('pointerdown', this.pressed, true);
    window[change]('scroll', this.moved, true);
    window[change]('resize', this.moved);
  }
}
