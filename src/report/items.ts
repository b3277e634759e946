import {
  type LimbKey,
  type Place,
  PLACES,
  type Side,
  SIDES,
  siteDefinition,
  type SkinName,
} from '../anatomy/index.js';
import {
  bruitAt,
  type BruitFinding,
  type Examination,
  type Mark,
  markRegions,
  pulseAt,
  type PulseFinding,
  type ScaleId,
} from '../examination/index.js';
import type { FindingId } from '../localisation/network/finding.js';
import {
  bedsideLines,
  circulationStatements,
  type ContextStatement,
  contextStatements,
  foundStatements,
  historyStatements,
  inspectionStatements,
  limbHistoryStatements,
  methodStatements,
  pressureStatements,
  type SummaryLine,
} from '../statements/index.js';
import {
  bedsidePaths,
  circulationPaths,
  contextPaths,
  type FindingPath,
  historyPaths,
  inspectionPaths,
  limbHistoryPaths,
  limbPath,
  methodPaths,
  pressurePaths,
} from './paths.js';
import {
  isTellingNegative,
  weighBedside,
  weighCirculation,
  weighContext,
  weighFound,
  weighHistory,
  weighInspection,
  weighLimbHistory,
  weighPulse,
  type Weight,
} from './weight.js';

/** The part of the body a finding belongs to. */
export type BodyPart = LimbKey | 'trunk';

/** One thing a record says, as a line; beside those of the summary, pulses that come late and marks on the skin. */
export type ReportLine =
  | SummaryLine
  | { readonly code: 'delay'; readonly finding: Extract<FindingId, { readonly kind: 'delay' }> }
  | {
      readonly code: 'mark';
      readonly kind: Mark['kind'];
      readonly names: readonly SkinName[];
      readonly note?: string;
    };

/** One thing a record says, what it is to a reader, and where it stands in the record. */
export interface ReportItem {
  readonly line: ReportLine;
  readonly weight: Weight;
  readonly from: readonly FindingPath[];
  /** Missing where it is about the patient as a whole, or about both arms or legs. */
  readonly at?: BodyPart;
  /** A normal finding that the reader must know: no ulcer, feeling kept. */
  readonly telling?: true;
}

const LIMBS: readonly { readonly kind: 'leg' | 'arm'; readonly side: Side; readonly limb: LimbKey }[] = (
  ['leg', 'arm'] as const
).flatMap((kind) => SIDES.map((side) => ({ kind, side, limb: `${side} ${kind}` as const })));

/** The part of the body a site belongs to. */
export function partOf({ site, side }: Place): BodyPart {
  const { region } = siteDefinition(site);
  return region === 'trunk' ? region : `${side as Side} ${region}`;
}

function historyItems({ onset, history = {}, circulation = {} }: Examination): ReportItem[] {
  return [
    ...(onset ? [{ line: { code: 'onset' as const, onset }, weight: 'fact' as const, from: ['onset'] }] : []),
    ...LIMBS.flatMap(({ kind, side, limb }) =>
      limbHistoryStatements(history[kind]?.[side] ?? {}).map((one): ReportItem => ({
        line: { code: 'limb-history', limb, statements: [one] },
        weight: weighLimbHistory(one),
        from: limbHistoryPaths(limb, one),
        at: limb,
        ...(one.code === 'symptom' && one.value === 'none' && { telling: true }),
      })),
    ),
    ...historyStatements(history).map((statement): ReportItem => ({
      line: { code: 'history', statement },
      weight: weighHistory(statement),
      from: historyPaths(statement),
    })),
    ...circulationStatements(circulation).map((statement): ReportItem => ({
      line: { code: 'circulation', statement },
      weight: weighCirculation(statement),
      from: circulationPaths(statement),
    })),
  ];
}

/** The limb a statement is about by itself, where it is about one. */
function limbOf(statement: ContextStatement): LimbKey | undefined {
  switch (statement.code) {
    case 'leg-claudication':
    case 'leg-amputated':
    case 'never-there':
      return `${statement.side} leg`;
    case 'arm-tires':
    case 'arm-does-not-tire':
    case 'arm-amputated':
    case 'radial-harvested':
    case 'access':
    case 'access-signs':
      return `${statement.side} arm`;
    case 'device':
    case 'cold-injury':
      return statement.limb;
    default:
      return undefined;
  }
}

function contextItems({ context = {} }: Examination): ReportItem[] {
  return contextStatements(context).map((statement): ReportItem => {
    const at = limbOf(statement);
    return {
      line: { code: 'context', statement },
      weight: weighContext(statement),
      from: contextPaths(statement),
      ...(at && { at }),
    };
  });
}

function inspectionItems({ inspection }: Examination): ReportItem[] {
  return LIMBS.flatMap(({ kind, side, limb }) =>
    inspectionStatements(inspection?.[kind]?.[side] ?? {}, kind).map((one): ReportItem => ({
      line: { code: 'limb-inspection', limb, statements: [one] },
      weight: weighInspection(one),
      from: inspectionPaths(limb, one),
      at: limb,
      ...(isTellingNegative(one) && { telling: true }),
    })),
  );
}

/** A finding by the finger in one item; in two where nobody could feel and Doppler was heard all the same. */
function pulseItems(place: Place, pulse: PulseFinding, scale: ScaleId): ReportItem[] {
  const { couldNotExamine, ...rest } = pulse;
  const parts: PulseFinding[] = couldNotExamine
    ? [{ couldNotExamine, ...(rest.doppler === undefined && rest) }, ...(rest.doppler ? [rest] : [])]
    : [pulse];
  return parts.map((part) => ({
    line: { code: 'site', place, statements: foundStatements(part, undefined, scale) },
    weight: weighPulse(part),
    from: [`pulses.${place.site}.${place.side}`],
    at: partOf(place),
  }));
}

