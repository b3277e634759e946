// snippet react-action
import 'pulse-map';
import type {} from 'pulse-map/react';
import { useState } from 'react';

/** React resets a form after its action; what the control then shows is `defaultValue`. */
export function ActionVisit({ save }: { save: (record: string) => void }) {
  const [record, setRecord] = useState('');
  return (
    <form action={(data) => save(String(data.get('pulses')))}>
      <pulse-map
        name="pulses"
        aria-label="Pulses"
        value={record}
        defaultValue={record}
        onInput={(event) => setRecord(event.target.value)}
        onChange={({ nativeEvent }) => console.debug(nativeEvent.act, nativeEvent.differences)}
        onreading-change={({ sentences }) => console.debug(sentences.join('\n'))}
      />
      <button>Save</button>
      {/* snippet hide */}
      <output id="state">{record}</output>
      {/* snippet show */}
    </form>
  );
}
// snippet end
