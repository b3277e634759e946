import {
  type Laterality,
  LIMB_KINDS,
  type Place,
  SIDES,
  type SiteId,
  type SkinName,
} from '../anatomy/index.js';
import type { MarkKind, PressureSite, Reason, TeamCall } from '../examination/index.js';
import type {
  DelayStatement,
  LetterStatement,
  PulseGroup,
  PulseRegion,
  StageStatement,
} from '../letter/index.js';
import type { IndexReading } from '../pressures/index.js';
import type { BedsideLine, PressureStatement } from '../statements/index.js';
import type { Whereabouts } from '../localisation/index.js';
import type { Ground, RedFlag } from '../triage/index.js';
import type { AnatomyWords } from './anatomy.js';
import { sayVerdict } from './pressure-notes.js';
import type { ContextWords } from './context.js';
import type { BedsideWords } from './en/bedside.js';
import type { PressureWords } from './en/pressures.js';
import type { ExaminationWords } from './examination.js';
import type { FlagWords } from './flag-words.js';
import type { HistoryWords } from './history.js';
import type { InspectionWords } from './inspection.js';
import type { LocalisationWords } from './localisation.js';
import type { RuleWords } from './rule.js';
import type { StagingWords } from './staging.js';
import type { LetterTable, Negative, Strength, WholeLimb } from './letter-table.js';
import { paragraph, sentence } from './phrases.js';
import type { Speech } from './speech.js';
import { render, type Renderings } from './render.js';
import { together } from './terms.js';
import { without } from './words.js';

/** The words of map and reading that a letter is made of. */
interface Around {
  readonly anatomy: AnatomyWords;
  readonly examination: ExaminationWords;
  readonly localisation: LocalisationWords;
  readonly map: { when(time: string | undefined): string };
  readonly marks: { mark(kind: MarkKind, names: readonly SkinName[], note?: string): string };
  readonly rule: RuleWords;
}
/** Those around the pulses. */
interface Parts {
  readonly bedside: Pick<BedsideWords, 'line' | 'read' | 'how'>;
  readonly context: ContextWords;
  readonly flags: FlagWords;
  readonly history: HistoryWords;
  readonly inspection: InspectionWords;
  readonly pressures: PressureWords;
  readonly staging: StagingWords;
  readonly whole: { readonly nothing: string };
}

const strength = ({ grade, increased }: PulseGroup): Strength => (increased ? 'increased' : grade);

/** Groups places by what a language says of one side, both sides together where the same sites are meant. */
function bySide(places: readonly Place[]): [Laterality | 'both', SiteId[]][] {
  const on = (side: Laterality): SiteId[] =>
    places.filter((one) => one.side === side).map(({ site }) => site);
  const [midline, right, left] = [on('midline'), on('right'), on('left')];
  const both = right.filter((site) => left.includes(site));
  const rest = (sites: SiteId[]): SiteId[] => sites.filter((site) => !both.includes(site));
  const groups: [Laterality | 'both', SiteId[]][] = [
    ['midline', midline],
    ['both', both],
    ['right', rest(right)],
    ['left', rest(left)],
  ];
  return groups.filter(([, sites]) => sites.length > 0);
}

