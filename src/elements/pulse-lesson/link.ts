/** What one window tells the others. */
type Message = { readonly ask: true } | { readonly show: unknown };

/** The other windows of a lesson: hears what they show, and tells what this one shows. */
export class Link {
  readonly #channel: BroadcastChannel;

  /**
   * @param name windows with the same name go together
   * @param heard called with what another window shows, whatever that is
   * @param tell what this window shows, for one that asks
   */
  constructor(name: string, heard: (show: unknown) => void, tell: () => unknown) {
    this.#channel = new BroadcastChannel(`pulse-lesson:${name}`);
    this.#channel.onmessage = ({ data }: MessageEvent<Message>) => {
      if (typeof data !== 'object' || data === null) return;
      if ('ask' in data) this.say(tell());
      else heard(data.show);
    };
    this.#channel.postMessage({ ask: true } satisfies Message);
  }

  say(show: unknown): void {
    this.#channel.postMessage({ show } satisfies Message);
  }

  close(): void {
    this.#channel.close();
  }
}
