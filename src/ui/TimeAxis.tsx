import { useId } from 'preact/hooks';
import {
  type AxisBar,
  type AxisLayout,
  type AxisRow,
  type Evidence,
  isDating,
  layOutAxis,
  type Reasoning,
} from '../evidence';
import { chosenLanguage, kit, sayDates, sayExplanation, sayStated, sayStretch, strings } from '../words';
import { Fold } from './parts/Fold';
import { AxisTable, TimeAxisTable } from './TimeAxisTable';

const words = strings.axis;
/** Heights in CSS pixels; widths are shares of whatever room there is, and words stand outside the drawing. */
const trackHeight = 14;
const barHeight = 10;
const barTop = 2;
const longestLabel = 80;
/** More single facts that would each explain everything say only that two stand against each other. */
const mostExplanations = 2;
/** More bars than this would bury the ones that matter; the table holds them all. */
const mostRows = 30;

const percent = (share: number) => `${(share * 100).toFixed(2)}%`;
/** A single day would be narrower than a pixel on a long axis. */
const leastShare = 0.012;

/** A year further right stands before its tick: with words of twice the size it would run out of the drawing. */
const lastLabelAt = 0.82;

interface Props {
  evidence: readonly Evidence[];
  reasoning: Reasoning;
  /** On paper nothing opens: the table stands below the drawing instead of behind it. */
  tableShown?: boolean;
  /** Behind a heading of its own, as a part that folds. */
  folded?: boolean;
}

/**
 * All that dates the piece on one time axis. Hard statements are full bars, soft ones hatched with a broken outline, so
 * that they are told apart without colour; the stretch on which most facts agree is a band behind the bars. The
 * drawing is one image to a screen reader; the table behind it says everything and is reached by keyboard.
 */
export function TimeAxis({ evidence, reasoning, tableShown = false, folded = false }: Props) {
  const layout = layOutAxis(evidence, reasoning);
  if (!layout) return null;
  const { agreeing } = layout;
  const language = chosenLanguage();
  const known = new Map(evidence.filter(isDating).map((piece) => [piece.id, piece]));
  const sides = agreeing.sides.map((side) => ({ by: side.by, on: sayStretch(side, language) }));
  const agreed = sides.length > 0 ? words.agreed(sides, agreeing.more) : words.noneAgree;
  const content = (
    <>
      <p class="time-axis-agreed">{agreed}</p>
      {reasoning.explanations.slice(0, mostExplanations).map((one) => {
        const first = known.get(one.evidence[0] ?? '');
        return first ? (
          <p key={one.basis} class="time-axis-explained">
            {sayExplanation(one, first, language)}.
          </p>
        ) : null;
      })}
      <Drawing layout={layout} agreed={agreed} />
      {layout.rows.length > mostRows ? <p>{words.moreRows(layout.rows.length - mostRows)}</p> : null}
      <Legend />
      {tableShown ? <AxisTable layout={layout} /> : <TimeAxisTable layout={layout} />}
    </>
  );
  if (folded)
    return (
      <Fold part="when" title={words.title} class="time-axis">
        {content}
      </Fold>
    );
  return (
    <section class="time-axis" aria-labelledby="time-axis-title">
      <h2 id="time-axis-title">{words.title}</h2>
      {content}
    </section>
  );
}

/** Each row is its words and, under them, a track of its own: nothing drawn crosses a word, whatever the font's size. */
function Drawing({ layout, agreed }: { layout: AxisLayout; agreed: string }) {
  const hatch = useId();
  const { ticks, years } = layout;
  return (
    <div class="time-axis-chart" role="img" aria-label={words.chart(years[0], years[1], agreed)}>
      <svg class="time-axis-years" width="100%" aria-hidden="true">
        <Hatch id={hatch} />
        {ticks.map(({ year, at }) => (
          <text
            key={year}
            class="time-axis-year"
            x={percent(at)}
            y="1em"
            dx={at > lastLabelAt ? -3 : 3}
            text-anchor={at > lastLabelAt ? 'end' : 'start'}
          >
            {year}
          </text>
        ))}
      </svg>
      {layout.rows.slice(0, mostRows).map((row) => (
        <Row key={row.evidence[0]} row={row} layout={layout} hatch={hatch} />
      ))}
    </div>
  );
}

const Hatch = ({ id }: { id: string }) => (
  <defs>
    <pattern id={id} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="time-axis-hatch" x1="1" x2="1" y1="0" y2="5" />
    </pattern>
  </defs>
);

const Band = ({ bar }: { bar: AxisBar }) => {
  const width = Math.max(leastShare, bar.end - bar.start);
  const start = Math.min(bar.start, 1 - width);
  return (
    <g class="time-axis-band">
      <rect x={percent(start)} y={0} width={percent(width)} height={trackHeight} />
      <line x1={percent(start)} x2={percent(start)} y1={0} y2={trackHeight} />
      <line x1={percent(start + width)} x2={percent(start + width)} y1={0} y2={trackHeight} />
    </g>
  );
};

const shorten = (text: string) => (text.length > longestLabel ? `${text.slice(0, longestLabel - 1).trimEnd()}…` : text);

/** The part stands for its kind: four rows called "Construction" would tell nothing apart. */
const rowName = ({ kind, about }: AxisRow) => kit.sentence(about ? words.about(about) : words.kinds[kind]);

function Row({ row, layout: { ticks, agreeing }, hatch }: { row: AxisRow; layout: AxisLayout; hatch: string }) {
  // Several marks may stand on one piece: only the statement says which one a row is.
  const statement = sayStated(row.stated, chosenLanguage());
  const label = row.kind === 'mark' ? statement : `${rowName(row)}: ${sayDates(row.stated.spans, kit)}`;
  return (
    <div class={`time-axis-row time-axis-${row.strength}`} data-evidence={row.evidence.join(' ')} title={statement}>
      <p class="time-axis-label">{shorten(label)}</p>
      <svg class="time-axis-track" width="100%" height={trackHeight} aria-hidden="true">
        {agreeing.bars.map((bar) => (
          <Band key={bar.start} bar={bar} />
        ))}
        {ticks.map(({ year, at }) => (
          <line key={year} class="time-axis-tick" x1={percent(at)} x2={percent(at)} y1={0} y2={trackHeight} />
        ))}
        {row.bars.map((bar) => (
          <Bar key={bar.start} bar={bar} fill={row.strength === 'hard' ? null : hatch} />
        ))}
        {row.beyond.map((side) => (
          <Arrow key={side} side={side === 'before' ? 'left' : 'right'} />
        ))}
      </svg>
    </div>
  );
}

function Bar({ bar, fill }: { bar: AxisBar; fill: string | null }) {
  const width = Math.max(leastShare, bar.end - bar.start);
  return (
    <>
      <rect
        class="time-axis-bar"
        x={percent(Math.min(bar.start, 1 - width))}
        y={barTop}
        width={percent(width)}
        height={barHeight}
        {...(fill ? { fill: `url(#${fill})`, 'stroke-dasharray': '4 2' } : {})}
      />
      {bar.opensLeft ? <Arrow side="left" /> : null}
      {bar.opensRight ? <Arrow side="right" /> : null}
    </>
  );
}

/** A point at the edge of the axis: the dates run on beyond it. Drawn in a box of its own that sits at the edge. */
const Arrow = ({ side }: { side: 'left' | 'right' }) => (
  <svg class="time-axis-arrow" x={side === 'left' ? '0%' : '100%'} y={barTop} overflow="visible" aria-hidden="true">
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
