import type { LimbKey, Place, SkinName } from '../anatomy/index.js';
import type {
  Amendment,
  AmendmentKind,
  MarkKind,
  Onset,
  RecordStatus,
  ScaleId,
} from '../examination/index.js';
import type { FindingId } from '../localisation/index.js';
import type { BodyPart, ReportItem, ReportLine, SiteGroup, Unfelt } from '../report/index.js';
import type { AnatomyWords } from './anatomy.js';
import type { Areas as WholeAreas } from './whole.js';
import { calendarDay, clockTime, sentence } from './phrases.js';
import { render, type Renderings } from './render.js';
import { together } from './terms.js';
import { type Of, without } from './words.js';

/** The words of the report of a finished examination. */
export interface ReportTable {
  readonly title: string;
  readonly noName: string;
  readonly noDate: string;
  /** When it was, where the day alone is known. */
  timeless(day: string): string;
  readonly noExaminer: string;
  readonly examiner: string;
  readonly headings: Of<
    | 'flags'
    | 'conclusion'
    | 'findings'
    | 'pressures'
    | 'tests'
    | 'stages'
    | 'background'
    | 'notExamined'
    | 'method'
    | 'calls'
    | 'amendments'
  >;
  /** In place of a conclusion where no pulse was graded. */
  readonly noConclusion: string;
  readonly trunk: string;
  /** Under the figure: the scale of its numerals. */
  scale(scale: string): string;
  /** How many findings are as usual. */
  normals(count: number): string;
  /** Nothing of a part of the body is out of the ordinary. */
  /** No pulse of a part was felt, or these were not. */
  unfeltAll(parts: string): string;
  unfelt(part: string, sites: string): string;
  readonly nothingMissing: string;
  /** What the flags of a record are worth that this version does not know in full. */
  readonly status: Of<RecordStatus>;
  /** Under the heading of an examination that was entered in error. */
  readonly inError: string;
  readonly amendments: Of<AmendmentKind>;
  /** One amendment; empty where the page did not say who or why. */
  amended(what: string, when: string, by: string, why: string): string;
}

interface Areas extends Omit<WholeAreas, 'anatomy' | 'decimal'> {
  readonly anatomy: AnatomyWords;
  readonly examination: {
    readonly onsets: Readonly<Record<Onset, string>>;
    readonly scales: Readonly<Record<ScaleId, string>>;
  };
  readonly localisation: { finding(finding: FindingId): string };
  readonly marks: { mark(kind: MarkKind, names: readonly SkinName[], note?: string): string };
  readonly whole: { onset(onset: Onset): string };
  list(items: readonly string[]): string;
  /** How the language writes a date, as BCP 47 tag. */
  readonly dates: string;
}

const isLimb = (at: BodyPart): at is LimbKey => at !== 'trunk';

/** The words of a report: every item as a phrase below the part of the body it belongs to, or with its subject. */
export function reportFrom(table: ReportTable, areas: Areas) {
  const { anatomy, list } = areas;
  const named = (at: BodyPart): string => (isLimb(at) ? anatomy.limbs[at] : table.trunk);
  const part = (at: BodyPart): string => sentence(named(at));
  /** A site below a heading that names its side. */
  const site = ({ site: id }: Place): string => anatomy.sites[id];
  const places = (at: BodyPart, all: readonly Place[]): string =>
    list(all.map(isLimb(at) ? site : anatomy.place));

  const phrases: Renderings<ReportLine> = {
    call: ({ call }) => areas.flags.called(call, 'date'),
    onset: ({ onset }) => areas.whole.onset(onset),
    'limb-history': ({ statements }) => statements.map(areas.history.limb).join('; '),
    history: ({ statement }) => areas.history.whole(statement),
    circulation: ({ statement }) => areas.history.circulation(statement),
    context: ({ statement }) => areas.context.said(statement),
    'limb-inspection': ({ statements }) => statements.map(areas.inspection.limb).join('; '),
    site: ({ statements }) => statements.map(areas.map.found).join('; '),
    bedside: (line) => areas.bedside.line(line),
    pressure: ({ statement, unit }) => areas.pressures.said(statement, unit),
    method: ({ statement }) => areas.pressures.method(statement),
    staging: ({ staging }) => areas.staging.said(staging).join('; '),
    delay: ({ finding }) => areas.localisation.finding(finding),
    mark: ({ kind, names, note }) => areas.marks.mark(kind, names, note),
  };
  const phrase = ({ line }: Pick<ReportItem, 'line'>): string => sentence(render(phrases, line));
  const subject = ({ line }: ReportItem): string => {
    switch (line.code) {
      case 'site':
        return sentence(anatomy.place(line.place));
      case 'limb-inspection':
      case 'limb-history':
        return part(line.limb);
      default:
        return '';
    }
  };
  const when = (at: string): string => clockTime(at, areas.dates);

  return together(
    without(table, 'noDate', 'timeless', 'scale', 'unfelt', 'unfeltAll', 'amended', 'amendments', 'trunk'),
    {
      part,
      parts: (all: readonly BodyPart[]): string => list(all.map(named)),
      phrase,
      when,
      /** When the examination was: its own time, else the day that the page gives, of which no time is made. */
      examined: (at: string | undefined, day: string): string => {
        if (at) return when(at);
        const dated = calendarDay(day, areas.dates);
        return dated ? table.timeless(dated) : table.noDate;
      },
      /** The scale of the numerals; empty where there are none. */
      scale: (id: ScaleId): string => (id === 'words' ? '' : table.scale(areas.examination.scales[id])),
      /** Sites of one part, alike ones together: "Popliteal and dorsalis pedis: 0, absent". */
      sites: (at: BodyPart, { places: all, statements }: SiteGroup): { where: string; what: string } => ({
        where: sentence(places(at, all)),
        what: statements.map(areas.map.found).join('; '),
      }),
      /** An item with what it is about, where nothing above it says so. */
      about: (item: ReportItem): string => {
        const of = subject(item);
        return of ? `${of}: ${render(phrases, item.line)}` : phrase(item);
      },
      /** What nobody felt for: whole parts in one sentence, then the sites of others. */
      unfelt: (all: readonly Unfelt[]): string[] => {
        const whole = all.filter((one) => one.all);
        return [
          ...(whole.length ? [table.unfeltAll(list(whole.map(({ at }) => named(at))))] : []),
          ...all
            .filter((one) => !one.all)
            .map(({ at, places: missing }) => table.unfelt(part(at), places(at, missing))),
        ];
      },
      amendment: ({ kind, at, by = '', why = '' }: Amendment): string =>
        table.amended(table.amendments[kind], when(at), by, why),
    },
  );
}
export type ReportWords = ReturnType<typeof reportFrom>;
