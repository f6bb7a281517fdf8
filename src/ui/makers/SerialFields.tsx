import type { FieldPath } from '../../maker';
import { strings } from '../../words';
import { Entries } from './Entries';
import type { Editing } from './editing';
import { FieldProblems, NumberField, PeriodField, TickField } from './fields';
import { tableFaults } from './serial-gaps';

const words = strings.makers.slot;

/** A running number: how many digits it has, and which numbers were made when. */
export function SerialFields({ edit, path }: { edit: Editing; path: FieldPath }) {
  const serial = edit.at([...path, 'serial']);
  const table: FieldPath = [...path, 'table'];
  const width = (typeof serial === 'number' ? { min: serial, max: serial } : serial) as Record<string, unknown>;
  const bound = (end: 'min' | 'max', label: string) => (
    <NumberField
      edit={edit}
      path={[...path, 'serial', end]}
      label={label}
      value={width?.[end]}
      onNumber={(value) => edit.set([...path, 'serial'], { ...width, [end]: value }, true)}
    />
  );
  return (
    <>
      <div class="fields">
        {bound('min', words.least)}
        {bound('max', words.most)}
        <TickField edit={edit} path={[...path, 'reversed']} label={words.reversed} />
      </div>
      <FieldProblems edit={edit} path={[...path, 'serial']} />
      <Entries
        edit={edit}
        list={table}
        title={words.ranges}
        add={words.addRange}
        fresh={() => ({ first: nextNumber(edit.list(table)), last: null, made: ['1990', null] })}
        nameOf={(_, index) => words.range(index + 1)}
        level={4}
      >
        {(row, _, index) => (
          <>
            <div class="fields">
              <NumberField edit={edit} path={[...row, 'first']} label={words.firstNumber} />
              <NumberField
                edit={edit}
                path={[...row, 'last']}
                label={words.lastNumber}
                hint={words.openEnd}
                empty={null}
              />
              <PeriodField edit={edit} path={[...row, 'made']} label={words.made} words={strings.makers.period} />
            </div>
            {tableFaults(edit.list(table))
              .filter((fault) => fault.row === index)
              .map(({ kind, first, last }) => (
                <p key={kind + first} class="hint" role="status">
                  {words[kind](first, Number.isFinite(last) ? last : null)}
                </p>
              ))}
          </>
        )}
      </Entries>
    </>
  );
}

/** The number after the highest one of the table, where the next range is likely to begin. */
function nextNumber(table: readonly unknown[]): number {
  const ends = table.flatMap((row) => {
    const { first, last } = (row ?? {}) as { first?: unknown; last?: unknown };
    return [first, last].filter((end) => typeof end === 'number');
  });
  return ends.length === 0 ? 1 : Math.max(...ends) + 1;
}
