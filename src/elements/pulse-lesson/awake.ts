/** Keeps the screen on while a lesson is shown in full. Where the browser has no such lock, or refuses it, the screen dims as usual. */
export class Awake {
  #lock: WakeLockSentinel | undefined;
  #wanted = false;

  async set(wanted: boolean): Promise<void> {
    this.#wanted = wanted;
    if (!wanted) {
      const lock = this.#lock;
      this.#lock = undefined;
      await lock?.release();
      return;
    }
    // A window that was hidden has lost its lock.
    if (this.#lock && !this.#lock.released) return;
    try {
      const lock = await navigator.wakeLock?.request('screen');
      if (this.#wanted) this.#lock = lock;
      else await lock?.release();
    } catch {
      // Refused, as by a low battery: the lesson goes on all the same.
    }
  }

  /** Takes the lock anew once the page is seen again. */
  again(): void {
    if (this.#wanted && document.visibilityState === 'visible') void this.set(true);
  }
}
