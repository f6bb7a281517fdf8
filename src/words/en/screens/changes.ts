/** What the screens say of a listing that was saved before: each change in one sentence. Values come in quotes or written out. */
export const changesStrings = {
  title: (day: string) => `What has changed since the saved look of ${day}`,
  none: (day: string) => `Nothing has changed since the saved look of ${day}.`,
  /** `share`: by how much less (below 0) or more it is, written out; null where it cannot be said. */
  price: (before: string, now: string, share: { less: boolean; by: string } | null) =>
    `The price was ${before}; now it is ${now}${share ? `, ${share.by} ${share.less ? 'less' : 'more'}` : ''}.`,
  noPrice: (before: string) => `The price was ${before}; none was read now.`,
  heading: (before: string, now: string | null) =>
    `The title was ${before}; ${now === null ? 'none was read now' : `now it is ${now}`}.`,
  seller: (before: string, now: string | null) =>
    `The seller was ${before}; ${now === null ? 'none is named now' : `now it is ${now}`}.`,
  description: 'The description was changed.',
  noDescription: 'There was a description; none was read now.',
  gone: 'No longer there:',
  added: 'New:',
  more: (number: number) => `and ${number} more`,
  photosGone: (gone: number, of: number) =>
    gone === 1 ? `1 of ${of} photos is gone.` : `${gone} of ${of} photos are gone.`,
  photosAdded: (numbers: number[]) =>
    numbers.length === 1 ? `Photo ${numbers[0]} is new.` : `Photos ${numbers.join(', ')} are new.`,
  photosNumber: (of: number, now: number) => `There were ${of} photos; now there are ${now}.`,
  /** Statements of one kind, each written out and joined. */
  claim: (kind: string, gone: string, added: string) => `${kind}: was ${gone}; now ${added}.`,
  claimGone: (kind: string, gone: string) => `${kind}: ${gone} is no longer stated.`,
  claimAdded: (kind: string, added: string) => `${kind}: ${added} is stated now and was not before.`,
} as const;
