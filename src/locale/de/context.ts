import { SIDES } from '../../anatomy/index.js';
import type { Context } from '../../examination/index.js';
import type { ContextWords } from '../en/context.js';
import { anatomy } from './anatomy.js';
import { history } from './history.js';

const repair: ContextWords['repair'] = (kind, vessel) =>
  `${kind === 'bypass' ? 'Bypass' : 'Stent'}: ${vessel}`;

/** Everything recorded, in phrases. */
function said(known: Context): string[] {
  const words = context;
  const sided = SIDES.flatMap((side) => {
    const own = words.sides[side];
    const leg = known.legClaudication?.[side];
    const arm = known.armClaudication?.[side];
    const lost = known.legAmputation?.[side];
    const lostArm = known.armAmputation?.[side];
    const injured = known.injury?.[side];
    const never = known.absentFromBirth?.[side] ?? [];
    return [
      ...(leg ? [`Bein ${own}, Schmerz beim Gehen: ${history.muscles[leg]}`] : []),
      ...(arm ? [`Arm ${own}, ermüdet bei Gebrauch: ${arm === 'none' ? 'nein' : 'ja'}`] : []),
      ...(injured ? [`${words.injury}: ${words.injuries[injured]} ${own}`] : []),
      ...(lost ? [`Bein ${own} amputiert: ${words.legAmputations[lost]}`] : []),
      ...(lostArm ? [`Arm ${own} amputiert: ${words.armAmputations[lostArm]}`] : []),
      ...(never.length
        ? [`${words.missing}: ${never.map((site) => words.missingOptions[site]).join(', ')} ${own}`]
        : []),
      ...(known.radialHarvested?.includes(side) ? [`${words.harvested}: ${own}`] : []),
    ];
  });
  return [
    ...(known.ageBand ? [`${words.age} ${words.ages[known.ageBand]}`] : []),
    ...(known.diabetes === undefined ? [] : [known.diabetes ? 'Diabetes' : 'kein Diabetes']),
    ...(known.smoking ? [`${words.smoked}: ${words.smoking[known.smoking]}`] : []),
    ...(known.mechanism ? [`vermutete Ursache: ${words.mechanisms[known.mechanism]}`] : []),
    ...sided,
    ...(known.revascularisations ?? []).map((one) => repair(one.kind, anatomy.vessel(one))),
  ];
}

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
  said,
};
