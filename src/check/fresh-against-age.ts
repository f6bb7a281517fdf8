import { dateOf } from './dated';
import { practice } from './frame';
import { saidOf } from './said-claims';
import { askPhoto, quote } from './wording';
import { defineWritten } from './written';

/** From this age on untreated leather has darkened and bright metal has dulled. Common practice, no source. */
const darkenedYears = 10;

export const freshAgainstAge = defineWritten({
  id: 'fresh-against-age',
  family: 'materials',
  title: 'What darkens and dulls with age has done so',
  failureTitle: 'Parts are said to be fresh that darken or dull with age',
  kinds: ['doubt'],
  basis: 'Untreated handle leather and red edge trim darken with the years, and brass dulls.',
  innocent: 'The piece may have lain in a cupboard, or the part been replaced.',
  settles: 'A photo of the handles, the trim and the rivets in daylight, and whether any was replaced.',
  source: practice,
  needs: {
    claims: ['made', 'fresh-part', 'stored', 'condition', 'replaced'],
    decodings: true,
    photos: 'any',
    now: true,
    makerName: true,
  },
  run(facts) {
    const { claims } = facts;
    const [fresh] = saidOf(claims['fresh-part']);
    if (!fresh) return { notApplicable: 'the listing calls no part of this kind fresh' };
    const dated = dateOf(facts, facts.makerName);
    if (!dated) return { cannotTell: 'neither a code nor the listing gives a date' };
    const year = Number(facts.now.slice(0, 4));
    const newest = Math.max(...dated.spans.map(({ to }) => (to ? Number(to.slice(0, 4)) : year)));
    if (year - newest < darkenedYears) return [];
    // Why something old may be fresh, as the seller tells it.
    const unused = claims.condition.some(({ condition }) => condition === 'new' || condition === 'unused');
    if (unused || claims.replaced.length > 0 || saidOf(claims.stored).length > 0) return [];
    const statement = `The listing says ${quote(fresh.words)}, but ${dated.words}: about ${year - newest} years of age.`;
    const ask = askPhoto(
      'aging',
      'Could you add a daylight photo of the handles, the trim and the rivets? Was any of them ever replaced?',
    );
    return [{ kind: 'doubt', statement, claims: [fresh.id, ...dated.claims], photos: dated.photos, asks: [ask] }];
  },
});
