import type { Examination, ScaleId } from '../examination/index.js';
import { examineSimulation, type ExaminedPart } from './examine.js';
import type { Pattern } from './generate/frequencies.js';
import { randomPatient } from './generate/random.js';
import type { Patient } from './patient.js';
import { simulate } from './simulate.js';

/*
 * Many generated patients, one after another, here or at the other end of a port (a worker, a message channel). The other end works in
 * slices, so that it hears a cancel between two of them.
 */

/** Which patients are asked for. The same request gives the same patients. */
export interface PatientsRequest {
  readonly seed: number;
  /** Number of the first; 0 where it is left out. */
  readonly from?: number;
  readonly count: number;
  /** What is examined; everything where it is left out. */
  readonly parts?: readonly ExaminedPart[];
  readonly scale?: ScaleId;
  /** A hand that never errs instead of the published one. */
  readonly perfect?: boolean;
}

export interface GeneratedPatient {
  /** By which the patient is asked for again (`from`). */
  readonly number: number;
  readonly pattern: Pattern;
  readonly patient: Patient;
  readonly examination: Examination;
  /** Whether flow and pulse were solved to their limits. */
  readonly settled: boolean;
}

/** Most patients of one request. */
export const MOST_PATIENTS = 1_000_000;

function checked(request: PatientsRequest): PatientsRequest {
  for (const name of ['seed', 'from', 'count'] as const) {
    const value = request[name] ?? 0;
    const most = name === 'count' ? MOST_PATIENTS : 0xffffffff;
    if (!Number.isInteger(value) || value < 0 || value > most)
      throw new RangeError(`${name}: found ${String(value)}, expected a whole number from 0 to ${most}`);
  }
  return request;
}

/**
 * Generates and examines patients, each when it is asked for.
 * @throws RangeError that names the field, where seed, from or count is no whole number in its range
 */
export function* generatePatients(request: PatientsRequest): Generator<GeneratedPatient, void, undefined> {
  const { seed, from = 0, count, parts, scale, perfect = false } = checked(request);
  for (let number = from; number < from + count; number++) {
    const { pattern, patient } = randomPatient(seed, number);
    const simulation = simulate(patient);
    const examination = examineSimulation(simulation, {
      ...(parts && { parts }),
      ...(scale && { scale }),
      ...(perfect ? {} : { examiner: { seed: patient.seed } }),
    });
    yield { number, pattern, patient, examination, settled: simulation.beating.converged };
  }
}

/** What a `Worker`, the inside of one, and each end of a `MessageChannel` have in common. */
export interface Port {
  postMessage(message: unknown): void;
  addEventListener(type: 'message', listener: (event: { readonly data: unknown }) => void): void;
  removeEventListener(type: 'message', listener: (event: { readonly data: unknown }) => void): void;
  /** Message ports wait until they are started. */
  start?(): void;
}

type Question = { readonly ask: number; readonly request: PatientsRequest } | { readonly cancel: number };
type Answer =
  | { readonly to: number; readonly patients: readonly GeneratedPatient[]; readonly last: boolean }
  | { readonly to: number; readonly failed: string };

/** Patients of one slice: some 50 ms. */
const SLICE = 16;
const pause = (): Promise<void> => new Promise((resume) => setTimeout(resume, 0));

/** Answers requests that come through a port, until it closes. What a worker runs. */
export function answerRequests(port: Port): void {
  const cancelled = new Set<number>();
  const send = (answer: Answer): void => port.postMessage(answer);
  const answer = async (to: number, request: PatientsRequest): Promise<void> => {
    try {
      const all = generatePatients(request);
      for (let last = false; !last && !cancelled.has(to); await pause()) {
        const patients: GeneratedPatient[] = [];
        while (patients.length < SLICE && !last) {
          const next = all.next();
          if (next.done) last = true;
          else patients.push(next.value);
        }
        send({ to, patients, last });
      }
    } catch (error) {
      send({ to, failed: error instanceof Error ? error.message : String(error) });
    }
    cancelled.delete(to);
  };
  port.addEventListener('message', ({ data }) => {
    const question = data as Question;
    if ('cancel' in question) cancelled.add(question.cancel);
    else void answer(question.ask, question.request);
  });
  port.start?.();
}

/** How a request is followed and stopped. */
export interface FollowOptions {
  /** Called with each slice as it comes, and how many have come. */
  readonly onPatients?: (patients: readonly GeneratedPatient[], done: number) => void;
  readonly signal?: AbortSignal;
}

let asked = 0;

/**
 * Asks the other end of a port for patients ({@link answerRequests} stands there).
 * @returns how many came, once all have
 * @throws the signal's reason when it is aborted; RangeError as {@link generatePatients}
 */
export function requestPatients(
  port: Port,
  request: PatientsRequest,
  { onPatients, signal }: FollowOptions = {},
): Promise<number> {
  return new Promise((resolve, reject) => {
    signal?.throwIfAborted();
    const ask = ++asked;
    let done = 0;
    const end = (): void => {
      port.removeEventListener('message', hear);
      signal?.removeEventListener('abort', stop);
    };
    const hear = ({ data }: { readonly data: unknown }): void => {
      const answer = data as Answer;
      if (answer.to !== ask) return;
      if ('failed' in answer) {
        end();
        reject(new RangeError(answer.failed));
        return;
      }
      done += answer.patients.length;
      if (answer.last) end();
      onPatients?.(answer.patients, done);
      if (answer.last) resolve(done);
    };
    const stop = (): void => {
      end();
      port.postMessage({ cancel: ask } satisfies Question);
      reject(signal!.reason as Error);
    };
    port.addEventListener('message', hear);
    port.start?.();
    signal?.addEventListener('abort', stop);
    port.postMessage({ ask, request } satisfies Question);
  });
}
