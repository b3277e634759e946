import { type Place, placeKey } from '../anatomy/index.js';
import { bruitAt, type Bruit, type Examination, type Grade, pulseAt } from '../examination/index.js';
import type { LanguageTag } from '../locale/index.js';
import { chosenFindings, type NoteFinding, type NoteReading, readNote } from '../notes/index.js';
import type { HiddenPatient } from './hidden.js';
import { actsOf, recordKnown, revealed, type Round } from './round.js';

/** How a presented finding stands to the truth. */
export const PRESENTED_VERDICTS = ['right', 'wrong', 'claimed', 'missed'] as const;
/** `claimed`: nobody examined there, so it is neither right nor wrong; `missed`: found, not as in health, and not said. */
export type PresentedVerdict = (typeof PRESENTED_VERDICTS)[number];

/** One finding of a presentation held against the patient. */
export interface PresentedFinding {
  readonly verdict: PresentedVerdict;
  readonly part: 'pulses' | 'bruits';
  readonly place: Place;
  /** What was said; missing where nothing was. */
  readonly said?: Grade | Bruit;
  /** What is there. */
  readonly there?: Grade | Bruit;
  /** What hand or ear had found, where it erred: what was said wrongly may have been found so. */
  readonly found?: Grade | Bruit;
}

/** A presentation held against the truth. */
export interface Presentation {
  readonly findings: readonly PresentedFinding[];
  /** How the text was read, with what was not understood. */
  readonly reading: NoteReading;
}

const at = (record: Examination, part: 'pulses' | 'bruits', place: Place): Grade | Bruit | undefined =>
  part === 'pulses' ? pulseAt(record, place as never)?.grade : bruitAt(record, place as never)?.bruit;

/** Bounding counts with normal: both say that the artery above is open. */
const alike = (a: Grade | Bruit | undefined, b: Grade | Bruit | undefined): boolean => {
  const plain = (value: Grade | Bruit | undefined): string | undefined =>
    value === 'bounding' ? 'normal' : value;
  return plain(a) === plain(b);
};

const saidIn = ({ part, patch }: NoteFinding): Grade | Bruit | undefined =>
  part === 'pulses' ? patch.grade : patch.bruit;

/**
 * Reads a typed or dictated summary and holds every pulse and bruit of it against the truth. What was not examined is claimed, right or
 * not; what was found and is not as in health and was left out is missed.
 * @throws Error where the round has no answer yet
 */
export function presentationOf(
  patient: HiddenPatient,
  round: Round,
  text: string,
  language: LanguageTag,
): Presentation {
  const { record: truth } = revealed(patient, round);
  const known = recordKnown(patient, round);
  const reading = readNote(text, { scale: patient.scale, language });
  const told = new Map<string, PresentedFinding>();
  for (const finding of chosenFindings(reading)) {
    const { part, place } = finding;
    const said = saidIn(finding);
    if (said === undefined) continue;
    const [there, found] = [at(truth, part, place), at(known, part, place)];
    told.set(`${part} ${placeKey(place)}`, {
      part,
      place,
      said,
      ...(there && { there }),
      ...(found && !alike(found, there) && { found }),
      verdict: found === undefined ? 'claimed' : alike(said, there) ? 'right' : 'wrong',
    });
  }
  const missed = actsOf(round).flatMap((act): PresentedFinding[] => {
    if (act.kind !== 'feel' && act.kind !== 'listen') return [];
    const part = act.kind === 'feel' ? 'pulses' : 'bruits';
    const there = at(truth, part, act.place);
    const found = at(known, part, act.place);
    const usual = there === 'normal' || there === 'bounding' || there === 'none' || there === undefined;
    if (usual || told.has(`${part} ${placeKey(act.place)}`)) return [];
    const erred = found && !alike(found, there) ? { found } : {};
    return [{ verdict: 'missed', part, place: act.place, there, ...erred }];
  });
  return { findings: [...told.values(), ...missed], reading };
}
