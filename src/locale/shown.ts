import { enShown } from './en/shown.js';
import { registeredFor } from './languages.js';
import { inVoice, type Register } from './terms.js';
import { voiceFor } from './voice.js';

/** The words of what a map shows before anything else of it has been fetched. */
export type ShownMessages = typeof enShown;

/**
 * Those words for a language tag, as `messagesFor` takes it. They stand apart, so that a first paint does not wait for the words
 * of readings and marks; the type keeps code of the first paint from asking for more.
 */
export function shownMessagesFor(tag: string, register: Register = 'trade'): ShownMessages {
  return inVoice<ShownMessages>(registeredFor(tag) ?? enShown, voiceFor(tag, register));
}
