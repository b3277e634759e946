import type {
  Digit,
  DigitState,
  GangreneExtent,
  InfectionSign,
  LegInspection,
  Movement,
  Sensation,
  SystemicSign,
  ThrombosisSign,
  UlcerCause,
  UlcerDepth,
  UlcerPlace,
} from '../../examination/index.js';
import type { InspectionStatement } from '../../statements/index.js';
import type { InspectionWords } from '../en/inspection.js';
import { render, type Renderings } from '../render.js';
import { examination } from './examination.js';
import { signs as recorded } from './grounds.js';
import { decimal, sentence } from './phrases.js';
import { skinLevels } from './skin-levels.js';
import { terms } from './terms.js';

type Word<K extends keyof LegInspection> = NonNullable<LegInspection[K]> & string;

const colours: Record<Word<'colour'>, string> = {
  normal: 'normal',
  pale: 'blass',
  red: 'rot',
  blue: 'blau',
  mottled: 'marmoriert, wegdrückbar',
  'fixed-mottled': 'marmoriert, nicht wegdrückbar',
};
const temperatures: Record<Word<'temperature'>, string> = { warm: 'warm', cool: 'kühl', cold: 'kalt' };
const hair: Record<Word<'hair'>, string> = { normal: 'normal', sparse: 'spärlich', absent: 'fehlend' };
const nails: Record<Word<'nails'>, string> = { normal: 'normal', thickened: 'verdickt', brittle: 'brüchig' };
const muscle: Record<Word<'muscle'>, string> = {
  normal: 'normal',
  wasted: 'atroph',
  tender: 'druckschmerzhaft',
  tense: 'gespannt',
  rigid: 'rigide',
};
const oedema: Record<Word<'oedema'>, string> = { none: 'keines', pitting: 'eindrückbar', firm: 'fest' };
const lymphNodes: Record<Word<'lymphNodes'>, string> = {
  none: 'nicht tastbar',
  enlarged: 'vergrößert',
  tender: 'druckschmerzhaft',
};
const ulcers: Record<UlcerDepth, string> = {
  none: 'keines',
  shallow: 'oberflächlich',
  deep: 'tief, bis Knochen, Gelenk oder Sehne',
  extensive: 'tief und ausgedehnt',
};
const ulcerPlaces: Record<UlcerPlace, string> = {
  digits: 'Zehen oder Finger',
  forefoot: 'Vorfuß',
  midfoot: 'Mittelfuß',
  heel: 'Ferse',
  ankle: 'Knöchel',
  shin: 'Unterschenkel',
  sole: 'Fußsohle',
  'back-of-leg': 'Beinrückseite',
  other: 'anderswo',
};
const gangrene: Record<Word<'gangrene'>, string> = { none: 'keine', dry: 'trocken', wet: 'feucht' };
const extents: Record<GangreneExtent, string> = {
  digits: 'nur Zehen oder Finger',
  forefoot: 'Vorfuß oder Hand',
  midfoot: 'Mittelfuß',
  heel: 'Ferse',
  'above-foot': 'über Fuß oder Hand hinaus',
};
const infection: Record<InfectionSign, string> = {
  swelling: 'Schwellung',
  redness: 'Rötung',
  tenderness: 'Druckschmerz',
  warmth: 'Überwärmung',
  pus: 'Eiter',
};
const systemic: Record<SystemicSign, string> = {
  temperature: 'Temperatur über 38 oder unter 36 °C',
  'heart-rate': 'Herzfrequenz über 90',
  breathing: 'über 20 Atemzüge pro Minute',
  'white-cells': 'Leukozyten über 12 oder unter 4',
};
const movements: Record<Movement, string> = { normal: 'normal', weak: 'schwach', paralysed: 'gelähmt' };
const sensations: Record<Sensation, string> = {
  normal: 'normal',
  digits: 'nur an Zehen oder Fingern erloschen',
  'beyond-digits': 'über Zehen oder Finger hinaus erloschen',
  lost: 'ganz erloschen',
};
const venous: Record<Word<'venousDoppler'>, string> = { audible: 'hörbar', inaudible: 'nicht hörbar' };
const ulcerCauses: Record<UlcerCause, string> = {
  arterial: 'arteriell',
  venous: 'venös',
  neuropathic: 'neuropathisch',
  mixed: 'gemischt',
  other: 'andere',
  unknown: 'nicht bekannt',
};
const digits: Record<Digit, string> = {
  first: 'Großzehe oder Daumen',
  second: 'zweiter Strahl',
  third: 'dritter Strahl',
  fourth: 'vierter Strahl',
  fifth: 'Kleinzehe oder kleiner Finger',
};
const digitStates: Record<DigitState, string> = {
  normal: 'normal',
  pale: 'blass',
  blue: 'blau',
  ulcer: 'Ulkus',
  gangrene: 'Gangrän',
};
const thrombosisSigns: Record<ThrombosisSign, string> = {
  'whole-limb-swollen': 'ganze Extremität geschwollen',
  'calf-wider': 'Wade über 3 cm dicker',
  'one-sided-pitting': 'eindrückbar nur auf einer Seite',
  'tender-along-veins': 'Druckschmerz entlang der tiefen Venen',
  'surface-veins': 'oberflächliche Kollateralvenen',
};
const filament: Record<Word<'monofilament'>, string> = {
  felt: 'gespürt',
  reduced: 'teilweise gespürt',
  'not-felt': 'nicht gespürt',
};

