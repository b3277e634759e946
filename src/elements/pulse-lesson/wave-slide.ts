import { html, nothing, svg, type TemplateResult } from 'lit';
import { type PulseSiteId, PULSE_SITE_IDS, type Place, placeKey, type Side } from '../../anatomy/index.js';
import { cropOf, drawnRecord, groundParts, landmarksOf, positionOf } from '../../drawing/index.js';
import { emptyExamination } from '../../examination/index.js';
import type { PulseWave, WaveSite } from '../../flow/index.js';
import { limbOfSite } from '../../lesson/steps.js';
import type { Heard } from './ear.js';
import type { SlideView } from './slides.js';
import { RATE, SLOWNESS, type Wave } from './wave.js';

/** Figure units around a site in which a press means it. */
const REACH = 26;

/** What the slide of the wave is made of. */
export interface WaveView extends SlideView {
  readonly wave: Wave;
  readonly heard: Heard | undefined;
  readonly hear: (place: Place) => void;
}

const open = emptyExamination();

/** Milliseconds after the heart. */
const ms = ({ arrives }: WaveSite): number => Math.round(1000 * arrives);

function figure({ speech: { messages }, lesson, heard }: WaveView, { sites }: PulseWave): TemplateResult {
  const { x, y, width, height } = cropOf('whole');
  const parts = groundParts(drawnRecord(open).flow, true, landmarksOf(true));
  const limbs = lesson.limbs;
  return html`<div class="wave-figure">
    <svg class="picture" viewBox="${x} ${y} ${width} ${height}" role="img" aria-label=${messages.map.figure}>
      <g class="ground" transform="scale(.1)">
        ${parts.map(({ name, d }) => svg`<path class=${name} d=${d}></path>`)}
      </g>
    </svg>
    <canvas class="wave" aria-hidden="true"></canvas>
    <svg class="spots" viewBox="${x} ${y} ${width} ${height}" aria-hidden="true">
      ${(['right', 'left'] as const).map(
        (side, i) =>
          svg`<text class="letter" x=${i ? x + width - 60 : x + 24} y=${y + 60} font-size="44">${messages.anatomy.sideLetters[side]}</text>`,
      )}
      ${sites
        .filter(({ place }) => limbs.includes(limbOfSite(place.site)))
        .map((site) => {
          const at = positionOf(site.place);
          const sounds = heard?.by === 'doppler' && placeKey(heard.place) === placeKey(site.place);
          return svg`<g data-hear=${placeKey(site.place)}>
            <circle class="reach" cx=${at.x} cy=${at.y} r=${REACH}></circle>
            <circle class=${site.grade === 'absent' ? 'spot gone' : 'spot'} cx=${at.x} cy=${at.y} r=${sounds ? 17 : 10}></circle>
          </g>`;
        })}
    </svg>
  </div>`;
}

/** When the pulse arrives at each site, side by side; each a button that lets the site be heard. */
function table({ lesson, speech, heard, hear }: WaveView, { sites }: PulseWave): TemplateResult {
  const { messages, parts } = speech;
  const words = parts.lesson.wave;
  const rows = PULSE_SITE_IDS.filter((id) => lesson.limbs.includes(limbOfSite(id)));
  const at = (site: PulseSiteId, side: Side): WaveSite | undefined =>
    sites.find(
      ({ place }) =>
        place.site === site && (place.side === side || (place.side === 'midline' && side === 'right')),
    );
  const cell = (site: WaveSite | undefined): TemplateResult => {
    if (!site) return html`<td></td>`;
    const sounds = heard?.by === 'doppler' && placeKey(heard.place) === placeKey(site.place);
    const text = site.grade === 'absent' ? words.lost : words.arrives(ms(site));
    return html`<td colspan=${site.place.side === 'midline' ? 2 : 1}>
      <button
        type="button"
        class=${site.grade}
        aria-pressed=${sounds}
        aria-label=${`${parts.lesson.sound.doppler(site.place)}, ${text}`}
        @click=${() => hear(site.place)}
      >
        ${text}
      </button>
    </td>`;
  };
  return html`<table class="arrivals">
    <caption class="hidden-visually">
      ${words.table}
    </caption>
    <thead>
      <tr>
        <th scope="col">${words.site}</th>
        <th scope="col">${messages.anatomy.sides.right}</th>
        <th scope="col">${messages.anatomy.sides.left}</th>
      </tr>
    </thead>
    <tbody>
      ${rows.map(
        (id) =>
          html`<tr>
            <th scope="row">${messages.map.siteShort(id)}</th>
            ${cell(at(id, 'right'))}
            ${at(id, 'right')?.place.side === 'midline' ? nothing : cell(at(id, 'left'))}
          </tr>`,
      )}
    </tbody>
  </table>`;
}

/** The pulse on its way from the heart, drawn and in numbers. */
export function renderWave(view: WaveView): TemplateResult {
  const { lesson, show, speech, wave } = view;
  const words = speech.parts.lesson.wave;
  const { revealed } = show;
  const run = wave.waveFor(lesson, revealed);
  const patient = wave.patientFor(lesson, revealed);
  return html`<div class="step wave-step">
    ${figure(view, run)}
    <div class="told">
      <h2>${words.title}</h2>
      <p class="how">
        ${wave.whose(lesson, revealed) === 'patient' ? words.ofPatient : lesson.patient ? words.ofSound : words.ofNobody}
        ${wave.still ? words.still : words.slower(wave.slowness)}
      </p>
      <div class="wave-set">
        ${
          wave.still
            ? nothing
            : html`<button type="button" @click=${() => wave.toggle()}>
                  ${wave.playing ? words.pause : words.play}
                </button>
                ${SLOWNESS.map(
                  (slowness) =>
                    html`<button
                      type="button"
                      aria-pressed=${wave.slowness === slowness}
                      @click=${() => wave.set({ slowness })}
                    >
                      ${words.speed(slowness)}
                    </button>`,
                )}`
        }
        <label
          >${words.rate}
          <input
            type="range"
            min=${RATE.least}
            max=${RATE.most}
            step=${RATE.step}
            .value=${String(patient.heartRate)}
            @input=${(event: Event) => wave.set({ rate: Number((event.target as HTMLInputElement).value) })}
          />
          <output>${words.beats(patient.heartRate)}</output></label
        >
      </div>
      ${table(view, run)}
      <p class="how second">${words.press}</p>
    </div>
  </div>`;
}
