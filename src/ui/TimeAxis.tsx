import { useId } from 'preact/hooks';
import { type AxisBar, type AxisLayout, type AxisRow, type Evidence, layOutAxis, type Reasoning } from '../evidence';
import { strings } from './strings';
import { AxisTable, TimeAxisTable } from './TimeAxisTable';

const words = strings.axis;
/** Heights in CSS pixels; widths are shares of whatever room there is. */
const rowHeight = 34;
const barHeight = 10;
const labelBaseline = 13;
const barTop = 19;
const headHeight = 22;
const longestLabel = 44;
/** More single facts that would each explain everything say only that two stand against each other. */
const mostExplanations = 2;
/** More bars than this would bury the ones that matter; the table holds them all. */
const mostRows = 30;

const percent = (share: number) => `${(share * 100).toFixed(2)}%`;
/** A single day would be narrower than a pixel on a long axis. */
const leastShare = 0.012;

interface Props {
  evidence: readonly Evidence[];
  reasoning: Reasoning;
  /** On paper nothing opens: the table stands below the drawing instead of behind it. */
  tableShown?: boolean;
}

/**
 * All that dates the piece on one time axis. Hard statements are full bars, soft ones hatched with a broken outline, so
 * that they are told apart without colour; the stretch on which most facts agree is a band behind the bars. The
 * drawing is one image to a screen reader; the table behind it says everything and is reached by keyboard.
 */
export function TimeAxis({ evidence, reasoning, tableShown = false }: Props) {
  const layout = layOutAxis(evidence, reasoning);
  if (!layout) return null;
  const { agreeing } = layout;
  const agreed = agreeing.facts > 1 ? words.agreed(agreeing.facts, agreeing.sides, agreeing.more) : words.noneAgree;
  return (
    <section class="time-axis" aria-labelledby="time-axis-title">
      <h2 id="time-axis-title">{words.title}</h2>
      <p class="time-axis-agreed">{agreed}</p>
      {reasoning.explanations.slice(0, mostExplanations).map(({ basis, statement }) => (
        <p key={basis} class="time-axis-explained">
          {statement}.
        </p>
      ))}
      <Drawing layout={layout} agreed={agreed} />
      {layout.rows.length > mostRows ? <p>{words.moreRows(layout.rows.length - mostRows)}</p> : null}
      <Legend />
      {tableShown ? <AxisTable layout={layout} /> : <TimeAxisTable layout={layout} />}
    </section>
  );
}

function Drawing({ layout, agreed }: { layout: AxisLayout; agreed: string }) {
  const hatch = useId();
  const { ticks, years, agreeing } = layout;
  const rows = layout.rows.slice(0, mostRows);
  const height = headHeight + rows.length * rowHeight + 4;
  return (
    <svg
      class="time-axis-chart"
      role="img"
      aria-label={words.chart(years[0], years[1], agreed)}
      width="100%"
      height={height}
    >
      <Hatch id={hatch} />
      {agreeing.bars.map((bar) => (
        <Band key={bar.start} bar={bar} height={height} />
      ))}
      {ticks.map(({ year, at }) => (
        <g key={year}>
          <line class="time-axis-tick" x1={percent(at)} x2={percent(at)} y1={headHeight - 4} y2={height} />
          <text class="time-axis-year" x={percent(at)} y={14} dx={3}>
            {year}
          </text>
        </g>
      ))}
      {rows.map((row, at) => (
        <Row key={row.evidence[0]} row={row} y={headHeight + at * rowHeight} hatch={hatch} />
      ))}
    </svg>
  );
}

const Hatch = ({ id }: { id: string }) => (
  <defs>
    <pattern id={id} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="time-axis-hatch" x1="1" x2="1" y1="0" y2="5" />
    </pattern>
  </defs>
);

