import { isPulseSite, type Place, type PlaceKey, placeKey } from '../../anatomy/index.js';
import { bruitAt, type Examination, isStated, pulseAt, type ScaleStep } from '../../examination/index.js';
import type { Messages } from '../../locale/index.js';
import { type Shown, shownFor } from '../shared/glyph.js';

/** How a site appears: its glyph, its names, and how loud its label is. */
export interface SiteView {
  readonly place: Place;
  readonly shown: Shown;
  /** Accessible name: the site and what is recorded there. */
  readonly name: string;
  /** What stands under the site's name; empty when the glyph says it all. */
  readonly finding: string;
  readonly weight: 'quiet' | 'plain' | 'loud';
}

/** A stroke in progress: the sites it went over show the carried grade before it is recorded. */
export interface Painting {
  readonly keys: readonly PlaceKey[];
  readonly step: ScaleStep;
}

export function siteView(
  place: Place,
  examination: Examination,
  words: Messages,
  painting: Painting | undefined,
): SiteView {
  const { scale } = examination;
  const felt = isPulseSite(place.site);
  const recorded = pulseAt(examination, place);
  const painted = felt && painting?.keys.includes(placeKey(place));
  const pulse = painted
    ? {
        ...recorded,
        grade: painting?.step.grade,
        increased: painting?.step.increased,
        couldNotExamine: undefined,
      }
    : recorded;
  const bruit = bruitAt(examination, place);
  const loud =
    (pulse?.grade && pulse.grade !== 'normal') ||
    pulse?.thrill ||
    pulse?.expansile ||
    (bruit?.bruit && bruit.bruit !== 'none');
  const silent = felt ? words.examination.notExamined : words.map.notListened;
  return {
    place,
    shown: shownFor(pulse, bruit, scale, !felt),
    name: words.map.siteLabel(place, words.map.findings(pulse, bruit, scale) || silent),
    finding: words.map.findingShort(pulse, bruit, scale),
    weight: loud ? 'loud' : isStated(pulse) || bruit ? 'plain' : 'quiet',
  };
}
