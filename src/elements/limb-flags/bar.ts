import { html, nothing, svg, type TemplateResult } from 'lit';
import { firstUses } from '../../locale/first-use.js';
import type { FlagWords } from '../../locale/flags.js';
import {
  contactFor,
  flagSources,
  type Pathway,
  type Question,
  type RedFlag,
  telephoneLink,
  type Triage,
} from '../../triage/index.js';
import { ICONS } from '../common/icons.js';
import { type CallsView, renderCalls, saidCall } from './calls.js';
import { sourcesMark } from '../common/sources-mark.js';

export interface BarView {
  readonly read: Pick<Triage, 'flags' | 'questions'>;
  readonly pathway: Pathway;
  readonly open: boolean;
  /** Time since the onset of the worst flag, as it is said; counted by the clock where it runs. */
  readonly since: string | undefined;
  readonly words: FlagWords;
  readonly toggle: () => void;
  /** Leads to where a question is answered; without it questions are text. */
  readonly ask: ((question: Question) => void) | undefined;
  /** What notes calls. */
  readonly calls: CallsView;
}

const ASK = svg`<svg class="mark" width="20" height="20" viewBox="0 0 20 20" fill="none" stroke="currentColor" stroke-width="1.8" stroke-linecap="round" stroke-linejoin="round" aria-hidden="true"><path d="M10 17.5a7.5 7.5 0 1 0 0-15 7.5 7.5 0 0 0 0 15M7.7 7.900a2.300 2.300 0 1 1 3.400 2c-.8.5-1.100.9-1.100 1.700M10 14.200V14.300"></path></svg>`;

/** The questions on the onset that stand although there is no flag yet. */
export function onsetQuestions({ questions }: Pick<Triage, 'questions'>): readonly Question[] {
  return questions.filter(({ code }) => code === 'onset');
}

/** The link that calls for a flag, short in the line and in full below; nothing where no pathway says whom. */
function call(
  flag: RedFlag,
  { pathway, words: { bar } }: BarView,
  full: boolean,
): TemplateResult | typeof nothing {
  const contact = contactFor(pathway, flag);
  const classes = full ? 'call big' : 'call';
  if (contact?.telephone) {
    const { name, telephone } = contact;
    const href = telephoneLink(telephone);
    if (full) return html`<a class=${classes} href=${href}>${bar.callWhom(name, telephone)}</a>`;
    const shown = flag.urgency === 'now' ? bar.callNow : bar.call;
    return html`<a
      class=${classes}
      href=${href}
      aria-label=${[shown, name, telephone].filter(Boolean).join(', ')}
      >${shown}</a
    >`;
  }
  if (!contact?.page) return nothing;
  return html`<a
    class=${classes}
    href=${contact.page}
    target="_blank"
    rel="noopener noreferrer"
    aria-label=${bar.pageOf(contact.name)}
    >${full ? bar.pageOf(contact.name) : bar.openPathway}</a
  >`;
}

/** The one line: the worst flag, or the question that stands before there is one. */
function line(view: BarView, title: TemplateResult, why: string, mark: unknown, of: number): TemplateResult {
  const { open, since, words } = view;
  const [worst] = view.read.flags;
  return html`<div class="line">
    <button type="button" class="opener" aria-expanded=${open} aria-controls="all" @click=${view.toggle}>
      ${mark}
      <span class="title"
        >${title}<span class="why"
          >${since ? html`<span class="on-narrow">${since} · </span>` : nothing}${why}</span
        ></span
      >
      ${since ? html`<span class="time">${since}</span>` : nothing}
      ${of > 1 ? html`<span class="time place">${words.bar.place(1, of)}</span>` : nothing}
      ${open ? ICONS.up : ICONS.down}
    </button>
    ${worst ? call(worst, view, false) : nothing}
  </div>`;
}

interface Asked {
  readonly question: Question;
  readonly text: string;
}

