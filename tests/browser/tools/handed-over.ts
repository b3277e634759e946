// The files that an element hands to the person, caught instead of saved.

export interface HandedOver {
  readonly name: string;
  readonly text: string;
}

/** What is handed over while something is done. */
export async function handedOver(during: () => unknown): Promise<HandedOver[]> {
  const files: Blob[] = [];
  const names: string[] = [];
  const { createObjectURL } = URL;
  const { prototype } = HTMLAnchorElement;
  const { click } = prototype;
  URL.createObjectURL = (file: Blob): string => {
    files.push(file);
    return 'blob:none';
  };
  prototype.click = function (this: HTMLAnchorElement): void {
    names.push(this.download);
  };
  try {
    await during();
  } finally {
    URL.createObjectURL = createObjectURL;
    prototype.click = click;
  }
  return Promise.all(names.map(async (name, i) => ({ name, text: await files[i]!.text() })));
}
