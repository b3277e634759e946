import { type Side, SIDES } from '../anatomy/index.js';
import type {
  ArmHistory,
  ArmInspection,
  Examination,
  LegInspection,
  LimbHistory,
  RiskFactor,
} from '../examination/index.js';
import {
  between,
  type Chance,
  chanceOf,
  type Findings,
  happens,
  type Patient,
  type Pattern,
} from '../flow/index.js';

/*
 * What flow and pulse do not compute: what the patient tells, and what skin, nerve and muscle show of a limb with so much pressure left.
 * Each is a rule of thumb, those of a leg and an arm alike; limits with a source name it.
 */

/** Symptoms and signs by pressure in mmHg, and by the index to the higher arm. */
export const PRESENTS = {
  /** Below it a limb that lost its flow at once begins to lose feeling. Rule of thumb. */
  acuteFeeling: 50,
  /** Rest pain: ankle and toe (Norgren L et al., TASC II, Eur J Vasc Endovasc Surg 2007;33 Suppl 1). */
  restAnkle: 50,
  restToe: 30,
  /** An index up to which a limb is taken for ill (Aboyans V et al., Circulation 2012;126:2890). */
  ill: 0.9,
  /** An index below which skin, hair and nails show it. Rule of thumb. */
  skin: 0.6,
  /** Wrist over the better arm below which an arm tires. Rule of thumb. */
  armTires: 0.75,
  /** Walking distance in m by how far the calf carries. Rule of thumb. */
  distance: { far: 400, short: 150, 'few-steps': 40 },
} as const;

/** Why a patient comes. */
export const COMPLAINTS = [
  'leg-sudden',
  'arm-sudden',
  'foot-wound',
  'night-pain',
  'leg-walking',
  'arm-tires',
  'faint',
  'cold-limbs',
  'high-pressure',
  'check',
] as const;
export type Complaint = (typeof COMPLAINTS)[number];

/** What is told of a patient before anything is examined. */
export interface Brief {
  /** Years. */
  readonly age: number;
  readonly complaint: Complaint;
  /** The side complained of; missing where it is none, or both. */
  readonly side?: Side;
}

/** A limb as physics leaves it. */
interface LimbState {
  readonly kind: 'leg' | 'arm';
  readonly side: Side;
  /** Highest pressure at ankle or wrist, and that over the better arm. */
  readonly pressure: number;
  readonly index: number;
  /** Pressure of toe or finger. */
  readonly digit: number;
}

function statesOf({ cuffs }: Findings): LimbState[] {
  const at = (site: string, side: Side): number =>
    Number((cuffs as Readonly<Record<string, Partial<Record<Side, unknown>>>>)[site]?.[side] ?? 0) || 0;
  const arm = Math.max(...SIDES.map((side) => at('brachial', side)), 1);
  return (['leg', 'arm'] as const).flatMap((kind) =>
    SIDES.map((side): LimbState => {
      const sites = kind === 'leg' ? ['dorsalis-pedis', 'posterior-tibial'] : ['radial', 'ulnar'];
      const pressure = Math.max(...sites.map((site) => at(site, side)));
      return {
        kind,
        side,
        pressure,
        index: pressure / arm,
        digit: at(kind === 'leg' ? 'toe' : 'finger', side),
      };
    }),
  );
}

interface Presented {
  readonly complaint: Complaint | undefined;
  readonly history: LimbHistory & ArmHistory;
  readonly inspection: LegInspection & ArmInspection;
}

const SOUND_SKIN = {
  colour: 'normal',
  temperature: 'warm',
  hair: 'normal',
  oedema: 'none',
  ulcer: 'none',
  gangrene: 'none',
  infection: [],
} as const;
const FEELS = { sensation: 'normal', movement: 'normal' } as const;

function sound(): Presented {
  return {
    complaint: undefined,
    history: { symptom: 'none' },
    inspection: { ...SOUND_SKIN, ...FEELS, refill: 2 },
  };
}

/** A limb that lost its flow within hours; the signs are those that part the classes of Rutherford 1997. */
function acute({ kind, pressure }: LimbState, chance: Chance): Presented {
  const hours = Math.round(between(chance, 2, 9));
  const history: LimbHistory = { onset: 'sudden', hours, suddenPain: true, newComplaint: true };
  const complaint = `${kind}-sudden` as const;
  const cold = {
    ...SOUND_SKIN,
    colour: 'pale' as const,
    temperature: 'cold' as const,
    temperatureLevel: (kind === 'leg' ? 'mid-calf' : 'mid-forearm') as never,
    refill: 6,
  };
  if (pressure > PRESENTS.acuteFeeling)
    return { complaint, history, inspection: { ...cold, ...FEELS, temperature: 'cool', refill: 4 } };
  const pain = { ...history, symptom: 'rest-pain' as const };
  const worse = pressure === 0 && happens(chance, 0.5);
  return {
    complaint,
    history: pain,
    inspection: worse
      ? { ...cold, sensation: 'beyond-digits', movement: 'weak' }
      : { ...cold, sensation: 'digits', movement: 'normal' },
  };
}

