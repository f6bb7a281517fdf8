import { leastReferences, lettersCompared, letterWidths } from '../../photo';
import { kit, strings } from '../../words';
import { ColumnHeads } from '../parts/ColumnHeads';
import { Measures } from './Measures';
import type { MeasuredMark } from './use-marks';
import type { References } from './use-references';

const percent = (share: number) => kit.percent(share);
const span = (values: readonly number[]) =>
  strings.bench.letters.span(percent(Math.min(...values)), percent(Math.max(...values)));

interface Props {
  one: MeasuredMark;
  maker: string | null;
  references: References;
}

/** A measured line held against others of its maker, character by character. */
export function LettersHeld({ one: { mark, measured }, maker, references: { lines, typefaces } }: Props) {
  const words = strings.bench.letters;
  const own = measured && letterWidths(mark, measured);
  if (!own) return null;
  if (maker === null) return <p class="muted hint">{words.noMaker}</p>;
  const known = lines.flatMap((line) => {
    const widths = letterWidths(line.mark, line.measured);
    return widths ? [{ ...line, widths }] : [];
  });
  const { letters, references, apart } = lettersCompared(
    own,
    known.map(({ widths }) => widths),
  );
  return (
    <section class="letters-beside" aria-label={words.title(maker)}>
      <h3>{words.title(maker)}</h3>
      {apart ? (
        <p>{words.apart(span(apart.own), span(apart.among), references)}</p>
      ) : (
        <p>{words.few(references, leastReferences)}</p>
      )}
      {letters.length > 0 && (
        <table>
          <caption class="muted hint">{words.caption}</caption>
          <ColumnHeads names={[words.character, words.here, words.others]} />
          <tbody>
            {letters.map(({ letter, own: here, others }) => (
              <tr key={letter}>
                <th scope="row">{letter}</th>
                <td>{percent(here)}</td>
                <td>{span(others)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {known.length > 0 && (
        <details class="quiet">
          <summary>{words.lines(known.length)}</summary>
          <ul>
            {known.map((line) => (
              <li key={`${line.id} ${line.mark.number}`}>
                <a href={`watchlist.html#case=${encodeURIComponent(line.id)}`} target="_blank" rel="noreferrer">
                  {line.title}
                </a>
                {`: ${line.mark.name}`}
                <Measures measured={line.measured} />
              </li>
            ))}
          </ul>
        </details>
      )}
      {typefaces.map(({ looks, pictures }, at) => (
        <figure key={at}>
          {pictures.map(({ shows, pixels }) => (
            <img key={pixels} class="typeface-picture" src={pixels} alt={shows} />
          ))}
          <figcaption class="muted">
            {words.typeface(looks)}
            {pictures.map(({ pixels, source, licence }) => (
              <small key={pixels}>{`${source}, ${licence}`}</small>
            ))}
          </figcaption>
        </figure>
      ))}
    </section>
  );
}
