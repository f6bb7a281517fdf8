import type { PhraseTable } from '../phrases';
import auction from './table/auction.json' with { type: 'json' };
import availability from './table/availability.json' with { type: 'json' };
import byWhom from './table/by-whom.json' with { type: 'json' };
import colour from './table/colour.json' with { type: 'json' };
import condition from './table/condition.json' with { type: 'json' };
import dimension from './table/dimension.json' with { type: 'json' };
import label from './table/label.json' with { type: 'json' };
import material from './table/material.json' with { type: 'json' };
import part from './table/part.json' with { type: 'json' };
import payment from './table/payment.json' with { type: 'json' };
import pieceLabel from './table/piece-label.json' with { type: 'json' };
import returns from './table/returns.json' with { type: 'json' };
import season from './table/season.json' with { type: 'json' };
import shipping from './table/shipping.json' with { type: 'json' };
import trader from './table/trader.json' with { type: 'json' };
import yearPart from './table/year-part.json' with { type: 'json' };
import type { Lexicon } from './topics';
import { wordsByValue } from './words-in';

/** Topics of several values (colours, parts, grades): each value has its words in every language, or it does not compile. */
export const tables = {
  auction,
  availability,
  'by-whom': byWhom,
  colour,
  condition,
  dimension,
  label,
  material,
  part,
  payment,
  'piece-label': pieceLabel,
  returns,
  season,
  shipping,
  trader,
  'year-part': yearPart,
} satisfies Record<string, Readonly<Record<string, Lexicon>>>;

export type Table = keyof typeof tables;

/** The words of a table by the value that they say, whatever the language. */
export const tableWords = <T extends Table>(name: T): PhraseTable<keyof (typeof tables)[T] & string> =>
  wordsByValue<string>(tables[name]) as unknown as PhraseTable<keyof (typeof tables)[T] & string>;
