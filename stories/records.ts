import {
  addMark,
  emptyExamination,
  type Examination,
  type Grade,
  placeFromKey,
  type MarkKind,
  type PulseFinding,
  restNormal,
  setBruit,
  setFields,
  setPulse,
} from 'pulse-map/core';
import { MARK_FORMS, regionShape, type SkinPlace } from 'pulse-map/core/tables';

/*
 * Examinations to show, each made by the library's own edits. All are invented.
 */

type Findings = Readonly<Record<string, Grade | PulseFinding>>;

/** An examination from place keys such as `left popliteal`. */
export function examined(findings: Findings, start: Examination = emptyExamination()): Examination {
  return Object.entries(findings).reduce((examination, [key, finding]) => {
    const place = placeFromKey(key);
    if (!place) throw new RangeError(`no place "${key}"`);
    return setPulse(examination, place, typeof finding === 'string' ? { grade: finding } : finding);
  }, start);
}

function heard(
  examination: Examination,
  bruits: Readonly<Record<string, 'none' | 'systolic' | 'continuous'>>,
): Examination {
  return Object.entries(bruits).reduce((next, [key, bruit]) => {
    const place = placeFromKey(key);
    if (!place) throw new RangeError(`no place "${key}"`);
    return setBruit(next, place, { bruit });
  }, examination);
}

function beyond(side: 'right' | 'left', sites: readonly string[], grade: Grade): Findings {
  return Object.fromEntries(sites.map((site) => [`${side} ${site}`, grade]));
}

const FOOT = ['posterior-tibial', 'dorsalis-pedis'];
const BELOW_GROIN = ['popliteal', ...FOOT];

export const normal = restNormal(emptyExamination());

/** Left superficial femoral block. */
export const oneBlock = heard(restNormal(examined(beyond('left', BELOW_GROIN, 'absent'))), {
  'left femoral': 'systolic',
});

/** Right iliac narrowing with a femoral block below it, and a left foot artery alone. */
export const several = heard(
  restNormal(
    examined({
      'right femoral': { grade: 'reduced', thrill: true },
      ...beyond('right', BELOW_GROIN, 'absent'),
      'left dorsalis-pedis': 'absent',
      'left radial': 'reduced',
    }),
  ),
  { 'right iliac': 'systolic', 'right femoral': 'systolic' },
);

/** Both femorals gone below a felt aorta. */
export const aortoIliac = restNormal(
  examined({
    ...beyond('right', ['femoral', ...BELOW_GROIN], 'absent'),
    ...beyond('left', ['femoral', ...BELOW_GROIN], 'absent'),
  }),
);

/** Narrowed inflow of the left arm. */
export const arm = heard(
  setFields(
    restNormal(
      examined(beyond('left', ['subclavian', 'axillary', 'brachial', 'radial', 'ulnar'], 'reduced')),
    ),
    {
      delays: { radioRadial: 'left-later' },
    },
  ),
  { 'left subclavian': 'systolic' },
);

/** A cast, a dressing and an amputation leave gaps; what is silent widens the answer. */
export const couldNotExamine = examined({
  'midline abdominal-aorta': 'normal',
  'right femoral': 'normal',
  'right popliteal': { couldNotExamine: 'cast' },
  'right posterior-tibial': { couldNotExamine: 'cast' },
  'right dorsalis-pedis': { couldNotExamine: 'cast', doppler: 'biphasic' },
  'left femoral': 'normal',
  'left popliteal': { couldNotExamine: 'dressing', note: 'vacuum dressing behind the knee' },
  'left posterior-tibial': 'absent',
  'left dorsalis-pedis': { couldNotExamine: 'amputated' },
  'right radial': { couldNotExamine: 'line-in-place' },
});

/** A popliteal pulse missed, or collaterals: full pulses beyond one that was not felt. */
export const contradiction = restNormal(examined({ 'left popliteal': 'absent' }));

/** Wide pulses of an aneurysm, on the scale that tells increased from bounding. */
export const aneurysm: Examination = setFields(
  restNormal(
    examined({
      'midline abdominal-aorta': { grade: 'bounding', expansile: true },
      'right popliteal': { grade: 'bounding', increased: true, expansile: true },
    }),
  ),
  { scale: '0-4' },
);

/** The left leg some months before {@link oneBlock}. */
export const earlier = restNormal(examined(beyond('left', BELOW_GROIN, 'reduced')));

function marked(
  start: Examination,
  marks: readonly (readonly [MarkKind, SkinPlace, string?])[],
): Examination {
  return marks.reduce(
    (examination, [kind, place, note]) =>
      addMark(examination, { kind, points: regionShape(place, MARK_FORMS[kind]), ...(note && { note }) }),
    start,
  );
}

/** {@link oneBlock} with what its foot looks like, and the scar of an earlier operation. */
export const skin = marked(oneBlock, [
  ['gangrene', { region: 'great-toe', side: 'left' }, 'dry'],
  ['ulcer', { region: 'heel', side: 'left' }, '1 cm, no bone seen'],
  ['redness', { region: 'forefoot', side: 'left' }],
  ['cold', { region: 'shin', side: 'left' }],
  ['scar', { region: 'thigh', side: 'right' }, 'vein taken'],
]);
