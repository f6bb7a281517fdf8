import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import { answerOf, type Case, type Correction, nameWithin, otherPieces, photoMeant, stampIsOn } from '../../case';
import type { Decoding } from '../../code/types';
import type { PhotoView } from '../../message/protocol';
import { strings } from '../../words';
import { copyWords } from '../copies';
import { groupBy } from '../group-by';
import { numberOf } from '../number-of';
import { useFocusKept } from '../use-focus-kept';
import { Answer } from './Answer';
import type { ByHand } from './by-hand';
import { DecodingCard } from './DecodingCard';
import { LeftOpenOf } from './LeftOpenOf';
import { OtherReadings } from './OtherReadings';
import { TypeCode } from './TypeCode';
import { Unexplained } from './Unexplained';

/** More ways in which a code fits nothing would bury it. */
const mostTold = 3;

interface Props {
  kase: Case;
  pictureOfLine: (photoId: string, lineId: string) => string | null;
  isReading?: boolean | undefined;
  byHand?: ByHand | undefined;
  onLook?: ((photoId: string) => void) | undefined;
  /** What is offered to see more of the stamp, where the screen can. */
  offers?: ComponentChildren;
}

/**
 * The heart: the answer over the stamp's picture, what is left open of it, and its correction in place; behind it other
 * ways to read it, and every other code of the case. The same code in two places stands once.
 */
export function StampSection({ kase, pictureOfLine, isReading, byHand, onLook, offers }: Props) {
  const room = useFocusKept<HTMLDivElement>('.type-code input');
  const answer = answerOf(kase);
  const { stamp } = answer;
  const first = 'decoding' in stamp ? stamp.decoding : null;
  // Once it stands open it stays so: what is being typed is never folded away.
  const asksForHand = useRef(false);
  if (!isReading && ['none', 'unopened', 'unsure'].includes(stamp.kind)) asksForHand.current = true;
  return (
    <div class="stamp-section" ref={room}>
      <Answer kase={kase} answer={answer} pictureOfLine={pictureOfLine} isReading={isReading ?? false}>
        {first && <LeftOpenOf decoding={first} />}
        {stamp.kind === 'unexplained' && <Unexplained decoding={stamp.decoding} most={mostTold} isSaid />}
        {stamp.kind === 'reads' && <OtherReadings readings={stamp.decoding.readings.slice(1)} />}
        {first && byHand && <RemoveTyped kase={kase} decoding={first} byHand={byHand} />}
        {offers}
        {(byHand || (onLook && first)) && (
          <details class="quiet correct" open={asksForHand.current}>
            <summary>{strings.answer.correct}</summary>
            {byHand && <TypeCode onType={byHand.type} />}
            <div class="row">
              {onLook && first && <LookCloser kase={kase} decoding={first} onLook={onLook} />}
              {first && byHand && <NoCode kase={kase} decoding={first} byHand={byHand} />}
              {first && byHand && <OnOther kase={kase} decoding={first} byHand={byHand} />}
            </div>
          </details>
        )}
      </Answer>
      <OtherCodes
        kase={kase}
        first={stamp.kind === 'several' ? null : first}
        pictureOfLine={pictureOfLine}
        byHand={byHand}
      />
    </div>
  );
}

interface OfFirst {
  kase: Case;
  decoding: Decoding;
  byHand: ByHand;
}

function RemoveTyped({ kase, decoding, byHand }: OfFirst) {
  const typed = typedOf(kase, [decoding]);
  if (typed.length === 0) return null;
  return (
    <button type="button" class="small" onClick={() => undoAll(typed, byHand)}>
      {strings.stamp.remove(decoding.code)}
    </button>
  );
}

/** What was read in a photo is no code of the piece. */
function NoCode({ kase, decoding: { from }, byHand }: OfFirst) {
  if (from.kind !== 'photo') return null;
  return (
    <button type="button" class="small" onClick={() => strikeAll(kase, [from], byHand)}>
      {strings.byHand.noCode}
    </button>
  );
}

/** With several pieces on offer: the stamp is not on the one that is looked at. */
function OnOther({ kase, decoding: { from }, byHand }: OfFirst) {
  if (from.kind !== 'photo') return null;
  const read = kase.photos.find(({ photoId }) => photoId === from.photoId);
  const photo = photoMeant(kase.listing, from.photoId, read);
  if (photo === null) return null;
  return otherPieces(kase).map((piece) => (
    <button key={piece} type="button" class="small" onClick={() => byHand.correct(stampIsOn(photo, piece))}>
      {strings.answer.lot.stampIsOn(piece)}
    </button>
  ));
}

function LookCloser({
  kase,
  decoding: { from },
  onLook,
}: {
  kase: Case;
  decoding: Decoding;
  onLook: (id: string) => void;
}) {
  if (from.kind !== 'photo') return null;
  return (
    <button type="button" class="small" onClick={() => onLook(from.photoId)}>
      {strings.answer.closer(numberOf(kase, from.photoId))}
    </button>
  );
}

interface OthersProps extends Pick<Props, 'kase' | 'pictureOfLine' | 'byHand'> {
  first: Decoding | null;
}

/** Every code but the one that the answer speaks of. */
function OtherCodes({ kase, first, pictureOfLine, byHand }: OthersProps) {
  const textOf = ({ code, readings }: Decoding) => readings[0]?.text ?? code;
  const accepted = groupBy(
    kase.decodings.filter((one) => one.accepted && !(first?.accepted && textOf(one) === textOf(first))),
    textOf,
  );
  const unclear = kase.decodings.filter((one) => !one.accepted && one !== first);
  if (accepted.length + unclear.length === 0) return null;
  const card = (decodings: Decoding[]) => {
    const [one] = decodings;
    const lines = decodings.flatMap(({ from }) => (from.kind === 'photo' ? [from] : []));
    const typed = typedOf(kase, decodings);
    return (
      one && (
        <DecodingCard
          key={one.id}
          decoding={one}
          picture={lines[0] ? pictureOfLine(lines[0].photoId, lines[0].lineId) : null}
          pictureLabel={lines[0] ? strings.stamp.pictureOf(numberOf(kase, lines[0].photoId)) : ''}
          where={[...new Set(decodings.map((each) => whereWords(kase, each)))].join(' · ')}
          onRemove={typed.length > 0 ? byHand && (() => undoAll(typed, byHand)) : undefined}
          onStrike={lines.length > 0 ? byHand && (() => strikeAll(kase, lines, byHand)) : undefined}
        />
      )
    );
  };
  return (
    <>
      {accepted.map(([, decodings]) => card(decodings))}
      {unclear.length > 0 && (
        <details class="quiet">
          <summary>{strings.stamp.unclear(unclear.length)}</summary>
          {unclear.map((decoding) => card([decoding]))}
        </details>
      )}
    </>
  );
}

/** The corrections by which a hand gave these codes. */
const typedOf = (kase: Case, decodings: readonly Decoding[]): Correction[] =>
  kase.corrections.filter(({ id }) => decodings.some((one) => one.id === `typed-${id}`));

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
