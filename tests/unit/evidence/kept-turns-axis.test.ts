import { expect, it } from 'vitest';
import { type Evidence, layOutAxis, reason } from '../../../src/evidence';
import { type Span, yearSpan, yearsSpan } from '../../../src/span';
import { turnsOf } from '../../turning';
import { coded, piece } from './samples';
import { shown } from './stands';

/*
 * What the axis shows as years move apart, and what is still looked at of very many pieces. Where it changes on purpose, `npm test -- unit/evidence/kept --update` writes it
 * anew.
 */

it('years far from the others, and how many, on the axis', async () => {
  const axis = (evidence: Evidence[]) => {
    const laid = layOutAxis(evidence, reason(evidence));
    const rows = laid?.rows.map(({ beyond, bars, stands }) => `${bars.length} ${beyond.join('')} ${stands}`).join(', ');
    return `${laid?.ticks.length} ticks ${laid && laid.ticks.length > 1 ? laid.ticks[1]!.year - laid.ticks[0]!.year : ''} apart; ${rows}; sides ${laid?.agreeing.sides.length} and ${laid?.agreeing.more}`;
  };
  const far = (from: number, to: number | null, more = {}) =>
    piece(`e${from}`, { spans: [yearsSpan(from, to)], ...more });
  const years = (evidence: Evidence[]) => layOutAxis(evidence, reason(evidence))?.years.join('–');
  const turns = {
    'a soft year after a hard one': turnsOf(
      2020,
      (year) => axis([far(1990, 1990), far(year, year, { strength: 'soft' })]),
      1960,
    ),
    'an open year after a hard one': turnsOf(2020, (year) => axis([far(1990, 1990), far(year, null)]), 1960),
    'a third year, at either end': turnsOf(
      2004,
      (year) =>
        axis([
          far(1990, 1990),
          far(1980, 1980, { strength: 'soft' }),
          far(2000, 2000, { strength: 'soft' }),
          far(year, year, { id: 'x', basis: 'x', strength: 'soft' }),
        ]),
      1976,
    ),
    'a long span': turnsOf(140, (length) => axis([far(1850, 1850 + length)])),
    'the years of it': turnsOf(140, (length) => `${years([far(1850, 1850 + length)])}`, 0, 7),
    'very early and very late': [1, 2, 5, 20, 9990, 9997, 9998].map((year) => `${year} ${years([far(year, year)])}`),
    'as many sides as years': turnsOf(6, (count) =>
      axis(
        Array.from({ length: count }, (_, at) => [
          piece(`a${at}`, { spans: [yearSpan(1990 + at * 2)], says: { kind: 'made', field: 'title', words: '' } }),
          coded(`b${at}`, { spans: [yearSpan(1990 + at * 2)] }),
        ]).flat(),
      ),
    ),
  };
  await expect(shown(turns)).toMatchFileSnapshot('./kept/turns-axis.txt');
});

it('more pieces than are looked at', async () => {
  const apart = (count: number, spans: (at: number) => Span[], places: (at: number) => string[] = () => []) => {
    const { conflicts, conflictsComplete, agreeing, agrees } = reason(
      Array.from({ length: count }, (_, at) => piece(`e${at}`, { spans: spans(at), places: places(at) })),
    );
    return `${agrees} ${conflicts.length} conflicts ${conflictsComplete}, ${agreeing.length} agreeing, of ${[...new Set(conflicts.map(({ evidence }) => evidence.length))].join()}`;
  };
  const turns = {
    'each in a year of its own': turnsOf(66, (count) => apart(count, (at) => [yearSpan(1900 + at)]), 58),
    'three that only together leave nothing': [197, 198, 199].map((more) =>
      apart(more + 3, (at) =>
        at < 3
          ? [0, 1, 2].filter((one) => one !== at).map((one) => yearSpan(1900 + one))
          : at % 2
            ? [yearsSpan(1900, 1902)]
            : [],
      ),
    ),
  };
  // Twelve cells, each left out by two pieces of its own: more conflicts of twelve than are looked for.
  const cells = Array.from({ length: 12 }, (_, at) => yearSpan(1900 + at));
  const outer = [yearsSpan(null, 1899), yearsSpan(1912, null)];
  const without = (some: (at: number) => boolean) => cells.filter((_, at) => !some(at));
  const large = (more: number) => [
    piece('out', { spans: cells }),
    ...cells.flatMap((_, cell) =>
      ['a', 'b'].map((letter) => piece(`${letter}${cell}`, { spans: [...outer, ...without((at) => at === cell)] })),
    ),
    ...[0, 1].map((half) => piece(`half${half}`, { spans: [...outer, ...without((at) => at % 2 === half)] })),
    ...Array.from({ length: more }, (_, at) =>
      piece(`any${at}`, { spans: [yearsSpan(null, 1950 + at), yearsSpan(1950 + at, null)] }),
    ),
  ];
  const triples = turnsOf(
    176,
    (more) => {
      const { conflicts, conflictsComplete } = reason(large(more));
      return `${conflictsComplete} ${conflicts.filter(({ evidence }) => evidence.length === 3).length} of three`;
    },
    170,
  );
  await expect(shown({ ...turns, 'three of so many': triples })).toMatchFileSnapshot('./kept/turns-many.txt');
});
