/**
 * Whether this form may keep the draft: `elsewhere` while another tab has the same form open, or has kept another draft since; `asked`
 * until that is known, at once where no other has it.
 */
export type Holding = 'asked' | 'here' | 'elsewhere';

/** A page that was just left lets go within moments; only who waits longer than this, in ms, waits for another tab. */
const MOMENTS = 1500;

/**
 * Sees to it that one tab at a time keeps the draft of a form. The browser lets go of a lock when its tab is closed or killed. Without
 * locks (a page that is not secure) every tab keeps its draft, as if it were alone.
 */
export class OneTab {
  #letGo: (() => void) | undefined;
  #left = false;
  #waiting: ReturnType<typeof setTimeout> | undefined;

  /**
   * @param name one for each draft
   * @param told called when the holding changes
   * @param untouched whether the draft that is kept is still the one this form began with
   */
  constructor(
    readonly name: string,
    readonly told: (holding: Holding) => void,
    readonly untouched: () => Promise<boolean>,
  ) {
    if (!navigator.locks) {
      told('here');
      return;
    }
    this.#waiting = setTimeout(() => told('elsewhere'), MOMENTS);
    void this.#hold({});
  }

  /** Keeps the draft here from now on; the tab that did so until now is told. */
  async take(): Promise<void> {
    this.told('here');
    await this.#hold({ steal: true });
  }

  leave(): void {
    this.#left = true;
    clearTimeout(this.#waiting);
    this.#letGo?.();
  }

  async #hold(options: LockOptions): Promise<void> {
    try {
      await navigator.locks.request(this.name, options, async () => {
        if (this.#left) return;
        // Whoever waited may find a draft that was kept meanwhile.
        const mine = options.steal || (await this.untouched().catch(() => true));
        if (this.#left) return;
        clearTimeout(this.#waiting);
        this.told(mine ? 'here' : 'elsewhere');
        if (!mine) return;
        await new Promise<void>((letGo) => (this.#letGo = letGo));
      });
    } catch {
      // Taken over by another tab.
      this.#letGo = undefined;
      if (!this.#left) this.told('elsewhere');
    }
  }
}
