// A static host of a folder, and a browser to look at it.
import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import { type Browser, launch } from 'puppeteer-core';
import { BROWSER_FLAGS, findBrowser } from '../../.tools/find-browser.mjs';

const TYPES: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
};

export interface Host {
  readonly browser: Browser;
  readonly address: string;
  close(): Promise<void>;
}

/** Serves the folder on this machine and opens a browser without a window. */
export async function serve(folder: string): Promise<Host> {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    readFile(join(folder, pathname)).then(
      (file) => response.setHeader('content-type', TYPES[extname(pathname)] ?? 'text/plain').end(file),
      () => response.writeHead(pathname === '/favicon.ico' ? 204 : 404).end(),
    );
  });
  await new Promise<void>((done) => server.listen(0, 'localhost', done));
  const { port } = server.address() as AddressInfo;
  const browser = await launch({ executablePath: findBrowser(), args: BROWSER_FLAGS });
  return {
    browser,
    address: `http://localhost:${port}`,
    async close() {
      await browser.close();
      await new Promise((done) => server.close(done));
    },
  };
}
