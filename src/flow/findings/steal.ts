import type { Side } from '../../anatomy/index.js';
import { extremes, flowTrace } from '../pulse/traces.js';
import type { Simulation } from '../simulate.js';

/** Flow in a vertebral artery: towards the head, to and fro, or backward into the arm. */
export type VertebralFlow = 'forward' | 'alternating' | 'reversed';

export interface StealReading {
  readonly flow: VertebralFlow;
  /** Mean flow towards the head, ml/min. */
  readonly mean: number;
}

/** Steal by definition: the sign of the flow's least and mean value. */
export function readVertebral({ circulation, network, beating }: Simulation, side: Side): StealReading {
  const trace = flowTrace(circulation, beating, network.sectionOf.get(`${side} vertebral`)!, 'proximal');
  const { low, mean } = extremes(trace);
  return { flow: mean < 0 ? 'reversed' : low < 0 ? 'alternating' : 'forward', mean: 60 * mean };
}
