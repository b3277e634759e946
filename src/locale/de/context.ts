import type { AneurysmPlace, Medicine } from '../../examination/index.js';
import type { ContextStatement } from '../../statements/index.js';
import type { ContextWords } from '../en/context.js';
import { render, type Renderings } from '../render.js';
import { anatomy } from './anatomy.js';
import { signs as recorded } from './grounds.js';
import { history } from './history.js';
import { capitalised, decimal } from './phrases.js';

const repair: ContextWords['repair'] = (kind, vessel) =>
  `${kind === 'bypass' ? 'Bypass' : 'Stent'}: ${vessel}`;

const aneurysmPlaces: Record<AneurysmPlace, string> = {
  ...recorded.aneurysms,
  other: 'anderswo',
};
const medicines: Record<Medicine, string> = {
  antiplatelet: 'Thrombozytenhemmer',
  anticoagulant: 'Antikoagulans',
  statin: 'Statin',
};
const accessKinds = { fistula: 'Fistel', graft: 'Prothese' };
const graftPulses = { present: 'vorhanden', absent: 'fehlend' };
const signs = (words: readonly string[]): string => words.join(', ') || 'keine';

const statements = (words: ContextWords): Renderings<ContextStatement> => ({
  ageBand: ({ value }) => `${words.age} ${words.ages[value]}`,
  diabetes: 'Diabetes',
  'no-diabetes': 'kein Diabetes',
  smoking: ({ value }) => `${words.smoked}: ${words.smoking[value]}`,
  mechanism: ({ value }) => `vermutete Ursache: ${words.mechanisms[value]}`,
  'leg-claudication': ({ side, muscle }) =>
    `Bein ${words.sides[side]}, Schmerz beim Gehen: ${history.muscles[muscle]}`,
  'arm-tires': ({ side }) => `Arm ${words.sides[side]}, ermüdet bei Gebrauch: ja`,
  'arm-does-not-tire': ({ side }) => `Arm ${words.sides[side]}, ermüdet bei Gebrauch: nein`,
  injury: ({ side, place }) => `${words.injury}: ${words.injuries[place]} ${words.sides[side]}`,
  'leg-amputated': ({ side, at }) => `Bein ${words.sides[side]} amputiert: ${words.legAmputations[at]}`,
  'arm-amputated': ({ side, at }) => `Arm ${words.sides[side]} amputiert: ${words.armAmputations[at]}`,
  'never-there': ({ side, sites }) =>
    `${words.missing}: ${sites.map((site) => words.missingOptions[site]).join(', ')} ${words.sides[side]}`,
  'radial-harvested': ({ side }) => `${words.harvested}: ${words.sides[side]}`,
  repair: ({ kind, route, vessel }) =>
    `${repair(kind, anatomy.vessel(vessel))}${route ? `, ${recorded.routes[route]}` : ''}`,
  'no-repairs': 'kein Bypass oder Stent',
  'graft-pulse': ({ pulse }) => `Puls des Bypasses ${graftPulses[pulse]}`,
  'graft-infection': ({ signs: found }) =>
    `Infektionszeichen über dem Bypass: ${signs(found.map((sign) => recorded.graft[sign]))}`,
  aneurysm: ({ place, side }) =>
    `bekanntes Aneurysma: ${aneurysmPlaces[place]}${side ? ` ${words.sides[side]}` : ''}`,
  'no-aneurysm': 'kein Aneurysma bekannt',
  access: ({ side, kind }) => `Dialysezugang, Arm ${words.sides[side]}: ${accessKinds[kind]}`,
  'access-signs': ({ side, signs: found }) =>
    `Zeichen am Dialysezugang ${words.sides[side]}: ${signs(found.map((sign) => recorded.access[sign]))}`,
  'no-access': 'kein Dialysezugang',
  device: ({ limb, kind }) => `${recorded.devices[kind]}, ${anatomy.limbs[limb]}`,
  'no-device': 'kein Katheter in einer Arterie',
  'cold-injury': ({ limb, hours }) =>
    `Kälteschaden, ${anatomy.limbs[limb]}${hours === undefined ? '' : `, vor ${decimal(hours)} h`}`,
  medicines: ({ medicines: taken }) => `nimmt ein: ${taken.map((one) => medicines[one]).join(', ')}`,
  'no-medicines': 'nimmt weder Thrombozytenhemmer noch Antikoagulans noch Statin',
});

