import { expect } from '@open-wc/testing';
import { examined } from '../../tools/examinations.js';
import { openMap, saidAt, settled } from '../tools/map.js';

describe('the record that a map hands out', () => {
  it('is frozen to its depths: an assignment throws, and changes neither value nor form nor figure', async () => {
    const map = await openMap({ examination: examined({ 'left femoral': 'absent' }) });
    const { value, examination } = map;
    const { left } = examination.pulses?.femoral ?? {};
    expect(() => {
      // @ts-expect-error the record is deeply readonly
      examination.pulses.femoral.left.grade = 'normal';
    }).to.throw(TypeError);
    expect(() => {
      // @ts-expect-error the record is deeply readonly
      examination.onset = 'acute';
    }).to.throw(TypeError);
    expect(() => delete (examination as { pulses?: unknown }).pulses).to.throw(TypeError);
    expect(Object.isFrozen(left)).to.equal(true);
    await settled(map);
    expect(map.value).to.equal(value);
    expect(saidAt(map, 'left femoral')).to.equal('0, absent');
  });

  it('is frozen after an edit, an undo, and while nothing is recorded or read', async () => {
    const map = await openMap();
    expect(Object.isFrozen(map.examination)).to.equal(true);
    map.value = '{"format":"pulse-map/2"}';
    expect(Object.isFrozen(map.examination)).to.equal(true);
    map.value = JSON.stringify(examined({ 'left femoral': 'absent' }));
    map.store.commit(examined({ 'right radial': { grade: 'reduced' } }, map.examination));
    expect(Object.isFrozen(map.examination.pulses?.radial?.right)).to.equal(true);
    map.undo();
    expect(Object.isFrozen(map.examination.pulses?.femoral?.left)).to.equal(true);
  });
});
