import type { LimbKey } from '../anatomy/index.js';
import type { CalledTeam, TeamCall } from '../examination/index.js';
import type { MissingCode } from '../staging/index.js';
import type {
  FlagChange,
  FlagClass,
  FlagClock,
  FlagCode,
  Ground,
  QuestionCode,
  RedFlag,
  StagedLimb,
  Urgency,
} from '../triage/index.js';
import type { Abbreviation } from './first-use.js';
import { clockTime, sentence, timeOfDay } from './phrases.js';
import { say, together } from './terms.js';
import { type Of, without } from './words.js';

/** Flags that ask for the very act of another flag. */
const SAME_ACT = {
  'aneurysm-with-acute-limb': 'acute-limb',
  'popliteal-aneurysm-acute': 'acute-limb',
  'acute-limb-irreversible': 'acute-limb',
  'acute-limb-threatened': 'acute-limb',
  'fixed-mottling': 'acute-limb',
  'access-thrombosed': 'access-steal',
  'threatening-pressure': 'perfusion-poor',
} as const satisfies Partial<Record<FlagCode, FlagCode>>;
type ActCode = Exclude<FlagCode, keyof typeof SAME_ACT>;

/** Flags whose heading names the acute class: those that say the limb is threatened. */
const NAMES_CLASS: readonly FlagCode[] = ['acute-limb-threatened', 'acute-limb-irreversible'];

/** The words of the red flags. */
export interface FlagTable {
  /** What is not yet recorded, within a sentence. */
  readonly missing: Of<MissingCode>;
  /** What to ask or examine next. */
  readonly questions: Of<QuestionCode>;
  readonly urgencies: Of<Urgency>;
  /** When a flag is to be seen where working days are counted. */
  workingDays(days: number): string;
  /** The clock behind an urgency of days. */
  target(inHospital: number, atHome: number): string;
  /** What each flag warns of. */
  readonly names: Of<FlagCode>;
  readonly actions: Of<ActCode>;
  /** Whom one calls, as it stands first in a sentence. */
  readonly teams: Of<CalledTeam>;
  called(team: string, time: string, whom: string | undefined): string;
  stillMissing(what: string): string;
  /** The acute class, and one that is open. */
  classIs(rutherford: string): string;
  classOpen(rutherford: string): string;
  /** The hours within which flow is to be restored; the first is absent where there is none. */
  window(from: number | undefined, to: number): string;
  since(hours: string): string;
  /** Written out where they stand first within a block. */
  readonly abbreviations: Of<'ankleIndex' | 'toeIndex' | 'oxygen', Abbreviation>;
  readonly title: string;
  /** In place of the flags of a record that cannot be read. */
  readonly unread: string;
  /** How many entries of a later version the flags could not weigh. */
  unchecked(count: number): string;
  /** The mark beside every verdict, and a source as it is cited. */
  readonly sources: string;
  cite(source: string): string;
  readonly caution: string;
}

/** The words of the line in which the worst flag stands, and of what it opens. */
export interface FlagBarTable {
  /** What each flag warns of where there is room for a line on a phone. */
  readonly names: Of<FlagCode>;
  /** Spoken when the flags change. */
  readonly changed: Of<FlagChange['code']>;
  /** Which of several flags this is. */
  place(at: number, of: number): string;
  days(days: number): string;
  /** Time gone since the onset: by the clock, or up to an examination that is over. */
  readonly until: Readonly<Record<'now' | 'examination', (time: string) => string>>;
  readonly callNow: string;
  readonly call: string;
  /** The button that notes a call, its time, and the button that takes it back. */
  readonly noteCall: string;
  readonly callTime: string;
  readonly removeCall: string;
  readonly openPathway: string;
  /** The button that dials: whom, and the number. */
  callWhom(whom: string | undefined, telephone: string): string;
  /** The link to a page on which it is written whom to call. */
  pageOf(whom: string | undefined): string;
  /** Whose pathway decides. */
  byPathway(name: string): string;
  readonly asks: string;
  /** A question that stands before there is a flag. */
  readonly open: string;
  openFor(limb: string | undefined): string;
  /** What more is asked of the onset. */
  readonly openMore: string;
}

type FlowTarget = Extract<FlagClock, { readonly code: 'days-to-flow' }>;

/** What other areas of a language lend to the words of the flags. */
interface Lent {
  readonly anatomy: { readonly limbs: Readonly<Record<LimbKey, string>> };
  groundWords(ground: Ground): string;
  list(items: readonly string[]): string;
  /** Two ends of a range: "IIa to IIb". */
  range(from: string, to: string): string;
  decimal(value: number): string;
  /** How the language writes a date, as BCP 47 tag. */
  readonly dates: string;
}

