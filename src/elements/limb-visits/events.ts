import type { PatientVisit } from '../../comparison/visits.js';

/** A person wants to see one visit. Bubbles and leaves the shadow tree. */
export class VisitOpenEvent extends Event {
  constructor(readonly visit: PatientVisit) {
    super('visit-open', { bubbles: true, composed: true });
  }
}

/** A person chose other visits to compare. Bubbles and leaves the shadow tree. */
export class CompareChangeEvent extends Event {
  constructor(
    /** Ids of the chosen visits, the earlier first; one or two. */
    readonly ids: readonly string[],
  ) {
    super('compare-change', { bubbles: true, composed: true });
  }
}

declare global {
  interface GlobalEventHandlersEventMap {
    'visit-open': VisitOpenEvent;
    'compare-change': CompareChangeEvent;
  }
}