const signs = (words: readonly string[]): string => words.join(', ') || 'keine';

const statements: Renderings<InspectionStatement> = {
  couldNotExamine: ({ value }) => examination.couldNot(value),
  colour: ({ value }) => `Haut ${colours[value]}`,
  temperature: ({ temperature, from }) =>
    `${temperatures[temperature]}${from ? ` ab Höhe ${skinLevels[from]}` : ''}`,
  refill: ({ value }) => `Rekapillarisierung ${decimal(value)} s`,
  hair: ({ value }) => `Behaarung ${hair[value]}`,
  nails: ({ value }) => `Nägel ${nails[value]}`,
  muscle: ({ value }) => `Muskulatur ${muscle[value]}`,
  oedema: ({ value }) => `${terms.oedema}: ${oedema[value]}`,
  ulcer: ({ depth, at }) => `Ulkus: ${ulcers[depth]}${at ? `, ${ulcerPlaces[at]}` : ''}`,
  gangrene: ({ gangrene: kind, extent }) =>
    `Gangrän: ${gangrene[kind]}${extent ? `, ${extents[extent]}` : ''}`,
  infection: ({ value }) => `Infektionszeichen: ${signs(value.map((sign) => infection[sign]))}`,
  rednessCm: ({ value }) => `Rötung reicht ${decimal(value)} cm weit`,
  deepInfection: ({ value }) =>
    value ? 'Infektion tiefer als die Haut' : 'Infektion nicht tiefer als die Haut',
  systemic: ({ value }) => `Allgemeinzeichen: ${signs(value.map((sign) => systemic[sign]))}`,
  ulcerCause: ({ value }) => `Ursache des Ulkus: ${ulcerCauses[value]}`,
  ulcerSizeMm: ({ value }) => `Ulkus ${decimal(value)} mm groß`,
  digit: ({ digit, state }) => `${digits[digit]}: ${digitStates[state]}`,
  probeToBone: ({ value }) => (value ? 'Sonde erreicht Knochen' : 'Sonde erreicht keinen Knochen'),
  charcotSuspected: ({ value }) =>
    value ? 'heißer geschwollener Fuß, Verdacht auf Charcot-Fuß' : 'kein heißer geschwollener Fuß',
  deficitKnown: 'Ausfall von Kraft oder Gefühl ist alt und unverändert',
  monofilament: ({ value }) => `10-g-Filament ${filament[value]}`,
  stretchPain: ({ value }) => (value ? 'passiver Dehnungsschmerz' : 'kein passiver Dehnungsschmerz'),
  painOutOfProportion: ({ value }) =>
    value ? 'unverhältnismäßiger Schmerz' : 'kein unverhältnismäßiger Schmerz',
  reperfused: 'Durchblutung kürzlich wiederhergestellt',
  injurySigns: ({ value }) =>
    `Zeichen einer Arterienverletzung: ${signs(value.map((sign) => recorded.injury[sign]))}`,
  falseAneurysmSigns: ({ value }) =>
    `Schwellung über der Arterie: ${signs(value.map((sign) => recorded.falseAneurysm[sign]))}`,
  varices: ({ value }) => (value ? 'Varizen' : 'keine Varizen'),
  pigment: ({ value }) => (value ? 'braune Pigmentierung' : 'keine braune Pigmentierung'),
  thrombosisSigns: ({ value }) =>
    `Zeichen einer tiefen Venenthrombose: ${signs(value.map((sign) => thrombosisSigns[sign]))}`,
  movement: ({ value }) => `Motorik ${movements[value]}`,
  sensation: ({ value }) => `Sensibilität ${sensations[value]}`,
  venousDoppler: ({ value }) => `venöses Dopplersignal ${venous[value]}`,
  lymphNodes: ({ value }) => `Lymphknoten ${lymphNodes[value]}`,
  note: ({ value }) => `Notiz: ${value}`,
};

