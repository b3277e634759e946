import type { Examination } from '../../examination/index.js';
import { RecordElement } from '../shared/record-element.js';
import { TrailingController } from '../shared/trailing.js';

/** The map as far as it is a picture: when its reading is made, and what is taken away of it. */
export abstract class DrawnElement extends RecordElement {
  readonly #reading = new TrailingController(this, () => this.examination);

  /** The record whose reading is shown: after an edit the mark under the hand comes first, and the reading a frame later. */
  protected get read(): Examination {
    return this.#reading.value;
  }

  /** When the present state is rendered, whatever is still to follow it. */
  protected rendered(): Promise<boolean> {
    return super.getUpdateComplete();
  }

  protected override async getUpdateComplete(): Promise<boolean> {
    const done = await super.getUpdateComplete();
    if (!this.#reading.settled) return done;
    await this.#reading.settled;
    return super.getUpdateComplete();
  }
}
