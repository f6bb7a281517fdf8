import { useEffect, useState } from 'preact/hooks';
import { type Case, marksOnPhoto } from '../../case';
import type { HandMark } from '../../photo';
import { strings } from '../../words';
import { numberOf } from '../number-of';
import { Slider } from './BenchTools';
import { isStraightened } from './new-mark';
import { Straightened } from './Straightened';
import type { Size } from './view';

/** The address inside this document of another photo of the case, by its id; null while there is none. */
export type UseFileOf = (photoId: string | null) => string | null;

interface Props {
  kase: Case;
  photoId: string;
  file: string;
  size: Size;
  /** By which four corners this photo is straightened; the other by a mark of the same kind where it has one. */
  mark: HandMark | null;
  useFileOf: UseFileOf;
}

const most = { width: 480, height: 480 };
/** Milliseconds between two pictures that blink: slower than three flashes a second (WCAG 2.2, 2.3.1). */
const blinkMs = 700;

/** This photo beside another of the case, or the other laid over it; both as their marks with four corners straighten them. */
export function SideBySide({ kase, photoId, file, size, mark, useFileOf }: Props) {
  const words = strings.bench;
  const [other, setOther] = useState<string | null>(null);
  const [over, setOver] = useState(0);
  const [blinks, setBlinks] = useState(false);
  const isOver = useBlink(blinks);
  const otherFile = useFileOf(other);
  const otherSize = useSizeOf(otherFile);
  const others = other === null ? [] : marksOnPhoto(kase, other).map((one) => one.mark);
  const otherMark = others.find(({ kind }) => kind === mark?.kind) ?? others.find(isStraightened) ?? null;
  const nameOf = (id: string) => words.photo(numberOf(kase, id));
  const share = blinks ? Number(isOver) : over;
  const isLaidOver = blinks || over > 0;
  if (kase.listing.photos.length < 2) return null;
  return (
    <details class="quiet bench-beside">
      <summary>{words.beside}</summary>
      <label class="field">
        <span>{words.other}</span>
        <select value={other ?? ''} onChange={({ currentTarget }) => setOther(currentTarget.value || null)}>
          <option value="">{words.noOther}</option>
          {kase.listing.photos.map(
            ({ id }) =>
              id !== photoId && (
                <option key={id} value={id}>
                  {nameOf(id)}
                </option>
              ),
          )}
        </select>
      </label>
      {other !== null && otherFile !== null && otherSize !== null && (
        <>
          <p class="muted hint">{words.besideNote}</p>
          <div class={isLaidOver ? 'bench-pair over' : 'bench-pair'}>
            <figure>
              <Straightened file={file} photo={size} mark={mark} most={most} label={nameOf(photoId)} />
              <figcaption class="muted">{isLaidOver ? '' : nameOf(photoId)}</figcaption>
            </figure>
            <figure>
              <Straightened
                file={otherFile}
                photo={otherSize}
                mark={otherMark}
                most={most}
                as={isLaidOver ? { photo: size, mark } : undefined}
                opacity={isLaidOver ? share : 1}
                label={nameOf(other)}
              />
              <figcaption class="muted">{isLaidOver ? '' : nameOf(other)}</figcaption>
            </figure>
          </div>
          <Slider name={words.over} least={0} most={1} step={0.05} value={over} onValue={setOver} />
          <button type="button" class="small" aria-pressed={blinks} onClick={() => setBlinks(!blinks)}>
            {words.blink}
          </button>
        </>
      )}
    </details>
  );
}

function useBlink(blinks: boolean): boolean {
  const [isOver, setOver] = useState(false);
  useEffect(() => {
    if (!blinks) return;
    const timer = setInterval(() => setOver((one) => !one), blinkMs);
    return () => clearInterval(timer);
  }, [blinks]);
  return isOver;
}

/** A picture's size, once the browser knows it. */
function useSizeOf(file: string | null): Size | null {
  const [known, setKnown] = useState<{ file: string; size: Size } | null>(null);
  useEffect(() => {
    if (file === null) return;
    let current = true;
    const picture = new Image();
    picture.src = file;
    picture.decode().then(
      () => current && setKnown({ file, size: { width: picture.naturalWidth, height: picture.naturalHeight } }),
      () => undefined,
    );
    return () => {
      current = false;
    };
  }, [file]);
  return known !== null && known.file === file ? known.size : null;
}
