import type { Reading } from '../../code/types';
import { readingWords, strings, systemWords } from '../../words';
import { CodeRows } from './CodeRows';

/** What one reading of a code says, and which characters say it. */
export function ReadingTable({ reading }: { reading: Reading }) {
  return (
    <div class="reading">
      <p class="reading-says">
        {readingWords(reading)} <span class="muted">{strings.stamp.reading(systemWords(reading.system))}</span>
      </p>
      <Sources reading={reading} />
      <CodeRows reading={reading} />
    </div>
  );
}

/** Where the maker file has the system and the plant from, each once. */
function Sources({ reading: { system, plant } }: { reading: Reading }) {
  const sources = [...new Set([system.source, plant?.source].filter((source) => source !== undefined))];
  if (sources.length === 0) return null;
  return <p class="muted hint reading-source">{`${strings.findings.source}: ${sources.join('; ')}`}</p>;
}
