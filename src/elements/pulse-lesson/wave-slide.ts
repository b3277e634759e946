import { html, nothing, svg, type TemplateResult } from 'lit';
import {
  LISTENING_PLACES,
  LISTENING_SITE_IDS,
  PULSE_SITE_IDS,
  type Place,
  placeKey,
  type Side,
  type SiteId,
} from '../../anatomy/index.js';
import {
  arteryPaths,
  cropOf,
  drawnRecord,
  groundParts,
  landmarksOf,
  positionOf,
} from '../../drawing/index.js';
import { emptyExamination } from '../../examination/index.js';
import type { WaveSite } from '../../flow/index.js';
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

/** A site that a press lets sound. */
interface Spot {
  readonly place: Place;
  /** What its button says. */
  readonly text: string;
  /** Its look in the table; the dot of a pulse that is gone is filled. */
  readonly kind: string;
}

/** The sites of the lesson's limbs at which the tool in hand is held, with what is to be told there. */
function spotsOf({ lesson, show, speech, wave }: WaveView): Spot[] {
  const words = speech.parts.lesson.wave;
  const own = ({ place }: { readonly place: Place }): boolean =>
    lesson.limbs.includes(limbOfSite(place.site));
  if (wave.by === 'doppler')
    return wave
      .waveFor(lesson, show.revealed)
      .sites.filter(own)
      .map((site) => ({
        place: site.place,
        text: site.grade === 'absent' ? words.lost : words.arrives(ms(site)),
        kind: site.grade,
      }));
  const bruits = wave.bruitsFor(lesson, show.revealed);
  return LISTENING_PLACES.map((place) => ({ place }))
    .filter(own)
    .map(({ place }) => {
      const bruit = bruits.get(placeKey(place)) ?? 'none';
      return { place, text: words.bruits[bruit], kind: bruit === 'none' ? 'none' : 'bruit' };
    });
}

const isHeard = ({ heard, wave }: WaveView, place: Place): boolean =>
  heard?.by === wave.by && placeKey(heard.place) === placeKey(place);

function figure(view: WaveView, spots: readonly Spot[]): TemplateResult {
  const { messages } = view.speech;
  const { x, y, width, height } = cropOf('whole');
  const parts = groundParts(arteryPaths(drawnRecord(open).flow, true), true, landmarksOf(true));
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
      ${spots.map(({ place, kind }) => {
        const at = positionOf(place);
        return svg`<g data-hear=${placeKey(place)}>
            <circle class="reach" cx=${at.x} cy=${at.y} r=${REACH}></circle>
            <circle class=${kind === 'absent' ? 'spot gone' : 'spot'} cx=${at.x} cy=${at.y} r=${isHeard(view, place) ? 17 : 10}></circle>
          </g>`;
      })}
    </svg>
  </div>`;
}

/** What is told of each site, side by side; each a button that lets the site be heard. */
function table(view: WaveView, spots: readonly Spot[]): TemplateResult {
  const { speech, hear, wave } = view;
  const { messages, parts } = speech;
  const words = parts.lesson.wave;
  const doppler = wave.by === 'doppler';
  const rows = (doppler ? PULSE_SITE_IDS : LISTENING_SITE_IDS).filter((id) =>
    spots.some(({ place }) => place.site === id),
  );
  const at = (site: SiteId, side: Side): Spot | undefined =>
    spots.find(
      ({ place }) =>
        place.site === site && (place.side === side || (place.side === 'midline' && side === 'right')),
    );
  const cell = (spot: Spot | undefined): TemplateResult => {
    if (!spot) return html`<td></td>`;
    const { place, text, kind } = spot;
    return html`<td colspan=${place.side === 'midline' ? 2 : 1}>
      <button
        type="button"
        class=${kind}
        aria-pressed=${isHeard(view, place)}
        aria-label=${`${parts.lesson.sound[wave.by](place)}, ${text}`}
        @click=${() => hear(place)}
      >
        ${text}
      </button>
    </td>`;
  };
  return html`<table class="arrivals">
    <caption class="hidden-visually">
      ${doppler ? words.table : words.sounds}
    </caption>
    <thead>
      <tr>
        ${doppler ? html`<th scope="col">${words.site}</th>` : html`<td></td>`}
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
  const spots = spotsOf(view);
  // The canvas paints it, whatever is heard.
  wave.waveFor(lesson, revealed);
  const patient = wave.patientFor(lesson, revealed);
  return html`<div class="step wave-step">
    ${figure(view, spots)}
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
      ${table(view, spots)}
      ${
        lesson.patient
          ? html`<div class="wave-set" role="group" aria-label=${words.listen}>
              ${(['doppler', 'bruit'] as const).map(
                (by) =>
                  html`<button type="button" aria-pressed=${wave.by === by} @click=${() => wave.set({ by })}>
                    ${words.by[by]}
                  </button>`,
              )}
              <span>${words.press[wave.by]}</span>
            </div>`
          : nothing
      }
    </div>
  </div>`;
}
