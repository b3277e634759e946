import { limbKey, namedStretches, type PieceKey, type Place } from '../../anatomy/index.js';
import type {
  ActId,
  Assumption,
  Cause,
  Conflict,
  FindingId,
  Muscle,
  NotExcluded,
  SettlingQuestion,
  State,
  Whereabouts,
} from '../../localisation/index.js';
import type {
  BeginsStatement,
  EvidenceStatement,
  FirmStatement,
  FurtherStatement,
  ImpossibleStatement,
  Nature,
  NextStatement,
  OccludedStatement,
  NatureStatement,
  StoryStatement,
  VoicesStatement,
} from '../../statements/index.js';
import { render, renderKind, type Renderings } from '../render.js';
import { anatomy } from './anatomy.js';
import { examination } from './examination.js';
import { decimal, list, paragraph, percent, sentence } from './phrases.js';
import { skinLevels } from './skin-levels.js';

const causes: Record<Cause, string> = {
  none: 'no arterial disease',
  focal: 'focal arterial disease (one or few lesions)',
  diffuse: 'diffuse (multilevel) arterial disease',
  distal: 'distal small-artery disease',
  vasculitis: 'large-vessel vasculitis',
  embolic: 'embolism',
  injury: 'arterial injury',
  compression: 'extrinsic compression or entrapment',
  coarctation: 'coarctation of the aorta',
  dissection: 'aortic dissection',
  aneurysm: 'an aneurysm',
  'low-flow': 'low flow or vasoconstriction',
};

const states: Record<State, string> = { patent: 'patent', narrowed: 'stenosed', blocked: 'occluded' };

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
  'ankle-index': ({ side, value }) => sentence(`${anatomy.sides[side]} ABPI ${decimal(value, 2)}`),
  'digit-index': ({ limb, value }) =>
    sentence(
      `${anatomy.sides[limb.side]} ${limb.kind === 'leg' ? 'toe' : 'finger'} index ${decimal(value, 2)}`,
    ),
  incompressible: ({ place }) => sentence(`${anatomy.place(place)} not compressible`),
  exercise: ({ side, falls }) =>
    `${falls ? 'Ankle pressure falls' : 'No fall of the ankle pressure'} after exercise, ${anatomy.sides[side]}`,
  skin: ({ limb, temperature, level }) =>
    sentence(
      `${anatomy.limbs[limbKey(limb)]} ${temperature}${level ? ` from the ${skinLevels[level]} down` : ''}`,
    ),
  wound: ({ limb }) => `Ulcer or gangrene, ${anatomy.limbs[limbKey(limb)]}`,
  numbness: ({ limb }) => `Sensory loss beyond the digits, ${anatomy.limbs[limbKey(limb)]}`,
  'hand-arch': ({ side, artery, fills }) =>
    `Allen’s test ${anatomy.sides[side]}: ${fills ? 'palmar flush' : 'no palmar flush'} on ${anatomy.arteries[artery]} release`,
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
    name: `${sentence(anatomy.place(place))}: auscultate`,
    why: 'A bruit there would place the stenosis.',
  }),
  'ankle-pressure': ({ side }) => ({
    name: `${sentence(anatomy.sides[side])} ankle pressure`,
    why: 'Says how deep the drop is.',
  }),
  doppler: ({ place }) => ({
    name: `${sentence(anatomy.place(place))}: Doppler`,
    why: 'Says whether blood flows there, and how.',
  }),
  'toe-pressure': ({ side }) => ({
    name: `${sentence(anatomy.sides[side])} toe pressure`,
    why: 'Tells of the foot where the ankle does not, or where its arteries are stiff.',
  }),
  delay: ({ of }) => ({ name: between[of], why: 'A later pulse points to the artery between.' }),
  'pain-level': ({ limb }) => ({
    name: `Where it hurts on effort: ${anatomy.limbs[limbKey(limb)]}`,
    why: 'The highest muscle that hurts points to the artery above it.',
  }),
  onset: { name: 'How it began', why: 'Sudden or gradual decides between an embolus and old disease.' },
  'arm-pressures': {
    name: 'Brachial pressure in both arms',
    why: 'A difference suggests subclavian or brachiocephalic disease on the side of the lower pressure.',
  },
};

