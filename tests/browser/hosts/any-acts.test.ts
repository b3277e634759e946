// Whatever hands and page do to an element, in any order: the console stays empty, no promise is rejected, the value can be read
// (or is the very text that was given), and what is shown belongs to what the element holds now. Fixed seed; `npm run test:long`
// tries many more.
import { expect } from '@open-wc/testing';
import 'pulse-map/locale/de';
import { everything, painted } from '../tools/perceive.js';
import { type Act, actsFrom, PART_OF, recordOf } from '../tools/any-acts.js';
import { type Any, made, NONSENSE, properties, TAGS, uncaught } from '../tools/every-element.js';
import { consoleOf, drag, click, press, setViewport, type } from '../../tools/real-input.js';
import { VIEWS } from '../../../src/drawing/views.js';
import { formatExamination, parseExaminationText } from '../../../src/examination/index.js';
import { SHIPPED_LESSON_IDS } from '../../../src/lesson/shipped/index.js';
import { emptyChart, observe, parseChart } from '../../../src/triage/observations.js';

const ACTS = 30;
/** Set by the runner; see web-test-runner.config.mjs. */
const { runs, seed: SEED } = (globalThis as unknown as { trial: { runs: number; seed: number } }).trial;

/** Marks of records in a text: each record that is given bears one of its own. */
const marksIn = (text: string): string[] => [...new Set(text.match(/§\d+§/g))];

/** Plain data of anything, as far as JSON has it. */
function asText(value: unknown): string {
  try {
    return typeof value === 'string' ? value : (JSON.stringify(value) ?? '');
  } catch {
    return '';
  }
}

/** All that is on the screen: texts, what stands in fields, and names. */
function shown(element: Element): string {
  return everything(element)
    .map((one) => {
      const own = [...one.childNodes, ...(one.shadowRoot?.childNodes ?? [])]
        .filter((node) => node.nodeType === Node.TEXT_NODE)
        .map((node) => node.textContent);
      const { value } = one as HTMLInputElement;
      const typed = ['input', 'textarea'].includes(one.localName) ? value : '';
      return [...own, typed, one.getAttribute('aria-label'), one.getAttribute('title')].join(' ');
    })
    .join('\n');
}

type Pick = <T>(list: readonly T[]) => T;

const records = (pick: Pick, seed: number): unknown => pick([recordOf(seed), recordOf(seed), undefined]);

/** What a page gives to a property that is no switch. */
const PROPER: Readonly<Record<string, (pick: Pick, seed: number) => unknown>> = {
  lang: (pick) => pick(['en', 'de', '', 'de-AT', 'xx']),
  register: (pick) => pick(['', 'trade', 'plain']),
  view: (pick) => pick(['auto', ...VIEWS]),
  display: (pick) => pick(['figure', 'table']),
  length: (pick) => pick(['short', 'full']),
  side: (pick) => pick(['left', 'right']),
  examination: records,
  earlier: records,
  compare: records,
  defaultValue: (_, seed) => formatExamination(recordOf(seed)),
  shipped: (pick) => pick(SHIPPED_LESSON_IDS),
  limit: (pick) => pick([10, 60, undefined]),
  countdown: (pick) => pick([3, 60, undefined]),
  chart: (_, seed) =>
    observe(emptyChart({ kind: 'leg', side: 'left' }), {
      at: '2026-05-01T10:30Z',
      colour: 'pale',
      by: `§${seed}§`,
    } as never),
  visits: (_, seed) =>
    Array.from({ length: seed % 5 }, (_one, at) => ({
      id: `${at}`,
      at: `20${10 + at}-05-01`,
      examination: recordOf(seed + at),
      note: `§${seed + at}§`,
    })),
};

class Trial {
  readonly faults: string[] = [];
  readonly form = document.createElement('form');
  #given = '';
  constructor(
    readonly element: Any,
    readonly tag: string,
  ) {
    this.form.addEventListener('submit', (event) => event.preventDefault());
    element['name'] = 'it';
    document.body.append(this.form);
    this.form.append(element);
  }

  /** Gives what an element shows nothing without. */
  async prepare(seed: number): Promise<void> {
    const pick: Pick = (list) => list[seed % list.length] as never;
    for (const name of ['visits', 'shipped', 'earlier'])
      if (name in this.element) this.element[name] = PROPER[name]?.(pick, seed);
    if (!this.tag.startsWith('pulse-lesson')) await this.#byPage({ do: 'value', seed: seed + 1 });
    await this.element.updateComplete;
  }

