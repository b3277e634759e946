import { css } from 'lit';

export const editorStyles = css`
  :host {
    display: block;
    container-type: inline-size;
  }
  .editor {
    display: grid;
    gap: 16px;
  }
  .tools {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    align-items: end;
  }
  .tools label {
    display: grid;
    gap: 2px;
  }
  .tools select {
    max-inline-size: 100%;
  }
  .tools .file {
    position: relative;
  }
  .tools .file input {
    position: absolute;
    inset: 0;
    opacity: 0;
    cursor: pointer;
  }
  .tools .file:focus-within {
    outline: 3px solid var(--_focus);
    outline-offset: 2px;
  }
  .writing,
  .showing {
    display: grid;
    gap: 8px;
    align-content: start;
    min-inline-size: 0;
  }
  .writing label,
  h2 {
    font-weight: 600;
    font-size: inherit;
  }
  textarea {
    inline-size: 100%;
    block-size: clamp(320px, 62vh, 900px);
    padding: 10px 12px;
    font-family: ui-monospace, 'DejaVu Sans Mono', Menlo, Consolas, monospace;
    font-size: calc(14 * var(--_text));
    line-height: calc(21 * var(--_text));
    resize: vertical;
    tab-size: 2;
    unicode-bidi: plaintext;
  }
  textarea[aria-invalid='true'] {
    border-color: var(--_ink);
    border-inline-start-width: 4px;
  }
  .faults {
    display: grid;
    gap: 4px;
  }
  .faults button {
    display: block;
    inline-size: 100%;
    min-block-size: 44px;
    padding: 6px 12px;
    border: 1px solid var(--_line);
    border-inline-start: 4px solid var(--_ink);
    border-radius: 5px;
    background: var(--_paper);
    text-align: start;
    cursor: pointer;
    overflow-wrap: anywhere;
  }
  .faults b {
    display: block;
    font-size: calc(13 * var(--_text));
    font-weight: 600;
    color: var(--_ink-2);
  }
  .reading {
    display: grid;
    gap: 4px;
  }
  .reading .differs {
    padding-inline-start: 10px;
    border-inline-start: 4px solid var(--_ink);
    font-weight: 600;
  }
  @container (min-width: 1000px) {
    .rooms {
      display: grid;
      grid-template-columns: minmax(0, 2fr) minmax(0, 3fr);
      gap: 24px;
    }
  }
  @container (max-width: 999px) {
    .rooms {
      display: grid;
      gap: 24px;
    }
  }
`;
