import type { Observation, PhotoRead } from '../../photo';
import { kit, strings } from '../../words';

/** Everything that was seen or measured in a photo, one a row; told in full, for whoever wants to know. */
export function Measured({ read }: { read: PhotoRead }) {
  if (read.state === 'unread') return null;
  return (
    <details class="quiet">
      <summary>{strings.observed.title}</summary>
      <table class="claims">
        <tbody>
          {read.observations.map((seen) => (
            <tr key={seen.id}>
              <th scope="row">{nameOfSeen(seen.what)}</th>
              <td>
                {valueWords(seen)}
                {seen.by === 'hand' && <span class="muted"> {strings.observed.byHand}</span>}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}

/** A kind of observation that an older case kept, or a newer one, is called as it is written. */
export const nameOfSeen = (what: string): string =>
  (strings.observed.what as Readonly<Record<string, string | undefined>>)[what] ?? what;

function valueWords({ value, uncertainty, unit }: Observation): string {
  const words = strings.observed;
  if (value === null) return words.notMeasured;
  if (typeof value === 'boolean') return value ? words.yes : words.no;
  if (typeof value === 'string') return value;
  const inUnit = unit === null ? (text: string) => text : words.units[unit];
  if (!uncertainty) return inUnit(kit.number(value, decimals(value, 3)));
  const fine = decimals(uncertainty, 2);
  return inUnit(words.within(kit.number(value, fine), kit.number(uncertainty, fine)));
}

/** Decimals that show so many digits of a number, at most four. */
const decimals = (value: number, digits: number): number =>
  Math.min(4, Math.max(0, digits - 1 - Math.floor(Math.log10(Math.abs(value) || 1))));