function chronic(state: LimbState, findings: Findings, wounds: boolean, chance: Chance): Presented {
  const { kind, side, pressure, index, digit } = state;
  const ill = index <= PRESENTS.ill;
  const starved = ill && (digit < PRESENTS.restToe || (kind === 'leg' && pressure < PRESENTS.restAnkle));
  const skin: LegInspection & ArmInspection = {
    ...SOUND_SKIN,
    ...FEELS,
    refill: starved ? 5 : index < PRESENTS.skin ? 3 : 2,
    ...(index < PRESENTS.skin && {
      temperature: 'cool' as const,
      hair: 'sparse' as const,
      temperatureLevel: (kind === 'leg' ? 'forefoot' : 'fingers') as never,
    }),
    ...(starved && { colour: 'pale' as const }),
  };
  const since: LimbHistory = { onset: 'gradual' };
  if (starved && wounds && happens(chance, 0.6)) {
    return {
      complaint: kind === 'leg' ? 'foot-wound' : 'arm-tires',
      history: { ...since, symptom: 'tissue-loss' },
      inspection: { ...skin, ulcer: 'shallow', ulcerPlace: 'digits', ulcerCause: 'arterial' },
    };
  }
  if (starved && kind === 'leg')
    return { complaint: 'night-pain', history: { ...since, symptom: 'rest-pain' }, inspection: skin };
  const { walk } = findings.walking[side];
  if (kind === 'leg' && walk !== 'no-limit') {
    const distance = PRESENTS.distance[walk];
    return {
      complaint: 'leg-walking',
      history: { ...since, symptom: 'claudication', distance },
      inspection: skin,
    };
  }
  if (kind === 'arm' && index < PRESENTS.armTires)
    return { complaint: 'arm-tires', history: { ...since, symptom: 'claudication' }, inspection: skin };
  return { ...sound(), inspection: skin };
}

const RISKS: Readonly<Partial<Record<Pattern, readonly RiskFactor[]>>> = {
  atherosclerosis: ['hypertension', 'high-cholesterol'],
  diabetic: ['hypertension', 'kidney-disease'],
  'arm-atherosclerosis': ['hypertension', 'coronary-disease'],
  coarctation: ['hypertension'],
  'low-output': ['heart-failure'],
};

function background(pattern: Pattern, chance: Chance): Partial<Examination> {
  const smokers = pattern === 'small-artery' ? 1 : /atherosclerosis/.test(pattern) ? 0.6 : 0.2;
  return {
    context: {
      smoking: happens(chance, smokers) ? 'current' : happens(chance, 0.4) ? 'past' : 'never',
      diabetes: pattern === 'diabetic' || (/atherosclerosis/.test(pattern) && happens(chance, 0.2)),
    },
    history: {
      risks: RISKS[pattern] ?? [],
      elsewhere: [],
      rhythm: pattern === 'embolism' && happens(chance, 0.75) ? 'atrial-fibrillation' : 'regular',
    },
  };
}

function circulation({ state, meanPressure, heartRate }: Patient): Examination['circulation'] {
  // A third of the pulse pressure above the mean lies the systolic's other two. Rule of thumb.
  return { shock: state === 'shock', systolic: Math.round(meanPressure * 1.3), heartRate };
}

/** Brings the gravest complaint first. */
const gravest = (all: readonly Presented[]): Presented | undefined =>
  all
    .filter(({ complaint }) => complaint)
    .sort((a, b) => COMPLAINTS.indexOf(a.complaint!) - COMPLAINTS.indexOf(b.complaint!))[0];

const OF_PATTERN: Readonly<Partial<Record<Pattern, Complaint>>> = {
  shock: 'faint',
  'low-output': 'faint',
  'cold-body': 'cold-limbs',
  'small-artery': 'cold-limbs',
  coarctation: 'high-pressure',
};

/** What a simulated patient tells and shows, beside what flow and pulse give; the same patient and pattern give the same. */
export function presentsOf(
  patient: Patient,
  findings: Findings,
  pattern: Pattern,
): { readonly brief: Brief; readonly record: Partial<Examination> } {
  const chance = chanceOf(patient.seed ^ 0x5bd1e995);
  const isAcute = patient.collaterals === 'fresh' && patient.lesions.length > 0;
  const wounds = pattern === 'diabetic' || pattern === 'small-artery' || happens(chance, 0.3);
  const low = patient.state !== 'rest';
  const limbs = statesOf(findings).map((state) => {
    const shown =
      low || state.index > PRESENTS.ill
        ? sound()
        : isAcute
          ? acute(state, chance)
          : chronic(state, findings, wounds, chance);
    const cold: LegInspection & ArmInspection = low
      ? { ...shown.inspection, colour: 'pale', temperature: 'cool', refill: 4 }
      : shown.inspection;
    return { state, shown: { ...shown, inspection: cold } };
  });
  const by = (part: 'history' | 'inspection'): Record<'leg' | 'arm', Partial<Record<Side, object>>> => {
    const out: Record<'leg' | 'arm', Partial<Record<Side, object>>> = { leg: {}, arm: {} };
    for (const { state, shown } of limbs) out[state.kind][state.side] = shown[part];
    return out;
  };
  const own = background(pattern, chance);
  const worst = gravest(limbs.map(({ shown }) => shown));
  const same = limbs.filter(({ shown }) => shown.complaint === worst?.complaint);
  const armsTire = limbs.flatMap(({ state, shown }) =>
    state.kind === 'arm'
      ? [[state.side, shown.history.symptom === 'claudication' ? 'arm' : 'none'] as const]
      : [],
  );
  const complaint = OF_PATTERN[pattern] ?? worst?.complaint ?? 'check';
  const sided = complaint === worst?.complaint && same.length === 1 ? same[0]?.state.side : undefined;
  return {
    brief: { age: patient.age, complaint, ...(sided && { side: sided }) },
    record: {
      ...own,
      context: { ...own.context, armClaudication: Object.fromEntries(armsTire) },
      history: { ...own.history, ...by('history') },
      inspection: by('inspection'),
      circulation: circulation(patient),
    },
  };
}