  /** What a hand can reach. */
  get targets(): Element[] {
    return everything(this.element).filter(
      (one) =>
        one.matches(
          'button, input:not([type=file]), select, textarea, summary, [tabindex], [part~=site], svg',
        ) &&
        one.checkVisibility() &&
        one.getBoundingClientRect().width > 0,
    );
  }

  at(part: number): Element | undefined {
    const { targets } = this;
    return targets[Math.floor(part * targets.length)];
  }

  /** A point within sight of what is there. */
  point(part: number): readonly [number, number] | undefined {
    const target = this.at(part);
    if (!target) return undefined;
    target.scrollIntoView({ block: 'nearest', inline: 'nearest', behavior: 'instant' });
    const { x, y, width, height } = target.getBoundingClientRect();
    // Of something large any point may be meant.
    const within = (part * 7919) % 1;
    const large = width > 200 && height > 200;
    const [px, py] = large
      ? [x + width * within, y + height * ((within * 31) % 1)]
      : [x + width / 2, y + height / 2];
    return [Math.min(Math.max(px, 0), innerWidth - 1), Math.min(Math.max(py, 0), innerHeight - 1)];
  }

  async #byHand(act: Act): Promise<void> {
    if (act.do === 'use') return this.#use(act);
    if (act.do === 'press') return press(act.key);
    if (act.do === 'type') return type(act.text);
    if (act.do !== 'click' && act.do !== 'drag') return;
    const from = this.point(act.at);
    if (!from) return;
    if (act.do === 'click') return click(from, { kind: act.kind, times: act.times });
    const to = this.point(act.to);
    if (to) await drag([from, to], { kind: act.kind });
  }

  /** What takes a person several acts, in one. */
  #use({ at, choice, text }: Act & { do: 'use' }): void {
    const target = this.at(at);
    if (target?.matches(':disabled') || (target as HTMLInputElement | undefined)?.readOnly) return;
    if (target instanceof HTMLSelectElement) {
      target.selectedIndex = Math.floor(choice * target.options.length);
      target.dispatchEvent(new Event('change', { bubbles: true }));
    } else if (target?.matches('textarea, input:not([type=checkbox], [type=radio])')) {
      const field = target as HTMLInputElement;
      field.focus();
      field.value = text;
      field.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
      if (choice < 0.5) field.dispatchEvent(new Event('change', { bubbles: true }));
    } else if (target instanceof HTMLElement) target.click();
    else
      target?.dispatchEvent(
        new MouseEvent('click', { bubbles: true, composed: true, cancelable: true, detail: 1 }),
      );
  }

  async #set(act: Act & { do: 'set' }): Promise<void> {
    const names = properties(this.element).filter((name) => !['store', 'name'].includes(name));
    const name = names[act.which % names.length] as string;
    const before = this.element[name];
    const nonsense = Object.values(NONSENSE);
    const one = <T>(list: readonly T[]): T => list[act.value % list.length] as T;
    const proper = typeof before === 'boolean' ? () => !before : PROPER[name];
    const value = act.proper && proper ? proper(one, act.value) : one(nonsense);
    this.#give(name, value);
  }

  /** A refusal is told by a proper error. */
  #give(name: string, value: unknown): void {
    if (['value', 'examination'].includes(name)) this.#given = asText(value);
    try {
      this.element[name] = value;
    } catch (error) {
      if (!(error instanceof TypeError || error instanceof RangeError))
        this.faults.push(`${name}: ${String(error)}`);
    }
  }

  async #byPage(act: Act): Promise<void> {
    const { element, form } = this;
    switch (act.do) {
      case 'set':
        return this.#set(act);
      case 'value': {
        const part = PART_OF[this.tag];
        const given = act.text ?? recordOf(act.seed);
        const value = typeof given === 'string' || !part ? given : part(given);
        const name = 'value' in element && this.tag !== 'limb-letter' ? 'value' : 'examination';
        return this.#give(name, act.seed % 2 && name === 'value' ? asText(value) : value);
      }
      case 'width':
        form.style.width = `${act.px}px`;
        return setViewport({ width: Math.max(320, act.px + 40), height: act.px % 2 ? 700 : 1000 });
      case 'away':
        element.remove();
        if (act.wait) await painted();
        form.append(element);
        return;
      case 'reset':
        this.#given = asText(element['defaultValue']);
        return form.reset();
      case 'history':
        return (element[act.to] as undefined | (() => void))?.call(element);
      default:
    }
  }

  async act(act: Act): Promise<void> {
    const { element } = this;
    const locked = ['readOnly', 'disabled'].some((name) => element[name] === true);
    const before = asText(element['value']);
    const length = element['length'];
    await this.#byHand(act).catch((error: Error) => {
      // An engine that has no pen to be driven with does without.
      if (!/cannot be driven here/.test(error.message)) throw error;
    });
    await element.updateComplete;
    // A letter can be read in another length.
    if (locked && before !== asText(element['value']) && length === element['length'])
      this.faults.push('a hand changed what is locked');
    await this.#byPage(act);
    await element.updateComplete;
  }

  /** What must hold whenever nothing is under way. */
  check(): void {
    const { element, form } = this;
    const state = element['recordState'];
    const value = asText(element['value']);
    if (state === 'readable' && !parseExaminationText(value).ok)
      this.faults.push('the record cannot be read');
    if (state === 'sealed' && value !== this.#given)
      this.faults.push('what could not be read is not what was given');
    if (
      element['form'] === form &&
      !element.matches(':disabled') &&
      'faults' in element &&
      this.tag !== 'limb-letter'
    ) {
      const sent = new FormData(form).get('it') ?? '';
      // A form carries no half characters.
      const whole = new TextDecoder('utf-8', { ignoreBOM: true }).decode(new TextEncoder().encode(value));
      if (value !== '' && sent !== whole)
        this.faults.push(`the form sends ${asText(sent).slice(0, 80)} for ${value.slice(0, 80)}`);
    }
    const chart = element['chart'];
    if (chart && typeof chart === 'object' && 'observations' in chart && !parseChart(asText(chart)))
      this.faults.push('the chart cannot be read');
    const held = properties(element).map((name) => asText(element[name]));
    const allowed = marksIn(held.join('\n'));
    const stale = marksIn(shown(element)).filter((one) => !allowed.includes(one));
    if (stale.length) this.faults.push(`shown of another record: ${stale.join()}`);
    const own = 'value' in element ? marksIn(value) : [];
    if (own.length > 1) this.faults.push(`two records in one: ${own.join()}`);
  }
}

