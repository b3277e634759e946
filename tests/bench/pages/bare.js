/* global document, MutationObserver */
// A drawing of 300 paths by Lit alone, five bindings each and no layout, words or record: what the map's own work is measured by.
import { html, render, svg } from 'lit';

const COUNT = 300;
const ROW = 20;
const SIZE = 40;
const COLOURS = ['#ddd', '#9bc', '#579', '#135'];
const tones = new Array(COUNT).fill(0);
let parent;
let over = -1;
let focused = 0;

const leaf = (i) => {
  const [x, y] = [(i % ROW) * SIZE, Math.floor(i / ROW) * SIZE];
  return `M${x + 4} ${y + 20}C${x + 8} ${y + 2} ${x + 32} ${y + 2} ${x + 36} ${y + 20}S${x + 8} ${y + 38} ${x + 4} ${y + 20}Z`;
};

function draw() {
  render(
    html`<svg width=${ROW * SIZE} height=${(COUNT / ROW) * SIZE} tabindex="0">
      ${tones.map(
        (tone, i) =>
          svg`<path d=${leaf(i)} fill=${COLOURS[tone]} stroke=${i === over ? '#000' : '#fff'} data-index=${i} aria-label=${`Leaf ${i}`}></path>`,
      )}
    </svg>`,
    parent,
  );
}

const indexOf = (event) => Number(event.target.dataset?.index ?? -1);

function colour(i) {
  if (i < 0) return;
  tones[i] = (tones[i] + 1) % COLOURS.length;
  draw();
}

export function mount(place) {
  parent = place;
  draw();
  const figure = place.querySelector('svg');
  figure.addEventListener('pointermove', (event) => {
    const now = indexOf(event);
    if (now === over) return;
    over = now;
    if (event.buttons) colour(now);
    else draw();
  });
  figure.addEventListener('pointerup', (event) => colour(indexOf(event)));
  figure.addEventListener('keydown', (event) =>
    colour((focused = (focused + event.key.charCodeAt(0)) % COUNT)),
  );
}

const paths = () => [...parent.querySelectorAll('path')];

export const visible = () => paths().length === COUNT && paths()[3].getBoundingClientRect().width > 0;

function middle(path) {
  const { x, y, width, height } = path.getBoundingClientRect();
  return [x + width / 2, y + height / 2];
}

export function act(i) {
  if (i % 2 === 0) {
    focusForKeys();
    return { kind: 'key', key: 'abcd'[(i / 2) % 4], event: 'keydown' };
  }
  return { kind: 'tap', point: middle(paths()[(i * 37) % COUNT]), event: 'pointerup' };
}

export const state = () => tones.join('');

export const focusForKeys = () => parent.querySelector('svg').focus();
export const editKeys = ['a', 'b', 'c', 'd'];

export const way = () => [0, 45, 90, 130, 200, 255, 299].map((i) => middle(paths()[i]));

export function watchHover() {
  let changes = 0;
  new MutationObserver((records) => (changes += records.length)).observe(document.querySelector('svg'), {
    subtree: true,
    attributes: true,
  });
  return () => changes;
}

export const toDraw = () => undefined;
