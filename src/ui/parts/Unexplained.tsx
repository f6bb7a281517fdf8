import { differencesBetween } from '../../code';
import type { Decoding } from '../../code/types';
import { chosenLanguage, readingWords, sayPlaceOfCode, strings, systemWords } from '../../words';

const words = strings.stamp;

/** A code that counts as read and that no code system explains: what it lacks, and the codes near it. */
export function Unexplained({
  decoding: { code, readings, misfits, nearest },
  most,
}: {
  decoding: Decoding;
  most: number;
}) {
  if (readings.length > 0) return null;
  const near = nearest.slice(0, most).map((one) => ({ ...one, difference: differencesBetween(code, one.text) }));
  // The same text is no other code: it fits a system, and its date is not certain enough.
  const same = near.filter(({ difference }) => difference === null);
  return (
    <>
      {same.length === 0 && <p>{words.noSystem}</p>}
      <ul class="misfits">
        {misfits.slice(0, most).map(({ slot, value, expected, system }) => (
          <li key={`${system.id} ${slot} ${value}`}>
            {words.misfit(sayPlaceOfCode(slot, chosenLanguage()), value, expected)}
          </li>
        ))}
        {near.map(({ text, difference, reading, system }) => (
          <li key={`${system.maker} ${system.id} ${text}`}>
            {difference === null
              ? words.barely(systemWords(system), readingWords(reading))
              : words.nearest(text, difference, systemWords(system))}
          </li>
        ))}
      </ul>
    </>
  );
}
