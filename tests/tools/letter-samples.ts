/** Sentences of letters in which everything that can be said is there to be said. */
import { LIMBS, limbKey, PULSE_PLACES, SIDES } from '../../src/anatomy/index.js';
import {
  BRUITS,
  DOPPLER_SIGNALS,
  type Examination,
  FONTAINE_STAGES,
  GRADES,
  LEG_AMPUTATIONS,
  LEG_CLAUDICATION,
  MARK_KINDS,
  ONSETS,
  REASONS,
} from '../../src/examination/index.js';
import {
  type LetterContext,
  LETTER_LENGTHS,
  letterOf,
  type LetterStatement,
  type PulseRegion,
  STAGED_SCHEMES,
} from '../../src/letter/index.js';
import { NATURES } from '../../src/statements/index.js';
import { PRESSURES, READ, WHOLE } from './word-records.js';

const CONTEXT: Omit<LetterContext, 'length'> = { subject: 'Xyz' };
const RECORDS: readonly Examination[] = [
  ...READ,
  WHOLE,
  ...PRESSURES.map((pressures) => ({ ...WHOLE, pressures })),
];

/** Every sentence of these records in every length. */
const told: LetterStatement[] = RECORDS.flatMap((record) =>
  LETTER_LENGTHS.flatMap((length) =>
    letterOf(record, { ...CONTEXT, length }).flatMap(({ sentences }) => sentences.map(({ says }) => says)),
  ),
);

const REGIONS: readonly PulseRegion[] = ['trunk', ...LIMBS.map(limbKey)];
const [first, second] = PULSE_PLACES;
const places = [first!, second!];
const both = [{ site: 'femoral', side: 'right' } as const, { site: 'femoral', side: 'left' } as const];
const midline = [{ site: 'abdominal-aorta', side: 'midline' } as const];

const made: LetterStatement[] = [
  { code: 'no-flag' },
  { code: 'nothing-abnormal' },
  { code: 'nothing-recorded' },
  { code: 'no-lesion' },
  { code: 'caution' },
  { code: 'signed', examiner: 'Xyz' },
  { code: 'opening', subject: 'Xyz' },
  { code: 'opening', examinedAt: '2026-05-01T10:30Z' },
  { code: 'opening', subject: 'Xyz', examinedAt: '2026-05-01T10:30Z' },
  ...ONSETS.map((onset): LetterStatement => ({ code: 'onset', onset })),
  ...LEG_CLAUDICATION.map((muscle): LetterStatement => ({
    code: 'complaint',
    limb: 'left leg',
    statements: [{ code: 'leg-claudication', side: 'left', muscle }],
  })),
  ...(['arm-tires', 'arm-does-not-tire'] as const).map((code): LetterStatement => ({
    code: 'complaint',
    limb: 'left arm',
    statements: [{ code, side: 'left' }],
  })),
  { code: 'no-complaint', limbs: ['right leg', 'left leg'] },
  {
    code: 'background',
    denied: false,
    statements: [{ code: 'leg-amputated', side: 'left', at: LEG_AMPUTATIONS[0] }],
  },
  { code: 'background', denied: true, statements: [{ code: 'no-diabetes' }, { code: 'no-risks' }] },
  ...REGIONS.flatMap((region): LetterStatement[] => [
    { code: 'all-pulses', regions: [region] },
    ...GRADES.map((grade): LetterStatement => ({
      code: 'pulses',
      region,
      groups: [{ grade, sites: region === 'trunk' ? ['abdominal-aorta'] : ['femoral', 'popliteal'] }],
    })),
    {
      code: 'pulses',
      region,
      groups: [{ grade: 'bounding', increased: true, sites: ['radial'] }],
    },
  ]),
  ...[1, 12].flatMap((count) =>
    [true, false].map((others): LetterStatement => ({ code: 'normal-pulses', count, others })),
  ),
  ...[places, both, midline].flatMap((at): LetterStatement[] => [
    { code: 'normal-places', places: at },
    { code: 'thrill', places: at },
    { code: 'expansile', places: at },
    ...DOPPLER_SIGNALS.map((signal): LetterStatement => ({ code: 'doppler', signal, places: at })),
    ...BRUITS.map((bruit): LetterStatement => ({ code: 'bruit', bruit, places: at })),
    ...REASONS.flatMap((reason): LetterStatement[] => [
      { code: 'could-not', act: 'feel', reason, places: at },
      { code: 'could-not', act: 'listen', reason, places: at },
      { code: 'could-not-inspect', reason, limb: 'left leg' },
    ]),
    { code: 'unread-places', places: at },
  ]),
  ...(['none', 'right-later', 'left-later'] as const).map((found): LetterStatement => ({
    code: 'delay',
    delay: { of: 'radio-radial', found },
  })),
  ...SIDES.flatMap((side) =>
    (['none', 'delayed'] as const).map((found): LetterStatement => ({
      code: 'delay',
      delay: { of: 'radio-femoral', side, found },
    })),
  ),
  {
    code: 'inspection',
    limb: 'left leg',
    usual: true,
    statements: [
      { code: 'ulcer', depth: 'none' },
      { code: 'gangrene', gangrene: 'none' },
      { code: 'infection', value: [] },
      { code: 'systemic', value: [] },
      { code: 'sensation', value: 'normal' },
      { code: 'movement', value: 'normal' },
      { code: 'muscle', value: 'normal' },
      { code: 'stretchPain', value: false },
    ],
  },
  ...MARK_KINDS.map((kind): LetterStatement => ({
    code: 'marks',
    marks: [{ code: 'mark', kind, names: [{ region: 'shin', side: 'left' }] }],
  })),
  ...STAGED_SCHEMES.flatMap((scheme) =>
    [true, false].map((own): LetterStatement => ({
      code: 'stage',
      limb: 'left leg',
      stages: [
        { scheme, stage: scheme === 'fontaine' ? FONTAINE_STAGES[1] : scheme === 'acute' ? 'I' : 1, own },
      ],
    })),
  ),
  ...NATURES.map((nature): LetterStatement => ({ code: 'nature', nature: { nature, probability: 0.62 } })),
  ...(['absent', 'reduced'] as const).flatMap((pulse) =>
    ([undefined, 'firm', 'fairly-firm', 'not-firm'] as const).flatMap((firm) =>
      [true, false].map((brief): LetterStatement => ({
        code: 'conclusion',
        brief,
        ...(firm && { firm }),
        where: { limb: 'left leg', below: [], pieces: [], probability: 0.62, pulse },
      })),
    ),
  ),
  ...[true, false].map((some): LetterStatement => ({ code: 'other-pulses-not-examined', some })),
  ...[1, 12].map((count): LetterStatement => ({ code: 'later-entries', count })),
];

/** Each sentence once. */
export const LETTER_STATEMENTS: readonly LetterStatement[] = [
  ...new Map([...told, ...made].map((one) => [JSON.stringify(one), one])).values(),
];
