import type { SkinName, SkinPlace } from '../../anatomy/index.js';
import type { MarkKind } from '../../examination/index.js';
import { list, sentence } from './phrases.js';

const kinds: Record<MarkKind, string> = {
  ulcer: 'ulcer',
  gangrene: 'gangrene',
  pallor: 'pallor',
  redness: 'redness',
  cyanosis: 'blue discolouration',
  cold: 'cold below this line',
  scar: 'scar',
  amputation: 'amputation line',
};

const regions: Record<SkinName['region'], string> = {
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
};
const thirds: Record<NonNullable<SkinName['third']>, string> = { upper: 'upper', mid: 'mid', lower: 'lower' };
const sides: Record<SkinPlace['side'], string> = { right: 'right ', left: 'left ', midline: '' };

/** "left mid shin", "abdomen", "left knee to toes". */
function place({ region, side, third, to }: SkinName): string {
  return `${sides[side]}${third ? `${thirds[third]} ` : ''}${regions[region]}${to ? ` to ${regions[to]}` : ''}`;
}

/** "left forefoot and great toe": a side is said once where the next place has it too. */
function where(names: readonly SkinName[]): string {
  return list(
    names.map((name, i) => place(names[i - 1]?.side === name.side ? { ...name, side: 'midline' } : name)),
  );
}

/** Words for what is drawn on the skin. */
export const marks = {
  kinds,
  kindWord: (kind: MarkKind) => sentence(kinds[kind]),
  place,
  where,
  /** A mark as one says it: "Left forefoot: ulcer; note: dry". */
  mark: (kind: MarkKind, names: readonly SkinName[], note?: string) =>
    `${sentence(where(names) || 'off the body')}: ${kinds[kind]}${note ? `; note: ${note}` : ''}`,
  recorded: (kind: MarkKind, names: readonly SkinName[]) => ({
    where: sentence(where(names)),
    what: `${kinds[kind]} recorded`,
  }),
  removed: (count: number) => (count === 1 ? 'One mark deleted.' : `${count} marks deleted.`),
  offSkin: 'Nothing recorded: the stroke lies off the body.',
  full: (most: number) => `Nothing recorded: a record holds at most ${most} marks.`,
  tool: 'Draw',
  toolMore: 'on the skin',
  title: 'On the skin',
  kind: 'Kind of mark',
  how: 'Draw round an area or along a line. Tap a mark to change it.',
  selected: 'Selected mark',
  move: 'On the figure, arrow keys move the mark and Delete removes it.',
  eraser: 'Eraser',
  done: 'Done',
  orPlace: 'Without drawing: place',
  choosePlace: 'Choose a place',
  add: 'Add',
  edit: 'Edit',
  remove: 'Delete',
  note: 'Note',
  groups: {
    'left leg': 'Left leg',
    'right leg': 'Right leg',
    'left arm': 'Left arm',
    'right arm': 'Right arm',
    trunk: 'Trunk and head',
  },
};
