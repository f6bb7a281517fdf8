import { dateOf } from './dated';
import { practice } from './frame';
import { commonAsks, quote } from './wording';
import { firstWords, listingText } from './words';
import { defineWritten } from './written';

/** Under this age marketplaces do not call a piece vintage. Common practice, no source. */
const vintageYears = 20;
const antiqueYears = 100;

const ageWords: { least: number; words: Record<string, string[]> }[] = [
  {
    least: antiqueYears,
    words: {
      en: ['antique bag', 'genuine antique', 'a true antique', 'victorian', 'edwardian'],
      fr: ['sac antique', 'epoque victorienne'],
      de: ['antike tasche', 'echte antiquität'],
      it: ["borsa d'epoca vittoriana", 'borsa antica'],
      es: ['bolso antiguo victoriano', 'antigüedad auténtica'],
      nl: ['antieke tas', 'echt antiek'],
    },
  },
  {
    least: vintageYears,
    words: { en: ['vintage'], fr: ['vintage'], de: ['vintage'], it: ['vintage'], es: ['vintage'], nl: ['vintage'] },
  },
];

export const ageWordFits = defineWritten({
  id: 'age-word-fits',
  family: 'text',
  title: '“Vintage” or “antique” fits the date',
  failureTitle: '“Vintage” or “antique” does not fit the date',
  kinds: ['doubt'],
  basis: 'A piece is called vintage from about 20 years on, and antique from about 100.',
  innocent: 'Many sellers use “vintage” for anything that is not new.',
  settles: 'When it was made, and how that is known.',
  source: practice,
  needs: {
    claims: ['made'],
    listing: ['title', 'description', 'text'],
    decodings: true,
    photos: 'any',
    now: true,
    makerName: true,
  },
  run(facts) {
    const dated = dateOf(facts, facts.makerName);
    const text = listingText(facts.listing);
    const found = ageWords.flatMap(({ least, words }) => {
      const hit = firstWords(text, words);
      return hit ? [{ least, hit }] : [];
    })[0];
    if (!found) return { notApplicable: 'the listing uses neither word' };
    if (!dated) return { cannotTell: 'neither a code nor the listing gives a date' };
    const year = Number(facts.now.slice(0, 4));
    const oldest = Math.min(...dated.spans.map(({ from }) => (from ? Number(from.slice(0, 4)) : 0)));
    if (year - oldest >= found.least) return [];
    const statement = `The listing says ${quote(found.hit)}, which is at least ${found.least} years old, but ${dated.words}.`;
    return [{ kind: 'doubt', statement, claims: dated.claims, photos: dated.photos, asks: [commonAsks.madeDate] }];
  },
});
