/* global document, KeyboardEvent, MutationObserver, scrollTo */
// The map: keys, taps and strokes record pulses.
import 'pulse-map/elements/pulse-map/define';

const SITES = [
  'right femoral',
  'left femoral',
  'right brachial',
  'left brachial',
  'right carotid',
  'left carotid',
];
const GRADES = ['absent', 'reduced', 'normal', 'bounding'];
let map;

const inMap = (selector) => map.shadowRoot.querySelector(selector);

function middle(element) {
  const { x, y, width, height } = element.getBoundingClientRect();
  return [x + width / 2, y + height / 2];
}

const middleOfSite = (key) => middle(inMap(`[data-place="${key}"] .target`));

export function mount(parent) {
  map = document.createElement('pulse-map');
  parent.append(map);
}

export const visible = () => inMap('.figure').querySelectorAll('.site').length > 20;

/** What the next act is: its input, and the event whose effect counts. Keys, opened choosers and choices in turn. */
export function act(i) {
  const key = SITES[Math.floor(i / 3) % SITES.length];
  if (i % 3 === 0) {
    inMap(`[role=button][data-place="${key}"]`).focus();
    const [side, site] = key.split(' ');
    const grade = GRADES.indexOf(map.examination.pulses?.[site]?.[side]?.grade);
    return { kind: 'key', key: String((grade + 1) % GRADES.length), event: 'keydown' };
  }
  if (i % 3 === 1) return { kind: 'open', point: middleOfSite(key), event: 'pointerup' };
  const grades = [...map.shadowRoot.querySelectorAll('.chooser .grades button')];
  const grade = grades.find((button) => button.getAttribute('aria-checked') === 'false');
  return { kind: 'choose', point: middle(grade), event: 'click' };
}

/** Changes with every act. */
export const state = () => `${map.value} ${inMap('.chooser')?.getAttribute('aria-label')}`;

/** Keys alone, for many edits in a row. */
export const focusForKeys = () => inMap('[role=button][data-place="right femoral"]').focus();
export const editKeys = ['0', '1', '2', '3'];

/** A way over the drawing that crosses sites. */
export const way = () =>
  [...SITES, 'right radial', 'left radial', 'left popliteal', 'right popliteal'].map(middleOfSite);

/** Counts what moving over it changes. */
export function watchHover() {
  let changes = 0;
  new MutationObserver((records) => (changes += records.length)).observe(map.shadowRoot, {
    subtree: true,
    childList: true,
    attributes: true,
  });
  return () => changes;
}

/** Where to click so that moving with the button down draws. */
export function toDraw() {
  const brush = inMap('[role=group][aria-label="Grade several"] button');
  // Earlier acts may have scrolled the tools away, or left a chooser open over them.
  inMap('.chooser')?.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true }));
  scrollTo(0, 0);
  return middle(brush);
}

/** Draws as many marks of sixty points as a record may hold; tells how many are shown. */
export async function drawMarks() {
  const loop = (x, y) =>
    Array.from({ length: 60 }, (_, i) => {
      const turn = (i / 60) * 2 * Math.PI;
      return [Math.round(x + 14 * Math.cos(turn)), Math.round(y + 14 * Math.sin(turn))];
    });
  const kinds = ['ulcer', 'redness', 'cyanosis', 'pallor'];
  const marks = Array.from({ length: 60 }, (_, i) => ({
    id: `m${i}`,
    kind: kinds[i % kinds.length],
    points: loop(i % 2 ? 515 : 685, 760 + i * 9),
  }));
  map.value = { ...map.examination, marks };
  await map.updateComplete;
  return map.shadowRoot.querySelectorAll('.figure .skin').length;
}
