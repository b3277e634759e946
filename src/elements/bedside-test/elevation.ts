import { html, nothing, svg, type TemplateResult } from 'lit';
import { ISCHAEMIC_ANGLES } from '../../bedside/index.js';
import {
  angleTo,
  arcPath,
  FOOT_PATH,
  handleAt,
  HIP,
  LEG_ARC,
  LEG_BOX,
  LEG_PATH,
  onRay,
  tickPath,
} from '../../drawing/bedside-figures.js';
import { LONGEST_SECONDS } from '../../examination/index.js';
import { ICONS } from '../common/icons.js';
import type { BedsideHost, Body } from './host.js';
import type { ShinSensor } from './shin-sensor.js';

const STEP = 5;
const TICKS = Array.from({ length: 19 }, (_, i) => i * 5);

/** The current angle before it is recorded, set by drag, keys, buttons or the phone's sensor. */
export interface AngleGauge {
  angle: number;
  /** Angle at the start of a drag, restored on cancel. */
  from: number | undefined;
}

function clamp(angle: number): number {
  return Math.min(90, Math.max(0, Math.round(angle)));
}

/** Moves the leg by pointer and by keys. Nothing is recorded until pallor is marked. */
class LegDrag {
  constructor(
    private readonly gauge: () => AngleGauge,
    private readonly set: (angle: number, from?: number) => void,
    private readonly mark: () => void,
  ) {}

  readonly down = (event: PointerEvent): void => {
    if (event.button !== 0 || !event.isPrimary) return;
    const target = event.currentTarget as SVGElement;
    target.setPointerCapture(event.pointerId);
    target.focus();
    this.set(this.gauge().angle, this.gauge().angle);
  };

  readonly move = (event: PointerEvent): void => {
    const { from } = this.gauge();
    if (from === undefined) return;
    const svgElement = (event.currentTarget as SVGElement).closest('svg') as SVGSVGElement;
    const matrix = svgElement.getScreenCTM()?.inverse();
    if (!matrix) return;
    this.set(angleTo(new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix)), from);
  };

  /** Prevents scrolling while a finger turns the leg; touch-action does not apply to parts of an SVG. */
  readonly touch = {
    handleEvent: (event: TouchEvent): void => {
      if (this.gauge().from !== undefined && event.cancelable) event.preventDefault();
    },
    passive: false,
  };

  readonly up = (): void => this.set(this.gauge().angle);

  /** On cancel the leg returns to where it was. */
  readonly cancel = (): void => this.set(this.gauge().from ?? this.gauge().angle);

  readonly key = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    const { angle } = this.gauge();
    const to: Record<string, number> = {
      ArrowUp: angle + 1,
      ArrowRight: angle + 1,
      ArrowDown: angle - 1,
      ArrowLeft: angle - 1,
      PageUp: angle + 10,
      PageDown: angle - 10,
      Home: 0,
      End: 90,
    };
    if (event.key === 'Enter') this.mark();
    else if (event.key in to) this.set(clamp(to[event.key] as number));
    else return;
    event.preventDefault();
  };
}

function figure(host: BedsideHost<'elevation'>, gauge: AngleGauge, drag: LegDrag): TemplateResult {
  const words = host.words.bedside.elevation;
  const side = host.mapWords.anatomy.sides[host.side];
  const { pallor, angle: marked } = host.result();
  const { angle } = gauge;
  const handle = handleAt(angle);
  const end = onRay(angle, LEG_ARC);
  const label = onRay(marked ?? 0, LEG_ARC + 40);
  return html`<svg
    class="leg-figure"
    role="group"
    aria-label=${words.figure(side, angle)}
    viewBox="0 -14 ${LEG_BOX.width} ${LEG_BOX.height + 14}"
  >
    <path class="couch" d="M6 286H308"></path>
    <path class="arc" d=${arcPath(0, 90)}></path>
    <path class="range" d=${arcPath(ISCHAEMIC_ANGLES.from, ISCHAEMIC_ANGLES.to)}></path>
    ${TICKS.map((t) => svg`<path class="tick" d=${tickPath(t, t % 30 === 0 ? 12 : t % 15 === 0 ? 8 : 4)}></path>`)}
    ${[0, 30, 60, 90].map((t) => {
      const at = onRay(t, LEG_ARC + 26);
      return svg`<text class="tick-text" x=${at.x} y=${at.y + 5} text-anchor="middle">${t}°</text>`;
    })}
    <g class="ghost" transform="translate(${HIP.x} ${HIP.y})">
      <path d=${LEG_PATH}></path>
      <path d=${FOOT_PATH}></path>
    </g>
    <g transform="translate(${HIP.x} ${HIP.y}) rotate(${-angle})">
      <path class="leg" d=${LEG_PATH}></path>
      <path class="foot" d=${FOOT_PATH}></path>
    </g>
    <path class="trunk" d="M4 226C44 218 112 214 152 232C182 244 178 276 156 284L4 284Z"></path>
    <path class="axis" d="M${HIP.x} ${HIP.y}L${end.x} ${end.y}"></path>
    ${
      pallor && marked !== undefined
        ? svg`<g class="pale"><path d=${tickPath(marked, 22)}></path><text x=${label.x} y=${label.y + 5}>${words.paleMark}</text></g>`
        : nothing
    }
    <g
      class="handle"
      role="slider"
      tabindex=${host.editable ? 0 : nothing}
      aria-label=${words.handle(side)}
      aria-orientation="vertical"
      aria-valuemin="0"
      aria-valuemax="90"
      aria-valuenow=${angle}
      aria-valuetext=${words.degrees(angle)}
      aria-disabled=${host.editable ? nothing : 'true'}
      transform="translate(${handle.x} ${handle.y})"
      @pointerdown=${host.editable ? drag.down : nothing}
      @pointermove=${drag.move}
      @touchmove=${drag.touch}
      @pointerup=${drag.up}
      @pointercancel=${drag.cancel}
      @lostpointercapture=${drag.up}
      @keydown=${host.editable ? drag.key : nothing}
    >
      <circle class="target" r="34"></circle>
      <circle class="ring" r="22"></circle>
      <path class="arrows" d="M-6-5 0-11 6-5M-6 5 0 11 6 5M0-9V9" transform="rotate(${-angle})"></path>
    </g>
    <circle class="hip" cx=${HIP.x} cy=${HIP.y} r="4"></circle>
  </svg>`;
}

