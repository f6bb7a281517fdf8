import type { Page } from 'playwright-core';

/** Gives a file to the page as a hand does: dropped, or pasted. */
export const give = (page: Page, how: 'drop' | 'paste', name: string, type: string, bytes: Buffer) =>
  page.evaluate(
    ([event, file, mediaType, base64]) => {
      const content = Uint8Array.from(atob(base64), (character) => character.charCodeAt(0));
      const files = new DataTransfer();
      files.items.add(new File([content], file, { type: mediaType }));
      const given =
        event === 'drop'
          ? new DragEvent('drop', { dataTransfer: files, bubbles: true, cancelable: true })
          : new ClipboardEvent('paste', { clipboardData: files, bubbles: true, cancelable: true });
      document.body.dispatchEvent(given);
    },
    [how, name, type, bytes.toString('base64')] as const,
  );
