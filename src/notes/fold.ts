/** A word as lexicons hold it: lower case, without accents, umlauts by their letter ("Ödem", "Oedem" and "odem" are one). */
export function fold(word: string): string {
  return word
    .toLowerCase()
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/ß/g, 'ss')
    .replace(/ae/g, 'a')
    .replace(/oe/g, 'o')
    .replace(/ue/g, 'u');
}

/** Whether two different words are one slip of the hand apart: a letter too many, missing, wrong, or two changed about. */
export function oneSlipApart(a: string, b: string): boolean {
  if (Math.abs(a.length - b.length) > 1 || a === b) return false;
  let from = 0;
  while (from < a.length && a[from] === b[from]) from++;
  let back = 0;
  while (back < Math.min(a.length, b.length) - from && a[a.length - 1 - back] === b[b.length - 1 - back])
    back++;
  const left = a.slice(from, a.length - back);
  const other = b.slice(from, b.length - back);
  if (left.length <= 1 && other.length <= 1) return true;
  return left.length === 2 && other.length === 2 && left[0] === other[1] && left[1] === other[0];
}

/** Every word that arises from this one by leaving out one letter, and the word itself: two words one slip apart share one. */
export function* gaps(word: string): Generator<string> {
  yield word;
  for (let i = 0; i < word.length; i++) yield word.slice(0, i) + word.slice(i + 1);
}
