import {
  type BruitFinding,
  type PulseFinding,
  type ScaleId,
  type ScaleStep,
  stepOf,
} from '../examination/index.js';
import type { GlyphKind, MarkKind } from './glyphs.js';

/** What a place shows: its glyph, numeral and additional marks. */
export interface Shown {
  readonly kind: GlyphKind;
  readonly numeral: number | null;
  readonly marks: readonly MarkKind[];
}

/** The glyph, numeral and marks for the findings at a place. */
export function shownFor(
  pulse: PulseFinding | undefined,
  bruit: BruitFinding | undefined,
  scale: ScaleId,
  listenOnly = false,
): Shown {
  const step = stepOf(pulse, scale);
  const could = listenOnly ? bruit?.couldNotExamine : pulse?.couldNotExamine;
  const kind: GlyphKind = step?.grade ?? (could ? 'could-not' : listenOnly ? 'listen' : 'not-examined');
  const marks: MarkKind[] = [];
  if (bruit?.bruit && bruit.bruit !== 'none') marks.push(bruit.bruit);
  if (pulse?.thrill) marks.push('thrill');
  if (pulse?.expansile) marks.push('expansile');
  return { kind, numeral: step?.numeral ?? null, marks };
}

export function shownForStep({ grade, numeral }: ScaleStep): Shown {
  return { kind: grade, numeral, marks: [] };
}
