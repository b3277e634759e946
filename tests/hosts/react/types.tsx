// What the types must say and must refuse; compiled, never run.
import type {} from 'pulse-map/react';
import type { Examination, LimbExamination, PulseMap } from 'pulse-map';
import type { RecordDifference } from 'pulse-map/core/tables';

declare const examination: Examination;
const grasp = (value: string): string => value;

export const good = (
  <>
    <pulse-map
      value={examination}
      display="table"
      view="legs"
      readOnly
      no-reading
      noFlags
      lang="de"
      register="plain"
      className="wide"
      ref={(map: PulseMap | null) => map?.undo()}
      onInput={(event) => grasp(event.target.value)}
      onChange={(event) => event.nativeEvent.differences satisfies readonly RecordDifference[]}
      onreading-change={(event) => event.target.openPlace('left popliteal')}
    />
    <limb-examination keep="visit-1" ref={(whole: LimbExamination | null) => whole?.redo()} />
    <limb-pressures value={null} onunfinished-change={(event) => event.target.unfinished} />
    <bedside-test test="elevation" side="left" />
    <limb-flags links onquestion-open={(event) => grasp(event.question.code)} />
    <pulse-reading onopen-place={(event) => grasp(event.place.site)} />
  </>
);

export const refused = (
  <>
    {/* @ts-expect-error no such way to show it */}
    <pulse-map display="tabel" />
    {/* @ts-expect-error no record is a number */}
    <pulse-map value={3} />
    {/* @ts-expect-error the control says what it holds; nobody tells it */}
    <pulse-map recordState="sealed" />
    {/* @ts-expect-error the base of the controls is no element */}
    <form-control />
    {/* @ts-expect-error no such test */}
    <bedside-test test="phrenology" />
  </>
);
