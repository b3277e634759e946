import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { siteDefinition, PULSE_PLACES, placeKey, PIECES } from '../../../src/anatomy/index.js';
import { copyOf } from '../../../src/flow/mean/circulation.js';
import { solveSteady, type Steady } from '../../../src/flow/mean/steady.js';
import { narrowingOf } from '../../../src/flow/mean/laws.js';
import { patientOf, type PatientInput } from '../../../src/flow/patient.js';
import { addLesion, circulationOf, sectionsOf } from '../../../src/flow/setup.js';
import { HUMAN, humanNetwork, networkOf } from '../../../src/flow/tree/network.js';
import { denseSolve } from '../../tools/dense-solve.mjs';
import { anyPatient, isLegPiece, mirrored } from './patients.js';

const network = humanNetwork();
const solve = (patient: PatientInput, start?: Float64Array): Steady =>
  solveSteady(circulationOf(network, patientOf(patient)), start);
const flow = (steady: Steady, section: string): number =>
  60 * steady.sectionFlow[network.sectionOf.get(section)!]!;
const bed = (steady: Steady, test: (id: string) => boolean): number =>
  network.beds.reduce((sum, { id }, i) => (test(id) ? sum + 60 * steady.bedFlow[i]! : sum), 0);

describe('the tree', () => {
  it('has every piece of the map once, with one place where a lesion sits by default', () => {
    for (const { key } of PIECES) {
      const own = HUMAN.sections.filter(({ piece }) => piece === key);
      expect(own.length, key).toBeGreaterThan(0);
      expect(own.filter(({ seat }) => seat).length, key).toBe(1);
    }
  });

  it('puts each pulse site where the map has it along its artery', () => {
    for (const place of PULSE_PLACES) {
      const { artery, at } = siteDefinition(place.site);
      const own = HUMAN.sections.filter(({ piece }) => piece?.startsWith(`${place.side} ${artery}`));
      const all = own.reduce((sum, { length }) => sum + length, 0);
      const to = own.findIndex((section) => section.to === placeKey(place));
      const before = own.slice(0, to + 1).reduce((sum, { length }) => sum + length, 0);
      expect(before / all, placeKey(place)).toBeCloseTo(at, 2);
    }
  });

  it('refuses a bed that no artery reaches', () => {
    expect(() => networkOf({ ...HUMAN, beds: [{ ...HUMAN.beds[0]!, node: 'nowhere' }] })).toThrow(
      /"nowhere"/,
    );
  });
});

