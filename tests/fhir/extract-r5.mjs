// Cuts the definitions that the tests need out of the published package hl7.fhir.r5.core 5.0.0 (HL7, CC0-1.0), which is 92 MB unpacked:
//   npm pack hl7.fhir.r5.core@5.0.0 && tar xzf hl7.fhir.r5.core-5.0.0.tgz && node tests/fhir/extract-r5.mjs package
// Writes tests/fhir/r5-definitions.json: for each type its elements as [name, min, max, types, codes], and its rules as [key, FHIRPath].
import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const folder = process.argv[2];
const read = (file) => JSON.parse(readFileSync(join(folder, file), 'utf8'));
const ROOTS = [
  'Bundle',
  'Composition',
  'Observation',
  'Questionnaire',
  'QuestionnaireResponse',
  'BodyStructure',
  'Patient',
];
/** Rules that look outside of what they stand in, or that only advise. */
const LEFT_OUT = /resolve\(\)|memberOf|conformsTo|trace\(|htmlChecks/;

const systems = new Map();
for (const file of readdirSync(folder).filter((name) => name.startsWith('CodeSystem-'))) {
  const { url, concept = [] } = read(file);
  const codes = [];
  const visit = (list) => list.forEach(({ code, concept: inner = [] }) => (codes.push(code), visit(inner)));
  visit(concept);
  systems.set(url, codes);
}
const sets = new Map(
  readdirSync(folder)
    .filter((name) => name.startsWith('ValueSet-'))
    .map(read)
    .map((set) => [set.url, set]),
);
function codesOf(url) {
  const { compose } = sets.get(url?.split('|')[0]) ?? {};
  if (!compose || compose.exclude) return undefined;
  const codes = compose.include.flatMap(({ system, concept, filter, valueSet }) =>
    filter || valueSet
      ? [undefined]
      : (concept?.map(({ code }) => code) ?? systems.get(system) ?? [undefined]),
  );
  return codes.includes(undefined) || codes.length > 60 ? undefined : codes;
}

const types = {};
const rules = {};
const open = [...ROOTS];
while (open.length) {
  const name = open.pop();
  if (types[name]) continue;
  const { snapshot, kind } = read(`StructureDefinition-${name}.json`);
  if (kind === 'primitive-type') continue;
  const elements = snapshot.element;
  types[name] = {};
  rules[name] = [];
  for (const { path, min, max, type = [], binding, contentReference, constraint = [] } of elements) {
    const around = path.split('.').slice(0, -1).join('.');
    for (const { key, severity, expression } of constraint) {
      const isRule = severity === 'error' && expression && !LEFT_OUT.test(expression);
      const isAnywhere = key === 'ele-1' || (key === 'ext-1' && name !== 'Extension');
      if (isRule && !isAnywhere) rules[name].push([key, path, expression]);
    }
    if (!around) continue;
    const codes = binding?.strength === 'required' ? codesOf(binding.valueSet) : undefined;
    const of = contentReference
      ? [contentReference.split('#')[1]]
      : type.map(({ code }) => code.replace('http://hl7.org/fhirpath/System.', 'string/'));
    const isBackbone = of.some(
      (one) =>
        one === 'BackboneElement' ||
        (one === 'Element' && elements.some((e) => e.path.startsWith(`${path}.`))),
    );
    (types[around] ??= {})[path.split('.').at(-1)] = [
      min,
      max,
      isBackbone ? [path] : of,
      ...(codes ? [codes] : []),
    ];
    for (const one of of) if (/^[A-Z]/.test(one) && !one.includes('.') && one !== 'Resource') open.push(one);
  }
}
const out = {
  source:
    'hl7.fhir.r5.core 5.0.0 of the npm registry, by HL7 International, CC0-1.0; cut by tests/fhir/extract-r5.mjs',
  types,
  rules,
};
writeFileSync(fileURLToPath(new URL('r5-definitions.json', import.meta.url)), `${JSON.stringify(out)}\n`);
