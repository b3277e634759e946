import { isPulseSite, type Place, type PulseSiteId } from '../anatomy/index.js';
import {
  bruitAt,
  BRUITS,
  DOPPLER_SIGNALS,
  type Examination,
  isBruitLocked,
  isPulseLocked,
  isStated,
  pulseAt,
  REASONS,
} from '../examination/index.js';
import { placesIn, REGIONS_TOLD } from './limbs.js';
import { bruitPath, pulsePath, recordedPaths } from './recorded.js';
import type { LetterSentence, LetterStatement, PulseGroup, PulseRegion } from './types.js';

type PulsePlace = Place<PulseSiteId>;

const pulsesIn = (region: PulseRegion): readonly PulsePlace[] =>
  placesIn(region).filter((place): place is PulsePlace => isPulseSite(place.site));

const said = (says: LetterStatement, places: readonly Place[], path: (place: Place) => string) => ({
  says,
  from: places.map(path),
});

/** The graded pulses of a region, sites next to each other with the same pulse together, proximal first. */
function groupsOf(examination: Examination, places: readonly PulsePlace[]): PulseGroup[] {
  const groups: { grade: PulseGroup['grade']; increased: boolean; sites: PulseSiteId[] }[] = [];
  for (const place of places) {
    const { grade, increased = false } = pulseAt(examination, place) ?? {};
    if (!grade) continue;
    const last = groups.at(-1);
    if (last?.grade === grade && last.increased === increased) last.sites.push(place.site);
    else groups.push({ grade, increased, sites: [place.site] });
  }
  return groups.map(({ grade, increased, sites }) => ({
    grade,
    ...(increased && { increased: true }),
    sites,
  }));
}

const isGraded = (examination: Examination) => (place: Place) =>
  pulseAt(examination, place)?.grade !== undefined;

const isNormalPulse = (examination: Examination) => (place: Place) =>
  pulseAt(examination, place)?.grade === 'normal';

/** Whether every pulse site of a region is graded, and normal. */
function allNormal(examination: Examination, region: PulseRegion): boolean {
  return pulsesIn(region).every(isNormalPulse(examination));
}

/** The regions whose pulses are all there and normal, in one sentence. */
export function wholeRegions(
  examination: Examination,
  regions: readonly PulseRegion[] = REGIONS_TOLD,
): LetterSentence[] {
  const whole = regions.filter((region) => allNormal(examination, region));
  return whole.length
    ? [said({ code: 'all-pulses', regions: whole }, whole.flatMap(pulsesIn), pulsePath)]
    : [];
}

/** The pulses of one region, unless all are normal: those are told in one sentence for all regions. */
export function regionPulses(examination: Examination, region: PulseRegion): LetterSentence[] {
  const places = pulsesIn(region);
  const groups = groupsOf(examination, places);
  if (!groups.length || allNormal(examination, region)) return [];
  return [said({ code: 'pulses', region, groups }, places.filter(isGraded(examination)), pulsePath)];
}

/** The pulses of these regions that are graded, where all of them are normal and others were not graded. */
export function normalPlaces(examination: Examination, regions: readonly PulseRegion[]): LetterSentence[] {
  const places = regions
    .filter((region) => !allNormal(examination, region))
    .flatMap(pulsesIn)
    .filter(isGraded(examination));
  return places.length ? [said({ code: 'normal-places', places }, places, pulsePath)] : [];
}

/** Whether a pulse of a region is not normal. */
export function isAffected(examination: Examination, region: PulseRegion): boolean {
  return pulsesIn(region).some((place) => {
    const { grade } = pulseAt(examination, place) ?? {};
    return grade !== undefined && grade !== 'normal';
  });
}

/** Pulses that are not normal, region by region, each with the normal one above it that bounds what is wrong. */
export function abnormalPulses(examination: Examination): LetterSentence[] {
  return REGIONS_TOLD.filter((region) => isAffected(examination, region)).flatMap((region) =>
    regionPulses(examination, region),
  );
}

/** How many pulses are normal in the regions that `abnormalPulses` leaves out. */
export function countedNormals(examination: Examination): LetterSentence[] {
  const told = new Set(abnormalPulses(examination).flatMap(({ from }) => from));
  const normal = REGIONS_TOLD.flatMap(pulsesIn)
    .filter(isNormalPulse(examination))
    .filter((place) => !told.has(pulsePath(place)));
  return normal.length
    ? [said({ code: 'normal-pulses', count: normal.length, others: told.size > 0 }, normal, pulsePath)]
    : [];
}

