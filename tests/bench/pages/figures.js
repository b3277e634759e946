/* global performance */
// Still pictures of fifty visits on one page, which share one body.
import { emptyExamination, PULSE_PLACES, setPulse } from 'pulse-map/core';
import { figureBody, figureSVG } from 'pulse-map/picture';

const COUNT = 50;
const GRADES = ['absent', 'reduced', 'normal', 'bounding'];
const LOOK = { width: 160 };
let pictures;

/** A visit at which three pulses beside each other were graded, another for each number. */
function visit(i) {
  return [0, 1, 2].reduce(
    (record, step) =>
      setPulse(record, PULSE_PLACES[(i + 2 * step) % PULSE_PLACES.length], {
        grade: GRADES[(i + step * 3) % 4],
      }),
    { ...emptyExamination(), examinedAt: `2026-01-${String((i % 28) + 1).padStart(2, '0')}T10:00:00Z` },
  );
}

const draw = (from) =>
  Array.from({ length: COUNT }, (_, i) => figureSVG(visit(from + i), { ...LOOK, shared: true }));

export function mount(parent) {
  pictures = draw(0);
  parent.innerHTML = figureBody(LOOK) + pictures.join('');
}

export const visible = () => pictures.length === COUNT && new Set(pictures).size > COUNT / 2;

/** Time of a picture once the code is warm, in ms, and its mean size in bytes. */
export function pictureCost() {
  draw(COUNT);
  const start = performance.now();
  const made = draw(2 * COUNT);
  const ms = (performance.now() - start) / COUNT;
  return { ms, bytes: made.reduce((sum, text) => sum + text.length, 0) / COUNT };
}
