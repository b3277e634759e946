import type { Side } from '../../anatomy/index.js';
import type { VertebralFlow } from '../../examination/index.js';
import { extremes, flowTrace } from '../pulse/traces.js';
import type { Simulation } from '../simulate.js';

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
