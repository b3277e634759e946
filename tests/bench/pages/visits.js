/* global document, location, setTimeout, URLSearchParams */
// A patient's visits: as many as the address says, each with every pulse, pressures and a walking distance, as the text a form submits.
import 'pulse-map/elements/limb-visits/define';
import { painted } from './tests/bench/pages/clock.js';
import { emptyExamination, PULSE_PLACES, setPulse } from 'pulse-map/core';

const COUNT = Number(new URLSearchParams(location.search).get('count') ?? 2);
const GRADES = ['absent', 'reduced', 'normal'];
const DAY = 86_400_000;
/** Records that differ; a real series repeats itself no less. */
const KINDS = 90;
const TEXTS = Array.from({ length: KINDS }, (_, i) => JSON.stringify(record(i)));
let element;

function record(i) {
  const felt = PULSE_PLACES.reduce(
    (one, place, at) => setPulse(one, place, { grade: GRADES[Math.floor(i / (at + 1)) % 3] }),
    emptyExamination(),
  );
  return {
    ...felt,
    pressures: {
      brachial: { right: 140, left: 138 },
      'posterior-tibial': { right: 140 - (i % 7), left: 60 + i },
      toe: { right: 90 - (i % 11), left: 30 + (i % 40) },
    },
    history: { leg: { left: { symptom: 'claudication', distance: 100 + 10 * i } } },
  };
}

/** As every host does, the texts come as strings of their own. */
const series = () =>
  Array.from({ length: COUNT }, (_, i) => ({
    id: `v${i}`,
    at: new Date(Date.UTC(1998, 0, 1) + i * DAY).toISOString().slice(0, 10),
    note: 'Review',
    examination: `${TEXTS[i % KINDS]} `,
  }));

const inside = (selector) => element.shadowRoot.querySelectorAll(selector);
const visits = series();

export function mount(parent) {
  element = document.createElement('limb-visits');
  element.lang = 'en';
  element.visits = visits;
  parent.append(element);
}

/** Cards with their dates stand in sight; the maps follow. */
export const visible = () => inside('.card .open b').length >= Math.min(2, COUNT);

async function until(what) {
  while (!what()) await new Promise((done) => setTimeout(done, 4));
}

/** Whether every card in sight shows its map. */
const drawn = () => inside('.picture svg:not(.rings)').length === inside('.card').length;

/** Whether every map in sight is drawn and every number read; the note on what is still being read leaves then. */
export const isWhole = () =>
  drawn() && inside('figure').length > 0 && !/ read so far/.test(element.shadowRoot.textContent);

export const focusForKeys = () => [...inside('.card .open')].at(-1).focus();
export const state = () => element.shadowRoot.activeElement?.closest('[data-at]')?.dataset.at;
/** The visit that the keys are at, once it is another than before. */
export async function moved(before) {
  await until(() => state() !== undefined && state() !== before);
  return state();
}

export const elements = () => inside('*').length;

/** Scrolls to as many places between two shares of the strip, at each until every map in sight is drawn. */
export async function scrollThrough(from, to, places) {
  const [strip] = inside('.strip');
  for (let i = 0; i < places; i++) {
    strip.scrollLeft = (from + ((to - from) * i) / (places - 1)) * (strip.scrollWidth - strip.clientWidth);
    await painted();
    await until(drawn);
  }
}
