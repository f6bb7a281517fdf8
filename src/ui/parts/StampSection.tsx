import { type Case, type Correction, nameWithin, photoMeant } from '../../case';
import type { Decoding } from '../../code/types';
import type { PhotoView } from '../../message/protocol';
import { strings } from '../../words';
import { copyWords } from '../copies';
import { groupBy } from '../group-by';
import { useFocusKept } from '../use-focus-kept';
import type { ByHand } from './by-hand';
import { DecodingCard } from './DecodingCard';
import { TypeCode } from './TypeCode';

interface Props {
  kase: Case;
  pictureOfLine: (photoId: string, lineId: string) => string | null;
  byHand?: ByHand | undefined;
}

/** The heart: every code of the case, where it was seen, and what it says. The same code in two places stands once. */
export function StampSection({ kase, pictureOfLine, byHand }: Props) {
  const room = useFocusKept<HTMLElement>('#typed-code');
  const read = groupBy(
    kase.decodings.filter(({ accepted }) => accepted),
    ({ code, readings }) => readings[0]?.text ?? code,
  );
  const unclear = kase.decodings.filter(({ accepted }) => !accepted);
  const fromPhotos = kase.decodings.some(({ from }) => from.kind === 'photo');
  const card = (decodings: Decoding[]) => {
    const [first] = decodings;
    const lines = decodings.flatMap(({ from }) => (from.kind === 'photo' ? [from] : []));
    const typed = kase.corrections.filter(({ id }) => decodings.some((one) => one.id === `typed-${id}`));
    return (
      first && (
        <DecodingCard
          key={first.id}
          decoding={first}
          picture={lines[0] ? pictureOfLine(lines[0].photoId, lines[0].lineId) : null}
          pictureLabel={lines[0] ? strings.stamp.pictureOf(numberOf(kase, lines[0].photoId)) : ''}
          where={[...new Set(decodings.map((one) => whereWords(kase, one)))].join(' · ')}
          onRemove={typed.length > 0 ? byHand && (() => undoAll(typed, byHand)) : undefined}
          onStrike={lines.length > 0 ? byHand && (() => strikeAll(kase, lines, byHand)) : undefined}
        />
      )
    );
  };
  return (
    <section aria-labelledby="stamp-title" ref={room}>
      <h2 id="stamp-title">{strings.stamp.title}</h2>
      {!fromPhotos && <p class="muted">{kase.photos.length === 0 ? strings.stamp.waiting : strings.stamp.none}</p>}
      {read.map(([, decodings]) => card(decodings))}
      {read.length === 0 && unclear.map((decoding) => card([decoding]))}
      {read.length > 0 && unclear.length > 0 && (
        <details class="quiet">
          <summary>{strings.stamp.unclear(unclear.length)}</summary>
          {unclear.map((decoding) => card([decoding]))}
        </details>
      )}
      {byHand && <TypeCode onType={byHand.type} />}
      {kase.maker !== null && (
        <p class="muted hint">
          {strings.makerFile(kase.maker)}
          {kase.makerInvented && ` ${strings.demoMaker}`}
        </p>
      )}
    </section>
  );
}

function undoAll(corrections: readonly Correction[], { undo }: ByHand): void {
  for (const { id } of corrections) undo(id);
}

/** These lines are no code of the piece. */
function strikeAll(kase: Case, lines: readonly { photoId: string; lineId: string }[], { correct }: ByHand): void {
  for (const { photoId, lineId } of lines) {
    const read = kase.photos.find((one) => one.photoId === photoId);
    const photo = photoMeant(kase.listing, photoId, read);
    const line = read?.state === 'read' && read.observations.find(({ id }) => id === lineId);
    if (!photo || !line) continue;
    const target = { name: nameWithin(photoId, line), what: line.what, was: line.value };
    correct({ of: 'seen', photo, target, to: null });
  }
}

const numberOf = (kase: Case, photoId: string) => kase.listing.photos.findIndex(({ id }) => id === photoId) + 1;

function whereWords(kase: Case, { from }: Decoding): string {
  if (from.kind === 'photo') {
    const photo = kase.photos.find(({ photoId }) => photoId === from.photoId);
    return strings.stamp.inPhoto(numberOf(kase, from.photoId), copyWords(photo));
  }
  return from.kind === 'claim' ? strings.stamp.inListing : strings.stamp.typed;
}

/** The cut-out of one line among what the reader gave. */
export const cropOf = (views: Record<string, PhotoView>) => (photoId: string, lineId: string) =>
  views[photoId]?.crops.find((crop) => crop.lineId === lineId)?.picture ?? null;
