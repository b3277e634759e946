/** Changes between two visits, with every word they can name, and flags of every kind. */
import type { Change } from '../../src/comparison/index.js';
import { BRUITS, DOPPLER_SIGNALS, GRADES } from '../../src/examination/index.js';
import { FLAG_CODES, FLAGS, type RedFlag } from '../../src/triage/index.js';
import { two } from './word-samples-of.js';

const LEG = { kind: 'leg', side: 'left' } as const;
const WAYS = ['worse', 'better'] as const;
const weighed = { weight: 'matters', way: 'other' } as const;
export const LEFT_FOOT = { site: 'dorsalis-pedis', side: 'left' } as const;
export const RIGHT_GROIN = { site: 'femoral', side: 'right' } as const;
const stepsOf = <T>(values: readonly T[]) =>
  two(values, values).flatMap(([from, to]) => (from === to ? [] : [{ from, to }]));

export const FLAGGED_LIMBS: RedFlag['limb'][] = [
  undefined,
  { kind: 'leg', side: 'left' },
  { kind: 'arm', side: 'right' },
];
export const flagged = two(FLAG_CODES, FLAGGED_LIMBS).map(([code, limb]): RedFlag => ({
  code,
  urgency: 'now',
  ...(limb && { limb }),
  because: [
    { code: 'hours', hours: 1 },
    { code: 'movement', value: 'weak' },
  ],
  whom: FLAGS[code],
  ask: ['onset'],
  class:
    code === 'acute-limb-irreversible'
      ? { atLeast: 'III', atMost: 'III' }
      : { atLeast: 'IIa', atMost: 'IIb' },
}));

/** Every kind of change between two visits, with every word it can name. */
export const CHANGES: readonly Change[] = [
  ...stepsOf(GRADES).map((step) => ({ code: 'pulse' as const, place: LEFT_FOOT, ...step, ...weighed })),
  ...stepsOf(DOPPLER_SIGNALS).map((step) => ({
    code: 'doppler' as const,
    place: LEFT_FOOT,
    ...step,
    ...weighed,
  })),
  ...stepsOf(BRUITS).map((step) => ({ code: 'bruit' as const, place: RIGHT_GROIN, ...step, ...weighed })),
  ...stepsOf(['present', 'absent'] as const).map((step) => ({
    code: 'graft-pulse' as const,
    artery: 'superficial-femoral' as const,
    side: 'left' as const,
    ...step,
    ...weighed,
  })),
  ...[-0.25, 0.15].map((by) => ({
    code: 'index' as const,
    side: 'left' as const,
    from: 0.75,
    to: 0.75 + by,
    by,
    limit: 0.15,
    ...weighed,
  })),
  { code: 'toe-pressure', side: 'left', from: 80, to: 30, ...weighed },
  { code: 'distance', side: 'right', from: 1200, to: 150, ...weighed },
  ...stepsOf(['normal', 'borderline', 'abnormal', 'severe'] as const).map((step) => ({
    code: 'bedside' as const,
    test: 'elevation' as const,
    side: 'left' as const,
    ...step,
    ...weighed,
  })),
  { code: 'stage', scheme: 'fontaine', limb: LEG, from: 'IIa', to: 'III', ...weighed },
  { code: 'stage', scheme: 'rutherford', limb: LEG, from: 2, to: 4, ...weighed },
  { code: 'stage', scheme: 'wifi', limb: LEG, from: 1, to: 3, ...weighed },
  { code: 'stage', scheme: 'acute', limb: { kind: 'arm', side: 'right' }, from: 'I', to: 'IIa', ...weighed },
  ...flagged.slice(0, 3).flatMap((flag) =>
    (
      [
        ['none', 'now'],
        ['now', 'none'],
      ] as const
    )
      .map(([from, to]): Change => ({ code: 'flag', flag, from, to, ...weighed }))
      .concat(
        WAYS.map((way): Change => ({
          code: 'flag',
          flag,
          from: 'today',
          to: way === 'worse' ? 'now' : 'soon',
          weight: 'matters',
          way,
        })),
      ),
  ),
];
