import { css, html, nothing, type TemplateResult } from 'lit';
import { type BedsideTestId, LONGEST_SECONDS } from '../../examination/index.js';
import { large, toggles } from '../common/choices.js';
import type { PartMessages } from '../../locale/parts.js';
import { clockText } from '../limb-stopwatch/watch-controller.js';
import type { BedsideHost, Body } from './host.js';

/** The large time of a running test. */
export function bigTime(
  ms: number,
  label: string,
  caption: string,
  { whole: { point } }: PartMessages,
): TemplateResult {
  const [whole, tenth] = clockText(ms, true).split('.');
  return html`<p class="huge" role="timer" aria-label=${label}>${whole}<small>${point}${tenth}</small></p>
    <p class="hint centred">${caption}</p>`;
}

interface Way {
  readonly start: string;
  /** The result when the awaited event has happened. */
  readonly happened: { readonly word: string; readonly fields: Record<string, unknown> };
  /** The result when it has not. */
  readonly not: { readonly word: string; readonly fields: Record<string, unknown> };
  readonly caption: string;
}

function wayOf(host: BedsideHost): Way | undefined {
  const { bedside: words } = host.words;
  const side = host.mapWords.anatomy.sides[host.side];
  const caption = `${large(side)}, ${words.colourReturn.label}`;
  switch (host.test) {
    case 'colour-return':
      return {
        start: words.colourReturn.start,
        happened: { word: words.colourReturn.stop, fields: { returned: undefined } },
        not: { word: words.colourReturn.never, fields: { returned: false } },
        caption,
      };
    case 'dependent-rubor':
      return {
        start: words.rubor.start,
        happened: { word: words.rubor.red, fields: { rubor: true } },
        not: { word: words.rubor.none, fields: { rubor: false } },
        caption,
      };
    case 'venous-filling':
      return {
        start: words.venous.start,
        happened: { word: words.venous.stop, fields: { filled: undefined } },
        not: { word: words.venous.never, fields: { filled: false } },
        caption,
      };
    default:
      return undefined;
  }
}

export type TimedTestId = Extract<BedsideTestId, 'colour-return' | 'dependent-rubor' | 'venous-filling'>;

/** A stopwatch, the event that ends it, and manual entry of the time. */
export function timedBody(host: BedsideHost<TimedTestId>): Body {
  const way = wayOf(host) as Way;
  const { bedside: words } = host.words;
  const watch = host.watch('hanging');
  const result = host.result();
  const finish = (fields: Record<string, unknown>): void => {
    const timed = watch.elapsed > 0 ? { seconds: watch.seconds } : {};
    watch.reset();
    host.patch({ ...timed, ...fields });
  };
  const main = (): void => {
    if (watch.running) finish(way.happened.fields);
    else watch.start();
  };
  const shown = watch.running || watch.elapsed > 0 ? watch.elapsed : (result.seconds ?? 0) * 1000;
  const template = html`<div class="timed">
    ${bigTime(shown, words.timer, way.caption, host.words)}
    <button type="button" class="button solid wide" ?disabled=${!host.editable} @click=${main}>
      ${watch.running ? way.happened.word : way.start}
    </button>
    <div class="row centred">
      ${
        host.test === 'dependent-rubor' && !watch.running
          ? html`<button
              type="button"
              class="button"
              aria-pressed=${(result as { rubor?: boolean }).rubor === true}
              ?disabled=${!host.editable}
              @click=${() => finish(way.happened.fields)}
            >
              ${way.happened.word}
            </button>`
          : nothing
      }
      <button type="button" class="button" ?disabled=${!host.editable} @click=${() => finish(way.not.fields)}>
        ${way.not.word}
      </button>
      ${host.number({
        id: 'seconds',
        label: words.time,
        unit: 's',
        max: LONGEST_SECONDS,
        value: result.seconds,
        set: (seconds) =>
          host.patch({ seconds, ...(seconds === undefined && { returned: undefined, filled: undefined }) }),
      })}
      ${
        host.test === 'venous-filling'
          ? toggles<'incompetentVeins'>({
              label: words.venous.incompetent,
              options: [['incompetentVeins', words.venous.incompetent]],
              value: (result as { incompetentVeins?: true }).incompetentVeins
                ? ['incompetentVeins']
                : undefined,
              disabled: !host.editable,
              pick: (picked) => host.patch({ incompetentVeins: picked ? true : undefined }),
            })
          : nothing
      }
    </div>
  </div>`;
  return { template, main };
}

export const timedStyles = css`
  .timed {
    padding-block: 4px 12px;
    text-align: center;
  }
  .huge {
    font-size: calc(64 * var(--_text));
    line-height: calc(72 * var(--_text));
    font-weight: 600;
    letter-spacing: -0.03em;
  }
  .huge small {
    font-size: calc(30 * var(--_text));
    color: var(--_ink-2);
    letter-spacing: 0;
  }
  .centred {
    justify-content: center;
    align-items: end;
    text-align: center;
  }
  .wide {
    inline-size: 100%;
    max-inline-size: 420px;
    min-block-size: 60px;
    margin-block: 10px 12px;
    font-size: calc(18 * var(--_text));
    white-space: normal;
  }
`;
