import { type Examination, isEmptyRecord, statusOf } from '../examination/index.js';
import { itemsOf, type Report, type ReportItem, reportOf } from '../report/index.js';
import type { RedFlag } from '../triage/index.js';
import { conclusions, stages } from './conclusion.js';
import { groundPaths } from './grounds.js';
import { LIMBS_TOLD, REGIONS_TOLD } from './limbs.js';
import { couldNotMeasure, figures, indices, methods, verdicts } from './measured.js';
import {
  abnormalPulses,
  bruits,
  couldNot,
  countedNormals,
  delays,
  feltBeside,
  isAffected,
  normalPlaces,
  notExamined,
  placeNotes,
  regionPulses,
  unreadPlaces,
  wholeRegions,
} from './pulses.js';
import { recordedPaths } from './recorded.js';
import { background, calls, complaints, couldNotLook, inspection, marks, onset, tests } from './told.js';
import type {
  LetterContext,
  LetterLength,
  LetterPart,
  LetterPartId,
  LetterSentence,
  LetterStatement,
  PulseRegion,
} from './types.js';

/** A record with what was made of it. */
interface Read {
  readonly examination: Examination;
  readonly context: LetterContext;
  readonly report: Report;
  readonly items: readonly ReportItem[];
}

type Sentences = readonly LetterSentence[];
const part = (id: LetterPartId, sentences: Sentences, limb?: PulseRegion): LetterPart => ({
  id,
  ...(limb && { limb }),
  sentences,
});

/** The findings that raised a flag. */
function flagPaths({ examination }: Read, { because, limb }: RedFlag) {
  return recordedPaths(
    examination,
    because.flatMap((ground) => groundPaths(examination, ground, limb)),
  );
}

const flagged = (read: Read, says: (flag: RedFlag) => LetterStatement): LetterSentence[] =>
  read.report.triage.flags.map((flag) => ({ says: says(flag), from: flagPaths(read, flag) }));

/** Flags, each with what it asks for. */
function warnings(read: Read, because: boolean): LetterSentence[] {
  return read.report.triage.flags.flatMap((flag): LetterSentence[] => {
    const from = flagPaths(read, flag);
    return [
      { says: { code: 'flag', flag }, from },
      { says: { code: 'flag-action', flag }, from },
      ...(because ? [{ says: { code: 'flag-because' as const, flag }, from }] : []),
    ];
  });
}

/** So many flags are named in one line. */
const IN_A_LINE = 2;

/** The gravest flags by name, and how many more there are. */
function named(read: Read): LetterSentence[] {
  const all = flagged(read, (flag) => ({ code: 'flag-named', flag, brief: true }));
  const rest = all.slice(IN_A_LINE);
  return [
    ...all.slice(0, IN_A_LINE),
    ...(rest.length
      ? [
          {
            says: { code: 'more-flags' as const, count: rest.length },
            from: [...new Set(rest.flatMap(({ from }) => from))],
          },
        ]
      : []),
  ];
}

/** Stages as they stand in a line: how acute, else how far. */
function stagesInLine(sentences: Sentences): LetterSentence[] {
  return sentences.flatMap(({ says, from }): LetterSentence[] => {
    if (says.code !== 'stage') return [];
    const told = says.stages.filter(({ scheme }) => scheme === 'acute' || scheme === 'fontaine').slice(0, 1);
    return told.length ? [{ says: { ...says, stages: told }, from }] : [];
  });
}

/** How the record stands, before everything else. */
function status({ examination }: Read): LetterPart[] {
  const is = statusOf(examination);
  if (is !== 'entered-in-error' && is !== 'preliminary') return [];
  const from = recordedPaths(examination, [is === 'preliminary' ? 'status' : 'amendments']);
  return [part('status', [{ says: { code: 'status', status: is }, from }])];
}

const isAbnormal = ({ weight }: ReportItem): boolean => weight === 'abnormal';

