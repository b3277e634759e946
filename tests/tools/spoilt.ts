import fc from 'fast-check';

/** What a fault on the way puts into a text. */
const ODD = [
  '',
  '"',
  '{',
  '}]',
  '[[[[[[[[[[[[[[[[',
  '\\',
  '\\u0000',
  '\u0000\u000b',
  '\ud800',
  '\ufeff',
  '1e999',
  '-0',
  '5e-324',
  'null',
  'true',
  '"__proto__":{"polluted":true},',
  '"constructor":{"prototype":{"polluted":true}},',
  '<img src=x onerror=alert(1)>',
  '😀'.repeat(50),
] as const;

/** A text that was cut, doubled, turned round or written into, at up to five places. */
export function spoilt(texts: readonly string[]): fc.Arbitrary<string> {
  const fault = fc.record({
    from: fc.double({ min: 0, max: 1, noNaN: true }),
    length: fc.nat(40),
    kind: fc.constantFrom('cut', 'doubled', 'turned', 'written', 'ended'),
    odd: fc.constantFrom(...ODD),
  });
  return fc
    .tuple(fc.constantFrom(...texts), fc.array(fault, { minLength: 1, maxLength: 5 }))
    .map(([text, faults]) =>
      faults.reduce((now, { from, length, kind, odd }) => {
        const start = Math.floor(from * now.length);
        const [before, piece, after] = [
          now.slice(0, start),
          now.slice(start, start + length),
          now.slice(start + length),
        ];
        if (kind === 'ended') return before;
        if (kind === 'cut') return before + after;
        if (kind === 'doubled') return before + piece + piece + after;
        if (kind === 'turned') return before + [...piece].reverse().join('') + after;
        return before + odd + piece + after;
      }, text),
    );
}
