// The records that the sheets of figures show.
import { addMark, emptyExamination, restNormal, setBruit, setPulse } from '../src/core.ts';
import { VIEWS } from '../src/picture.ts';

export { VIEWS };

const round = (x, y, r) =>
  Array.from({ length: 14 }, (_, i) => {
    const angle = (Math.PI * i) / 7;
    return [x + r * Math.cos(angle), y + r * Math.sin(angle)];
  });

/** Fingers and toes of the left, one of each state. */
const DIGITS = {
  arm: { left: { digits: { first: 'normal', second: 'pale', third: 'blue', fourth: 'ulcer' } } },
  leg: {
    left: { digits: { first: 'gangrene', second: 'ulcer', third: 'blue', fourth: 'pale', fifth: 'normal' } },
  },
};

/** A blocked left thigh, a narrowed right iliac, a left arm below the elbow, and marks on figure and plates. */
function findings() {
  const pulses = [
    ['left', 'popliteal', 'absent'],
    ['left', 'posterior-tibial', 'absent'],
    ['left', 'dorsalis-pedis', 'absent'],
    ['right', 'femoral', 'reduced'],
    ['right', 'popliteal', 'reduced'],
    ['left', 'radial', 'reduced'],
    ['left', 'ulnar', 'absent'],
  ];
  const felt = pulses.reduce(
    (record, [side, site, grade]) => setPulse(record, { side, site }, { grade }),
    restNormal(emptyExamination('0-3')),
  );
  const heard = setBruit(felt, { side: 'right', site: 'iliac' }, { bruit: 'systolic' });
  const marks = [
    { kind: 'redness', points: round(818, 1398, 16) },
    { kind: 'ulcer', on: { plate: 'left-sole', points: round(393, 312, 42) } },
    { kind: 'gangrene', on: { plate: 'left-foot', points: round(183, 745, 24) } },
    { kind: 'ulcer', on: { plate: 'left-foot', points: round(590, 250, 30) } },
    { kind: 'cyanosis', on: { plate: 'left-hand', points: round(461, 905, 32) } },
    {
      kind: 'scar',
      on: {
        plate: 'legs-behind',
        points: [
          [285, 540],
          [290, 640],
          [285, 740],
        ],
      },
    },
    {
      kind: 'cold',
      on: {
        plate: 'left-knee',
        points: [
          [330, 820],
          [490, 830],
          [665, 820],
        ],
      },
    },
  ];
  return { ...marks.reduce(addMark, heard), inspection: DIGITS };
}

export const STATES = {
  empty: emptyExamination('0-3'),
  normal: restNormal(emptyExamination('0-3')),
  findings: findings(),
};
