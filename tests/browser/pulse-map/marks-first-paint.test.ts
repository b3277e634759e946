// Nothing here fetches the tools to draw with beforehand: the first map of this page that has marks must.
import { expect } from '@open-wc/testing';
import 'pulse-map/elements/pulse-map/define';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { regionShape } from '../../../src/anatomy/index.js';
import { addMark, emptyExamination } from '../../../src/examination/index.js';
import { painted } from '../tools/perceive.js';

describe('a map that comes with marks', () => {
  it('has them in its first paint, and nothing moves after it', async () => {
    const examination = addMark(emptyExamination(), {
      kind: 'ulcer',
      points: regionShape({ region: 'heel', side: 'left' }, 'area'),
    });
    const map = document.createElement('pulse-map') as unknown as PulseMap;
    map.value = examination;
    document.body.append(map);
    await map.updateComplete;
    const root = map.shadowRoot as ShadowRoot;
    expect(root.querySelectorAll('.figure [part~=mark]')).to.have.length(1);
    expect(root.querySelectorAll('.marks li')).to.have.length(1);
    const list = (root.querySelector('.marks') as HTMLElement).getBoundingClientRect().height;
    await painted();
    await painted();
    expect((root.querySelector('.marks') as HTMLElement).getBoundingClientRect().height).to.equal(list);
    map.remove();
  });
});
