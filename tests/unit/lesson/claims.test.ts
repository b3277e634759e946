import { describe, expect, it } from 'vitest';
import type { Laterality, Side } from '../../../src/anatomy/index.js';
import { bruitAt, type Examination, type PressureSite, pulseAt } from '../../../src/examination/index.js';
import {
  examinationOf,
  SHIPPED_LESSON_IDS,
  shippedLesson,
  type ShippedLessonId,
} from '../../../src/lesson/index.js';
import { readCompression, triage } from '../../../src/triage/index.js';

/*
 * What title, notes and answer of each lesson tell beyond its level, held against the findings that flow and pulse come to. A lesson
 * whose patient changes must still teach what its patient shows.
 */

type Claim = readonly [says: string, holds: (record: Examination) => boolean];

const grade = (record: Examination, side: Laterality, site: string): string | undefined =>
  pulseAt(record, { site, side } as Parameters<typeof pulseAt>[1])?.grade;
const all = (record: Examination, side: Laterality, sites: readonly string[], ...grades: string[]): boolean =>
  sites.every((site) => grades.includes(grade(record, side, site) ?? ''));
const heard = (record: Examination, side: Side, site: string): boolean =>
  ['systolic', 'continuous'].includes(
    bruitAt(record, { site, side } as Parameters<typeof bruitAt>[1])?.bruit ?? '',
  );
/** mmHg; NaN where the cuff gives no number. */
const cuff = (record: Examination, site: PressureSite, side: Side): number => {
  const value = record.pressures?.[site]?.[side];
  return typeof value === 'number' ? value : NaN;
};
const ankle = (record: Examination, side: Side): number =>
  Math.max(cuff(record, 'dorsalis-pedis', side), cuff(record, 'posterior-tibial', side));
const arm = (record: Examination): number =>
  Math.max(cuff(record, 'brachial', 'right'), cuff(record, 'brachial', 'left'));

const LEG = ['femoral', 'popliteal', 'posterior-tibial', 'dorsalis-pedis'];
const FOOT = ['posterior-tibial', 'dorsalis-pedis'];
const ARM = ['subclavian', 'axillary', 'brachial', 'radial', 'ulnar'];
const BELOW = LEG.slice(1);

