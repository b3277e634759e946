import { renderToString } from 'react-dom/server';
import { Visit } from './visit';

export const page = (): string => renderToString(<Visit saved="" />);
