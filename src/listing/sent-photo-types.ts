import type { PhotoLink } from './types';

/** Where nothing was read from: the standard keeps this ending free of hosts. Source: RFC 2606, section 2. */
export const nowhere = 'https://by-hand.invalid/';

const sent = `${nowhere}sent-`;

/** A photo of which nothing is known but its address. */
export const photoLink = (id: string, url: string): PhotoLink => ({
  id,
  url,
  alternatives: [],
  width: null,
  height: null,
  alt: '',
  origins: ['visible'],
});

/** The link of a photo that no page shows: the seller sent it, or the buyer took it. Its id begins with `sent-`. */
export const sentPhotoLink = (id: string): PhotoLink => ({
  ...photoLink(id, `${nowhere}${id}`),
  origins: ['user-pick'],
});

/** Whether the buyer brought it: the page, and what it shows at another look, know nothing of it. */
export const isSentPhoto = ({ url }: Pick<PhotoLink, 'url'>): boolean => url.startsWith(sent);
