/** What of the browser's speech recognition is used here. */
export interface Recognition extends EventTarget {
  lang: string;
  continuous: boolean;
  interimResults: boolean;
  processLocally: boolean;
  start(): void;
  stop(): void;
}

interface RecognitionClass {
  new (): Recognition;
  available?(options: { langs: readonly string[]; processLocally: boolean }): Promise<string>;
  readonly prototype: Recognition;
}

interface SpeechResult {
  readonly isFinal: boolean;
  readonly [index: number]: { readonly transcript: string };
}

/** A recogniser's `result` event, as far as it is read here. */
export interface SpeechResultEvent extends Event {
  readonly resultIndex: number;
  readonly results: ArrayLike<SpeechResult>;
}

/**
 * Makes a recogniser that works on the device itself; `undefined` where the browser cannot promise that for the language. A
 * recogniser that might send speech elsewhere, or would have to fetch a model first, does not count.
 */
export async function deviceRecognition(lang: string): Promise<(() => Recognition) | undefined> {
  const Class = (globalThis as { SpeechRecognition?: RecognitionClass }).SpeechRecognition;
  if (!Class?.available || !('processLocally' in Class.prototype)) return undefined;
  try {
    if ((await Class.available({ langs: [lang], processLocally: true })) !== 'available') return undefined;
  } catch {
    return undefined;
  }
  return () => {
    const recognition = new Class();
    recognition.lang = lang;
    recognition.processLocally = true;
    recognition.continuous = true;
    recognition.interimResults = false;
    return recognition;
  };
}

/** What was recognised with this event, once it stands. */
export function heard({ results, resultIndex }: SpeechResultEvent): string {
  return Array.from(results)
    .slice(resultIndex)
    .flatMap((result) => (result.isFinal ? [result[0]?.transcript.trim() ?? ''] : []))
    .filter(Boolean)
    .join(' ');
}
