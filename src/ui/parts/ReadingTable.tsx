import type { Reading } from '../../code/types';
import { kit, strings } from '../../words';
import { readingWords, systemWords } from '../system-words';

/** What one reading of a code says, and slot by slot why. */
export function ReadingTable({ reading }: { reading: Reading }) {
  return (
    <div class="reading">
      <p class="reading-says">
        {readingWords(reading)} <span class="muted">{strings.stamp.reading(systemWords(reading.system))}</span>
      </p>
      <Sources reading={reading} />
      <table>
        <thead class="visually-hidden">
          <tr>
            <th scope="col">{strings.stamp.characters}</th>
            <th scope="col">{strings.stamp.slot}</th>
            <th scope="col">{strings.stamp.says}</th>
          </tr>
        </thead>
        <tbody>
          {reading.parts.map((part) => (
            <tr key={part.start}>
              <td class="code">{part.text}</td>
              <td class="muted">{part.slot}</td>
              <td>{part.slot === 'plant' && reading.plant ? kit.place(reading.plant.place) : part.says}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** Where the maker file has the system and the plant from, each once. */
function Sources({ reading: { system, plant } }: { reading: Reading }) {
  const sources = [...new Set([system.source, plant?.source].filter((source) => source !== undefined))];
  if (sources.length === 0) return null;
  return <p class="muted hint reading-source">{`${strings.findings.source}: ${sources.join('; ')}`}</p>;
}
