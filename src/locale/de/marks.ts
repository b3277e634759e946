import type { SkinName } from '../../anatomy/index.js';
import type { MarkKind } from '../../examination/index.js';
import type { marks as enMarks } from '../en/marks.js';
import { say, termsFrom } from '../terms.js';
import { digitStates } from './digits.js';
import { list, sentence } from './phrases.js';

const kinds = termsFrom<MarkKind>({
  ulcer: { trade: 'Ulkus', plain: 'offene Wunde' },
  gangrene: { trade: 'Gangrän', plain: 'abgestorbenes Gewebe' },
  pallor: 'Blässe',
  redness: 'Rötung',
  cyanosis: { trade: 'Zyanose', plain: 'Blauverfärbung' },
  cold: 'kalt unterhalb dieser Linie',
  scar: 'Narbe',
  amputation: 'Amputationslinie',
});

/** Kinds where there is least room; each is part of the whole word. */
const short: Partial<Record<MarkKind, string>> = { cold: 'Kalt', amputation: 'Amputation' };

const regions = termsFrom<SkinName['region']>({
  head: 'Kopf',
  neck: 'Hals',
  chest: 'Brust',
  abdomen: 'Bauch',
  shoulder: 'Schulter',
  'upper-arm': 'Oberarm',
  elbow: 'Ellenbogen',
  forearm: 'Unterarm',
  wrist: 'Handgelenk',
  hand: 'Hand',
  thumb: 'Daumen',
  'index-finger': 'Zeigefinger',
  'middle-finger': 'Mittelfinger',
  'ring-finger': 'Ringfinger',
  'little-finger': 'Kleinfinger',
  fingers: 'Finger',
  groin: 'Leiste',
  thigh: 'Oberschenkel',
  knee: 'Knie',
  shin: 'Unterschenkel',
  ankle: 'Knöchel',
  heel: 'Ferse',
  midfoot: 'Mittelfuß',
  forefoot: 'Vorfuß',
  'great-toe': 'Großzehe',
  'second-toe': 'zweite Zehe',
  'third-toe': 'dritte Zehe',
  'fourth-toe': 'vierte Zehe',
  'little-toe': 'Kleinzehe',
  toes: 'Zehen',
  thenar: { trade: 'Thenar', plain: 'Daumenballen' },
  hypothenar: { trade: 'Hypothenar', plain: 'Kleinfingerballen' },
  palm: { trade: 'Hohlhand', plain: 'Handfläche' },
  buttock: 'Gesäß',
  'thigh-back': 'Oberschenkelrückseite',
  'popliteal-fossa': 'Kniekehle',
  calf: 'Wade',
  gaiter: { trade: 'mediale Knöchelregion', plain: 'Innenseite über dem Knöchel' },
  achilles: 'Achillessehne',
  'medial-malleolus': { trade: 'Malleolus medialis', plain: 'Innenknöchel' },
  'lateral-malleolus': { trade: 'Malleolus lateralis', plain: 'Außenknöchel' },
  dorsum: 'Fußrücken',
  instep: { trade: 'medialer Fußrand', plain: 'Innenrand des Fußes' },
  'base-5': { trade: 'Basis des fünften Metatarsale', plain: 'Außenrand der Sohle' },
  'met-head-1': { trade: 'Köpfchen des ersten Metatarsale', plain: 'Großzehenballen' },
  'met-head-2': { trade: 'Köpfchen des zweiten Metatarsale', plain: 'Ballen der zweiten Zehe' },
  'met-head-3': { trade: 'Köpfchen des dritten Metatarsale', plain: 'Ballen der dritten Zehe' },
  'met-head-4': { trade: 'Köpfchen des vierten Metatarsale', plain: 'Ballen der vierten Zehe' },
  'met-head-5': { trade: 'Köpfchen des fünften Metatarsale', plain: 'Kleinzehenballen' },
  'first-web': { trade: 'erster Interdigitalraum', plain: 'Zwischenraum neben der Großzehe' },
});

