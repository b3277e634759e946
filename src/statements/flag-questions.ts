import { limbKey } from '../anatomy/index.js';
import type { Examination } from '../examination/index.js';
import type { ActKind } from '../localisation/index.js';
import { type Question, type QuestionCode, triage } from '../triage/index.js';
import type { ReadNetwork } from './network.js';

/** The kind of act that answers a question; what is not named is told or seen. */
const ANSWERED_BY: Readonly<Partial<Record<QuestionCode, ActKind>>> = {
  onset: 'onset',
  'arterial-doppler': 'doppler',
  'other-pulses': 'feel',
  'distal-pulses': 'feel',
  'other-popliteal-and-aorta': 'feel',
  'ankle-index': 'ankle-pressure',
  'other-side-index': 'ankle-pressure',
  'pad-tests': 'ankle-pressure',
  'forearm-index': 'arm-pressures',
  toe: 'toe-pressure',
};

/**
 * What a red flag still asks of the limbs that were examined, or of the whole patient: it comes before whatever would only
 * localise better. None without a flag.
 * @param can the kinds of act that the form around can record; all where not given
 */
export function flagQuestions(
  examination: Examination,
  { limbs }: Pick<ReadNetwork, 'limbs'>,
  can?: readonly ActKind[],
): Question[] {
  const { flags, questions } = triage(examination);
  if (flags.length === 0) return [];
  return questions.filter(
    ({ code, limb }) =>
      (!limb || limbs[limbKey(limb)].examined) && (!can || can.includes(ANSWERED_BY[code] ?? 'inspect')),
  );
}
