import { expect } from '@open-wc/testing';
import { generatePatients, type GeneratedPatient, requestPatients } from 'pulse-map/flow';

describe('the published worker', () => {
  let worker: Worker;
  beforeEach(() => {
    worker = new Worker(new URL('./patients-worker.ts', import.meta.url), { type: 'module' });
  });
  afterEach(() => worker.terminate());
  const request = { seed: 7, count: 20, parts: ['pulses'] } as const;

  it('examines the same patients as the page would', async () => {
    const came: GeneratedPatient[] = [];
    await requestPatients(worker, request, { onPatients: (patients) => came.push(...patients) });
    expect(came).to.deep.equal([...generatePatients(request)]);
  });

  it('stops when it is told to and answers the next request', async () => {
    const stop = new AbortController();
    const all = requestPatients(
      worker,
      { ...request, count: 100_000 },
      { signal: stop.signal, onPatients: () => stop.abort() },
    );
    expect(
      await all.then(
        () => 'done',
        (reason: DOMException) => reason.name,
      ),
    ).to.equal('AbortError');
    expect(await requestPatients(worker, { ...request, count: 3 })).to.equal(3);
  });
});