/** Limbs of both sides together. */
function wholeLimbs(regions: readonly PulseRegion[]): WholeLimb[] {
  return LIMB_KINDS.flatMap((kind): WholeLimb[] => {
    const sides = SIDES.filter((side) => regions.includes(`${side} ${kind}`));
    return sides.length === 2 ? [{ kind, side: 'both' }] : sides.map((side) => ({ kind, side }));
  });
}

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** Makes sentences of the statements of a letter. */
export function letterFrom(table: LetterTable, messages: Around, parts: Parts, speech: Speech) {
  const { anatomy, examination, localisation, map, marks, rule } = messages;
  const { bedside, flags, history, context, inspection, pressures, staging, whole } = parts;
  const { list, decimal, percent } = speech;
  const { says } = table;
  const places = (all: readonly Place[]): string =>
    list(bySide(all).map(([side, sites]) => says.places(side, sites)));
  const pulsesOf = (all: readonly Place[]): string =>
    list(bySide(all).map(([side, sites]) => says.pulsesAt(side, sites)));
  const about = (subject: string, phrases: readonly string[], between = ', '): string =>
    full(`${subject}: ${phrases.join(between)}`);
  const limb = (key: keyof AnatomyWords['limbs']): string => sentence(anatomy.limbs[key]);
  const full = (text: string): string => (/[.?!]$/.test(text) ? sentence(text) : `${sentence(text)}.`);

  const since = ({ sinceOnset }: RedFlag): string =>
    sinceOnset === undefined ? '' : sentence(flags.since(tenth(sinceOnset)));
  const called = (call: TeamCall): string => {
    const of = call.limb ? `${limb(call.limb)}: ` : '';
    return full(`${of}${flags.called(call, 'date')}`);
  };

  type Complaint = Extract<LetterStatement, { code: 'complaint' }>['statements'][number];
  const complaint = (one: Complaint, named: boolean): string => {
    if (one.code === 'severity') return history.severities[one.value];
    if (one.code === 'leg-claudication')
      return one.muscle === 'none'
        ? says.claudicates.none
        : says.claudicates[named ? 'felt' : 'in'](history.muscles[one.muscle]);
    if (one.code === 'arm-tires') return says.claudicates.arm;
    if (one.code === 'arm-does-not-tire') return says.claudicates['no-arm'];
    return history.limb(one as Parameters<typeof history.limb>[0]);
  };
  type Known = Extract<LetterStatement, { code: 'background' }>['statements'][number];
  const CIRCULATION = ['shock', 'blood-pressure', 'heartRate'];
  const HISTORY = ['rhythm', 'operations', 'elsewhere', 'nothing-elsewhere', 'risks', 'no-risks'];
  const known = (one: Known): string => {
    if (one.code === 'smoking') return says.smoker[one.value];
    if (CIRCULATION.includes(one.code)) return history.circulation(one as never);
    return HISTORY.includes(one.code) ? history.whole(one as never) : context.said(one as never);
  };
  const stage = ({ scheme, stage: is, own, why }: StageStatement): string => {
    // Fontaine and Rutherford mean the same; it is said once.
    const meaning = scheme === 'rutherford' ? [] : [staging.meaning(scheme, is)];
    const beside = [...meaning, ...(own ? [why ? says.ownStageBecause(why) : says.ownStage] : [])];
    return `${says.schemes[scheme]} ${is}${beside.length ? ` (${beside.join(', ')})` : ''}`;
  };
  const delay = (one: DelayStatement): string =>
    one.of === 'radio-radial' ? says.radioRadial[one.found] : says.radioFemoral[one.found](one.side);
  const reason = (of: Reason): string => (of === 'other' ? says.otherReason : examination.reasons[of]);

  const whereabouts = ({ above, below }: Whereabouts): string => {
    const [from, to] = [above && pulsesOf([above]), below.length ? pulsesOf(below) : undefined];
    if (to) return from ? says.between.from(from, to) : says.between.fromHeart(to);
    return from ? says.between.beyond(from) : says.between.somewhere;
  };
  /** Hours to one decimal. */
  const tenth = (hours: number): number => Math.round(hours * 10) / 10;
  const ground = (of: Ground): string =>
    flags.ground(of.code === 'hours' ? { ...of, hours: tenth(of.hours) } : of);

  const index = (one: IndexReading): string => {
    const band = pressures.band(one);
    if (one.value === undefined) return band;
    return `${decimal(one.value, 2)}${band && ` (${band})`}`;
  };
  const normalPulses = (count: number, which: 'only' | 'other'): string =>
    count === 1
      ? says.normalPulse[which]
      : says.normalPulses[which](count === 2 ? says.both : says.all(count));

  /** What a test says; what was measured stands in its reading, but for one that is not complete. */
  const tested = (line: BedsideLine): string => {
    const { test, side, reading, note } = line;
    if (reading.verdict === 'incomplete' || note) return bedside.line(line);
    return `${bedside.how[test].name}, ${anatomy.sides[side]}: ${bedside.read(test, reading)}`;
  };
  /** A pressure that is none, with the reason: "right toe (no cuff)". */
  const notMeasured = (one: PressureStatement, unit: 'mmHg' | 'kPa'): string => {
    const whole = pressures.said(one, unit);
    const why = 'value' in one && typeof one.value === 'string' ? pressures.noPressure[one.value] : '';
    return why && whole.endsWith(why) ? `${whole.slice(0, -why.length).trim()} (${why})` : whole;
  };

  /** Pressures site by site: "dorsalis pedis right 146, left 84". */
  const figures = (all: readonly PressureStatement[], unit: 'mmHg' | 'kPa'): string => {
    const bySite = (code: 'pressure' | 'pressure-after'): string[] => {
      const sites = new Map<string, string[]>();
      for (const one of all) {
        if (one.code !== code) continue;
        const { side, site, value } = one;
        const shown = typeof value === 'number' ? pressures.number(value, unit) : pressures.noPressure[value];
        sites.set(site, [...(sites.get(site) ?? []), `${anatomy.sides[side]} ${shown}`]);
      }
      return [...sites].map(
        ([site, sides]) => `${pressures.sites[site as PressureSite]} ${sides.join(', ')}`,
      );
    };
    const [rest, after] = [bySite('pressure'), bySite('pressure-after')];
    const others = all.filter(({ code }) => code !== 'pressure' && code !== 'pressure-after');
    return paragraph([
      rest.length ? says.pressures(unit, rest) : '',
      after.length ? says.pressuresAfter(unit, after) : '',
      others.length ? full(others.map((one) => pressures.said(one, unit)).join(', ')) : '',
    ]);
  };

  const said: Renderings<LetterStatement> = {
    status: ({ status }) => says.status[status],
    flag: ({ flag }) => says.flag(lower(flags.when(flag)), flags.heading(flag)),
    'flag-named': ({ flag, brief }) =>
      brief
        ? full(flags.heading(flag))
        : paragraph([full(`${flags.when(flag)}: ${flags.heading(flag)}`), since(flag)]),
    'more-flags': ({ count }) => says.moreFlags(count),
    'flag-because': ({ flag }) => says.because(list(flag.because.map(ground))),
    'flag-action': ({ flag }) => full(flags.action(flag)),
    'no-flag': () => says.noFlag,
    call: ({ call }) => called(call),
    opening: ({ subject, examinedAt }) => {
      const date = map.when(examinedAt);
      const on = date && says.on(date);
      return subject ? says.opening(subject, on) : says.openingUnnamed(on);
    },
    onset: ({ onset }) => says.onset[onset],
    complaint: ({ limb: key, statements }) => {
      const named = statements.some((one) => one.code === 'symptom' && one.value === 'claudication');
      return about(
        limb(key),
        statements.map((one) => complaint(one, named)),
      );
    },
    'no-complaint': ({ limbs }) => says.noComplaint(wholeLimbs(limbs)),
    background: ({ statements }) => full(statements.map(known).join('; ')),
    'all-pulses': ({ regions }) => {
      const limbs = wholeLimbs(regions);
      if (!limbs.length) return says.aortaNormal;
      return says.allPulses(list(limbs.map(says.wholeLimb)), regions.includes('trunk'));
    },
    'normal-places': ({ places: at }) => says.normalPlaces(pulsesOf(at), at.length),
    pulses: ({ region, groups }) =>
      says.pulses(
        region,
        groups.map((group) => ({ strength: strength(group), sites: group.sites })),
      ),
    'normal-pulses': ({ count, others }) => normalPulses(count, others ? 'other' : 'only'),
    thrill: ({ places: at }) => says.thrill(places(at)),
    expansile: ({ places: at }) => says.expansile(places(at)),
    doppler: ({ signal, places: at }) => says.doppler(examination.dopplers[signal], places(at)),
    bruit: ({ bruit, places: at }) => says.bruit[bruit](places(at)),
    delay: ({ delay: one }) => delay(one),
    'place-note': ({ place, note }) => says.note(sentence(anatomy.place(place)), note),
    inspection: ({ limb: key, statements, usual }) =>
      usual
        ? about(
            limb(key),
            statements.map((one) => says.negatives[one.code as Negative]),
          )
        : says.inspection(limb(key), statements.map(inspection.limb)),
    marks: ({ marks: all }) =>
      says.marks(
        // A mark is told as "left forefoot: ulcer"; in a list a comma parts them.
        all.map(({ kind, names, note }) => marks.mark(kind, names, note).replace(':', ',')),
      ),
    bedside: ({ line }) => tested(line),
    index: ({ kind, readings }) =>
      about(
        pressures.kinds[kind],
        readings.map((one) => `${anatomy.sides[one.side]} ${index(one)}`),
        '; ',
      ),
    pressures: ({ statements, unit, missing }) =>
      missing ? says.notMeasured(statements.map((one) => notMeasured(one, unit))) : figures(statements, unit),
    methods: ({ methods: all }) => full(all.map(pressures.method).join('; ')),
    verdict: ({ verdict, unit }) => sayVerdict(pressures, verdict, unit),
    stage: ({ limb: key, stages }) => about(limb(key), stages.map(stage)),
    conclusion: ({ where, firm, brief }) => {
      const what = says.suspects[where.pulse];
      const between = whereabouts(where);
      return brief
        ? says.suggests(what, between, percent(where.probability))
        : says.conclusion(
            what,
            between,
            [says.probability(percent(where.probability)), ...(firm ? [says.firm[firm]] : [])].join(', '),
          );
    },
    voices: ({ voices }) => {
      const { claim, why } = localisation.voices(voices);
      return paragraph([claim, why]);
    },
    everywhere: ({ lead }) => full(rule.lead(lead)),
    rule: ({ lead }) => says.byRule(rule.lead(lead)),
    contradiction: ({ contradiction }) => rule.contradiction(contradiction),
    impossible: ({ impossible }) => localisation.impossible(impossible),
    nature: ({ nature: { nature, probability } }) =>
      says.nature(localisation.natures[nature], percent(probability)),
    'no-lesion': () => says.noLesion,
    'could-not': ({ act, reason: of, places: at }) =>
      says[act === 'feel' ? 'couldNotFeel' : 'couldNotListen'](places(at), reason(of)),
    'could-not-inspect': ({ limb: key, reason: of }) => says.couldNotInspect(limb(key), reason(of)),
    'unread-places': ({ places: at }) => says.unreadPlaces(places(at)),
    'other-pulses-not-examined': ({ some }) => says.otherPulses[some ? 'some' : 'all'],
    'later-entries': ({ count }) => examination.unknownEntries(count),
    'nothing-abnormal': () => says.nothingAbnormal,
    'nothing-recorded': () => whole.nothing,
    caution: () => says.caution,
    signed: ({ examiner }) => says.signed(examiner),
  };
  return together(without(table, 'says'), {
    /** One sentence. */
    said: (statement: LetterStatement): string => render(said, statement),
  });
}
export type LetterWords = ReturnType<typeof letterFrom>;
