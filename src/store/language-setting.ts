import { browser } from '../browser/api';
import { type Language, languageFor } from '../words/language';

/** The language of the screens, kept in the browser's own store of the extension. */
const key = 'screen-language';

/** The language that the user chose; without a choice, or where it cannot be read, that of the browser. */
export async function readLanguage(): Promise<Language> {
  try {
    const chosen: unknown = (await browser.storage.local.get(key))[key];
    return languageFor([...(typeof chosen === 'string' ? [chosen] : []), ...navigator.languages]);
  } catch {
    return languageFor(navigator.languages);
  }
}

export async function keepLanguage(language: Language): Promise<void> {
  await browser.storage.local.set({ [key]: language });
}

/** Tells of a choice made in another of the extension's pages. */
export function onKeptLanguage(listener: (language: Language) => void): void {
  browser.storage.onChanged.addListener((changes, area) => {
    const chosen: unknown = changes[key]?.newValue;
    if (area === 'local' && typeof chosen === 'string') listener(languageFor([chosen]));
  });
}
