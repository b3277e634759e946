import { placeFromKey, type PlaceKey } from '../anatomy/index.js';
import type { Examination } from '../examination/index.js';
import type { Ground, GroundCode, StagedLimb } from '../triage/index.js';
import type { FindingPath } from '../report/index.js';
import { placePaths, recordedPaths } from './recorded.js';

/** Where each ground stands in a record; `#` is the limb as `leg.left`, `@` its side. */
const STANDS_AT: Readonly<Partial<Record<GroundCode, readonly string[]>>> = {
  symptom: ['history.#.symptom', 'context.legClaudication.@', 'context.armClaudication.@'],
  severity: ['history.#.severity'],
  distance: ['history.#.distance'],
  'sudden-pain': ['history.#.suddenPain'],
  'new-complaint': ['history.#.newComplaint'],
  'onset-acute': ['history.#.onset', 'history.#.hours', 'history.#.onsetAt', 'onset'],
  'onset-unknown': ['history.#.onset', 'onset'],
  hours: ['history.#.hours', 'history.#.onsetAt'],
  sensation: ['inspection.#.sensation'],
  movement: ['inspection.#.movement'],
  arterial: ['pulses.*.@'],
  venous: ['inspection.#.venousDoppler'],
  colour: ['inspection.#.colour'],
  temperature: ['inspection.#.temperature'],
  muscle: ['inspection.#.muscle'],
  oedema: ['inspection.#.oedema'],
  'thrombosis-signs': ['inspection.#.thrombosisSigns'],
  'volume-curve': ['pressures.volumeCurve.@'],
  refill: ['inspection.#.refill'],
  ulcer: ['inspection.#.ulcer', 'inspection.#.digits', 'history.#.symptom'],
  gangrene: ['inspection.#.gangrene', 'inspection.#.digits'],
  digits: ['inspection.#.digits'],
  'infection-signs': ['inspection.#.infection'],
  'no-infection-signs': ['inspection.#.infection'],
  systemic: ['inspection.#.systemic'],
  redness: ['inspection.#.rednessCm'],
  'deep-infection': ['inspection.#.deepInfection'],
  'probe-to-bone': ['inspection.#.probeToBone'],
  charcot: ['inspection.#.charcotSuspected'],
  'stretch-pain': ['inspection.#.stretchPain'],
  'pain-out-of-proportion': ['inspection.#.painOutOfProportion'],
  reperfused: ['inspection.#.reperfused'],
  'cold-fingers': ['history.#.coldFingers'],
  'ulnar-release-white': ['bedside.hand-arch.@'],
  shock: ['circulation.shock'],
  diabetes: ['context.diabetes'],
  'connective-tissue-disease': ['history.risks'],
  injury: ['context.injury.@'],
  'injury-signs': ['inspection.#.injurySigns'],
  'false-aneurysm-signs': ['inspection.#.falseAneurysmSigns'],
  mechanism: ['context.mechanism'],
  'known-aneurysm': ['context.aneurysms', 'history.risks'],
  graft: ['context.revascularisations'],
  'graft-infection-signs': ['context.revascularisations'],
  access: ['context.access'],
  device: ['context.devices'],
  'cold-injury': ['context.coldInjury.#'],
  elsewhere: ['history.elsewhere'],
  delay: ['delays'],
  'arm-difference': ['pressures.brachial'],
  'own-class': ['staging.#.acute'],
  'own-fontaine': ['staging.#.fontaine'],
  'own-rutherford': ['staging.#.rutherford'],
  'walk-completed': ['pressures.afterExercise'],
  'walk-not-completed': ['pressures.afterExercise'],
  'ankle-pressure': ['pressures.dorsalis-pedis.@', 'pressures.posterior-tibial.@'],
  'toe-pressure': ['pressures.toe.@'],
  'ankle-index': ['pressures.dorsalis-pedis.@', 'pressures.posterior-tibial.@', 'pressures.brachial'],
  'toe-index': ['pressures.toe.@', 'pressures.brachial'],
  'forearm-index': ['pressures.radial.@', 'pressures.ulnar.@', 'pressures.brachial'],
  tcpo2: ['pressures.tcpo2.@'],
  threat: [
    'pressures.dorsalis-pedis.@',
    'pressures.posterior-tibial.@',
    'pressures.toe.@',
    'pressures.tcpo2.@',
  ],
  wound: ['inspection.#.ulcer', 'inspection.#.gangrene', 'inspection.#.digits', 'staging.#.wound'],
  ischaemia: [
    'pressures.dorsalis-pedis.@',
    'pressures.posterior-tibial.@',
    'pressures.toe.@',
    'pressures.tcpo2.@',
    'staging.#.ischaemia',
  ],
  infection: ['inspection.#.infection', 'inspection.#.systemic', 'staging.#.infection'],
  'no-end-pressure': ['pressures.dorsalis-pedis.@', 'pressures.posterior-tibial.@', 'pressures.toe.@'],
};

const LIMBS: readonly StagedLimb[] = (['leg', 'arm'] as const).flatMap((kind) =>
  (['right', 'left'] as const).map((side) => ({ kind, side })),
);

/** The sites of a part of the record that have a finding on a side, for a path with `*`. */
function expanded(examination: Examination, path: string): FindingPath[] {
  const [before = '', after = ''] = path.split('.*');
  if (!path.includes('.*')) return [path];
  const within = (examination as unknown as Readonly<Record<string, object | undefined>>)[before];
  return Object.keys(within ?? {}).map((site) => `${before}.${site}${after}`);
}

/** Where in the record a ground of a flag or a stage stands. */
export function groundPaths(
  examination: Examination,
  ground: Ground,
  limb: StagedLimb | undefined,
): FindingPath[] {
  if (ground.code === 'limbs') {
    return recordedPaths(
      examination,
      ground.limbs.flatMap(({ kind, side }) => [`history.${kind}.${side}`, `inspection.${kind}.${side}`]),
    );
  }
  if ('places' in ground) {
    return ground.places.flatMap((key: PlaceKey) => {
      const place = placeFromKey(key);
      return place ? placePaths(examination, place) : [];
    });
  }
  const limbs = limb ? [limb] : LIMBS;
  const paths = (STANDS_AT[ground.code] ?? []).flatMap((path) =>
    limbs.map(({ kind, side }) => path.replace('#', `${kind}.${side}`).replace('@', side)),
  );
  return recordedPaths(
    examination,
    paths.flatMap((path) => expanded(examination, path)),
  );
}
