import type { Claim } from '../claim/types';
import type { Price } from '../listing/types';
import { kit, strings } from '../words';
import { sizeStatements } from './size-words';

/** An amount as the language of the screens writes it; without a settled currency the candidates are said. */
export function priceWords({ minor, minorTo, exponent, currency, currencies }: Price): string {
  const write = (amount: number) => kit.number(amount / 10 ** exponent, exponent);
  const amount = minorTo === undefined ? write(minor) : `${write(minor)} – ${write(minorTo)}`;
  return `${amount} ${currency ?? kit.either(currencies)}`.trim();
}

/** What a claim states, short, beside the words that it stands in. */
export function claimWords(claim: Claim): string {
  const { says } = strings.claims;
  const { parts } = strings;
  switch (claim.kind) {
    case 'made':
    case 'bought':
      return kit.span(claim.span);
    case 'condition':
      return says.conditions[claim.condition];
    case 'material':
      // "hardware: brass hardware" says its part twice.
      return claim.material.includes(claim.part) ? claim.material : says.ofPart(parts[claim.part], claim.material);
    case 'replaced':
      return claim.parts.length > 0 ? claim.parts.map((part) => parts[part]).join(', ') : says.restored;
    case 'measure':
      return sizeStatements([claim])[0]?.[0] ?? '';
    case 'maker':
      return claim.maker;
    case 'model':
      return claim.model;
    case 'origin':
      return kit.place(claim.place);
    case 'code':
      return claim.code;
    case 'no-code':
      return says.noCode;
    case 'price':
      return priceWords(claim.price);
    case 'sale-channel':
      return says.channels[claim.channel];
    case 'payment-outside':
      return says.paidOutside;
    case 'returns':
      return claim.accepted ? says.returned : says.notReturned;
    case 'hedged-authorship':
      return says.hedged;
    case 'hurry':
      return claim.words;
    case 'leather': {
      const { of, words, polarity } = claim;
      const about = of ? says.ofPart(parts[of], words) : words;
      return polarity === 'is' ? about : says.denied(kit.quote(about));
    }
    case 'grade-of-copy':
    case 'not-this-piece':
    case 'remade':
    case 'not-vouched':
    case 'packaging-only':
    case 'assurance':
    case 'wear':
    case 'metal':
    case 'fresh-part':
    case 'stored':
    case 'age-word':
      return claim.polarity === 'is' ? claim.words : says.denied(kit.quote(claim.words));
  }
}
