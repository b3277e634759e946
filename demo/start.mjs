// `npm start`: installs what is missing, builds the demo and serves it on this machine until stopped.
import { fileURLToPath } from 'node:url';
import { installMissing } from '../.tools/install.mjs';

installMissing();
const { build, preview } = await import('vite');

const configFile = fileURLToPath(new URL('vite.config.ts', import.meta.url));
const port = Number(process.env.PORT) || 4173;

await build({ configFile, logLevel: 'warn' });
// Without strictPort the next free port is taken when this one is in use.
const server = await preview({
  configFile,
  logLevel: 'warn',
  preview: { host: 'localhost', port, strictPort: false },
});

console.log(`Pulse Map demo: ${server.resolvedUrls.local[0]}`);
console.log('Stop it with Ctrl+C.');
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => process.exit(0));
