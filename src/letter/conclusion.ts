import { type LimbKey, LIMBS, limbKey, LISTENING_PLACES, stationsOf } from '../anatomy/index.js';
import type { Examination } from '../examination/index.js';
import type { Conclusion, FindingPath, LimbConclusion, StageReport } from '../report/index.js';
import type { Nature } from '../statements/index.js';
import { groundPaths } from './grounds.js';
import { limbOf, regionOf } from './limbs.js';
import { placePaths, recordedPaths } from './recorded.js';
import { type LetterSentence, STAGED_SCHEMES } from './types.js';

/** What of a limb the localisation read: its pulses from the trunk outward, and what was heard over them. */
function readOn(examination: Examination, limb: LimbKey): FindingPath[] {
  const stations = stationsOf(limbOf(limb)).flat();
  const heard = LISTENING_PLACES.filter((place) => regionOf(place) === limb);
  return [...new Set([...stations, ...heard].flatMap((place) => placePaths(examination, place)))];
}

function ofLimb(
  examination: Examination,
  { limb, where, rule, voices, firm, contradictions }: LimbConclusion,
  brief: boolean,
): LetterSentence[] {
  const from = readOn(examination, limb);
  const first: LetterSentence = where
    ? { says: { code: 'conclusion', where, brief, ...(firm && { firm: firm.code }) }, from }
    : { says: { code: 'rule', lead: rule }, from };
  if (brief) return where || voices?.code !== 'rule-alone' ? [first] : [];
  return [
    first,
    ...(voices && voices.code !== 'agree' ? [{ says: { code: 'voices' as const, voices }, from }] : []),
    ...contradictions.map((contradiction): LetterSentence => ({
      says: { code: 'contradiction', contradiction },
      from: [contradiction.stronger, contradiction.weaker].flatMap((place) => placePaths(examination, place)),
    })),
  ];
}

/** What needs no telling: that the arteries are diseased for long, or not at all. */
const USUAL_NATURES: readonly Nature[] = ['chronic-disease', 'none'];

/** A cause is told from this probability on. */
const LEAST_NATURE = 0.8;

/**
 * What the findings come to, limb by limb. It suggests a place and never names a disease as found.
 * @param brief one sentence a limb
 */
export function conclusions(
  examination: Examination,
  { everywhere, limbs, leads, natures, impossible }: Conclusion,
  brief: boolean,
): LetterSentence[] {
  const all = [...new Set(LIMBS.flatMap((limb) => readOn(examination, limbKey(limb))))];
  if (impossible) return [{ says: { code: 'impossible', impossible }, from: all }];
  if (everywhere) return [{ says: { code: 'everywhere', lead: everywhere }, from: all }];
  if (!limbs.length) {
    const whole = leads.some(({ code }) => code === 'all-felt' || code === 'limb-felt');
    return whole ? [{ says: { code: 'no-lesion' }, from: all }] : [];
  }
  const [nature] = natures;
  return [
    ...limbs.flatMap((limb) => ofLimb(examination, limb, brief)),
    ...(!brief && nature && !USUAL_NATURES.includes(nature.nature) && nature.probability > LEAST_NATURE
      ? [{ says: { code: 'nature' as const, nature }, from: all }]
      : []),
  ];
}

/** The stages that are settled, limb by limb; what the findings leave open is not told. */
export function stages(examination: Examination, reports: readonly StageReport[]): LetterSentence[] {
  const limbs = [...new Set(reports.map(({ limb }) => limb))];
  return limbs.flatMap((limb): LetterSentence[] => {
    const { side, kind } = limbOf(limb);
    if (kind === 'head') return [];
    const told = STAGED_SCHEMES.flatMap((scheme) =>
      reports.flatMap((one) =>
        one.limb === limb && one.scheme === scheme && one.stage !== undefined
          ? [{ ...one, scheme, stage: one.stage }]
          : [],
      ),
    );
    if (!told.length) return [];
    const from = told.flatMap(({ scheme, derived }) => [
      ...(derived.overrule ? [`staging.${kind}.${side}.${scheme}`] : []),
      ...derived.grounds.flatMap((ground) => groundPaths(examination, ground, { kind, side })),
    ]);
    return [
      {
        says: {
          code: 'stage',
          limb,
          stages: told.map(({ scheme, stage, derived }) => ({
            scheme,
            stage,
            own: derived.overrule !== undefined,
            ...(derived.overrule?.why && { why: derived.overrule.why }),
          })),
        },
        from: recordedPaths(examination, from),
      },
    ];
  });
}