/** German words of what is known before a pulse is felt. */
export const context: ContextWords = {
  title: 'Vorher bekannt',
  age: 'Alter',
  ages: {
    'under-20': 'unter 20',
    '20-39': '20 bis 39',
    '40-59': '40 bis 59',
    '60-79': '60 bis 79',
    '80-over': '80 und älter',
  },
  diabetes: 'Diabetes',
  diabetesOptions: { yes: 'ja', no: 'nein' },
  smoked: 'Rauchen',
  smoking: { never: 'nie', past: 'früher', current: 'jetzt' },
  mechanism: 'Ursache, soweit bekannt',
  mechanisms: {
    embolic: 'Embolie',
    thrombotic: 'Thrombose einer kranken Arterie',
    injury: 'Verletzung oder Operation',
    dissection: 'Aortendissektion',
    vasculitis: 'Vaskulitis',
    buerger: 'Thrombangiitis obliterans (Morbus Buerger)',
    vasospasm: 'Vasospasmus (Raynaud-Phänomen)',
    compression: 'Kompression oder Entrapment',
  },
  anywhere: 'Beine und Arme',
  injury: 'Verletzt oder operiert an',
  injuries: {
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
  },
  amputation: 'Amputiert',
  legAmputations: {
    toes: 'Zehen',
    forefoot: 'Vorfuß',
    'below-knee': 'unterhalb des Knies',
    'through-knee': 'im Knie',
    'above-knee': 'oberhalb des Knies',
    hip: 'in der Hüfte',
  },
  armAmputations: {
    fingers: 'Finger',
    hand: 'Hand',
    'below-elbow': 'unterhalb des Ellenbogens',
    'above-elbow': 'oberhalb des Ellenbogens',
    shoulder: 'in der Schulter',
  },
  missing: 'Puls war nie da',
  missingOptions: { 'dorsalis-pedis': 'Dorsalis pedis', 'posterior-tibial': 'Tibialis posterior' },
  harvested: 'A. radialis als Transplantat entnommen',
  harvestedOption: 'entnommen',
  nothingOf: 'nicht angegeben',
  repaired: 'Bypässe und Stents',
  noRepairs: 'Keine erfasst.',
  repairs: { bypass: 'Bypass', stent: 'Stent' },
  repairKind: 'Art',
  repairSide: 'Seite',
  repairArtery: 'Arterie',
  sides: { right: 'rechts', left: 'links', midline: 'Mitte' },
  choose: 'Arterie wählen',
  add: 'Hinzufügen',
  repair,
  remove: (one) => `Entfernen: ${one}`,
  removeShort: 'Entfernen',
  aneurysms: 'Bekanntes Aneurysma',
  aneurysmOptions: capitalised(aneurysmPlaces),
  noAneurysm: 'Keines bekannt',
  access: 'Dialysezugang',
  accessKinds,
  accessSigns: 'Zeichen am Zugang',
  accessSignOptions: recorded.access,
  devices: 'Katheter in einer Arterie',
  deviceOptions: recorded.devices,
  coldInjury: 'Kälteschaden',
  coldInjuryThere: 'Erfrierung',
  coldHours: 'Stunden seit dem Kälteschaden',
  hoursUnit: 'h',
  medicines: 'Medikamente',
  medicineOptions: capitalised(medicines),
  noMedicines: 'Keines davon',
  routes: recorded.routes,
  repairRoute: 'Verlauf',
  ownCourse: 'entlang der Arterie',
  graftPulse: 'Puls des Bypasses',
  graftPulses,
  graftSigns: 'Infektionszeichen darüber',
  graftSignOptions: recorded.graft,
  noSigns: 'Keine',
  said: (statement) => render(statements(context), statement),
};