/**
 * What an element may say: what it expected instead. And in development Lit tells of each render that follows another at once, as where
 * a field goes while it is typed in, which Chromium then leaves in mid-render.
 */
const TOLD = /expected|lit\.dev\/msg\/change-in-update/;

/** What a hand may set off outside of the page. */
const OUTSIDE = { print: () => undefined, open: () => null, alert: () => undefined, confirm: () => false };

describe('any acts in any order', () => {
  const kept = { print, open, alert, confirm };
  const download = (event: Event): void => {
    const link = event.composedPath().find((one) => one instanceof HTMLAnchorElement);
    if (link) event.preventDefault();
  };
  before(() => {
    Object.assign(globalThis, OUTSIDE);
    // A finger that swipes sideways would go back to the page before.
    document.documentElement.style.overscrollBehavior = 'none';
    addEventListener('click', download, true);
  });
  after(async () => {
    Object.assign(globalThis, kept);
    document.documentElement.style.overscrollBehavior = '';
    removeEventListener('click', download, true);
    await setViewport({ width: 1000, height: 900 });
  });

  for (const [at, tag] of TAGS.entries())
    it(`leave <${tag}> whole`, async function () {
      this.timeout(120_000 * runs);
      for (let run = 0; run < runs; run++) {
        const seed = SEED + 100 * run + at;
        await setViewport({ width: 900, height: 1000 });
        const trial = new Trial(await made(tag), tag);
        await trial.prepare(seed);
        const done: string[] = [];
        for (const act of actsFrom(seed, ACTS)) {
          done.push(JSON.stringify(act).slice(0, 120));
          let said: string[] = [];
          const heard = await uncaught(async () => {
            said = await consoleOf(() => trial.act(act));
          });
          trial.faults.push(...heard, ...said.filter((one) => !TOLD.test(one)));
          trial.check();
          if (trial.faults.length) break;
        }
        trial.form.remove();
        expect(trial.faults, `seed ${seed}, after:\n${done.slice(-12).join('\n')}\n`).to.deep.equal([]);
      }
    });
});
