import { describe, expect, it } from 'vitest';
import { fromBundle } from '../../../src/fhir.js';

/* LOINC 44971-0, "Capillary refill [Time]", unit s. The places are invented, as other programs may write them. */

const refill = (bodySite: unknown, value = 4, unit = 's') => ({
  resourceType: 'Observation',
  status: 'final',
  code: { coding: [{ system: 'http://loinc.org', code: '44971-0' }] },
  bodySite,
  valueQuantity: { value, unit },
});
const read = (...resources: readonly object[]) =>
  fromBundle({
    resourceType: 'Bundle',
    type: 'collection',
    entry: resources.map((resource) => ({ resource })),
  });

describe('a capillary refill of another program', () => {
  it.each([
    ['Left great toe', { leg: { left: { refill: 4 } } }],
    ['rechter Vorfuß', { leg: { right: { refill: 4 } } }],
    ['Nail bed of right index finger', { arm: { right: { refill: 4 } } }],
  ])('is taken where hand or foot and side are told: %s', (text, inspection) => {
    const { examination, unread } = read(refill({ text }));
    expect(unread).toEqual([]);
    expect(examination.inspection).toEqual(inspection);
  });

  it.each([
    ['toe', 's', 'bodySite', 'no-side'],
    ['right nail bed', 's', 'bodySite', 'no-place'],
    ['sternum', 's', 'bodySite', 'no-place'],
    ['left foot and left hand', 's', 'bodySite', 'contradicts'],
    ['left foot', 'min', 'valueQuantity', 'unit'],
  ])('is listed with the reason where it leaves a doubt: %s, %s', (text, unit, where, why) => {
    const { examination, unread } = read(refill({ text }, 4, unit));
    expect(examination.inspection).toBeUndefined();
    expect(unread).toEqual([{ path: `entry[0].resource.${where}`, why }]);
  });

  it('is not taken beyond what the record holds, and neither of two that differ', () => {
    const foot = { text: 'left foot' };
    for (const given of [[refill(foot, 90)], [refill(foot, 2), refill(foot, 5)]]) {
      const { examination, unread } = read(...given);
      expect(examination.inspection).toBeUndefined();
      expect(unread).toHaveLength(given.length);
    }
  });
});