export const inspection: InspectionWords = {
  title: 'Inspektion und Palpation',
  skin: 'Haut',
  wounds: 'Wunden und Infektion',
  nerves: 'Motorik und Sensibilität',
  rest: 'Trophik und Übriges',
  colour: 'Farbe',
  colours,
  temperature: 'Temperatur',
  temperatures,
  temperatureLevel: 'Wechselt auf Höhe',
  levels: skinLevels,
  refill: 'Rekapillarisierung',
  refillSaid: {
    short: () => 'bis 2 s. Mit der Gegenseite vergleichen; sagt wenig über eine pAVK.',
    'over-traditional': (limit: number) =>
      `über 2 s, innerhalb der 95-%-Grenze Gesunder dieses Alters (${decimal(limit)} s). Mit der Gegenseite vergleichen; sagt wenig über eine pAVK.`,
    slow: (limit: number) =>
      `über 2 s und über ${decimal(limit)} s, der 95-%-Grenze Gesunder dieses Alters. Mit der Gegenseite vergleichen.`,
  },
  refillHow: 'Eine fingerkuppengroße Stelle 5 Sekunden drücken; zählen, bis die Farbe zurück ist.',
  seconds: 's',
  hair: 'Behaarung',
  hairOptions: hair,
  nails: 'Nägel',
  nailOptions: nails,
  muscle: 'Muskulatur',
  muscleOptions: muscle,
  get oedema() {
    return sentence(terms.oedema);
  },
  oedemaOptions: oedema,
  lymphNodes: 'Lymphknoten',
  lymphNodeOptions: lymphNodes,
  ulcer: 'Ulkus',
  ulcers,
  ulcerOptions: {
    none: 'keines',
    shallow: 'oberflächlich',
    deep: 'bis Knochen oder Sehne',
    extensive: 'tief, ausgedehnt',
  },
  ulcerPlace: 'Ulkus liegt an',
  ulcerPlaces,
  gangrene: 'Gangrän',
  gangreneOptions: gangrene,
  gangreneExtent: 'Gangrän reicht bis',
  extents,
  extentOptions: {
    leg: {
      digits: 'Zehen',
      forefoot: 'Vorfuß',
      midfoot: 'Mittelfuß',
      heel: 'Ferse',
      'above-foot': 'über den Fuß hinaus',
    },
    arm: { digits: 'Finger', forefoot: 'Hand', 'above-foot': 'über die Hand hinaus' },
  },
  infection: 'Infektionszeichen',
  infectionOptions: infection,
  noInfection: 'Keine',
  rednessCm: 'Rötung reicht',
  centimetres: 'cm',
  deepInfection: 'Tiefer als die Haut',
  systemic: 'Allgemein',
  systemicOptions: systemic,
  systemicShort: {
    temperature: '> 38 oder < 36 °C',
    'heart-rate': 'Herzfrequenz > 90',
    breathing: 'Atemzüge > 20',
    'white-cells': 'Leukozyten > 12 oder < 4',
  },
  movement: 'Motorik',
  movements,
  sensation: 'Sensibilität',
  sensations,
  sensationOptions: {
    leg: {
      normal: 'normal',
      digits: 'an Zehen erloschen',
      'beyond-digits': 'über Zehen hinaus',
      lost: 'ganz erloschen',
    },
    arm: {
      normal: 'normal',
      digits: 'an Fingern erloschen',
      'beyond-digits': 'über Finger hinaus',
      lost: 'ganz erloschen',
    },
  },
  venousDoppler: 'Venöser Doppler',
  venous,
  ulcerCause: 'Ursache des Ulkus',
  ulcerCauses,
  ulcerSize: 'Ulkus groß',
  millimetres: 'mm',
  probeToBone: 'Sonde erreicht Knochen',
  charcot: 'Verdacht auf Charcot-Fuß',
  yesNo: { yes: 'ja', no: 'nein' },
  deficit: 'Ausfall von Kraft oder Gefühl',
  deficitKnown: 'alt und unverändert',
  filament: '10-g-Filament an der Sohle',
  filamentOptions: filament,
  compartmentOf: { leg: 'Kompartment und Verletzung, Beine', arm: 'Kompartment und Verletzung, Arme' },
  stretchPain: 'Passiver Dehnungsschmerz',
  outOfProportion: 'Unverhältnismäßiger Schmerz',
  flow: 'Durchblutung',
  reperfused: 'kürzlich wiederhergestellt',
  injurySigns: 'Zeichen einer Arterienverletzung',
  injuryOptions: recorded.injuryOf,
  falseAneurysm: 'Schwellung an Punktion oder Bypass',
  falseAneurysmOptions: recorded.falseAneurysm,
  digitsOf: { leg: 'Zehen einzeln', arm: 'Finger einzeln' },
  digits: {
    leg: {
      first: 'Großzehe',
      second: 'Zweite Zehe',
      third: 'Dritte Zehe',
      fourth: 'Vierte Zehe',
      fifth: 'Kleinzehe',
    },
    arm: {
      first: 'Daumen',
      second: 'Zeigefinger',
      third: 'Mittelfinger',
      fourth: 'Ringfinger',
      fifth: 'Kleiner Finger',
    },
  },
  digitStates,
  veins: 'Venen',
  varices: 'Varizen',
  pigment: 'Braune Pigmentierung',
  thrombosisSigns: 'Zeichen einer tiefen Venenthrombose',
  thrombosisOptions: thrombosisSigns,
  couldNotExamine: 'Nicht untersuchbar',
  note: 'Notiz',
  limb: (statement) => render(statements, statement),
};
