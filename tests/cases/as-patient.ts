import type { PatientInput } from '../../src/flow/index.js';
import { lesionsOf } from './convert.js';
import type { PublishedCase } from './form.js';

/*
 * A published case as a simulated patient: its blocks, the decade of life, and collaterals by the course. The lesions alone are
 * taken; nothing of what was felt or measured.
 */

const CLOSED = /occlusion|saddle|transection|rupture|no flow|thrombosis|thrombus|no connection|atresia/;
const NOT_QUITE = /near-occlusion|nearly|minimal|stenosis|aneurysm/;

/** Words by which a source says that a block is short, or lies before the branches that would fill the artery beyond it. */
const SHORT = /\d ?(mm|cm)|embolus|rupture|transection|proximal to the vertebral|filled by steal/;

/** The patient, or nothing where a lesion is no plain block. */
export function patientOfCase(one: PublishedCase): PatientInput | undefined {
  const blocks = one.lesion.every(({ kind }) => CLOSED.test(kind) && !NOT_QUITE.test(kind));
  if (!blocks || one.lesion.length === 0) return undefined;
  const decade = Number.parseInt(one.age_band ?? '', 10);
  return {
    ...(decade ? { age: Math.max(15, decade + 5) } : {}),
    // A block of hours or days has found no time for collaterals.
    collaterals: one.course?.startsWith('acute') ? 'fresh' : 'usual',
    lesions: one.lesion.flatMap((lesion) =>
      lesionsOf({ ...one, lesion: [lesion] }).map((piece) => ({
        piece,
        extent: SHORT.test(lesion.kind) ? ('short' as const) : ('whole' as const),
      })),
    ),
  };
}
