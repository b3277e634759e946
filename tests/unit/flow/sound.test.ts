import { describe, expect, it } from 'vitest';
import { findingsOf, jetsOf } from '../../../src/flow/findings/index.js';
import type { PatientInput } from '../../../src/flow/patient.js';
import { simulate } from '../../../src/flow/simulate.js';
import { bruitAtPlace, bruitOfJet, dopplerAt, vibrationOf } from '../../../src/flow/sound/of-patient.js';
import { dopplerShift, dopplerSound, SAMPLE_RATE } from '../../../src/flow/sound/synthesis.js';
import { wavOf } from '../../../src/flow/sound/wav.js';

const loudness = (samples: Float32Array): number =>
  Math.sqrt(samples.reduce((sum, x) => sum + x * x, 0) / samples.length);

/** The mean frequency of a window in Hz, by direct transform up to 3 kHz. */
function pitch(samples: Float32Array, from: number): number {
  const length = 512;
  let all = 0;
  let sum = 0;
  for (let k = 1; (k * SAMPLE_RATE) / length < 3000; k++) {
    let re = 0;
    let im = 0;
    for (let i = 0; i < length; i++) {
      const window = 0.5 - 0.5 * Math.cos((2 * Math.PI * i) / length);
      const angle = (2 * Math.PI * k * i) / length;
      re += window * (samples[from + i] ?? 0) * Math.cos(angle);
      im += window * (samples[from + i] ?? 0) * Math.sin(angle);
    }
    const power = re * re + im * im;
    all += power;
    sum += (power * k * SAMPLE_RATE) / length;
  }
  return all ? sum / all : 0;
}
const STEP = 0.01;
/** Loudness over one beat in steps of 10 ms, the mean of three beats. */
function course(samples: Float32Array, period: number): number[] {
  const length = STEP * SAMPLE_RATE;
  return Array.from({ length: Math.floor(period / STEP) }, (_, i) => {
    const beats = [0, 1, 2].map((beat) => {
      const start = Math.round(beat * period * SAMPLE_RATE + i * length);
      return loudness(samples.subarray(start, start + length));
    });
    return (beats[0]! + beats[1]! + beats[2]!) / 3;
  });
}
/** The pitch where a beat is loudest, the mean of three beats. */
function loudestPitch(samples: Float32Array, period: number): number {
  const loud = course(samples, period);
  const at = loud.indexOf(Math.max(...loud)) * STEP - 0.01;
  return [0, 1, 2].reduce(
    (sum, beat) => sum + pitch(samples, Math.max(0, Math.round((beat * period + at) * SAMPLE_RATE))) / 3,
    0,
  );
}
/** How many separate sounds a beat has. */
function sounds(loud: number[]): number {
  const most = Math.max(...loud);
  let count = 0;
  let quiet = true;
  // From the quietest moment round.
  const least = loud.indexOf(Math.min(...loud));
  for (let i = 0; i < loud.length; i++) {
    const value = loud[(least + i) % loud.length]!;
    if (quiet && value > 0.2 * most) {
      count++;
      quiet = false;
    } else if (value < 0.14 * most) quiet = true;
  }
  return count;
}

const foot = { site: 'posterior-tibial', side: 'right' } as const;
const signal = (patient: PatientInput, seed = 1) => {
  const simulation = simulate(patient);
  const site = findingsOf(simulation).sites.find(
    ({ place }) => place.site === foot.site && place.side === foot.side,
  )!;
  return {
    name: site.doppler,
    samples: dopplerAt(simulation, foot, { seed }),
    period: simulation.inflow.period,
  };
};
const blocked = { age: 60, lesions: [{ piece: 'right superficial-femoral', extent: 'whole' } as const] };

