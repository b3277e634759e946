import { css } from 'lit';

/** Declarations for a panel that opens beside what it is about. */
export const panelBox = css`
  position: fixed;
  inset: auto;
  inline-size: 344px;
  max-inline-size: calc(100vw - 16px);
  max-block-size: calc(100dvh - 16px);
  overflow: auto;
  overscroll-behavior: contain;
  margin: 0;
  border: 1px solid var(--_edge);
  border-radius: 12px;
  background: var(--_raised);
  color: var(--_ink);
  box-shadow: 0 12px 32px rgb(0 0 0 / 0.16);
  --_paper: var(--_raised);
`;
