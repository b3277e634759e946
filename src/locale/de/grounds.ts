import { placeFromKey, type PlaceKey } from '../../anatomy/index.js';
import type { Ground, StagedLimb } from '../../triage/index.js';
import { render, type Renderings } from '../render.js';
import { signWords } from '../sign-words.js';
import { anatomy } from './anatomy.js';
import { decimal, list } from './phrases.js';
import { terms } from './terms.js';

const VALUES: Readonly<Record<string, string>> = {
  get claudication() {
    return terms.claudication;
  },
  'rest-pain': 'Ruheschmerz',
  'tissue-loss': 'Gewebeverlust',
  none: 'keine',
  normal: 'normal',
  weak: 'vermindert',
  paralysed: 'aufgehoben',
  audible: 'hörbar',
  inaudible: 'nicht hörbar',
  shallow: 'oberflächlich',
  deep: 'tief',
  extensive: 'tief und ausgedehnt',
  dry: 'trocken',
  wet: 'feucht',
  digits: 'Zehen oder Finger',
  forefoot: 'Vorfuß oder Hand',
  midfoot: 'Mittelfuß',
  heel: 'Ferse',
  sole: 'Fußsohle',
  ankle: 'Knöchel',
  shin: 'Schienbein',
  'back-of-leg': 'Beinrückseite',
  other: 'andere Stelle',
  'above-foot': 'über Fuß oder Hand hinaus',
  pale: 'blass',
  red: 'rot',
  blue: 'blau',
  mottled: 'marmoriert',
  'fixed-mottled': 'fixierte Marmorierung',
  warm: 'warm',
  cool: 'kühl',
  cold: 'kalt',
  tense: 'gespannt',
  rigid: 'rigide',
  tender: 'druckschmerzhaft',
  wasted: 'atrophisch',
  pitting: 'eindrückbar',
  firm: 'derb',
  embolic: 'Embolie',
  thrombotic: 'Thrombose',
  dissection: 'Aortendissektion',
  vasculitis: 'Vaskulitis',
  buerger: 'Thrombangiitis obliterans',
  vasospasm: 'Vasospasmus',
  compression: 'Kompression',
  injury: 'Verletzung',
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
  temperature: 'Temperatur über 38 oder unter 36 °C',
  'heart-rate': 'Herzfrequenz über 90/min',
  breathing: 'Atemfrequenz über 20/min',
  'white-cells': 'Leukozyten über 12 oder unter 4 × 10⁹/l',
  swelling: 'Schwellung',
  redness: 'Rötung',
  tenderness: 'Druckschmerz',
  warmth: 'Überwärmung',
  pus: 'Eiter',
  mild: 'leicht',
  moderate: 'mäßig',
  severe: 'schwer',
  arterial: 'arteriell',
  venous: 'venös',
  neuropathic: 'neuropathisch',
  mixed: 'gemischt',
  unknown: 'Ursache unbekannt',
  first: 'I',
  second: 'II',
  third: 'III',
  fourth: 'IV',
  fifth: 'V',
  'pulsatile-bleeding': 'pulsierende Blutung',
  'expanding-haematoma': 'zunehmendes oder pulsierendes Hämatom',
  'bleeding-at-scene': 'Blutung am Unfallort',
  'stable-haematoma': 'kleines stabiles Hämatom',
  'near-artery': 'Wunde nahe einer großen Arterie',
  'knee-dislocation': 'Knieluxation',
  'elbow-dislocation-or-supracondylar': 'Ellenbogenluxation oder suprakondyläre Fraktur',
  growing: 'wachsend',
  painful: 'schmerzhaft',
  'skin-thin': 'dünne Haut',
  infected: 'infiziert',
  sinus: 'Fistel',
  discharge: 'Sekretion',
  exposed: 'freiliegende Prothese',
  bleeding: 'Blutung',
  'thin-skin-or-ulcer': 'dünne oder ulzerierte Haut',
  'no-thrill': 'kein Schwirren',
  'arterial-line': 'arterieller Zugang',
  'radial-catheter': 'Radialiskatheter',
  'femoral-sheath': 'femorale Schleuse',
  'abdominal-pain': 'Bauchschmerz',
  'back-pain': 'Rückenschmerz',
  'loin-pain': 'Flankenschmerz',
  collapse: 'Kollaps',
  'sudden-chest-or-back-pain': 'plötzlicher Brust- oder Rückenschmerz',
  'passing-stroke': 'vorübergehende Schlaganfallzeichen',
  'passing-blindness': 'vorübergehender Sehverlust eines Auges',
  'deficit-now': 'bestehende Schlaganfallzeichen',
  'thoracic-aorta': 'thorakale Aorta',
  'abdominal-aorta': 'Bauchaorta',
  iliac: 'Beckenarterie',
  femoral: 'Femoralarterie',
  popliteal: 'A. poplitea',
  subclavian: 'A. subclavia',
  bypass: 'Bypass',
  stent: 'Stent',
  'axillo-femoral': 'axillofemoraler Bypass',
  'cross-over': 'Crossover-Bypass',
};

