import type { TechniquePage } from './reading';
import { asideTruths, pageHtml, truths } from './score';
import { data } from './techniques/data';
import { edges } from './techniques/edges';
import { factsEdges } from './techniques/facts-edges';
import { kinds } from './techniques/kinds';
import { looks } from './techniques/looks';
import { moreEdges } from './techniques/more-edges';
import { notations } from './techniques/notations';
import { photoEdges } from './techniques/photo-edges';
import { photos } from './techniques/photos';
import { prices } from './techniques/prices';
import { state } from './techniques/state';
import { textEdges } from './techniques/text-edges';
import { which } from './techniques/which';
import { words } from './techniques/words';

/** Every page whose reading is kept, by the file of its reading: saved pages, and small pages by technique. */
export const corpus: Record<string, Record<string, TechniquePage>> = {
  saved: Object.fromEntries(
    Object.entries({ ...truths, ...asideTruths }).map(([name, { url }]) => [name, { html: pageHtml(name), url }]),
  ),
  data,
  edges,
  'more-edges': moreEdges,
  looks,
  notations,
  photos,
  'photo-edges': photoEdges,
  prices,
  which,
  kinds,
  state,
  words,
  'text-edges': textEdges,
  'facts-edges': factsEdges,
};
