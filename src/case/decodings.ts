import type { Claim } from '../claim/types';
import { acceptanceLevel, decodeLine, decodeText, leftOpen, withMarksBeside } from '../code';
import type { Decoding } from '../code/types';
import type { MakerFile } from '../maker/types';
import { type PhotoRead, printedIn } from '../photo';
import { stampLinesOf, textsBeside } from '../stamp';
import { changesBetween, countsAsCode, isTooLong, mayBeCode } from './lines';
import { madeOnce } from './made-once';
import { orderReadings } from './order-readings';

interface Shown {
  photos: readonly PhotoRead[];
  claims: readonly Claim[];
  /** Codes by hand, each with its correction. */
  typed: readonly { id: string; code: string }[];
  /** The files that may judge the piece; without any, codes are read by their shape alone. */
  makers: readonly MakerFile[];
  maker: string | null;
  /** Names of makers, which are no codes where they are stamped. */
  names: readonly string[];
  now: string;
}

/** Every code of the piece: the best line of each photo, codes that the buyer typed, codes that the listing quotes. */
export function decodeAll(shown: Shown): Decoding[] {
  const { makers, maker, now } = shown;
  const typed = shown.typed.map(({ id, code }) =>
    decodeText(code, { makers, maker, now, id: `typed-${id}`, from: { kind: 'typed' } }),
  );
  const quoted = shown.claims.flatMap((claim) =>
    // One of two that the seller cannot tell apart is said, and stands for nothing.
    claim.kind === 'code' && !claim.oneOf
      ? [
          decodeText(claim.code, {
            makers,
            maker,
            now,
            id: `quoted-${claim.id}`,
            from: { kind: 'claim', claimId: claim.id },
          }),
        ]
      : [],
  );
  const all = [
    ...oneOfEachStamp(shown.photos.flatMap((photo) => bestOfPhoto(photo, makers, maker, shown.names, dayOf(now)))),
    ...typed,
    ...quoted,
  ];
  return all.map((decoding) => orderReadings(decoding, shown.claims));
}

/** A code is judged by the day on which it is seen, and not by the minute. */
const dayOf = (now: string): string => now.slice(0, 10);

/** The line of a photo that is most likely its code, decoded; none when no line counts as one. */
const bestOfPhoto = madeOnce(decodeBest);

function decodeBest(
  photo: PhotoRead,
  makers: Shown['makers'],
  maker: string | null,
  names: readonly string[],
  now: string,
): Decoding[] {
  const [lines, printed] = [stampLinesOf(photo), printedIn(photo)];
  const codes = lines
    .filter((line) => mayBeCode(line, names))
    .map((line) => {
      const from = { kind: 'photo', photoId: photo.photoId, lineId: line.id } as const;
      return {
        line,
        decoding: decodeLine(line, { makers, maker, now, id: line.id, from }, textsBeside(line, lines, printed)),
      };
    })
    .filter(({ line, decoding }) => countsAsCode(line, decoding))
    .map(({ line, decoding }) => ({
      line,
      decoding: isTooLong(line, decoding) ? leftOpen(decoding, { kind: 'too-long' }) : decoding,
    }))
    .sort((a, b) => rank(b.decoding) - rank(a.decoding) || b.line.stampScore - a.line.stampScore);
  return codes.slice(0, 1).map(({ line, decoding }) => {
    const others = lines.filter(({ id, free }) => id !== line.id && free.probability >= acceptanceLevel);
    return withMarksBeside(
      decoding,
      others.map(({ free }) => free.text),
      { makers, maker },
    );
  });
}

/** Whether a line is shown only so that the buyer may judge it: what it says is no code as far as can be told. */
export const isOnlyShown = ({ open = [] }: Decoding): boolean =>
  open.some(({ kind }) => kind === 'too-long' || kind === 'other-number');

const bestProbability = (decoding: Decoding) => decoding.readings[0]?.probability ?? 0;
const rank = (decoding: Decoding) =>
  isOnlyShown(decoding) ? -1 : (decoding.accepted ? 2 : 0) + bestProbability(decoding);
const textOf = (decoding: Decoding) => decoding.readings[0]?.text ?? decoding.code;

/** Texts that differ in no more characters than this are taken for one stamp read twice. */
const sameStamp = 2;

/**
 * The same code seen in several photos is one decoding, the surest. Two texts a character or two apart are one stamp
 * read twice: only the surer counts as read, for both cannot be right.
 */
function oneOfEachStamp(decodings: Decoding[]): Decoding[] {
  const kept: Decoding[] = [];
  for (const decoding of [...decodings].sort((a, b) => rank(b) - rank(a))) {
    const alike = kept.find((other) => other.accepted && changesBetween(textOf(other), textOf(decoding)) <= sameStamp);
    if (!alike) kept.push(decoding);
    else if (decoding.accepted && textOf(alike) !== textOf(decoding)) kept.push({ ...decoding, accepted: false });
  }
  return kept;
}
