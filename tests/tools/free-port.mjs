import { once } from 'node:events';
import { createServer } from 'node:net';

/** A port that nothing listens at, another one for each that asks: servers that start at once would find the same first free one. */
export async function freePort() {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address();
  server.close();
  return port;
}
