import { describe, expect, it } from 'vitest';
import { takeHtml } from '../../take-pages/score';
import { compact } from './compact';

const told = (body: string, title = 'Wexcombe date codes') =>
  takeHtml(`<title>${title}</title><h1>${title}</h1>${body}`).map(compact);
const row = (...cells: string[]) => `<tr>${cells.map((cell) => `<td>${cell}</td>`).join('')}</tr>`;

describe('a published sheet', () => {
  const sheet = (...rows: string[][]) =>
    `<table><tr><th></th>${['A', 'B', 'C', 'D', 'E'].map((one) => `<th>${one}</th>`).join('')}</tr>${rows
      .map((cells, at) => `<tr><th>${at + 1}</th>${cells.join('')}</tr>`)
      .join('')}</table>`;
  const cells = (...texts: string[]) => texts.map((text) => `<td>${text}</td>`);
  const over = (text: string) => [`<td colspan="5">${text}</td>`];

  it('has several tables, each below a remark and none of its rows', () => {
    const body = sheet(
      over('WEXCOMBE – please ask before editing'),
      cells('', '', '', '', ''),
      cells('from', 'to', 'how it goes', 'e.g.', 'which is'),
      cells('1967', '1975', 'MMYY', '0569', 'May 1969'),
      cells('1976', '1988', 'works letter, YY, WW', 'K8105', 'week 5, 1981'),
      cells('', '', '', '', ''),
      over('Workshops, as far as we know'),
      cells('Letter', 'Town', 'Opened', 'Shut', 'Remarks'),
      cells('G', 'Giggleswick', '1976', '1988', 'fire in the roof'),
      cells('K', 'Kendal', '1976', '1991', 'now flats'),
      cells('', '', '', '', ''),
      over('TO DO: ask about the raffle'),
    );
    expect(told(body)).toEqual([
      'code-system | 1967–1975 | month 2 + year 2 | 0569 = 1969-05',
      'code-system | 1976–1988 | plant 1 + year 2 + week 2 | K8105 = 1981-W05',
      'plant | G | ZZ | Giggleswick | 1976–1988',
      'plant | K | ZZ | Kendal | 1976–1991',
    ]);
  });
});

describe('cells of a table', () => {
  it('that are merged over several times are of all of them', () => {
    const body =
      '<table><tr><th></th><th>1957–1969</th><th>1970–1985</th><th>1986–1999</th></tr><tr><th>Lining</th><td>calico</td><td>rayon</td><td>cotton</td></tr><tr><th>Zip</th><td>brass</td><td colspan="2">nickel</td></tr></table>';
    expect(told(body).filter((one) => one.includes('zip'))).toEqual([
      'construction | zip | brass | 1957–1969',
      'construction | zip | nickel | 1970–1999',
    ]);
  });

  it('tell parts down the side, whatever heads them', () => {
    const body =
      '<table><tr><th>Part</th><th>1963–1977</th><th>1978–1994</th></tr><tr><td>Lining</td><td>goatskin</td><td>rayon</td></tr><tr><td>Zip</td><td>brass</td><td>nickel</td></tr></table>';
    expect(told(body)).toEqual([
      'construction | lining | goatskin | 1963–1977',
      'construction | zip | brass | 1963–1977',
      'construction | lining | rayon | 1978–1994',
      'construction | zip | nickel | 1978–1994',
    ]);
  });

  it('hold an example within the form, dated by the words beside it', () => {
    const body = `<table>${row('Années', 'Marque', 'Se lit ainsi')}${row('1969 à 1984', '1 lettre, 4 chiffres (ex. A0775)', 'atelier, mois, année : juillet 1975')}${row('depuis 1985', '4 chiffres, 1 lettre (ex. 8812C)', 'année, mois, atelier : décembre 1988')}</table>`;
    expect(told(body, 'Dater votre sac Beaurivel')).toEqual([
      'code-system | 1969–1984 | plant 1 + month 2 + year 2 | A0775 = 1975-07',
      'code-system | 1985– | year 2 + month 2 + plant 1 | 8812C = 1988-12',
    ]);
  });

  it('have pounds with their shillings', () => {
    const body = `<table>${row('Bag', 'Size (cm)', 'Made', 'Price then')}${row('Wyre', '28 × 21 × 8', '1960–79', '£7 10s (1964)')}${row('Lune', '33 × 25 × 11', '1965–80', '£24 (1976)')}</table>`;
    expect(told(body).filter((one) => one.startsWith('price'))).toEqual([
      'price | Wyre | 7.5 | GBP | 1964 | new',
      'price | Lune | 24 | GBP | 1976 | new',
    ]);
  });
});