describe('the Doppler signal', () => {
  it('has the shift of its velocity: 2 f v cos/c', () => {
    // 50 cm/s at 8 MHz and 60 degrees in tissue at 1540 m/s: 2597 Hz by hand.
    expect(dopplerShift(50)).toBeCloseTo(2597, 0);
    const steady = dopplerSound([30, 30, 30, 30], 0.8);
    expect(pitch(steady, SAMPLE_RATE)).toBeGreaterThan(0.5 * dopplerShift(30));
    expect(pitch(steady, SAMPLE_RATE)).toBeLessThan(1.4 * dopplerShift(30));
  });

  it('tells the three signals apart by how many sounds a beat has and how high they are', () => {
    const healthy = signal({ age: 35 });
    const beyond = signal(blocked);
    expect(healthy.name).toBe('triphasic');
    expect(beyond.name).toBe('monophasic');
    const high = course(healthy.samples, healthy.period);
    const low = course(beyond.samples, beyond.period);
    expect(sounds(high)).toBeGreaterThanOrEqual(2);
    expect(sounds(low)).toBe(1);
    expect(loudestPitch(healthy.samples, healthy.period)).toBeGreaterThan(
      1.3 * loudestPitch(beyond.samples, beyond.period),
    );
    // Never quiet beyond a block: blood runs on through diastole.
    expect(Math.min(...low) / Math.max(...low)).toBeGreaterThan(2 * (Math.min(...high) / Math.max(...high)));
    const biphasic = dopplerSound([0, 40, 20, -8, -3, 0, 0, 0, 0, 0, 0, 0], 0.8);
    expect(sounds(course(biphasic, 0.8))).toBe(2);
  });

  it('is silent where nothing moves, the same for the same seed, and never louder than one', () => {
    expect(loudness(dopplerSound([0, 0, 0], 0.8))).toBe(0);
    const first = signal(blocked, 4).samples;
    expect(signal(blocked, 4).samples).toEqual(first);
    expect(signal(blocked, 5).samples).not.toEqual(first);
    expect(first.every((x) => Math.abs(x) <= 1)).toBe(true);
  });
});

describe('a bruit', () => {
  const iliac = { site: 'iliac', side: 'right' } as const;
  const at = (narrowing: number): Float32Array =>
    bruitAtPlace(simulate({ age: 65, lesions: [{ piece: 'right common-iliac', narrowing }] }), iliac);

  it('rises with the jet and falls silent at occlusion', () => {
    expect(loudness(at(0))).toBe(0);
    expect(loudness(at(45))).toBeGreaterThan(0);
    expect(loudness(at(60))).toBeGreaterThan(loudness(at(45)));
    expect(loudness(at(100))).toBe(0);
  });

  it('is higher the faster and narrower the jet', () => {
    const of = (narrowing: number): number => loudestPitch(at(narrowing), 60 / 70);
    expect(of(65)).toBeGreaterThan(of(45));
    expect(of(65)).toBeLessThan(2000);
  });

  it('runs through diastole only where the jet does', () => {
    const quietest = (patient: PatientInput): number => {
      const simulation = simulate(patient);
      const loud = course(bruitOfJet(simulation, jetsOf(simulation)[0]!), simulation.inflow.period);
      return Math.min(...loud) / Math.max(...loud);
    };
    expect(quietest({ age: 65, lesions: [{ piece: 'right renal', narrowing: 70 }] })).toBeGreaterThan(0.1);
    expect(quietest({ age: 65, lesions: [{ piece: 'right common-iliac', narrowing: 55 }] })).toBeLessThan(
      0.05,
    );
  });
});

describe('wavOf and vibrationOf', () => {
  it('write a file that says its own length and rate', () => {
    const bytes = wavOf(Float32Array.of(0, 1, -1, 2));
    const view = new DataView(bytes.buffer);
    expect(new TextDecoder().decode(bytes.slice(0, 4))).toBe('RIFF');
    expect(view.getUint32(24, true)).toBe(SAMPLE_RATE);
    expect(view.getUint32(40, true)).toBe(8);
    expect([0, 1, 2, 3].map((i) => view.getInt16(44 + 2 * i, true))).toEqual([0, 32767, -32767, 32767]);
  });

  it('vibrate longer for a stronger pulse, at its rate, and not at all for an absent one', () => {
    expect(vibrationOf(0.8, 1, 'absent')).toEqual([]);
    const [weak, strong] = [vibrationOf(0.8, 0.5, 'reduced'), vibrationOf(0.8, 1, 'normal')];
    expect(strong[0]!).toBeGreaterThan(weak[0]!);
    expect(strong[0]! + strong[1]!).toBe(800);
  });
});
