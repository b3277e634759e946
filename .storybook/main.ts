import type { StorybookConfig } from '@storybook/web-components-vite';
import { ownName } from '../.tools/own-name.mjs';

const config: StorybookConfig = {
  framework: '@storybook/web-components-vite',
  stories: ['../stories/**/*.mdx', '../stories/**/*.stories.ts'],
  addons: ['@storybook/addon-docs', '@storybook/addon-a11y'],
  core: { disableTelemetry: true, disableWhatsNewNotifications: true },
  async viteFinal(vite) {
    const { mergeConfig } = await import('vite');
    return mergeConfig(vite, {
      resolve: { alias: ownName },
      worker: { format: 'es' },
      build: { target: 'es2022', chunkSizeWarningLimit: 4000 },
    });
  },
};

export default config;
