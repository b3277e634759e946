import { placeFromKey, type Side } from '../../anatomy/index.js';
import type { FlagCode, GroundCode, MissingCode, StagedKind, Urgency } from '../../staging/index.js';
import type { FlagWords } from '../en/flags.js';
import { anatomy } from './anatomy.js';
import { decimal, list, sentence } from './phrases.js';

type Params = Readonly<Record<string, string | number>>;

const VALUES: Record<string, string> = {
  claudication: 'Claudicatio',
  'rest-pain': 'Ruheschmerz',
  'tissue-loss': 'Gewebeverlust',
  none: 'nichts',
  normal: 'normal',
  pale: 'blass',
  blue: 'blau',
  mottled: 'marmoriert',
  cold: 'kalt',
  digits: 'Zehen oder Finger',
  'beyond-digits': 'über Zehen oder Finger hinaus erloschen',
  lost: 'ganz erloschen',
  weak: 'schwach',
  paralysed: 'gelähmt',
  audible: 'hörbar',
  inaudible: 'nicht hörbar',
  shallow: 'oberflächlich',
  deep: 'tief',
  extensive: 'tief und ausgedehnt',
  dry: 'trocken',
  wet: 'feucht',
  forefoot: 'Vorfuß oder Hand',
  midfoot: 'Mittelfuß',
  heel: 'Ferse',
  ankle: 'Knöchel',
  shin: 'Unterschenkel',
  other: 'anderswo',
  'above-foot': 'über Fuß oder Hand hinaus',
  tense: 'gespannt',
  tender: 'druckschmerzhaft',
  'fixed-mottled': 'marmoriert und nicht wegdrückbar',
  dissection: 'Aortendissektion',
  pelvis: 'Becken',
  groin: 'Leiste',
  thigh: 'Oberschenkel',
  knee: 'Knie',
  'lower-leg': 'Unterschenkel',
  'ankle-foot': 'Knöchel oder Fuß',
  shoulder: 'Schulter',
  'upper-arm': 'Oberarm',
  elbow: 'Ellenbogen',
  forearm: 'Unterarm',
  'wrist-hand': 'Handgelenk oder Hand',
  temperature: 'Temperatur',
  'heart-rate': 'Herzfrequenz',
  breathing: 'Atmung',
  'white-cells': 'Leukozyten',
  swelling: 'Schwellung',
  redness: 'Rötung',
  tenderness: 'Druckschmerz',
  warmth: 'Überwärmung',
  pus: 'Eiter',
  mild: 'leicht',
  moderate: 'mäßig',
  severe: 'schwer',
};

const word = (value: string | number | undefined): string => VALUES[String(value)] ?? String(value ?? '');
const words = (value: string | number | undefined): string => list(String(value).split(' ').map(word));

function at(p: Params): string {
  const place = placeFromKey(String(p['place']));
  return place ? anatomy.place(place) : '';
}

const mmHg = (what: string, p: Params): string =>
  `${what} ${decimal(p['mmHg'])} mmHg${p['limit'] ? `, unter ${decimal(p['limit'])}` : ''}`;
const threat = (what: string, p: Params): string =>
  `${what} ${decimal(p['value'])} mmHg (Grenze ${decimal(p['limit'])})`;

