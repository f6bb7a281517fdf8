import { describe, expect, it } from 'vitest';
import { takeHtml } from '../../take-pages/score';
import { compact } from './compact';

const pageOf = (title: string, body: string): string => `<title>${title}</title><h1>${title}</h1>${body}`;
const told = (title: string, body: string): string[] => takeHtml(pageOf(title, body)).map(compact);

describe('sections of a page', () => {
  it('are of the period that their heading begins with, also where it goes on', () => {
    expect(
      told(
        'Reading Harrowlen codes',
        '<h2>Until 1951: none at all</h2><p>These are rare.</p><h2>1952 to 1968: the early numbers</h2><p>A four-digit mark. The first two digits are the week, the last two the year:</p><ul><li>1958 = week 19 of 1958</li></ul>',
      ),
    ).toEqual(['stamped | 1952–', 'code-system | 1952–1968 | week 2 + year 2 | 1958 = 1958-W19']);
  });

  it('headed by a part tell of it, as a bold line or a heading', () => {
    expect(
      told(
        'Codici Bravenza',
        '<p><b>LE FODERE</b><br>fino al 1966: seta grigia<br>dal 1967: tela cerata</p><h3>Cerniera</h3><ul><li>1950-1974: ottone</li><li>dal 1975: nylon</li></ul>',
      ),
    ).toEqual([
      'construction | lining | seta grigia | –1966',
      'construction | lining | tela cerata | 1967–',
      'construction | zip | ottone | 1950–1974',
      'construction | zip | nylon | 1975–',
    ]);
  });

  it('whose heading asks for the code mean it by “it”', () => {
    expect(
      told(
        'Datumscodes von Hohlbeck',
        '<h2>Wo finde ich den Code?</h2><p>Bei den meisten Taschen sitzt er auf einer Lederlasche im Innenfach.</p>',
      ),
    ).toEqual(['carrier | auf einer Lederlasche im Innenfach | tab']);
  });
});

describe('codes with their dates, told apart from the form', () => {
  const form =
    '<p>From 1960 to 1979 the code has four digits: the first two digits are the month, the last two the year.</p>';

  it('are examples of the one form that explains them', () => {
    expect(told('Codes of Wexmoor', `${form}<p>Mine is 0471, made in April 1971.</p>`)).toEqual([
      'code-system | 1960–1979 | month 2 + year 2 | 0471 = 1971-04',
    ]);
  });

  it('stay what they are where the form does not explain them, or was used at another time', () => {
    expect(told('Codes of Wexmoor', `${form}<p>Mine is 7104, made in April 1971.</p>`)).toContain(
      'example | 7104 | 1971-04',
    );
    expect(told('Codes of Wexmoor', `${form}<p>Mine is 0485, made in April 1985.</p>`)).toContain(
      'example | 0485 | 1985-04',
    );
  });

  it('a letter put before the same digits ends the form without it, whatever else tells of the letter', () => {
    expect(
      told(
        'Codes of Wexmoor',
        '<p>In 1961 a number of four digits was introduced, the year followed by the month. One with 6307 is of July 1963.</p><p>Since 1974 there is one letter in front of the four digits. Take B8011, made in November 1980.</p><p>B is the workshop at Bodmin.</p>',
      ),
    ).toEqual([
      'code-system | 1961–1973 | year 2 + month 2 | 6307 = 1963-07',
      'code-system | 1974– | plant 1 + year 2 + month 2 | B8011 = 1980-11',
      'plant | B | ZZ | Bodmin',
    ]);
  });
});

