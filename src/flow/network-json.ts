import { OPEN } from './mean/circulation.js';
import { solveSteady } from './mean/steady.js';
import { type PatientInput, patientOf } from './patient.js';
import { circulationOf } from './setup.js';
import { humanNetwork } from './tree/network.js';
import { DENSITY, DYN_PER_MMHG, VENOUS_PRESSURE, VISCOSITY } from './units.js';

/** Where an edge of the exported network leads, and its law. */
export interface ExportedEdge {
  readonly id: string;
  readonly kind: 'artery' | 'collateral';
  readonly from: string;
  readonly to: string;
  /** Drop = `linear` Q + `quadratic` Q|Q|, mmHg with Q in ml/s; of a collateral its conductance at the solution, inverted. */
  readonly linear: number;
  readonly quadratic: number;
  /** Solved flow, ml/s. */
  readonly flow: number;
  readonly length?: number;
  readonly radii?: readonly [number, number];
}

export interface ExportedNetwork {
  readonly format: 'pulse-map-network/1';
  readonly units: { readonly pressure: 'mmHg'; readonly flow: 'ml/s'; readonly length: 'cm' };
  readonly constants: Readonly<Record<'viscosity' | 'density' | 'venousPressure' | 'dynPerMmHg', number>>;
  readonly root: { readonly node: string; readonly pressure: number; readonly outflow: number };
  readonly nodes: readonly { readonly id: string; readonly pressure: number }[];
  readonly edges: readonly ExportedEdge[];
  /** Terminal beds: to the outside pressure through the resistance that holds at the solution. */
  readonly beds: readonly {
    readonly id: string;
    readonly node: string;
    readonly outside: number;
    readonly resistance: number;
    readonly flow: number;
  }[];
  readonly report: { readonly newtonSteps: number; readonly residual: number; readonly converged: boolean };
}

/**
 * A patient's mean flow as plain JSON, for a check by another solver: nodes, laws of the open edges, boundary values, and the
 * solved pressures and flows. Steady, without what the pulse adds to a narrowing's drop.
 */
export function networkJson(patient: PatientInput): ExportedNetwork {
  const network = humanNetwork();
  const c = circulationOf(network, patientOf(patient));
  const steady = solveSteady(c);
  const name = (i: number): string => network.nodes[i]!;
  const edges: ExportedEdge[] = [];
  network.sections.forEach(({ id, length, radii }, e) => {
    if (c.state[e] !== OPEN) return;
    edges.push({
      id,
      kind: 'artery',
      from: name(network.from[e]!),
      to: name(network.to[e]!),
      linear: c.linear[e]!,
      quadratic: c.turbulent[e]!,
      flow: steady.sectionFlow[e]!,
      length,
      radii,
    });
  });
  network.collaterals.forEach(({ id, route }, i) => {
    const edge = network.sections.length + i;
    const drop = steady.pressure[network.from[edge]!]! - steady.pressure[network.to[edge]!]!;
    const flow = steady.collateralFlow[i]!;
    edges.push({
      id: `${route}: ${id}`,
      kind: 'collateral',
      from: name(network.from[edge]!),
      to: name(network.to[edge]!),
      linear: Math.abs(flow) > 1e-15 ? drop / flow : 1 / c.fresh[i]!,
      quadratic: 0,
      flow,
    });
  });
  return {
    format: 'pulse-map-network/1',
    units: { pressure: 'mmHg', flow: 'ml/s', length: 'cm' },
    constants: {
      viscosity: VISCOSITY,
      density: DENSITY,
      venousPressure: VENOUS_PRESSURE,
      dynPerMmHg: DYN_PER_MMHG,
    },
    root: { node: network.root, pressure: c.rootPressure, outflow: steady.output },
    nodes: network.nodes.map((id, i) => ({ id, pressure: steady.pressure[i]! })),
    edges,
    beds: network.beds.map(({ id, node }, i) => {
      const flow = steady.bedFlow[i]!;
      const drive = steady.pressure[network.bedNode[i]!]! - c.outside[i]!;
      const resistance = Math.abs(flow) > 1e-15 ? drive / flow : 1 / c.greatest[i]!;
      return { id, node, outside: c.outside[i]!, resistance, flow };
    }),
    report: { newtonSteps: steady.steps, residual: steady.residual, converged: steady.converged },
  };
}
