import { afterPaint } from '../common/trailing.js';

/** Time spent between two paints, in ms. */
const SLICE = 12;
/** Lines of thousands of visits are not laid out anew for every slice, in ms. */
const TOLD = 250;

/** What there is to do: `seen` where the page should show it at once, `more` where it can wait, `done` when nothing is left. */
export type Done = 'seen' | 'more' | 'done';

/** Work in small portions between two paints, so that neither scrolling nor typing waits for it. */
export class Work {
  /** The run that goes on; one that was stopped is another and ends. */
  #run: symbol | undefined;

  /**
   * @param step does the next thing
   * @param show called when there is something new to see
   */
  constructor(
    private readonly step: () => Done,
    private readonly show: () => void,
  ) {}

  /** Goes on until nothing is left or `stop` is called. */
  async run(): Promise<void> {
    if (this.#run) return;
    const run = (this.#run = Symbol());
    const on = (): boolean => this.#run === run;
    let told = 0;
    let state: Done = 'more';
    let seen = false;
    while (on() && state !== 'done') {
      await afterPaint();
      const end = performance.now() + SLICE;
      do {
        state = on() ? this.step() : 'done';
        seen ||= state === 'seen';
      } while (state !== 'done' && performance.now() < end);
      const now = performance.now();
      if (!seen && state !== 'done' && now - told < TOLD) continue;
      told = now;
      seen = false;
      if (on()) this.show();
    }
    if (on()) this.#run = undefined;
  }

  stop(): void {
    this.#run = undefined;
  }
}
