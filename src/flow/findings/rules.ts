/*
 * How the numbers of flow and pulse are turned into what an examiner finds: every limit in one table, each with its source, or
 * called a rule of thumb, and what was calibrated.
 */

/** `published`: from a paper; `thumb`: a rule of thumb of ours; `calibrated`: chosen so that a published result comes out, which makes that result no check. */
export type RuleKind = 'published' | 'thumb' | 'calibrated';

export interface Rule {
  readonly value: number;
  readonly unit: string;
  readonly says: string;
  readonly kind: RuleKind;
  readonly source: string;
}

const thumb = (value: number, unit: string, says: string, source = 'rule of thumb'): Rule => ({
  value,
  unit,
  says,
  kind: 'thumb',
  source,
});
const calibrated = (value: number, unit: string, says: string, source: string): Rule => ({
  value,
  unit,
  says,
  kind: 'calibrated',
  source,
});
const published = (value: number, unit: string, says: string, source: string): Rule => ({
  value,
  unit,
  says,
  kind: 'published',
  source,
});

const BY_INDEX =
  'chosen so that foot pulses go with ankle indices as in surveys: none below 0.5, all above 0.9';

/** Every limit between a computed number and a finding. */
export const RULES = {
  absentShare: calibrated(0.38, '', 'pulse absent below this share of the sound pulse pressure', BY_INDEX),
  absentPulse: thumb(12, 'mmHg', 'pulse absent below this pulse pressure, whatever the sound one'),
  reducedShare: calibrated(0.7, '', 'pulse reduced below this share of the sound pulse pressure', BY_INDEX),
  reducedPulse: thumb(22, 'mmHg', 'pulse reduced below this pulse pressure'),
  deepFactor: thumb(
    1.25,
    '',
    'the popliteal pulse, which lies deep, is absent below limits higher by this factor',
  ),
  boundingShare: thumb(1.5, '', 'pulse bounding above this share of the sound pulse pressure'),
  thrillJet: thumb(2.5, 'm/s', 'a jet this fast under the finger is felt as a thrill'),
  bruitJet: calibrated(
    1.25,
    'm/s',
    'heard as a bruit where the jet outruns the flow before it by this much',
    'chosen so that narrowings below a third and above nine tenths of the diameter are silent',
  ),
  bruitReynolds: published(
    500,
    '',
    'and the Reynolds number of the throat exceeds this',
    'order of Ahmed SA, Giddens DP, J Biomech 1983;16:505-516 and 955-963 (disturbed flow from 500 to 1000)',
  ),
  bruitDiastolic: thumb(1, 'm/s', 'heard through diastole too where the jet never falls below this'),
  bruitCarries: thumb(
    2,
    'm/s',
    'a jet that outruns the flow by this much is heard at the next place down as well',
  ),
  noSignalVelocity: thumb(1.2, 'cm/s', 'no Doppler signal below this peak velocity'),
  noSignalPulse: thumb(4, 'mmHg', 'and below this pulse pressure; the cuff then reads 0'),
  reversal: thumb(
    0.04,
    '',
    'backward flow beyond this share of the peak makes the signal more than monophasic',
  ),
  secondForward: thumb(0.02, '', 'and a further forward wave beyond this share makes it triphasic'),
  armDelay: thumb(
    25,
    'ms',
    'a radial pulse whose half rise comes this much later than the other is called late',
  ),
  legDelay: calibrated(
    22,
    'ms',
    'a femoral pulse whose half rise comes this much later than the radial is called late',
    'from this model: sound adults 5 to 15 ms, coarctation from half the diameter 25 ms and more; the foot of the wave hardly shifts (Thorax 1980;35:128)',
  ),
  thighCuff: published(
    1.2,
    '',
    'a cuff round the upper thigh reads high by this factor',
    'normal high-thigh index 1.2 to 1.4 with four cuffs, vascular laboratory criteria (Adduci A)',
  ),
  toe: thumb(0.9, '', 'toe pressure as a share of the systolic pressure in the sole'),
  finger: thumb(0.93, '', 'finger pressure as a share of the systolic pressure in the palm'),
  pallorPressure: calibrated(
    20,
    'mmHg',
    'the raised sole turns pale where its mean pressure falls below this',
    'chosen so that sound legs never pale and severe ones do below 20 degrees (Browse 4th ed., p. 175)',
  ),
  highestRaise: published(90, 'degrees', 'a leg is raised no higher', 'Browse 4th ed., p. 175'),
  pallorHold: published(60, 's', 'held so long', 'Browse 4th ed., p. 175: 30 to 60 s'),
  colourReturn: published(
    10,
    's',
    'colour returns in this time times the sound over the actual driving pressure of the foot',
    "normal time: Bates' Guide; the law is a rule of thumb",
  ),
  venousFilling: published(
    12,
    's',
    'veins fill in this time times the sound over the actual flow of the foot',
    "normal up to 15 s: Bates' Guide; the law is a rule of thumb",
  ),
  longestWait: thumb(120, 's', 'an examiner waits no longer'),
  handFlush: published(
    3,
    's',
    'the palm flushes in this time times the slower bed’s open over its actual flow',
    'mean of 50 sound hands 3 s, Ejrup B et al., Circulation 1966;33:778-780; the law is a rule of thumb',
  ),
  handReserve: thumb(8, '', 'the emptied hand asks for this many times its resting flow'),
  armEffort: thumb(6, '', 'raised arms at work ask the forearm for this many times its resting flow'),
  armStress: published(
    180,
    's',
    'the raised arms work so long',
    'Plewa MC, Delinger M, Acad Emerg Med 1998;5:337-342',
  ),
  armTires: thumb(
    0.85,
    '',
    'and tire early in proportion where their flow falls below this share of the flow without the position',
  ),
  walkEffort: thumb(6, '', 'walking asks the calf for this many times its resting flow'),
  walkFree: thumb(0.85, '', 'no limit above this share of the sound flow'),
  walkFar: thumb(0.6, '', 'limited after a long way above this share'),
  walkShort: thumb(0.4, '', 'after a short way above this share, after a few steps below'),
} as const satisfies Record<string, Rule>;

export type RuleId = keyof typeof RULES;
export const limit = (id: RuleId): number => RULES[id].value;
