// The two lists of a map, which every map makes before its first paint.
import { expect } from '@open-wc/testing';
import 'pulse-map/locale/de';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { VIEWS } from '../../../src/drawing/index.js';
import { press } from '../../tools/real-input.js';
import { openMap, settled } from '../tools/map.js';
import { byRole } from '../tools/perceive.js';

const list = (map: PulseMap, name: string): HTMLSelectElement => byRole(map, 'combobox', name);

it('a list is its choices and little else', async () => {
  const views = list(await openMap({ width: 1240 }), 'View');
  const nodes = document.createTreeWalker(views);
  let count = 0;
  while (nodes.nextNode()) count++;
  const choices = VIEWS.length + 1;
  expect(views.options).to.have.length(choices);
  expect(count, 'choice and word each').to.be.at.most(2 * choices + 4);
});

it('keeps its choices while it is drawn anew, and what was chosen when their words change', async () => {
  const map = await openMap({ width: 1240 });
  const before = [...list(map, 'View').options];
  list(map, 'View').focus();
  await press('ArrowDown', 'ArrowDown');
  await settled(map);
  expect(map.view).to.equal(VIEWS[1]);
  expect([...list(map, 'View').options].every((one, i) => one === before[i])).to.equal(true);

  map.lang = 'de';
  await settled(map);
  const german = list(map, 'Ausschnitt');
  expect([german.value, german.selectedOptions[0]?.text]).to.deep.equal([VIEWS[1], 'Arme']);
  expect(german.options).to.have.length(VIEWS.length + 1);

  map.view = 'auto';
  await settled(map);
  expect(german.value).to.equal('auto');
});
