import { placeFromKey, type PlaceKey, type Side } from '../anatomy/index.js';
import type { Sensation } from '../examination/index.js';
import type { Ground, GroundCode, StagedLimb } from '../triage/index.js';
import type { AnatomyWords } from './anatomy.js';
import type { terms } from './en/terms.js';
import type { Speech } from './speech.js';
import { render, type Renderings } from './render.js';
import { signWords } from './sign-words.js';

type Of<K extends string> = Readonly<Record<K, string>>;
type Measure = Extract<Ground, { code: 'threat' }>['measure'];
/** Puts a word, or several as a list, into a phrase. */
type With = (words: string) => string;
/** Where a list holds places, how many. */
type WithMany = (places: string, count: number) => string;

/** Findings that are said without anything else. */
type Alone = Extract<
  GroundCode,
  | 'sudden-pain'
  | 'new-complaint'
  | 'onset-acute'
  | 'onset-unknown'
  | 'no-infection-signs'
  | 'deep-infection'
  | 'probe-to-bone'
  | 'charcot'
  | 'stretch-pain'
  | 'pain-out-of-proportion'
  | 'reperfused'
  | 'cold-fingers'
  | 'ulnar-release-white'
  | 'shock'
  | 'diabetes'
  | 'connective-tissue-disease'
  | 'no-end-pressure'
>;
/** Findings that are said of several pulses. */
type Pulses = Extract<
  GroundCode,
  'pulses-absent' | 'pulses-reduced' | 'expansile' | 'bounding' | 'thrill' | 'bruit'
>;
/** Findings that are said with one word or a list. */
type Phrased = Extract<
  GroundCode,
  | 'severity'
  | 'movement'
  | 'muscle'
  | 'temperature'
  | 'ulcer'
  | 'gangrene'
  | 'infection-signs'
  | 'systemic'
  | 'redness'
  | 'injury'
  | 'false-aneurysm-signs'
  | 'mechanism'
  | 'graft-infection-signs'
  | 'thrombosis-signs'
  | 'volume-curve'
  | 'own-class'
  | 'own-fontaine'
  | 'own-rutherford'
  | 'walk-completed'
  | 'walk-not-completed'
>;

/** The words in which a language tells what a stage or a flag rests on; each phrase stands in a list. */
export interface GroundTable {
  /** What a recorded value is called, by its code; a code without a word is the word. */
  readonly values: Readonly<Record<string, string>>;
  readonly alone: Of<Alone>;
  readonly pulses: Readonly<Record<Pulses, WithMany>>;
  readonly with: Readonly<Record<Phrased, With>>;
  readonly noSymptoms: string;
  readonly noUlcer: string;
  readonly noGangrene: string;
  distance(metres: string, limit: string): string;
  hours(hours: string, one: boolean): string;
  readonly sensation: Of<Sensation>;
  readonly arterial: Of<'audible' | 'inaudible'>;
  readonly venous: Of<'audible' | 'inaudible'>;
  readonly skin: With;
  oedema(kind: string, oedema: string): string;
  refill(seconds: string, limit: string): string;
  digits(state: string, digits: string): string;
  readonly delay: Of<'radio-radial' | 'radio-femoral'>;
  readonly aneurysm: string;
  readonly graftPulse: Of<'present' | 'absent'>;
  readonly access: string;
  readonly coldInjury: string;
  coldInjuryAgo(hours: string): string;
  armDifference(mmHg: number, lower: Side): string;
  readonly measures: Of<Measure>;
  readonly toeIndex: string;
  readonly forearmIndex: string;
  readonly limit: string;
  /** That the sister of the artery measured cannot be compressed. */
  readonly sister: Of<'dorsalis-pedis' | 'posterior-tibial'>;
  readonly grades: Of<'wound' | 'ischaemia' | 'infection'>;
}

interface Around {
  readonly anatomy: Pick<AnatomyWords, 'limbs' | 'place' | 'vessel'>;
  /** A name with the patient's side. */
  sided(name: string, side: Side): string;
  readonly speech: Speech;
  /** Terms that stand in other areas as well. */
  readonly terms: typeof terms;
}

