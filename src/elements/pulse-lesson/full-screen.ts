import type { LitElement, ReactiveController } from 'lit';
import { Awake } from './awake.js';

/** Fills the screen with an element, and keeps the screen on as long as it does. */
export class FullScreen implements ReactiveController {
  /** Browser or page said no at the last attempt. */
  refused = false;
  readonly #awake = new Awake();

  constructor(private readonly host: LitElement) {
    host.addController(this);
  }

  hostConnected(): void {
    document.addEventListener('fullscreenchange', this.#changed);
    document.addEventListener('visibilitychange', this.#seen);
  }

  hostDisconnected(): void {
    document.removeEventListener('fullscreenchange', this.#changed);
    document.removeEventListener('visibilitychange', this.#seen);
    void this.#awake.set(false);
  }

  get on(): boolean {
    return this.host.matches(':fullscreen');
  }

  async toggle(): Promise<void> {
    try {
      if (document.fullscreenElement) await document.exitFullscreen();
      else await this.host.requestFullscreen();
      this.refused = false;
    } catch {
      // The slide stays as large as its place, and the controls say so.
      this.refused = true;
    }
    this.host.requestUpdate();
  }

  readonly #changed = (): void => {
    void this.#awake.set(this.on);
    this.host.requestUpdate();
  };

  readonly #seen = (): void => this.#awake.again();
}
