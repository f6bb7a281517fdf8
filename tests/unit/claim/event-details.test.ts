import { expect, it } from 'vitest';
import { findClaims } from '../../../src/claim';
import { listingOf } from './listing-of';

/** What is said of each repair: its year, who did it, and whether there is a paper of it. */
const repairs = (text: string) =>
  findClaims(listingOf('', text), []).flatMap((claim) =>
    claim.kind === 'replaced'
      ? [[claim.span?.from?.slice(0, 4), claim.by, claim.invoice && 'paper'].filter(Boolean).join(' ')]
      : [],
  );

it.each<[string, string[]]>([
  ['The strap was replaced in 2018.', ['2018']],
  ['In 2018 the strap was replaced.', ['2018']],
  ['The strap was replaced (2018).', ['2018']],
  ['The strap was replaced, 2018.', ['']],
  ['The strap was replaced by a cobbler, 2018.', ['2018 craftsman']],
  ['The strap was replaced by a cobbler in 2018, with invoice.', ['2018 craftsman paper']],
  ['The strap was replaced by a cobbler in 2018, invoice lost.', ['2018 craftsman']],
  ['The strap was replaced by a cobbler in 2018, without invoice.', ['2018 craftsman']],
  ['The strap was replaced. With invoice, by a cobbler in 2018.', ['']],
  ['Bought in 1994, strap replaced.', ['']],
  ['Strap replaced, bought in 1994.', ['']],
  ['Strap replaced, bought in 1994 from a cobbler with invoice.', ['']],
  ['The strap was replaced in 2018 and the zip was replaced in 2020.', ['2018', '2020']],
  [
    'The zip was replaced in 2020 by a cobbler, the strap was replaced in 2018 by me.',
    ['2020 craftsman', '2018 seller'],
  ],
])('%s', (text, said) => expect(repairs(text)).toEqual(said));
