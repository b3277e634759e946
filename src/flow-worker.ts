import { answerRequests, type Port } from './flow/many.js';

/** The inside of a worker that generates and examines patients: the only entry with an effect when it is loaded. */
answerRequests(globalThis as unknown as Port);
