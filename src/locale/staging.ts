import type { LimbKey, Side } from '../anatomy/index.js';
import type {
  AcuteClass,
  FontaineStage,
  Overrule,
  RutherfordCategory,
  Staging,
  WifiGrade,
  WifiStage,
} from '../examination/index.js';
import { type NoteCode, RUTHERFORD_GRADES, type WifiExclusion, type WifiRisk } from '../staging/index.js';
import { sentence } from './phrases.js';
import { together } from './terms.js';
import { type Of, without } from './words.js';

/** What each stage of a scheme means. */
interface Meanings {
  readonly acute: Of<AcuteClass>;
  readonly fontaine: Of<FontaineStage>;
  readonly rutherford: Of<RutherfordCategory>;
  readonly wound: Of<WifiGrade>;
  /** Ischaemia and foot infection are graded in the same words. */
  readonly degrees: Of<WifiGrade>;
  readonly wifi: Of<WifiStage>;
}
/** What can be staged. */
export type SchemeId = Exclude<keyof Meanings, 'degrees'> | 'ischaemia' | 'infection';
type Stage = string | number;

/** The words of the stages. */
export interface StagingTable {
  readonly title: string;
  readonly schemes: Of<SchemeId>;
  readonly meanings: Meanings;
  readonly notes: Of<NoteCode>;
  /** Why the wound tables do not apply. */
  readonly excluded: Of<WifiExclusion>;
  readonly risks: Of<WifiRisk>;
  readonly acuteTitle: string;
  readonly grades: string;
  readonly wifiTitle: string;
  /** The grade that goes with a Rutherford category. */
  grade(roman: string): string;
  readonly nothing: string;
  /** In place of all stages where the record they follow from cannot be read. */
  readonly unread: string;
  /** Several as alternatives. */
  or(items: readonly string[]): string;
  /** The classes that are open, from the least to the most, each with its meaning. */
  between(least: string, most: string): string;
  readonly notAcute: string;
  readonly acuteUnknown: string;
  /** The hours within which flow is to be restored; the first is absent where there is none. */
  window(from: number | undefined, to: number): string;
  /** In place of these hours where nothing can be restored. */
  readonly noWindow: string;
  beside(what: string): string;
  readonly objective: Of<'met' | 'not-met' | 'not-measured'>;
  readonly differ: string;
  from(what: string): string;
  risk(risk: string): string;
  benefit(benefit: string): string;
  /** Scheme and edition, shown with the stage. */
  readonly edition: string;
  readonly set: string;
  setTo(scheme: string): string;
  readonly asDerived: string;
  readonly why: string;
  /** A stage that the clinician set, with what was derived, and the reason. */
  readonly overrule: {
    to(stage: string, derived: string): string;
    derived(stage: Stage): string;
    readonly nothing: string;
    because(why: string): string;
  };
  /** The same, to the clinician. */
  readonly yours: {
    to(stage: string, derived: string): string;
    derived(stage: string): string;
    readonly nothing: string;
  };
}

/** What other areas of a language lend to it. */
interface Lent {
  readonly anatomy: { readonly limbs: Readonly<Record<LimbKey, string>> };
  list(items: readonly string[]): string;
}

/** More stages than these are listed without their meanings. */
const MEANT_AT_MOST = 2;

/** Every stage that the clinician set, limb by limb. */
function overruled({ leg, arm }: Staging): { limb: LimbKey; scheme: SchemeId; set: Overrule<Stage> }[] {
  return Object.entries({ leg, arm }).flatMap(([kind, sided]) =>
    (['right', 'left'] as const satisfies readonly Side[]).flatMap((side) =>
      Object.entries(sided?.[side] ?? {}).flatMap(([scheme, set]) =>
        set
          ? [
              {
                limb: `${side} ${kind as 'leg' | 'arm'}` as const,
                scheme: scheme as SchemeId,
                set: set as Overrule<Stage>,
              },
            ]
          : [],
      ),
    ),
  );
}

/** The words of the stages, and of what is said of them. */
export function stagingFrom(table: StagingTable, { anatomy, list }: Lent) {
  const { overrule, yours } = table;
  const meaning = (scheme: SchemeId, value: Stage): string => {
    const of = scheme === 'ischaemia' || scheme === 'infection' ? 'degrees' : scheme;
    return (table.meanings[of] as Readonly<Record<Stage, string>>)[value] ?? '';
  };
  const stage = (scheme: SchemeId, value: Stage): string => {
    const roman =
      scheme === 'rutherford' ? ` (${table.grade(RUTHERFORD_GRADES[value as RutherfordCategory])})` : '';
    return `${value}${roman}, ${meaning(scheme, value)}`;
  };
  const classed = (value: AcuteClass): string => `${value} (${table.meanings.acute[value]})`;
  const set = (scheme: SchemeId, { stage: value, derived, why }: Overrule<Stage>): string => {
    const beside = derived === undefined ? overrule.nothing : overrule.derived(derived);
    return `${overrule.to(stage(scheme, value), beside)}${why ? overrule.because(why) : ''}`;
  };
  return together(without(table, 'meanings', 'grade', 'or', 'window', 'noWindow'), {
    meaning,
    /** A stage as one says it: "IIb, immediately threatened". */
    stage,
    open: (scheme: SchemeId, candidates: readonly Stage[]): string =>
      [
        table.or(candidates.map(String)),
        ...(candidates.length > MEANT_AT_MOST
          ? []
          : [table.or(candidates.map((one) => meaning(scheme, one)))]),
      ].join(': '),
    between: (atLeast: AcuteClass, atMost: AcuteClass): string =>
      table.between(classed(atLeast), classed(atMost)),
    /** The hours within which flow is to be restored; none for an irreversible limb. */
    timing: (hours: readonly [from: number, to: number] | undefined): string =>
      hours ? table.window(hours[0] || undefined, hours[1]) : table.noWindow,
    beside: (phrases: readonly string[]): string => table.beside(list(phrases)),
    from: (phrases: readonly string[]): string => table.from(list(phrases)),
    risk: (of: WifiRisk): string => table.risk(table.risks[of]),
    benefit: (of: WifiRisk): string => table.benefit(table.risks[of]),
    overrule: set,
    yours: (value: string, derived: string | undefined): string =>
      yours.to(value, derived === undefined ? yours.nothing : yours.derived(derived)),
    sentence,
    /** Every stage the clinician set, in phrases. */
    said: (staging: Staging): string[] =>
      // A later version may stage more.
      overruled(staging)
        .filter(({ scheme }) => Object.keys(table.schemes).includes(scheme))
        .map(
          (one) => `${anatomy.limbs[one.limb]}, ${table.schemes[one.scheme]}: ${set(one.scheme, one.set)}`,
        ),
  });
}
export type StagingWords = ReturnType<typeof stagingFrom>;