/** Findings on a limb that are not as usual. */
function exceptions({ examination, items }: Read): LetterSentence[] {
  const abnormal = items.filter(isAbnormal);
  return [
    ...abnormalPulses(examination),
    ...REGIONS_TOLD.flatMap((region) => feltBeside(examination, region)),
    ...bruits(examination, REGIONS_TOLD, ['systolic', 'continuous']),
    ...delays(examination).filter(({ says }) => says.code === 'delay' && says.delay.found !== 'none'),
    ...LIMBS_TOLD.flatMap((limb) =>
      inspection(
        items.filter(({ weight }) => weight !== 'normal'),
        limb,
      ),
    ),
    ...marks(abnormal),
  ];
}

function measured({ examination, report }: Read, which: 'all' | 'abnormal'): LetterSentence[] {
  return [...indices(examination, report.pressures), ...verdicts(examination, report.pressures, which)];
}

function missing({ examination, items, report: { unchecked: later } }: Read): LetterSentence[] {
  return [
    ...couldNot(examination),
    ...REGIONS_TOLD.flatMap((of) => placeNotes(examination, of, 'could-not')),
    ...couldNotLook(items),
    ...couldNotMeasure(examination, items),
    ...unreadPlaces(examination),
    ...(later ? [{ says: { code: 'later-entries' as const, count: later }, from: [] }] : []),
    ...notExamined(examination),
  ];
}

const caution: LetterSentence = { says: { code: 'caution' }, from: [] };

function opening({ examination: { examinedAt }, context: { subject } }: Read): LetterSentence[] {
  if (!examinedAt && !subject) return [];
  return [
    {
      says: { code: 'opening', ...(subject && { subject }), ...(examinedAt && { examinedAt }) },
      from: examinedAt ? ['examinedAt'] : [],
    },
  ];
}

function signed({ examination: { examiner } }: Read): LetterSentence[] {
  return examiner ? [{ says: { code: 'signed', examiner }, from: ['examiner'] }] : [];
}

/** One limb or region, proximal to distal. */
function region({ examination, items }: Read, of: PulseRegion): LetterPart {
  const isLimb = LIMBS_TOLD.find((limb) => limb === of);
  return part(
    'findings',
    [
      ...regionPulses(examination, of),
      ...feltBeside(examination, of),
      ...bruits(examination, [of], ['systolic', 'continuous']),
      ...(isLimb ? inspection(items, isLimb) : []),
      ...placeNotes(examination, of, 'examined'),
    ],
    of,
  );
}

function line(read: Read): LetterPart[] {
  const { examination, report, items } = read;
  const main = report.triage.flags.length
    ? named(read)
    : conclusions(examination, report.conclusion, true).filter(({ says }) => says.code !== 'no-lesion');
  const classed = report.triage.flags.some((flag) => flag.class);
  const more = [
    ...indices(examination, report.pressures),
    ...(classed ? [] : stagesInLine(stages(examination, report.stages))),
  ];
  const unusual = report.pressures?.reading.indices.some(
    ({ band }) => band !== undefined && band !== 'normal',
  );
  if (main.length) return [part('conclusion', [...main, ...more])];
  const pointing = verdicts(examination, report.pressures, 'abnormal');
  if (!unusual && !pointing.length && !items.some(isAbnormal))
    return [part('conclusion', [{ says: { code: 'nothing-abnormal' }, from: [] }, ...more])];
  const found = [...exceptions(read), ...tests(items, isAbnormal), ...pointing].slice(0, IN_A_LINE);
  return [part('conclusion', [...(found.length ? found : complaints(items.filter(isAbnormal))), ...more])];
}

function short(read: Read): LetterPart[] {
  const { examination, report, items } = read;
  return [
    part('flags', warnings(read, false)),
    part('conclusion', conclusions(examination, report.conclusion, false)),
    part('complaint', complaints(items.filter(isAbnormal))),
    part('findings', [...exceptions(read), ...countedNormals(examination)]),
    part('tests', [
      ...tests(items, isAbnormal),
      ...measured(read, 'abnormal'),
      ...stages(examination, report.stages),
    ]),
    part('not-examined', missing(read)),
    part('closing', [caution]),
  ];
}

