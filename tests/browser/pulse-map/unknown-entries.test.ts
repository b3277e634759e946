// Findings that a later version recorded in words this one does not know.
import { expect } from '@open-wc/testing';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { FORMAT } from '../../../src/examination/index.js';
import { click, press } from '../../tools/real-input.js';
import { chooser, openMap, openSite, saidAt, settled, site, status } from '../tools/map.js';
import { allByRole, byRole, readableText } from '../tools/perceive.js';

const UNKNOWN = 'recorded in a way this version does not know';
const GIVEN = {
  format: FORMAT,
  scale: '0-3',
  pulses: { femoral: { left: { grade: 'whispering' }, right: { grade: 'normal' } } },
  bruits: { renal: { right: { bruit: 'musical' } } },
};

async function opened(): Promise<PulseMap> {
  const map = await openMap();
  map.value = JSON.stringify(GIVEN);
  await settled(map);
  return map;
}

describe('what a later version recorded', () => {
  it('is shown as that at its site, with a sign of its own, and never as not examined', async () => {
    const map = await opened();
    expect(saidAt(map, 'left femoral')).to.equal(UNKNOWN);
    expect(saidAt(map, 'right renal')).to.equal(UNKNOWN);
    expect(site(map, 'left femoral').querySelector('.g-unknown')).to.not.equal(null);
    expect(saidAt(map, 'right femoral')).to.equal('2, normal');
  });

  it('is locked alone: no hand, key or brush changes it, and the status says why', async () => {
    const map = await opened();
    const panel = await openSite(map, 'left femoral');
    expect(readableText(panel)).to.include(UNKNOWN);
    expect(allByRole(panel, 'radio')).to.be.empty;
    await press('Escape');
    site(map, 'left femoral').focus();
    await press('0');
    await settled(map);
    expect(status(map)).to.equal(`Left femoral ${UNKNOWN}`);
    await click(byRole(map, 'button', 'Grade several as 0, absent'));
    for (const name of ['left femoral', 'right femoral']) await click(site(map, name));
    await settled(map);
    expect(chooser(map)).to.equal(undefined);
    const { pulses, bruits } = JSON.parse(map.value) as typeof GIVEN;
    expect(pulses.femoral.left).to.deep.equal({ grade: 'whispering' });
    expect(bruits).to.deep.equal(GIVEN.bruits);
    expect(pulses.femoral.right).to.deep.equal({ grade: 'absent' });
  });

  it('stands in the table without a list to choose from, and in the legend of a picture', async () => {
    const map = await opened();
    expect(map.toSVG()).to.include(`${UNKNOWN.charAt(0).toUpperCase()}${UNKNOWN.slice(1)}`);
    map.display = 'table';
    await settled(map);
    const [row] = allByRole(map, 'row', /^Femoral/);
    expect(readableText(row as Element)).to.include(UNKNOWN);
    expect(allByRole(map, 'combobox', 'Pulse, left femoral')).to.be.empty;
  });

  it('is no change against an earlier record, whichever of the two holds it', async () => {
    const map = await opened();
    const later = map.examination;
    map.compare = {
      ...later,
      pulses: { femoral: { left: { grade: 'normal' } } },
      carried: undefined,
    } as never;
    await settled(map);
    expect(site(map, 'left femoral').querySelector('.changed')).to.equal(null);
  });
});