/** The leg in profile, its angle, the time it has been up, and the mark of pallor. */
export function elevationBody(
  host: BedsideHost<'elevation'>,
  inHand: () => AngleGauge,
  setAngle: (angle: number, from?: number) => void,
  sensor: ShinSensor,
): Body {
  const words = host.words.bedside.elevation;
  const watch = host.watch('raised');
  const { pallor, seconds, angle } = host.result();
  const time = (): { seconds: number } | object => (watch.elapsed > 0 ? { seconds: watch.seconds } : {});
  const mark = (turned: boolean): void => {
    const timed = time();
    watch.reset();
    host.patch({ pallor: turned, angle: inHand().angle, ...timed });
  };
  const gauge = inHand();
  const drag = new LegDrag(inHand, setAngle, () => mark(true));
  const shown = watch.running || watch.elapsed > 0 ? watch.seconds : seconds;
  const template = html`<div class="leg-raise">
    ${figure(host, gauge, drag)}
    <div class="controls">
      <p class="big">${gauge.angle}°</p>
      <span class="row">
        <button
          type="button"
          class="button icon"
          aria-label=${words.lower}
          ?disabled=${!host.editable}
          @click=${() => setAngle(clamp(inHand().angle - STEP))}
        >
          ${ICONS.minus}
        </button>
        <button
          type="button"
          class="button icon"
          aria-label=${words.raise}
          ?disabled=${!host.editable}
          @click=${() => setAngle(clamp(inHand().angle + STEP))}
        >
          ${ICONS.plus}
        </button>
      </span>
      <p class="hint drag-hint">${words.drag}</p>
      <p class="middle" role="timer">
        ${shown === undefined ? '–' : shown.toFixed(0)}<span> s ${words.raised}</span>
      </p>
      ${
        watch.running
          ? nothing
          : html`<button
              type="button"
              class="button"
              ?disabled=${!host.editable}
              @click=${() => watch.start()}
            >
              ${words.start}
            </button>`
      }
      <button
        type="button"
        class="button ${watch.running ? 'solid' : ''} tall"
        ?disabled=${!host.editable}
        @click=${() => mark(true)}
      >
        ${pallor ? words.paleAgain : words.pale}
      </button>
      <button type="button" class="button" ?disabled=${!host.editable} @click=${() => mark(false)}>
        ${words.kept}
      </button>
      ${sensorPart(host, sensor)}
    </div>
    <div class="by-hand">
      ${host.number({
        id: 'angle',
        label: words.angle,
        unit: '°',
        max: 90,
        value: angle,
        set: (value) =>
          host.patch({ angle: value, pallor: value === undefined ? undefined : (pallor ?? true) }),
      })}
      ${host.number({
        id: 'seconds',
        label: host.words.bedside.time,
        unit: 's',
        max: LONGEST_SECONDS,
        value: seconds,
        set: (value) => host.patch({ seconds: value }),
      })}
    </div>
  </div>`;
  return { template, main: watch.running ? () => mark(true) : () => watch.start() };
}

function sensorPart(host: BedsideHost<'elevation'>, sensor: ShinSensor): TemplateResult | typeof nothing {
  const words = host.words.bedside.elevation;
  if (!sensor.offered) return nothing;
  return html`<button
      type="button"
      class="button"
      aria-pressed=${sensor.on}
      ?disabled=${!host.editable}
      @click=${() => sensor.toggle()}
    >
      ${sensor.on ? words.sensorOff : words.sensor}
    </button>
    ${sensor.on ? html`<p class="hint" role="status">${words.sensorOn}</p>` : nothing}
    ${sensor.trouble ? html`<p class="hint" role="alert">${words[sensor.trouble]}</p>` : nothing}`;
}
