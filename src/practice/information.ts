import type { Place, Side } from '../anatomy/index.js';
import { emptyExamination, type Examination } from '../examination/index.js';
import {
  type ActId,
  informationBetween,
  levelBeliefs,
  pressureEvidenceOf,
  readExamination,
} from '../localisation/index.js';
import { type PracticeAct, type PracticeActId, practiceActId } from './acts.js';
import type { HiddenPatient } from './hidden.js';
import { joined } from './records.js';
import { actsOf, recordKnown, type Round } from './round.js';

/** What one act told. */
export interface ActInformation {
  readonly act: PracticeActId;
  /** How far it moved the belief about where disease begins, in nats summed over the limbs; 0 where it told nothing of that. */
  readonly told: number;
}

/** Acts that told less than this, in nats, told nothing of where disease lies. Judgement, no source. */
export const TOLD_NOTHING = 0.02;

const beliefs = (record: Examination): ReturnType<typeof levelBeliefs> =>
  levelBeliefs(record, pressureEvidenceOf(record));

function movedBy(before: ReturnType<typeof levelBeliefs>, after: ReturnType<typeof levelBeliefs>): number {
  if (!before || !after) return 0;
  return (Object.keys(after) as (keyof typeof after)[]).reduce(
    (sum, limb) => sum + informationBetween(before[limb], after[limb]),
    0,
  );
}

/** What every act of a round told when it was done, in the order of the round. */
export function informationOf(patient: HiddenPatient, round: Round): readonly ActInformation[] {
  let record = emptyExamination(patient.scale);
  let before = beliefs(record);
  return actsOf(round).map((act) => {
    record = joined(record, patient.find(act));
    const after = beliefs(record);
    const told = movedBy(before, after);
    // Findings that cannot be together leave the belief where it was until they can.
    before = after ?? before;
    return { act: practiceActId(act), told };
  });
}

/** An act that the engine proposes, as acts of the bedside; one proposal may be several. */
function practiceActsOf(act: ActId): readonly PracticeAct[] {
  const sides: readonly Side[] = ['right', 'left'];
  switch (act.kind) {
    case 'feel':
    case 'doppler':
      return [{ kind: act.kind, place: act.place as Place<never> }];
    case 'listen':
      return [{ kind: 'listen', place: act.place as Place<never> }];
    case 'ankle-pressure':
    case 'toe-pressure':
      return [{ kind: 'cuff', cuff: act.kind === 'ankle-pressure' ? 'ankle' : 'toe', side: act.side }];
    case 'arm-pressures':
      return sides.map((side) => ({ kind: 'cuff', cuff: 'arm', side }));
    case 'delay':
      return [{ kind: 'delay', of: act.of }];
    case 'pain-level':
      return [{ kind: 'ask', about: 'walking' }];
    case 'onset':
      return [{ kind: 'ask', about: 'onset' }];
  }
}

/** Something left undone, with what it was expected to tell. */
export interface LeftUndone {
  readonly act: PracticeActId;
  /** Expected fall in entropy of the level, in nats. */
  readonly gain: number;
}

/**
 * What would have told most of what was not done, most first, as the engine expects from what was found; `undefined` where the findings
 * cannot be together, or are none, so that nothing can be expected.
 */
export function leftUndone(
  patient: HiddenPatient,
  round: Round,
  most = 3,
): readonly LeftUndone[] | undefined {
  const { network } = readExamination(recordKnown(patient, round));
  if (network.status !== 'read') return undefined;
  const done = new Set(round.acts);
  const found = new Map<PracticeActId, number>();
  for (const { act, gain } of network.next) {
    for (const one of practiceActsOf(act)) {
      const id = practiceActId(one);
      if (!done.has(id) && !found.has(id)) found.set(id, gain);
    }
  }
  return [...found].slice(0, most).map(([act, gain]) => ({ act, gain }));
}
