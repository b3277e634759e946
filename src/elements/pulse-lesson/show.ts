import { type Examination, isEmptyRecord, parseExamination } from '../../examination/index.js';
import type { StepId } from '../../lesson/index.js';

/** What stands on the screen. Two windows that hold the same show the same. */
export interface Show {
  /** Place among the slides: 0 is the title, then every step. */
  readonly at: number;
  /** Steps whose finding was revealed. */
  readonly revealed: readonly StepId[];
  readonly black: boolean;
  readonly overview: boolean;
  /** The pulse wave in place of the step. */
  readonly wave: boolean;
  /** The map on which the room marks, in place of the step. */
  readonly marking: boolean;
  /** What the room marked there; missing while it is nothing. No finding of the lesson is ever part of it, nor it of them. */
  readonly marked?: Examination;
  /** When the lesson began, in ms since the epoch; missing until the title is left. */
  readonly began?: number;
  /** Counts the acts, so that of two windows the later one is believed. */
  readonly turn: number;
}

export const OPENING: Show = {
  at: 0,
  revealed: [],
  black: false,
  overview: false,
  wave: false,
  marking: false,
  turn: 0,
};

/** What stands in place of the step. */
const ASIDE = { overview: false, wave: false, marking: false } as const;

/** Name of the picture on the screen: two shows with the same name have the same things at the same places. */
export function pictureOf({ at, overview, wave, marking }: Show): string {
  return [at, overview, wave, marking].join(' ');
}

/** What a person does, whichever key, button or gesture said so. */
export type ShowAct =
  | 'next'
  | 'back'
  | 'reveal'
  | 'black'
  | 'overview'
  | 'wave'
  | 'mark'
  | 'first'
  | 'last'
  | 'escape'
  | 'restart'
  | { readonly to: number }
  | { readonly marked: Examination | undefined };

function toggled(revealed: readonly StepId[], id: StepId): readonly StepId[] {
  return revealed.includes(id) ? revealed.filter((one) => one !== id) : [...revealed, id];
}

function moved(show: Show, at: number, last: number, now: number): Show {
  const to = Math.min(last, Math.max(0, at));
  return { ...show, ...ASIDE, at: to, ...(to > 0 && { began: show.began ?? now }) };
}

function after(show: Show, act: ShowAct, steps: readonly StepId[], now: number): Show {
  if (typeof act === 'object') {
    if ('to' in act) return moved(show, act.to, steps.length, now);
    const { marked: _, ...rest } = show;
    return act.marked && !isEmptyRecord(act.marked) ? { ...rest, marked: act.marked } : rest;
  }
  const here = steps[show.at - 1];
  const aside = show.overview || show.wave || show.marking;
  const onward = { ...show, ...ASIDE };
  switch (act) {
    case 'next':
      if (aside) return onward;
      if (here !== undefined && !show.revealed.includes(here))
        return { ...show, revealed: [...show.revealed, here] };
      return moved(show, show.at + 1, steps.length, now);
    case 'back':
      return aside ? onward : moved(show, show.at - 1, steps.length, now);
    case 'reveal':
      return here === undefined ? show : { ...show, revealed: toggled(show.revealed, here) };
    case 'black':
      return { ...show, black: !show.black };
    case 'overview':
      return { ...onward, overview: !show.overview };
    case 'wave':
      return { ...onward, wave: !show.wave };
    case 'mark':
      return { ...onward, marking: !show.marking };
    case 'first':
      return moved(show, 0, steps.length, now);
    case 'last':
      return moved(show, steps.length, steps.length, now);
    case 'escape':
      return { ...onward, black: false };
    case 'restart':
      return { ...show, began: now };
  }
}

/**
 * The show after an act. On a black screen every step forward or back only brings the picture back, so that nothing passes unseen.
 * "Next" first reveals what the step found, then goes on: two keys of a remote lead through the whole lesson.
 * @param steps the lesson's steps, in order
 * @param now ms since the epoch
 */
export function act(show: Show, what: ShowAct, steps: readonly StepId[], now: number): Show {
  const lit = show.black && (what === 'next' || what === 'back');
  const next = lit ? { ...show, black: false } : after(show, what, steps, now);
  const same = (Object.keys({ ...show, ...next }) as (keyof Show)[]).every((key) => show[key] === next[key]);
  return same ? show : { ...next, turn: show.turn + 1 };
}

/**
 * The show on the steps of a lesson that was rewritten: at the same step, else at the place where it stood; what was revealed and is
 * still there stays so.
 */
export function refitted(show: Show, before: readonly StepId[], after: readonly StepId[]): Show {
  const here = before[show.at - 1];
  const found = here === undefined ? 0 : after.indexOf(here) + 1;
  const at = here === undefined ? 0 : found || Math.min(show.at, after.length);
  return { ...show, at, revealed: show.revealed.filter((id) => after.includes(id)) };
}

/** Reads what another window or an earlier visit says is shown; `undefined` for what is none, or belongs to other steps. */
export function readShow(value: unknown, steps: readonly StepId[]): Show | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  const { at, revealed, black, overview, wave, marking, marked, began, turn } = value as Record<
    keyof Show,
    unknown
  >;
  const isCount = (n: unknown, most: number): n is number =>
    Number.isInteger(n) && Number(n) >= 0 && Number(n) <= most;
  if (!isCount(at, steps.length) || !isCount(turn, Number.MAX_SAFE_INTEGER)) return undefined;
  if (![black, overview, wave, marking].every((one) => typeof one === 'boolean') || !Array.isArray(revealed))
    return undefined;
  if (!revealed.every((id) => steps.includes(id as StepId))) return undefined;
  if (began !== undefined && !Number.isFinite(began)) return undefined;
  const record = marked === undefined ? undefined : parseExamination(marked);
  if (record && (!record.ok || isEmptyRecord(record.value))) return undefined;
  return {
    at,
    revealed: revealed as StepId[],
    black: black as boolean,
    overview: overview as boolean,
    wave: wave as boolean,
    marking: marking as boolean,
    turn,
    ...(record?.ok && { marked: record.value }),
    ...(began !== undefined && { began: began as number }),
  };
}
