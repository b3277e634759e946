import {
  ARTERIES,
  type ArteryId,
  isPulseSite,
  type ListeningSiteId,
  type Place,
  PULSE_PLACES,
  type PulseSiteId,
  type Side,
  SIDES,
  vesselKey,
  type VesselKey,
} from '../../src/anatomy/index.js';
import {
  type AgeBand,
  DOPPLER_SIGNALS,
  emptyExamination,
  type Examination,
  setBruit,
  setPulse,
} from '../../src/examination/index.js';
import type { PressureEvidence } from '../../src/localisation/network/index.js';
import { withContext } from './context.js';
import type { PublishedCase } from './form.js';

/*
 * A published case as the record an examiner would have made: pulses, bruits, pressures, delays and Doppler signals that
 * were found, and what was known beforehand (age, course). Nothing is taken from the lesion, the title or the note.
 */

/** Where the source names no side, the right one stands in. */
const side = (name: string): Side => (name === 'left' ? 'left' : 'right');

const LISTENING: readonly [RegExp, ListeningSiteId][] = [
  [/carotid/, 'carotid'],
  [/subclav|supraclav/, 'subclavian'],
  [/axill/, 'axillary'],
  [/renal|flank/, 'renal'],
  [/iliac fossa|iliac/, 'iliac'],
  [/femoral|groin/, 'femoral'],
  [/adductor/, 'adductor-canal'],
  [/popliteal/, 'popliteal'],
  [/epigastr|abdom|aort/, 'abdominal-aorta'],
];

function ageBand(text: string | null): AgeBand | undefined {
  if (!text) return undefined;
  const decade = Number(/(\d+)0s/.exec(text)?.[1] ?? NaN) * 10;
  if (/child|infant|adolescent|under 10/.test(text) || decade < 20 || /^(0|1|single)/.test(text))
    return 'under-20';
  if (/young adult/.test(text) || decade < 40) return '20-39';
  if (decade < 60) return '40-59';
  if (decade < 80) return '60-79';
  return decade >= 80 ? '80-over' : undefined;
}

/** Acute on chronic is chronic here: trouble begins where the old disease is. */
function onset(course: string | null): Examination['onset'] {
  if (!course) return undefined;
  if (course.includes('chronic')) return 'chronic';
  return course.includes('acute') ? 'acute' : undefined;
}

const number = (value: unknown): number | undefined => {
  const found = typeof value === 'number' ? value : Number.parseFloat(String(value));
  return Number.isFinite(found) ? found : undefined;
};

function pressures(given: PublishedCase['pressures']): PressureEvidence {
  const abi = given.abi as Partial<Record<Side, unknown>> | undefined;
  const arm = given.arm as Partial<Record<Side, unknown>> | string | undefined;
  const loose = given as Record<string, unknown>;
  const flat = (name: string, s: Side): number | undefined =>
    number(loose[`${name}_${s}`] ?? (s === 'right' ? loose[name] : undefined)) ??
    (/not (recordable|measurable)/.test(String(loose[`${name}_${s}`])) ? 0 : undefined);
  const bySite = given.abi_by_site as Partial<Record<Side, Record<string, unknown>>> | undefined;
  const at: Record<string, number> = {};
  const ankle: { right?: number; left?: number } = {};
  const arms = SIDES.map((s) => (typeof arm === 'object' ? number(arm[s]) : flat('arm', s)));
  SIDES.forEach((s, i) => {
    const index =
      typeof abi === 'object' ? (typeof abi[s] === 'number' ? abi[s] : undefined) : flat('abi', s);
    if (index !== undefined) ankle[s] = index;
    for (const [site, value] of Object.entries(bySite?.[s] ?? {})) {
      const found = number(value);
      if (found !== undefined) at[`${s} ${site.replaceAll('_', '-')}`] = found;
    }
    if (arms[0] && arms[1]) at[`${s} brachial`] = arms[i]! / Math.max(arms[0], arms[1]);
  });
  return { at, ankle };
}

