import type { Messages, PartMessages } from '../locale/index.js';
import type { SchemeId } from '../locale/staging.js';

/*
 * What each field is called, and each of its words, taken from the words that the elements and the summary use.
 */

/** All words of one language. */
export interface Language {
  readonly map: Messages;
  readonly parts: PartMessages;
}

type Words = Readonly<Record<string, string>>;
/** A label, or the path to one in an area of the language, and where the words of the field stand. */
type Entry = readonly [label: string, words?: string];

/**
 * By the code of the field without its first names: where its label stands, as a path into the language, and where its words do.
 * Of several patterns that fit the first holds.
 */
const ENTRIES: readonly (readonly [RegExp, Entry])[] = [
  [/\.couldNotExamine$/, ['map.map.couldNotExamine', 'map.examination.reasons']],
  [/\.notDone$/, ['parts.bedside.notDone', 'map.examination.reasons']],
  [/^(pulses|bruits)\..*\.note$|^marks\.note$/, ['map.map.note']],
  [/^pulses\..*\.grade$/, ['map.map.pulse', 'map.examination.grades']],
  [/^pulses\..*\.increased$/, ['map.examination.increased']],
  [/^pulses\..*\.expansile$/, ['map.map.expansile']],
  [/^pulses\..*\.thrill$/, ['map.map.thrill']],
  [/^pulses\..*\.doppler$/, ['map.map.doppler', 'map.examination.dopplers']],
  [/^bruits\..*\.bruit$/, ['map.map.bruit', 'map.examination.bruits']],
  [/^onset$/, ['parts.history.onset', 'map.examination.onsets']],
  [/^scale$/, ['map.map.scale', 'map.examination.scales']],
  [/^marks\.kind$/, ['parts.exchange.fields.marks', 'map.marks.kinds']],
  [/^context\.ageBand$/, ['parts.context.age', 'parts.context.ages']],
  [/^context\.diabetes$/, ['parts.context.diabetes']],
  [/^context\.smoking$/, ['parts.context.smoked', 'parts.context.smoking']],
  [/^context\.mechanism$/, ['parts.context.mechanism', 'parts.context.mechanisms']],
  [/^context\.injury$/, ['parts.context.injury', 'parts.context.injuries']],
  [/^context\.legClaudication$/, ['parts.history.claudicates', 'parts.history.muscles']],
  [/^context\.armClaudication$/, ['parts.history.tires', 'parts.history.muscles']],
  [/^context\.revascularisations\.artery$/, ['parts.context.repairArtery', 'map.anatomy.arteries']],
  [/^context\.revascularisations\.kind$/, ['parts.context.repairKind', 'parts.context.repairs']],
  [/^context\.revascularisations\.graftPulse$/, ['parts.context.graftPulse', 'parts.context.graftPulses']],
  [/^context\.revascularisations\.route$/, ['parts.context.repairRoute', 'parts.context.routes']],
  [
    /^context\.revascularisations\.infectionSigns$/,
    ['parts.context.graftSigns', 'parts.context.graftSignOptions'],
  ],
  [/^context\.revascularisations$/, ['parts.context.repaired']],
  [/^context\.\w+\.side$/, ['parts.context.repairSide', 'parts.context.sides']],
  [/^context\.aneurysms(\.place)?$/, ['parts.context.aneurysms', 'parts.context.aneurysmOptions']],
  [/^context\.access\.signs$/, ['parts.context.accessSigns', 'parts.context.accessSignOptions']],
  [/^context\.access(\.kind)?$/, ['parts.context.access', 'parts.context.accessKinds']],
  [/^context\.devices\.limb$/, ['parts.whole.limb', 'parts.exchange.limbs']],
  [/^context\.devices(\.kind)?$/, ['parts.context.devices', 'parts.context.deviceOptions']],
  [/^context\.coldInjury\.\w+\.hours$/, ['parts.context.coldHours']],
  [/^context\.coldInjury/, ['parts.context.coldInjury']],
  [/^context\.medicines$/, ['parts.context.medicines', 'parts.context.medicineOptions']],
  [/^context\.legAmputation$/, ['parts.context.amputation', 'parts.context.legAmputations']],
  [/^context\.armAmputation$/, ['parts.context.amputation', 'parts.context.armAmputations']],
  [/^context\.absentFromBirth$/, ['parts.context.missing', 'parts.context.missingOptions']],
  [/^context\.radialHarvested$/, ['parts.context.harvested', 'parts.context.sides']],
  [/^context/, ['parts.context.title']],
  [/^circulation\.shock$/, ['parts.history.shock']],
  [/^circulation\.heartRate$/, ['parts.history.heartRate']],
  [/^circulation\.(systolic|diastolic)$/, ['parts.history.bloodPressure.$1']],
  [/^circulation$/, ['parts.history.circulationTitle']],
  [/^history\.\w+\.symptom$/, ['parts.history.symptom', 'parts.history.symptoms']],
  [/^history\.\w+\.severity$/, ['parts.history.severity', 'parts.history.severities']],
  [/^history\.\w+\.onset$/, ['parts.history.began', 'parts.history.beganOptions']],
  [/^history\.\w+\.(suddenPain|newComplaint)$/, ['parts.history.newSigns.$1']],
  [/^history\.\w+\.(coldFingers|dizzyOnUse|chestPainOnUse)$/, ['parts.history.armSigns.$1']],
  [/^history\.\w+\.(distance|hours|onsetAt|note)$/, ['parts.history.$1']],
  [/^history\.rhythm$/, ['parts.history.rhythm', 'parts.history.rhythms']],
  [/^history\.elsewhere$/, ['parts.history.elsewhere', 'parts.history.elsewhereOptions']],
  [/^history\.risks$/, ['parts.history.risks', 'parts.history.riskOptions']],
  [/^history\.operations$/, ['parts.history.operations']],
  [/^history/, ['parts.history.title']],
  [/^inspection\.\w+\.ulcerSizeMm$/, ['parts.inspection.ulcerSize']],
  [/^inspection\.\w+\.charcotSuspected$/, ['parts.inspection.charcot']],
  [/^inspection\.\w+\.monofilament$/, ['parts.inspection.filament.label', 'parts.inspection.filament.words']],
  [/^inspection\.\w+\.temperatureLevel$/, ['parts.inspection.temperatureLevel', 'parts.inspection.levels']],
  [/^inspection\.\w+\.painOutOfProportion$/, ['parts.inspection.outOfProportion']],
  [/^inspection\.(\w+)\.injurySigns$/, ['parts.inspection.injurySigns', 'parts.inspection.injuryOptions.$1']],
  [
    /^inspection\.\w+\.falseAneurysmSigns$/,
    ['parts.inspection.falseAneurysm', 'parts.inspection.falseAneurysmOptions'],
  ],
  [
    /^inspection\.\w+\.thrombosisSigns$/,
    ['parts.inspection.thrombosis.label', 'parts.inspection.thrombosis.words'],
  ],
  [/^inspection\.leg\.digits\.(\w+)$/, ['parts.inspection.toes.$1', 'parts.inspection.digitStates']],
  [/^inspection\.arm\.digits\.(\w+)$/, ['parts.inspection.fingers.$1', 'parts.inspection.digitStates']],
  [/^inspection\.(leg|arm)\.digits$/, ['parts.inspection.digitsOf.$1']],
  [
    /^inspection\.\w+\.(deficitKnown|reperfused|refill|rednessCm|deepInfection|probeToBone|stretchPain|varices|pigment|note)$/,
    ['parts.inspection.$1'],
  ],
  [/^inspection\.\w+\.(\w+)$/, ['parts.inspection.$1.label', 'parts.inspection.$1.words']],
  [/^inspection/, ['parts.inspection.title']],
  [/^bedside\..*\.(pallor|returned|rubor|filled)$/, ['parts.exchange.fields.$1']],
  [/^bedside\.arm-stress\.felt(?:\.\w+)?$/, ['parts.exchange.fields.felt']],
  [/^bedside\.scalene\.(toward|away|traction)$/, ['parts.exchange.fields.positions']],
  [/^bedside\.([\w-]+)$/, ['parts.bedside.how.$1.name']],
  [/^bedside\..*\.(note|limit)$/, ['parts.bedside.$1']],
  [/^bedside\.elevation\.angle$/, ['parts.bedside.elevation.angle']],
  [/^bedside\..*\.before$/, ['parts.bedside.position.before', 'map.examination.grades']],
  [/^bedside\..*\.during$/, ['parts.bedside.position.during', 'map.examination.grades']],
  [/^bedside\..*\.symptoms$/, ['parts.bedside.position.symptoms', 'parts.bedside.symptoms']],
  [/^bedside\.hand-arch\.method$/, ['parts.bedside.hand.method', 'parts.bedside.hand.methods']],
  [/^bedside\.hand-arch\.(barbeau|barbeauReverse)$/, ['parts.bedside.hand.$1', 'parts.bedside.hand.classes']],
  [/^bedside\.hand-arch\.(radial|ulnar)$/, ['parts.bedside.hand.released.$1']],
  [/^bedside\.cold-provocation\.(water|immersed|rewarm|noChange)$/, ['parts.bedside.cold.$1']],
  [/^bedside\.cold-provocation\.(white|blue|red)$/, ['parts.bedside.cold.phases.$1']],
  [/^bedside\.arm-stress\.stopped$/, ['parts.bedside.stress.why', 'parts.bedside.stops']],
  [/^bedside\.arm-stress\.nothingFelt$/, ['parts.bedside.stress.nothing']],
  [/^bedside\.venous-filling\.incompetentVeins$/, ['parts.bedside.venous.incompetent']],
  [/\.seconds$/, ['parts.bedside.time']],
  [/^bedside$/, ['parts.bedside.title']],
  [/^pressures\.afterExercise\.(completed|minutes)$/, ['parts.pressures.$1']],
  [/^pressures\.afterExercise\.note$/, ['parts.pressures.stoppedBy']],
  [/^pressures\.afterExercise$/, ['parts.pressures.afterExercise']],
  [
    /^pressures(?:\.afterExercise)?\.(brachial|radial|ulnar|finger|high-thigh|low-thigh|calf|dorsalis-pedis|posterior-tibial|toe)$/,
    ['parts.pressures.sites.$1', 'parts.pressures.noPressure'],
  ],
  [/^pressures\.(unit|tcpo2)$/, ['parts.pressures.$1']],
  [/^pressures\.volumeCurve$/, ['parts.pressures.volumeCurve', 'parts.pressures.curves']],
  [/^pressures\.note$/, ['map.map.note']],
  [/^pressures/, ['parts.pressures.title']],
  [/^method\.(\w+)$/, ['parts.pressures.settings.$1.label', 'parts.pressures.settings.$1.options']],
  [/^method$/, ['parts.pressures.methods']],
  [/^staging\.\w+\.\w+\.why$/, ['parts.staging.why']],
  [/^staging\.\w+\.(\w+)/, ['parts.staging.schemes.$1']],
  [/^staging/, ['parts.staging.title']],
  [/^calls\.team$/, ['parts.exchange.fields.calls', 'parts.flags.teams']],
  [/^calls\.at$/, ['parts.exchange.fields.callAt']],
  [/^calls\.limb$/, ['parts.exchange.fields.callLimb', 'map.anatomy.limbs']],
  [/^calls\.whom$/, ['parts.exchange.fields.callWhom']],
  [/^calls/, ['parts.exchange.fields.calls']],
  [/^status$/, ['parts.exchange.fields.status', 'parts.report.status']],
  [/^amendments(?:\.kind)?$/, ['parts.report.headings.amendments', 'parts.exchange.amendments']],
  [/^amendments\.at$/, ['parts.exchange.fields.amendedAt']],
  [/^amendments\.by$/, ['parts.exchange.fields.amendedBy']],
  [/^amendments\.why$/, ['parts.staging.why']],
  [/^marks\.on\.plate$/, ['parts.exchange.fields.plate', 'map.map.views']],
  [/^(format|examinedAt|examiner)$/, ['parts.exchange.fields.$1']],
  [/^record$/, ['parts.exchange.title']],
  [/^pulses/, ['map.map.pulse']],
  [/^bruits/, ['map.map.bruit']],
  [/^delays\.(\w+)$/, ['parts.exchange.fields.$1', 'parts.exchange.delays']],
  [/^delays/, ['parts.exchange.fields.delays']],
  [/^marks\.id$/, ['parts.exchange.fields.markId']],
  [/^marks(\.on)?\.points$/, ['parts.exchange.fields.points']],
  [/^marks/, ['parts.exchange.fields.marks']],
];

