import { kit } from '../words';

/** An ISO date and time as the day that it is here, in the language of the screens. */
export const dayWords = (at: string): string =>
  new Date(at).toLocaleDateString(kit.locale, { year: 'numeric', month: 'short', day: 'numeric' });
