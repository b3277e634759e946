/*
 * Check digits of the terminologies, so that a mistyped code cannot be shipped. Written from the published definitions:
 * SNOMED CT uses Verhoeff's dihedral scheme (Verhoeff 1969), LOINC the mod-10 (Luhn) scheme.
 */

/** Multiplication in the dihedral group of the pentagon: 0-4 turn, 5-9 turn and flip. */
function dihedral(a: number, b: number): number {
  if (a < 5) return b < 5 ? (a + b) % 5 : 5 + ((a + b - 5) % 5);
  return b < 5 ? 5 + ((((a - b) % 5) + 5) % 5) : (((a - b) % 5) + 5) % 5;
}

const FIRST_PERMUTATION = [1, 5, 7, 6, 2, 8, 3, 0, 9, 4];

function permuted(position: number, digit: number): number {
  let at = digit;
  for (let i = 0; i < position % 8; i += 1) at = FIRST_PERMUTATION[at] as number;
  return at;
}

/** Whether a SNOMED CT identifier, all digits, carries the right check digit. */
export function isSnomedId(id: string): boolean {
  if (!/^[1-9]\d{5,17}$/.test(id)) return false;
  const digits = [...id].reverse().map(Number);
  return digits.reduce((sum, digit, position) => dihedral(sum, permuted(position, digit)), 0) === 0;
}

/** Whether a LOINC code such as `8480-6` carries the right check digit. */
export function isLoincCode(code: string): boolean {
  const match = /^(\d{1,8})-(\d)$/.exec(code);
  if (!match) return false;
  const digits = [...(match[1] as string)].reverse().map(Number);
  const sum = digits.reduce((total, digit, position) => {
    const doubled = position % 2 === 0 ? digit * 2 : digit;
    return total + (doubled > 9 ? doubled - 9 : doubled);
  }, 0);
  return (10 - (sum % 10)) % 10 === Number(match[2]);
}
