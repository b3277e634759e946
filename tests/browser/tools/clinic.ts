import type { ClinicStore } from '../../../demo/clinic/database.js';

/** The demo's page at an address, over a database of its own. */
export async function openClinic(
  hash: string,
  database: string,
  open?: (name: string) => Promise<ClinicStore>,
): Promise<HTMLElementTagNameMap['clinic-app']> {
  if (location.hash !== hash) {
    const moved = new Promise((done) => addEventListener('hashchange', done, { once: true }));
    location.hash = hash;
    await moved;
  }
  const app = document.createElement('clinic-app');
  app.database = database;
  if (open) app.open = open;
  document.body.append(app);
  return app;
}

/** Puts the style sheet of the demo on the page for all tests of a file or group. */
export function withClinicStyle(): void {
  const style = Object.assign(document.createElement('link'), {
    rel: 'stylesheet',
    href: '/demo/clinic.css',
  });
  before(async () => {
    const loaded = new Promise((done) => style.addEventListener('load', done));
    document.head.append(style);
    await loaded;
  });
  after(() => style.remove());
}
