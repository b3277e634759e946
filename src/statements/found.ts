import {
  type Bruit,
  type BruitFinding,
  type DopplerSignal,
  type PulseFinding,
  type Reason,
  type ScaleId,
  type ScaleStep,
  stepOf,
} from '../examination/index.js';
import { stated } from './stated.js';

/** Something found at a site, by finger or by ear. */
export type FoundStatement =
  | { readonly code: 'step'; readonly step: ScaleStep }
  | { readonly code: 'could-not-feel' | 'could-not-listen'; readonly reason: Reason }
  | { readonly code: 'thrill' | 'expansile' }
  | { readonly code: 'doppler'; readonly signal: DopplerSignal }
  | { readonly code: 'bruit'; readonly bruit: Bruit }
  | { readonly code: 'note'; readonly note: string };

/** What is found by the finger beside the grade. */
export function extraStatements({ thrill, expansile, doppler }: PulseFinding): FoundStatement[] {
  return [
    ...(thrill ? [{ code: 'thrill' as const }] : []),
    ...(expansile ? [{ code: 'expansile' as const }] : []),
    ...stated(doppler, (signal) => ({ code: 'doppler' as const, signal })),
  ];
}

/** Everything found at a site; a note that stands with both findings is told once. */
export function foundStatements(
  pulse: PulseFinding | undefined,
  bruit: BruitFinding | undefined,
  scale: ScaleId,
): FoundStatement[] {
  const notes = new Set([pulse?.note, bruit?.note]);
  return [
    ...stated(stepOf(pulse, scale), (step) => ({ code: 'step' as const, step })),
    ...stated(pulse?.couldNotExamine, (reason) => ({ code: 'could-not-feel' as const, reason })),
    ...extraStatements(pulse ?? {}),
    ...stated(bruit?.bruit, (heard) => ({ code: 'bruit' as const, bruit: heard })),
    ...stated(bruit?.couldNotExamine, (reason) => ({ code: 'could-not-listen' as const, reason })),
    ...[...notes].flatMap((note) => stated(note, (text) => ({ code: 'note' as const, note: text }))),
  ];
}

/** The same in as few words as stand under a site's name. */
export type ShortStatement =
  | { readonly code: 'grade'; readonly step: ScaleStep }
  | { readonly code: 'reason' | 'unheard'; readonly reason: Reason }
  | { readonly code: 'heard'; readonly bruit: Bruit }
  | { readonly code: 'bruit' | 'thrill' | 'expansile' };

/** What stands under a site's name; a normal pulse needs no word on a scale of numbers, where its numeral says it. */
export function shortStatements(
  pulse: PulseFinding | undefined,
  bruit: BruitFinding | undefined,
  scale: ScaleId,
): ShortStatement[] {
  const step = stepOf(pulse, scale);
  const plain = step?.grade === 'normal' && !step.increased && scale !== 'words';
  return [
    ...(step && !plain ? [{ code: 'grade' as const, step }] : []),
    ...(pulse?.couldNotExamine
      ? [{ code: 'reason' as const, reason: pulse.couldNotExamine }]
      : stated(bruit?.couldNotExamine, (reason) => ({ code: 'unheard' as const, reason }))),
    ...(bruit?.bruit && bruit.bruit !== 'none' ? [{ code: 'bruit' as const }] : []),
    ...(pulse?.thrill ? [{ code: 'thrill' as const }] : []),
    ...(pulse?.expansile ? [{ code: 'expansile' as const }] : []),
  ];
}

/** What an earlier record says of a site in one word: its grade, else why there is none, else what was heard. */
export function earlierStatement(
  pulse: PulseFinding | undefined,
  bruit: BruitFinding | undefined,
  scale: ScaleId,
): ShortStatement | undefined {
  const step = stepOf(pulse, scale);
  if (step) return { code: 'grade', step };
  if (pulse?.couldNotExamine) return { code: 'reason', reason: pulse.couldNotExamine };
  return bruit?.bruit && { code: 'heard', bruit: bruit.bruit };
}
