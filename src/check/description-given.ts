import { practice } from './frame';
import { askFact } from './wording';
import { defineWritten } from './written';

/** A description of fewer characters says little. Common practice, no source. */
const shortest = 40;

export const descriptionGiven = defineWritten({
  id: 'description-given',
  family: 'text',
  title: 'The listing describes the piece',
  failureTitle: 'The listing hardly describes the piece',
  kinds: ['gap'],
  basis: 'What the listing says in writing is what a piece can be held against when it comes.',
  innocent: 'The seller may let the photos speak.',
  settles: 'Maker, age, material, size and condition in writing.',
  source: practice,
  needs: { listing: ['description', 'text'] },
  run({ listing }) {
    const words = listing.description[0]?.value.trim() ?? '';
    if (words.length >= shortest) return [];
    const said = words === '' ? 'has no description' : `describes the piece in ${words.length} characters`;
    const ask = askFact('description', 'Could you describe its maker, age, material, size and condition in writing?');
    return [{ kind: 'gap', statement: `The listing ${said}.`, asks: [ask] }];
  },
});
