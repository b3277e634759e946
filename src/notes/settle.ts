import { isListeningSite, isPulseSite, type Place, SIDES, type Side } from '../anatomy/index.js';
import { CLOSENESS, type Says } from './groups.js';
import type { NoteDoubt, NoteDoubtCode, NoteFinding } from './reading.js';
import type { Claim, Claimed } from './sides.js';
import type { Graded, StrengthRead } from './strength.js';

/** A finding with how closely its words name the site, to tell which of two about one place counts. */
interface Weighed {
  readonly finding: NoteFinding;
  readonly closeness: number;
  readonly rest: boolean;
}

interface WeighedDoubt {
  readonly code: NoteDoubtCode;
  readonly taken: boolean;
  readonly choices: readonly (readonly Weighed[])[];
  readonly spans: NoteDoubt['spans'];
}

type Settled = { readonly sure: Weighed } | { readonly doubt: WeighedDoubt };

/** Which of the findings at one place exclude each other. */
function facet({ part, place, patch }: NoteFinding): string {
  const about =
    part === 'bruits'
      ? 'bruit'
      : 'doppler' in patch
        ? 'doppler'
        : 'thrill' in patch
          ? 'thrill'
          : 'expansile' in patch
            ? 'expansile'
            : 'pulse';
  return `${about} ${place.side} ${place.site}`;
}

const said = ({ patch }: NoteFinding): string => JSON.stringify(patch);

function weighed(
  claim: Omit<Claim, 'says'>,
  patch: object,
  part: NoteFinding['part'],
  spans: NoteDoubt['spans'],
): Weighed[] {
  const { site, side, closeness, rest } = claim;
  if (part === 'bruits' ? !isListeningSite(site) : !isPulseSite(site)) return [];
  return [
    { finding: { part, place: { site, side } as Place, patch, spans } as NoteFinding, closeness, rest },
  ];
}

/** Everything one statement says at its places, as the choices there are: one choice where nothing is in doubt. */
function choicesOf(
  claimed: Claimed,
  claims: readonly Claim[],
  says: Says,
): { code?: NoteDoubtCode; taken: boolean; choices: Weighed[][] } {
  const at = (patch: object, part: NoteFinding['part'] = 'pulses'): Weighed[] =>
    claims
      .filter(({ site, side }, n) => n === claims.findIndex((one) => one.site === site && one.side === side))
      .flatMap((claim) => weighed(claim, patch, part, claimed.spans));
  const graded = (grade: Graded): Weighed[] => at(grade);
  switch (says.what) {
    case 'pulse':
      return {
        ...(says.read.doubt && { code: says.read.doubt }),
        taken: says.read.taken,
        choices: says.read.grades.map(graded),
      };
    case 'bruit':
      return { taken: true, choices: [at({ bruit: says.bruit }, 'bruits')] };
    case 'could-not': {
      const couldNot = at({ couldNotExamine: says.reason });
      if (!says.orAbsent) return { taken: true, choices: [couldNot] };
      return { code: 'could-not', taken: !says.open, choices: [couldNot, at({ grade: 'absent' })] };
    }
    case 'doppler':
      if (says.only) return { code: 'felt', taken: false, choices: [at({ grade: 'absent' })] };
      return { taken: true, choices: says.signal ? [at({ doppler: says.signal })] : [] };
    case 'mark':
      return { taken: true, choices: [at({ [says.mark]: true })] };
    default:
      return { taken: true, choices: [] };
  }
}

