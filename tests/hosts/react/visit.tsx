// snippet react
import 'pulse-map';
import type {} from 'pulse-map/react';
import { useState } from 'react';

export function Visit({ saved }: { saved: string }) {
  const [record, setRecord] = useState(saved);
  return (
    <form onReset={() => setRecord('')}>
      <label htmlFor="pulses">Pulses</label>
      <pulse-map
        id="pulses"
        name="pulses"
        value={record}
        onInput={(event) => setRecord(event.target.value)}
      />
      {/* snippet hide */}
      <button>Save</button>
      <button type="reset">Reset</button>
      <button type="button" id="load" onClick={() => setRecord(LAST_VISIT)}>
        Last visit
      </button>
      <output id="state">{record}</output>
      {/* snippet show */}
    </form>
  );
}
// snippet end

const LAST_VISIT =
  '{"format":"pulse-map/1","scale":"0-3","pulses":{"femoral":{"right":{"grade":"reduced"}}}}';
