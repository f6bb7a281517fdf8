import type { MessageLanguage } from './message/languages';

/** Each language by its own name, so that who reads it finds it. */
export const languageNames = {
  en: 'English',
  fr: 'Français',
  de: 'Deutsch',
  it: 'Italiano',
  es: 'Español',
  nl: 'Nederlands',
  ja: '日本語',
} as const satisfies Record<MessageLanguage, string>;
