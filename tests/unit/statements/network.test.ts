import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { limbKey } from '../../../src/anatomy/index.js';
import type { Examination } from '../../../src/examination/index.js';
import { type NetworkReading, readExamination, voicesAgree } from '../../../src/localisation/index.js';
import {
  beginsStatements,
  causeStatements,
  evidenceStatements,
  firmStatement,
  furtherStatements,
  occludedStatements,
  type ReadNetwork,
  storyStatement,
  voicesStatement,
} from '../../../src/statements/index.js';
import { gradedExamination } from '../../tools/arbitraries.js';
import { examined } from '../../tools/examinations.js';

const isRead = (network: NetworkReading): network is ReadNetwork => network.status === 'read';

/** Calls back for every limb of an examination on which the network says anything. */
function eachLimb(
  examination: Examination,
  look: (at: {
    network: ReadNetwork;
    limb: ReadNetwork['limbs'][keyof ReadNetwork['limbs']];
    rule: ReturnType<typeof readExamination>['rule'][keyof ReturnType<typeof readExamination>['rule']];
  }) => void,
): void {
  const { rule: rules, network } = readExamination(examination);
  if (!isRead(network)) return;
  for (const rule of Object.values(rules)) look({ network, rule, limb: network.limbs[limbKey(rule.limb)] });
}

const few = { numRuns: 12 };

describe('the statements of the network, for any examination', () => {
  it('say where trouble begins in rows that sum to one, most probable first and the rest last', () => {
    fc.assert(
      fc.property(gradedExamination, (examination) => {
        eachLimb(examination, ({ limb }) => {
          const rows = beginsStatements(limb);
          const own = rows.filter(({ code }) => code !== 'elsewhere').map(({ probability }) => probability);
          expect(own).toEqual([...own].sort((a, b) => b - a));
          expect(rows.findIndex(({ code }) => code === 'elsewhere')).toBe(
            own.length < rows.length ? rows.length - 1 : -1,
          );
          const sum = rows.reduce((total, { probability }) => total + probability, 0);
          expect(Math.abs(1 - sum)).toBeLessThan(0.0051);
          expect(rows.filter(({ code }) => code === 'nothing').length).toBe(1);
          expect(rows.some(({ code }) => code === 'answer')).toBe(true);
        });
      }),
      few,
    );
  });

  it('say that the voices agree only where they do, and nothing where neither finds anything', () => {
    fc.assert(
      fc.property(gradedExamination, (examination) => {
        eachLimb(examination, ({ rule, limb }) => {
          const said = voicesStatement(rule, limb);
          expect(said?.code === 'agree').toBe(voicesAgree(rule, limb) && rule.lesions.length > 0);
          expect(said === undefined).toBe(!rule.lesions.length && !limb.headline);
          if (said?.code === 'rule-alone') expect(limb.headline).toBeUndefined();
          if (said?.code === 'network-alone') expect(rule.lesions).toEqual([]);
        });
      }),
      few,
    );
  });

  it('never call a piece a second lesion that belongs to the first, and name one above before one beyond', () => {
    fc.assert(
      fc.property(gradedExamination, (examination) => {
        eachLimb(examination, ({ network, rule, limb }) => {
          const detail = network.detail[limbKey(rule.limb)];
          if (!detail) return;
          const told = furtherStatements(detail);
          expect(told.length).toBeLessThanOrEqual(2);
          for (const { pieces, probability } of told) {
            expect(pieces.some((piece) => limb.occluded.entries[0]?.pieces.includes(piece))).toBe(false);
            expect(probability).toBeGreaterThanOrEqual(0.2);
          }
          const order = told.map(({ where }) => where);
          expect(order).toEqual([...order].sort());
        });
      }),
      few,
    );
  });

  it('say what takes the pulse away in rows that sum to one, with what is open among them', () => {
    fc.assert(
      fc.property(gradedExamination, (examination) => {
        eachLimb(examination, ({ limb }) => {
          const rows = occludedStatements(limb);
          const sum = rows.reduce((total, { probability }) => total + probability, 0);
          expect(Math.abs(1 - sum)).toBeLessThan(0.0051);
          expect(rows.filter(({ code }) => code === 'open').length).toBe(1);
          const [first] = rows;
          if (limb.headline) expect(first).toMatchObject({ code: 'entry', pieces: limb.headline.pieces });
          else expect(first?.code).toBe('open');
        });
      }),
      few,
    );
  });

  it('give odds of at least one, each with its way, and name an assumption once', () => {
    fc.assert(
      fc.property(gradedExamination, (examination) => {
        eachLimb(examination, ({ network, rule }) => {
          const detail = network.detail[limbKey(rule.limb)];
          if (!detail) return;
          for (const { way, weight, odds } of evidenceStatements(detail)) {
            expect(odds).toBeGreaterThanOrEqual(1);
            expect(way).toBe(weight > 0 ? 'for' : 'against');
          }
          const firm = firmStatement(detail, rule);
          expect(firm.code).toBe(detail.firm.grade);
          const names = firm.hangsOn.map((one) => JSON.stringify(one));
          expect(new Set(names).size).toBe(names.length);
          expect(firm.ungraded).toBe(rule.unstated.length);
        });
      }),
      few,
    );
  });
});

it('says every artery open only of a story without a lesion', () => {
  const story = (findings: Parameters<typeof examined>[0]) => {
    const { network } = readExamination(examined(findings));
    return isRead(network) ? storyStatement(network) : undefined;
  };
  expect(story({ 'left femoral': 'normal', 'left popliteal': 'normal' })?.code).toBe('all-open');
  const block = story({
    'left femoral': 'normal',
    'left popliteal': 'absent',
    'left posterior-tibial': 'absent',
    'left dorsalis-pedis': 'absent',
  });
  expect(block?.code).toBe('lesions');
});

it('lists causes most probable first, without those next to impossible', () => {
  const { network } = readExamination(examined({ 'left popliteal': 'absent' }));
  if (!isRead(network)) throw new Error('found no reading, expected one');
  const probabilities = causeStatements(network).map(({ probability }) => probability);
  expect(probabilities).toEqual([...probabilities].sort((a, b) => b - a));
  expect(Math.min(...probabilities)).toBeGreaterThanOrEqual(0.01);
  expect(probabilities.length).toBeGreaterThan(1);
});
