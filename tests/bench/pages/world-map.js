/* global document, MutationObserver */
// A world map drawn the usual way with d3: a path a country, coloured by a click, a stroke or a key.
import { geoEqualEarth, geoPath } from 'd3-geo';
import { feature } from 'topojson-client';
import world from 'world-atlas/countries-110m.json';

const COLOURS = ['#ddd', '#9bc', '#579', '#135'];
let figure;
let countries;
let edits = 0;

function colour(path) {
  path.setAttribute('fill', COLOURS[(COLOURS.indexOf(path.getAttribute('fill')) + 1) % COLOURS.length]);
  edits++;
}

export function mount(parent) {
  const shapes = feature(world, world.objects.countries);
  const outline = geoPath(geoEqualEarth().fitSize([960, 500], shapes)).digits(1);
  figure = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  figure.setAttribute('viewBox', '0 0 960 500');
  figure.setAttribute('width', '960');
  figure.tabIndex = 0;
  countries = shapes.features.map((shape) => {
    const path = document.createElementNS('http://www.w3.org/2000/svg', 'path');
    path.setAttribute('d', outline(shape));
    path.setAttribute('fill', COLOURS[0]);
    path.setAttribute('stroke', '#fff');
    return path;
  });
  figure.append(...countries);
  const over = (event) => countries.find((path) => path === event.target);
  let last;
  figure.addEventListener('pointermove', (event) => {
    const path = over(event);
    if (path === last) return;
    last?.setAttribute('stroke', '#fff');
    path?.setAttribute('stroke', '#000');
    if (path && event.buttons) colour(path);
    last = path;
  });
  figure.addEventListener('pointerup', (event) => {
    const path = over(event);
    if (path) colour(path);
  });
  figure.addEventListener('keydown', (event) => {
    const path = countries[event.key.charCodeAt(0) % countries.length];
    if (path) colour(path);
  });
  parent.append(figure);
}

export const visible = () => countries[3].getBoundingClientRect().width > 0;

function middle(path) {
  const box = path.getBBox();
  const scale = figure.getBoundingClientRect().width / 960;
  const { x, y } = figure.getBoundingClientRect();
  return [x + (box.x + box.width / 2) * scale, y + (box.y + box.height / 2) * scale];
}

const large = () =>
  countries
    .filter((path) => document.elementFromPoint(...middle(path)) === path)
    .sort((a, b) => b.getBBox().width * b.getBBox().height - a.getBBox().width * a.getBBox().height)
    .slice(0, 10);

export function act(i) {
  if (i % 2 === 0) {
    figure.focus();
    return { kind: 'key', key: 'abcd'[i % 4], event: 'keydown' };
  }
  return { kind: 'tap', point: middle(large()[i % 10]), event: 'pointerup' };
}

export const state = () => String(edits);

export const focusForKeys = () => figure.focus();
export const editKeys = ['a', 'b', 'c', 'd'];

export const way = () => large().map(middle);

export function watchHover() {
  let changes = 0;
  new MutationObserver((records) => (changes += records.length)).observe(figure, {
    subtree: true,
    attributes: true,
  });
  return () => changes;
}

export const toDraw = () => undefined;