describe('solveSteady', () => {
  it('balances every node to 1e-8 ml/s and tells so, in any patient', () => {
    let steps = 0;
    fc.assert(
      fc.property(anyPatient, (patient) => {
        const steady = solve(patient);
        steps = Math.max(steps, steady.steps);
        expect(steady.converged).toBe(true);
        expect(steady.residual).toBeLessThanOrEqual(1e-8);
        // Summed apart from the solver: what enters each node leaves it.
        const sum = new Float64Array(network.nodes.length);
        [...steady.sectionFlow, ...steady.collateralFlow].forEach((q, e) => {
          sum[network.from[e]!]! -= q;
          sum[network.to[e]!]! += q;
        });
        steady.bedFlow.forEach((q, i) => (sum[network.bedNode[i]!]! -= q));
        for (let i = 0; i < sum.length - 1; i++) expect(Math.abs(sum[i]!)).toBeLessThan(2e-8);
        expect(Math.abs(steady.imbalance)).toBeLessThan(2e-7);
        for (const p of steady.pressure) expect(Number.isFinite(p)).toBe(true);
      }),
      { numRuns: 100 },
    );
    expect(steps).toBeLessThan(30);
  });

  it('ends at the same pressures from any start', () => {
    fc.assert(
      fc.property(anyPatient, fc.integer(), (patient, seed) => {
        const start = Float64Array.from(network.nodes, (_, i) => 60 + 55 * Math.sin(i * 12.9898 + seed));
        const [a, b] = [solve(patient), solve(patient, start)];
        expect(b.converged).toBe(true);
        // A node between two blocks is tied to nothing but the leak that keeps it determined.
        for (let i = 0; i < a.pressure.length; i++) {
          expect(Math.abs(a.pressure[i]! - b.pressure[i]!), network.nodes[i]).toBeLessThan(1e-4);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('does not hide that it failed', () => {
    const c = circulationOf(network, patientOf());
    c.linear[3] = NaN;
    expect(solveSteady(c).converged).toBe(false);
  });

  it('agrees with the dense solution of a general library at the solution', () => {
    const c = circulationOf(
      network,
      patientOf({ lesions: [{ piece: 'right superficial-femoral', extent: 'whole' }] }),
    );
    const steady = solveSteady(c);
    const n = network.nodes.length;
    const rows = Array.from({ length: n }, () => new Array<number>(n).fill(0));
    const right = new Array<number>(n).fill(0);
    const tie = (e: number, q: number): void => {
      const [f, t] = [network.from[e]!, network.to[e]!];
      const drop = steady.pressure[f]! - steady.pressure[t]!;
      if (Math.abs(drop) < 1e-12) return;
      const g = q / drop;
      rows[f]![f]! += g;
      rows[t]![t]! += g;
      rows[f]![t]! -= g;
      rows[t]![f]! -= g;
    };
    [...steady.sectionFlow, ...steady.collateralFlow].forEach((q, e) => tie(e, q));
    steady.bedFlow.forEach((q, i) => {
      const node = network.bedNode[i]!;
      const g = q / (steady.pressure[node]! - c.outside[i]!);
      rows[node]![node]! += g;
      right[node]! += g * c.outside[i]!;
    });
    rows.forEach((row, i) => (row[i]! += 1e-12));
    rows[n - 1] = rows[n - 1]!.map((_, j) => (j === n - 1 ? 1 : 0));
    right[n - 1] = c.rootPressure;
    const expected = denseSolve(rows, right);
    expected.forEach((p, i) => expect(Math.abs(steady.pressure[i]! - p)).toBeLessThan(1e-6));
  });

  it('mirrors: lesions of one leg do to it what the same lesions of the other do to that', () => {
    fc.assert(
      fc.property(
        anyPatient.map((patient) => ({
          ...patient,
          lesions: patient.lesions!.filter(({ piece }) => isLegPiece(piece)),
        })),
        (patient) => {
          const [a, b] = [solve(patient), solve(mirrored(patient))];
          for (const site of ['femoral', 'popliteal', 'posterior-tibial', 'dorsalis-pedis']) {
            const p = a.pressure[network.nodeOf.get(`right ${site}`)!]!;
            const q = b.pressure[network.nodeOf.get(`left ${site}`)!]!;
            // The published tree is not quite symmetrical: its right common iliac is 2.4 mm longer.
            expect(Math.abs(p - q), site).toBeLessThan(1.5);
          }
        },
      ),
      { numRuns: 40 },
    );
  });

  it('never raises the pressure in what a lesion alone feeds by tightening it', () => {
    const only: [string, string[]][] = [
      ['right common-iliac', ['right femoral', 'right popliteal', 'right posterior-tibial']],
      ['right superficial-femoral', ['right popliteal', 'right dorsalis-pedis']],
      ['left subclavian', ['left axillary', 'left brachial', 'left radial']],
      ['left radial distal', ['left deep arch']],
      ['right internal-carotid', ['right carotid end']],
    ];
    fc.assert(
      fc.property(
        fc.constantFrom(...only),
        fc.integer({ min: 0, max: 90 }),
        fc.integer({ min: 1, max: 10 }),
        anyPatient,
        ([piece, nodes], narrowing, more, patient) => {
          const at = (percent: number): Steady =>
            solve({
              ...patient,
              lesions: [...patient.lesions!, { piece: piece as 'right popliteal', narrowing: percent }],
            });
          const [wide, tight] = [at(narrowing), at(narrowing + more)];
          // Beyond a block higher up, blood may come back through the narrowing from the other side: then it feeds nothing.
          const own = sectionsOf(network, { piece, narrowing: 50, length: 1, extent: 'short' } as never)[0]!;
          fc.pre(wide.sectionFlow[own]! > 1e-6);
          for (const node of nodes) {
            const i = network.nodeOf.get(node)!;
            expect(tight.pressure[i]!, node).toBeLessThanOrEqual(wide.pressure[i]! + 1e-6);
          }
        },
      ),
      { numRuns: 40 },
    );
  });

  it('scales: all conductances and flows twice as great leave every pressure as it was', () => {
    fc.assert(
      fc.property(anyPatient, fc.double({ min: 0.2, max: 5, noNaN: true }), (patient, times) => {
        const c = circulationOf(network, patientOf(patient));
        const scaled = copyOf(c);
        scaled.linear.forEach((_, i) => {
          scaled.linear[i]! /= times;
          scaled.turbulent[i]! /= times * times;
        });
        for (const part of [scaled.fresh, scaled.gain, scaled.greatest, scaled.resting]) {
          part.forEach((_, i) => (part[i]! *= times));
        }
        const [a, b] = [solveSteady(c), solveSteady(scaled)];
        expect(b.output / a.output).toBeCloseTo(times, 6);
        const fed = network.nodes.map((_, i) => i).filter((i) => a.pressure[i]! > 8);
        for (const i of fed) expect(Math.abs(a.pressure[i]! - b.pressure[i]!)).toBeLessThan(1e-4);
      }),
      { numRuns: 40 },
    );
  });
});

describe('mean flow against published figures', () => {
  const sound = solve({ age: 40 });

  it('gives the cardiac output and its shares of an adult at rest', () => {
    // Order of textbook shares (from memory): brain 13 to 15%, kidneys 20%, gut 24 to 28% of about 5 l/min.
    const output = 60 * sound.output;
    expect(output).toBeGreaterThan(4900);
    expect(output).toBeLessThan(5400);
    const share = (test: (id: string) => boolean): number => bed(sound, test) / output;
    expect(share((id) => /brain/.test(id))).toBeCloseTo(0.14, 1);
    expect(share((id) => /kidney/.test(id))).toBeCloseTo(0.2, 1);
    expect(share((id) => /gut|bowel/.test(id))).toBeCloseTo(0.24, 1);
  });

  it('leads through the leg what was set at its beds', () => {
    // Holland CK et al. 1998: common femoral 284 ± 21, superficial femoral 152 ± 10, popliteal 72 ± 5 ml/min. The beds were set by
    // these, so that this checks the tree's joints and no more.
    expect(flow(sound, 'right common femoral to its end')).toBeGreaterThan(263);
    expect(flow(sound, 'right common femoral to its end')).toBeLessThan(305);
    expect(flow(sound, 'right superficial femoral, upper')).toBeCloseTo(152, -1);
    expect(flow(sound, 'right popliteal to its pulse site')).toBeCloseTo(72, -1);
  });

  it('finds the critical narrowing where it is published, and lower the more flow is asked for', () => {
    // Critical area reduction at rest 75 to 85% (from memory); falls with demand (Young DF et al., Circ Res 1975;36:735-743). Ours
    // at rest lies a little above, since every bed regulates itself.
    const fall = (effort: number): number => {
      const base = circulationOf(network, patientOf({ age: 60 }));
      base.fresh.fill(0);
      base.gain.fill(0);
      network.beds.forEach(({ side, region }, i) => {
        if (side === 'right' && region === 'leg') base.resting[i]! *= effort;
      });
      const at = network.sectionOf.get('right external iliac')!;
      const full = solveSteady(base).sectionFlow[at]!;
      for (let area = 30; area < 99; area++) {
        const c = copyOf(base);
        const one = narrowingOf(100 * (1 - Math.sqrt(1 - area / 100)), 2, 0.328);
        c.linear[at]! += one.viscous;
        c.turbulent[at]! += one.turbulent;
        if (solveSteady(c).sectionFlow[at]! < 0.95 * full) return area;
      }
      return 100;
    };
    const [rest, five, ten] = [fall(1), fall(5), fall(10)];
    expect(rest).toBeGreaterThanOrEqual(72);
    expect(rest).toBeLessThanOrEqual(91);
    expect(five).toBeLessThan(rest);
    expect(ten).toBeLessThan(five);
    expect([rest, five, ten]).toMatchInlineSnapshot(`
      [
        89,
        63,
        46,
      ]
    `);
  });

  it('turns the vertebral artery round beyond a block of the subclavian before it, and not beyond one after it', () => {
    const at = (spot: 'origin' | 'beyond-vertebral'): number =>
      flow(solve({ lesions: [{ piece: 'left subclavian', at: spot }] }), 'left vertebral');
    expect(at('origin')).toBeLessThan(-20);
    expect(at('beyond-vertebral')).toBeGreaterThan(40);
  });
});

describe('lesions', () => {
  it('sit where they are told, and say which place does not exist', () => {
    const lesion = { narrowing: 50, length: 1, extent: 'short' } as const;
    const ids = (extra: object): string[] =>
      sectionsOf(network, { ...lesion, piece: 'right superficial-femoral', ...extra } as never).map(
        (e) => network.sections[e]!.id,
      );
    expect(ids({})).toEqual(['right superficial femoral, adductor canal']);
    expect(ids({ at: 'upper' })).toEqual(['right superficial femoral, upper']);
    expect(ids({ narrowing: 100, extent: 'whole' })).toHaveLength(3);
    expect(() => ids({ at: 'isthmus' })).toThrow(/no place "isthmus"/);
    expect(() => ids({ piece: 'right nothing' })).toThrow(/no artery "right nothing"/);
  });

  it('in one section stand in series', () => {
    const one = circulationOf(network, patientOf());
    const e = network.sectionOf.get('right common iliac')!;
    const before = one.linear[e]!;
    const lesion = { piece: 'right common-iliac', narrowing: 50, length: 2, extent: 'short' } as const;
    addLesion(one, lesion);
    const added = one.linear[e]! - before;
    addLesion(one, lesion);
    expect(one.linear[e]!).toBeCloseTo(before + 2 * added, 12);
  });
});
