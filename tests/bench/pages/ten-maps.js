/* global document */
// Ten maps on one page, each whole.
import 'pulse-map/elements/pulse-map/define';

const COUNT = 10;
const maps = [];

export function mount(parent) {
  for (let i = 0; i < COUNT; i++) maps.push(document.createElement('pulse-map'));
  parent.append(...maps);
}

export const visible = () =>
  maps.every((map) => map.shadowRoot.querySelectorAll('.figure .site').length > 20);
