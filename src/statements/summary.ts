import { type LimbKey, type Place, PLACES, type Side, SIDES } from '../anatomy/index.js';
import {
  bruitAt,
  type Examination,
  type Onset,
  pulseAt,
  type Staging,
  type TeamCall,
} from '../examination/index.js';
import { type BedsideLine, bedsideLines } from './bedside.js';
import { type CirculationStatement, circulationStatements } from './circulation.js';
import { type ContextStatement, contextStatements } from './context.js';
import { type FoundStatement, foundStatements } from './found.js';
import {
  type HistoryStatement,
  historyStatements,
  type LimbHistoryStatement,
  limbHistoryStatements,
} from './history.js';
import { type InspectionStatement, inspectionStatements } from './inspection.js';
import {
  methodStatements,
  type MethodStatement,
  type PressureStatement,
  pressureStatements,
} from './pressures.js';

/** One line of the summary. */
export type SummaryLine =
  | { readonly code: 'call'; readonly call: TeamCall }
  | { readonly code: 'onset'; readonly onset: Onset }
  | {
      readonly code: 'limb-history';
      readonly limb: LimbKey;
      readonly statements: readonly LimbHistoryStatement[];
    }
  | { readonly code: 'history'; readonly statement: HistoryStatement }
  | { readonly code: 'circulation'; readonly statement: CirculationStatement }
  | { readonly code: 'context'; readonly statement: ContextStatement }
  | {
      readonly code: 'limb-inspection';
      readonly limb: LimbKey;
      readonly statements: readonly InspectionStatement[];
    }
  | { readonly code: 'site'; readonly place: Place; readonly statements: readonly FoundStatement[] }
  | ({ readonly code: 'bedside' } & BedsideLine)
  | {
      readonly code: 'pressure';
      readonly statement: PressureStatement;
      readonly unit: 'mmHg' | 'kPa';
    }
  | { readonly code: 'method'; readonly statement: MethodStatement }
  | { readonly code: 'staging'; readonly staging: Staging };

export const SUMMARY_PARTS = ['history', 'inspection', 'pulses', 'bedside', 'pressures', 'staging'] as const;
export type SummaryPartId = (typeof SUMMARY_PARTS)[number];

/** One part of the summary: a line for each thing recorded. */
export interface SummaryPartStatement {
  readonly id: SummaryPartId;
  readonly lines: readonly SummaryLine[];
}

const LIMBS_BY_KIND = (['leg', 'arm'] as const).flatMap((kind) =>
  SIDES.map((side): { kind: 'leg' | 'arm'; side: Side; limb: LimbKey } => ({
    kind,
    side,
    limb: `${side} ${kind}`,
  })),
);

function historyLines({ calls = [], onset, history, context, circulation }: Examination): SummaryLine[] {
  return [
    ...calls.map((call) => ({ code: 'call' as const, call })),
    ...(onset ? [{ code: 'onset' as const, onset }] : []),
    ...LIMBS_BY_KIND.flatMap(({ kind, side, limb }): SummaryLine[] => {
      const statements = limbHistoryStatements(history?.[kind]?.[side] ?? {});
      return statements.length ? [{ code: 'limb-history', limb, statements }] : [];
    }),
    ...historyStatements(history ?? {}).map((statement) => ({ code: 'history' as const, statement })),
    ...circulationStatements(circulation ?? {}).map((statement) => ({
      code: 'circulation' as const,
      statement,
    })),
    ...contextStatements(context ?? {}).map((statement) => ({ code: 'context' as const, statement })),
  ];
}

function inspectionLines({ inspection }: Examination): SummaryLine[] {
  return LIMBS_BY_KIND.flatMap(({ kind, side, limb }): SummaryLine[] => {
    const statements = inspectionStatements(inspection?.[kind]?.[side] ?? {}, kind);
    return statements.length ? [{ code: 'limb-inspection', limb, statements }] : [];
  });
}

function siteLines(examination: Examination): SummaryLine[] {
  return PLACES.flatMap((place): SummaryLine[] => {
    const statements = foundStatements(
      pulseAt(examination, place),
      bruitAt(examination, place),
      examination.scale,
    );
    return statements.length ? [{ code: 'site', place, statements }] : [];
  });
}

/** Whether any stage of any limb is set. */
function isSet(staging: Staging): boolean {
  const limbs = Object.values(staging).flatMap((kind) => Object.values(kind ?? {}));
  return limbs.some((limb) => Object.values(limb ?? {}).length > 0);
}

const LINES: Readonly<Record<SummaryPartId, (examination: Examination) => SummaryLine[]>> = {
  history: historyLines,
  inspection: inspectionLines,
  pulses: siteLines,
  bedside: ({ bedside }) =>
    bedsideLines(bedside ?? {}).map((line) => ({ code: 'bedside' as const, ...line })),
  pressures: ({ pressures, method }) => [
    ...pressureStatements(pressures ?? {}).map((statement) => ({
      code: 'pressure' as const,
      statement,
      unit: pressures?.unit ?? 'mmHg',
    })),
    ...methodStatements(method ?? {}).map((statement) => ({ code: 'method' as const, statement })),
  ],
  staging: ({ staging }) => (staging && isSet(staging) ? [{ code: 'staging' as const, staging }] : []),
};

/** Everything recorded, part by part in the order of the bedside; parts with nothing in them are left out. */
export function summaryStatements(examination: Examination): SummaryPartStatement[] {
  return SUMMARY_PARTS.map((id) => ({ id, lines: LINES[id](examination) })).filter(
    ({ lines }) => lines.length > 0,
  );
}
