import type { Circulation } from './mean/circulation.js';
import { type Patient, type PatientInput, patientOf } from './patient.js';
import { type Beating, beat } from './pulse/balance.js';
import { fibrillation, type Inflow, inflowOf } from './pulse/heart.js';
import { type Tubes, tubesOf } from './pulse/waves.js';
import { chanceOf } from './generate/chance.js';
import { circulationOf } from './setup.js';
import { humanNetwork, type Network } from './tree/network.js';

/** Harmonics of one beat. With 16 or 24 the ankle index moves by 0.001. */
export const HARMONICS = 12;
/** Beats of an irregular run before it repeats. */
const IRREGULAR_BEATS = 8;

/** A patient's flow and pulse, beside those of the same patient without lesions and variants. */
export interface Simulation {
  readonly patient: Patient;
  readonly network: Network;
  readonly circulation: Circulation;
  readonly inflow: Inflow;
  readonly tubes: Tubes;
  readonly beating: Beating;
  readonly sound: Beating;
  readonly soundCirculation: Circulation;
}

interface Conditions {
  readonly inflow: Inflow;
  readonly tubes: Tubes;
  readonly circulation: Circulation;
  readonly beating: Beating;
}

/** The sound twins last asked for. A page that moves one slider asks for the same one again and again. */
const twins = new Map<string, Conditions>();
const MOST_TWINS = 16;

function soundTwin(network: Network, patient: Patient): Conditions {
  const { age, meanPressure, heartRate, rhythm, state, seed, collaterals, routes } = patient;
  const irregular = rhythm === 'atrial-fibrillation';
  // Everything that the twin is made of below: a patient must not get that of another.
  const key = JSON.stringify([
    age,
    meanPressure,
    heartRate,
    state,
    collaterals,
    routes,
    irregular ? seed : 'regular',
  ]);
  let twin = twins.get(key);
  if (!twin) {
    const beats = irregular
      ? fibrillation(heartRate, IRREGULAR_BEATS, chanceOf(seed))
      : [{ length: 60 / heartRate, stroke: 1 }];
    const inflow = inflowOf(beats, HARMONICS);
    const tubes = tubesOf(network, age, meanPressure, inflow);
    const circulation = circulationOf(network, patient, false);
    twin = { inflow, tubes, circulation, beating: beat(circulation, tubes, inflow) };
    if (twins.size >= MOST_TWINS) twins.delete(twins.keys().next().value!);
    twins.set(key, twin);
  }
  return twin;
}

/**
 * Computes a patient: mean flow, then the pulse. Deterministic; never throws for a patient that the schema accepts. Whether the
 * numbers settled is told in `beating` (`converged`, `residual`, `moved`).
 * @throws RangeError where a lesion names an artery or a place that the tree does not have
 */
export function simulate(input: PatientInput): Simulation {
  const patient = patientOf(input);
  const network = humanNetwork();
  const twin = soundTwin(network, patient);
  const circulation = circulationOf(network, patient);
  const beating = beat(circulation, twin.tubes, twin.inflow, twin.beating.steady.pressure);
  return {
    patient,
    network,
    circulation,
    inflow: twin.inflow,
    tubes: twin.tubes,
    beating,
    sound: twin.beating,
    soundCirculation: twin.circulation,
  };
}

/** The same patient with something pressed, raised or at work: `circulation` takes the place of the resting one. */
export function inCirculation(simulation: Simulation, circulation: Circulation): Simulation {
  const { tubes, inflow } = simulation;
  const start = simulation.beating.steady.pressure;
  return { ...simulation, circulation, beating: beat(circulation, tubes, inflow, start) };
}
