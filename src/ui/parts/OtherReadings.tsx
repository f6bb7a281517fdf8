import type { Reading } from '../../code/types';
import { strings } from '../../words';
import { ReadingTable } from './ReadingTable';

/** Further ways to read a code, one step behind it; in the open where none stands out before the others. */
export function OtherReadings({ readings, open = false }: { readings: readonly Reading[]; open?: boolean }) {
  if (readings.length === 0) return null;
  const tables = readings.map((reading) => (
    <ReadingTable key={`${reading.system.id} ${reading.text}`} reading={reading} />
  ));
  if (open) return <div>{tables}</div>;
  return (
    <details class="quiet">
      <summary>{strings.stamp.otherReadings(readings.length)}</summary>
      {tables}
    </details>
  );
}