/** What an answer hangs on, as it stands after "hangs on". */
const assumptions: Renderings<Assumption, string, 'kind'> = {
  cause: ({ cause }) => `how common ${causes[cause]} is`,
  palpation: ({ site }) => `how reliably the ${anatomy.sites[site]} pulse is felt`,
  bruit: 'how often a stenosis is heard',
  doppler: 'what a Doppler signal tells',
  index: 'what a pressure index tells',
  pain: 'what the place of the pain tells',
  delay: 'what a delay tells',
  seen: 'what skin, wounds and sensation tell',
};

/** A grade says what it promises. */
const grades = {
  firm: 'Robust: of answers graded so, at least nine in ten were right in published cases.',
  'fairly-firm': 'Fairly robust: of answers graded so, seven to nine in ten were right in published cases.',
  'not-firm': 'Not robust: of answers graded so, fewer than seven in ten were right in published cases.',
};

function firm({ code, hangsOn, held, tried, limb, ungraded }: FirmStatement): string {
  const on = list(hangsOn.map((one) => renderKind(assumptions, one)));
  return paragraph([
    grades[code],
    `It stays first in ${held} of ${tried} ways of varying all assumptions at once.`,
    on && `It depends on ${on}.`,
    ungraded
      ? `${ungraded === 1 ? 'One site' : `${ungraded} sites`} of the ${anatomy.limbs[limb]} remain.`
      : '',
  ]);
}

/** "left popliteal blocked". */
const lesion = ({ piece, state }: { piece: PieceKey; state: State }): string =>
  `${anatomy.piece(piece)} ${states[state]}`;

const stories: Renderings<StoryStatement> = {
  'all-open': ({ cause }) => `Most probable overall explanation: every artery patent; ${causes[cause]}.`,
  lesions: ({ cause, lesions }) =>
    `Most probable overall explanation: ${list(lesions.map(lesion))}; probable cause: ${causes[cause]}.`,
};

const occluded: Renderings<OccludedStatement> = {
  entry: ({ pieces: keys, pulse }) =>
    sentence(`${pieces(keys)}${pulse === 'reduced' ? ', stenosed or reconstituted' : ''}`),
  open: 'No main artery occluded',
  elsewhere: 'Other site',
};

const wheres: Record<FurtherStatement['where'], string> = { above: 'proximal to it', beyond: 'distal to it' };

const notExcluded: Record<NotExcluded, string> = {
  'small-arteries': 'small-vessel disease',
  emboli: 'emboli',
  injury: 'arterial injury',
  exertion: 'a stenosis that shows on exertion only',
};

const questions: Record<SettlingQuestion, { name: string; why: string }> = {
  circulation: {
    name: 'Blood pressure and body temperature',
    why: 'Low pressure or a cold body takes pulses away from several limbs without arterial disease.',
  },
  swelling: {
    name: 'Is the leg swollen and blue?',
    why: 'Massive venous thrombosis (phlegmasia) can abolish the pulses of a swollen blue leg.',
  },
  access: {
    name: 'Is there a dialysis access on this arm?',
    why: 'An access draws blood away from the wrist without arterial disease.',
  },
  'from-birth': {
    name: 'Was this pulse ever felt?',
    why: 'Many people are born without one foot pulse, or it is hard to feel on both sides.',
  },
};

const natures: Record<Nature, string> = {
  embolus: 'an embolus',
  thrombosis: 'thrombosis in situ',
  'chronic-disease': 'long-standing arterial disease',
  injury: 'an injury',
  dissection: 'a dissection',
  aneurysm: 'an aneurysm',
  vasculitis: 'vasculitis',
  compression: 'extrinsic compression or entrapment',
  coarctation: 'coarctation of the aorta',
  'low-flow': 'low flow or vasoconstriction',
  none: 'no arterial disease',
};

const nexts: Renderings<NextStatement, { name: string; why: string }> = {
  settle: ({ question }) => questions[question],
  act: ({ act }) => renderKind(acts, act),
  enough: {
    name: 'Nothing left at the bedside would change this much',
    why: 'Imaging by local pathway.',
  },
};

const begins: Renderings<BeginsStatement> = {
  answer: ({ pieces: keys }) => sentence(pieces(keys)),
  nothing: 'No occlusive lesion suggested',
  elsewhere: 'Other site',
};

