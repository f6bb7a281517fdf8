import { dateOf } from './dated';
import { practice } from './frame';
import { saidOf } from './said-claims';
import { commonAsks, quote } from './wording';
import { defineWritten } from './written';

/** Under this age marketplaces do not call a piece so. Common practice, no source. */
const leastYears = { vintage: 20, antique: 100 };

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
    claims: ['made', 'age-word'],
    decodings: true,
    photos: 'any',
    now: true,
    makerName: true,
  },
  run(facts) {
    const dated = dateOf(facts, facts.makerName);
    const said = saidOf(facts.claims['age-word']);
    const found = said.find(({ word }) => word === 'antique') ?? said[0];
    if (!found) return { notApplicable: 'the listing uses neither word' };
    if (!dated) return { cannotTell: 'neither a code nor the listing gives a date' };
    const year = Number(facts.now.slice(0, 4));
    const oldest = Math.min(...dated.spans.map(({ from }) => (from ? Number(from.slice(0, 4)) : 0)));
    const least = leastYears[found.word];
    if (year - oldest >= least) return [];
    const statement = `The listing says ${quote(found.words)}, which is at least ${least} years old, but ${dated.words}.`;
    return [
      {
        kind: 'doubt',
        statement,
        claims: [found.id, ...dated.claims],
        photos: dated.photos,
        asks: [commonAsks.madeDate],
      },
    ];
  },
});
