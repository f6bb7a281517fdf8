import { screens as german } from './de/screens';
import { screens as english } from './en/screens';
import { type Kit, kitFor } from './kit';
import type { Language } from './language';
import { live } from './live';
import { pseudo } from './pseudo';
import type { ScreenWords } from './screen-words';

const written: Record<Language, ScreenWords> = {
  en: english,
  de: german,
  get 'en-XA'() {
    return pseudo(english);
  },
};
const listeners = new Set<() => void>();
let chosen: Language = 'en';

/** The words of the chosen language. */
export const strings: ScreenWords = live(() => written[chosen]);

/** The kit of the chosen language. */
export const kit: Kit = live(() => kitFor(chosen));

export const chosenLanguage = (): Language => chosen;

/** Takes another language; whoever listens draws its screen anew. */
export function chooseLanguage(language: Language): void {
  if (language === chosen) return;
  chosen = language;
  for (const listener of listeners) listener();
}

/** Calls `listener` after each choice; the answer ends it. */
export function onLanguage(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
