// Everything the map needs only once something is recorded or the user asks for it; one chunk, because many small ones load
// slower.
import * as limbs from '../pulse-reading/limbs.js';
import { chooserStyles } from './chooser/styles.js';
import { skinStyles } from './skin/styles.js';
import { sheetStyles } from './print/styles.js';
import { normalsStyles } from './normals-list.js';
import { tableStyles } from './table/styles.js';

export { drawPNG, drawStill } from './picture/export.js';
export { parseExaminationText, unknownFields } from '../../examination/index.js';
export { landmarksFor, landmarksOf } from '../../drawing/landmarks.js';
export { unknownNote } from '../common/unknown-note.js';
export { LimbFlags } from '../limb-flags/element.js';
export { PulseReading } from '../pulse-reading/element.js';
export { limbs };
export { ChooserActs } from './chooser/acts.js';
export { renderChooser } from './chooser/panel.js';
export { renderNormals } from './normals-list.js';
export { renderLimbActs, renderOnsetAndDelays } from './onset-and-delays.js';
export { renderHelp } from './help.js';
export { SkinTools } from './skin/tools.js';
export { hangPanel } from './chooser/position.js';
export { PAGE, renderSheet, SETTINGS } from './print/sheet.js';
export { renderTable } from './table/table.js';

/** Does beforehand, part by part, what the first acts would wait for. */
export function* warm(chooser: { readonly warm: () => void }): Generator<void> {
  chooser.warm();
  yield;
  yield* limbs.warm();
}

export const laterStyles = [chooserStyles, tableStyles, normalsStyles, sheetStyles, skinStyles];
