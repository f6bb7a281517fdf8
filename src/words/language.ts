/*
 * The files of two languages are of one shape, line by line, because they say the same things: what they share stands in
 * the types that both are held by, and a sentence is never made for two languages at once. Nor for two findings: those of
 * one file are of one shape because each fills the same form.
 */

/** Languages that every sentence is written in, as BCP 47 tags; `en-XA` is English made longer, to try the screens with. */
export const languages = ['en', 'de', 'en-XA'] as const;
export type Language = (typeof languages)[number];

/** Those that a user can choose. */
export const spokenLanguages = ['en', 'de'] as const satisfies readonly Language[];

/** The language for a list of BCP 47 tags, the most wanted first; English when none of them is written. */
export function languageFor(wanted: readonly string[]): Language {
  for (const tag of wanted) {
    const known =
      languages.find((one) => one.toLowerCase() === tag.toLowerCase()) ??
      spokenLanguages.find((one) => one === tag.toLowerCase().split('-')[0]);
    if (known) return known;
  }
  return 'en';
}
