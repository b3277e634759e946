import { key, type Section, type Sided } from './types.js';

/*
 * Arms and legs. Lengths and radii: ADAN56 (see trunk.ts); arteries cut at the pulse sites. Not in that model: the palmar arches
 * (charlton116, radii divided by the square root of 1.5, cut into halves; rule of thumb), peroneal, dorsalis pedis and the
 * arteries of the sole (rule of thumb).
 */

type Row = readonly [
  id: string,
  from: string,
  to: string,
  length: number,
  radius1: number,
  radius2: number,
  rest?: Partial<Section>,
];

const build = (side: string, rows: readonly Row[]): Section[] =>
  rows.map(([id, from, to, length, radius1, radius2, rest]) => ({
    id: `${side} ${id}`,
    from: from.startsWith('=') ? from.slice(1) : `${side} ${from}`,
    to: `${side} ${to}`,
    length,
    radii: [radius1, radius2],
    wall: 'muscular',
    ...rest,
  }));

/** First and second part of the subclavian: before the vertebral, to the pulse site and beyond it. */
const SUBCLAVIAN = {
  right: {
    from: '=right neck',
    first: 1.5741,
    second: [3.316, 0.7959],
    radii: [0.4896, 0.4177, 0.2664],
    radial: 30.0886,
  },
  left: {
    from: '=arch left subclavian',
    first: 4.9384,
    second: [2.8449, 1.267],
    radii: [0.4896, 0.348, 0.2664],
    radial: 31.0884,
  },
} as const;

/** Arm of one side. */
export const armOf: Sided<Section[]> = (side) => {
  const { from, first, second, radii, radial } = SUBCLAVIAN[side];
  const p = (artery: Parameters<typeof key>[1], stretch?: 'proximal' | 'distal') => ({
    piece: key(side, artery, stretch),
  });
  const seat = { seat: true } as const;
  return build(side, [
    [
      'subclavian to vertebral',
      from,
      'vertebral origin',
      first,
      radii[0],
      radii[1],
      { ...p('subclavian', 'proximal'), wall: 'elastic', spot: 'origin', ...seat },
    ],
    [
      'subclavian to its pulse site',
      'vertebral origin',
      'subclavian',
      second[0],
      radii[1],
      radii[2],
      { ...p('subclavian', 'proximal'), spot: 'beyond-vertebral' },
    ],
    [
      'subclavian to its end',
      'subclavian',
      'shoulder',
      second[1],
      radii[2],
      0.2301,
      { ...p('subclavian', 'distal'), ...seat },
    ],
    [
      'axillary to its pulse site',
      'shoulder',
      'axillary',
      8.6401,
      0.2301,
      0.214,
      { ...p('axillary', 'proximal'), ...seat },
    ],
    [
      'axillary to its end',
      'axillary',
      'upper arm',
      3.3601,
      0.214,
      0.2077,
      { ...p('axillary', 'distal'), ...seat },
    ],
    [
      'brachial to its pulse site',
      'upper arm',
      'brachial',
      16.0638,
      0.2077,
      0.1898,
      { ...p('brachial', 'proximal'), ...seat },
    ],
    [
      'brachial to its end',
      'brachial',
      'elbow',
      6.247,
      0.1898,
      0.1828,
      { ...p('brachial', 'distal'), ...seat },
    ],
    [
      'radial to its pulse site',
      'elbow',
      'radial',
      0.84 * radial,
      0.1378,
      0.1378,
      { ...p('radial', 'proximal'), ...seat },
    ],
    [
      'high radial',
      'upper arm',
      'radial',
      22.3108 + 0.84 * radial,
      0.1378,
      0.1378,
      { onlyIn: 'high-brachial-division' },
    ],
    [
      'radial to its end',
      'radial',
      'radial end',
      0.16 * radial,
      0.1378,
      0.1378,
      { ...p('radial', 'distal'), ...seat },
    ],
    [
      'ulnar to interosseous',
      'elbow',
      'interosseous origin',
      2.9756,
      0.1408,
      0.1408,
      { ...p('ulnar', 'proximal'), spot: 'origin' },
    ],
    [
      'ulnar to its pulse site',
      'interosseous origin',
      'ulnar',
      23.1192,
      0.1408,
      0.1408,
      { ...p('ulnar', 'proximal'), spot: 'lower', ...seat },
    ],
    ['ulnar to its end', 'ulnar', 'ulnar end', 0.807, 0.1408, 0.1408, { ...p('ulnar', 'distal'), ...seat }],
    ['common interosseous', 'interosseous origin', 'interosseous', 1.6266, 0.0959, 0.0959],
    [
      'deep arch, radial half',
      'radial end',
      'deep arch',
      3,
      0.09,
      0.08,
      { ...p('deep-palmar-arch'), spot: 'origin', ...seat },
    ],
    [
      'deep arch, ulnar half',
      'ulnar end',
      'deep arch',
      4,
      0.06,
      0.06,
      { ...p('deep-palmar-arch'), spot: 'lower' },
    ],
    [
      'superficial arch, ulnar half',
      'ulnar end',
      'superficial arch',
      4,
      0.12,
      0.1,
      { ...p('superficial-palmar-arch'), spot: 'origin', ...seat },
    ],
    [
      'superficial arch, radial half',
      'radial end',
      'superficial arch',
      4,
      0.07,
      0.07,
      { ...p('superficial-palmar-arch'), spot: 'lower' },
    ],
  ]);
};

