import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  contactFor,
  DEFAULT_TRIAGE_SETTINGS,
  OPEN_CHOICES,
  type Pathway,
  readPathway,
  telephoneLink,
  triageSettings,
} from '../../../src/triage/index.js';

const GOOD: Pathway = {
  name: 'Acute limb, Alder Row',
  calls: {
    vascular: { name: 'Vascular registrar', telephone: '+44 (0)1632 960-961' },
    'stroke-now': { page: 'https://example.org/stroke?from=map' },
    any: { telephone: '2222' },
  },
  settings: {
    triage: { acute: { now: 7 }, chronicNumbness: 'now' },
    pressures: { threat: 'parc-2015', arm: 'mean' },
  },
};

describe('the pathway of a page', () => {
  it('is taken as it is where nothing is wrong with it, and empty where there is none', () => {
    expect(readPathway(GOOD)).toEqual({ pathway: GOOD, faults: [] });
    for (const none of [undefined, null]) expect(readPathway(none)).toEqual({ pathway: {}, faults: [] });
  });

  it('calls by the flag, else by its team, else anyone named for all', () => {
    const { pathway } = readPathway(GOOD);
    expect(contactFor(pathway, { code: 'stroke-now', whom: 'stroke' })?.page).toMatch(/stroke/);
    expect(contactFor(pathway, { code: 'acute-limb', whom: 'vascular' })?.name).toBe('Vascular registrar');
    expect(contactFor(pathway, { code: 'tia', whom: 'tia' })?.telephone).toBe('2222');
    expect(contactFor({}, { code: 'tia', whom: 'tia' })).toBeUndefined();
  });

  it.each([
    [
      'a script as page',
      { calls: { any: { page: 'javascript:alert(1)' } } },
      /calls\.any\.page: found "javascript:.*expected an https: address/,
    ],
    ['a page without encryption', { calls: { any: { page: 'http://example.org' } } }, /https/],
    ['a page that ends its attribute', { calls: { any: { page: 'https://x/" onclick="y' } } }, /https/],
    ['letters as a number', { calls: { any: { telephone: 'the registrar' } } }, /calls\.any\.telephone/],
    ['a number with a pause and a script', { calls: { any: { telephone: '12,<b>' } } }, /telephone/],
    ['a team that is none', { calls: { vasculr: { telephone: '22' } } }, /calls\.vasculr: .*team/],
    ['a contact that is text', { calls: { any: '22' } }, /calls\.any: found "22", expected an object/],
    ['an unknown field', { calls: { any: { phone: '22' } } }, /calls\.any\.phone: .*telephone/],
    [
      'a limit that is text',
      { settings: { triage: { acute: { now: '8' } } } },
      /settings\.triage\.acute\.now: .*number/,
    ],
    ['a limit below nothing', { settings: { triage: { refillOver: -1 } } }, /number from 0/],
    ['a limit that is none', { settings: { triage: { refilOver: 3 } } }, /settings\.triage\.refilOver/],
    ['a choice that is none', { settings: { triage: { dryGangrene: 'never' } } }, /today or soon/],
    ['a criterion that is none', { settings: { pressures: { threat: 'parc' } } }, /threat: .*parc-2015/],
    ['a method that is none', { settings: { pressures: { cuff: '12' } } }, /pressures\.cuff: .*standard/],
    ['a name that is empty', { name: ' ' }, /^name: found " "/],
    ['a text', 'call me', /^pathway: found "call me"/],
    ['a list', [1], /^pathway/],
    ['an unknown part', { limits: {} }, /^limits: /],
  ] as const)('names what is wrong and leaves it out: %s', (_, input, message) => {
    const { pathway, faults } = readPathway(input);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatch(message);
    expect(JSON.stringify(pathway)).not.toMatch(/javascript|http:|onclick|registrar|<b>|never/);
    expect(triageSettings(pathway.settings?.triage)).toEqual(DEFAULT_TRIAGE_SETTINGS);
  });

  it('keeps the good contacts beside a bad one', () => {
    const { pathway, faults } = readPathway({
      calls: { any: { name: 'Switchboard', telephone: 'x' }, tia: { telephone: '22' } },
    });
    expect(faults).toHaveLength(1);
    expect(pathway.calls).toEqual({ any: { name: 'Switchboard' }, tia: { telephone: '22' } });
  });

  it('takes every choice that the tables leave open', () => {
    for (const { setting, otherwise } of OPEN_CHOICES)
      for (const choice of otherwise) {
        const keys = setting.split('.');
        const triage = keys.reduceRight<unknown>((inner, key) => ({ [key]: inner }), choice);
        expect(readPathway({ settings: { triage } }).faults, `${setting}=${choice}`).toEqual([]);
      }
  });

  it('never lets through a link of another kind, whatever it is given', () => {
    fc.assert(
      fc.property(fc.anything(), (input) => {
        expect(() => readPathway(input)).not.toThrow();
      }),
    );
    fc.assert(
      fc.property(
        fc.oneof(fc.string(), fc.webUrl(), fc.constantFrom('data:text/html,x', ' https://x', 'tel:1')),
        fc.oneof(fc.string(), fc.stringMatching(/^\+?[0-9 ()./-]{1,20}$/)),
        (page, telephone) => {
          const contact = readPathway({ calls: { any: { page, telephone } } }).pathway.calls?.any;
          if (contact?.page !== undefined) expect(new URL(contact.page).protocol).toBe('https:');
          if (contact?.telephone !== undefined)
            expect(telephoneLink(contact.telephone)).toMatch(/^tel:\+?[0-9]{2,}$/);
        },
      ),
    );
  });
});
