import type { MarkOnPhoto } from '../../case';
import type { MeasuredPhoto } from '../../watch';
import { strings } from '../../words';
import { Measures } from '../bench/Measures';
import { markWords } from '../bench/mark-words';
import { whereOf } from '../bench/new-mark';
import { Overlay } from '../overlay/Overlay';

/** A photo's marks, drawn on it with their numbers. They share the element of its picture. */
export const MarkDrawings = ({ marks }: { marks: readonly MarkOnPhoto[] }) => (
  <>
    {marks.map(({ mark }) => (
      <Overlay key={mark.number} where={whereOf(mark)} label={markWords(mark)} number={mark.number} />
    ))}
  </>
);

/** What the buyer measured on a photo, mark by mark. */
export const MeasuredHere = ({ marks }: { marks: readonly MarkOnPhoto[] }) =>
  marks.length === 0 ? null : (
    <section class="measured-here" aria-label={strings.bench.byYou}>
      <h4>{strings.bench.byYou}</h4>
      <ol class="mark-sheets">
        {marks.map(({ mark, measured }) => (
          <li key={mark.number} class="mark-sheet" data-mark={mark.number}>
            <strong>{markWords(mark)}</strong>
            <Measures measured={measured} />
          </li>
        ))}
      </ol>
    </section>
  );

/** Photos of a kept case with their marks, each on the small picture that was kept of it. */
export const MeasuredPhotos = ({ measured }: { measured: readonly MeasuredPhoto[] }) => (
  <>
    {measured.map(({ photo, picture, marks }) => (
      <section key={photo} aria-label={strings.bench.photo(photo)}>
        <h3>{strings.bench.photo(photo)}</h3>
        {picture && (
          <div class="on-photo">
            <img src={picture} alt={strings.bench.drawing(photo)} />
            <MarkDrawings marks={marks} />
          </div>
        )}
        <MeasuredHere marks={marks} />
      </section>
    ))}
    <p class="muted">{strings.bench.judges}</p>
  </>
);
