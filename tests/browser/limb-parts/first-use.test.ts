import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/limb-examination/define';
import 'pulse-map/elements/limb-flags/define';
import 'pulse-map/elements/limb-pressures/define';
import 'pulse-map/elements/limb-staging/define';
import 'pulse-map/locale/de';
import type { Examination } from 'pulse-map/core';
import { chronic } from '../../../stories/limb-records.js';
import { drawn } from '../tools/limbs.js';
import { everything, readableText } from '../tools/perceive.js';

/** Low index and toe pressure behind an ulcer, oxygen measured, veins diseased, and both arms doubted. */
const record: Examination = {
  ...chronic,
  inspection: {
    leg: {
      left: { ...chronic.inspection?.leg?.left, varices: true, ulcer: 'shallow', ulcerPlace: 'digits' },
    },
  },
  pressures: {
    brachial: { right: 95, left: 90 },
    'dorsalis-pedis': { right: 140, left: 34 },
    toe: { right: 80, left: 20 },
    tcpo2: { left: 15 },
  },
  method: { severeIndex: '0.30' },
};

const SHORT = { en: /\b(ABPI|TBPI|TcPO₂|WIfI)/, de: /\b(ABI|TBI|tcpO₂|WIfI)/ };
const LONG = {
  en: {
    ABPI: /ankle-brachial pressure index \(ABPI\)/i,
    TBPI: /toe-brachial pressure index \(TBPI\)/i,
    'TcPO₂': /transcutaneous oxygen pressure \(TcPO₂\)/i,
    WIfI: /infection \(WIfI\)/,
  },
  de: {
    ABI: /Knöchel-Arm-Index \(ABI\)/,
    TBI: /Zehen-Arm-Index \(TBI\)/,
    'tcpO₂': /tcpO₂ \(transkutaner Sauerstoffpartialdruck\)/,
    WIfI: /infektion \(WIfI\)/,
  },
} as const;

/** What is read as one: a panel, a flag, the line of flags, a scheme. */
function blocks(root: Element): string[] {
  const within = everything(root).filter((one) =>
    one.matches('[part~="flag"], [part~="scheme"], [part~="compression"], .line'),
  );
  return (within.length ? within : [root]).map((one) => readableText(one as HTMLElement));
}

/** Abbreviations of a text that it uses before, or without, writing them out. */
function bare(text: string, lang: 'en' | 'de'): string[] {
  return Object.entries(LONG[lang])
    .filter(([short, long]) => {
      const [used, written] = [text.indexOf(short), text.search(long)];
      return used >= 0 && (written < 0 || used < written);
    })
    .map(([short]) => short);
}

describe('an abbreviation', () => {
  for (const lang of ['en', 'de'] as const) {
    it(`is spelled out where it first stands in a flag, a stage, a verdict and a panel: ${lang}`, async () => {
      const page = await fixture<HTMLElement>(
        html`<div lang=${lang}>
          <limb-flags open .examination=${record}></limb-flags>
          <limb-staging .examination=${record}></limb-staging>
          <limb-pressures
            .examination=${record}
            .value=${{ ...record.pressures, method: record.method }}
            .earlier=${{ ...record.pressures, 'dorsalis-pedis': { right: 100, left: 60 } }}
          ></limb-pressures>
        </div>`,
      );
      await drawn(page);
      const all = [...page.children].flatMap(blocks);
      expect(all.length).to.be.greaterThan(12);
      // Each abbreviation stands in some block, and twice in at least one.
      expect(all.filter((text) => SHORT[lang].test(text)).length).to.be.greaterThan(4);
      expect(all.flatMap((text) => bare(text, lang).map((short) => `${short}: ${text}`))).to.deep.equal([]);
    });

    it(`is not used in plain words: ${lang}`, async () => {
      const page = await fixture<HTMLElement>(
        html`<div lang=${lang} register="plain">
          <limb-flags open .examination=${record}></limb-flags>
          <limb-staging .examination=${record}></limb-staging>
          <limb-pressures .value=${{ ...record.pressures }}></limb-pressures>
        </div>`,
      );
      await drawn(page);
      expect([...page.children].flatMap(blocks).filter((text) => SHORT[lang].test(text))).to.deep.equal([]);
    });
  }
});