const Band = ({ bar, height }: { bar: AxisBar; height: number }) => {
  const width = Math.max(leastShare, bar.end - bar.start);
  const start = Math.min(bar.start, 1 - width);
  return (
    <g class="time-axis-band">
      <rect x={percent(start)} y={headHeight - 4} width={percent(width)} height={height - headHeight + 4} />
      <line x1={percent(start)} x2={percent(start)} y1={headHeight - 4} y2={height} />
      <line x1={percent(start + width)} x2={percent(start + width)} y1={headHeight - 4} y2={height} />
    </g>
  );
};

const shorten = (text: string) => (text.length > longestLabel ? `${text.slice(0, longestLabel - 1).trimEnd()}…` : text);

/** The part stands for its kind: four rows called "Construction" would tell nothing apart. */
const rowName = ({ kind, about }: AxisRow) =>
  about ? `${about.charAt(0).toUpperCase()}${about.slice(1)}` : words.kinds[kind];

function Row({ row, y, hatch }: { row: AxisRow; y: number; hatch: string }) {
  // Several marks may stand on one piece: only the statement says which one a row is.
  const label = row.kind === 'mark' ? row.statement : `${rowName(row)}: ${row.words}`;
  return (
    <g class={`time-axis-row time-axis-${row.strength}`} data-evidence={row.evidence.join(' ')}>
      <title>{row.statement}</title>
      <text class="time-axis-label" x={0} y={y + labelBaseline}>
        {shorten(label)}
      </text>
      {row.bars.map((bar) => (
        <Bar key={bar.start} bar={bar} y={y + barTop} fill={row.strength === 'hard' ? null : hatch} />
      ))}
      {row.beyond.map((side) => (
        <Arrow key={side} side={side === 'before' ? 'left' : 'right'} y={y + barTop} />
      ))}
    </g>
  );
}

function Bar({ bar, y, fill }: { bar: AxisBar; y: number; fill: string | null }) {
  const width = Math.max(leastShare, bar.end - bar.start);
  return (
    <>
      <rect
        class="time-axis-bar"
        x={percent(Math.min(bar.start, 1 - width))}
        y={y}
        width={percent(width)}
        height={barHeight}
        {...(fill ? { fill: `url(#${fill})`, 'stroke-dasharray': '4 2' } : {})}
      />
      {bar.opensLeft ? <Arrow side="left" y={y} /> : null}
      {bar.opensRight ? <Arrow side="right" y={y} /> : null}
    </>
  );
}

/** A point at the edge of the axis: the dates run on beyond it. Drawn in a box of its own that sits at the edge. */
const Arrow = ({ side, y }: { side: 'left' | 'right'; y: number }) => (
  <svg class="time-axis-arrow" x={side === 'left' ? '0%' : '100%'} y={y} overflow="visible" aria-hidden="true">
    <path
      d={
        side === 'left'
          ? `M8 -1 L0 ${barHeight / 2} L8 ${barHeight + 1} Z`
          : `M-8 -1 L0 ${barHeight / 2} L-8 ${barHeight + 1} Z`
      }
    />
  </svg>
);

function Legend() {
  const hatch = useId();
  return (
    <ul class="time-axis-legend">
      <li>
        <svg width="28" height="12" aria-hidden="true" class="time-axis-hard">
          <rect class="time-axis-bar" x="1" y="1" width="26" height={barHeight} />
        </svg>
        {words.hard}
      </li>
      <li>
        <svg width="28" height="12" aria-hidden="true" class="time-axis-soft">
          <Hatch id={hatch} />
          <rect
            class="time-axis-bar"
            x="1"
            y="1"
            width="26"
            height={barHeight}
            fill={`url(#${hatch})`}
            stroke-dasharray="4 2"
          />
        </svg>
        {words.softMeans}
      </li>
      <li>
        <svg width="28" height="12" aria-hidden="true" class="time-axis-band">
          <rect x="4" y="0" width="20" height="12" />
          <line x1="4" x2="4" y1="0" y2="12" />
          <line x1="24" x2="24" y1="0" y2="12" />
        </svg>
        {words.stretch}
      </li>
    </ul>
  );
}
