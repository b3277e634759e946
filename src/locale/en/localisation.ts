import { limbKey, namedStretches, type PieceKey, type Place } from '../../anatomy/index.js';
import type { ActId, Assumption, Cause, FindingId, Muscle, State } from '../../localisation/index.js';
import type {
  BeginsStatement,
  DownstreamStatement,
  EvidenceStatement,
  FirmStatement,
  ImpossibleStatement,
  StoryStatement,
  VoicesStatement,
} from '../../statements/index.js';
import { render, renderKind, type Renderings } from '../render.js';
import { anatomy } from './anatomy.js';
import { examination } from './examination.js';
import { decimal, list, paragraph, sentence } from './phrases.js';

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
const pieces = (keys: readonly PieceKey[]): string => list(anatomy.stretches(namedStretches(keys)), 'or');

const DELAY = { right: 'right later', left: 'left later', both: 'on both sides', none: 'none' };

const between = {
  'radio-radial': 'Delay between the radial pulses',
  'radio-femoral': 'Delay from radial to femoral',
};

const findings: Renderings<FindingId, string, 'kind'> = {
  pulse: ({ place, grade }) => sentence(`${anatomy.place(place)} pulse ${examination.grades[grade]}`),
  doppler: ({ place, signal }) =>
    sentence(`${anatomy.place(place)} Doppler: ${examination.dopplers[signal]}`),
  thrill: ({ place }) => sentence(`${anatomy.place(place)} thrill`),
  bruit: ({ place, bruit }) =>
    bruit === 'none'
      ? `No bruit at the ${anatomy.place(place)}`
      : sentence(`${anatomy.place(place)} ${examination.bruits[bruit]}`),
  index: ({ place, value }) => sentence(`${anatomy.place(place)} pressure index ${decimal(value, 2)}`),
  'ankle-index': ({ side, value }) => sentence(`${anatomy.sides[side]} ankle index ${decimal(value, 2)}`),
  pain: ({ limb, muscle }) =>
    muscle === 'none'
      ? `No pain on effort in the ${anatomy.limbs[limbKey(limb)]}`
      : `Pain on effort: ${anatomy.limbs[limbKey(limb)]}, ${muscles[muscle]}`,
  delay: ({ of, side }) => `${between[of]}: ${DELAY[side]}`,
};
const finding = (id: FindingId): string => renderKind(findings, id);

/** What to do next, and why. */
const acts: Renderings<ActId, { name: string; why: string }, 'kind'> = {
  feel: ({ place }) => ({
    name: `${sentence(anatomy.place(place))} pulse`,
    why: anatomy.technique[place.site],
  }),
  listen: ({ place }) => ({
    name: `${sentence(anatomy.place(place))}: listen`,
    why: 'A bruit there would tell where it narrows.',
  }),
  'ankle-pressure': ({ side }) => ({
    name: `${sentence(anatomy.sides[side])} ankle pressure`,
    why: 'Says how deep the drop is.',
  }),
  'arm-pressures': {
    name: 'Pressure in both arms',
    why: 'A difference points to the inflow of the lower arm.',
  },
};

/** What an answer hangs on, as it stands after "hangs on". */
const assumptions: Renderings<Assumption, string, 'kind'> = {
  cause: ({ cause }) => `how common ${causes[cause]} is`,
  artery: ({ artery }) => `how often the ${anatomy.arteries[artery]} is diseased`,
  palpation: ({ site }) => `how reliably the ${anatomy.sites[site]} pulse is felt`,
  passage: ({ through }) => `how much pulse a ${through} artery lets through`,
  bruit: 'how often a narrowing is heard',
  doppler: 'what a Doppler signal tells',
  index: 'what a pressure index tells',
  pain: 'what the place of the pain tells',
  delay: 'what a delay tells',
};

const grades = { 'fairly-firm': 'Fairly firm.', 'not-firm': 'Not firm.' };

