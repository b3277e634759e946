import { type Place, type PlaceKey, placeKey } from '../../../anatomy/index.js';
import type { Recorder } from '../recorder.js';
import type { TableActs } from './table.js';

/** What the cells of the table do to the record. */
export function tableActs(recorder: Recorder, open: (key: PlaceKey) => void): TableActs {
  return {
    grade: (place, step) => recorder.grade(place, step),
    bruit: (place, bruit) => recorder.bruit(place, bruit),
    reason: (place, reason, of) =>
      of === 'pulse' ? recorder.reason(place, reason) : recorder.bruitReason(place, reason),
    clear: (place, of) => recorder.clearPart(place, of),
    open: (place: Place) => open(placeKey(place)),
  };
}
