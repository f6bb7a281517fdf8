import appraised from './lexicon/appraised.json' with { type: 'json' };
import bought from './lexicon/bought.json' with { type: 'json' };
import gifted from './lexicon/gifted.json' with { type: 'json' };
import heard from './lexicon/heard.json' with { type: 'json' };
import invoice from './lexicon/invoice.json' with { type: 'json' };
import negation from './lexicon/negation.json' with { type: 'json' };
import reDyed from './lexicon/re-dyed.json' with { type: 'json' };
import repairNoun from './lexicon/repair-noun.json' with { type: 'json' };
import replaced from './lexicon/replaced.json' with { type: 'json' };
import restored from './lexicon/restored.json' with { type: 'json' };
import supposed from './lexicon/supposed.json' with { type: 'json' };
import season from './lexicon/table/season.json' with { type: 'json' };
import yearPart from './lexicon/table/year-part.json' with { type: 'json' };
import { wordsByValue, wordsIn } from './lexicon/words-in';
import { phraseFinder } from './phrases';

/*
 * What people write beside the known date of a piece. Each list comes from its own file: the teacher's worker, a script
 * of its own, carries these and not the whole lexicon once more.
 */

/** What befalls a piece that is there already: a sale, a gift, a repair. */
export const befalls = phraseFinder({
  befalls: wordsIn(bought, gifted, invoice, restored, reDyed, replaced, repairNoun, appraised),
});
export const supposes = phraseFinder({ supposes: wordsIn(supposed, heard) });
export const denies = phraseFinder({ denies: wordsIn(negation) });

export const seasonWords = wordsByValue(season);
export const yearPartWords = wordsByValue(yearPart);
