import { setCustomElementsManifest, type Preview } from '@storybook/web-components-vite';
import './preview.css';

// Made by the build; without it the documentation tables are empty and the stories still work.
const manifests = import.meta.glob<object>('../dist/custom-elements.json', {
  eager: true,
  import: 'default',
});
for (const manifest of Object.values(manifests)) setCustomElementsManifest(manifest);

const preview: Preview = {
  tags: ['autodocs'],
  initialGlobals: { scheme: 'light' },
  globalTypes: {
    scheme: {
      description: 'Colour scheme of the canvas',
      toolbar: {
        title: 'Scheme',
        icon: 'contrast',
        dynamicTitle: true,
        items: [
          { value: 'light', title: 'Light', icon: 'sun' },
          { value: 'dark', title: 'Dark', icon: 'moon' },
          { value: 'light dark', title: 'As the system', icon: 'browser' },
        ],
      },
    },
  },
  decorators: [
    (story, { globals }) => {
      document.documentElement.style.colorScheme = String(globals['scheme']);
      return story();
    },
  ],
  parameters: {
    controls: { expanded: true },
    a11y: { test: 'error' },
    backgrounds: { disable: true },
  },
};

export default preview;
