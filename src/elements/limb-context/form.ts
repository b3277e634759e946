import type { TemplateResult } from 'lit';
import type { Side } from '../../anatomy/index.js';
import type { Context } from '../../examination/index.js';
import type { Messages } from '../../locale/index.js';
import type { PartMessages } from '../../locale/parts.js';
import type { LimbKind } from '../common/sided-part.js';
import type { Refusal, Typing } from '../common/typing.js';

/** The form as its groups of rows see it. */
export interface ContextForm {
  readonly value: Context | undefined;
  readonly editable: boolean;
  readonly words: PartMessages;
  readonly mapWords: Messages;
  readonly typing: Typing;
  readonly refusals: ReadonlyMap<string, Refusal>;
  edit(path: readonly string[], field: unknown): boolean;
  replace(context: Context): boolean;
  known(path: readonly string[], label: string, control: () => TemplateResult): TemplateResult;
  limbLabel(what: string, kind: LimbKind, side: Side): string;
}
