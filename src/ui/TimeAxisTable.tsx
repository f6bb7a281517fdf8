import type { AxisLayout, AxisRow } from '../evidence';
import { chosenLanguage, kit, sayDates, saySource, sayStated, strings } from '../words';
import { ColumnHeads } from './parts/ColumnHeads';

const words = strings.axis;

/** Everything that the drawing shows, in words, one step behind it: for screen readers, and for whoever wants it exact. */
export const TimeAxisTable = ({ layout }: { layout: AxisLayout }) => (
  <details class="time-axis-behind">
    <summary>{words.table}</summary>
    <AxisTable layout={layout} />
  </details>
);

export const AxisTable = ({ layout }: { layout: AxisLayout }) => (
  <table class="time-axis-table">
    <ColumnHeads names={[words.statement, words.dates, words.stands]} />
    <tbody>
      {layout.rows.map((row) => (
        <TableRow key={row.evidence[0]} row={row} />
      ))}
    </tbody>
  </table>
);

const TableRow = ({ row }: { row: AxisRow }) => (
  <tr data-evidence={row.evidence.join(' ')}>
    <th scope="row">
      {sayStated(row.stated, chosenLanguage())}
      <small>{`${words.source}: ${saySource(row.source, chosenLanguage())}`}</small>
    </th>
    <td>
      {[sayDates(row.stated.spans, kit), ...row.stated.places.map((place) => kit.place(place))].join(', ')}
      {row.beyond.map((side) => ` (${words.beyond[side]})`).join('')}
    </td>
    <td>
      {row.strength === 'hard' ? words.hard : words.soft}
      {`; ${words.standing[row.stands]}`}
    </td>
  </tr>
);
