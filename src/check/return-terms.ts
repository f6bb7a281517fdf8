import { isDataTerm } from '../claim';
import { commonAsks, quote } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

export const returnTerms = defineWritten({
  id: 'return-terms',
  family: 'seller',
  title: 'Returns are accepted',
  failureTitle: 'No return terms, or no returns',
  kinds: ['gap', 'agreement'],
  basis: 'Check refund and return rules before paying.',
  innocent: 'The marketplace may set the terms for all sellers, and private sellers often take no returns.',
  settles: 'The return terms in writing before paying.',
  source: {
    kind: 'published',
    text: 'US FTC consumer alert, November 2021, consumer.ftc.gov (stored copy of a reprint)',
  },
  needs: { listing: ['returns'], claims: ['returns'] },
  run({ listing, claims }) {
    const field = listing.returns[0]?.value;
    const claim = claims.returns[0];
    const said = field ?? claim;
    const ids = claim && !field ? [claim.id] : [];
    if (!said) {
      const statement = 'The listing states no return terms.';
      return [{ kind: 'gap', statement, asks: [commonAsks.returns] }];
    }
    const days = field?.days ? ` within ${field.days} days` : '';
    const speech: WrittenSpeech = said.accepted
      ? {
          kind: 'agreement',
          statement: `The listing accepts returns${days}${said.words && !isDataTerm(said.words) ? `: ${quote(said.words)}` : ''}.`,
          claims: ids,
        }
      : {
          kind: 'gap',
          statement: `The listing takes no returns${isDataTerm(said.words) ? '' : `: ${quote(said.words)}`}.`,
          claims: ids,
          asks: [commonAsks.returns],
        };
    return [speech];
  },
});