describe('when codes began', () => {
  it.each([
    ['Codes of Wexmoor', 'All bags of the house carry a date code from 1958.', 'stamped | 1958–'],
    ['Datumscodes von Hohlbeck', 'Die Taschen tragen seit 1966 eine Nummer.', 'stamped | 1966–'],
    ['Les codes Sorbelle', 'Les sacs portent un numéro depuis 1971.', 'stamped | 1971–'],
    ['Codici Bravenza', 'Prima del 1964 niente numero.', 'stamped | 1964–'],
    ['Códigos Albentosa', 'Los bolsos llevan un código desde 1980.', 'stamped | 1980–'],
    ['Codes van Eikelhof', 'Voor 1975 geen nummer.', 'stamped | 1975–'],
  ])('%s: %s', (title, sentence, expected) => {
    expect(told(title, `<p>${sentence}</p>`)).toEqual([expected]);
  });

  it('is not when another form came, or where earlier ones are told', () => {
    expect(told('Codes of Wexmoor', '<p>They have a new code since 1990.</p>')).toEqual([]);
    expect(told('Codes of Wexmoor', '<p>Bags carry the code on a sticker since 1990.</p>').join()).not.toContain(
      'stamped',
    );
    const early =
      '<p>From 1960 to 1979 the code has four digits: the first two digits are the month, the last two the year.</p>';
    expect(told('Codes of Wexmoor', `${early}<p>All bags carry a date code from 1990.</p>`).join()).not.toContain(
      'stamped',
    );
  });
});

describe('places of workshops', () => {
  it('before their codes in brackets, each with its own years', () => {
    expect(
      told(
        'Codes of Wexmoor',
        '<p>Workshops were Truro (T), Lugo in Spain (L) and from 1988 also Faro in Portugal (F).</p>',
      ),
    ).toEqual(['plant | T | ZZ | Truro', 'plant | L | ES | Lugo', 'plant | F | PT | Faro | 1988–']);
  });

  it('of a letter that the sentence calls one, by where its pieces were made', () => {
    expect(told('Codes of Wexmoor', '<p>The letter T behind the code: made at Truro, Cornwall.</p>')).toEqual([
      'plant | T | ZZ | Truro',
    ]);
  });

  it('by “that of” behind another, and in kanji behind a workshop’s code', () => {
    expect(told('Les codes Sorbelle', '<p>AB désigne l’atelier d’Albi, CO celui de Cognac.</p>')).toEqual([
      'plant | AB | ZZ | Albi',
      'plant | CO | ZZ | Cognac',
    ]);
    expect(told('マルノヴァのコード', '<p>工場記号は、MTは富山、MSは瀬戸の工場です。</p>')).toEqual([
      'plant | MT | ZZ | 富山',
      'plant | MS | ZZ | 瀬戸',
    ]);
  });
});

describe('what parts are made of', () => {
  it('behind a colon, in turn', () => {
    expect(
      told('Codes and linings of Wexmoor', '<p>The linings too: red silk until 1970, then grey cotton.</p>'),
    ).toEqual(['construction | lining | red silk | –1970', 'construction | lining | grey cotton | 1971–']);
  });

  it('at all times, where that is a material and not of a time', () => {
    expect(told('Codes and linings of Wexmoor', '<p>The lining was always suede.</p>')).toEqual([
      'construction | lining | suede',
    ]);
    expect(told('Codes and linings of Wexmoor', '<p>The lining was always my favourite.</p>')).toEqual([]);
    expect(told('Codes and linings of Wexmoor', '<p>The lining was by 1980 always suede.</p>')).toEqual([]);
  });

  it('until a year behind a small word', () => {
    expect(
      told('Codes and linings of Wexmoor', '<ul><li>Lining: ribbed silk to 1961, cotton from 1962</li></ul>'),
    ).toEqual(['construction | lining | ribbed silk | –1961', 'construction | lining | cotton | 1962–']);
  });

  it('without what leads to it or stands behind it', () => {
    expect(
      told('Codes and linings of Wexmoor', '<ul><li>Lining: striped silk lining, used until 1961</li></ul>'),
    ).toEqual(['construction | lining | striped silk | –1961']);
  });
});