const DISAGREE = 'Pulse rule and probability model disagree.';

const voices: Renderings<VoicesStatement, { claim: string; why: string }> = {
  agree: { claim: '', why: 'Pulse rule and probability model agree.' },
  disagree: ({ pieces: keys }) => ({
    claim: DISAGREE,
    why: `The probability model favours ${pieces(keys)}; review the conflicting findings.`,
  }),
  'rule-alone': {
    claim: DISAGREE,
    why: 'The probability model favours no occlusive lesion here: a pulse may have been misjudged. Palpate again.',
  },
  'network-alone': ({ pieces: keys }) => ({
    claim: `The pulse rule suggests no occlusive lesion; the probability model favours ${pieces(keys)}.`,
    why: '',
  }),
};

const IMPOSSIBLE = 'These findings are mutually inconsistent.';

const impossible: Renderings<ImpossibleStatement> = {
  'any-of': ({ findings: ids }) =>
    `${IMPOSSIBLE} Without any one of these they would fit: ${list(ids.map(finding))}.`,
  impossible: IMPOSSIBLE,
};

/** "somewhere between left femoral and left popliteal". */
function betweenSites({ above, below }: Pick<Whereabouts, 'above' | 'below'>): string {
  const ends = list(below.map((place) => anatomy.place(place)));
  if (!ends) return above ? `somewhere beyond ${anatomy.place(above)}` : 'somewhere on the way';
  return above
    ? `somewhere between ${anatomy.place(above)} and ${ends}`
    : `somewhere between the heart and ${ends}`;
}

/** Words of the belief network's answers. */
export const localisation = {
  causes,
  states,
  occludedHeading: 'Site of the occlusion, by probability',
  occluded: (statement: OccludedStatement) => render(occluded, statement),
  between: betweenSites,
  /** What a limb is headed by: the segment on which its pulse is lost, and how probable that is. */
  headline: (where: Whereabouts) =>
    `${where.pulse === 'absent' ? 'Occlusion' : 'Stenosis or occlusion'} ${betweenSites(where)}, ${percent(where.probability)}`,
  stretch: (where: Whereabouts) => sentence(betweenSites(where)),
  /** Heads the rows that say the same by artery. */
  byArtery: 'By artery',
  natureHeading: 'Probable cause',
  beginsHeading: 'Most proximal lesion, by probability',
  begins: (statement: BeginsStatement) => render(begins, statement),
  nothing: begins.nothing as string,
  /** How the voices stand to each other: what to stress, and the rest. */
  voices: (statement: VoicesStatement) => render(voices, statement),
  furtherHeading: 'Further lesions',
  further: ({ pieces: keys, state, where }: FurtherStatement) =>
    sentence(`${pieces(keys)} ${states[state]}, ${wheres[where]}`),
  notExcluded: (what: readonly NotExcluded[]) =>
    `Not excluded by pulses: ${list(
      what.map((one) => notExcluded[one]),
      'or',
    )}.`,
  conflict: ({ finding: id, with: other }: Conflict) =>
    `${finding(id)} hardly goes with: ${finding(other)}. Check both again.`,
  nature: ({ nature, probability }: NatureStatement) =>
    `${sentence(natures[nature])}: ${percent(probability)}.`,
  evidenceHeading: 'Evidence for and against the leading site',
  ways: { for: 'for', against: 'against' },
  /** A finding's way and weight in figures. */
  weight: ({ way, odds }: EvidenceStatement) =>
    `${way}, odds ${way === 'for' ? 'times' : 'divided by'} ${decimal(odds, 1)}`,
  finding,
  nextHeading: 'Most informative next step',
  next: (statement: NextStatement) => render(nexts, statement),
  start: 'Begin with',
  act: (id: ActId) => renderKind(acts, id),
  openNow: 'Go to site',
  howFirm: 'Robustness',
  firm,
  numbers: 'All probabilities',
  levels: 'By arterial level',
  story: (statement: StoryStatement) => render(stories, statement),
  impossible: (statement: ImpossibleStatement) => render(impossible, statement),
  where: (place: Place) => sentence(anatomy.place(place)),
  causesHeading: 'Probable cause',
};
export type LocalisationWords = typeof localisation;