const classOf = ({ atLeast, atMost }: FlagClass, { range }: Pick<Lent, 'range'>): string =>
  atLeast === atMost ? atLeast : range(atLeast, atMost);
/** The class of a flag whose heading names it. */
const namedClass = ({ code, class: open }: RedFlag): FlagClass | undefined =>
  NAMES_CLASS.includes(code) ? open : undefined;
const limbName = (limb: StagedLimb, { limbs }: Lent['anatomy']): string => limbs[`${limb.side} ${limb.kind}`];

/** From so many hours on, one speaks of days. */
const HOURS_AS_DAYS = 48;

/** The words of the line of the worst flag. */
export function flagBarFrom(table: FlagBarTable, lent: Pick<Lent, 'anatomy' | 'range'>) {
  const large = (limb: StagedLimb): string => sentence(limbName(limb, lent.anatomy));
  return together(without(table, 'names', 'changed', 'days', 'until', 'openFor'), {
    /** A flag in few words, the limb first. */
    short: (flag: RedFlag): string => {
      const name = table.names[flag.code];
      const open = namedClass(flag);
      return `${flag.limb ? `${large(flag.limb)}: ${name}` : sentence(name)}${open ? ` (${classOf(open, lent)})` : ''}`;
    },
    changed: (code: FlagChange['code'], heading: string): string => `${table.changed[code]}: ${heading}.`,
    elapsed: (hours: number, minutes: number, end: 'now' | 'examination'): string =>
      table.until[end](
        hours >= HOURS_AS_DAYS
          ? table.days(Math.floor(hours / 24))
          : `${hours} h${minutes ? ` ${minutes} min` : ''}`,
      ),
    openFor: (limb: StagedLimb | undefined): string => table.openFor(limb && large(limb)),
  });
}
export type FlagBarWords = ReturnType<typeof flagBarFrom>;

/** The words of the red flags, and of their bar. */
export function flagWordsFrom(table: FlagTable, bar: FlagBarWords, lent: Lent) {
  const words = without(
    table,
    'workingDays',
    'target',
    'names',
    'actions',
    'called',
    'stillMissing',
    'classIs',
    'classOpen',
    'window',
    'since',
  );
  const rutherford = (open: FlagClass): string => `Rutherford ${classOf(open, lent)}`;
  return together(words, {
    when: ({ clock, urgency }: RedFlag): string =>
      clock?.code === 'working-days' ? table.workingDays(clock.days) : words.urgencies[urgency],
    target: ({ inHospital, atHome }: FlowTarget): string => table.target(inHospital, atHome),
    heading: (flag: RedFlag): string => {
      const open = namedClass(flag);
      const name = `${table.names[flag.code]}${open ? ` (${rutherford(open)})` : ''}`;
      if (!flag.limb) return sentence(name);
      const limb = limbName(flag.limb, lent.anatomy);
      // The trade names the disease first, anyone else the limb.
      return say(`${name}: ${limb}`, `${sentence(limb)}: ${name}`);
    },
    action: ({ code }: RedFlag): string =>
      table.actions[code in SAME_ACT ? SAME_ACT[code as keyof typeof SAME_ACT] : (code as ActCode)],
    /** A team that was called, by its time alone or with its date. */
    called: ({ team, at, whom }: TeamCall, by: 'time' | 'date'): string =>
      table.called(table.teams[team], (by === 'time' ? timeOfDay : clockTime)(at, lent.dates), whom),
    ground: lent.groundWords,
    /** What raised the flag, in one sentence. */
    because: (flag: RedFlag): string => `${sentence(lent.list(flag.because.map(lent.groundWords)))}.`,
    stillMissing: (codes: readonly MissingCode[]): string =>
      table.stillMissing(lent.list(codes.map((code) => words.missing[code]))),
    ask: (codes: readonly QuestionCode[]): string => codes.map((code) => words.questions[code]).join(' '),
    /** The acute class that is open. */
    classOpen: (open: FlagClass): string =>
      table[open.atLeast === open.atMost ? 'classIs' : 'classOpen'](rutherford(open)),
    hours: ([from, to]: readonly [number, number]): string => table.window(from || undefined, to),
    since: (hours: number): string => table.since(lent.decimal(hours)),
    bar,
  });
}
export type FlagWords = ReturnType<typeof flagWordsFrom>;
