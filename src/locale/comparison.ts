import type { Verdict } from '../bedside/index.js';
import type { Change, ChangeWeight, Comparison } from '../comparison/index.js';
import type { Place, Side } from '../anatomy/index.js';
import type { RedFlag } from '../triage/index.js';
import type { AnatomyWords } from './anatomy.js';
import type { ExaminationWords } from './examination.js';
import type { StagingWords } from './staging.js';
import { sentence } from './phrases.js';
import { render, type Renderings } from './render.js';
import type { Of } from './words.js';

/** The words in which a language compares two visits. */
export interface ComparisonTable {
  readonly title: string;
  /** Title with the date of the earlier visit. */
  since(when: string): string;
  readonly weights: Of<ChangeWeight>;
  /** Under the heading of what may be scatter. */
  readonly scatter: string;
  /** A finding now, and what it was. */
  was(what: string, now: string, before: string): string;
  pulse(place: string): string;
  doppler(place: string): string;
  bruit(place: string): string;
  graft(artery: string): string;
  readonly graftPulses: Of<'present' | 'absent'>;
  readonly index: string;
  toe(limb: string): string;
  distance(limb: string): string;
  metres(count: string): string;
  readonly verdicts: Of<Exclude<Verdict, 'not-done' | 'incomplete'>>;
  /** A red flag that is new, more urgent, less urgent, or not raised by what was found this time. */
  readonly flags: Readonly<Record<'raised' | 'worsened' | 'eased' | 'gone', (heading: string) => string>>;
  notNow(places: string): string;
  notBefore(count: number): string;
  same(count: number): string;
  readonly nothing: string;
  readonly unread: string;
}

/** The areas of a language that a comparison is made of. */
interface Areas {
  readonly anatomy: Pick<AnatomyWords, 'place' | 'vessel' | 'limbs' | 'sides'>;
  readonly examination: Pick<ExaminationWords, 'grades' | 'dopplers' | 'bruits'>;
  readonly bedside: { readonly how: Readonly<Record<string, { readonly name: string }>> };
  readonly staging: Pick<StagingWords, 'schemes' | 'stage'>;
  readonly flags: { heading(flag: RedFlag): string };
  readonly decimal: (value: number, digits?: number) => string;
  readonly list: (parts: readonly string[]) => string;
}

const decided = (verdict: Verdict): Exclude<Verdict, 'not-done' | 'incomplete'> =>
  verdict === 'not-done' || verdict === 'incomplete' ? 'normal' : verdict;

/** Says what changed between two visits: one builder for every language. */
export function comparisonFrom(table: ComparisonTable, areas: Areas) {
  const { anatomy, examination, bedside, staging, flags, decimal, list } = areas;
  const ofSide = (name: string, side: Side): string => `${name}, ${anatomy.sides[side]}`;
  const says: Renderings<Change> = {
    pulse: ({ place, from, to }) =>
      table.was(table.pulse(anatomy.place(place)), examination.grades[to], examination.grades[from]),
    doppler: ({ place, from, to }) =>
      table.was(table.doppler(anatomy.place(place)), examination.dopplers[to], examination.dopplers[from]),
    bruit: ({ place, from, to }) =>
      table.was(table.bruit(anatomy.place(place)), examination.bruits[to], examination.bruits[from]),
    'graft-pulse': ({ artery, side, from, to }) =>
      table.was(
        table.graft(anatomy.vessel({ artery, side })),
        table.graftPulses[to],
        table.graftPulses[from],
      ),
    index: ({ side, from, to, by }) =>
      table.was(
        ofSide(table.index, side),
        decimal(to, 2),
        `${decimal(from, 2)} (${by < 0 ? '−' : '+'}${decimal(Math.abs(by), 2)})`,
      ),
    'toe-pressure': ({ side, from, to }) =>
      table.was(table.toe(anatomy.limbs[`${side} leg`]), `${decimal(to)} mmHg`, `${decimal(from)} mmHg`),
    distance: ({ side, from, to }) =>
      table.was(
        table.distance(anatomy.limbs[`${side} leg`]),
        table.metres(decimal(to)),
        table.metres(decimal(from)),
      ),
    bedside: ({ test, side, from, to }) =>
      table.was(
        ofSide(bedside.how[test]!.name, side),
        table.verdicts[decided(to)],
        table.verdicts[decided(from)],
      ),
    stage: (change) => {
      const { scheme, limb, from, to } = change;
      return table.was(
        `${anatomy.limbs[`${limb.side} ${limb.kind}`]}, ${staging.schemes[scheme]}`,
        staging.stage(scheme, to),
        staging.stage(scheme, from),
      );
    },
    flag: ({ flag, from, to, way }) => {
      const heading = flags.heading(flag);
      if (to === 'none') return table.flags.gone(heading);
      if (from === 'none') return table.flags.raised(heading);
      return table.flags[way === 'worse' ? 'worsened' : 'eased'](heading);
    },
  };
  return {
    /** Heads the comparison; `when` is empty where the earlier visit has no date. */
    title: (when: string): string => (when ? table.since(when) : table.title),
    weight: (weight: ChangeWeight): string => table.weights[weight],
    get scatter(): string {
      return table.scatter;
    },
    change: (change: Change): string => {
      const said = sentence(render(says, change));
      return /[.?!]$/.test(said) ? said : `${said}.`;
    },
    /** What nothing is claimed of, and what was found alike. */
    rest: ({ changes, notExaminedNow, notExaminedBefore, same }: Comparison): string[] => [
      ...(changes.length ? [] : [table.nothing]),
      ...(notExaminedNow.length
        ? [table.notNow(list(notExaminedNow.map((place: Place) => anatomy.place(place))))]
        : []),
      ...(notExaminedBefore.length ? [table.notBefore(notExaminedBefore.length)] : []),
      ...(same ? [table.same(same)] : []),
    ],
    get unread(): string {
      return table.unread;
    },
  };
}
export type ComparisonWords = ReturnType<typeof comparisonFrom>;
