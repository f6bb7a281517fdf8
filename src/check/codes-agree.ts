import * as z from 'zod';
import type { Decoding } from '../code/types';
import { bareCode, evidenceId, textsLeftOpen } from '../evidence';
import { askFor } from './asks';
import { shownCodeSchema, shownFrom } from './code-data';
import { defineCheck, practice } from './frame';
import { pairKind } from './pairs';
import { because } from './reasons';

export const codesAgree = defineCheck({
  id: 'codes-agree',
  family: 'code',
  kinds: ['doubt', 'agreement'],
  source: practice,
  data: z.strictObject({ shown: shownCodeSchema, quoted: z.string() }),
  needs: { claims: ['code'], decodings: true, pairs: true },
  run({ decodings, claims, pairOf, photoNumber }) {
    const quoted = decodings.filter(({ from }) => from.kind === 'claim');
    if (quoted.length === 0) return { notApplicable: because('no-code-quoted', {}) };
    const seen = decodings.filter(({ from, accepted }) => accepted && from.kind !== 'claim');
    const first = seen[0];
    if (!first) return { cannotTell: because('no-code-to-compare', {}) };
    return quoted.map((quote) => {
      const claimId = quote.from.kind === 'claim' ? quote.from.claimId : '';
      const words = claims.code.find(({ id }) => id === claimId)?.code ?? quote.code;
      const kindOf = ({ id }: Decoding) =>
        pairKind(pairOf('codes', evidenceId.codeText(id), evidenceId.codeText(quote.id)));
      const same = seen.find((decoding) => kindOf(decoding) === 'agreement');
      const shown = same ?? first;
      const photos = shown.from.kind === 'photo' ? [shown.from.photoId] : [];
      const data = { shown: shownFrom(shown, textBeside(shown, quote), photoNumber), quoted: words };
      const evidence = [evidenceId.codeText(shown.id), evidenceId.codeText(quote.id)];
      const common = { key: quote.id, data, photos, claims: [claimId], evidence };
      return same
        ? { kind: 'agreement' as const, ...common }
        : { kind: 'doubt' as const, ...common, asks: [askFor('stamp-photo', {})] };
    });
  },
});

/** What is shown, where characters of it are left open as the quote has them if it may be that. */
function textBeside({ readings, code, open = [] }: Decoding, quote: Decoding): string {
  const text = readings[0]?.text ?? code;
  if (readings.length > 0) return text;
  return textsLeftOpen(code, open).find((one) => bareCode(one) === bareCode(quote.code)) ?? text;
}
