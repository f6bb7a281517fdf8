import type { PrintReader } from '../engines';
import type { OpenPrintReader } from './tesseract';

/**
 * A print reader whose engine starts with the first picture: most photos show no print, and the engine takes half a
 * second and 100 MB. Asked first by `starts`, it says whether it could; `failed` is told once why it could not.
 */
export function printWhenNeeded(
  open: () => Promise<OpenPrintReader>,
  failed: (error: unknown) => void,
): OpenPrintReader & Required<Pick<PrintReader, 'starts'>> {
  let opening: Promise<OpenPrintReader | null> | null = null;
  const opened = (): Promise<OpenPrintReader | null> => {
    opening ??= open().catch((error: unknown) => {
      failed(error);
      return null;
    });
    return opening;
  };
  return {
    async starts() {
      return (await opened()) !== null;
    },
    async read(image, layout) {
      const reader = await opened();
      if (reader === null) throw new Error('the print reader did not start');
      return reader.read(image, layout);
    },
    async close() {
      await (await opening)?.close();
    },
  };
}

/** The reader, started if it was not yet; null where there is none or it cannot start. */
export async function startedPrint(print: PrintReader | null): Promise<PrintReader | null> {
  return print === null || (await (print.starts?.() ?? true)) ? print : null;
}