function infirm({ code, hangsOn, limb, ungraded }: Exclude<FirmStatement, { code: 'firm' }>): string {
  const on = list(hangsOn.map((one) => renderKind(assumptions, one)));
  return paragraph([
    grades[code],
    on && `It hangs on ${on}.`,
    ungraded
      ? `${ungraded === 1 ? 'One site' : `${ungraded} sites`} of the ${anatomy.limbs[limb]} remain.`
      : '',
  ]);
}

const firm: Renderings<FirmStatement> = {
  firm: 'Firm. Halving or doubling any assumption leaves it first.',
  'fairly-firm': infirm,
  'not-firm': infirm,
};

/** "left popliteal blocked". */
const lesion = ({ piece, state }: Pick<DownstreamStatement, 'piece' | 'state'>): string =>
  `${anatomy.piece(piece)} ${states[state]}`;

const stories: Renderings<StoryStatement> = {
  'all-open': ({ cause }) => `The single likeliest story: every artery open; ${causes[cause]}.`,
  lesions: ({ cause, lesions }) =>
    `The single likeliest story: ${list(lesions.map(lesion))}; behind it ${causes[cause]}.`,
};

const begins: Renderings<BeginsStatement> = {
  answer: ({ pieces: keys }) => sentence(pieces(keys)),
  nothing: 'No block shown',
  elsewhere: 'Elsewhere',
};

const DISAGREE = 'Rule and probabilities disagree.';

const voices: Renderings<VoicesStatement, { claim: string; why: string }> = {
  agree: { claim: '', why: 'Rule and probabilities agree.' },
  disagree: ({ pieces: keys }) => ({
    claim: DISAGREE,
    why: `By probability it is ${pieces(keys)}; look at the findings that contradict each other.`,
  }),
  'rule-alone': {
    claim: DISAGREE,
    why: 'By probability more likely nothing is blocked here: a pulse may have been misjudged. Feel it again.',
  },
  'network-alone': ({ pieces: keys }) => ({
    claim: `The rule shows no block; by probability it is ${pieces(keys)}.`,
    why: '',
  }),
};

const IMPOSSIBLE = 'No state of the arteries explains these findings together.';

const impossible: Renderings<ImpossibleStatement> = {
  'any-of': ({ findings: ids }) =>
    `${IMPOSSIBLE} Without any one of these they would fit: ${list(ids.map(finding))}.`,
  impossible: IMPOSSIBLE,
};

/** Words of the belief network's answers. */
export const localisation = {
  causes,
  states,
  beginsHeading: 'Where trouble begins, by probability',
  begins: (statement: BeginsStatement) => render(begins, statement),
  nothing: begins.nothing as string,
  /** How the voices stand to each other: what to stress, and the rest. */
  voices: (statement: VoicesStatement) => render(voices, statement),
  downstreamHeading: 'And further down',
  downstream: (statement: DownstreamStatement) => sentence(lesion(statement)),
  evidenceHeading: 'What speaks for the first answer',
  ways: { for: 'for', against: 'against' },
  /** A finding's way and weight in figures. */
  weight: ({ way, odds }: EvidenceStatement) =>
    `${way}, odds ${way === 'for' ? 'times' : 'divided by'} ${decimal(odds, 1)}`,
  finding,
  next: 'Next, because it would tell most',
  start: 'Start with',
  act: (id: ActId) => renderKind(acts, id),
  openNow: 'Open',
  howFirm: 'How firm',
  firm: (statement: FirmStatement) => render(firm, statement),
  numbers: 'Numbers',
  levels: 'By level',
  story: (statement: StoryStatement) => render(stories, statement),
  impossible: (statement: ImpossibleStatement) => render(impossible, statement),
  where: (place: Place) => sentence(anatomy.place(place)),
  causesHeading: 'What lies behind it, by probability',
};
export type LocalisationWords = typeof localisation;
