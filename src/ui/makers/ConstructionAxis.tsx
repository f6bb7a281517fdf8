import { strings } from '../../words';
import { type AxisFact, type AxisYears, axisFacts, axisYears } from './construction-rows';

const words = strings.makers.axis;

/** A part's name; in a file that is being written it may be any text. */
const partName = (part: string): string => Reflect.get(strings.parts, part) ?? part;

/**
 * The facts of construction as bars over the years, by part, so that a gap or an overlap is seen while it is written.
 * Hard facts are full bars, soft ones outlined and broken. Each bar's words are a button that leads to its fields.
 */
export function ConstructionAxis({ facts }: { facts: readonly unknown[] }) {
  const rows = axisFacts(facts);
  if (rows.length === 0) return null;
  const years = axisYears(rows);
  const parts = [...new Set(rows.map(({ part }) => part))];
  return (
    <section class="construction-axis" aria-labelledby="construction-axis-title">
      <h4 id="construction-axis-title">{words.title}</h4>
      <p class="hint">{words.legend}</p>
      <Ticks years={years} />
      {parts.map((part) => (
        <section key={part} aria-label={partName(part)}>
          <h5>{partName(part)}</h5>
          <ul>
            {rows
              .filter((row) => row.part === part)
              .map((row) => (
                <li key={row.at}>
                  <button type="button" class="link" onClick={() => showFields(row.at)}>
                    {row.is || words.unnamed}, {words.years(row.from, row.end === null ? null : row.end - 1)}
                  </button>
                  <Bar row={row} years={years} />
                </li>
              ))}
          </ul>
        </section>
      ))}
    </section>
  );
}

const share = (part: number, { first, last }: AxisYears) => `${((part / (last - first)) * 100).toFixed(2)}%`;

/** A year written to the right of its mark would be cut off there. */
const isNearEnd = (year: number, { first, last }: AxisYears) => (year - first) / (last - first) > 0.85;

const Ticks = ({ years }: { years: AxisYears }) => (
  <svg aria-hidden="true" width="100%" height="1.5em">
    {years.ticks.map((year) => (
      <g key={year}>
        <line x1={share(year - years.first, years)} x2={share(year - years.first, years)} y1="2" y2="1.5em" />
        <text
          x={share(year - years.first, years)}
          y="1.1em"
          dx={isNearEnd(year, years) ? -3 : 3}
          text-anchor={isNearEnd(year, years) ? 'end' : 'start'}
        >
          {year}
        </text>
      </g>
    ))}
  </svg>
);

/** The button's words say the same, so a screen reader is spared the drawing. */
const Bar = ({ row: { from, end, soft }, years }: { row: AxisFact; years: AxisYears }) => (
  <svg aria-hidden="true" width="100%" height="14">
    {years.ticks.map((year) => (
      <line key={year} x1={share(year - years.first, years)} x2={share(year - years.first, years)} y1="0" y2="14" />
    ))}
    <rect
      class={soft ? 'soft' : 'hard'}
      x={share(from - years.first, years)}
      y="3"
      width={share((end ?? years.last) - from, years)}
      height="8"
    />
  </svg>
);

function showFields(at: number): void {
  const entry = document.getElementById(`entries-construction-${at}`);
  entry?.scrollIntoView({ block: 'center' });
  entry?.querySelector<HTMLElement>('select, input')?.focus({ preventScroll: true });
}
