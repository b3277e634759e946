import { foundUlcer, type ThrombosisSign } from '../examination/index.js';
import { releasedArtery } from '../bedside/index.js';
import type { Case, Raised } from './flag.js';
import { given, type Ground } from './ground.js';
import { limbGrounds } from './limb-grounds.js';
import { hasDeficit, type LimbState } from './limb.js';
import { contextOf, isBlue, isIschaemicColour } from './record.js';
import { digitsIn, gangreneGrounds, ulcerGrounds } from './wounds.js';

/** Signs of a deep vein thrombosis that say that the limb is swollen. */
const SWOLLEN: readonly ThrombosisSign[] = ['whole-limb-swollen', 'calf-wider', 'one-sided-pitting'];

/**
 * Swollen and blue: veins closed to the last. With pain, a deficit, gangrene or signs of ischaemia it threatens the limb at once. Source:
 * emergency teaching pages. A swollen calf without the colour is another pathway.
 */
function phlegmasia({ settings }: Case, state: LimbState): Raised[] {
  const poorFrom = settings.poorFrom.skin;
  const { limb, facts, onset, began, points } = state;
  const { colour, oedema, muscle, thrombosisSigns = [] } = facts.inspection;
  const { symptom, suddenPain } = facts.history;
  const oedematous = oedema !== undefined && oedema !== 'none';
  if (onset === 'chronic' || !(oedematous || thrombosisSigns.some((sign) => SWOLLEN.includes(sign))))
    return [];
  const blue = isBlue(facts.inspection);
  const hurts = symptom === 'rest-pain' || suddenPain || began.newComplaint;
  const hard = muscle === 'tender' || muscle === 'tense' || muscle === 'rigid';
  const dead = gangreneGrounds(facts.inspection);
  const ischaemic =
    points.flow >= poorFrom || points.temperature >= poorFrom || points.veins > 0 || points.capillary > 0;
  const urgent = hurts || hard || dead.length > 0 || ischaemic || hasDeficit(state);
  if (!blue && !(colour === 'pale' && urgent)) return [];
  const because: Ground[] = [
    ...(colour ? [{ code: 'colour', value: colour } as const] : []),
    ...(oedematous ? [{ code: 'oedema', value: oedema } as const] : []),
    ...given(thrombosisSigns.length, { code: 'thrombosis-signs', signs: thrombosisSigns } as const),
    ...dead,
    ...limbGrounds(state).filter(({ code }) => code !== 'colour'),
  ];
  return [{ code: 'phlegmasia', urgency: urgent ? 'now' : 'today', limb, because }];
}

/** Source: Handford 2014; 72 h: WMS guideline (from memory). A time unknown counts as the worst. */
function coldInjury({ examination, settings }: Case, { limb }: LimbState): Raised[] {
  const injury = contextOf(examination).coldInjury?.[limb.kind]?.[limb.side];
  if (!injury) return [];
  const { hours } = injury;
  const { now, today } = settings.coldInjury;
  const urgency = hours === undefined || hours <= now ? 'now' : hours <= today ? 'today' : 'soon';
  const because: Ground[] = [{ code: 'cold-injury', ...(hours !== undefined && { hours }) }];
  return [{ code: 'cold-injury', urgency, limb, because }];
}

/** Ulcers, gangrene and blue fingers of a hand. Sources: reviews of critical digital ischaemia; hypothenar hammer. */
function hand(known: Case, state: LimbState): Raised[] {
  const { limb, facts, onset, points } = state;
  if (limb.kind !== 'arm') return [];
  const { inspection, history } = facts;
  const { gangrene, gangreneExtent } = inspection;
  const sore = foundUlcer(inspection);
  const tissue = known.examination.history?.risks?.includes('connective-tissue-disease') === true;
  const ill = isIschaemicColour(inspection);
  const ofUlcer = ulcerGrounds(inspection);
  const flags: Raised[] = [];
  // Wet gangrene has a flag of its own.
  const dead = gangrene === 'dry' || digitsIn(inspection, 'gangrene').length > 0;
  const threatened = sore && (ill || points.flow >= known.settings.poorFrom.soreFinger || tissue);
  if (dead || threatened) {
    const spreads = dead && gangreneExtent !== undefined && gangreneExtent !== 'digits';
    const hurts = threatened && history.symptom === 'rest-pain';
    flags.push({
      code: 'threatened-hand',
      urgency: onset !== 'chronic' && (spreads || hurts) ? 'now' : 'today',
      limb,
      because: [
        ...(dead ? gangreneGrounds(inspection) : []),
        ...ofUlcer,
        ...(threatened ? limbGrounds(state) : []),
        ...given(threatened && tissue, { code: 'connective-tissue-disease' } as const),
      ],
    });
  }
  // Limb threat is defined for legs; that pain at rest beyond a lost pulse is referred in an arm too: common practice, no source.
  const aches = history.symptom === 'rest-pain' || history.symptom === 'tissue-loss';
  if (!flags.length && aches && onset === 'chronic' && points.flow >= known.settings.poorFrom.disease) {
    const because: Ground[] = [
      ...given(history.symptom === 'tissue-loss', { code: 'symptom', value: 'tissue-loss' } as const),
      ...limbGrounds(state),
    ];
    flags.push({ code: 'perfusion-poor', urgency: 'soon', limb, because });
  }
  const arch = known.examination.bedside?.['hand-arch']?.[limb.side];
  const white = releasedArtery(arch?.ulnar, arch?.limit) === 'blocked';
  const cold =
    history.coldFingers === true ||
    ill ||
    inspection.temperature === 'cool' ||
    inspection.temperature === 'cold';
  if (white && (cold || sore)) {
    const because: Ground[] = [
      { code: 'ulnar-release-white' },
      ...given(history.coldFingers, { code: 'cold-fingers' } as const),
      ...ofUlcer,
    ];
    flags.push({ code: 'ulnar-artery-hand', urgency: sore ? 'today' : 'soon', limb, because });
  }
  return flags;
}

/** Blue digits, or a blue foot with both pulses acutely: emboli. Source: pages on blue toe syndrome. */
function digits(state: LimbState): Raised[] {
  const { limb, facts, bothEndsNormal, onset } = state;
  const { colour } = facts.inspection;
  const blue = digitsIn(facts.inspection, 'blue');
  const foot =
    limb.kind === 'leg' && (colour === 'blue' || colour === 'mottled') && bothEndsNormal && onset === 'acute';
  if (!blue.length && !foot) return [];
  const because: Ground[] = [
    ...given(blue.length, { code: 'digits', state: 'blue', digits: blue } as const),
    ...(foot && colour ? [{ code: 'colour', value: colour } as const] : []),
  ];
  return [{ code: 'digital-ischaemia', urgency: 'today', limb, because }];
}

/** Flags of what is seen on a limb besides the points: veins, cold injury, hand and digits. */
export function skinFlags(known: Case): Raised[] {
  return known.limbs.flatMap((state) => [
    ...phlegmasia(known, state),
    ...coldInjury(known, state),
    ...hand(known, state),
    ...digits(state),
  ]);
}
