import { FLAG_CODES, type RedFlag } from './flag.js';
import { urgencyRank } from './urgency.js';

/** What became of the flags with an edit: the one thing to tell. */
export interface FlagChange {
  readonly code: 'raised' | 'worsened' | 'eased' | 'withdrawn';
  /** The flag as it stands now, or as it stood. */
  readonly flag: RedFlag;
}

type Flags = readonly RedFlag[];

const subjectOf = ({ limb }: RedFlag): string => (limb ? `${limb.side} ${limb.kind}` : '');
/** Identifies a flag: what it warns of, and where. */
export const flagKey = (flag: RedFlag): string => `${flag.code} ${subjectOf(flag)}`;

/** Negative when the first is the worse. */
const worseFirst = (a: RedFlag, b: RedFlag): number =>
  urgencyRank(b.urgency) - urgencyRank(a.urgency) || FLAG_CODES.indexOf(a.code) - FLAG_CODES.indexOf(b.code);

/** The changes of one limb, or of the flags that belong to none. */
function changesOf(before: Flags, after: Flags): FlagChange[] {
  const was = new Map(before.map((flag) => [flagKey(flag), flag]));
  const is = new Map(after.map((flag) => [flagKey(flag), flag]));
  const [worst] = [...before].sort(worseFirst);
  const fresh = after.filter((flag) => !was.has(flagKey(flag)));
  const gone = before.filter((flag) => !is.has(flagKey(flag)));
  return [
    ...fresh.map((flag): FlagChange => ({
      code: worst && worseFirst(flag, worst) < 0 ? 'worsened' : 'raised',
      flag,
    })),
    ...after.flatMap((flag): FlagChange[] => {
      const old = was.get(flagKey(flag));
      const more = old ? urgencyRank(flag.urgency) - urgencyRank(old.urgency) : 0;
      return more ? [{ code: more > 0 ? 'worsened' : 'eased', flag }] : [];
    }),
    ...gone.map((flag): FlagChange => ({ code: 'withdrawn', flag })),
  ];
}

/**
 * The change to tell when flags become others: the worst that was raised or worsened, else the worst that was eased or
 * withdrawn; `undefined` when the same flags stand with the same urgency. A flag that takes the place of a milder one of the
 * same limb has worsened.
 */
export function flagChange(before: Flags, after: Flags): FlagChange | undefined {
  const subjects = [...new Set([...before, ...after].map(subjectOf))];
  const changes = subjects.flatMap((subject) => {
    const of = (flags: Flags): Flags => flags.filter((flag) => subjectOf(flag) === subject);
    return changesOf(of(before), of(after));
  });
  const up = ({ code }: FlagChange): boolean => code === 'raised' || code === 'worsened';
  return changes.sort((a, b) => Number(up(b)) - Number(up(a)) || worseFirst(a.flag, b.flag))[0];
}
