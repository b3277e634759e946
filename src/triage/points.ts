import type { LimbFacts } from './facts.js';
import type { TriageSettings } from './settings.js';

/*
 * Points of a limb. Each group counts once, with its highest line; more points never mean less urgency. Two signs of
 * ischaemia come to 8. The lines are the signs of RCEM and Rutherford 1997; the points are a safety rule of these tables.
 */

/** Points of what was seen, felt, heard and told, group by group. */
export interface Points {
  readonly colour: number;
  readonly temperature: number;
  readonly flow: number;
  readonly capillary: number;
  readonly veins: number;
  readonly complaint: number;
  readonly feeling: number;
  readonly power: number;
  readonly muscle: number;
}

/** The points of the circulation alone. */
export function circulationPoints(
  {
    inspection: { colour, temperature, refill, venousDoppler },
    flow,
  }: Pick<LimbFacts, 'inspection' | 'flow'>,
  settings: TriageSettings,
): Pick<Points, 'colour' | 'temperature' | 'flow' | 'capillary' | 'veins'> {
  const { points } = settings;
  const warm = flow.bothEndsNormal;
  return {
    colour:
      colour === 'fixed-mottled'
        ? points.colour.fixed
        : colour === 'pale' || colour === 'blue' || colour === 'mottled'
          ? warm
            ? points.colour.whenEndsNormal
            : points.colour.ischaemic
          : 0,
    temperature:
      temperature === 'cold'
        ? warm
          ? points.temperature.coldWhenEndsNormal
          : points.temperature.cold
        : temperature === 'cool'
          ? warm
            ? points.temperature.coolWhenEndsNormal
            : points.temperature.cool
          : 0,
    flow: flow.points,
    capillary: refill !== undefined && refill > settings.refillOver ? points.refill : 0,
    veins: venousDoppler === 'inaudible' ? points.veins : 0,
  };
}

/** The points of feeling, power and muscle. */
export function nervePoints(
  { feeling, power, inspection: { muscle } }: Pick<LimbFacts, 'feeling' | 'power' | 'inspection'>,
  { points }: TriageSettings,
): Pick<Points, 'feeling' | 'power' | 'muscle'> {
  return {
    feeling:
      feeling === 'lost'
        ? points.feeling.lost
        : feeling === 'digits' || feeling === 'beyond-digits'
          ? points.feeling.partly
          : 0,
    power: power === 'weak' || power === 'paralysed' ? points.power : 0,
    muscle:
      muscle === 'tense' || muscle === 'rigid'
        ? points.muscle.tense
        : muscle === 'tender'
          ? points.muscle.tender
          : 0,
  };
}

/** The points of what the patient complains of; none where the circulation is shown to be normal. */
export function complaintPoints(
  { history: { suddenPain, symptom, onset } }: Pick<LimbFacts, 'history'>,
  newComplaint: boolean,
  shownNormal: boolean,
  { points: { complaint } }: TriageSettings,
): number {
  if (shownNormal) return 0;
  if (suddenPain || (symptom === 'rest-pain' && onset === 'sudden')) return complaint.suddenPain;
  return Math.max(symptom === 'rest-pain' ? complaint.restPain : 0, newComplaint ? complaint.new : 0);
}

/** Sum of the points of the circulation. */
export const circulationSum = (
  points: Pick<Points, 'colour' | 'temperature' | 'flow' | 'capillary' | 'veins'>,
): number => points.colour + points.temperature + points.flow + points.capillary + points.veins;

/** Sum of all points. */
export const sumOf = (points: Points): number =>
  circulationSum(points) + points.complaint + points.feeling + points.power + points.muscle;

/**
 * Whether a limb's circulation is shown to be normal: nothing speaks against it, an end artery is normal, and warmth and colour were
 * recorded as normal.
 */
export function shownNormal(
  { flow, inspection }: Pick<LimbFacts, 'flow' | 'inspection'>,
  circulation: number,
): boolean {
  return (
    circulation === 0 &&
    flow.oneEndNormal &&
    inspection.temperature === 'warm' &&
    inspection.colour === 'normal'
  );
}