const COMMON_ILIAC = { right: 7.6429, left: 7.4038 } as const;

/** Leg of one side. */
export const legOf: Sided<Section[]> = (side) => {
  const p = (artery: Parameters<typeof key>[1], stretch?: 'proximal' | 'distal') => ({
    piece: key(side, artery, stretch),
  });
  const seat = { seat: true } as const;
  return build(side, [
    [
      'common iliac',
      '=bifurcation',
      'iliac fork',
      COMMON_ILIAC[side],
      0.4499,
      0.4091,
      { ...p('common-iliac'), wall: 'elastic', ...seat },
    ],
    ['internal iliac', 'iliac fork', 'pelvis', 7.2509, 0.2818, 0.2818, { ...p('internal-iliac'), ...seat }],
    ['external iliac', 'iliac fork', 'groin', 10.2211, 0.3378, 0.3189, { ...p('external-iliac'), ...seat }],
    [
      'common femoral to its pulse site',
      'groin',
      'femoral',
      1.8955,
      0.3189,
      0.3162,
      { ...p('common-femoral', 'proximal'), ...seat },
    ],
    [
      'common femoral to its end',
      'femoral',
      'femoral fork',
      1.2636,
      0.3162,
      0.3144,
      { ...p('common-femoral', 'distal'), ...seat },
    ],
    ['deep femoral', 'femoral fork', 'thigh', 23.8394, 0.2144, 0.2144, { ...p('deep-femoral'), ...seat }],
    [
      'superficial femoral, upper',
      'femoral fork',
      'mid thigh',
      19.1571,
      0.3144,
      0.2869,
      { ...p('superficial-femoral'), spot: 'upper' },
    ],
    [
      'superficial femoral, adductor canal',
      'mid thigh',
      'adductor canal',
      3.8314,
      0.2869,
      0.2814,
      { ...p('superficial-femoral'), spot: 'adductor-canal', ...seat },
    ],
    [
      'superficial femoral, lower',
      'adductor canal',
      'above knee',
      8.94,
      0.2814,
      0.2686,
      { ...p('superficial-femoral'), spot: 'lower' },
    ],
    [
      'popliteal to its pulse site',
      'above knee',
      'popliteal',
      7.0413,
      0.2686,
      0.2516,
      { ...p('popliteal', 'proximal'), ...seat },
    ],
    [
      'popliteal to anterior tibial',
      'popliteal',
      'anterior tibial origin',
      6.1616,
      0.2516,
      0.2368,
      { ...p('popliteal', 'distal'), spot: 'mid', ...seat },
    ],
    [
      'popliteal to its end',
      'anterior tibial origin',
      'below knee',
      0.8797,
      0.2368,
      0.2346,
      { ...p('popliteal', 'distal'), spot: 'lower' },
    ],
    [
      'tibioperoneal trunk',
      'below knee',
      'tibial fork',
      3.6163,
      0.2346,
      0.2346,
      { ...p('tibioperoneal-trunk'), ...seat },
    ],
    [
      'anterior tibial, upper',
      'anterior tibial origin',
      'anterior calf',
      19.3108,
      0.1166,
      0.1166,
      { ...p('anterior-tibial'), spot: 'upper', ...seat },
    ],
    [
      'anterior tibial, lower',
      'anterior calf',
      'ankle front',
      19.3108,
      0.1166,
      0.1166,
      { ...p('anterior-tibial'), spot: 'lower' },
    ],
    [
      'posterior tibial, upper',
      'tibial fork',
      'posterior calf',
      19.1442,
      0.1229,
      0.1229,
      { ...p('posterior-tibial', 'proximal'), spot: 'upper', ...seat },
    ],
    [
      'posterior tibial to its pulse site',
      'posterior calf',
      'posterior-tibial',
      13.401,
      0.1229,
      0.1229,
      { ...p('posterior-tibial', 'proximal'), spot: 'lower' },
    ],
    [
      'posterior tibial to its end',
      'posterior-tibial',
      'heel',
      5.7433,
      0.1229,
      0.1229,
      { ...p('posterior-tibial', 'distal'), ...seat },
    ],
    ['peroneal', 'tibial fork', 'peroneal end', 30, 0.115, 0.1, { ...p('peroneal'), ...seat }],
    [
      'dorsalis pedis to its pulse site',
      'ankle front',
      'dorsalis-pedis',
      4.05,
      0.11,
      0.0988,
      { ...p('dorsalis-pedis', 'proximal'), ...seat },
    ],
    [
      'dorsalis pedis to its end',
      'dorsalis-pedis',
      'instep',
      4.95,
      0.0988,
      0.085,
      { ...p('dorsalis-pedis', 'distal'), ...seat },
    ],
    ['plantar arch', 'heel', 'sole', 9, 0.07, 0.06, { ...p('plantar-arch'), ...seat }],
    ['deep plantar', 'instep', 'sole', 5, 0.045, 0.045],
  ]);
};
