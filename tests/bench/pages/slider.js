/* global document */
// A slider of a known component library.
import '@material/web/slider/slider.js';

let slider;

export function mount(parent) {
  slider = document.createElement('md-slider');
  slider.style.inlineSize = '600px';
  slider.ariaLabel = 'Grade';
  parent.append(slider);
}

export const visible = () => slider.shadowRoot.querySelector('input').getBoundingClientRect().width > 100;

const at = (share) => {
  const { x, y, width, height } = slider.getBoundingClientRect();
  return [x + width * share, y + height / 2];
};

export function act(i) {
  if (i % 2 === 0) {
    focusForKeys();
    return { kind: 'key', key: i % 4 ? 'ArrowLeft' : 'ArrowRight', event: 'keydown' };
  }
  return { kind: 'tap', point: at(0.2 + ((i * 7) % 60) / 100), event: 'pointerdown' };
}

export const state = () => String(slider.value);

export const focusForKeys = () => slider.focus();
export const editKeys = ['ArrowRight', 'ArrowRight', 'ArrowLeft', 'ArrowLeft'];

export const way = () => [0.1, 0.9, 0.3, 0.7, 0.2].map(at);

export function watchHover() {
  let changes = 0;
  slider.addEventListener('pointermove', () => changes++);
  return () => changes;
}

export const toDraw = () => undefined;