const word = (value: string | undefined): string => (value && VALUES[value]) ?? value ?? '';
const words = (values: readonly string[]): string => list(values.map(word));

/** Words of signs for controls and summary. */
export const signs = signWords(word);

const places = (keys: readonly PlaceKey[]): string =>
  list(
    keys.map((key) => {
      const place = placeFromKey(key);
      return place ? anatomy.place(place) : key;
    }),
  );
const limbs = (of: readonly StagedLimb[]): string =>
  list(of.map(({ kind, side }) => anatomy.limbs[`${side} ${kind}`]));
const below = (limit: number | undefined): string => (limit === undefined ? '' : `, Grenze ${limit}`);
const index = (value: number): string => decimal(value, 2);

const SENSATION = {
  normal: 'Sensibilität normal',
  digits: 'Sensibilität nur an Zehen oder Fingern aufgehoben',
  'beyond-digits': 'Sensibilität über Zehen oder Finger hinaus aufgehoben',
  lost: 'Anästhesie',
} as const;
const MEASURES = { ankle: 'Knöchelarteriendruck', toe: 'Zehendruck', tcpo2: 'tcpO₂', index: 'ABI' } as const;

const SAYS: Renderings<Ground> = {
  symptom: ({ value }) => (value === 'none' ? 'keine Beschwerden' : word(value)),
  severity: ({ value }) => `nach ärztlichem Urteil ${word(value)}`,
  distance: ({ metres, limit }) => `schmerzfreie Gehstrecke ${decimal(metres)} m (Grenze ${limit} m)`,
  'sudden-pain': 'plötzlicher Schmerz',
  'new-complaint': 'neue Beschwerden',
  'onset-acute': 'akuter Beginn',
  'onset-unknown': 'Beginn unbekannt',
  hours: ({ hours }) => `seit ${decimal(hours)} ${hours === 1 ? 'Stunde' : 'Stunden'}`,
  sensation: ({ value }) => SENSATION[value],
  movement: ({ value }) => `Motorik ${word(value)}`,
  arterial: ({ value }) =>
    value === 'inaudible' ? 'kein arterielles Dopplersignal' : 'arterielles Signal hörbar',
  venous: ({ value }) => (value === 'inaudible' ? 'kein venöses Dopplersignal' : 'venöses Signal hörbar'),
  colour: ({ value }) => (value === 'fixed-mottled' ? word(value) : `Haut ${word(value)}`),
  temperature: ({ value }) => `Haut ${word(value)}`,
  muscle: ({ value }) => `Muskulatur ${word(value)}`,
  oedema: ({ value }) => `${terms.oedema}: ${word(value)}`,
  refill: ({ seconds, limit }) => `Rekapillarisierung ${decimal(seconds)} s (über ${decimal(limit)} s)`,
  ulcer: ({ depth, place, cause }) =>
    depth === 'none'
      ? 'kein Ulkus'
      : [`Ulkus: ${word(depth)}`, ...(place ? [word(place)] : []), ...(cause ? [word(cause)] : [])].join(
          ', ',
        ),
  gangrene: ({ kind, extent }) =>
    kind === 'none' ? 'keine Gangrän' : `Gangrän: ${word(kind)}${extent ? `, ${word(extent)}` : ''}`,
  digits: ({ state, digits }) =>
    `Strahl ${words(digits)}: ${state === 'gangrene' ? 'Gangrän' : state === 'ulcer' ? 'Ulkus' : word(state)}`,
  'infection-signs': ({ signs }) => `lokale Infektionszeichen: ${words(signs)}`,
  systemic: ({ signs }) => `SIRS-Kriterien: ${words(signs)}`,
  redness: ({ cm }) => `Rötung reicht ${decimal(cm)} cm weit`,
  'no-infection-signs': 'keine lokalen Infektionszeichen',
  'deep-infection': 'Infektion tiefer als die Haut',
  'probe-to-bone': 'Knochen sondierbar',
  charcot: 'überwärmter geschwollener Fuß (Charcot?)',
  'stretch-pain': 'passiver Dehnungsschmerz',
  'pain-out-of-proportion': 'unverhältnismäßiger Schmerz',
  reperfused: 'kürzlich reperfundiert',
  'cold-fingers': 'anfallsweise weiße oder kalte Finger',
  'ulnar-release-white': 'keine Rötung der Hohlhand bei Freigabe der A. ulnaris',
  shock: 'Schock',
  diabetes: 'Diabetes',
  'connective-tissue-disease': 'Kollagenose',
  'no-end-pressure': 'kein Signal unter den Manschetten',
  'pulses-absent': ({ places: at }) => `nicht tastbar: ${places(at)}`,
  'pulses-reduced': ({ places: at }) => `abgeschwächt: ${places(at)}`,
  expansile: ({ places: at }) => `expansiv: ${places(at)}`,
  bounding: ({ places: at }) => `auffallend gut tastbar: ${places(at)}`,
  thrill: ({ places: at }) => `Schwirren: ${places(at)}`,
  bruit: ({ places: at }) => `Strömungsgeräusch: ${places(at)}`,
  delay: ({ between }) =>
    between === 'radio-radial' ? 'radioradiale Verzögerung' : 'radiofemorale Verzögerung',
  injury: ({ place }) => `Verletzung, Operation oder Punktion: ${word(place)}`,
  'injury-signs': ({ signs }) => words(signs),
  'false-aneurysm-signs': ({ signs }) => `Schwellung über der Arterie: ${words(signs)}`,
  mechanism: ({ value }) => `als Ursache erfasst: ${word(value)}`,
  'known-aneurysm': ({ place, side }) =>
    `bekanntes Aneurysma${place ? `: ${word(place)}${side ? (side === 'left' ? ' links' : ' rechts') : ''}` : ''}`,
  graft: ({ kind, artery, side, pulse }) =>
    `${word(kind)}, ${anatomy.vessel({ artery, side })}${pulse ? `, Bypasspuls ${pulse === 'present' ? 'tastbar' : 'nicht tastbar'}` : ''}`,
  'graft-infection-signs': ({ signs }) => `über dem Bypass: ${words(signs)}`,
  access: ({ signs }) => `Dialyseshunt${signs.length ? `: ${words(signs)}` : ''}`,
  device: ({ kind }) => word(kind),
  'cold-injury': ({ hours }) =>
    hours === undefined ? 'Kälteschaden, Zeit unbekannt' : `Kälteschaden vor ${decimal(hours)} h`,
  elsewhere: ({ symptoms }) => words(symptoms),
  'arm-difference': ({ mmHg, lower }) =>
    `Armdrücke differieren um ${mmHg} mmHg, ${lower === 'left' ? 'links' : 'rechts'} niedriger`,
  limbs: ({ limbs: of }) => limbs(of),
  'own-class': ({ stage }) => `ärztlich gesetzt auf Rutherford-Klasse ${stage}`,
  'own-fontaine': ({ stage }) => `ärztlich gesetzt auf Fontaine ${stage}`,
  'own-rutherford': ({ stage }) => `ärztlich gesetzt auf Rutherford-Kategorie ${stage}`,
  'walk-completed': ({ mmHg }) => `Belastung vollständig; Knöchelarteriendruck danach ${decimal(mmHg)} mmHg`,
  'walk-not-completed': ({ mmHg }) =>
    `Belastung abgebrochen; Knöchelarteriendruck danach ${decimal(mmHg)} mmHg`,
  'ankle-pressure': ({ mmHg, limit }) => `Knöchelarteriendruck ${decimal(mmHg)} mmHg${below(limit)}`,
  'toe-pressure': ({ mmHg, limit }) => `Zehendruck ${decimal(mmHg)} mmHg${below(limit)}`,
  'ankle-index': ({ value, limit }) => `ABI ${index(value)}${limit ? `, Grenze ${index(limit)}` : ''}`,
  'toe-index': ({ value, limit }) => `TBI ${index(value)}${limit ? `, Grenze ${index(limit)}` : ''}`,
  'forearm-index': ({ value, limit }) =>
    `Unterarmindex zum anderen Arm ${index(value)}${limit ? `, Grenze ${index(limit)}` : ''}`,
  tcpo2: ({ mmHg }) => `tcpO₂ ${decimal(mmHg)} mmHg`,
  threat: ({ measure, value, limit, artery }) =>
    measure === 'index'
      ? `${MEASURES.index} ${index(value)} (Grenze ${index(limit)})`
      : `${MEASURES[measure]} ${decimal(value)} mmHg (Grenze ${limit})${
          artery === 'dorsalis-pedis'
            ? ', A. dorsalis pedis; A. tibialis posterior nicht komprimierbar'
            : artery === 'posterior-tibial'
              ? ', A. tibialis posterior; A. dorsalis pedis nicht komprimierbar'
              : ''
        }`,
  wound: ({ grade }) => `Wundgrad ${grade}`,
  ischaemia: ({ grade }) => `Ischämiegrad ${grade}`,
  infection: ({ grade }) => `Infektionsgrad ${grade}`,
};

/** One finding that a stage or a flag rests on. */
export const groundWords = (ground: Ground): string => render(SAYS, ground);
