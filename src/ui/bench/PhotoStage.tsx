import type { RefObject } from 'preact';
import type { HandMark, Where } from '../../photo';
import { strings } from '../../words';
import { Overlay } from '../overlay/Overlay';
import type { PhotoOnScreen } from '../overlay/on-screen';
import type { Light } from './BenchTools';
import { markWords } from './mark-words';
import { placed, whereOf, withinAt } from './new-mark';
import type { MeasuredMark } from './use-marks';
import type { Stage } from './use-stage';
import { type Size, toPhoto, toStage, type View } from './view';

interface Props {
  file: string;
  alt: string;
  photo: Size;
  stage: Stage;
  room: RefObject<HTMLElement | null>;
  light: Light;
  marks: readonly MeasuredMark[];
  chosen: number | null;
  onChoose: (number: number) => void;
  onMove: (mark: HandMark) => void;
  onRest: () => void;
}

/** The photo at any size and turn, with every mark on it; the chosen one has its handles. */
export function PhotoStage(props: Props) {
  const { file, alt, photo, stage, room, light, marks, chosen } = props;
  const { view, size, handlers } = stage;
  const screen = onScreen(view, size, photo);
  const within = withinAt(view.zoom, photo);
  return (
    <section
      class="bench-stage"
      ref={room}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: arrow keys move the photo
      tabIndex={0}
      aria-label={strings.bench.stage}
      {...handlers}
    >
      <img
        class="bench-photo"
        src={file}
        alt={alt}
        draggable={false}
        width={photo.width}
        height={photo.height}
        style={{
          transform: transformOf(view),
          filter: `brightness(${light.brightness}) contrast(${light.contrast})`,
          imageRendering: view.zoom > 3 ? 'pixelated' : 'auto',
        }}
      />
      {marks.map(({ mark }) => (
        <MarkOverlay
          key={mark.number}
          mark={mark}
          screen={screen}
          isChosen={mark.number === chosen}
          onChoose={props.onChoose}
          onMove={(where) => props.onMove(placed(mark, where.points, within))}
          onRest={props.onRest}
        />
      ))}
    </section>
  );
}

interface MarkProps {
  mark: HandMark;
  screen: PhotoOnScreen;
  isChosen: boolean;
  onChoose: (number: number) => void;
  onMove: (where: Where) => void;
  onRest: () => void;
}

const MarkOverlay = ({ mark, screen, isChosen, onChoose, onMove, onRest }: MarkProps) => (
  <Overlay
    where={whereOf(mark)}
    label={markWords(mark)}
    number={mark.number}
    screen={screen}
    {...(isChosen ? { onMove, onRest } : { onChoose: () => onChoose(mark.number) })}
  />
);

const transformOf = ({ x, y, turn, zoom }: View): string =>
  `translate(${x}px, ${y}px) rotate(${turn}deg) scale(${zoom})`;

/** How the photo lies in its stage; an arrow key moves a handle by one of its pixels, with Shift by ten. */
function onScreen(view: View, size: Size, photo: Size): PhotoOnScreen {
  const pixel = { across: view.zoom / size.width, down: view.zoom / size.height };
  return {
    toScreen: ({ x, y }) => {
      const at = toStage(view, { x: x * photo.width, y: y * photo.height });
      return { x: at.x / size.width, y: at.y / size.height };
    },
    toPhoto: ({ x, y }) => {
      const at = toPhoto(view, { x: x * size.width, y: y * size.height });
      return { x: at.x / photo.width, y: at.y / photo.height };
    },
    step: pixel,
    stride: { across: pixel.across * 10, down: pixel.down * 10 },
  };
}