describe('tables', () => {
  it('headed by periods, with what each row tells at its side', () => {
    expect(
      told(
        'Códigos Albentosa',
        '<table><tr><th></th><th>1960-1969</th><th>1970-1990</th></tr><tr><th>Composición</th><td>año y mes</td><td>taller, año y mes</td></tr><tr><th>Ejemplo</th><td>6405</td><td>AL7511</td></tr><tr><th>Se lee</th><td>mayo de 1964</td><td>noviembre de 1975</td></tr></table>',
      ),
    ).toEqual([
      'code-system | 1960–1969 | year 2 + month 2 | 6405 = 1964-05',
      'code-system | 1970–1990 | plant 2 + year 2 + month 2 | AL7511 = 1975-11',
    ]);
  });

  it('of facts on a maker: since when there are codes, and where', () => {
    expect(
      told(
        'Codes of Wexmoor',
        '<table><tr><th>Founded</th><td>1921</td></tr><tr><th>First date code</th><td>1958</td></tr><tr><th>Position of the code</th><td>under the flap</td></tr></table><p>B8011 is November 1980.</p>',
      ),
    ).toEqual(expect.arrayContaining(['stamped | 1958–', 'carrier | under the flap | stamp']));
  });

  it('of prices in a former currency that the heading names', () => {
    expect(
      told(
        'Precios Albentosa',
        '<h2>Precios nuevos (pesetas)</h2><table><tr><th>Modelo</th><th>1975</th><th>1985</th></tr><tr><td>Ribera</td><td>4.500</td><td>12.900</td></tr></table>',
      ),
    ).toEqual(['price | Ribera | 4500 | ESP | 1975 | new', 'price | Ribera | 12900 | ESP | 1985 | new']);
  });

  it('whose columns of codes are headed by the periods of the codes', () => {
    expect(
      told(
        'Codes of Wexmoor',
        '<table><tr><th rowspan="2">Workshop</th><th colspan="2">Letters</th></tr><tr><th>1950–1969</th><th>since 1970</th></tr><tr><td>Truro</td><td>T</td><td>TR</td></tr><tr><td>Lugo, Spain</td><td>–</td><td>LG</td></tr></table>',
      ),
    ).toEqual([
      'plant | T | ZZ | Truro | 1950–1969',
      'plant | TR | ZZ | Truro | 1970–',
      'plant | LG | ES | Lugo | 1970–',
    ]);
  });

  it('that only lay out a forum’s posts are read as their words', () => {
    expect(
      told(
        'Help with a Wexmoor code',
        '<table><tr><td>peg</td><td><p>Mine says 3 T 71.</p></td></tr></table><table><tr><td>awl</td><td><p>T is Truro, P = Penzance.</p></td></tr></table>',
      ),
    ).toEqual(['plant | T | ZZ | Truro', 'plant | P | ZZ | Penzance']);
  });
});

describe('a shop that explains codes', () => {
  const shop = (list: string) =>
    told('Gebrauchte Hohlbeck kaufberatung', `<p>Kostenloser Versand ab 50 Euro.</p>${list}`);

  it('is read where it tells several forms, or one with its workshops', () => {
    expect(
      shop(
        '<ul><li>1960–1970: zwei Ziffern Jahr, zwei Ziffern Monat (6405 = Mai 1964)</li><li>ab 1971: siebenstellige Seriennummer</li></ul>',
      ),
    ).toEqual(['code-system | 1960–1970 | year 2 + month 2 | 6405 = 1964-05', 'code-system | 1971– | serial 7']);
  });

  it('is not where it names the code of a piece, or its size', () => {
    expect(shop('<ul><li>Code: 6405 (Mai 1964)</li><li>Abmessungen: 30 x 20 x 10 cm</li></ul>')).toEqual([]);
    expect(told('Codes van Eikelhof', '<ul><li>sinds 1990: viercijferig volgnummer</li></ul>')).toEqual([
      'code-system | 1990– | serial 4',
    ]);
    expect(told('Hohlbeck Modelle', '<ul><li>Abmessungen: 30 x 20 x 10 cm</li></ul>')).toEqual([]);
  });
});
