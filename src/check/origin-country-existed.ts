import { roomDays } from '../evidence';
import { countryPeriod, placeName } from '../place';
import { spanWords } from '../span';
import { dateOf } from './dated';
import { daysApart } from './dates';
import { commonAsks, quote } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

export const originCountryExisted = defineWritten({
  id: 'origin-country-existed',
  family: 'place',
  title: 'The country named existed at the date',
  failureTitle: 'The country named did not exist at the date',
  kinds: ['contradiction', 'doubt', 'agreement'],
  basis: 'A piece is made in a country of its time.',
  innocent: 'Old labels were used up, and people use old or new names of a country by habit.',
  settles: 'A photo of the country wording on the piece itself.',
  source: {
    kind: 'published',
    text: 'ISO 3166-3:2020, codes of former countries, with the days on which they began and ended',
  },
  needs: { claims: ['made', 'origin'], decodings: true, photos: 'any', makerName: true },
  run(facts) {
    const { origin } = facts.claims;
    if (origin.length === 0) return { notApplicable: 'the listing names no country of making' };
    const dated = dateOf(facts, facts.makerName);
    if (!dated) return { cannotTell: 'neither a code nor the listing gives a date' };
    return origin.flatMap((claim): WrittenSpeech[] => {
      const period = countryPeriod(claim.place);
      if (!period) return [];
      const apart = Math.min(...dated.spans.map((span) => daysApart(span, period.span)));
      const former = claim.place.length === 4;
      const country = `${placeName(claim.place)} existed ${fromWords(spanWords(period.span))}`;
      const source = { kind: period.verified ? ('published' as const) : ('memory' as const), text: period.source };
      const common = {
        key: claim.id,
        claims: [claim.id, ...dated.claims],
        evidence: dated.evidence,
        photos: dated.photos,
        source,
      };
      if (apart === 0) {
        const statement = `The listing says ${quote(claim.words)}: ${country}, and ${dated.words}.`;
        return former ? [{ kind: 'agreement', statement, ...common }] : [];
      }
      const statement = `The listing says ${quote(claim.words)}, but ${country}, and ${dated.words}.`;
      const hard = period.verified && dated.hard && apart > roomDays.countryName && former;
      return [{ kind: hard ? 'contradiction' : 'doubt', statement, ...common, asks: [commonAsks.origin] }];
    });
  },
});

const fromWords = (period: string) => (/^(from|up to)/.test(period) ? period : `from ${period}`);
