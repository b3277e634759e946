import type { Examination } from '../../examination/index.js';
import { messagesFor } from '../../locale/index.js';
import { plate as foot } from '../plates/foot.js';
import { plate as hand } from '../plates/hand.js';
import { plate as knee } from '../plates/knee.js';
import { plate as legsBehind } from '../plates/legs-behind.js';
import { isPlateView, type Plate, type PlateName, plateOf } from '../plates/plate.js';
import { preparedPlate } from '../plates/prepared.js';
import { plate as sole } from '../plates/sole.js';
import type { View } from '../views.js';
import { stillPlate, type StillPlate } from './plate.js';
import { type FigureLook, type FigureOptions, stillBody, stillPicture } from './still-picture.js';

const PLATES: Readonly<Record<PlateName, Plate>> = { hand, foot, sole, knee, 'legs-behind': legsBehind };

function plateFor(view: View = 'whole'): StillPlate | undefined {
  if (!isPlateView(view)) return undefined;
  return stillPlate(preparedPlate(PLATES[plateOf(view).name], view));
}

/**
 * The present picture of a record as a small SVG document: body or plate, arteries, what was found, likely blocks, with title and
 * description in words. For lists, timelines, print, letters and mail; needs no page and no style sheet.
 *
 * Many pictures on one page can share body and healthy arteries: place `figureBody(look)` on it once, and ask for each with
 * `{ ...look, shared: true }`. Ids are those of the content, so equal pictures have equal ids and others differ.
 * @param examination a record that was read
 * @returns SVG in XML; characters that XML cannot hold, in a note say, become U+FFFD
 * @throws RangeError for a view or width that is none
 */
export function figureSVG(examination: Examination, options: FigureOptions = {}): string {
  const { language = 'en', register, ...rest } = options;
  const words = messagesFor(language, register);
  return stillPicture(examination, { ...rest, words, plate: plateFor(options.view) }).text;
}

/**
 * What still pictures of one look refer to when they are `shared`: an SVG that shows nothing, to be placed once, in the same document or
 * shadow tree.
 * @throws RangeError for a view or width that is none
 */
export function figureBody(look: FigureLook = {}): string {
  return stillBody(look, plateFor(look.view));
}
