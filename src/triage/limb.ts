import type { Examination } from '../examination/index.js';
import { isWeak, feelsLess, type LimbFacts, limbFacts } from './facts.js';
import { type LimbOnset, onsetOf } from './onset.js';
import {
  circulationPoints,
  circulationSum,
  complaintPoints,
  nervePoints,
  type Points,
  shownNormal,
  sumOf,
} from './points.js';
import type { StagedLimb } from './record.js';
import { type TriageSettings } from './settings.js';
import type { Urgent } from './urgency.js';

/** All that decides the urgency of a limb. */
export interface Weighed {
  readonly onset: LimbOnset['state'];
  readonly points: Points;
  /** Points of the circulation. */
  readonly circulation: number;
  readonly sum: number;
  readonly feeling: LimbFacts['feeling'];
  readonly power: LimbFacts['power'];
  readonly bothEndsNormal: boolean;
  readonly silent: boolean;
  readonly shownNormal: boolean;
  /** Sudden pain was told. */
  readonly suddenPain: boolean;
  /** An arm whose fingers alone are numb, both ends of both arms normal, and nothing else but colour and temperature. */
  readonly fingersOnly: boolean;
  /** No pulse anywhere in the limb, and nothing else recorded against it. */
  readonly pulselessAlone: boolean;
}

function acuteUrgency(w: Weighed, settings: TriageSettings): Urgent {
  const { sum, points } = w;
  if (sum >= settings.acute.now) {
    const onlyWeak = w.bothEndsNormal && w.circulation === 0 && sum === points.power;
    return onlyWeak && w.onset === 'unknown' ? settings.weaknessWithPulses : 'now';
  }
  if (w.fingersOnly) return 'soon';
  const onlyNumb = w.shownNormal && w.feeling === 'digits' && sum === points.feeling;
  if (onlyNumb && w.onset === 'unknown') return settings.numbnessWithPulses;
  if (sum >= settings.acute.today || points.feeling > 0 || points.complaint > 0) return 'today';
  if (w.pulselessAlone && settings.pulselessAlone === 'today') return 'today';
  return w.shownNormal && w.suddenPain ? settings.suddenPainShownNormal : 'none';
}

function chronicUrgency(w: Weighed, settings: TriageSettings): Urgent {
  const { points, circulation } = w;
  const { deficitFrom, feelingNowFrom, today, soon } = settings.chronic;
  const weak = points.power > 0;
  const numb = points.feeling > 0;
  if (points.colour >= settings.points.colour.fixed) return 'now';
  if ((weak || w.feeling === 'lost') && circulation >= deficitFrom) return 'now';
  if (numb && circulation >= feelingNowFrom) return 'now';
  if (weak && circulation < deficitFrom) {
    // An old weakness in a limb with pulses and feeling is not one of the circulation.
    if (w.power === 'paralysed' || !w.bothEndsNormal || numb) return 'today';
  }
  if (numb && circulation >= deficitFrom) return settings.chronicNumbness;
  if (w.silent || circulation >= today) return 'today';
  return circulation >= soon ? 'soon' : 'none';
}

/** The urgency of a limb by its points. An unknown onset counts as an acute one. */
export function limbUrgency(weighed: Weighed, settings: TriageSettings): Urgent {
  return weighed.onset === 'chronic' ? chronicUrgency(weighed, settings) : acuteUrgency(weighed, settings);
}

/** A limb with its facts, its onset, its points and the urgency they come to. */
export interface LimbState extends Weighed {
  readonly limb: StagedLimb;
  readonly facts: LimbFacts;
  readonly began: LimbOnset;
  readonly urgency: Urgent;
  /** Beyond which capillary refill counts, in seconds. */
  readonly refillOver: number;
}

/** Weighs what is known of a limb. */
export function weigh(
  facts: LimbFacts,
  examination: Pick<Examination, 'onset' | 'examinedAt'>,
  otherEndsNormal: boolean,
  settings: TriageSettings,
): Weighed & { readonly began: LimbOnset } {
  const ofCirculation = circulationPoints(facts, settings);
  const circulation = circulationSum(ofCirculation);
  const began = onsetOf(examination, facts, circulation, settings);
  const normal = shownNormal(facts, circulation);
  const points: Points = {
    ...ofCirculation,
    complaint: complaintPoints(facts, began.newComplaint, normal, settings),
    ...nervePoints(facts, settings),
  };
  const sum = sumOf(points);
  const { pulses, flow, kind, history } = facts;
  return {
    began,
    onset: began.state,
    points,
    circulation,
    sum,
    feeling: facts.feeling,
    power: facts.power,
    bothEndsNormal: flow.bothEndsNormal,
    silent: flow.silent,
    shownNormal: normal,
    suddenPain:
      history.suddenPain === true || (history.symptom === 'rest-pain' && history.onset === 'sudden'),
    fingersOnly:
      kind === 'arm' &&
      facts.feeling === 'digits' &&
      flow.bothEndsNormal &&
      otherEndsNormal &&
      sum === points.colour + points.temperature + points.feeling,
    pulselessAlone:
      sum === points.flow && pulses.length > 0 && pulses.every(({ state }) => state === 'absent'),
  };
}

/** Every limb of a record, weighed. */
export function limbStates(examination: Examination, settings: TriageSettings): LimbState[] {
  const kinds = ['leg', 'arm'] as const;
  return kinds.flatMap((kind) => {
    const both = (['right', 'left'] as const).map((side) => limbFacts(examination, { kind, side }, settings));
    return both.map((facts, i): LimbState => {
      const other = both[1 - i] as LimbFacts;
      const weighed = weigh(facts, examination, other.flow.bothEndsNormal, settings);
      const { side } = facts;
      return {
        ...weighed,
        limb: { kind, side },
        facts,
        urgency: limbUrgency(weighed, settings),
        refillOver: settings.refillOver,
      };
    });
  });
}

/** A limb that is, or must be taken for, acutely ischaemic. */
export const isAcutelyIschaemic = ({ urgency, onset, circulation, points }: LimbState): boolean =>
  urgency === 'now' && onset !== 'chronic' && (circulation > 0 || points.complaint > 0);

export const hasDeficit = ({ facts }: LimbState): boolean => feelsLess(facts) || isWeak(facts);