/** What is felt beside the grade, and what is heard by Doppler. */
export function feltBeside(examination: Examination, region: PulseRegion): LetterSentence[] {
  const places = pulsesIn(region);
  const having = (has: (place: PulsePlace) => boolean, says: (places: PulsePlace[]) => LetterStatement) => {
    const found = places.filter(has);
    return found.length ? [said(says(found), found, pulsePath)] : [];
  };
  return [
    ...having(
      (place) => pulseAt(examination, place)?.expansile === true,
      (all) => ({ code: 'expansile', places: all }),
    ),
    ...having(
      (place) => pulseAt(examination, place)?.thrill === true,
      (all) => ({ code: 'thrill', places: all }),
    ),
    ...DOPPLER_SIGNALS.flatMap((signal) =>
      having(
        (place) => pulseAt(examination, place)?.doppler === signal,
        (all) => ({ code: 'doppler', signal, places: all }),
      ),
    ),
  ];
}

/** What was heard over the arteries; `none` was listened for. */
export function bruits(
  examination: Examination,
  regions: readonly PulseRegion[],
  which: readonly (typeof BRUITS)[number][] = BRUITS,
): LetterSentence[] {
  const places = regions.flatMap(placesIn);
  return which.toReversed().flatMap((bruit) => {
    const found = places.filter((place) => bruitAt(examination, place)?.bruit === bruit);
    return found.length ? [said({ code: 'bruit', bruit, places: found }, found, bruitPath)] : [];
  });
}

/**
 * What the examiner wrote at a site; a note that stands with both findings is told once.
 * @param of sites that were examined, or those that could not be, whose notes say why
 */
export function placeNotes(
  examination: Examination,
  region: PulseRegion,
  of: 'examined' | 'could-not',
): LetterSentence[] {
  return placesIn(region).flatMap((place) => {
    const failed = [pulseAt(examination, place), bruitAt(examination, place)].some(
      (one) => one?.couldNotExamine,
    );
    if (failed !== (of === 'could-not')) return [];
    const notes = new Map<string, string[]>();
    const pulse = pulseAt(examination, place)?.note;
    const bruit = bruitAt(examination, place)?.note;
    if (pulse) notes.set(pulse, [pulsePath(place)]);
    if (bruit) notes.set(bruit, [...(notes.get(bruit) ?? []), bruitPath(place)]);
    return [...notes].map(([note, from]): LetterSentence => ({
      says: { code: 'place-note', place, note },
      from,
    }));
  });
}

/** The delays that were compared. */
export function delays({ delays: compared }: Examination): LetterSentence[] {
  const { radioRadial, radioFemoral } = compared ?? {};
  return [
    ...(radioRadial
      ? [
          {
            says: { code: 'delay', delay: { of: 'radio-radial', found: radioRadial } },
            from: ['delays.radioRadial'],
          } as const,
        ]
      : []),
    ...(['right', 'left'] as const).flatMap((side): LetterSentence[] => {
      const found = radioFemoral?.[side];
      return found
        ? [
            {
              says: { code: 'delay', delay: { of: 'radio-femoral', side, found } },
              from: [`delays.radioFemoral.${side}`],
            },
          ]
        : [];
    }),
  ];
}

/** What could not be felt or heard and why, reason by reason. */
export function couldNot(examination: Examination): LetterSentence[] {
  const places = REGIONS_TOLD.flatMap(placesIn);
  const kept = (act: 'feel' | 'listen') => {
    const at = act === 'feel' ? pulseAt : bruitAt;
    return REASONS.flatMap((reason): LetterSentence[] => {
      const found = places.filter((place) => at(examination, place)?.couldNotExamine === reason);
      return found.length
        ? [
            said(
              { code: 'could-not', act, reason, places: found },
              found,
              act === 'feel' ? pulsePath : bruitPath,
            ),
          ]
        : [];
    });
  };
  return [...kept('feel'), ...kept('listen')];
}

/** Places recorded in a way this version does not know; they were examined. */
export function unreadPlaces(examination: Examination): LetterSentence[] {
  const places = REGIONS_TOLD.flatMap(placesIn).filter(
    (place) => isPulseLocked(examination, place) || isBruitLocked(examination, place),
  );
  if (!places.length) return [];
  const from = recordedPaths(
    examination,
    places.flatMap((place) => [pulsePath(place), bruitPath(place)]),
  );
  return [{ says: { code: 'unread-places', places }, from: from.length ? from : ['carried'] }];
}

/** Whether further pulses were not examined, without naming them. */
export function notExamined(examination: Examination): LetterSentence[] {
  const all = REGIONS_TOLD.flatMap(pulsesIn);
  const silent = all.filter(
    (place) => !isStated(pulseAt(examination, place)) && !isPulseLocked(examination, place),
  );
  if (!silent.length) return [];
  return [{ says: { code: 'other-pulses-not-examined', some: silent.length < all.length }, from: [] }];
}
