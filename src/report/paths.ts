import type { LimbKey, Side } from '../anatomy/index.js';
import type {
  BedsideLine,
  CirculationStatement,
  ContextStatement,
  HistoryStatement,
  InspectionStatement,
  LimbHistoryStatement,
  MethodStatement,
  PressureStatement,
} from '../statements/index.js';

/** Where a finding stands in the record, its fields joined by dots: `pulses.femoral.left`, `inspection.leg.left.ulcer`. */
export type FindingPath = string;

/** The part of a path that names a limb: `leg.left`. */
export function limbPath(limb: LimbKey): string {
  const [side, kind] = limb.split(' ');
  return `${kind}.${side}`;
}

/** Fields of a statement that is not called as its field is. */
const LIMB_HISTORY: Readonly<Record<string, string>> = { days: 'hours' };
export const limbHistoryPaths = (limb: LimbKey, { code }: LimbHistoryStatement): FindingPath[] => [
  `history.${limbPath(limb)}.${LIMB_HISTORY[code] ?? code}`,
];

const HISTORY: Readonly<Record<string, string>> = {
  'no-risks': 'risks',
  'nothing-elsewhere': 'elsewhere',
};
export const historyPaths = ({ code }: HistoryStatement): FindingPath[] => [
  `history.${HISTORY[code] ?? code}`,
];

export function circulationPaths(statement: CirculationStatement): FindingPath[] {
  if (statement.code !== 'blood-pressure') return [`circulation.${statement.code}`];
  return (['systolic', 'diastolic'] as const)
    .filter((field) => statement[field] !== undefined)
    .map((field) => `circulation.${field}`);
}

/** The field of the context that each statement comes from; those of one side end with it. */
const CONTEXT: Readonly<Record<ContextStatement['code'], string>> = {
  ageBand: 'ageBand',
  smoking: 'smoking',
  mechanism: 'mechanism',
  diabetes: 'diabetes',
  'no-diabetes': 'diabetes',
  'leg-claudication': 'legClaudication',
  'arm-tires': 'armClaudication',
  'arm-does-not-tire': 'armClaudication',
  'radial-harvested': 'radialHarvested',
  injury: 'injury',
  'leg-amputated': 'legAmputation',
  'arm-amputated': 'armAmputation',
  'never-there': 'absentFromBirth',
  repair: 'revascularisations',
  'graft-pulse': 'revascularisations',
  'graft-infection': 'revascularisations',
  'no-repairs': 'revascularisations',
  aneurysm: 'aneurysms',
  'no-aneurysm': 'aneurysms',
  access: 'access',
  'access-signs': 'access',
  'no-access': 'access',
  device: 'devices',
  'no-device': 'devices',
  'cold-injury': 'coldInjury',
  medicines: 'medicines',
  'no-medicines': 'medicines',
};
/** Fields of the context that hold one value a side. */
const SIDED: readonly string[] = [
  'legClaudication',
  'armClaudication',
  'injury',
  'legAmputation',
  'armAmputation',
  'absentFromBirth',
];

export function contextPaths(statement: ContextStatement): FindingPath[] {
  const field = CONTEXT[statement.code];
  if (statement.code === 'cold-injury') return [`context.${field}.${limbPath(statement.limb)}`];
  const side = 'side' in statement && SIDED.includes(field) ? `.${statement.side}` : '';
  return [`context.${field}${side}`];
}

export function inspectionPaths(limb: LimbKey, statement: InspectionStatement): FindingPath[] {
  const at = (...fields: readonly (string | false | undefined)[]): FindingPath[] =>
    fields
      .filter((field) => typeof field === 'string')
      .map((field) => `inspection.${limbPath(limb)}.${field}`);
  switch (statement.code) {
    case 'temperature':
      return at('temperature', statement.from && 'temperatureLevel');
    case 'ulcer':
      return at('ulcer', statement.at && 'ulcerPlace');
    case 'gangrene':
      return at('gangrene', statement.extent && 'gangreneExtent');
    case 'digit':
      return at(`digits.${statement.digit}`);
    default:
      return at(statement.code);
  }
}

export const bedsidePaths = ({ test, side }: BedsideLine): FindingPath[] => [`bedside.${test}.${side}`];

const WALK: Readonly<Record<string, string>> = {
  'walk-completed': 'completed',
  'walk-not-completed': 'completed',
  walked: 'minutes',
  'note-after': 'note',
};
export function pressurePaths(statement: PressureStatement): FindingPath[] {
  const sided = (field: string, side: Side): FindingPath[] => [`pressures.${field}.${side}`];
  switch (statement.code) {
    case 'pressure':
      return sided(statement.site, statement.side);
    case 'pressure-after':
      return sided(`afterExercise.${statement.site}`, statement.side);
    case 'oxygen':
      return sided('tcpo2', statement.side);
    case 'volume-curve':
      return sided('volumeCurve', statement.side);
    case 'note':
      return ['pressures.note'];
    default:
      return [`pressures.afterExercise.${WALK[statement.code]}`];
  }
}

export const methodPaths = ({ field }: MethodStatement): FindingPath[] => [`method.${field}`];
