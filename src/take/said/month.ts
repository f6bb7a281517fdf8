import { parseDates } from '../../text';

/** Whether a word is the name of a month, in any of the languages. */
export const namesMonth = (word: string): boolean => {
  const [date] = parseDates(`${word} 1990`, { language: null, now: '2000-01-01' });
  return date?.form === 'month' && date.start === 0;
};
