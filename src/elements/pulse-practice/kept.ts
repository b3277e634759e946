import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { readResults, type Result } from '../../practice/index.js';

const nameOf = (keep: string): string => `pulse-practice:${keep}`;

/** Results kept on this machine; `undefined` where storage is barred, or the page does not ask for it. */
function read(keep: string | undefined): readonly Result[] | undefined {
  if (!keep) return undefined;
  try {
    return readResults(JSON.parse(localStorage.getItem(nameOf(keep)) ?? 'null'));
  } catch {
    return undefined;
  }
}

function write(keep: string | undefined, results: readonly Result[]): void {
  if (!keep) return;
  try {
    if (results.length) localStorage.setItem(nameOf(keep), JSON.stringify(readResults(results)));
    else localStorage.removeItem(nameOf(keep));
  } catch {
    // Storage may be barred or full: the results then live as long as the page.
  }
}

/** A learner's results: on the machine only where the page says so, else as long as the page lives. */
export class KeptResults implements ReactiveController {
  readonly #host: ReactiveControllerHost & { readonly keep: string | undefined };
  #keep: string | undefined;
  #results: readonly Result[] = [];
  #forgotten: readonly Result[] = [];

  constructor(host: ReactiveControllerHost & { readonly keep: string | undefined }) {
    this.#host = host;
    host.addController(this);
  }

  get results(): readonly Result[] {
    return this.#results;
  }

  /** How many were forgotten and can be brought back. */
  get forgotten(): number {
    return this.#forgotten.length;
  }

  hostUpdate(): void {
    const { keep } = this.#host;
    if (keep === this.#keep) return;
    this.#keep = keep;
    this.#results = read(keep) ?? [];
    this.#forgotten = [];
  }

  /** What another window kept meanwhile stays. */
  add(result: Result): void {
    this.#put([...(read(this.#keep) ?? this.#results), result]);
  }

  /** Forgets all in one act, on the machine too. */
  forget(): void {
    this.#forgotten = this.#results;
    this.#put([]);
  }

  /** Takes that back; what came since stays. */
  restore(): void {
    const before = this.#forgotten;
    this.#forgotten = [];
    this.#put([...before, ...this.#results]);
  }

  #put(results: readonly Result[]): void {
    this.#results = results;
    write(this.#keep, results);
    this.#host.requestUpdate();
  }
}