const CLAIMS: Readonly<Record<ShippedLessonId, readonly Claim[]>> = {
  'superficial-femoral': [
    ['femoral present', (r) => grade(r, 'left', 'femoral') === 'normal'],
    ['everything below absent', (r) => all(r, 'left', BELOW, 'absent')],
    ['silent over the block', (r) => !heard(r, 'left', 'adductor-canal')],
    ['calf cramps', (r) => r.context?.legClaudication?.left?.startsWith('calf') === true],
  ],
  aortoiliac: [
    [
      'both femorals gone',
      (r) => grade(r, 'left', 'femoral') === 'absent' && grade(r, 'right', 'femoral') === 'absent',
    ],
    ['a pulsating aorta', (r) => grade(r, 'midline', 'abdominal-aorta') === 'normal'],
    ['buttocks tire', (r) => r.context?.legClaudication?.right === 'buttock'],
  ],
  infrapopliteal: [
    ['popliteal present', (r) => grade(r, 'right', 'popliteal') === 'normal'],
    ['both foot pulses absent', (r) => all(r, 'right', FOOT, 'absent')],
  ],
  'several-levels': [
    ['a weak femoral', (r) => grade(r, 'left', 'femoral') === 'reduced'],
    ['a bruit above it', (r) => heard(r, 'left', 'iliac')],
    ['an absent popliteal', (r) => grade(r, 'left', 'popliteal') === 'absent'],
  ],
  'absent-dorsalis-pedis': [
    ['one pulse absent', (r) => grade(r, 'left', 'dorsalis-pedis') === 'absent'],
    ['the one beside it normal', (r) => grade(r, 'left', 'posterior-tibial') === 'normal'],
    ['elevation normal', (r) => r.bedside?.elevation?.left?.pallor === false],
    ['ankle pressure normal', (r) => cuff(r, 'posterior-tibial', 'left') >= arm(r)],
  ],
  incompressible: [
    ['the ankle cannot be compressed', (r) => r.pressures?.['dorsalis-pedis']?.right === 'incompressible'],
    ['toe below 60 mmHg', (r) => cuff(r, 'toe', 'right') < 60],
    ['weak and absent foot pulses', (r) => all(r, 'right', FOOT, 'reduced', 'absent')],
    ['an ankle above 1.40 on the other side', (r) => ankle(r, 'left') / arm(r) > 1.4],
  ],
  'venous-ulcer': [
    ['all pulses normal', (r) => all(r, 'left', LEG, 'normal') && all(r, 'right', LEG, 'normal')],
    ['more pressure at the ankle than in the arm', (r) => ankle(r, 'left') > arm(r)],
    [
      'nothing found stands against compression, and heart failure was not asked for',
      (r) => {
        const { verdict, missing } = readCompression(r, 'left');
        return verdict === 'not-known' && missing.join() === 'heart-failure';
      },
    ],
  ],
  'embolus-groin': [
    ['no pulse in this leg', (r) => all(r, 'left', LEG, 'absent')],
    ['normal pulses in the other', (r) => all(r, 'right', LEG, 'normal')],
    ['irregular', (r) => r.history?.rhythm === 'atrial-fibrillation'],
    ['no signal at the ankle', (r) => ankle(r, 'left') === 0],
  ],
  'popliteal-aneurysm': [
    ['the femoral is normal', (r) => grade(r, 'right', 'femoral') === 'normal'],
    ['the popliteal gone', (r) => all(r, 'right', BELOW, 'absent')],
    ['the other one expansile', (r) => r.pulses?.popliteal?.left?.expansile === true],
    ['acute', (r) => r.onset === 'acute'],
  ],
  'saddle-embolus': [
    [
      'no femoral pulse on either side',
      (r) => all(r, 'right', LEG, 'absent') && all(r, 'left', LEG, 'absent'),
    ],
    ['a beating aorta', (r) => grade(r, 'midline', 'abdominal-aorta') === 'normal'],
    ['irregular', (r) => r.history?.rhythm === 'atrial-fibrillation'],
  ],
  'brachial-embolus': [
    ['the axillary is felt', (r) => grade(r, 'right', 'axillary') !== 'absent'],
    ['everything beyond absent', (r) => all(r, 'right', ARM.slice(2), 'absent')],
    ['sudden', (r) => r.onset === 'acute'],
  ],
  'radial-catheter': [
    ['the radial is absent', (r) => grade(r, 'right', 'radial') === 'absent'],
    ['the ulnar is not', (r) => grade(r, 'right', 'ulnar') === 'normal'],
    [
      'finger pressures differ by less than 15 mmHg',
      (r) => Math.abs(cuff(r, 'finger', 'left') - cuff(r, 'finger', 'right')) < 15,
    ],
    [
      'the ulnar alone fills the palm at once, the radial alone takes long',
      ({ bedside }) => {
        const hand = bedside?.['hand-arch']?.right;
        return (hand?.ulnar?.seconds ?? 99) < 5 && (hand?.radial?.seconds ?? 0) > 10;
      },
    ],
    ['no delay to be compared', (r) => r.delays?.radioRadial === undefined],
  ],
  'subclavian-steal': [
    ['all pulses of the arm weak', (r) => all(r, 'left', ARM, 'reduced')],
    ['late', (r) => r.delays?.radioRadial === 'left-later'],
    ['30 mmHg lower', (r) => Math.abs(cuff(r, 'brachial', 'right') - cuff(r, 'brachial', 'left') - 30) < 10],
  ],
  'thoracic-outlet': [
    ['every pulse normal at rest', (r) => all(r, 'right', ARM, 'normal') && all(r, 'left', ARM, 'normal')],
    ['lost with the arm raised', (r) => r.bedside?.hyperabduction?.right?.during === 'absent'],
    ['tires within half a minute', (r) => (r.bedside?.['arm-stress']?.right?.seconds ?? 99) < 30],
    ['the other lasts three minutes', (r) => r.bedside?.['arm-stress']?.left?.nothingFelt === true],
  ],
  buerger: [
    [
      'full pulses down to both knees',
      (r) => (['right', 'left'] as const).every((side) => all(r, side, LEG.slice(0, 2), 'normal')),
    ],
    [
      'none full below',
      (r) => (['right', 'left'] as const).every((side) => all(r, side, FOOT, 'absent', 'reduced')),
    ],
    [
      'one pulse at the wrist',
      (r) => grade(r, 'right', 'ulnar') === 'absent' && grade(r, 'right', 'radial') === 'normal',
    ],
    ['the palm stays white', ({ bedside }) => (bedside?.['hand-arch']?.right?.ulnar?.seconds ?? 0) >= 60],
  ],
  coarctation: [
    [
      'leg pulses weak on both sides',
      (r) => grade(r, 'left', 'femoral') === 'reduced' && grade(r, 'right', 'femoral') === 'reduced',
    ],
    [
      'and late',
      (r) => r.delays?.radioFemoral?.left === 'delayed' && r.delays.radioFemoral.right === 'delayed',
    ],
    ['ankles below arms', (r) => ankle(r, 'left') < arm(r) && ankle(r, 'right') < arm(r)],
  ],
  dissection: [
    [
      '40 mmHg less in the left arm',
      (r) => Math.abs(cuff(r, 'brachial', 'right') - cuff(r, 'brachial', 'left') - 40) < 10,
    ],
    ['no pulse in the right leg', (r) => all(r, 'right', LEG, 'absent')],
    ['the other leg well', (r) => all(r, 'left', LEG, 'normal')],
  ],
  shock: [
    [
      'every pulse weak, none absent',
      (r) => (['right', 'left'] as const).every((side) => all(r, side, [...LEG, ...ARM], 'reduced')),
    ],
    ['less than 60 mmHg', (r) => arm(r) < 60],
    ['the recorded blood pressure', (r) => Math.abs((r.circulation?.systolic ?? 0) - arm(r)) <= 2],
    ['a normal index', (r) => ankle(r, 'left') / arm(r) > 0.9 && ankle(r, 'left') / arm(r) <= 1.4],
  ],
};

