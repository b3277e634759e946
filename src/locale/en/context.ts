import type { Laterality } from '../../anatomy/index.js';
import type {
  AgeBand,
  AneurysmPlace,
  ArmAmputation,
  BirthAbsent,
  InjuryPlace,
  LegAmputation,
  Mechanism,
  Medicine,
  Revascularisation,
  Smoking,
} from '../../examination/index.js';
import type { ContextStatement } from '../../statements/index.js';
import { render, type Renderings } from '../render.js';
import { anatomy } from './anatomy.js';
import { history } from './history.js';
import { signs as recorded } from './grounds.js';
import { capitalised, decimal, list } from './phrases.js';

const ages: Record<AgeBand, string> = {
  'under-20': 'under 20',
  '20-39': '20 to 39',
  '40-59': '40 to 59',
  '60-79': '60 to 79',
  '80-over': '80 and over',
};

const smoking: Record<Smoking, string> = { never: 'never', past: 'in the past', current: 'now' };

const mechanisms: Record<Mechanism, string> = {
  embolic: 'embolus',
  thrombotic: 'thrombosis of a diseased artery',
  injury: 'injury or operation',
  dissection: 'dissection of the aorta',
  vasculitis: 'vasculitis',
  buerger: 'thromboangiitis obliterans (Buerger’s disease)',
  vasospasm: 'vasospasm (Raynaud’s phenomenon)',
  compression: 'compression or entrapment',
};

const injuries: Record<InjuryPlace, string> = {
  pelvis: 'pelvis',
  groin: 'groin',
  thigh: 'thigh',
  knee: 'knee',
  'lower-leg': 'lower leg',
  'ankle-foot': 'ankle or foot',
  shoulder: 'shoulder',
  'upper-arm': 'upper arm',
  elbow: 'elbow',
  forearm: 'forearm',
  'wrist-hand': 'wrist or hand',
};

const legAmputations: Record<LegAmputation, string> = {
  toes: 'toes',
  forefoot: 'forefoot',
  'below-knee': 'below the knee',
  'through-knee': 'through the knee',
  'above-knee': 'above the knee',
  hip: 'at the hip',
};

const armAmputations: Record<ArmAmputation, string> = {
  fingers: 'fingers',
  hand: 'hand',
  'below-elbow': 'below the elbow',
  'above-elbow': 'above the elbow',
  shoulder: 'at the shoulder',
};

const repairs: Record<Revascularisation, string> = { bypass: 'bypass', stent: 'stent' };

const missing: Record<BirthAbsent, string> = {
  'dorsalis-pedis': 'dorsalis pedis',
  'posterior-tibial': 'posterior tibial',
};

const sides: Record<Laterality, string> = { right: 'right', left: 'left', midline: 'midline' };

/** An earlier repair, as it is listed. */
const repair = (kind: Revascularisation, vessel: string): string =>
  `${kind === 'bypass' ? 'bypass of' : 'stent in'} ${vessel}`;

const aneurysmPlaces: Record<AneurysmPlace, string> = {
  ...recorded.aneurysms,
  other: 'elsewhere',
};
const medicines: Record<Medicine, string> = {
  antiplatelet: 'antiplatelet drug',
  anticoagulant: 'anticoagulant',
  statin: 'statin',
};
const accessKinds = { fistula: 'fistula', graft: 'graft' };
const graftPulses = { present: 'present', absent: 'absent' };
const signs = (words: readonly string[]): string => words.join(', ') || 'none';

