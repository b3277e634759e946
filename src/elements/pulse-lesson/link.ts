/** What one window tells the others: a question, what is shown, what lies over it, what a hand did there. */
export interface Told {
  readonly ask?: true;
  readonly show?: unknown;
  /** Name of the picture that `lies` and `over` are about. */
  readonly on?: unknown;
  readonly lies?: unknown;
  readonly over?: unknown;
}

/** The other windows of a lesson: hears what they show, and tells what this one shows. */
export class Link {
  readonly #channel: BroadcastChannel;

  /**
   * @param name windows with the same name go together
   * @param heard called with what another window tells, whatever that is
   * @param all what this window shows, for one that asks
   */
  constructor(name: string, heard: (told: Told) => void, all: () => Told) {
    this.#channel = new BroadcastChannel(`pulse-lesson:${name}`);
    this.#channel.onmessage = ({ data }: MessageEvent<Told>) => {
      if (typeof data !== 'object' || data === null) return;
      if (data.ask) this.say(all());
      else heard(data);
    };
    this.say({ ask: true });
  }

  say(told: Told): void {
    this.#channel.postMessage(told);
  }

  close(): void {
    this.#channel.close();
  }
}
