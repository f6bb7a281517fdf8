import { describe, expect, it } from 'vitest';
import { buildCase, caseSchema, lookAt, ofPage, type SentPhoto, withSentPhotos } from '../../../src/case';
import { changesSince } from '../../../src/check';
import { photoRead } from '../../photo-read';
import { listingOf } from './sample-listing';

const now = '2026-03-01T10:00:00.000Z';
const chat: SentPhoto = { id: `sent-${'a'.repeat(32)}`, from: 'seller-chat', on: '2026-02-27' };
const own: SentPhoto = { id: `sent-${'b'.repeat(32)}`, from: 'own', on: '2026-02-28' };
const listing = listingOf('Ondrasse Carryall 30', 'Width 30 cm.', 2);
const built = (sent: SentPhoto[], page = listing) =>
  buildCase({
    listing: page,
    photos: ['p1', 'p2', ...sent.map(({ id }) => id)].map((id) => photoRead(id)),
    sent,
    corrections: [],
    makers: [],
    now,
  });

describe('photos that came another way than by the page', () => {
  it('stand in the case after the page’s own, with where they came from and when', () => {
    const kase = built([chat, own]);
    expect(kase.listing.photos.map(({ id }) => id)).toEqual(['p1', 'p2', chat.id, own.id]);
    expect(kase.sent).toEqual([chat, own]);
    expect(caseSchema.parse(JSON.parse(JSON.stringify(kase)))).toEqual(kase);
  });

  it('are the same once the case is made anew from itself, and gone with what says that they came', () => {
    const kase = built([chat]);
    expect(built([chat], kase.listing)).toEqual(kase);
    expect(built([], kase.listing).listing).toEqual(listing);
  });

  it('count as not read until they are', () => {
    const kase = buildCase({ listing, photos: [], sent: [chat], corrections: [], makers: [], now });
    expect(kase.skipped).toContainEqual(
      expect.objectContaining({ code: 'photos-not-read', data: expect.objectContaining({ unread: 3, of: 3 }) }),
    );
  });

  it('are no change of the page, neither as they come nor where the next look lacks them', () => {
    const before = lookAt(built([chat]));
    expect(before.photos.map(({ id }) => id)).toEqual(['p1', 'p2']);
    const kase = built([own]);
    expect(changesSince(before, kase.listing, kase.claims)).toEqual([]);
    expect(changesSince(lookAt(built([])), kase.listing, kase.claims)).toEqual([]);
  });

  it('do not stand in for a photo that the page took away', () => {
    const fewer = { ...listing, photos: listing.photos.slice(0, 1) };
    const kase = buildCase({
      listing: fewer,
      photos: [photoRead('p1'), photoRead(chat.id)],
      sent: [chat],
      corrections: [],
      makers: [],
      now,
      previous: lookAt(built([])),
    });
    expect(changesSince(lookAt(built([])), kase.listing, kase.claims)).toEqual([
      { what: 'photos', gone: 1, added: [], of: 2, now: 1 },
    ]);
    expect(kase.outcomes.find(({ check }) => check === 'photos-changed')).toMatchObject({
      outcome: 'speaks',
      findings: [{ data: { gone: 1, of: 2, left: 1 } }],
    });
  });

  it('leave a listing that has none as it is', () => {
    expect(withSentPhotos(listing, [])).toBe(listing);
    expect(ofPage(withSentPhotos(listing, [chat]))).toEqual(listing);
  });
});
