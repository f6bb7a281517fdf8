import { useEffect, useRef, useState } from 'preact/hooks';
import type { Case } from '../../case';
import { type HandMark, type MarkKind, markKinds } from '../../photo';
import { kit, strings } from '../../words';
import { numberOf } from '../number-of';
import type { ByHand } from '../parts/by-hand';
import { ProblemNote } from '../parts/ProblemNote';
import { Keys, plainLight, ViewTools } from './BenchTools';
import { MarkSheet } from './MarkSheet';
import { firstPoints, isStraightened, nextNumber, placed, withinAt } from './new-mark';
import { PhotoStage } from './PhotoStage';
import { SideBySide, type UseFileOf } from './SideBySide';
import { Straightened } from './Straightened';
import { useMarks } from './use-marks';
import { useRelief } from './use-relief';
import { useStage } from './use-stage';
import { type Size, toPhoto } from './view';

interface Props {
  kase: Case;
  photoId: string;
  /** The photo's bytes, and their address inside this document. */
  photo: Blob;
  file: string;
  size: Size;
  byHand: ByHand;
  useFileOf: UseFileOf;
}

const sideMost = { width: 320, height: 320 };

/** One photo at its own pixels, with everything that a hand marks and measures on it. */
export function Bench({ kase, photoId, photo, file, size, byHand, useFileOf }: Props) {
  const words = strings.bench;
  const room = useRef<HTMLElement>(null);
  const sheets = useRef<HTMLHeadingElement>(null);
  const stage = useStage(room, size);
  const { marks, problem, ...hand } = useMarks(kase, photoId, byHand, photo);
  const [chosen, setChosen] = useState<number | null>(null);
  const [light, setLight] = useState(plainLight);
  const relief = useRelief(photo);
  const shown = relief.file ?? file;
  const number = numberOf(kase, photoId);
  const current = marks.find(({ mark }) => mark.number === chosen)?.mark ?? null;
  const straight = current && isStraightened(current) ? current : null;

  const isNew = useRef<number | null>(null);
  // The keyboard goes to the new mark's first handle, from which it is laid.
  useEffect(() => {
    if (isNew.current === null || isNew.current !== chosen) return;
    const handle = room.current?.querySelector<HTMLElement>('.handle');
    if (!handle) return;
    isNew.current = null;
    handle.focus({ preventScroll: true });
  }, [chosen, marks.length]);

  const add = (kind: MarkKind) => {
    const { view } = stage;
    const points = firstPoints(kind, marks.length, stage.size).map(({ x, y }) => {
      const at = toPhoto(view, { x: x * stage.size.width, y: y * stage.size.height });
      return { x: at.x / size.width, y: at.y / size.height };
    });
    const made: HandMark = {
      number: nextNumber(marks.map(({ mark }) => mark)),
      kind,
      points: [],
      within: 0,
      mm: null,
      name: '',
    };
    isNew.current = made.number;
    hand.add(placed(made, points, withinAt(view.zoom, size)));
    setChosen(made.number);
  };
  const remove = (which: number) => {
    hand.remove(which);
    if (which === chosen) setChosen(null);
    sheets.current?.focus();
  };

  return (
    <section
      class="bench"
      aria-label={words.photo(number)}
      onKeyDown={(event) => {
        if (event.key === 'Escape' && chosen !== null) {
          setChosen(null);
          room.current?.focus({ preventScroll: true });
        }
        const isUndo = event.key.toLowerCase() === 'z' && (event.ctrlKey || event.metaKey) && !event.shiftKey;
        if (!isUndo || !hand.undo || event.target instanceof HTMLInputElement) return;
        event.preventDefault();
        hand.undo();
      }}
    >
      <div class="bench-columns">
        <div class="bench-photo-side">
          <fieldset class="bench-add">
            <legend>{words.add}</legend>
            {markKinds.map((kind) => (
              <button key={kind} type="button" class="small" data-kind={kind} onClick={() => add(kind)}>
                {words.kinds[kind]}
              </button>
            ))}
          </fieldset>
          <PhotoStage
            file={shown}
            alt={words.photo(number)}
            photo={size}
            stage={stage}
            room={room}
            light={light}
            marks={marks}
            chosen={chosen}
            onChoose={setChosen}
            onMove={hand.move}
            onRest={hand.rest}
          />
          <ViewTools stage={stage} light={light} onLight={setLight} relief={relief} />
          {straight && (
            <figure class="bench-straight">
              <Straightened
                file={shown}
                photo={size}
                mark={straight}
                most={sideMost}
                label={words.straight(straight.number)}
              />
              <figcaption class="muted">{words.straight(straight.number)}</figcaption>
            </figure>
          )}
          <SideBySide
            kase={kase}
            photoId={photoId}
            file={shown}
            size={size}
            mark={straight ?? marks.map(({ mark }) => mark).find(isStraightened) ?? null}
            useFileOf={useFileOf}
          />
        </div>
        <div class="bench-marks-side">
          <section aria-labelledby="bench-marks-title">
            <div class="row">
              <h2 id="bench-marks-title" tabIndex={-1} ref={sheets}>
                {words.marks}
              </h2>
              <button type="button" class="small" disabled={!hand.undo} onClick={() => hand.undo?.()}>
                {words.undo}
              </button>
            </div>
            {problem && <ProblemNote problem={problem} />}
            {marks.length === 0 && <p class="muted">{words.none}</p>}
            <ol class="mark-sheets">
              {marks.map((one) => (
                <MarkSheet
                  key={one.mark.number}
                  kase={kase}
                  one={one}
                  isChosen={one.mark.number === chosen}
                  onChoose={() => setChosen(one.mark.number === chosen ? null : one.mark.number)}
                  onChange={(mark) => {
                    hand.move(mark);
                    hand.rest();
                  }}
                  onRemove={() => remove(one.mark.number)}
                />
              ))}
            </ol>
            {marks.length > 0 && <p class="muted hint">{words.judges}</p>}
          </section>
          <p class="muted hint">{words.size(kit.number(size.width), kit.number(size.height))}</p>
          <Keys />
        </div>
      </div>
    </section>
  );
}
