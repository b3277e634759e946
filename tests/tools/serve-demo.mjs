import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { preview } from 'vite';
import { root } from '../../.tools/install.mjs';

/** The built demo, copied so that a test may change it, and a server that can be stopped and started again at the same address. */
export class ServedDemo {
  folder = mkdtempSync(join(tmpdir(), 'pulse-map-demo-'));
  #server;
  #port = 0;

  constructor() {
    cpSync(join(root, 'demo/dist'), this.folder, { recursive: true });
  }

  get address() {
    return `http://localhost:${this.#port}/`;
  }

  async start() {
    this.#server = await preview({
      configFile: false,
      root: this.folder,
      logLevel: 'silent',
      build: { outDir: this.folder },
      preview: { host: 'localhost', port: this.#port, strictPort: this.#port !== 0 },
    });
    this.#port = this.#server.httpServer.address().port;
  }

  async stop() {
    const server = this.#server?.httpServer;
    this.#server = undefined;
    if (!server) return;
    await new Promise((done) => {
      server.close(done);
      server.closeAllConnections();
    });
  }

  async end() {
    await this.stop();
    rmSync(this.folder, { recursive: true, force: true });
  }
}
