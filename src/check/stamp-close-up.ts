import { periodSpan } from '../span';
import { allReadClearly, notReadWords } from './codes';
import { daysBefore } from './dates';
import { practice } from './frame';
import { commonAsks, countWords } from './wording';
import { defineWritten } from './written';

/** From this score on, a line found in a photo counts as a stamp that is shown, read or not. */
const looksLikeStamp = 0.5;

export const stampCloseUp = defineWritten({
  id: 'stamp-close-up',
  family: 'photos',
  title: 'A photo shows the stamp',
  failureTitle: 'No photo shows the stamp close up',
  kinds: ['gap'],
  basis: 'The stamp is what dates a piece; a buyer should see it and not only be told.',
  innocent: 'Many sellers do not know that the stamp matters.',
  settles: 'A sharp, close photo of the stamp.',
  source: practice,
  needs: { claims: ['made'], listing: ['photos'], decodings: true, photos: 'read', stampedFrom: true },
  run(facts) {
    const first = facts.stampedFrom ? periodSpan([facts.stampedFrom, null]) : null;
    const claims = facts.claims.made;
    if (first && claims.length > 0 && claims.every((claim) => daysBefore(claim.span, first) > 0))
      return { notApplicable: 'the maker did not yet stamp at the claimed time' };
    if (facts.decodings.some((decoding) => decoding.from.kind === 'photo')) return [];
    const shown = facts.photos.some((photo) => photo.state === 'read' && photo.lines.some(isStamp));
    if (shown) return [];
    if (!allReadClearly(facts.photos)) return { cannotTell: notReadWords(facts.photos) };
    const count = countWords(facts.photos.length, 'photo');
    return [{ kind: 'gap', statement: `None of the ${count} shows the stamp.`, asks: [commonAsks.stampPhoto] }];
  },
});

const isStamp = (line: { stampScore: number }) => line.stampScore >= looksLikeStamp;
