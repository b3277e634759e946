import { type Laterality, SIDES } from '../../anatomy/index.js';
import type {
  AgeBand,
  ArmAmputation,
  BirthAbsent,
  Context,
  InjuryPlace,
  LegAmputation,
  Mechanism,
  Revascularisation,
  Smoking,
} from '../../examination/index.js';
import { anatomy } from './anatomy.js';
import { history } from './history.js';
import { list } from './phrases.js';

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

/** Everything recorded, in phrases. */
function said(known: Context): string[] {
  const sided = SIDES.flatMap((side) => {
    const leg = known.legClaudication?.[side];
    const arm = known.armClaudication?.[side];
    const lost = known.legAmputation?.[side];
    const lostArm = known.armAmputation?.[side];
    const injured = known.injury?.[side];
    const never = known.absentFromBirth?.[side] ?? [];
    return [
      ...(leg ? [`${side} leg hurts on walking: ${history.muscles[leg]}`] : []),
      ...(arm ? [`${side} arm tires on use: ${arm === 'none' ? 'no' : 'yes'}`] : []),
      ...(injured ? [`${side} ${injuries[injured]} injured or operated on`] : []),
      ...(lost ? [`${side} leg amputated: ${legAmputations[lost]}`] : []),
      ...(lostArm ? [`${side} arm amputated: ${armAmputations[lostArm]}`] : []),
      ...(never.length ? [`${side} ${list(never.map((site) => missing[site]))} pulse never there`] : []),
      ...(known.radialHarvested?.includes(side) ? [`${side} radial artery taken as a graft`] : []),
    ];
  });
  return [
    ...(known.ageBand ? [`age ${ages[known.ageBand]}`] : []),
    ...(known.diabetes === undefined ? [] : [known.diabetes ? 'diabetes' : 'no diabetes']),
    ...(known.smoking ? [`smoking ${smoking[known.smoking]}`] : []),
    ...(known.mechanism ? [`cause thought to be ${mechanisms[known.mechanism]}`] : []),
    ...sided,
    ...(known.revascularisations ?? []).map((one) => repair(one.kind, anatomy.vessel(one))),
  ];
}

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
  said,
};
export type ContextWords = typeof context;
