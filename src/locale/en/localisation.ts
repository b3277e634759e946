import { limbKey, type LimbKey, type PieceKey, type Place } from '../../anatomy/index.js';
import type { ActId, Answer, Assumption, Cause, FindingId, Muscle, State } from '../../localisation/index.js';
import { anatomy } from './anatomy.js';
import { examination } from './examination.js';
import { list, sentence } from './phrases.js';
import { pieces as named } from './rule.js';

const causes: Record<Cause, string> = {
  none: 'no arterial disease',
  focal: 'one narrowing or a few',
  diffuse: 'disease of many arteries',
  distal: 'disease of the small distal arteries',
  vasculitis: 'inflammation of the large arteries',
  embolic: 'a clot carried in',
  injury: 'an injury',
  compression: 'compression from outside',
  coarctation: 'coarctation of the aorta',
  dissection: 'dissection of the aorta',
  'low-flow': 'low flow or cold',
};

const states: Record<State, string> = { patent: 'open', narrowed: 'narrowed', blocked: 'blocked' };

const muscles: Record<Muscle, string> = {
  none: 'none',
  buttock: 'buttock',
  thigh: 'thigh',
  'calf-upper': 'upper calf',
  'calf-lower': 'lower calf',
  foot: 'foot',
  arm: 'arm',
};

/** Several pieces as one names them, as alternatives. */
function pieces(keys: readonly PieceKey[]): string {
  return list(named(keys), 'or');
}

const DELAY = { right: 'right later', left: 'left later', both: 'on both sides', none: 'none' };

function finding(id: FindingId): string {
  switch (id.kind) {
    case 'pulse':
      return sentence(`${anatomy.place(id.place)} pulse ${examination.grades[id.grade]}`);
    case 'doppler':
      return sentence(`${anatomy.place(id.place)} Doppler: ${examination.dopplers[id.signal]}`);
    case 'thrill':
      return sentence(`${anatomy.place(id.place)} thrill`);
    case 'bruit':
      return id.bruit === 'none'
        ? `No bruit at the ${anatomy.place(id.place)}`
        : sentence(`${anatomy.place(id.place)} ${examination.bruits[id.bruit]}`);
    case 'index':
      return sentence(`${anatomy.place(id.place)} pressure index ${id.value.toFixed(2)}`);
    case 'ankle-index':
      return sentence(`${anatomy.sides[id.side]} ankle index ${id.value.toFixed(2)}`);
    case 'pain':
      return id.muscle === 'none'
        ? `No pain on effort in the ${anatomy.limbs[limbKey(id.limb)]}`
        : `Pain on effort: ${anatomy.limbs[limbKey(id.limb)]}, ${muscles[id.muscle]}`;
    case 'delay':
      return id.of === 'radio-radial'
        ? `Delay between the radial pulses: ${DELAY[id.side]}`
        : `Delay from radial to femoral: ${DELAY[id.side]}`;
  }
}

/** What to do next, and why. */
function act(id: ActId): { name: string; why: string } {
  switch (id.kind) {
    case 'feel':
      return { name: `${sentence(anatomy.place(id.place))} pulse`, why: anatomy.technique[id.place.site] };
    case 'listen':
      return {
        name: `${sentence(anatomy.place(id.place))}: listen`,
        why: 'A bruit there would tell where it narrows.',
      };
    case 'ankle-pressure':
      return {
        name: `${sentence(anatomy.sides[id.side])} ankle pressure`,
        why: 'Says how deep the drop is.',
      };
    case 'arm-pressures':
      return { name: 'Pressure in both arms', why: 'A difference points to the inflow of the lower arm.' };
  }
}

function assumption(one: Assumption): string {
  switch (one.kind) {
    case 'cause':
      return `how common ${causes[one.cause]} is`;
    case 'artery':
      return `how often the ${anatomy.arteries[one.artery]} is diseased`;
    case 'palpation':
      return `how reliably the ${anatomy.sites[one.site]} pulse is felt`;
    case 'passage':
      return `how much pulse a ${one.through} artery lets through`;
    case 'bruit':
      return 'how often a narrowing is heard';
    case 'doppler':
      return 'what a Doppler signal tells';
    case 'index':
      return 'what a pressure index tells';
    case 'pain':
      return 'what the place of the pain tells';
    case 'delay':
      return 'what a delay tells';
  }
}

function firm(
  grade: 'firm' | 'fairly-firm' | 'not-firm',
  overturned: readonly { assumption: Assumption }[],
  unstated: number,
  limb: LimbKey,
): string {
  if (grade === 'firm') return 'Firm. Halving or doubling any assumption leaves it first.';
  const names = [...new Set(overturned.map((one) => assumption(one.assumption)))];
  const why = names.length ? ` It hangs on ${list(names.slice(0, 2))}.` : '';
  const left = unstated
    ? ` ${unstated === 1 ? 'One site' : `${unstated} sites`} of the ${anatomy.limbs[limb]} remain.`
    : '';
  return `${grade === 'fairly-firm' ? 'Fairly firm.' : 'Not firm.'}${why}${left}`;
}

function story(
  cause: Cause,
  lesions: readonly { piece: PieceKey; state: Exclude<State, 'patent'> }[],
): string {
  if (!lesions.length) return `The single likeliest story: every artery open; ${causes[cause]}.`;
  const parts = lesions.map(({ piece, state }) => `${anatomy.piece(piece)} ${states[state]}`);
  return `The single likeliest story: ${list(parts)}; behind it ${causes[cause]}.`;
}

/** Words of the belief network's answers. */
export const localisation = {
  causes,
  states,
  answer: (answer: Pick<Answer, 'pieces'>) => sentence(pieces(answer.pieces)),
  pieces,
  begins: 'Where trouble begins, by probability',
  nothing: 'No block shown',
  elsewhere: 'Elsewhere',
  agree: 'Rule and probabilities agree.',
  disagree: 'Rule and probabilities disagree.',
  disagreeWhy: (answer: string) =>
    `By probability it is ${answer}; look at the findings that contradict each other.`,
  disagreeNone:
    'By probability more likely nothing is blocked here: a pulse may have been misjudged. Feel it again.',
  ruleSilent: (answer: string) => `The rule shows no block; by probability it is ${answer}.`,
  downstream: 'And further down',
  downstreamState: (piece: PieceKey, state: Exclude<State, 'patent'>) =>
    sentence(`${anatomy.piece(piece)} ${states[state]}`),
  evidence: 'What speaks for the first answer',
  for: 'for',
  against: 'against',
  weight: (weight: number) =>
    `${weight > 0 ? 'for' : 'against'}, odds ${weight > 0 ? 'times' : 'divided by'} ${Math.exp(Math.abs(weight)).toFixed(1)}`,
  finding,
  next: 'Next, because it would tell most',
  start: 'Start with',
  act,
  openNow: 'Open',
  howFirm: 'How firm',
  firm,
  numbers: 'Numbers',
  levels: 'By level',
  story,
  impossible: 'No state of the arteries explains these findings together.',
  impossibleWhy: (ids: readonly FindingId[]) =>
    ids.length ? `Without any one of these they would fit: ${list(ids.map(finding))}.` : '',
  where: (place: Place) => sentence(anatomy.place(place)),
  causesHeading: 'What lies behind it, by probability',
};
export type LocalisationWords = typeof localisation;