function settled(claimed: Claimed): Settled[] {
  const { spans, says, claims, pair, sideless } = claimed;
  const doubt = (code: NoteDoubtCode, choices: readonly (readonly Weighed[])[], taken = false): Settled[] =>
    choices.some((choice) => choice.length) ? [{ doubt: { code, choices, taken, spans } }] : [];
  if (pair) return doubt('side', pairs(claimed, pair));

  // Copies of the other side carry their own saying each.
  const bySaying = new Map<Says, Claim[]>();
  for (const claim of claims) bySaying.set(claim.says, [...(bySaying.get(claim.says) ?? []), claim]);
  const out: Settled[] = [];
  for (const [own, of] of bySaying) {
    const { code, taken, choices } = choicesOf(claimed, of, own);
    if (claimed.blocked || claimed.torn) out.push(...doubt('unclear', choices));
    else if (code) out.push(...doubt(code, choices, taken));
    else out.push(...(choices[0] ?? []).map((sure) => ({ sure })));
  }
  if (sideless.length) {
    const sided = (side: Side): Claim[] =>
      sideless.map((site) => ({ site, side, says, closeness: CLOSENESS.own, rest: false }));
    const sides = [...SIDES.map((side) => sided(side)), SIDES.flatMap((side) => sided(side))];
    out.push(
      ...doubt(
        'side',
        sides.map((of) => choicesOf(claimed, of, says).choices[0] ?? []),
      ),
    );
  }
  return out;
}

/** "DP 2/1" without a word which is which: right then left is the custom, and asked. */
function pairs(claimed: Claimed, [first, second]: readonly [StrengthRead, StrengthRead]): Weighed[][] {
  const sites = [...new Set([...claimed.claims.map(({ site }) => site), ...claimed.sideless])];
  const way = (right: StrengthRead, left: StrengthRead): Weighed[] =>
    sites.flatMap((site) =>
      SIDES.flatMap((side) =>
        weighed(
          { site, side, closeness: CLOSENESS.own, rest: false },
          (side === 'right' ? right : left).grades[0]!,
          'pulses',
          claimed.spans,
        ),
      ),
    );
  return [way(first, second), way(second, first)];
}

/** What was taken out of "all": what is not felt like the others is absent where the others are only said to be felt. */
function excepted(claimed: readonly Claimed[]): Claimed[] {
  return claimed.map((one, at) => {
    if (one.says.what !== 'except') return one;
    const before = claimed.slice(0, at).findLast(({ says }) => says.what === 'pulse');
    if (before?.says.what !== 'pulse') return one;
    const { read } = before.says;
    const grade = read.grades[0]!.grade;
    const says: Says = {
      what: 'pulse',
      read:
        grade === 'absent'
          ? { grades: [{ grade: 'normal' }, { grade: 'reduced' }], doubt: 'strength', taken: true }
          : read.doubt === 'strength' && read.grades[1]?.grade === 'reduced'
            ? { grades: [{ grade: 'absent' }], taken: true }
            : { grades: [{ grade: 'absent' }, { grade: 'reduced' }], doubt: 'felt', taken: false },
    };
    return { ...one, says, claims: one.claims.map((claim) => ({ ...claim, says })) };
  });
}