/** Says what a stage or a flag rests on, and the signs for controls and summary. */
export function groundsFrom(
  w: GroundTable,
  { anatomy, sided, terms: shared, speech: { list, decimal } }: Around,
) {
  const word = (value: string | undefined): string =>
    value === undefined
      ? ''
      : (w.values[value] ?? (shared as Readonly<Record<string, string>>)[value] ?? value);
  const words = (values: readonly string[]): string => list(values.map(word));
  const places = (keys: readonly PlaceKey[]): string =>
    list(
      keys.map((key) => {
        const place = placeFromKey(key);
        return place ? anatomy.place(place) : key;
      }),
    );
  const limbs = (of: readonly StagedLimb[]): string =>
    list(of.map(({ kind, side }) => anatomy.limbs[`${side} ${kind}`]));
  const index = (value: number): string => decimal(value, 2);
  /** Phrases joined by commas, without those that are not there. */
  const commas = (...phrases: readonly (string | undefined)[]): string =>
    phrases.filter((phrase) => phrase !== undefined && phrase !== '').join(', ');
  const limit = (value: number | string | undefined): string | undefined =>
    value === undefined ? undefined : `${w.limit} ${value}`;
  const said = (values: readonly string[]): string => (values.length ? `: ${words(values)}` : '');

  const alone = ({ code }: { readonly code: Alone }): string => w.alone[code];
  const pulses = ({ code, places: at }: { readonly code: Pulses; readonly places: readonly PlaceKey[] }) =>
    w.pulses[code](places(at), at.length);
  const signs = ({ code, signs: of }: { readonly code: Phrased; readonly signs: readonly string[] }) =>
    w.with[code](words(of));
  const valued = ({ code, value }: { readonly code: Phrased; readonly value: string }): string =>
    w.with[code](word(value));
  const staged = ({ code, stage }: { readonly code: Phrased; readonly stage: string | number }): string =>
    w.with[code](`${stage}`);
  const walk = ({ code, mmHg }: { readonly code: Phrased; readonly mmHg: number }): string =>
    w.with[code](`${decimal(mmHg)} mmHg`);
  const graded = ({ code, grade }: { code: 'wound' | 'ischaemia' | 'infection'; grade: number }): string =>
    `${w.grades[code]} ${grade}`;
  const indexed = (name: string, value: number, of: number | undefined): string =>
    commas(`${name} ${index(value)}`, limit(of ? index(of) : undefined));

  const says: Renderings<Ground> = {
    'sudden-pain': alone,
    'new-complaint': alone,
    'onset-acute': alone,
    'onset-unknown': alone,
    'no-infection-signs': alone,
    'deep-infection': alone,
    'probe-to-bone': alone,
    charcot: alone,
    'stretch-pain': alone,
    'pain-out-of-proportion': alone,
    reperfused: alone,
    'cold-fingers': alone,
    'ulnar-release-white': alone,
    shock: alone,
    diabetes: alone,
    'connective-tissue-disease': alone,
    'no-end-pressure': alone,
    'pulses-absent': pulses,
    'pulses-reduced': pulses,
    expansile: pulses,
    bounding: pulses,
    thrill: pulses,
    bruit: pulses,
    symptom: ({ value }) => (value === 'none' ? w.noSymptoms : word(value)),
    severity: valued,
    distance: ({ metres, limit: of }) => w.distance(decimal(metres), `${of}`),
    hours: ({ hours }) => w.hours(decimal(hours), hours === 1),
    sensation: ({ value }) => w.sensation[value],
    movement: valued,
    arterial: ({ value }) => w.arterial[value],
    venous: ({ value }) => w.venous[value],
    colour: ({ value }) => (value === 'fixed-mottled' ? word(value) : w.skin(word(value))),
    temperature: valued,
    muscle: valued,
    oedema: ({ value }) => w.oedema(word(value), shared.oedema),
    refill: ({ seconds, limit: of }) => w.refill(decimal(seconds), decimal(of)),
    ulcer: ({ depth, place, cause }) =>
      depth === 'none' ? w.noUlcer : commas(w.with.ulcer(word(depth)), word(place), word(cause)),
    gangrene: ({ kind, extent }) =>
      kind === 'none' ? w.noGangrene : commas(w.with.gangrene(word(kind)), word(extent)),
    digits: ({ state, digits }) => w.digits(word(state), words(digits)),
    'infection-signs': signs,
    systemic: signs,
    redness: ({ cm }) => w.with.redness(decimal(cm)),
    delay: ({ between }) => w.delay[between],
    injury: ({ place }) => w.with.injury(word(place)),
    'injury-signs': ({ signs: of }) => words(of),
    'false-aneurysm-signs': signs,
    mechanism: valued,
    'known-aneurysm': ({ place, side }) =>
      place ? `${w.aneurysm}: ${side ? sided(word(place), side) : word(place)}` : w.aneurysm,
    graft: ({ kind, artery, side, pulse }) =>
      commas(word(kind), anatomy.vessel({ artery, side }), pulse && w.graftPulse[pulse]),
    'graft-infection-signs': signs,
    'thrombosis-signs': signs,
    'volume-curve': ({ shape }) => w.with['volume-curve'](word(shape)),
    access: ({ signs: of }) => `${w.access}${said(of)}`,
    device: ({ kind }) => word(kind),
    'cold-injury': ({ hours }) => (hours === undefined ? w.coldInjury : w.coldInjuryAgo(decimal(hours))),
    elsewhere: ({ symptoms }) => words(symptoms),
    'arm-difference': ({ mmHg, lower }) => w.armDifference(mmHg, lower),
    limbs: ({ limbs: of }) => limbs(of),
    'own-class': staged,
    'own-fontaine': staged,
    'own-rutherford': staged,
    'walk-completed': walk,
    'walk-not-completed': walk,
    'ankle-pressure': ({ mmHg, limit: of }) => commas(`${w.measures.ankle} ${decimal(mmHg)} mmHg`, limit(of)),
    'toe-pressure': ({ mmHg, limit: of }) => commas(`${w.measures.toe} ${decimal(mmHg)} mmHg`, limit(of)),
    'ankle-index': ({ value, limit: of }) => indexed(w.measures.index, value, of),
    'toe-index': ({ value, limit: of }) => indexed(w.toeIndex, value, of),
    'forearm-index': ({ value, limit: of }) => indexed(w.forearmIndex, value, of),
    tcpo2: ({ mmHg }) => `${w.measures.tcpo2} ${decimal(mmHg)} mmHg`,
    threat: ({ measure, value, limit: of, artery }) => {
      const isIndex = measure === 'index';
      const measured = isIndex ? index(value) : `${decimal(value)} mmHg`;
      const sister = artery === 'dorsalis-pedis' || artery === 'posterior-tibial' ? w.sister[artery] : '';
      return commas(
        `${w.measures[measure]} ${measured} (${w.limit} ${isIndex ? index(of) : of})`,
        isIndex ? '' : sister,
      );
    },
    wound: graded,
    ischaemia: graded,
    infection: graded,
  };
  return {
    signs: signWords(word),
    ground: (ground: Ground): string => render(says, ground),
  };
}
