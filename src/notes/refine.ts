import { means, stops, type Token } from './meanings.js';

/** How many signs may stand between two letters of a row of sites. */
const REACH = 4;

/** Whether a site or a letter that may be one stands near in this direction, with only figures and signs between. */
function siteNear(tokens: readonly Token[], at: number, step: 1 | -1): boolean {
  for (let i = at + step, seen = 0; seen < REACH && tokens[i]; i += step, seen++) {
    if (means(tokens[i], 'letter', 'site')) return true;
    const passes = means(tokens[i], 'figure', 'pluses', 'grade', 'stop', 'side', 'and');
    if (!passes || stops(tokens[i], 'line', 'sentence')) return false;
  }
  return false;
}

/**
 * Tells tokens by their neighbours: a letter is a site beside other sites ("F P DP PT"); a figure with a unit, or behind the name of
 * another measure ("CRT 2", "ABI 1"), is no strength.
 */
export function refined(tokens: readonly Token[]): Token[] {
  let measured = false;
  return tokens.map((token, at): Token => {
    // "DP (R) 2+, (L) 0".
    if (stops(token, 'open') && means(tokens[at + 1], 'side') && stops(tokens[at + 2], 'close'))
      return { ...token, means: { is: 'filler' } };
    if (stops(token, 'close') && means(tokens[at - 1], 'side') && stops(tokens[at - 2], 'open'))
      return { ...token, means: { is: 'filler' } };
    if (means(token, 'letter')) {
      const known = siteNear(tokens, at, -1) || siteNear(tokens, at, 1);
      return {
        ...token,
        means: known ? { is: 'site', sites: token.means.sites } : { is: 'unknown', near: true },
      };
    }
    const [before, after] = [tokens[at - 1], tokens[at + 1]];
    // "All 4 pulses", "absent x2".
    const ends = after === undefined || means(after, 'stop');
    const counted = (means(before, 'all') && !ends) || (means(before, 'unit') && token.glued);
    if (means(token, 'figure') && counted) return { ...token, means: { is: 'filler' } };
    if (means(token, 'unit') && means(after, 'figure') && after.glued)
      return { ...token, means: { is: 'filler' } };
    if (means(token, 'figure')) {
      return measured || means(tokens[at + 1], 'unit') ? { ...token, means: { is: 'number' } } : token;
    }
    if (means(token, 'other')) measured = true;
    else if (!means(token, 'filler', 'number', 'over', 'side', 'part') && !stops(token, 'colon', 'slash'))
      measured = false;
    return token;
  });
}
