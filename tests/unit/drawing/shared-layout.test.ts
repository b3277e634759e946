import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type BodyView,
  doorsBeside,
  doorsOf,
  isPlateView,
  labelsOf,
  layOut,
  layOutSites,
  sitesIn,
  VIEWS,
} from '../../../src/drawing/index.js';
import { emptyExamination, type Examination, restNormal } from '../../../src/examination/index.js';
import '../../../src/locale/de/register.js';
import { messagesFor } from '../../../src/locale/index.js';
import { anyExamination } from '../../tools/arbitraries.js';

const BODY = VIEWS.filter((view): view is BodyView => !isPlateView(view));
const viewed = (view: BodyView, examination: Examination, words = messagesFor('en')) =>
  sitesIn(view, examination, undefined, undefined, undefined, words);

describe('layOutSites', () => {
  it('gives what laying out anew gives, whatever was laid out before', () => {
    const anyWords = fc.constantFrom(messagesFor('en'), messagesFor('de'), messagesFor('en', 'plain'));
    fc.assert(
      fc.property(
        fc.constantFrom(...BODY),
        fc.constantFrom(420, 700, 820, 1250),
        fc.constantFrom(600, 872),
        anyExamination,
        anyWords,
        (view, width, height, examination, words) => {
          const sites = viewed(view, examination, words);
          const { findings, ...shared } = layOutSites(view, width, height, sites, words);
          const anew = layOut(view, width, height, labelsOf(sites, words));
          expect(shared).toEqual({ ...anew, findings: undefined });
          expect([...findings]).toEqual([...anew.findings]);
        },
      ),
    );
  });

  it('places the names once for all maps of a size, whatever was found', () => {
    const words = messagesFor('en');
    const [empty, full] = [emptyExamination(), restNormal(emptyExamination('0-3'))].map((examination) =>
      layOutSites('whole', 811, 872, viewed('whole', examination), words),
    );
    expect(full?.labels).toBe(empty?.labels);
    expect(full?.sites).toBe(empty?.sites);
  });

  it('is one and the same where nothing was found', () => {
    const words = messagesFor('en');
    const layouts = [1, 2].map(() =>
      layOutSites('whole', 812, 872, viewed('whole', emptyExamination()), words),
    );
    expect(layouts[0]).toBe(layouts[1]);
  });

  it('keeps no more than the latest sizes', () => {
    const words = messagesFor('en');
    const at = (width: number) =>
      layOutSites('whole', width, 872, viewed('whole', emptyExamination()), words);
    const first = at(900);
    for (let width = 901; width < 950; width++) at(width);
    expect(at(900)).not.toBe(first);
    expect(at(900)).toEqual(first);
  });
});

describe('doorsBeside', () => {
  it('stands where it would be worked out to stand, once for all maps of a size and language', () => {
    for (const words of [messagesFor('en'), messagesFor('de')])
      for (const width of [700, 818, 1250]) {
        const layouts = [emptyExamination(), restNormal(emptyExamination('0-3'))].map((examination) =>
          layOutSites('whole', width, 872, viewed('whole', examination, words), words),
        );
        const [one, other] = layouts.map((layout) => doorsBeside(layout, words));
        expect(other).toBe(one);
        const layout = layouts[0]!;
        expect(one).toEqual(
          doorsOf(
            layout,
            ({ site }) => ({ name: words.map.siteShort(site) }),
            (name) => words.map.plates.short[name],
          ),
        );
      }
  });
});
