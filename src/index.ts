/** Registers every element, and exports their classes and the core. */
import './elements/pulse-map/define.js';
import './elements/pulse-reading/define.js';

export * from './core.js';
export { type View, VIEWS } from './drawing/views.js';
export { PulseMap } from './elements/pulse-map/element.js';
export { PulseReading } from './elements/pulse-reading/element.js';
export { OpenPlaceEvent } from './elements/pulse-reading/events.js';
export { RecordElement } from './elements/shared/record-element.js';
export { RecordChangeEvent, RecordStore } from './elements/shared/record-store.js';