const grounds: Record<GroundCode, (p: Params) => string> = {
  symptom: (p) => (p['value'] === 'none' ? 'keine Beschwerden' : word(p['value'])),
  severity: (p) => `nach ärztlichem Urteil ${word(p['value'])}`,
  distance: (p) => `geht ${decimal(p['metres'])} m ohne Schmerz (Grenze ${decimal(p['limit'])} m)`,
  hours: (p) => `seit ${decimal(p['hours'])} ${p['hours'] === 1 ? 'Stunde' : 'Stunden'}`,
  sensation: (p) =>
    `Sensibilität ${p['value'] === 'digits' ? 'nur an Zehen oder Fingern erloschen' : word(p['value'])}`,
  movement: (p) => `Motorik ${word(p['value'])}`,
  arterial: (p) => `arterielles Signal ${word(p['value'])}`,
  venous: (p) => `venöses Signal ${word(p['value'])}`,
  colour: (p) => `Haut ${word(p['value'])}`,
  temperature: (p) => `Haut ${word(p['value'])}`,
  muscle: (p) => `Muskulatur ${word(p['value'])}`,
  ulcer: (p) =>
    p['value'] === 'none'
      ? 'kein Ulkus'
      : `Ulkus: ${word(p['value'])}${p['place'] ? `, ${word(p['place'])}` : ''}`,
  gangrene: (p) =>
    p['value'] === 'none'
      ? 'keine Gangrän'
      : `Gangrän: ${word(p['value'])}${p['extent'] ? `, ${word(p['extent'])}` : ''}`,
  'infection-signs': (p) => `Infektionszeichen: ${words(p['signs'])}`,
  'no-infection-signs': () => 'keine Infektionszeichen',
  redness: (p) => `Rötung reicht ${decimal(p['cm'])} cm weit`,
  'deep-infection': () => 'Infektion tiefer als die Haut',
  systemic: (p) => `Allgemeinzeichen: ${words(p['signs'])}`,
  'pulse-absent': (p) => `${at(p)} nicht tastbar`,
  expansile: (p) => `expansiver Puls, ${at(p)}`,
  injury: (p) => `Verletzung: ${word(p['place'])}`,
  mechanism: (p) => `als Ursache genannt: ${word(p['value'])}`,
  'walk-completed': (p) => `ganze Strecke gegangen, Knöcheldruck danach ${decimal(p['mmHg'])} mmHg`,
  'walk-not-completed': (p) => `Strecke nicht beendet, Knöcheldruck danach ${decimal(p['mmHg'])} mmHg`,
  'ankle-pressure': (p) => mmHg('Knöcheldruck', p),
  'ankle-index': (p) => `Knöchelindex ${decimal(p['value'], 2)}`,
  'toe-pressure': (p) => mmHg('Zehendruck', p),
  tcpo2: (p) => `Sauerstoffdruck am Fuß ${decimal(p['mmHg'])} mmHg`,
  'ankle-threat': (p) => threat('Knöcheldruck', p),
  'toe-threat': (p) => threat('Zehendruck', p),
  'tcpo2-threat': (p) => threat('Sauerstoffdruck am Fuß', p),
  'index-threat': (p) => `Knöchelindex ${decimal(p['value'], 2)} (Grenze ${decimal(p['limit'])})`,
  wound: (p) => `Wundgrad ${p['grade']}`,
  ischaemia: (p) => `Ischämiegrad ${p['grade']}`,
  infection: (p) => `Infektionsgrad ${p['grade']}`,
};

const missing: Record<MissingCode, string> = {
  onset: 'der Beginn',
  symptom: 'die Beschwerden',
  severity: 'ihre Schwere',
  distance: 'die Gehstrecke',
  exercise: 'Knöcheldrücke nach Belastung',
  restingAnkle: 'der Knöcheldruck in Ruhe',
  pressures: 'Knöchel- oder Zehendruck',
  toe: 'der Zehendruck',
  sensation: 'die Sensibilität',
  movement: 'die Motorik',
  arterial: 'die arteriellen Dopplersignale an Fuß oder Handgelenk',
  venous: 'das venöse Dopplersignal',
  ulcer: 'ob ein Ulkus besteht',
  ulcerPlace: 'wo das Ulkus liegt',
  gangrene: 'ob eine Gangrän besteht',
  gangreneExtent: 'wie weit die Gangrän reicht',
  infection: 'Infektionszeichen',
  rednessCm: 'wie weit die Rötung reicht',
  systemic: 'Allgemeinzeichen',
  wound: 'die Wunde',
  ischaemia: 'Drücke',
};

const limbName = ({ kind, side }: { kind: StagedKind; side: Side }): string =>
  anatomy.limbs[`${side} ${kind}`];

