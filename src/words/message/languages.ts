import { german } from './de';
import { spanish } from './es';
import { french } from './fr';
import { italian } from './it';
import { japanese } from './ja';
import { dutch } from './nl';
import type { MessageWords } from './topics';

/** English is written beside the checks; these are the other languages of a message. */
export const otherLanguages = {
  fr: french,
  de: german,
  it: italian,
  es: spanish,
  nl: dutch,
  ja: japanese,
} as const satisfies Record<string, MessageWords>;
export type MessageLanguage = 'en' | keyof typeof otherLanguages;
export const messageLanguages = ['en', ...Object.keys(otherLanguages)] as MessageLanguage[];

/** The language of a message for a listing's BCP 47 tag; English when there is none. */
export function messageLanguageOf(tag: string | null): MessageLanguage {
  const language = tag?.toLowerCase().split('-')[0];
  return messageLanguages.find((one) => one === language) ?? 'en';
}