/** Which face of it, after its name. */
const faces = termsFrom<NonNullable<SkinName['face']>>({
  palmar: { trade: 'beugeseitig', plain: 'Handflächenseite' },
  dorsal: { trade: 'dorsal', plain: 'Oberseite' },
  plantar: { trade: 'plantar', plain: 'Sohle' },
  medial: { trade: 'medial', plain: 'Innenseite' },
  lateral: { trade: 'lateral', plain: 'Außenseite' },
  posterior: { trade: 'hinten', plain: 'Rückseite' },
});
const thirds: Record<NonNullable<SkinName['third']>, string> = {
  upper: 'oben',
  mid: 'Mitte',
  lower: 'unten',
};
const sides: Record<SkinName['side'], string> = { right: ' rechts', left: ' links', midline: '' };

function bare({ region, third, to, face }: SkinName): string {
  return `${regions[region]}${face ? ` (${faces[face]})` : ''}${third ? ` ${thirds[third]}` : ''}${to ? ` bis ${regions[to]}` : ''}`;
}

/** "Unterschenkel Mitte links", "Bauch", "Knie bis Zehen links". */
function place(name: SkinName): string {
  return bare(name) + sides[name.side];
}

/** "Vorfuß und Großzehe links": places of the same side share it. */
function where(names: readonly SkinName[]): string {
  return list(names.map((name, i) => (names[i + 1]?.side === name.side ? bare(name) : place(name))));
}

function whereWord(names: readonly SkinName[]): string {
  return sentence(where(names) || 'neben dem Körper');
}

const noted = (note: string | undefined): string => (note ? `; Notiz: ${note}` : '');

function mark(kind: MarkKind, names: readonly SkinName[], note?: string): string {
  return `${whereWord(names)}: ${kinds[kind]}${noted(note)}`;
}

/** Words for what is drawn on the skin. */
export const marks: typeof enMarks = {
  digitStates,
  otherDigits: () => say('übrige nicht untersucht', 'übrige nicht geprüft'),
  kinds,
  kindWord: (kind) => sentence(kinds[kind]),
  kindShort: (kind) => short[kind] ?? sentence(kinds[kind]),
  placeWord: (name) => sentence(place(name)),
  where,
  whereWord,
  mark,
  recorded: (kind, names) => ({ where: whereWord(names), what: `${kinds[kind]} erfasst` }),
  changed: (kind, names, note) => ({ where: whereWord(names), what: `${kinds[kind]}${noted(note)}` }),
  removed: (kind, names, count) =>
    count === 1 ? `${mark(kind, names)} gelöscht.` : `${count} Markierungen gelöscht.`,
  offSkin: 'Nichts erfasst: Das war neben dem Körper.',
  tooSmall: 'Nichts erfasst: eine Fläche umfahren oder eine Linie ziehen.',
  full: (most) => `Nichts erfasst: Eine Aufzeichnung fasst höchstens ${most} Markierungen.`,
  kind: 'Art der Markierung',
  how: 'Eine Fläche umfahren oder eine Linie ziehen. Eine Markierung antippen, um sie zu ändern.',
  howErase: 'Über Markierungen ziehen, um sie zu löschen.',
  eraser: 'Radierer',
  done: 'Fertig',
  orPlace: 'Um ohne Zeichnen zu erfassen, Art und Ort wählen.',
  place: 'Ort',
  choosePlace: 'Ort wählen',
  add: 'Hinzufügen',
  edit: 'Ändern',
  remove: 'Löschen',
  note: 'Notiz',
  keys: [
    ['Pfeile auf einer Markierung', 'verschieben; mit Umschalt fein'],
    ['Eingabe, Entf auf einer Markierung', 'ändern, löschen'],
  ],
  groups: {
    'right leg': 'Rechtes Bein',
    'left leg': 'Linkes Bein',
    'right arm': 'Rechter Arm',
    'left arm': 'Linker Arm',
    trunk: 'Rumpf und Kopf',
  },
};