/** What the flag warns of. Without a limb the name is empty. */
const headings: Record<FlagCode, (limb: string) => string> = {
  'acute-limb-irreversible': (limb) => `${limb} ist möglicherweise nicht mehr zu retten`,
  'acute-limb-threatened': (limb) => `${limb} ist möglicherweise unmittelbar bedroht`,
  'injured-limb-pulseless': (limb) => `${limb}: verletzt, und ein Puls jenseits davon fehlt`,
  dissection: () => 'Die Aorta könnte eingerissen sein',
  'wet-gangrene': (limb) => `${limb}: feuchte Gangrän`,
  'spreading-infection': (limb) => `${limb}: Infektion hat möglicherweise das Blut erreicht`,
  'fixed-mottling': (limb) => `${limb}: nicht wegdrückbare Marmorierung`,
  'tense-muscle': (limb) => `${limb}: Druck im Muskel ist möglicherweise zu hoch`,
  'expansile-mass': () => 'Möglicherweise besteht ein Aneurysma',
  'acute-limb': (limb) => `${limb}: plötzlicher Verlust der Durchblutung ist möglich`,
  weakness: (limb) => `${limb} ist schwach`,
  'sensory-loss': (limb) => `${limb} hat die Sensibilität verloren`,
  'no-doppler': (limb) => `${limb}: am Ende kein arterielles Signal`,
  'deep-infection': (limb) => `${limb}: Infektion ist tief oder breitet sich aus`,
  'chronic-limb-threat': (limb) =>
    `${limb} ist möglicherweise durch lange bestehende Minderdurchblutung bedroht`,
  'threatening-pressure': (limb) => `${limb}: Druck im Bereich einer bedrohten Extremität`,
};

const VASCULAR = 'Jetzt den Gefäßdienst rufen, nach dem örtlichen Pfad für die akute Extremität.';
const SURGICAL = 'Jetzt den chirurgischen oder den Gefäßdienst rufen, nach dem örtlichen Pfad.';
const ASK = 'Nach dem Beginn fragen; wenn es neu ist, dem örtlichen Pfad für die akute Extremität folgen.';
const actions: Record<FlagCode, string> = {
  'acute-limb-irreversible': VASCULAR,
  'acute-limb-threatened': VASCULAR,
  'injured-limb-pulseless': 'Jetzt den Unfall- oder Gefäßdienst rufen, nach dem örtlichen Pfad.',
  dissection: 'Jetzt den Notfalldienst rufen, nach dem örtlichen Pfad.',
  'wet-gangrene': SURGICAL,
  'spreading-infection': 'Jetzt als Notfall behandeln, nach dem örtlichen Sepsis-Pfad.',
  'fixed-mottling': VASCULAR,
  'tense-muscle': SURGICAL,
  'expansile-mass':
    'Bildgebung und gefäßmedizinische Beurteilung veranlassen, nach dem örtlichen Aneurysma-Pfad; bei Schmerz oder Kollaps sofort.',
  'acute-limb': 'Den Gefäßdienst rufen, nach dem örtlichen Pfad für die akute Extremität.',
  weakness: ASK,
  'sensory-loss': ASK,
  'no-doppler': ASK,
  'deep-infection': 'Heute vorstellen, nach dem örtlichen Pfad für den diabetischen Fuß oder die Chirurgie.',
  'chronic-limb-threat': 'Dringend an die Gefäßmedizin überweisen, nach dem örtlichen Pfad.',
  'threatening-pressure': 'An die Gefäßmedizin überweisen, nach dem örtlichen Pfad.',
};

const urgencies: Record<Urgency, string> = { now: 'Jetzt', today: 'Heute', soon: 'Binnen Tagen' };

export const flags: FlagWords = {
  grounds,
  missing,
  urgencies,
  heading: ({ code, limb }) => headings[code](limb ? sentence(limbName(limb)) : ''),
  action: ({ code }) => actions[code],
  ground: ({ code, params = {} }) => grounds[code](params),
  because: (flag) => `${sentence(list(flag.grounds.map(({ code, params = {} }) => grounds[code](params))))}.`,
  stillMissing: (codes) => `Es fehlt noch: ${list(codes.map((code) => missing[code]))}.`,
  hours: ([from, to]) =>
    `Leitlinien verlangen die Wiederherstellung der Durchblutung innerhalb von ${from ? `${from} bis ` : ''}${to} Stunden.`,
  title: 'Warnzeichen',
  more: (count) => (count === 1 ? 'Ein weiteres Warnzeichen' : `${count} weitere Warnzeichen`),
  fold: 'Auf eine Zeile falten',
  unfold: 'Zeigen, was es auslöst',
  caution:
    'Eine Warnung aus dem, was erfasst wurde, und keine Diagnose. Was als Nächstes geschieht, entscheiden der örtliche Behandlungspfad und eine approbierte Fachkraft.',
};
