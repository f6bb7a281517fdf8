import { noFacts } from '../listing/fact-types';
import { nowhere, photoLink } from '../listing/sent-photo-types';
import type { Listing } from '../listing/types';

const blankListing = (url: string, readAt: string): Listing => ({
  format: 1,
  url,
  readAt,
  kind: 'listing',
  language: null,
  text: '',
  ...noFacts(),
  photos: [],
  problems: [],
});

interface Loose {
  /** Whose rules are asked for; empty where nobody knows. */
  maker: string;
  /** Names of the photos that the buyer gave, in their order. */
  photos: readonly string[];
  readAt: string;
}

/**
 * A code or photos without a listing, in the form that every later stage takes: nothing is said of the piece but, where
 * the buyer names one, its maker.
 */
export const looseListing = ({ maker, photos, readAt }: Loose): Listing => ({
  ...blankListing(nowhere, readAt),
  maker: maker === '' ? [] : [{ value: maker, origin: 'user-pick', where: 'hand', confidence: 1 }],
  photos: photos.map((id) => photoLink(id, `${nowhere}${id}`)),
});

/** Whether nothing was said of the piece because there is no listing. */
export const isLoose = ({ url }: Pick<Listing, 'url'>): boolean => url === nowhere;
