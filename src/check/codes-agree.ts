import type { Decoding } from '../code/types';
import { shownCode } from './codes';
import { practice } from './frame';
import { commonAsks, sentence } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

export const codesAgree = defineWritten({
  id: 'codes-agree',
  family: 'code',
  title: 'The code shown is the code quoted',
  failureTitle: 'The listing quotes another code than the photo shows',
  kinds: ['doubt', 'agreement'],
  basis:
    'A code that a listing quotes is meant to be the one on the piece. A piece may carry further marks, so this never contradicts.',
  innocent:
    'The seller may have mistyped a worn stamp, quoted another mark of the piece, or copied the text of an earlier listing.',
  settles: 'A sharp photo of the stamp, and the code as the seller reads it.',
  source: practice,
  needs: { claims: ['code'], decodings: true },
  run({ decodings, claims, photoWords }) {
    const quoted = decodings.filter(({ from }) => from.kind === 'claim');
    if (quoted.length === 0) return { notApplicable: 'the listing quotes no code' };
    const seen = decodings.filter(({ from, accepted }) => accepted && from.kind !== 'claim');
    const first = seen[0];
    if (!first) return { cannotTell: 'no code was read from a photo to compare with' };
    return quoted.flatMap((quote): WrittenSpeech[] => {
      const claimId = quote.from.kind === 'claim' ? quote.from.claimId : '';
      const words = claims.code.find(({ id }) => id === claimId)?.code ?? quote.code;
      const same = seen.find((decoding) => comparable(decoding) === comparable(quote));
      const shown = same ?? first;
      const photos = shown.from.kind === 'photo' ? [shown.from.photoId] : [];
      const where =
        shown.from.kind === 'photo' ? `the stamp in ${photoWords(shown.from.photoId)} reads` : 'the typed code is';
      const said = `${sentence(where)} ${shownCode(textOf(shown))}`;
      const common = { key: quote.id, photos, claims: [claimId] };
      return same
        ? [{ kind: 'agreement', statement: `${said}, as the listing quotes it.`, ...common }]
        : [
            {
              kind: 'doubt',
              statement: `${said}, but the listing quotes ${shownCode(words)}.`,
              ...common,
              asks: [commonAsks.stampPhoto],
            },
          ];
    });
  },
});

const textOf = (decoding: Decoding) => decoding.readings[0]?.text ?? decoding.code;
/** Texts without separators, and with look-alike characters settled by the system where one reads them. */
const comparable = (decoding: Decoding) =>
  textOf(decoding)
    .toUpperCase()
    .replace(/[^A-Z0-9]/g, '');
