import { css, html, noChange, svg, type TemplateResult } from 'lit';
import { FIST_SECONDS, releasedArtery } from '../../bedside/index.js';
import { PALM, PALM_BOX, palmTransform } from '../../drawing/bedside-figures.js';
import { LONGEST_SECONDS } from '../../examination/index.js';
import { choices, optionsOf } from '../common/choices.js';
import { selectField } from '../common/select.js';
import type { BedsideHost, Body } from './host.js';

type Artery = 'radial' | 'ulnar';

/** The palm with one artery released and the other compressed. */
function palm(host: BedsideHost<'hand-arch'>, released: Artery): TemplateResult {
  const pressed: Artery = released === 'radial' ? 'ulnar' : 'radial';
  const bar = PALM.press[pressed];
  const { anatomy } = host.mapWords;
  return html`<svg
    class="palm"
    viewBox="0 0 ${PALM_BOX.width} ${PALM_BOX.height}"
    role="img"
    aria-label=${host.words.bedside.hand.figure(anatomy.sides[host.side], anatomy.arteries[released])}
  >
    <g transform=${palmTransform(host.side)}>
      ${PALM.hand.map(({ d, stroke }) => svg`<path class="skin" d=${d} stroke-width=${stroke}></path>`)}
      <path class="open faint" d=${PALM.arch}></path>
      <path class="open" d=${PALM[released]}></path>
      <path class="shut" d=${PALM[pressed]}></path>
      <path class="lumen" d=${PALM[pressed]}></path>
      <path class="press" d="M${bar.x - 9} ${bar.y - 3}h18M${bar.x - 9} ${bar.y + 3}h18"></path>
    </g>
  </svg>`;
}

function release(host: BedsideHost<'hand-arch'>, artery: Artery): TemplateResult {
  const { bedside: words } = host.words;
  const watch = host.watch(artery);
  const done = host.result()[artery];
  const verdict = releasedArtery(done, host.limit);
  const finish = (fields: { returned?: false }): void => {
    const seconds = watch.elapsed > 0 ? watch.seconds : done?.seconds;
    watch.reset();
    host.patch({ [artery]: { ...(seconds !== undefined && { seconds }), ...fields } });
  };
  const timing = watch.running || watch.elapsed > 0;
  const seconds = timing ? watch.seconds : done?.seconds;
  const late = timing && watch.seconds > host.limit;
  const said = late
    ? `${words.hand.beyond(host.limit)}, ${words.hand.stillPale}`
    : verdict === 'blocked'
      ? words.hand.white
      : verdict === 'slow'
        ? words.hand.beyond(host.limit)
        : words.hand.within(host.limit);
  return html`<section
    class="release ${watch.running ? 'running' : ''}"
    aria-label=${words.hand.released[artery]}
  >
    ${palm(host, artery)}
    <div>
      <h4 class="name">${words.hand.released[artery]}</h4>
      <p class="big" role="timer">
        ${seconds === undefined ? '–' : host.words.whole.number(seconds, 1)}<span> s</span>
      </p>
      <p class=${late || verdict === 'slow' || verdict === 'blocked' ? 'odd' : 'hint'}>${said}</p>
    </div>
    <div class="acts">
      <button
        type="button"
        class="button ${watch.running ? 'solid' : ''} tall"
        ?disabled=${!host.editable}
        @click=${() => (watch.running ? finish({}) : watch.start())}
      >
        ${watch.running ? words.hand.stop : done ? words.again : words.hand.start}
      </button>
      <button
        type="button"
        class="button tall"
        ?disabled=${!host.editable}
        @click=${() => finish({ returned: false })}
      >
        ${words.hand.never}
      </button>
      ${host.number({
        id: `${artery}-seconds`,
        label: words.time,
        unit: 's',
        max: LONGEST_SECONDS,
        value: done?.seconds,
        set: (value) =>
          host.patch({ [artery]: value === undefined ? undefined : { ...done, seconds: value } }),
      })}
    </div>
  </section>`;
}

/** Both arteries of one hand, each released in turn, and the tracing during compression. */
export function handBody(host: BedsideHost<'hand-arch'>): Body {
  const { hand: words } = host.words.bedside;
  const { method, barbeau, barbeauReverse } = host.result();
  const watches = (['radial', 'ulnar'] as const).map((artery) => ({ artery, watch: host.watch(artery) }));
  const fist = FIST_SECONDS[method ?? 'modified'].value;
  const tracing = (field: 'barbeau' | 'barbeauReverse', value: typeof barbeau): TemplateResult =>
    host.known(
      [field],
      words[field],
      () =>
        selectField({
          label: words[field],
          empty: host.words.whole.notStated,
          options: optionsOf(words.classes),
          value,
          disabled: !host.editable,
          set: (picked) => host.patch({ [field]: picked }),
        }),
      { labelled: true },
    );
  const unknown = host.isUnknown(['barbeau']) || host.isUnknown(['barbeauReverse']);
  const template = html`<div class="hand">
    <div class="row">
      ${host.known(
        ['method'],
        words.method,
        () =>
          choices({
            label: words.method,
            options: optionsOf(words.methods),
            value: method,
            disabled: !host.editable,
            pick: (picked) => host.patch({ method: picked }),
          }),
        { labelled: true },
      )}
      <p class="hint">${words.fist(fist)}</p>
    </div>
    <div class="two">${watches.map(({ artery }) => release(host, artery))}</div>
    <details
      class="fold"
      ?open=${barbeau !== undefined || barbeauReverse !== undefined || unknown || noChange}
    >
      <summary>${words.tracing}</summary>
      <div class="two loose">${tracing('barbeau', barbeau)} ${tracing('barbeauReverse', barbeauReverse)}</div>
    </details>
  </div>`;
  const running = watches.find(({ watch }) => watch.running);
  const next = watches.find(({ artery }) => !host.result()[artery]) ?? watches[0];
  return {
    template,
    main: () => {
      if (!running) next?.watch.start();
      else {
        const { seconds } = running.watch;
        running.watch.reset();
        host.patch({ [running.artery]: { seconds } });
      }
    },
  };
}

export const handStyles = css`
  .two {
    display: grid;
    gap: 16px;
    margin-block: 12px;
  }
  .release {
    display: grid;
    grid-template-columns: 104px minmax(0, 1fr);
    gap: 12px 18px;
    align-items: center;
    padding: 14px;
    border: 1px solid var(--_line);
    border-radius: 10px;
  }
  .release.running {
    border-color: var(--_ink);
    box-shadow: inset 0 0 0 1px var(--_ink);
  }
  .release .name {
    color: var(--_ink);
    font-size: calc(15 * var(--_text));
    line-height: calc(20 * var(--_text));
  }
  .palm {
    inline-size: 100%;
  }
  .palm path {
    fill: none;
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  .palm .skin {
    fill: var(--_body);
    stroke: var(--_body);
  }
  .palm .open,
  .palm .shut {
    stroke: var(--_vessel);
    stroke-width: 6;
  }
  .palm .faint {
    opacity: 0.55;
  }
  .palm .shut {
    stroke: var(--_mute);
  }
  .palm .lumen {
    stroke: var(--_body);
    stroke-width: 3.2;
  }
  .palm .press {
    stroke: var(--_ink);
    stroke-width: 2.6;
  }
  .acts {
    grid-column: 1 / -1;
    display: flex;
    flex-wrap: wrap;
    align-items: end;
    gap: 8px;
  }
  .acts .button {
    flex: 1;
  }
  .odd {
    font-weight: 600;
  }
  @container (min-width: 700px) {
    .two {
      grid-template-columns: 1fr 1fr;
    }
  }
`;