/** Settles what counts where a place is spoken of more than once, and makes findings and questions of it. */
export function settle(claimed: readonly Claimed[]): {
  readonly findings: NoteFinding[];
  readonly doubts: NoteDoubt[];
} {
  const entries = excepted(claimed).flatMap(settled);
  const byFacet = new Map<string, { readonly entry: number; readonly own: Weighed }[]>();
  entries.forEach((entry, at) => {
    const all = 'sure' in entry ? [entry.sure] : entry.doubt.choices.flat();
    const seen = new Set<string>();
    for (const own of all) {
      const key = facet(own.finding);
      if (seen.has(key)) continue;
      seen.add(key);
      const told = byFacet.get(key);
      if (told) told.push({ entry: at, own });
      else byFacet.set(key, [{ entry: at, own }]);
    }
  });

  /** Places taken out of an entry, since another statement counts there. */
  const dropped = new Map<number, Set<string>>();
  const drop = (entry: number, key: string): void => {
    dropped.set(entry, (dropped.get(entry) ?? new Set()).add(key));
  };
  const clashes: { readonly key: string; readonly entries: number[] }[] = [];
  for (const [key, all] of byFacet) {
    if (all.length < 2) continue;
    const counts: typeof all = [];
    for (const one of all) {
      const rivals = counts.filter(({ entry }) => entry !== one.entry);
      // A side that is not known yet clashes with nothing.
      const open = (entry: number): boolean => {
        const of = entries[entry]!;
        return 'doubt' in of && of.doubt.code === 'side';
      };
      if (open(one.entry)) continue;
      const own = rivals.filter(({ entry }) => !open(entry));
      const says = sayings(entries[one.entry]!, key);
      const again = own.find(
        ({ entry, own: other }) =>
          other.closeness >= one.own.closeness && sayings(entries[entry]!, key) === says,
      );
      if (again) {
        drop(one.entry, key);
        continue;
      }
      const closer = own.find(
        ({ own: other }) => one.own.rest && (!other.rest || other.closeness > one.own.closeness),
      );
      if (closer) {
        drop(one.entry, key);
        continue;
      }
      for (const rival of own) {
        if (rival.own.rest || rival.own.closeness < one.own.closeness) {
          drop(rival.entry, key);
          counts.splice(counts.indexOf(rival), 1);
        }
      }
      counts.push(one);
    }
    if (counts.length < 2) continue;
    if (new Set(counts.map(({ entry }) => sayings(entries[entry]!, key))).size < 2) {
      for (const { entry } of counts.slice(1)) drop(entry, key);
    } else clashes.push({ key, entries: counts.map(({ entry }) => entry) });
  }

  const clashing: NoteDoubt[] = clashes.map(({ key, entries: of }) => {
    const choices = of.map((entry) => findingsAt(entries[entry]!, key).slice(0, 1));
    for (const entry of of) drop(entry, key);
    const distinct = choices.filter(
      (choice, at) => choices.findIndex((other) => other.map(said).join() === choice.map(said).join()) === at,
    );
    return {
      code: 'contradiction',
      choices: distinct,
      taken: false,
      spans: distinct.flat().flatMap(({ spans }) => spans),
    };
  });

  // What is said of all does not count where something open was said of one of them.
  const felt = ({ patch }: NoteFinding): boolean | undefined =>
    'grade' in patch ? patch.grade !== 'absent' : undefined;
  const open = new Map<string, Set<boolean | undefined>>();
  entries.forEach((entry) => {
    if ('sure' in entry || entry.doubt.taken) return;
    for (const { finding } of entry.doubt.choices.flat()) {
      const key = facet(finding);
      open.set(key, (open.get(key) ?? new Set()).add(felt(finding)));
    }
  });
  entries.forEach((entry, at) => {
    const all = 'sure' in entry ? [entry.sure] : entry.doubt.taken ? entry.doubt.choices.flat() : [];
    for (const { finding, closeness } of all) {
      const other = closeness === CLOSENESS.all ? open.get(facet(finding)) : undefined;
      if (other && [...other].some((is) => is !== felt(finding))) drop(at, facet(finding));
    }
  });

  const findings: NoteFinding[] = [];
  const doubts: NoteDoubt[] = [];
  entries.forEach((entry, at) => {
    const out = dropped.get(at);
    const keep = ({ finding }: Weighed): boolean => !out?.has(facet(finding));
    if ('sure' in entry) {
      if (keep(entry.sure)) findings.push(entry.sure.finding);
      return;
    }
    const choices = entry.doubt.choices.map((choice) => choice.filter(keep).map(({ finding }) => finding));
    if (choices.some((choice) => choice.length)) doubts.push({ ...entry.doubt, choices });
  });
  return { findings, doubts: [...doubts, ...clashing] };
}

function findingsAt(entry: Settled, key: string): NoteFinding[] {
  const all = 'sure' in entry ? [entry.sure] : entry.doubt.choices.flat();
  return all.map(({ finding }) => finding).filter((finding) => facet(finding) === key);
}

function sayings(entry: Settled, key: string): string {
  return findingsAt(entry, key).map(said).join();
}
