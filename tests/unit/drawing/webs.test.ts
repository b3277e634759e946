import { expect, it } from 'vitest';
import { type ArteryId, SIDES, type Vessel, vesselKey, VESSELS } from '../../../src/anatomy/index.js';
import { courseOf, radiusAt } from '../../../src/drawing/index.js';
import { filletsOf, type WideCourse } from '../../../src/drawing/fillets.js';
import { WEBS } from '../../../src/drawing/webs.js';

/** The arteries against which the fork of a branch is rounded. */
const FORKS: Partial<Record<ArteryId, readonly ArteryId[]>> = {
  brachiocephalic: ['ascending-aorta', 'aortic-arch'],
  'common-carotid': ['ascending-aorta', 'aortic-arch', 'brachiocephalic', 'subclavian'],
  subclavian: ['aortic-arch', 'thoracic-aorta', 'brachiocephalic'],
  'internal-carotid': ['common-carotid', 'external-carotid'],
  radial: ['brachial', 'ulnar'],
  renal: ['suprarenal-aorta', 'infrarenal-aorta'],
  'common-iliac': ['infrarenal-aorta'],
  'internal-iliac': ['common-iliac', 'external-iliac'],
  'deep-femoral': ['common-femoral', 'superficial-femoral'],
  'anterior-tibial': ['popliteal', 'tibioperoneal-trunk'],
  peroneal: ['tibioperoneal-trunk', 'posterior-tibial'],
};

const wide = (vessel: Vessel): WideCourse => ({
  spline: courseOf(vessel),
  radius: (t) => radiusAt(vessel.artery, t),
});

/** The webs of every fork, drawn from the courses and widths of the arteries. */
function drawnWebs(): [string, string][] {
  return VESSELS.flatMap((vessel): [string, string][] => {
    const stems = FORKS[vessel.artery];
    if (!stems) return [];
    const beside = VESSELS.filter(
      ({ artery, side }) =>
        stems.includes(artery) &&
        (side === vessel.side || side === 'midline' || artery === 'brachiocephalic'),
    );
    const d = filletsOf(wide(vessel), 'tenth', () => beside.map(wide));
    return d ? [[vesselKey(vessel), d]] : [];
  });
}

const HEAD = `/**
 * The webs that round the forks of the arteries, as path data in tenths of a figure unit, by vessel. Finding where a branch leaves its
 * stem takes longer than all else of a first drawing, so it is done beforehand: tests/unit/drawing/webs.test.ts draws them from the
 * courses and widths, compares, and with \`vitest -u\` writes this file.
 */
// prettier-ignore
export const WEBS: Readonly<Record<string, string>> = {
`;

it('webs of forks are those that the courses and widths of the arteries make', async () => {
  const lines = drawnWebs().map(([key, d]) => `  '${key}': '${d}',\n`);
  await expect(`${HEAD}${lines.join('')}};\n`).toMatchFileSnapshot('../../../src/drawing/webs.ts');
});

it('webs stand at forks on both sides of the body', () => {
  // The right subclavian goes on from its stem, and the right renal leaves behind it; only the right has a brachiocephalic trunk.
  const without = ['right subclavian', 'right renal', 'left brachiocephalic'];
  const both = Object.keys(FORKS).flatMap((artery) => SIDES.map((side) => `${side} ${artery}`));
  expect(Object.keys(WEBS).sort()).toEqual(both.filter((key) => !without.includes(key)).sort());
});
