/** Registers every element, and exports their classes and the core. */
import './elements/limb-changes/define.js';
import './elements/limb-context/define.js';
import './elements/limb-examination/define.js';
import './elements/limb-stopwatch/define.js';
import './elements/pulse-map/define.js';
import './elements/pulse-reading/define.js';

export * from './core.js';
export { type View, VIEWS } from './drawing/views.js';
export { BedsideTest } from './elements/bedside-test/element.js';
export { LimbChanges } from './elements/limb-changes/element.js';
export { LimbContext } from './elements/limb-context/element.js';
export { LimbExamination } from './elements/limb-examination/element.js';
export { LimbFlags } from './elements/limb-flags/element.js';
export { LimbHistoryElement } from './elements/limb-history/element.js';
export { LimbInspectionElement } from './elements/limb-inspection/element.js';
export { LimbPressures } from './elements/limb-pressures/element.js';
export { LimbStaging } from './elements/limb-staging/element.js';
export { LimbStopwatch } from './elements/limb-stopwatch/element.js';
export { PulseMap } from './elements/pulse-map/element.js';
export { PulseReading } from './elements/pulse-reading/element.js';
export { QuestionOpenEvent } from './elements/limb-flags/question-open.js';
export { OpenPlaceEvent, ReadingChangeEvent } from './elements/pulse-reading/events.js';
export type { From } from './elements/common/form-control.js';
export { RecordElement } from './elements/common/record-element.js';
export { type Unfinished, UnfinishedChangeEvent } from './elements/common/unfinished.js';
export { type RecordAct, RecordEvent } from './elements/common/record-event.js';
export { RecordChangeEvent, RecordStore } from './elements/common/record-store.js';
