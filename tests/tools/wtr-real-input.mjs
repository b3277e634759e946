// The runner's half of real-input.ts: pen, touch, mouse and a reader's settings, as far as an engine can be told to.
export function realInputPlugin(commands) {
  return {
    name: 'real-input',
    executeCommand: ({ command, payload, session }) => commands[command]?.(session, payload),
  };
}
