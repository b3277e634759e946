import { html, nothing, type TemplateResult } from 'lit';
import { PLACES, type PulseSiteId, type SiteId } from '../../anatomy/index.js';
import { emptyExamination } from '../../examination/index.js';
import { type LessonAct, type LessonStep, textIn } from '../../lesson/index.js';
import type { Meaning } from '../../locale/lesson.js';
import type { Speech } from './said.js';
import { renderPicture } from './site-picture.js';
import type { SlideView } from './slides.js';

type Of<K extends LessonAct['kind']> = LessonStep & {
  readonly act: Extract<LessonAct, { readonly kind: K }>;
};

function ofKind<K extends LessonAct['kind']>(steps: readonly LessonStep[], kind: K): readonly Of<K>[] {
  return steps.filter((step): step is Of<K> => step.act.kind === kind);
}

/** One step for each pulse site, since both sides are felt alike. */
export function pulseSteps(steps: readonly LessonStep[]): readonly Of<'pulse'>[] {
  const seen = new Set<PulseSiteId>();
  return ofKind(steps, 'pulse').filter(({ act }) => {
    const { site } = act.place;
    return !seen.has(site) && Boolean(seen.add(site));
  });
}

const isSided = (site: SiteId): boolean => PLACES.filter((place) => place.site === site).length > 1;

/** The cautions that come before everything else. */
const FIRST = ['inspection', 'pulse', 'conclusion'] as const;
/** Blank lines below the conclusion. */
const LINES = 5;
/** Most pulse sites that have room for large pictures. */
const FEW = 7;
/** Sizes of letters in pt, the largest first that fits; and what a page of A4 holds within 12 mm, in CSS px. */
const SIZES = Array.from({ length: 17 }, (_, i) => 10.5 - i * 0.25);
const PAGE = ((297 - 24) * 96) / 25.4 - 4;

/** A sentence of a phrase that may be one already. */
const ended = (phrase: string): string => (/[.!?]$/.test(phrase) ? phrase : `${phrase}.`);

const meaningsList = (meanings: readonly Meaning[]): TemplateResult =>
  html`<ul class="mean">
    ${meanings.map(({ name, says }) => html`<li><b>${name}:</b> ${ended(says)}</li>`)}
  </ul>`;

/** A place to write in what one finds, on either side. */
function own(sided: boolean, { messages }: Speech): TemplateResult {
  const { sideLetters } = messages.anatomy;
  return html`<p class="own">
    ${sided ? html`<span>${sideLetters.right}</span><span>${sideLetters.left}</span>` : html`<span></span>`}
  </p>`;
}

function pulseCard({ lesson }: SlideView, step: Of<'pulse'>, speech: Speech): TemplateResult {
  const { messages, parts } = speech;
  const words = parts.lesson;
  const { site, side } = step.act.place;
  // How it is where the pulse is normal or reduced stands once above the cards; what its absence means differs.
  const absent = words.meanings(step.act).at(-1)!;
  const caution = words.cautions[site];
  return html`<li class="card">
    ${renderPicture({ act: step.act, lesson, record: emptyExamination(), messages })}
    <div>
      <h4>${messages.anatomy.sites[site]}</h4>
      <p>${words.how(step.act)}</p>
      <p><b>${absent.name}:</b> ${ended(absent.says)}</p>
      ${caution ? html`<p class="care">${caution}</p>` : nothing} ${own(side !== 'midline', speech)}
    </div>
  </li>`;
}

function part(step: LessonStep | undefined, { parts }: Speech, rest: unknown = nothing): unknown {
  if (!step) return nothing;
  const words = parts.lesson;
  const { act } = step;
  const caution =
    act.kind === 'test' ? words.cautions[act.test] : act.kind === 'pressures' && words.cautions.pressures;
  return html`<section class="part">
    <h3>${words.act(act)}</h3>
    <p>${words.how(act)}</p>
    ${meaningsList(words.meanings(act))} ${caution ? html`<p class="care">${caution}</p>` : nothing} ${rest}
  </section>`;
}

function listening(steps: readonly LessonStep[], speech: Speech): unknown {
  const all = ofKind(steps, 'listen');
  const [first] = all;
  if (!first) return nothing;
  const { messages, parts } = speech;
  const words = parts.lesson;
  const { sites, technique } = messages.anatomy;
  const felt = new Set<string>(pulseSteps(steps).map(({ act }) => act.place.site));
  return html`<section class="part wide">
    <h3>${words.handOut.listen}</h3>
    <p>${words.how(first.act).replace(technique[first.act.site], '').trim()}</p>
    ${meaningsList(words.meanings(first.act))}
    <ul class="sites">
      ${all.map(
        ({ act: { site } }) =>
          html`<li>
            <b>${sites[site]}</b>${felt.has(site) ? nothing : html`: ${technique[site]}`}
            ${own(isSided(site), speech)}
          </li>`,
      )}
    </ul>
  </section>`;
}

/** Sets each page in the largest letters in which it is one page, so that every lesson is two and none is set smaller than it must be. */
export function fitHandOut(root: ParentNode): void {
  for (const page of root.querySelectorAll<HTMLElement>('.sheet > .page')) {
    for (const size of SIZES) {
      page.style.fontSize = `${size}pt`;
      if (page.offsetHeight <= PAGE) break;
    }
  }
}

/**
 * A lesson on two pages of A4, for those who will examine: what comes first, then each step with its site, how it is done, what normal
 * and abnormal mean, and room for one's own findings. It tells nothing of what the lesson's patient has.
 */
export function renderHandOut(view: SlideView): TemplateResult {
  const { lesson, steps, speech } = view;
  const { parts, tag } = speech;
  const words = parts.lesson;
  const find = (kind: LessonAct['kind']): LessonStep | undefined =>
    steps.find(({ act }) => act.kind === kind);
  const pulses = pulseSteps(steps);
  const [pulse] = pulses;
  return html`<article
    class=${pulses.length > FEW ? 'hand-out' : 'hand-out few'}
    aria-label=${words.handOut.title}
    tabindex="0"
  >
    <div class="sheet">
      <div class="page">
        <header>
          <h2>${textIn(lesson.title, tag)}</h2>
          <p>${textIn(lesson.story, tag)}</p>
          <p class="care">${lesson.real ? words.handOut.real : words.handOut.notice}</p>
        </header>
        <section class="first">
          <h3>${words.handOut.first}</h3>
          <ul>
            ${FIRST.map((name) => html`<li>${words.cautions[name]}</li>`)}
          </ul>
        </section>
        <div class="two">${part(find('history'), speech)} ${part(find('inspection'), speech)}</div>
        ${
          pulse
            ? html`<section class="part">
                <h3>${words.handOut.pulses}</h3>
                ${meaningsList(words.meanings(pulse.act).slice(0, -1))}
                <ol class="cards">
                  ${pulses.map((step) => pulseCard(view, step, speech))}
                </ol>
              </section>`
            : nothing
        }
      </div>
    </div>
    <div class="sheet">
      <div class="page">
        ${part(find('delays'), speech)} ${listening(steps, speech)}
        <div class="two">
          ${ofKind(steps, 'test').map((step) => part(step, speech, own(true, speech)))}
          ${part(find('pressures'), speech, own(true, speech))}
          ${part(
            find('conclusion'),
            speech,
            Array.from({ length: LINES }, () => html`<p class="line"></p>`),
          )}
        </div>
      </div>
    </div>
  </article>`;
}