const statements: Renderings<ContextStatement> = {
  ageBand: ({ value }) => `age ${ages[value]}`,
  diabetes: 'diabetes',
  'no-diabetes': 'no diabetes',
  smoking: ({ value }) => `smoking ${smoking[value]}`,
  mechanism: ({ value }) => `cause thought to be ${mechanisms[value]}`,
  'leg-claudication': ({ side, muscle }) => `${sides[side]} leg hurts on walking: ${history.muscles[muscle]}`,
  'arm-tires': ({ side }) => `${sides[side]} arm tires on use: yes`,
  'arm-does-not-tire': ({ side }) => `${sides[side]} arm tires on use: no`,
  injury: ({ side, place }) => `${sides[side]} ${injuries[place]} injured or operated on`,
  'leg-amputated': ({ side, at }) => `${sides[side]} leg amputated: ${legAmputations[at]}`,
  'arm-amputated': ({ side, at }) => `${sides[side]} arm amputated: ${armAmputations[at]}`,
  'never-there': ({ side, sites }) =>
    `${sides[side]} ${list(sites.map((site) => missing[site]))} pulse never there`,
  'radial-harvested': ({ side }) => `${sides[side]} radial artery taken as a graft`,
  repair: ({ kind, route, vessel }) =>
    `${repair(kind, anatomy.vessel(vessel))}${route ? `, ${recorded.routes[route]}` : ''}`,
  'no-repairs': 'no bypass or stent',
  'graft-pulse': ({ pulse }) => `pulse of the graft ${graftPulses[pulse]}`,
  'graft-infection': ({ signs: found }) =>
    `signs of infection over the graft: ${signs(found.map((sign) => recorded.graft[sign]))}`,
  aneurysm: ({ place, side }) => `known aneurysm: ${side ? `${sides[side]} ` : ''}${aneurysmPlaces[place]}`,
  'no-aneurysm': 'no known aneurysm',
  access: ({ side, kind }) => `dialysis access, ${sides[side]} arm: ${accessKinds[kind]}`,
  'access-signs': ({ side, signs: found }) =>
    `signs at the ${sides[side]} dialysis access: ${signs(found.map((sign) => recorded.access[sign]))}`,
  'no-access': 'no dialysis access',
  device: ({ limb, kind }) => `${recorded.devices[kind]}, ${anatomy.limbs[limb]}`,
  'no-device': 'no line or catheter in an artery',
  'cold-injury': ({ limb, hours }) =>
    `cold injury, ${anatomy.limbs[limb]}${hours === undefined ? '' : `, ${decimal(hours)} h ago`}`,
  medicines: ({ medicines: taken }) => `takes: ${taken.map((one) => medicines[one]).join(', ')}`,
  'no-medicines': 'takes no antiplatelet drug, anticoagulant or statin',
};

/** Words of what is known before a pulse is felt. */
export const context = {
  title: 'Known beforehand',
  age: 'Age',
  ages,
  diabetes: 'Diabetes',
  diabetesOptions: { yes: 'yes', no: 'no' },
  smoked: 'Smoking',
  smoking,
  mechanism: 'Cause, where it is known',
  mechanisms,
  anywhere: 'Legs and arms',
  injury: 'Injured or operated on at',
  injuries,
  amputation: 'Amputated',
  legAmputations,
  armAmputations,
  missing: 'Pulse never there',
  missingOptions: missing,
  harvested: 'Radial artery taken as a graft',
  harvestedOption: 'taken',
  nothingOf: 'not stated',
  repaired: 'Bypasses and stents',
  noRepairs: 'None recorded.',
  repairs,
  repairKind: 'Kind',
  repairSide: 'Side',
  repairArtery: 'Artery',
  sides,
  choose: 'choose an artery',
  add: 'Add',
  repair,
  remove: (one: string) => `Remove: ${one}`,
  removeShort: 'Remove',
  aneurysms: 'Known aneurysm',
  aneurysmOptions: capitalised(aneurysmPlaces),
  noAneurysm: 'None known',
  access: 'Dialysis access',
  accessKinds,
  accessSigns: 'Signs at the access',
  accessSignOptions: recorded.access,
  devices: 'Line or catheter in an artery',
  deviceOptions: recorded.devices,
  coldInjury: 'Cold injury',
  coldInjuryThere: 'frostbite',
  coldHours: 'Hours since the cold injury',
  hoursUnit: 'h',
  medicines: 'Medicines',
  medicineOptions: capitalised(medicines),
  noMedicines: 'None of these',
  routes: recorded.routes,
  repairRoute: 'Course',
  ownCourse: 'along the artery',
  graftPulse: 'Pulse of the graft',
  graftPulses,
  graftSigns: 'Signs of infection over it',
  graftSignOptions: recorded.graft,
  noSigns: 'None',
  said: (statement: ContextStatement) => render(statements, statement),
};
export type ContextWords = typeof context;
