import { hydrateRoot } from 'react-dom/client';
import { Visit } from './visit';

hydrateRoot(document.querySelector('#app')!, <Visit saved="" />, {
  onRecoverableError: (error) => console.error(error),
});
