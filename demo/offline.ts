import type { RegisterSWOptions } from 'vite-plugin-pwa/types';

/** Registers the worker that keeps the page for when there is no connection; the plugin's `registerSW`. */
export type Register = (options: RegisterSWOptions) => (reload?: boolean) => Promise<void>;

/**
 * Keeps the page for use without a connection, and tells when a newer one has been fetched: it comes in when the person says so, never
 * in the middle of an examination.
 */
export function keepOffline(register: Register): void {
  const update = register({
    onNeedRefresh() {
      if (document.querySelector('.update')) return;
      const bar = document.createElement('div');
      bar.className = 'update';
      bar.setAttribute('role', 'status');
      const button = (text: string, act: () => void): HTMLButtonElement => {
        const made = document.createElement('button');
        made.type = 'button';
        made.className = 'button';
        made.textContent = text;
        made.addEventListener('click', act);
        return made;
      };
      const text = document.createElement('p');
      text.textContent = 'A new version of this demonstration is ready. What you entered is kept.';
      bar.append(
        text,
        button('Load it', () => void update(true)),
        button('Later', () => bar.remove()),
      );
      document.body.append(bar);
    },
  });
}
