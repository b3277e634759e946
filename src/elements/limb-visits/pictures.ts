import type { Examination } from '../../examination/index.js';
import type { BodyView } from '../../drawing/views.js';
import type { Messages } from '../../locale/index.js';
import type { Window } from '../common/window-of.js';
import type { LaterPart } from './fetched.js';

/** Width of a map, in px. */
export const PICTURE = 148;
/** Maps kept drawn: those in sight and some that were. */
const KEPT = 80;

/** The small maps of the visits, drawn one after the other where they are in sight. */
export class Pictures {
  /** What they all refer to. */
  body: string | undefined;
  readonly #drawn = new Map<number, string>();
  #look = '';

  clear(): void {
    this.#drawn.clear();
  }

  of(at: number): string | undefined {
    return this.#drawn.get(at);
  }

  /** The next one to draw, the latest first. Maps of another view or language are drawn anew. */
  next({ from, to }: Window, look: string): number | undefined {
    if (look !== this.#look) {
      this.#look = look;
      this.clear();
      this.body = undefined;
    }
    for (let at = to - 1; at >= from; at--) if (!this.#drawn.has(at)) return at;
    return undefined;
  }

  draw(at: number, record: Examination | undefined, view: BodyView, words: Messages, part: LaterPart): void {
    const look = { view, width: PICTURE, scheme: 'page' } as const;
    this.body ??= part.stillBody(look);
    this.#drawn.set(at, record ? part.stillPicture(record, { ...look, shared: true, words }).text : '');
    if (this.#drawn.size > KEPT) this.#drawn.delete(this.#drawn.keys().next().value as number);
  }
}
