import { describe, expect, it } from 'vitest';
import { takeHtml } from '../../take-pages/score';
import { compact } from './compact';

const row = (cells: readonly string[], tag = 'td') =>
  `<tr>${cells.map((text) => `<${tag}>${text}</${tag}>`).join('')}</tr>`;
const table = (...rows: readonly string[][]) => `<table>${rows.map((cells) => row(cells)).join('')}</table>`;
const told = (body: string, title = 'Ondrasse bags') =>
  takeHtml(`<html><head><title>${title}</title></head><body><h1>${title}</h1>${body}</body></html>`).map(compact);

describe('a table whose heads say nothing known', () => {
  it('is of workshops where its cells are short letters, towns and times, in any order of the columns', () => {
    const rows = [
      ['open since 1949', 'Selby', 'SY'],
      ['closed 1987', 'Hexham', 'HX'],
      ['1996 to date', 'Sfax, Tunisia', 'SX'],
    ];
    const plants = [
      'plant | SY | ZZ | Selby | 1949–',
      'plant | HX | ZZ | Hexham | –1987',
      'plant | SX | TN | Sfax | 1996–',
    ];
    expect(told(table(...rows))).toEqual(plants);
    expect(told(table(...rows.map((cells) => cells.toReversed())))).toEqual(plants);
    expect(told(table(['Lifetime', 'Whereabouts', 'On it'], ...rows))).toEqual(plants);
  });

  it('is of how codes were built where a time stands beside what they write, with their examples', () => {
    const rows = [
      ['Era', 'You read', 'Say', 'So'],
      ['up to 1958', 'nothing', '', ''],
      ['1959 – 71', 'month, then year', '0463', 'April 1963'],
      ['1972 on', 'year, then week', '8119', 'week 19 of 1981'],
    ];
    expect(told(table(...rows))).toEqual([
      'stamped | 1959–',
      'code-system | 1959–1971 | month 2 + year 2 | 0463 = 1963-04',
      'code-system | 1972– | year 2 + week 2 | 8119 = 1981-W19',
    ]);
  });

  it('is of models where sizes stand beside names', () => {
    const rows = [
      ['Forager 9', '24 x 18 x 8 cm', '1961-1979'],
      ['Gleaner', '31 x 25 x 10 cm', 'since 1970'],
    ];
    expect(told(table(...rows))).toEqual([
      'model | Forager 9 | 1961–1979 | 24 18 8 cm',
      'model | Gleaner | 1970– | 31 25 10 cm',
    ]);
  });

  it('is of where codes sit where places on a piece stand beside times', () => {
    const rows = [
      ['under the flap', 'until 1964'],
      ['behind the zip pocket', '1965–1990'],
    ];
    expect(told(table(...rows))).toEqual([
      'carrier | under the flap | –1964 | stamp',
      'carrier | behind the zip pocket | 1965–1990 | stamp',
    ]);
  });

  it('stays silent where two things are as likely, or where letters and towns alone stand there', () => {
    expect(told(table(['SY', 'Selby'], ['HX', 'Hexham'], ['WK', 'Wick']))).toEqual([]);
    // Bare years: opened or closed, nobody says.
    expect(told(table(['SY', 'Selby', '1949'], ['HX', 'Hexham', '1955'], ['WK', 'Wick', '1960']))).toEqual([]);
    // Which of two columns of towns is it?
    expect(
      told(
        table(
          ['SY', 'Selby', 'Goole', '1949–1960'],
          ['HX', 'Hexham', 'Corbridge', '1955–1960'],
          ['WK', 'Wick', 'Thurso', 'since 1960'],
        ),
      ),
    ).toEqual([]);
  });

  it('takes no people for towns, and no towns for places on a piece', () => {
    const masters = [
      ['AB', 'Anna Berg', '1949–1960'],
      ['KT', 'Karel Thys', '1955–1960'],
      ['WK', 'Wim Koster', 'since 1960'],
    ];
    expect(told(table(...masters))).toEqual([]);
    expect(told(table(['in Selby', 'until 1964'], ['at Hexham', '1965–1990']))).toEqual([]);
  });

  it('of letters beside towns is nobody’s codes on a page that speaks of no bag', () => {
    const rows = table(['SY', 'Selby', '1949–1960'], ['HX', 'Hexham', '1955–1960'], ['WK', 'Wick', 'since 1960']);
    expect(told(rows, 'Marks of the Ondrasse ferry line')).toEqual([]);
    expect(told(rows, 'Marks on Ondrasse handbags')).toHaveLength(3);
  });
});

describe('prices', () => {
  it('stand in columns that each name a year, whatever else their heads say, beside sizes in two columns', () => {
    const body = `<p>All in pesetas.</p><table>
      <tr><th rowspan="2">Pieza</th><th colspan="2">Medidas</th><th colspan="2">Tarifa</th></tr>
      <tr><th>Ancho x alto</th><th>Fondo</th><th>cat. 1972</th><th>cat. 1986</th></tr>
      ${row(['Zurrón', '30 × 24', '9', '1.250', '8.900'])}${row(['Alforja', '41 × 33', '14', '—', '12.400'])}</table>`;
    expect(told(body, 'Bolsos de Ondrasse')).toEqual([
      'model | Zurrón | 30 24 9 cm',
      'price | Zurrón | 1250 | ESP | 1972 | new',
      'price | Zurrón | 8900 | ESP | 1986 | new',
      'model | Alforja | 41 33 14 cm',
      'price | Alforja | 12400 | ESP | 1986 | new',
    ]);
  });
});

describe('letters of years', () => {
  it('stand where a decade and a last figure meet', () => {
    const grid = [
      ['', '0', '1', '2'],
      ['1970s', 'A', 'B', 'C'],
      ['1980s', 'K', 'L', ''],
    ];
    expect(told(table(...grid), 'Year letters of Ondrasse bags')).toEqual([
      'year-letter | A | 1970',
      'year-letter | B | 1971',
      'year-letter | C | 1972',
      'year-letter | K | 1980',
      'year-letter | L | 1981',
    ]);
  });
});
