/// <reference types="vite-plugin-pwa/client" />
// A clinic's own record, as it might have been before: the one line that concerns the package is the next.
import 'pulse-map';
import './clinic/app.js';
import { registerSW } from 'virtual:pwa-register';
import { keepOffline } from './offline.js';

keepOffline(registerSW);
