import { manifest as german } from './de/manifest';
import { menu as germanMenu } from './de/menu';
import { manifest as english } from './en/manifest';
import { menu as englishMenu } from './en/menu';
import { type Language, spokenLanguages } from './language';

const wordsOf = (language: (typeof spokenLanguages)[number]) => {
  const [{ description }, { readListing }] = language === 'de' ? [german, germanMenu] : [english, englishMenu];
  return { description, readListing };
};

/** The language of the manifest where the browser's own is none that is written. */
export const defaultLocale: Language = 'en';

/** The name by which the manifest asks the browser for one of these sentences. */
export const inManifest = (name: keyof ReturnType<typeof wordsOf>): string => `__MSG_${name}__`;

/** Files of the package that the browser takes them from, by its own language. */
export const localeFiles = (): { path: string; text: string }[] =>
  spokenLanguages.map((language) => ({
    path: `_locales/${language}/messages.json`,
    text: messagesOf(Object.entries(wordsOf(language))),
  }));

const messagesOf = (said: readonly (readonly [name: string, message: string])[]) =>
  `${JSON.stringify(Object.fromEntries(said.map(([name, message]) => [name, { message }])), null, 2)}\n`;
