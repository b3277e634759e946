import type { LimbKey } from '../anatomy/index.js';
import type { Examination } from '../examination/index.js';
import type {
  BedsideLine,
  CirculationStatement,
  ContextStatement,
  HistoryStatement,
  InspectionStatement,
  LimbHistoryStatement,
} from '../statements/index.js';
import type { FindingPath, ReportItem } from '../report/index.js';
import { LIMBS_TOLD } from './limbs.js';
import type { LetterSentence } from './types.js';

const paths = (items: readonly ReportItem[]): FindingPath[] => [
  ...new Set(items.flatMap(({ from }) => from)),
];

type Complaint = LimbHistoryStatement | ContextStatement;

/** What of the context is about one limb and told with its complaint. */
const OF_LIMB = ['leg-claudication', 'arm-tires', 'arm-does-not-tire'] as const;
type OfLimb = Extract<ContextStatement, { readonly code: (typeof OF_LIMB)[number] }>;

const isOfLimb = (one: ContextStatement): one is OfLimb => (OF_LIMB as readonly string[]).includes(one.code);

/** The limb whose complaint an item is about. */
function complaintOf({ line }: ReportItem): { limb: LimbKey; statements: readonly Complaint[] } | undefined {
  if (line.code === 'limb-history') return { limb: line.limb, statements: line.statements };
  if (line.code !== 'context' || !isOfLimb(line.statement)) return undefined;
  const { statement } = line;
  return {
    limb: `${statement.side} ${statement.code === 'leg-claudication' ? 'leg' : 'arm'}`,
    statements: [statement],
  };
}

const isDenial = (one: Complaint): boolean =>
  (one.code === 'symptom' && one.value === 'none') ||
  (one.code === 'leg-claudication' && one.muscle === 'none') ||
  one.code === 'arm-does-not-tire';

/** The complaint, where it is felt, then the rest; a clock time makes the hours needless. */
function inOrder(statements: readonly Complaint[]): Complaint[] {
  const timed = statements.some(({ code }) => code === 'onsetAt');
  const rank = ({ code }: Complaint): number =>
    code === 'symptom' ? 0 : (OF_LIMB as readonly string[]).includes(code) ? 1 : code === 'note' ? 3 : 2;
  return statements
    .filter(({ code }) => !(timed && (code === 'hours' || code === 'days')))
    .toSorted((a, b) => rank(a) - rank(b));
}

/** What each limb complains of, the denials of several limbs in one sentence. */
export function complaints(items: readonly ReportItem[]): LetterSentence[] {
  const of = (limb: LimbKey) => items.filter((item) => complaintOf(item)?.limb === limb);
  const statementsOf = (limb: LimbKey): Complaint[] =>
    inOrder(of(limb).flatMap((item) => complaintOf(item)?.statements ?? []));
  const without = LIMBS_TOLD.filter((limb) => {
    const all = statementsOf(limb);
    return all.length > 0 && all.every((one) => one.code === 'symptom' && isDenial(one));
  });
  return [
    ...LIMBS_TOLD.filter((limb) => !without.includes(limb)).flatMap((limb): LetterSentence[] => {
      const statements = statementsOf(limb);
      return statements.length
        ? [{ says: { code: 'complaint', limb, statements }, from: paths(of(limb)) }]
        : [];
    }),
    ...(without.length
      ? [{ says: { code: 'no-complaint' as const, limbs: without }, from: paths(without.flatMap(of)) }]
      : []),
  ];
}

type Background = ContextStatement | HistoryStatement | CirculationStatement;

function backgroundOf({ line }: ReportItem): Background | undefined {
  if (line.code === 'history' || line.code === 'circulation') return line.statement;
  return line.code === 'context' && !isOfLimb(line.statement) ? line.statement : undefined;
}

/** Age comes first, then what else is about the person. */
function personal({ code }: Background): number {
  const at = ['ageBand', 'diabetes', 'smoking'].indexOf(code);
  return at < 0 ? 3 : at;
}

/** What is known about the patient beside the limbs: what matters first, what was denied last. */
export function background(items: readonly ReportItem[]): LetterSentence[] {
  const told = items.filter((item) => backgroundOf(item));
  return (['told', 'denied'] as const).flatMap((which): LetterSentence[] => {
    const own = told.filter(({ weight }) => (weight === 'normal') === (which === 'denied'));
    const statements = own
      .flatMap((item) => backgroundOf(item) ?? [])
      .toSorted((a, b) => personal(a) - personal(b));
    return statements.length
      ? [{ says: { code: 'background', statements, denied: which === 'denied' }, from: paths(own) }]
      : [];
  });
}

function inspected({ line }: ReportItem): readonly InspectionStatement[] {
  return line.code === 'limb-inspection' ? line.statements : [];
}

/** What was seen and touched of one limb: what is not normal in one sentence, and negatives that matter in another. */
export function inspection(items: readonly ReportItem[], limb: LimbKey): LetterSentence[] {
  const own = items.filter(({ at, line }) => at === limb && line.code === 'limb-inspection');
  const groups = [
    own.filter(({ weight }) => weight === 'abnormal' || weight === 'fact'),
    own.filter(({ weight, telling }) => weight === 'normal' && telling),
  ];
  return groups.flatMap((group, i): LetterSentence[] =>
    group.length
      ? [
          {
            says: { code: 'inspection', limb, statements: group.flatMap(inspected), usual: i === 1 },
            from: paths(group),
          },
        ]
      : [],
  );
}

/** Marks on the skin. */
export function marks(items: readonly ReportItem[]): LetterSentence[] {
  const own = items.filter(({ line }) => line.code === 'mark');
  if (!own.length) return [];
  const told = own.flatMap(({ line }) => (line.code === 'mark' ? [line] : []));
  return [{ says: { code: 'marks', marks: told }, from: paths(own) }];
}

const isDone = ({ weight }: ReportItem): boolean => weight !== 'could-not';

/** The bedside tests that were done, a line each. */
export function tests(
  items: readonly ReportItem[],
  which: (item: ReportItem) => boolean = isDone,
): LetterSentence[] {
  return items.flatMap((item): LetterSentence[] => {
    const { line } = item;
    if (line.code !== 'bedside' || !which(item)) return [];
    const { code: _, ...rest } = line;
    return [{ says: { code: 'bedside', line: rest as BedsideLine }, from: item.from }];
  });
}

/** Limbs that could not be looked at, and tests that could not be done. */
export function couldNotLook(items: readonly ReportItem[]): LetterSentence[] {
  const looked = items.filter(
    ({ weight, line }) => weight === 'could-not' && line.code === 'limb-inspection',
  );
  return [
    ...looked.flatMap((item): LetterSentence[] =>
      inspected(item).flatMap((one) =>
        one.code === 'couldNotExamine' && item.at && item.at !== 'trunk'
          ? [{ says: { code: 'could-not-inspect', reason: one.value, limb: item.at }, from: item.from }]
          : [],
      ),
    ),
    ...tests(items, (item) => !isDone(item)),
  ];
}

/** How the trouble began, where the record says so of the patient as a whole, and which teams were called. */
export function onset({ onset: began }: Examination): LetterSentence[] {
  return began ? [{ says: { code: 'onset', onset: began }, from: ['onset'] }] : [];
}

export function calls({ calls: called = [] }: Examination): LetterSentence[] {
  return called.map((call, i) => ({ says: { code: 'call', call }, from: [`calls.${i}`] }));
}
