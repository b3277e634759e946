// What a map shows only when there is something to show of it, or once a hand asks for it. It is one chunk, since many small
// ones take longer to fetch.
import { chooserStyles } from './chooser/styles.js';
import { skinStyles } from './skin/styles.js';
import { sheetStyles } from './print/styles.js';
import { tableStyles } from './table/styles.js';

export { parseExaminationText } from '../../examination/index.js';
export { LimbFlags } from '../limb-flags/element.js';
export * as limbs from '../pulse-reading/limbs.js';
export { renderChooser } from './chooser/panel.js';
export { renderHelp } from './help.js';
export { SkinTools } from './skin/tools.js';
export { placeChooser } from './chooser/position.js';
export { PAGE, renderSheet, SETTINGS } from './print/sheet.js';
export { renderTable } from './table/table.js';

export const laterStyles = [chooserStyles, tableStyles, sheetStyles, skinStyles];
