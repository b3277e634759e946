import { MessageChannel } from 'node:worker_threads';
import { afterEach, describe, expect, it } from 'vitest';
import { parseExamination } from '../../../src/examination/index.js';
import {
  answerRequests,
  examine,
  type GeneratedPatient,
  generatePatients,
  type Port,
  requestPatients,
} from '../../../src/flow/index.js';

const PARTS = ['pulses'] as const;
const request = { seed: 4817, count: 20, parts: PARTS };

let open: MessageChannel | undefined;
afterEach(() => {
  open?.port1.close();
  open = undefined;
});

/** One end of a channel at whose other end requests are answered; what crosses it is counted. */
function channel(): { port: Port; crossed: unknown[] } {
  open = new MessageChannel();
  const crossed: unknown[] = [];
  const { port1, port2 } = open as unknown as { port1: Port; port2: Port };
  const counted: Port = {
    postMessage: (message) => {
      crossed.push(message);
      port2.postMessage(message);
    },
    addEventListener: (type, listener) => port2.addEventListener(type, listener),
    removeEventListener: (type, listener) => port2.removeEventListener(type, listener),
    start: () => port2.start?.(),
  };
  answerRequests(counted);
  return { port: port1, crossed };
}

describe('many patients', () => {
  it('are the same for the same request, and any of them can be asked for alone', () => {
    const all = [...generatePatients(request)];
    expect(all.map(({ number }) => number)).toEqual(Array.from({ length: 20 }, (_, i) => i));
    expect([...generatePatients({ ...request, from: 17, count: 1 })]).toEqual([all[17]]);
    for (const { examination, patient, settled } of all) {
      expect(parseExamination(examination).ok).toBe(true);
      expect(settled).toBe(true);
      expect(examine(patient, { parts: PARTS, examiner: { seed: patient.seed } })).toEqual(examination);
    }
  });

  it.each([
    ['seed', -1],
    ['from', 0.5],
    ['count', NaN],
    ['count', 1e9],
  ] as const)('refuse %s %d and name the field', (field, value) => {
    expect(() => generatePatients({ ...request, [field]: value }).next()).toThrow(
      new RegExp(`^${field}: found`),
    );
  });

  it('come through a port in slices, in order, with their progress', async () => {
    const { port } = channel();
    const came: GeneratedPatient[] = [];
    const progress: number[] = [];
    const count = await requestPatients(port, request, {
      onPatients: (patients, done) => {
        came.push(...patients);
        progress.push(done);
      },
    });
    expect(count).toBe(20);
    expect(came).toEqual([...generatePatients(request)]);
    expect(progress.length).toBeGreaterThan(1);
    expect(progress.at(-1)).toBe(20);
  });

  it('two requests at once do not mix', async () => {
    const { port } = channel();
    const of = (seed: number) =>
      new Promise<number[]>((resolve, reject) => {
        const ages: number[] = [];
        requestPatients(
          port,
          { seed, count: 20, parts: PARTS },
          {
            onPatients: (patients) => ages.push(...patients.map(({ patient }) => patient.age)),
          },
        ).then(() => resolve(ages), reject);
      });
    const [one, two] = await Promise.all([of(1), of(2)]);
    const alone = (seed: number) =>
      [...generatePatients({ seed, count: 20, parts: PARTS })].map(({ patient }) => patient.age);
    expect(one).toEqual(alone(1));
    expect(two).toEqual(alone(2));
  });

  it('stop when they are told to, at both ends', async () => {
    const { port, crossed } = channel();
    const stop = new AbortController();
    const reason = new Error('enough');
    const all = requestPatients(
      port,
      { ...request, count: 100_000 },
      {
        signal: stop.signal,
        onPatients: () => stop.abort(reason),
      },
    );
    await expect(all).rejects.toBe(reason);
    // The other end answers the next request, and nothing more of the one that was stopped.
    await requestPatients(port, { ...request, count: 1 });
    const before = crossed.length;
    await requestPatients(port, { ...request, count: 1 });
    expect(crossed.length - before).toBe(1);
    await expect(requestPatients(port, request, { signal: stop.signal })).rejects.toBe(reason);
  });

  it('tell the other end’s fault', async () => {
    const { port } = channel();
    await expect(requestPatients(port, { ...request, count: -3 })).rejects.toThrow(/^count: found -3/);
  });
});
