import type { Claim } from '../claim/types';
import type { Price } from '../listing/types';
import { placeName } from '../place';
import { spanWords } from '../span';
import { sizeStatements } from './size-words';

/** An amount as the reader's own language writes it; without a settled currency the candidates are said. */
export function priceWords({ minor, minorTo, exponent, currency, currencies }: Price): string {
  const write = (amount: number) =>
    (amount / 10 ** exponent).toLocaleString(undefined, { minimumFractionDigits: exponent });
  const amount = minorTo === undefined ? write(minor) : `${write(minor)} – ${write(minorTo)}`;
  return `${amount} ${currency ?? currencies.join(' or ')}`.trim();
}

/** What a claim states, short, beside the words that it stands in. */
export function claimWords(claim: Claim): string {
  switch (claim.kind) {
    case 'made':
    case 'bought':
      return spanWords(claim.span);
    case 'condition':
      return claim.condition.replaceAll('-', ' ');
    case 'material':
      // "hardware: brass hardware" says its part twice.
      return claim.material.includes(claim.part) ? claim.material : `${claim.part}: ${claim.material}`;
    case 'replaced':
      return claim.parts.length > 0 ? claim.parts.map((part) => part.replace('-', ' ')).join(', ') : 'restored';
    case 'measure':
      return sizeStatements([claim])[0]?.[0] ?? '';
    case 'maker':
      return claim.maker;
    case 'model':
      return claim.model;
    case 'origin':
      return placeName(claim.place);
    case 'code':
      return claim.code;
    case 'no-code':
      return 'none';
    case 'price':
      return priceWords(claim.price);
    case 'sale-channel':
      return claim.channel.replaceAll('-', ' ');
    case 'payment-outside':
      return 'outside the marketplace';
    case 'returns':
      return claim.accepted ? 'accepted' : 'not accepted';
    case 'hedged-authorship':
      return 'hedged';
  }
}
