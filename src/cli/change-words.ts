import { differencesBetween, differenceWords, type Nearest } from '../code';

/** What tells a near code from the one that was read. */
export function changeWords(code: string, { how, text }: Nearest): string {
  if (how === 'as-written') return 'none';
  if (how === 'likely') return `read as "${text}"`;
  return (differencesBetween(code, text) ?? []).map(differenceWords).join('; ');
}
