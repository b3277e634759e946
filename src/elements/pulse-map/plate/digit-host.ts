import type { LitElement } from 'lit';
import type { Examination } from '../../../examination/index.js';
import type { Messages } from '../../../locale/index.js';
import { later } from '../fetched.js';
import type { Recorder } from '../recorder.js';
import type { Session } from '../session.js';
import type { DigitHost } from './digits.js';

/** The map, as far as fingers and toes need it; they are fetched with the plates and know nothing else of it. */
export class MapDigits implements DigitHost {
  constructor(
    private readonly session: Session,
    private readonly recorder: Recorder,
    private readonly compared: () => Examination | undefined,
  ) {}

  get element(): LitElement {
    return this.session.element;
  }

  get view(): string {
    return this.session.view;
  }

  get examination(): Examination {
    return this.session.examination;
  }

  get earlier(): Examination | undefined {
    return this.compared();
  }

  get editable(): boolean {
    return this.session.editable;
  }

  get narrow(): boolean {
    return this.session.narrow;
  }

  get drawing(): boolean {
    return this.session.now.mode === 'skin';
  }

  get words(): Messages | undefined {
    return later.part && this.session.allWords;
  }

  record(next: Examination, told: string): void {
    this.recorder.whole(next, () => told);
  }

  back(): boolean {
    return this.session.back();
  }
}
