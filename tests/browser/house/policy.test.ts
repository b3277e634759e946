import { expect } from '@open-wc/testing';
import { until } from '../tools/until.js';
import type { LimbExamination, PulseMap } from 'pulse-map';
import { oneBlock } from '../../../stories/records.js';

interface Strict {
  readonly page: Document;
  readonly map: PulseMap;
  readonly whole: LimbExamination;
  readonly violations: string[];
  close(): void;
}

/** A page of its own under a strict content security policy, with both controls on it. */
async function strictPage(): Promise<Strict> {
  const frame = document.createElement('iframe');
  frame.style.cssText = 'inline-size: 1280px; block-size: 900px';
  const loaded = new Promise((done) => frame.addEventListener('load', done, { once: true }));
  frame.src = new URL('./strict-page.html', import.meta.url).href;
  document.body.append(frame);
  await loaded;
  const page = frame.contentDocument as Document;
  const violations: string[] = [];
  page.addEventListener('securitypolicyviolation', (event) => {
    const [at] = event.composedPath();
    violations.push(`${event.effectiveDirective} at ${(at as Element).localName}`);
  });
  const map = page.querySelector('pulse-map') as PulseMap;
  const whole = page.querySelector('limb-examination') as LimbExamination;
  await until(() => map.shadowRoot?.querySelector('.figure') && whole.shadowRoot, 'both controls drawn');
  return { page, map, whole, violations, close: () => frame.remove() };
}

/** Makes the page break its policy itself, last: when that is told, everything before it has been told too. */
async function toldSoFar({ page, violations }: Strict): Promise<string[]> {
  const last = page.createElement('hr');
  page.body.append(last);
  last.setAttribute('style', 'color: red');
  await until(() => violations.some((one) => one.endsWith(' at hr')), 'the page’s own violation');
  return violations.filter((one) => !one.endsWith(' at hr'));
}

describe('under a policy that allows nothing inline', () => {
  let strict: Strict;
  beforeEach(async () => {
    strict = await strictPage();
  });
  afterEach(() => strict.close());

  it('the map draws its lines and bars, opens a site, shows the table and gives its picture', async () => {
    const { map } = strict;
    map.value = JSON.stringify(oneBlock);
    await map.updateComplete;
    const root = map.shadowRoot as ShadowRoot;
    const figure = root.querySelector<SVGElement>('.figure') as SVGElement;
    expect(Number(figure.style.getPropertyValue('--_px'))).to.be.greaterThan(1);
    await until(
      () =>
        root.querySelector('pulse-reading')?.shadowRoot?.querySelector<HTMLElement>('.track i')?.style
          .inlineSize,
      'a bar with its length',
    );
    map.openPlace('left popliteal');
    await map.updateComplete;
    expect(root.querySelector<HTMLElement>('.grades')?.style.getPropertyValue('--columns')).to.equal('4');
    map.display = 'table';
    await map.updateComplete;
    map.display = 'figure';
    await map.updateComplete;
    expect(map.toSVG()).to.match(/<rect[^>]*fill="/);
    expect(await toldSoFar(strict)).to.deep.equal([]);
  });

  it('the whole examination opens every part', async () => {
    const { whole } = strict;
    for (const part of ['inspection', 'pulses', 'bedside', 'pressures', 'staging', 'summary'] as const) {
      await whole.openPart(part);
    }
    const folds = [
      ...whole.shadowRoot!.querySelectorAll<HTMLElement>(
        '.body button[aria-expanded="false"], .body summary',
      ),
    ];
    expect(folds).not.to.have.length(0);
    for (const fold of folds) fold.click();
    await whole.updateComplete;
    expect(await toldSoFar(strict)).to.deep.equal([]);
  });
});

describe('under Trusted Types with the one policy', () => {
  /** A page of its own under a policy, in which copies of Lit load: each makes its policy, as `lit-html` does. */
  async function copies(words: string, count: number): Promise<string[]> {
    const frame = document.createElement('iframe');
    frame.srcdoc = `<meta http-equiv="Content-Security-Policy" content="require-trusted-types-for 'script'; trusted-types ${words}">`;
    const loaded = new Promise((done) => frame.addEventListener('load', done, { once: true }));
    document.body.append(frame);
    await loaded;
    const { trustedTypes } = frame.contentWindow as unknown as {
      trustedTypes: { createPolicy(name: string, rules: object): unknown };
    };
    const made = Array.from({ length: count }, () => {
      try {
        trustedTypes.createPolicy('lit-html', { createHTML: (text: string) => text });
        return 'loaded';
      } catch {
        return 'refused';
      }
    });
    frame.remove();
    return made;
  }

  it('a second copy of Lit needs allow-duplicates, and none loads where no policy may be made', async () => {
    expect(await copies('lit-html', 2)).to.deep.equal(['loaded', 'refused']);
    expect(await copies("lit-html 'allow-duplicates'", 2)).to.deep.equal(['loaded', 'loaded']);
    expect(await copies("'none'", 1)).to.deep.equal(['refused']);
  });
});
