import { createRoot } from 'react-dom/client';
import { ActionVisit } from './action';

/** Every record that was saved, for the test. */
const saved: string[] = [];
Object.assign(globalThis, { saved });
createRoot(document.querySelector('#app')!).render(<ActionVisit save={(record) => saved.push(record)} />);
