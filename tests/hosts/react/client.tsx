import { createRoot } from 'react-dom/client';
import { Visit } from './visit';

createRoot(document.querySelector('#app')!).render(<Visit saved="" />);