function lookUp(language: Language, path: string): unknown {
  return path
    .split('.')
    .reduce<unknown>(
      (at, key) => (typeof at === 'object' && at !== null ? (at as Record<string, unknown>)[key] : undefined),
      language,
    );
}

/** Where the label and the words of a code stand, found once. */
const PLACES = new Map<string, readonly [string | undefined, string | undefined]>();

function placesOf(code: string): readonly [string | undefined, string | undefined] {
  const known = PLACES.get(code);
  if (known) return known;
  const entry = ENTRIES.find(([pattern]) => pattern.test(code));
  const part = entry?.[0].exec(code)?.[1] ?? '';
  const [label, words] = entry?.[1] ?? [];
  const places = [label?.replaceAll('$1', part), words?.replaceAll('$1', part)] as const;
  PLACES.set(code, places);
  return places;
}

function found(language: Language, code: string, which: 0 | 1): unknown {
  const path = placesOf(code)[which];
  return path === undefined ? undefined : lookUp(language, path);
}

/** What a field is called; `undefined` where the language has no name for it. */
export function labelOf(language: Language, code: string): string | undefined {
  const label = found(language, code, 0);
  return typeof label === 'string' ? label : undefined;
}

/** A word of a field; `undefined` where the language has none for it. */
export function wordOf(language: Language, code: string, word: string): string | undefined {
  const [, scheme] = /^staging\.\w+\.(\w+)\.(?:stage|derived)$/.exec(code) ?? [];
  if (scheme) return language.parts.staging.stage(scheme as SchemeId, word);
  const words = found(language, code, 1) as Words | undefined;
  const said = words && typeof words === 'object' && Object.hasOwn(words, word) ? words[word] : undefined;
  return typeof said === 'string' ? said : undefined;
}
