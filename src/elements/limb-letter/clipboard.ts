/** Copies a text as plain text and as HTML in one act. @returns whether the browser took it */
export async function copyBoth(text: string, html: string): Promise<boolean> {
  try {
    if (typeof ClipboardItem === 'undefined') await navigator.clipboard.writeText(text);
    else
      await navigator.clipboard.write([
        new ClipboardItem({
          'text/plain': new Blob([text], { type: 'text/plain' }),
          'text/html': new Blob([html], { type: 'text/html' }),
        }),
      ]);
    return true;
  } catch {
    return false;
  }
}
