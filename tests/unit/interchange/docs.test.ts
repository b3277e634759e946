import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import * as fhir from '../../../src/fhir.js';
import '../../../src/locale/de/register.js';
import { chronic } from '../../../stories/limb-records.js';

const page = readFileSync(new URL('../../../stories/fhir.mdx', import.meta.url), 'utf8');
const examples = [...page.matchAll(/```js\n(.*?)```/gs)].map(([, code = '']) => code);

it('the examples of the documentation run as they stand, and read back the record that they wrote', () => {
  expect(examples).toHaveLength(2);
  for (const code of examples) {
    const names = /import \{(.*)\} from 'pulse-map\/fhir';/.exec(code)?.[1] ?? '';
    const body = code.replace(/^import .*$/gm, '');
    const run = new Function(
      'fhir',
      'record',
      `const {${names}} = fhir; ${body}; return { examination, unread };`,
    ) as (...given: readonly unknown[]) => fhir.FromBundle;
    expect(run(fhir, chronic)).toEqual({ examination: chronic, unread: [] });
  }
});
