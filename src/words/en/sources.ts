import type { SourceWords } from '../source-words';
import { systemName } from '../system-name';

export const sources: SourceWords = {
  memory: 'from memory, not verified',
  practice: 'common practice, no source',
  makerFile: (maker, invented) =>
    maker === null
      ? "the maker file's own statement and its sources"
      : `${invented ? 'invented ' : ''}maker file of ${maker}`,
  parts: {
    'code-systems': () => 'code systems',
    'code-system': ({ name }) => `code system ${systemName(name)}`,
    plants: () => 'workshops',
    plant: ({ name }) => `workshop ${name}`,
    years: ({ name }) => `years of ${name}`,
    model: ({ name }) => `model ${name}`,
    sizes: ({ names }) => `size of ${names.join(', ')}`,
    'new-price': ({ year }) => `smallest new price of ${year}`,
    price: ({ year }) => `price of ${year}`,
    sale: () => 'how it is sold',
  },
  itsSource: (sources) => ` (source: ${sources})`,
  listing: {
    title: "the listing's title",
    description: "the listing's description",
    text: "the listing's text",
    data: "the listing's data",
    reply: "the seller's reply",
    code: 'quoted in the listing',
    measures: "the listing's measures",
    price: "the listing's price",
  },
  photo: 'read from a photo',
  user: { code: 'typed by you', note: 'your own note' },
};
