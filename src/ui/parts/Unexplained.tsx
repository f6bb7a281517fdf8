import { type Difference, differencesBetween } from '../../code';
import type { Decoding, Nearest } from '../../code/types';
import { chosenLanguage, readingWords, sayPlaceOfCode, strings, systemWords } from '../../words';

const words = strings.stamp;

interface Props {
  decoding: Decoding;
  /** So many of each. */
  most: number;
  /** Whether a heading over it says already that nothing explains it. */
  isSaid?: boolean;
}

/** A code that counts as read and that no code system explains: what it lacks, and the codes near it. */
export function Unexplained({ decoding: { code, readings, misfits, nearest }, most, isSaid = false }: Props) {
  if (readings.length > 0) return null;
  // What any maker's code may look like misses nothing and has nothing near it; that it is a running number it tells.
  const misses = misfits.filter(({ system }) => system.maker !== null).slice(0, most);
  const near = nearest
    .map((one) => ({ ...one, difference: differencesBetween(code, one.text) }))
    .filter(({ system, difference }) => system.maker !== null || difference === null)
    .slice(0, most);
  const isExplained = near.some(({ system, difference }) => system.maker !== null && difference === null);
  return (
    <>
      {!isSaid && !isExplained && <p>{words.noSystem}</p>}
      <ul class="misfits">
        {misses.map(({ slot, value, expected, system }) => (
          <li key={`${system.id} ${slot} ${value}`}>
            {words.misfit(sayPlaceOfCode(slot, chosenLanguage()), value, expected)}
          </li>
        ))}
        {near.map((one) => (
          <li key={`${one.system.maker} ${one.system.id} ${one.text}`}>{nearWords(one)}</li>
        ))}
      </ul>
    </>
  );
}

/** A code near by; the same text is no other code: it fits a system, and its date is not certain enough. */
function nearWords({ text, difference, reading, system }: Nearest & { difference: readonly Difference[] | null }) {
  if (difference !== null) return words.nearest(text, difference, systemWords(system));
  const hasNoDate = system.maker === null && reading.span === null;
  return hasNoDate
    ? words.alone(words.families[system.id] ?? system.id)
    : words.barely(systemWords(system), readingWords(reading));
}