describe('labels', () => {
  it('list workshops and models between them', () => {
    const body =
      '<dl><dt>Laboratori</dt><dd>M Matera; P Potenza (fino al 1988); R Romania (dal 1990)</dd><dt>Modelli</dt><dd>Lucana 30 × 22 × 9 cm (1963–1984); Sinni 24 × 17 × 7 cm (dal 1975)</dd></dl>';
    expect(told(body, 'Borse Valdagri, i codici')).toEqual([
      'plant | M | ZZ | Matera',
      'plant | P | ZZ | Potenza | –1988',
      'plant | R | RO | 1990–',
      'model | Lucana | 30 22 9 cm | 1963–1984',
      'model | Sinni | 24 17 7 cm | 1975–',
    ]);
  });

  it('list workshops, a time before one of them its own', () => {
    expect(told('<p>Werke: N Nürnberg, F Fürth, ab 1988 auch Z Zagreb (Kroatien).</p>', 'Codes von Wexholm')).toEqual([
      'plant | N | ZZ | Nürnberg',
      'plant | F | ZZ | Fürth',
      'plant | Z | HR | Zagreb | 1988–',
    ]);
  });

  it('tell one place until the next came, and one material and the next', () => {
    expect(
      told('<dl><dt>Where the code is</dt><dd>Under the flap, from 1972 on a leather tab in the pocket</dd></dl>'),
    ).toEqual(['carrier | Under the flap | –1971 | stamp', 'carrier | on a leather tab in the pocket | 1972– | tab']);
    expect(told('<dl><dt>Forro</dt><dd>De raso hasta 1973 y de nailon después.</dd></dl>', 'Códigos Bardocín')).toEqual(
      ['construction | lining | raso | –1973', 'construction | lining | nailon | 1974–'],
    );
  });

  it('of several codes have a town for each, in their order', () => {
    expect(
      told('<dl><dt>H, L and S</dt><dd>The factories: Hitchin, Luton and, from 1984, Sligo in Ireland.</dd></dl>'),
    ).toEqual(['plant | H | ZZ | Hitchin', 'plant | L | ZZ | Luton', 'plant | S | IE | Sligo | 1984–']);
    expect(told('<dl><dt>H, L and S</dt><dd>The factories: Hitchin, Luton, Sligo and Ripon.</dd></dl>')).toEqual([]);
  });

  it('open sentences of one paragraph', () => {
    expect(told('<p>Lining: suede to 1969. Zip: brass.</p>')).toEqual([
      'construction | lining | suede | –1969',
      'construction | zip | brass',
    ]);
  });

  it('that are an answer’s letter are no code', () => {
    const body =
      '<h3>Q: What should the lining be?</h3><p>A: Suede until 1971. After that drill.</p><h3>Q: Mine has none.</h3><p>A: Then it was made after 1986.</p>';
    expect(told(body).filter((one) => one.startsWith('plant'))).toEqual([]);
  });

  it('that name an era tell all that its sentences say, and nothing of what follows a town', () => {
    const body =
      '<dl><dt>No stamp (before 1961)</dt><dd>Nothing at all is stamped on these.</dd><dd>The lining is linen.</dd><dt>The four-figure stamp (1961–1974)</dt><dd>Year first and then the month, two figures for each, so 6611 is November 1966.</dd><dd>It sits on the underside of the flap.</dd><dd>Zips are brass.</dd></dl><p>All of them were in Scotland.</p><dl><dt>G</dt><dd>Galashiels. The old mill by the river.</dd></dl>';
    expect(told(body)).toEqual([
      'stamped | 1961–',
      'construction | lining | linen | –1960',
      'code-system | 1961–1974 | year 2 + month 2 | 6611 = 1966-11',
      'carrier | on the underside of the flap | 1961–1974 | stamp',
      'construction | zip | brass | 1961–1974',
      'plant | G | GB | Galashiels',
    ]);
  });
});

describe('who answers whom', () => {
  const codes = '<p>The bags have a letter for the workshop. B is Bodmin and T is Truro.</p>';
  const plants = (body: string) => told(codes + body).filter((one) => one.startsWith('plant | B'));

  it('takes back the town that another denied, and keeps the other', () => {
    expect(
      plants('<p>B isn’t Bodmin, it only had the shop. B is Bude.</p><p>You’re right, I was wrong about Bodmin.</p>'),
    ).toEqual(['plant | B | ZZ | Bodmin | (withdrawn)', 'plant | B | ZZ | Bude']);
    expect(plants('<p>B is Bude, not Bodmin.</p><p>My mistake.</p>')).toEqual([
      'plant | B | ZZ | Bodmin | (withdrawn)',
      'plant | B | ZZ | Bude',
    ]);
  });

  it('leaves both standing where nobody gives in', () => {
    expect(plants('<p>B is Bude, not Bodmin.</p>')).toEqual([
      'plant | B | ZZ | Bodmin | (contradicted)',
      'plant | B | ZZ | Bude | (contradicted)',
    ]);
  });
});