function siteItems(examination: Examination): ReportItem[] {
  const { scale } = examination;
  return PLACES.flatMap((place): ReportItem[] => {
    const pulse = pulseAt(examination, place);
    const bruit = bruitAt(examination, place);
    const felt = pulse ? pulseItems(place, pulse, scale) : [];
    const from = [`bruits.${place.site}.${place.side}`];
    // A note that stands with both is told once.
    const { note, ...heard } = bruit ?? {};
    const told: BruitFinding = note && note !== pulse?.note ? { ...heard, note } : heard;
    const statements = foundStatements(undefined, told, scale);
    if (bruit && !statements.length) return felt.map((one) => ({ ...one, from: [...one.from, ...from] }));
    return [
      ...felt,
      ...(bruit
        ? [
            {
              line: { code: 'site' as const, place, statements },
              weight: weighFound(statements),
              from,
              at: partOf(place),
            },
          ]
        : []),
    ].filter(({ line }) => line.code !== 'site' || line.statements.length > 0);
  });
}

function delayItems({ delays = {} }: Examination): ReportItem[] {
  const { radioRadial: arms, radioFemoral: legs } = delays;
  const item = (
    of: 'radio-radial' | 'radio-femoral',
    side: Side | 'both' | 'none',
    from: readonly FindingPath[],
  ): ReportItem => ({
    line: { code: 'delay', finding: { kind: 'delay', of, side } },
    weight: side === 'none' ? 'normal' : 'abnormal',
    from,
  });
  const late = SIDES.filter((side) => legs?.[side] === 'delayed');
  const inTime = SIDES.filter((side) => legs?.[side] === 'none');
  const paths = (sides: readonly Side[]) => sides.map((side) => `delays.radioFemoral.${side}`);
  return [
    ...(arms
      ? [
          item('radio-radial', arms === 'none' ? 'none' : arms === 'right-later' ? 'right' : 'left', [
            'delays.radioRadial',
          ]),
        ]
      : []),
    // "Left later" says of the other side that it is in time.
    ...(late.length
      ? [item('radio-femoral', late.length === 2 ? 'both' : late[0]!, [...paths(late), ...paths(inTime)])]
      : []),
    ...(inTime.length && !late.length ? [item('radio-femoral', 'none', paths(inTime))] : []),
  ];
}

function markItems({ marks = [] }: Examination): ReportItem[] {
  return marks.map((mark, i) => ({
    line: {
      code: 'mark',
      kind: mark.kind,
      names: markRegions(mark),
      ...(mark.note && { note: mark.note }),
    },
    weight: mark.kind === 'scar' ? 'fact' : 'abnormal',
    from: [`marks.${i}`],
  }));
}

function bedsideItems({ bedside = {} }: Examination): ReportItem[] {
  return bedsideLines(bedside).map((line) => ({
    line: { code: 'bedside', ...line },
    weight: weighBedside(line),
    from: bedsidePaths(line),
  }));
}

function pressureItems({ pressures = {}, method = {} }: Examination): ReportItem[] {
  const unit = pressures.unit ?? 'mmHg';
  return [
    ...pressureStatements(pressures).map((statement): ReportItem => ({
      line: { code: 'pressure', statement, unit },
      weight:
        'value' in statement && typeof statement.value !== 'number' && statement.value !== 'incompressible'
          ? 'could-not'
          : 'fact',
      from: pressurePaths(statement),
    })),
    ...methodStatements(method).map((statement): ReportItem => ({
      line: { code: 'method', statement },
      weight: 'fact',
      from: methodPaths(statement),
    })),
  ];
}

function stagingItems({ staging }: Examination): ReportItem[] {
  return LIMBS.flatMap(({ kind, side, limb }) =>
    Object.entries(staging?.[kind]?.[side] ?? {}).map(([scheme, set]): ReportItem => ({
      line: { code: 'staging', staging: { [kind]: { [side]: { [scheme]: set } } } },
      weight: 'fact',
      from: [`staging.${limbPath(limb)}.${scheme}`],
      at: limb,
    })),
  );
}

/** The parts of a record, in the order of the bedside. */
export const ITEM_PARTS = [
  'calls',
  'history',
  'context',
  'inspection',
  'marks',
  'sites',
  'delays',
  'bedside',
  'pressures',
  'staging',
] as const;
export type ItemPart = (typeof ITEM_PARTS)[number];

const ITEMS: Readonly<Record<ItemPart, (examination: Examination) => ReportItem[]>> = {
  calls: ({ calls = [] }) =>
    calls.map((call, i) => ({ line: { code: 'call', call }, weight: 'fact', from: [`calls.${i}`] })),
  history: historyItems,
  context: contextItems,
  inspection: inspectionItems,
  marks: markItems,
  sites: siteItems,
  delays: delayItems,
  bedside: bedsideItems,
  pressures: pressureItems,
  staging: stagingItems,
};

/** Everything a record says, item by item and part by part: nothing that it does not say, and nothing twice. */
export function itemsOf(examination: Examination): Readonly<Record<ItemPart, readonly ReportItem[]>> {
  return Object.fromEntries(ITEM_PARTS.map((part) => [part, ITEMS[part](examination)])) as Record<
    ItemPart,
    ReportItem[]
  >;
}
