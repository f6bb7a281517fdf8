import { findMarks } from '../../../src/mark';

export const inPhoto = { foundIn: 'photo', photoId: 'p1' } as const;
export const inListing = { foundIn: 'listing', photoId: null } as const;

/** What one mark says of a text: "words | first day..last day, … | hard/soft", in order. */
export function said(mark: string, text: string, where: typeof inPhoto | typeof inListing = inPhoto): string[] {
  return findMarks(text, where)
    .filter((read) => read.mark === mark)
    .map(({ words, spans, strength }) => {
      const days = spans.map(({ from, to }) => `${from ?? ''}..${to ?? ''}`).join(', ');
      return `${words} | ${days || 'no date'} | ${strength}`;
    });
}