/** Whether something on a limb is not as usual, or the findings there come to something. */
function isOfNote({ examination, items, report }: Read, of: PulseRegion): boolean {
  return (
    isAffected(examination, of) ||
    items.some((item) => item.at === of && isAbnormal(item) && item.line.code !== 'limb-history') ||
    report.conclusion.limbs.some(({ limb }) => limb === of)
  );
}

function letter(read: Read): LetterPart[] {
  const { examination, report, items } = read;
  const affected = REGIONS_TOLD.filter((of) => isOfNote(read, of));
  const others = REGIONS_TOLD.filter((of) => !affected.includes(of));
  return [
    part('flags', [...warnings(read, true), ...calls(examination)]),
    part('opening', opening(read)),
    part('complaint', [...complaints(items), ...onset(examination)]),
    part('background', background(items)),
    ...affected.map((of) => region(read, of)),
    part('findings', [
      ...wholeRegions(examination),
      ...normalPlaces(examination, others),
      ...others.flatMap((of) => region(read, of).sentences.filter(({ says }) => says.code !== 'pulses')),
      ...bruits(examination, REGIONS_TOLD, ['none']),
      ...delays(examination),
      ...marks(items),
    ]),
    part('tests', [
      ...tests(items),
      ...measured(read, 'all'),
      ...figures(examination, items),
      ...methods(items),
    ]),
    part('conclusion', [
      ...conclusions(examination, report.conclusion, false),
      ...stages(examination, report.stages),
    ]),
    part('not-examined', missing(read)),
    part('closing', [caution, ...signed(read)]),
  ];
}

function handover(read: Read): LetterPart[] {
  const { examination, report, items } = read;
  const { flags } = report.triage;
  return [
    part('situation', [
      ...flagged(read, (flag) => ({ code: 'flag-named', flag, brief: false })),
      ...opening(read),
      ...complaints(items.filter(({ weight }) => weight !== 'normal')),
    ]),
    part('background', [
      ...onset(examination),
      ...background(items.filter(({ weight }) => weight !== 'normal')),
    ]),
    part('assessment', [
      ...exceptions(read),
      ...LIMBS_TOLD.flatMap((limb) =>
        inspection(
          items.filter(({ telling }) => telling),
          limb,
        ),
      ),
      ...countedNormals(examination),
      ...tests(items, isAbnormal),
      ...measured(read, 'abnormal'),
      ...conclusions(examination, report.conclusion, false),
      ...stages(examination, report.stages),
      ...missing(read),
    ]),
    part('recommendation', [
      ...(flags.length
        ? flagged(read, (flag) => ({ code: 'flag-action', flag }))
        : [{ says: { code: 'no-flag' as const }, from: [] }]),
      ...calls(examination),
      caution,
    ]),
  ];
}

const LENGTHS: Readonly<Record<LetterLength, (read: Read) => LetterPart[]>> = {
  line,
  short,
  letter,
  handover,
};

/**
 * What there is to say of a record in a given length, sentence by sentence, each with where in the record it comes from. Flags
 * stand first; what was not recorded is not said, and never called normal.
 */
export function letterOf(examination: Examination, context: LetterContext): LetterPart[] {
  if (isEmptyRecord(examination)) {
    return [part('conclusion', [{ says: { code: 'nothing-recorded' }, from: [] }])];
  }
  const { settings, earlier, length } = context;
  const read: Read = {
    examination,
    context,
    report: reportOf(examination, { settings, earlier }),
    items: Object.values(itemsOf(examination)).flat(),
  };
  return [...status(read), ...LENGTHS[length](read)].filter(({ sentences }) => sentences.length > 0);
}
