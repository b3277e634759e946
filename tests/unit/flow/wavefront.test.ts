import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pieceFromKey, pieceAbove, placeKey, PULSE_PLACES } from '../../../src/anatomy/index.js';
import { FALL, pulseWave, RISE, shapeOf, simulate, strengthAt } from '../../../src/flow/index.js';
import { readSites } from '../../../src/flow/findings/index.js';
import { GONE } from '../../../src/flow/mean/circulation.js';
import { halfRise, pressureTrace } from '../../../src/flow/pulse/traces.js';
import { anyPatient } from './patients.js';

/** Arrival at the valve in the simulation, s. */
const valve = ({ network, beating, inflow }: ReturnType<typeof simulate>): number =>
  halfRise(pressureTrace(beating, network.nodeOf.get(network.root)!), inflow.period);

const WAVE = pulseWave({ age: 40, heartRate: 60 });

describe('the pulse wave', () => {
  it('arrives at each site at the computed time, as strong as it is felt', () => {
    fc.assert(
      fc.property(anyPatient, (patient) => {
        const wave = pulseWave(patient);
        const simulation = simulate({ ...patient, rhythm: 'regular' });
        const read = readSites(simulation);
        expect(wave.sites.map(({ grade }) => grade)).toEqual(read.map(({ grade }) => grade));
        read.forEach(({ place, halfRise: half, grade }, i) => {
          const name = placeKey(place);
          const arrives = Math.max(0, half - valve(simulation));
          expect(wave.sites[i]!.arrives, name).toBeCloseTo(arrives, 9);
          const last = wave.stretches.filter((one) => one.piece === pieceAbove(place).key).at(-1)!;
          expect(last.to, name).toBeCloseTo(1);
          expect(last.arrives[1], name).toBeCloseTo(arrives, 9);
          // A deep pulse must be stronger to be felt, and a block may end where a collateral brings blood back.
          if (grade === 'absent' && place.site !== 'popliteal') expect(last.strength[1], name).toBe(0);
          if (simulation.circulation.state.every((state) => state !== GONE) && grade !== 'absent')
            expect(last.strength[1], name).toBeGreaterThan(0);
        });
      }),
      { numRuns: 25 },
    );
  });

  it('covers every piece once, from end to end', () => {
    const { stretches } = pulseWave({});
    const keys = new Set(stretches.map(({ piece }) => piece));
    expect(PULSE_PLACES.map((place) => pieceAbove(place).key).filter((key) => !keys.has(key))).toEqual([]);
    for (const key of keys) {
      expect(pieceFromKey(key)).toBeDefined();
      let at = 0;
      for (const { from, to } of stretches.filter(({ piece }) => piece === key)) {
        expect(from).toBeCloseTo(at);
        expect(to).toBeGreaterThan(from);
        at = to;
      }
      expect(at).toBeCloseTo(1);
    }
  });

  it('weakens beyond a narrowing and stops at a block', () => {
    const at = (narrowing: number, piece: string): number =>
      pulseWave({ age: 66, lesions: [{ piece: 'left external-iliac', narrowing }] })
        .stretches.filter((one) => one.piece === piece)
        .at(-1)!.strength[1];
    const beyond = [0, 60, 75, 88].map((narrowing) => at(narrowing, 'left superficial-femoral'));
    expect(beyond).toEqual([...beyond].sort((a, b) => b - a));
    expect(beyond[0]).toBeGreaterThan(beyond[2]!);
    expect(at(88, 'right superficial-femoral')).toBeGreaterThan(0.9);
    const { stretches } = pulseWave({
      lesions: [{ piece: 'left superficial-femoral', narrowing: 100, extent: 'whole' }],
    });
    for (const { strength } of stretches.filter(({ piece }) => piece === 'left superficial-femoral'))
      expect(strength).toEqual([0, 0]);
    const short = pulseWave({ lesions: [{ piece: 'left superficial-femoral', narrowing: 100 }] }).stretches;
    const along = short.filter(({ piece }) => piece === 'left superficial-femoral');
    expect(along[0]!.strength[0]).toBeGreaterThan(0.5);
    expect(along.at(-1)!.strength[1]).toBe(0);
  });

  it('comes later the further it runs in a sound person, the foot after the groin', () => {
    const wave = pulseWave({ age: 40 });
    const end = (key: string): number =>
      wave.stretches.filter(({ piece }) => piece === key).at(-1)!.arrives[1];
    const way = [
      'midline thoracic-aorta',
      'right common-iliac',
      'right superficial-femoral',
      'right dorsalis-pedis distal',
    ];
    const times = way.map(end);
    expect(times).toEqual([...times].sort((a, b) => a - b));
    // Heart to ankle in adults: 0.1 to 0.25 s by ankle pulse wave velocities of 6 to 12 m/s (from memory).
    expect(times.at(-1)).toBeGreaterThan(0.1);
    expect(times.at(-1)).toBeLessThan(0.3);
    expect(wave.last).toBeLessThan(0.4);
  });

  it('has a beat for each of the rhythm, of unequal strength where it is irregular', () => {
    expect(pulseWave({ heartRate: 60 })).toMatchObject({ period: 1, beats: [{ at: 0, strength: 1 }] });
    const { beats, period } = pulseWave({ rhythm: 'atrial-fibrillation', seed: 4 });
    expect(beats).toHaveLength(8);
    expect(Math.max(...beats.map(({ strength }) => strength))).toBe(1);
    expect(new Set(beats.map(({ strength }) => strength.toFixed(2))).size).toBeGreaterThan(2);
    expect(beats.every(({ at }) => at >= 0 && at < period)).toBe(true);
  });

  it('is drawn at a point when it has arrived there and no earlier', () => {
    fc.assert(
      fc.property(fc.nat(), fc.double({ min: 0, max: 1, noNaN: true }), (pick, share) => {
        const stretch = WAVE.stretches[pick % WAVE.stretches.length]!;
        const late = stretch.arrives[0] + (stretch.arrives[1] - stretch.arrives[0]) * share;
        const at = (time: number): number => strengthAt(WAVE, stretch, share, time);
        expect(at(late - 0.001)).toBe(0);
        expect(at(late + RISE)).toBeGreaterThan(0.5);
        expect(at(late + RISE + FALL + 0.001)).toBe(0);
      }),
    );
    expect(shapeOf(-0.01)).toBe(0);
  });
});
