import { defineObserver } from './observer';

const address =
  /\b(?:https?:\/\/)?(?:www\.)?([a-z0-9-]{3,40}(?:\.[a-z0-9-]{2,40})*\.(?:com|net|org|shop|store|co\.uk|uk|de|fr|it|es|nl|jp|eu|example))\b/i;

/** Hosts that are written in the photo, one a line of print. */
export const watermark = defineObserver({
  id: 'watermark',
  gives: ['watermark'],
  measure: (_, { printed }) =>
    printed.flatMap((line) => {
      const host = address.exec(line)?.[1]?.toLowerCase();
      return host === undefined ? [] : [{ what: 'watermark' as const, value: host }];
    }),
});
