import { differencesBetween, differenceWords, type Nearest } from '../code';

/** What tells a near code from the one that was read. */
export function changeWords(code: string, { how, text }: Nearest): string {
  if (how === 'as-written') return 'none';
  if (how === 'likely') return `read as "${text}"`;
  const differences = differencesBetween(code, text);
  return differences?.map(differenceWords).join('; ') ?? 'the same letters and digits';
}
