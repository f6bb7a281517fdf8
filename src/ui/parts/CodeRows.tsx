import type { Reading } from '../../code/types';
import { strings } from '../../words';
import { codeRows } from '../code-rows';

/** How a code is built: one row a meaning, its characters in their places and dots for the rest. */
export const CodeRows = ({ reading }: { reading: Reading }) => (
  <dl class="code-rows" aria-label={strings.answer.rows}>
    {codeRows(reading).map(({ key, characters, says }) => (
      <div key={key}>
        <dt class="code" aria-hidden="true">
          {characters}
        </dt>
        <dd>{says}</dd>
      </div>
    ))}
  </dl>
);
