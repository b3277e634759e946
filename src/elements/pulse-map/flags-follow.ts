import type { LitElement, ReactiveController } from 'lit';
import type { Examination } from '../../examination/index.js';
import { afterPaint } from '../common/trailing.js';
import type { LimbFlags } from '../limb-flags/element.js';

/** What a person does in the flags, which counts from the record as it stands. */
const ACTS = ['click', 'input'];

/**
 * Hands the red flags the record once the mark of an act has been painted: to weigh them, and to keep what lies below still, would delay
 * it. Those of another record stand there at once.
 */
export class FlagsController implements ReactiveController {
  /** Set while the flags are behind. */
  settled: Promise<void> | undefined;
  #flags: LimbFlags | null = null;
  #shown: Examination | undefined;

  constructor(private readonly host: LitElement & { readonly examination: Examination }) {
    host.addController(this);
  }

  /** Follows with the next update, where the flags before must not stand a frame longer. */
  catchUp(): void {
    this.#shown = undefined;
  }

  hostUpdated(): void {
    // Not those of the printed sheet.
    const flags = this.host.renderRoot.querySelector<LimbFlags>('limb-flags[steady]');
    if (flags !== this.#flags) {
      this.#flags = flags;
      this.#shown = undefined;
      for (const act of ACTS) flags?.addEventListener(act, this.#show, true);
    }
    if (this.#shown === undefined) this.#show();
    else if (this.#shown !== this.host.examination) this.settled ??= this.#follow();
  }

  async #follow(): Promise<void> {
    await afterPaint();
    this.settled = undefined;
    this.#show();
    await this.#flags?.updateComplete;
  }

  readonly #show = (): void => {
    const { examination } = this.host;
    if (!this.#flags || examination === this.#shown) return;
    this.#flags.examination = this.#shown = examination;
  };
}
