import type { Span } from './groups.js';
import type { NoteDoubt, NoteReading } from './reading.js';

/** A piece of a note with what was made of it. */
export interface NotePiece {
  readonly text: string;
  /** `open`: words that a question is about; `read`: understood; `unread`: not understood; `plain`: says nothing of a pulse. */
  readonly kind: 'open' | 'read' | 'unread' | 'plain';
  /** Number of the question that begins to be about these words, from 1. */
  readonly question?: number;
}

/** The note cut into pieces, whole and in order, so that it can be shown with its marks. */
export function notePieces(text: string, { findings, doubts, unread }: NoteReading): NotePiece[] {
  const marked = (
    spans: readonly Span[],
    kind: NotePiece['kind'],
    doubt?: NoteDoubt,
  ): (Span & { kind: NotePiece['kind']; question?: number })[] =>
    spans.map((span, i) => ({
      ...span,
      kind,
      ...(doubt && i === 0 && { question: doubts.indexOf(doubt) + 1 }),
    }));
  // A later entry lies over an earlier one where both hold the same words.
  const layers = [
    ...findings.flatMap(({ spans }) => marked(spans, 'read')),
    ...marked(unread, 'unread'),
    ...doubts.flatMap((doubt) => marked(doubt.spans, 'open', doubt)),
  ];
  const edges = [...new Set([0, text.length, ...layers.flatMap(({ start, end }) => [start, end])])]
    .filter((edge) => edge >= 0 && edge <= text.length)
    .sort((a, b) => a - b);
  return edges.slice(0, -1).map((start, i) => {
    const top = layers.findLast((layer) => layer.start <= start && start < layer.end);
    const first = layers.find(({ question, start: at }) => question !== undefined && at === start);
    return {
      text: text.slice(start, edges[i + 1]),
      kind: top?.kind ?? 'plain',
      ...(first?.question !== undefined && { question: first.question }),
    };
  });
}

/** The words that spans hold, in their order. */
export const quotesOf = (text: string, spans: readonly Span[]): string[] =>
  spans.map(({ start, end }) => text.slice(start, end).trim()).filter(Boolean);
