// Everything that draws a plate, apart from the data of each: one chunk, fetched with the first plate.
export { stillPlate } from '../../../drawing/still/plate.js';
export { layOutPlate } from '../../../drawing/plates/layout.js';
export { helpPath } from '../../../drawing/plates/parts.js';
export { preparedPlate } from '../../../drawing/plates/prepared.js';
export { Digits } from './digits.js';
export { renderPlate } from './render.js';
export { plateStyles } from './styles.js';
