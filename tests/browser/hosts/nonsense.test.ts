// Whatever an application gives to a public property: the element says on the console which property it was and what was
// expected, stays alive, and takes the next proper value.
import { expect } from '@open-wc/testing';
import { parseExaminationText } from 'pulse-map/core';
import { examined } from '../../tools/examinations.js';
import { consoleOf } from '../../tools/real-input.js';
import { formatExamination } from '../../../src/examination/index.js';
import { type Any, made, NONSENSE, properties, TAGS, uncaught } from '../tools/every-element.js';

const RECORD = examined({ 'left popliteal': 'absent', 'left femoral': 'normal' });

/** What no property can hold, so that it must be told. */
const NEVER = ['a bigint', 'a function', 'a symbol', 'an object that throws', 'a list that throws'];

/** Sets one property; @returns what went wrong, and what was told of it by name. */
async function give(element: Any, name: string, value: unknown) {
  const wrong: string[] = [];
  const told: string[] = [];
  const heard = await uncaught(async () => {
    const said = await consoleOf(async () => {
      try {
        element[name] = value;
      } catch (error) {
        // A clear refusal is as good as going on.
        told.push(error instanceof TypeError || error instanceof RangeError ? error.message : String(error));
      }
      await element.updateComplete.catch((error: unknown) => wrong.push(String(error)));
    });
    told.push(...said);
  });
  wrong.push(...heard, ...told.filter((one) => !(one.includes(name) && /expected/.test(one))));
  return { wrong, told };
}

/** Whether an element shows, in place of a record, that it cannot be read, or lists what is wrong with its value. */
function unread(element: Any): boolean {
  const text = element.renderRoot.textContent ?? '';
  return (
    /cannot be (shown|read)|could not be read|later version/i.test(text) ||
    Boolean((element['faults'] as [])?.length)
  );
}

describe('nonsense given to a public property', () => {
  for (const tag of TAGS) {
    it(`of <${tag}> is refused by name, and the element goes on`, async () => {
      const element = await made(tag);
      const names = properties(element);
      expect(names).to.include('lang');
      const faults: string[] = [];
      for (const name of names) {
        const before = element[name];
        for (const [what, value] of Object.entries(NONSENSE)) {
          const { wrong, told } = await give(element, name, value);
          faults.push(...wrong.map((one) => `${name} = ${what}: ${one.slice(0, 300)}`));
          if (NEVER.includes(what) && !told.length && !unread(element))
            faults.push(`${name} = ${what}: nothing said`);
        }
        const { wrong, told } = await give(element, name, before);
        faults.push(...[...wrong, ...told].map((one) => `${name} as before: ${one.slice(0, 300)}`));
      }
      if (names.includes('store')) {
        const { wrong } = await give(element, 'value', formatExamination(RECORD));
        faults.push(...wrong.map((one) => `a record at last: ${one}`));
        expect(parseExaminationText(String(element['value'])).ok, 'a record at last').to.equal(true);
      }
      element.remove();
      expect([...new Set(faults)]).to.deep.equal([]);
    });

    it(`of <${tag}>: nothing means what a new element holds`, async () => {
      const element = await made(tag);
      for (const name of properties(element)) {
        const before = element[name];
        for (const nothing of [undefined, null]) {
          const { wrong, told } = await give(element, name, nothing);
          expect([...wrong, ...told], name).to.deep.equal([]);
          expect(JSON.stringify(element[name]), `${name} = ${nothing}`).to.equal(JSON.stringify(before));
        }
      }
      element.remove();
    });
  }

  it('does not leave the patient before it standing', async () => {
    const report = await made('limb-report');
    report['subject'] = 'The patient before';
    const { told } = await give(report, 'subject', { name: 'Another patient' });
    expect(told.join()).to.equal(
      'limb-report: found subject={"name":"Another patient"}, expected text; taken as ""',
    );
    expect(report['subject']).to.equal('');
    report.remove();
  });
});
