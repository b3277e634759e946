import type { SkinName, SkinPlace } from '../../anatomy/index.js';
import type { MarkKind } from '../../examination/index.js';
import { say, termsFrom } from '../terms.js';
import { digitStates } from './digits.js';
import { list, sentence } from './phrases.js';

const kinds = termsFrom<MarkKind>({
  ulcer: { trade: 'ulcer', plain: 'sore' },
  gangrene: { trade: 'gangrene', plain: 'dead tissue' },
  pallor: { trade: 'pallor', plain: 'paleness' },
  redness: 'redness',
  cyanosis: { trade: 'cyanosis', plain: 'blue colour' },
  cold: 'cold below this line',
  scar: 'scar',
  amputation: { trade: 'amputation line', plain: 'line of amputation' },
});

const regions = termsFrom<SkinName['region']>({
  head: 'head',
  neck: 'neck',
  chest: 'chest',
  abdomen: 'abdomen',
  shoulder: 'shoulder',
  'upper-arm': 'upper arm',
  elbow: 'elbow',
  forearm: 'forearm',
  wrist: 'wrist',
  hand: 'hand',
  thumb: 'thumb',
  'index-finger': 'index finger',
  'middle-finger': 'middle finger',
  'ring-finger': 'ring finger',
  'little-finger': 'little finger',
  fingers: 'fingers',
  groin: 'groin',
  thigh: 'thigh',
  knee: 'knee',
  shin: 'shin',
  ankle: 'ankle',
  heel: 'heel',
  midfoot: 'midfoot',
  forefoot: 'forefoot',
  'great-toe': 'great toe',
  'second-toe': 'second toe',
  'third-toe': 'third toe',
  'fourth-toe': 'fourth toe',
  'little-toe': 'little toe',
  toes: 'toes',
  thenar: { trade: 'thenar eminence', plain: 'ball of the thumb' },
  hypothenar: { trade: 'hypothenar eminence', plain: 'edge of the palm below the little finger' },
  palm: 'palm',
  buttock: 'buttock',
  'thigh-back': 'back of the thigh',
  'popliteal-fossa': { trade: 'popliteal fossa', plain: 'back of the knee' },
  calf: 'calf',
  gaiter: { trade: 'medial gaiter area', plain: 'inner side above the ankle' },
  achilles: { trade: 'Achilles tendon', plain: 'back of the ankle' },
  'medial-malleolus': { trade: 'medial malleolus', plain: 'inner ankle bone' },
  'lateral-malleolus': { trade: 'lateral malleolus', plain: 'outer ankle bone' },
  dorsum: { trade: 'dorsum of the foot', plain: 'top of the foot' },
  instep: { trade: 'medial arch', plain: 'inner edge of the foot' },
  'base-5': { trade: 'base of the fifth metatarsal', plain: 'outer edge of the sole' },
  'met-head-1': { trade: 'first metatarsal head', plain: 'ball of the great toe' },
  'met-head-2': { trade: 'second metatarsal head', plain: 'ball of the second toe' },
  'met-head-3': { trade: 'third metatarsal head', plain: 'ball of the third toe' },
  'met-head-4': { trade: 'fourth metatarsal head', plain: 'ball of the fourth toe' },
  'met-head-5': { trade: 'fifth metatarsal head', plain: 'ball of the little toe' },
  'first-web': { trade: 'first web space', plain: 'gap beside the great toe' },
});

/** Which face of it, after its name. */
const faces = termsFrom<NonNullable<SkinName['face']>>({
  palmar: { trade: 'palmar', plain: 'palm side' },
  dorsal: { trade: 'dorsal', plain: 'upper side' },
  plantar: { trade: 'plantar', plain: 'sole' },
  medial: { trade: 'medial', plain: 'inner side' },
  lateral: { trade: 'lateral', plain: 'outer side' },
  posterior: { trade: 'posterior', plain: 'back' },
});
const thirds: Record<NonNullable<SkinName['third']>, string> = { upper: 'upper', mid: 'mid', lower: 'lower' };
const sides: Record<SkinPlace['side'], string> = { right: 'right ', left: 'left ', midline: '' };

/** "left mid shin", "abdomen", "left knee to toes", "left great toe (plantar)". */
function place({ region, side, third, to, face }: SkinName): string {
  return `${sides[side]}${third ? `${thirds[third]} ` : ''}${regions[region]}${face ? ` (${faces[face]})` : ''}${to ? ` to ${regions[to]}` : ''}`;
}

/** "left forefoot and great toe": a side is said once where the next place has it too. */
function where(names: readonly SkinName[]): string {
  return list(
    names.map((name, i) => place(names[i - 1]?.side === name.side ? { ...name, side: 'midline' } : name)),
  );
}

/** Kinds where there is least room; each is part of the whole word. */
const short: Partial<Record<MarkKind, string>> = {
  cold: 'Cold below',
  amputation: 'Amputation',
};

function whereWord(names: readonly SkinName[]): string {
  return sentence(where(names) || 'off the body');
}

function mark(kind: MarkKind, names: readonly SkinName[], note?: string): string {
  return `${whereWord(names)}: ${kinds[kind]}${note ? `; note: ${note}` : ''}`;
}

/** Words for what is drawn on the skin. */
export const marks = {
  /** What is seen of a finger or toe, and what is said of those that nobody looked at beside some that were. */
  digitStates,
  otherDigits: () => say('others not examined', 'others not checked'),
  kinds,
  kindWord: (kind: MarkKind) => sentence(kinds[kind]),
  kindShort: (kind: MarkKind) => short[kind] ?? sentence(kinds[kind]),
  placeWord: (name: SkinName) => sentence(place(name)),
  where,
  whereWord,
  /** A mark as one says it: "Left forefoot: ulcer; note: dry". */
  mark,
  recorded: (kind: MarkKind, names: readonly SkinName[]) => ({
    where: whereWord(names),
    what: `${kinds[kind]} recorded`,
  }),
  changed: (kind: MarkKind, names: readonly SkinName[], note?: string) => ({
    where: whereWord(names),
    what: `${kinds[kind]}${note ? `; note: ${note}` : ''}`,
  }),
  removed: (kind: MarkKind, names: readonly SkinName[], count: number) =>
    count === 1 ? `${mark(kind, names)} deleted.` : `${count} marks deleted.`,
  offSkin: 'Nothing recorded: that was off the body.',
  tooSmall: 'Nothing recorded: draw round an area, or along a line.',
  full: (most: number) => `Nothing recorded: a record holds at most ${most} marks.`,
  kind: 'Kind of mark',
  how: 'Draw round an area or along a line. Tap a mark to change it.',
  howErase: 'Draw across marks to delete them.',
  eraser: 'Eraser',
  done: 'Done',
  orPlace: 'To record one without drawing, choose kind and place.',
  place: 'Place',
  choosePlace: 'Choose a place',
  add: 'Add',
  edit: 'Edit',
  remove: 'Delete',
  note: 'Note',
  /** Keys on a mark while one draws, for the list of keys. */
  keys: [
    ['Arrows on a mark', 'move it; with Shift, finely'],
    ['Enter, Delete on a mark', 'change it, delete it'],
  ] as readonly (readonly [string, string])[],
  groups: {
    'right leg': 'Right leg',
    'left leg': 'Left leg',
    'right arm': 'Right arm',
    'left arm': 'Left arm',
    trunk: 'Trunk and head',
  },
};