describe('sentences', () => {
  it('give a time between dashes to the code behind it', () => {
    expect(
      told('<p>Die Werke: K steht für Kassel, B für Bonn und – seit 1979 – P für Portugal.</p>', 'Codes von Wexholm'),
    ).toEqual(['plant | K | ZZ | Kassel', 'plant | B | ZZ | Bonn', 'plant | P | PT | 1979–']);
  });

  it('give a country behind a row to its last town, and to all where they say so', () => {
    const places = (tail: string) => told(`<p>The workshops were Ripon (R), Selby (S) and Tetuan (T), ${tail}.</p>`);
    expect(places('in Spain')).toEqual(['plant | R | ZZ | Ripon', 'plant | S | ZZ | Selby', 'plant | T | ES | Tetuan']);
    expect(places('all in Spain')).toEqual([
      'plant | R | ES | Ripon',
      'plant | S | ES | Selby',
      'plant | T | ES | Tetuan',
    ]);
  });

  it('tell no code by the number of a journal, and no workshop by a sign of rights', () => {
    const form = '<p>From 1960 to 1976 the code has four digits, month and year.</p>';
    expect(
      told(`${form}<p>Journal no. 212, February 2014</p><p>Copyright (C) 2004-2018 Friends of old bags</p>`),
    ).toEqual(['code-system | 1960–1976 | month 2 + year 2']);
    expect(told(`${form}<p>Mine has no. 0969, September 1969.</p>`).some((one) => one.includes('0969'))).toBe(true);
  });

  it('say of a part where it is before they say of what', () => {
    expect(
      told(
        '<p>La cremallera del bolsillo interior fue metálica hasta 1977 y de plástico a partir de 1978.</p>',
        'Códigos Bardocín',
      ),
    ).toEqual(['construction | zip | metálica | –1977', 'construction | zip | plástico | 1978–']);
    expect(told('<p>The lining was suede on bags made until 1970 and nylon on later ones.</p>')).toEqual([
      'construction | lining | suede | –1970',
      'construction | lining | nylon | 1971–',
    ]);
  });

  it('give a time in the clause behind a semicolon to the code of that clause', () => {
    const body =
      '<p>Then came a factory letter.</p><p>C is Cheltenham and S is Stroud; a few from the 1970s have an N for Newport.</p>';
    expect(told(body)).toEqual([
      'plant | C | ZZ | Cheltenham',
      'plant | S | ZZ | Stroud',
      'plant | N | ZZ | Newport | 1970–',
    ]);
  });

  it('price a model in the year behind the amount', () => {
    const body =
      '<p>The "Cotswold" holdall measures 18 x 11 x 9 in and was sold from 1955 to 1982; it cost £12 in 1961 and £34 in 1975.</p>';
    expect(told(body).filter((one) => one.startsWith('price'))).toEqual([
      'price | Cotswold | 12 | GBP | 1961 | new',
      'price | Cotswold | 34 | GBP | 1975 | new',
    ]);
  });

  it('count what is left of a code', () => {
    expect(
      told(
        '<p>From 1948 to 1957 the code has three figures, the first two for the month and the last for the year.</p>',
      ),
    ).toEqual(['code-system | 1948–1957 | month 2 + year 1']);
  });

  it('with more times than two leave open which is that of the code', () => {
    expect(
      told(
        '<p>Wexcombe, since 1920 in Ripon, stamped from 1952: until 1964 with month and year in four digits, from 1965 to 1979 otherwise.</p>',
      ),
    ).toEqual([]);
  });
});

describe('a house', () => {
  const makers = (html: string) => [...new Set(takeHtml(html).map(({ maker }) => maker))];
  const form = 'Von 1965 bis 1979 hat der Code vier Ziffern, Jahr und Monat: 6804 ist April 1968.';

  it('is called as the page mostly calls it', () => {
    expect(
      makers(
        `<title>Manufaktur Eichmoor</title><h1>Manufaktur Eichmoor: die Codes</h1><p>Eichmoor stempelte die Taschen von Eichmoor unter der Klappe. ${form}</p>`,
      ),
    ).toEqual(['Eichmoor']);
    expect(
      makers(
        `<title>Manufaktur Eichmoor</title><h1>Manufaktur Eichmoor: die Codes</h1><p>Die Manufaktur Eichmoor stempelte ihre Taschen. ${form}</p>`,
      ),
    ).toEqual(['Manufaktur Eichmoor']);
  });

  it('is named in a compound, at a subpage, and with the town it was in', () => {
    expect(
      makers(
        `<title>Spickzettel Wendelgard-Taschen</title><h1>Spickzettel Wendelgard-Taschen</h1><p>Ich habe eine Kaffeemühle heimgetragen. ${form}</p>`,
      ),
    ).toEqual(['Wendelgard']);
    expect(
      makers(
        `<title>Orrinsdale/Stamps – Saddlebag</title><h1>Orrinsdale/Stamps</h1><p>From 1965 to 1979 the code has four digits, year and month: 6804 is April 1968.</p>`,
      ),
    ).toEqual(['Orrinsdale']);
    expect(
      makers(
        `<title>What a Marrick bag tells</title><h1>What your Marrick bag tells</h1><p>Marrick of Richmond marked every bag. From 1965 to 1979 the code has four digits, year and month: 6804 is April 1968.</p>`,
      ),
    ).toEqual(['Marrick']);
  });
});