function questions(asked: readonly Asked[], { words, ask }: BarView): TemplateResult | typeof nothing {
  if (!asked.length) return nothing;
  return html`<div>
    <p class="small">${words.bar.asks}</p>
    <ul class="questions">
      ${asked.map(
        ({ question, text }) =>
          html`<li>
            ${
              ask
                ? html`<button type="button" class="goto" @click=${() => ask(question)}>${text}</button>`
                : text
            }
          </li>`,
      )}
    </ul>
  </div>`;
}

/** Everything a flag says. */
function flag(of: RedFlag, view: BarView): TemplateResult {
  const { words, pathway } = view;
  const inFull = firstUses(words.abbreviations);
  return html`<div part="flag" class="flag">
    <b class="heading">${inFull(words.heading(of))}</b>
    ${call(of, view, true)}
    <p class="act">
      ${inFull(words.action(of))} ${pathway.name ? words.bar.byPathway(pathway.name) : nothing}
    </p>
    ${renderCalls(of, contactFor(pathway, of), view.calls)}
    <p><span class="when">${words.when(of)}</span> ${inFull(words.because(of))}</p>
    ${of.flowWithin ? html`<p>${words.hours(of.flowWithin)}</p>` : nothing}
    ${of.clock?.code === 'days-to-flow' ? html`<p>${words.target(of.clock)}</p>` : nothing}
    ${
      of.class || of.sinceOnset !== undefined
        ? html`<p>
            ${of.class ? words.classOpen(of.class) : nothing}
            ${of.sinceOnset === undefined ? nothing : words.since(of.sinceOnset)}
          </p>`
        : nothing
    }
    ${questions(
      of.ask.map((code) => ({
        question: { code, ...(of.limb && { limb: of.limb }) },
        text: inFull(words.questions[code]),
      })),
      view,
    )}
    ${sourcesMark(flagSources(of.code), words)}
  </div>`;
}

const sameLimb = (a: Question['limb'], b: Question['limb']): boolean =>
  a?.side === b?.side && a?.kind === b?.kind;

/** Questions that no flag asks. */
function otherQuestions({ read, words }: BarView): readonly Asked[] {
  const inFull = firstUses(words.abbreviations);
  return read.questions
    .filter(({ code, limb }) => !read.flags.some((one) => one.ask.includes(code) && sameLimb(one.limb, limb)))
    .map((question) => ({
      question,
      text:
        question.code === 'onset'
          ? `${words.bar.openFor(question.limb)} ${words.bar.openMore}`
          : inFull(words.questions[question.code]),
    }));
}

/** The bar with what it opens; nothing where there is neither a flag nor a question on an onset. */
export function renderBar(view: BarView): TemplateResult | typeof nothing {
  const { read, words } = view;
  const [worst] = read.flags;
  const [asked] = onsetQuestions(read);
  if (!worst && !asked) return nothing;
  const others = otherQuestions(view);
  const inFull = firstUses(words.abbreviations);
  const opening = worst
    ? line(
        view,
        html`<b class="long">${inFull(words.heading(worst))}</b
          ><b class="short">${words.bar.short(worst)}</b>`,
        `${worst.calls?.[0] ? `${saidCall(worst.calls[0], words)} · ` : ''}${words.when(worst)} · ${worst.ask[0] === 'onset' ? `${words.bar.openFor(undefined)} · ` : ''}${inFull(words.because(worst))}`,
        html`<span class="mark">${ICONS.alarm}</span>`,
        read.flags.length,
      )
    : line(
        view,
        html`<b>${words.bar.openFor(asked?.limb)}</b>`,
        words.bar.openMore,
        ASK,
        onsetQuestions(read).length,
      );
  return html`<section
    part="banner"
    class="banner ${worst ? worst.urgency : 'asks'}"
    aria-label=${worst ? words.title : words.bar.open}
  >
    ${opening}
    <div class="all" id="all">
      ${read.flags.map((one) => flag(one, view))}
      ${others.length ? html`<div class="others">${questions(others, view)}</div>` : nothing}
      <p class="caution">${words.caution}</p>
    </div>
  </section>`;
}