describe.each(SHIPPED_LESSON_IDS)('the lesson %s', (id) => {
  it.each(CLAIMS[id])('has its patient show: %s', async (_, holds) => {
    expect(holds(examinationOf(await shippedLesson(id)))).toBe(true);
  });
});

/** What the triage says first where a lesson calls for help at once; the other lessons have no flag that says "now". */
const AT_ONCE: Readonly<Partial<Record<ShippedLessonId, string>>> = {
  incompressible: 'diabetic-foot-emergency',
  'embolus-groin': 'acute-limb-threatened',
  'popliteal-aneurysm': 'popliteal-aneurysm-acute',
  'saddle-embolus': 'aortic-occlusion',
  'brachial-embolus': 'acute-limb',
  dissection: 'dissection',
  shock: 'circulation',
};
const CALLS = /emergency|at once|comes first|comes before/;

describe.each(SHIPPED_LESSON_IDS)('the urgency of %s', (id) => {
  it('is that of the triage', async () => {
    const lesson = await shippedLesson(id);
    const [first] = triage(examinationOf(lesson)).flags.filter(({ urgency }) => urgency === 'now');
    expect(first?.code).toBe(AT_ONCE[id]);
    expect(CALLS.test(lesson.answer.text.en ?? '')).toBe(first !== undefined);
  });
});

describe('the lessons together', () => {
  it('cover every level of leg and arm, and patients without a narrowed artery', async () => {
    const lessons = await Promise.all(SHIPPED_LESSON_IDS.map(shippedLesson));
    const levels = new Set(lessons.flatMap(({ answer }) => answer.lesions.map(({ level }) => level)));
    expect([...levels].sort()).toEqual([
      'aorto-iliac',
      'arm-inflow',
      'axillo-brachial',
      'central',
      'femoro-popliteal',
      'forearm-hand',
      'infrapopliteal',
    ]);
    expect(lessons.length).toBeGreaterThanOrEqual(15);
    expect(lessons.filter(({ answer }) => answer.lesions.length === 0).length).toBeGreaterThanOrEqual(4);
  });
});