/** Delays and Doppler signals among the findings in words. */
function inWords(examination: Examination, other: readonly string[]): Examination {
  let next = examination;
  for (const text of other.map((t) => t.toLowerCase())) {
    const sides = SIDES.filter((s) => text.includes(s));
    if (/delay/.test(text) && /femoral/.test(text)) {
      const legs = sides.length === 1 ? sides : SIDES;
      next = { ...next, delays: { radioFemoral: Object.fromEntries(legs.map((s) => [s, 'delayed'])) } };
    }
    const signal = DOPPLER_SIGNALS.find((one) => text.includes(one));
    if (!signal || signal === 'absent' || !text.includes('doppler') || sides.length !== 1) continue;
    for (const place of PULSE_PLACES) {
      if (place.side !== sides[0] || !text.includes(place.site.replaceAll('-', ' '))) continue;
      next = setPulse(next, place, { doppler: signal });
    }
  }
  return next;
}

/** The record of a case, and its pressures as indices. */
export function recordOf(one: PublishedCase): { examination: Examination; pressures: PressureEvidence } {
  let examination = emptyExamination('words');
  for (const [name, sides] of Object.entries(one.pulses)) {
    const site = name.replaceAll('_', '-');
    if (!isPulseSite(site)) {
      console.warn(`case ${one.id}: no such pulse site as "${name}"; left out`);
      continue;
    }
    for (const [at, grade] of Object.entries(sides)) {
      if (grade === 'not stated' || grade === undefined) continue;
      const place: Place<PulseSiteId> = { site, side: site === 'abdominal-aorta' ? 'midline' : side(at) };
      examination = setPulse(examination, place, { grade });
    }
  }
  for (const heard of one.bruits) {
    const site = LISTENING.find(([words]) => words.test(heard.site.toLowerCase()))?.[1];
    if (!site) continue;
    const sides =
      site === 'abdominal-aorta'
        ? (['midline'] as const)
        : heard.side === 'both'
          ? SIDES
          : [side(heard.side)];
    for (const s of sides) examination = setBruit(examination, { site, side: s }, { bruit: 'systolic' });
  }
  const began = onset(one.course);
  const band = ageBand(one.age_band);
  if (began) examination = { ...examination, onset: began };
  if (band) examination = { ...examination, context: { ageBand: band } };
  return {
    examination: withContext(inWords(examination, one.other), one),
    pressures: pressures(one.pressures),
  };
}

/** Names of segments that differ from ours; `null` is a segment that is no part of the tree. */
const SEGMENTS: Readonly<Record<string, ArteryId | null>> = {
  ascending_thoracic_aorta: 'ascending-aorta',
  arch_thoracic_aorta: 'aortic-arch',
  descending_thoracic_aorta: 'thoracic-aorta',
  abdominal_aorta_above_renals: 'suprarenal-aorta',
  innominate: 'brachiocephalic',
  deep_palmar_arch: 'deep-palmar-arch',
  palmar_arch: 'superficial-palmar-arch',
  digital_arteries: 'superficial-palmar-arch',
  pedal_arch: 'plantar-arch',
  profunda_femoris: 'deep-femoral',
  sciatic_artery: null,
};

/** The vessels that a case's lesions lie in; congenital absences are no lesions. */
export function lesionsOf(one: PublishedCase): VesselKey[] {
  return one.lesion.flatMap(({ segment, side: at, kind }): VesselKey[] => {
    if (/congenital absence/.test(kind)) return [];
    const artery = segment in SEGMENTS ? SEGMENTS[segment] : segment.replaceAll('_', '-');
    if (artery === null || artery === undefined) return [];
    if (!(artery in ARTERIES)) {
      console.warn(`case ${one.id}: no such segment as "${segment}"; left out`);
      return [];
    }
    const id = artery as ArteryId;
    const { occurs } = ARTERIES[id];
    if (occurs === 'midline') return [vesselKey({ artery: id, side: 'midline' })];
    const sides = at === 'both' ? SIDES : [side(at)];
    return sides
      .filter((s) => occurs === 'paired' || s === occurs)
      .map((s) => vesselKey({ artery: id, side: s }));
  });
}
