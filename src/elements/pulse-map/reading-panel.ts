import { html, type LitElement, nothing, type TemplateResult } from 'lit';
import type { Examination } from '../../examination/index.js';
import type { ActKind } from '../../localisation/index.js';
import type { Register } from '../../locale/terms.js';
import type { ShownMessages } from '../../locale/shown.js';
import { TrailingController } from '../common/trailing.js';
import { reader } from '../pulse-reading/reader.js';
import { later } from './fetched.js';

/** What the map records itself. */
export const RECORDED: readonly ActKind[] = ['feel', 'listen', 'delay', 'onset'];

/** The record that is read: a moment behind the one that is recorded, and prepared for in parts. */
export function followed(
  host: LitElement & { readonly examination: Examination },
  earlier: () => Examination | undefined,
): TrailingController<Examination> {
  return new TrailingController(
    host,
    () => host.examination,
    (one) => reader.part?.readInParts(one, earlier()) ?? [],
  );
}

interface ReadingPanel {
  /** The record that is read. */
  readonly read: Examination;
  readonly earlier: Examination | undefined;
  readonly can: readonly ActKind[];
  /** Whether there is anything to read. */
  readonly recorded: boolean;
  readonly lang: string;
  readonly register: Register | '';
}

/** The panel that says where the block is. Until that has been fetched its room stands empty, or says so beside findings. */
export function renderReading(panel: ReadingPanel, words: ShownMessages): TemplateResult {
  const { read, earlier, can, recorded, lang, register } = panel;
  if (!later.part)
    return html`<div class="reading waits" part="reading">
      ${recorded ? html`<p role="status">${words.map.readingWaits}</p>` : nothing}
    </div>`;
  return html`<div class="reading" part="reading">
    <pulse-reading
      .examination=${read}
      .earlier=${earlier ?? null}
      .can=${can}
      lang=${lang || nothing}
      register=${register || nothing}
    ></pulse-reading>
  </div>`;
}
