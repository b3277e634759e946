// Counts what a person does: a press of a button, a key, a stroke are one action each.
import { click, drag, type PointerKind, press, type Target } from '../../tools/real-input.js';

export class Hand {
  actions = 0;

  constructor(private readonly settled: () => Promise<void>) {}

  async click(target: Target, kind: PointerKind = 'mouse'): Promise<void> {
    this.actions++;
    await click(target, { kind });
    await this.settled();
  }

  async press(...keys: string[]): Promise<void> {
    for (const key of keys) {
      this.actions++;
      await press(key);
      await this.settled();
    }
  }

  async stroke(targets: readonly Target[], kind: PointerKind = 'mouse'): Promise<void> {
    this.actions++;
    await drag(targets, { kind });
    await this.settled();
  }
}
