import type { Claim, ClaimOf, EventDetails } from '../claim/types';
import { isSure } from '../evidence';
import type { Price } from '../listing/types';
import { kit, strings } from '../words';
import { sizeStatements } from './size-words';

/** More currencies than these say only that nobody can tell: a dollar may be any of thirty. */
const mostCurrencies = 3;

/** An amount as the language of the screens writes it; without a settled currency the few candidates are said. */
export function priceWords({ minor, minorTo, exponent, currency, currencies }: Price): string {
  const write = (amount: number) => kit.number(amount / 10 ** exponent, exponent);
  const amount = minorTo === undefined ? write(minor) : `${write(minor)} – ${write(minorTo)}`;
  if (currency === null && currencies.length > mostCurrencies) return strings.claims.says.currencyOpen(amount);
  return `${amount} ${currency ?? kit.either(currencies)}`.trim();
}

/** What a claim states, short, beside the words that it stands in. */
export function claimWords(claim: Claim): string {
  const { says } = strings.claims;
  const { parts } = strings;
  switch (claim.kind) {
    case 'made':
      return kit.span(claim.span);
    case 'bought':
      return eventWords(claim.how === 'gifted' ? says.event.gifted : '', claim);
    case 'condition':
      return says.conditions[claim.condition];
    case 'material':
      // "hardware: brass hardware" says its part twice.
      return claim.material.includes(claim.part) ? claim.material : says.ofPart(parts[claim.part], claim.material);
    case 'replaced':
      return eventWords(doneWords(claim), claim);
    case 'appraised':
      return eventWords('', claim);
    case 'measure':
      return sizeStatements([claim])[0]?.[0] ?? '';
    case 'maker':
      return claim.maker;
    case 'model':
      return isSure(claim) ? claim.model : says.unsure(claim.model);
    case 'origin':
      return kit.place(claim.place);
    case 'code':
      return claim.code;
    case 'no-code':
      return says.noCode;
    case 'price':
      return says.prices[claim.price.kind](priceWords(claim.price));
    case 'sale-channel':
      return says.channels[claim.channel];
    case 'payment-outside':
      return says.paidOutside;
    case 'returns':
      return claim.accepted ? says.returned : says.notReturned;
    case 'hedged-authorship':
      return says.hedged;
    case 'not-placed':
      return says.notPlaced[claim.of](kit.quote(claim.words));
    case 'hurry':
    case 'in-stock':
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
    case 'age-word':
      return claim.polarity === 'is' ? claim.words : says.denied(kit.quote(claim.words));
    case 'stored':
      return eventWords(claim.polarity === 'is' ? claim.words : says.denied(kit.quote(claim.words)), claim);
  }
}

function doneWords({ parts: ofParts, how }: ClaimOf<'replaced'>): string {
  const { event } = strings.claims.says;
  const done = how ?? 'replaced';
  return ofParts.length > 0
    ? event.done[done](kit.list(ofParts.map((part) => strings.parts[part])))
    : event.whole[done];
}

/** What was done, then when, by whom and with which paper, as far as it is said. */
function eventWords(done: string, { span, by, invoice, ...claim }: EventDetails & Pick<Claim, 'kind' | 'confidence'>) {
  const { event } = strings.claims.says;
  return [
    done,
    span && kit.span(span),
    by && event.by[by],
    invoice && event.invoice,
    claim.kind === 'replaced' && !isSure(claim) && event.unsure,
  ]
    .filter(Boolean)
    .join(', ');
}
