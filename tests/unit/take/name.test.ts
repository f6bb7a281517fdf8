import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { readPage, takeFromPage } from '../../../src/take';
import { namesIn } from '../../../src/take/name/shapes';
import { countWork } from '../../growth/count-work';
import {
  asideNames,
  fifthAsideNames,
  fifthNames,
  fourthAsideNames,
  fourthNames,
  isNamedRight,
  laterNames,
  type NameCase,
  pageOfNames,
  seenNames,
  seventhAsideNames,
  seventhNames,
  sixthAsideNames,
  sixthNames,
  thirdNames,
} from '../../take-pages/names';
import { source } from '../../take-pages/score';

const named = (one: NameCase, known = '') => readPage(pageOfNames(one), { ...source, known }).named;
const page = (heading: string, ...text: string[]): NameCase => ({
  id: heading,
  lang: 'en',
  title: heading,
  headings: [heading],
  text,
  makers: [],
});
const wrong = (cases: readonly NameCase[]) =>
  cases.flatMap((one) => {
    const told = named(one);
    return isNamedRight(one, told) ? [] : [{ id: one.id, makers: told.makers }];
  });

describe('the maker that a page tells of', () => {
  it('is weighed by all that the page says: heads of pages in seven languages, those seen and those set aside', () => {
    expect(seenNames.length + asideNames.length).toBeGreaterThan(60);
    expect(wrong(seenNames)).toEqual([]);
    expect(wrong(asideNames)).toEqual([]);
    // A kind of bag stands in its heading and the maker in the text alone: there the buyer is asked.
    expect(wrong(laterNames)).toEqual([{ id: 'en2-museum', makers: [] }]);
  });

  it('is never wrong where it is called sure', () => {
    const last = [fifthNames, fifthAsideNames, sixthNames, sixthAsideNames, seventhNames, seventhAsideNames];
    const all = [seenNames, asideNames, laterNames, thirdNames, fourthNames, fourthAsideNames, ...last].flat();
    const sure = all.filter((one) => named(one).sure);
    expect(sure.length).toBeGreaterThan(70);
    expect(wrong(sure)).toEqual([]);
  });

  it('is asked for where a town or a kind of bag stands where a name would, and is no writer of the page', () => {
    expect(wrong(thirdNames).map(({ id }) => id)).toEqual(['en3-style', 'en3-place', 'it3-luogo', 'ja3-kind']);
    expect(named(page('Mirabel’s handbook of date codes', 'Most houses stamped four digits.')).makers).toEqual([]);
    expect(named(page('Het schrift van Liesbeth: codes', 'Vier cijfers, maand en jaar.')).makers).toEqual([]);
  });

  it('is asked for where only a text in passing names somebody, and the likeliest is offered first', () => {
    const { makers, sure, offers } = named(
      page('The four numbers inside', 'A friend has a bag by Ferriswold. The first two figures are the week.'),
    );
    expect([makers, sure, offers[0]?.name]).toEqual([['Ferriswold'], false, 'Ferriswold']);
  });

  it('stands in passing, in headings of parts, in metas, pictures and paths, joined by particles and by "and"', () => {
    expect(fourthNames.length + fourthAsideNames.length).toBe(20);
    expect(wrong(fourthNames)).toEqual([]);
    expect(wrong(fourthAsideNames)).toEqual([]);
    for (const one of [...fourthNames, ...fourthAsideNames].filter(({ sections }) => sections)) {
      const told = takeFromPage(pageOfNames(one), source).map(({ maker }) => maker);
      expect(told).toEqual(one.sections!.map(({ maker }) => maker));
    }
  });

  it('is whole where a heading has half of it, has no noun for notes before it, and is no site or author', () => {
    expect(fifthNames.length + fifthAsideNames.length).toBe(40);
    expect(wrong(fifthNames)).toEqual([]);
    expect(wrong(fifthAsideNames)).toEqual([]);
    expect(sixthNames.length + sixthAsideNames.length).toBe(33);
    // A genitive that nothing else bears out: there the buyer is asked.
    expect(wrong([...sixthNames, ...sixthAsideNames])).toEqual([{ id: 'de6-10', makers: [] }]);
  });

  it.each([
    ['Merkzettel Ellerkamp', 'Vier Ziffern: erst die Woche, dann das Jahr.', 'Ellerkamp'],
    ['Nummernlijst Oosterhaghe-tassen', 'Vier cijfers: week en jaar.', 'Oosterhaghe'],
    ['Nota Pescarella: le cifre', 'Quattro cifre: settimana e anno.', 'Pescarella'],
    // Without a word of its own for it, the heading's half is the name.
    ['Codes of Aldermoor', 'Aldermoor stamped four digits; until 1950 they were Aldermoor & Pell.', 'Aldermoor'],
    ['Aldermoor: the numbers', 'The firm of Aldermoor & Pell stamped four digits.', 'Aldermoor & Pell'],
    ['Kruiswaard', 'De nummers van Van der Kruiswaard hebben vier cijfers.', 'Van der Kruiswaard'],
    // What a house makes may be the other half.
    ['Ellerbruck: die Nummern', 'Die Täschnerei Ellerbruck prägte vier Ziffern.', 'Täschnerei Ellerbruck'],
    [
      'Ellerbruck: die Nummern',
      'Die Täschnerei Ellerbruck war in Hanau. Ellerbruck prägte vier Ziffern.',
      'Ellerbruck',
    ],
  ])('has no noun for notes, and its other half where the text always says it: %s', (heading, text, maker) => {
    expect(named(page(heading, text)).makers).toEqual([maker]);
  });

  it('is asked for where a heading’s first words may be anything, and the text names nobody', () => {
    expect(named(page('Quarto Hollowmere', 'Four digits, week and year.')).sure).toBe(false);
    expect(named(page('Quarto Hollowmere', 'Hollowmere stamped four digits.')).makers).toEqual(['Hollowmere']);
    expect(named(page('Hollowmere Lane codes', 'Four digits, week and year.')).sure).toBe(true);
  });

  it.each([
    ['Leaflet no. 7', 'Four digits, week and year.'],
    ['Wilmas Schatzkiste', 'Vier Ziffern, Monat und Jahr.'],
    ['Apuntes varios de Paloma', 'Cuatro cifras, mes y año.'],
    ['El baúl de Paloma', 'Cuatro cifras, mes y año.'],
  ])('is no leaflet and nobody who writes: %s', (heading, text) => {
    expect(named(page(heading, text)).makers).toEqual([]);
  });

  it.each([
    ['Reading the tab', 'My neighbour’s Ostrander came with its box. They stamped week and year.', 'Ostrander'],
    ['Zahlen in alten Taschen', 'Die Kellermeer meiner Oma trägt 0478.', 'Kellermeer'],
    ['De tas van mijn oma', 'Mijn oma had een Brinkmeer. Op het lipje staat 0478.', 'Brinkmeer'],
    ['Una borsa in soffitta', 'È una Vellarose, con una targhetta.', 'Vellarose'],
    ['母のバッグの番号', '母のセルヴァンには0478とあります。', 'セルヴァン'],
  ])('is asked for where it is whose piece somebody has: %s', (heading, text, maker) => {
    expect(named(page(heading, text))).toMatchObject({ makers: [maker], sure: false });
  });

  it.each([
    ['Los bolsos de Inés de la Vega Roja', 'Inés de la Vega Roja grababa cuatro cifras.', 'Inés de la Vega Roja'],
    ['Jean d’Orvanne: les codes', 'Jean d’Orvanne frappait quatre chiffres.', 'Jean d’Orvanne'],
    ['Tassen van De Grooteweg', 'Een tas van De Grooteweg is zeldzaam.', 'De Grooteweg'],
    ['月岡堂の製造番号', '月岡堂は四桁の数字を使いました。', '月岡堂'],
    // What a particle stands between here is a thing and whose it is.
    ['La Marisella di Brentasole: codici', 'Brentasole stampava quattro cifre.', 'Brentasole'],
    ['Datation de Morvandelle', 'Morvandelle frappait quatre chiffres.', 'Morvandelle'],
  ])('has its particles, and none of those around it: %s', (heading, text, maker) => {
    expect(named(page(heading, text)).makers).toEqual([maker]);
  });

  it.each([
    ['Grandad’s satchel', 'It is old. They stamped the week and the year.', ''],
    ['Stamps on a Carraway', 'The Carraway was made by Dunsley & Hart. Dunsley & Hart stamped it.', 'Dunsley & Hart'],
    ['Stempel der Quirling', 'Die Quirling stammt von Brückenau & Sohn.', 'Brückenau & Sohn'],
    ['Walsall codes', 'Walsall saddlers stamped four digits.', ''],
    ['Sacs de Graulhet', 'Les fabricants de Graulhet frappaient quatre chiffres.', ''],
  ])('is no relative, no model that another made, and no town of several makers: %s', (heading, text, maker) => {
    const { makers, sure } = named(page(heading, text));
    expect(sure).toBe(false);
    if (maker !== '') expect(makers).not.toContain(heading.split(' ').at(-1));
    else expect(makers).toEqual([]);
  });

  it('is not the site’s own name, in its heading or its path', () => {
    const site = 'The Attic Ledger';
    const ledger = {
      ...page('The Attic Ledger: old codes', 'Four digits, week and year.'),
      site,
      crumbs: ['Home', site],
    };
    expect(named(ledger).makers).toEqual([]);
  });

  it('stays open between two that a heading joins by "or", and for two that a page never parts', () => {
    const either = named(page('Kelling oder Brandhorst?', 'Die Tasche meiner Tante trägt 0478.'));
    expect(either.sure).toBe(false);
    expect(either.offers.map(({ name }) => name).sort()).toEqual(['Brandhorst', 'Kelling']);
    const pair = named(page('Ruhlmann und Tessberg', 'Beide prägten vier Ziffern.'));
    expect([pair.makers, pair.sure]).toEqual([['Ruhlmann und Tessberg'], false]);
    expect(named(page('Le carnet de Solène', 'On y lit 0478.')).makers).toEqual([]);
  });

  it('is nobody where a page tells of codes in general, also when words of its heading have capitals', () => {
    expect(named(page('How Date Codes Work', 'Most houses stamped four digits.')).makers).toEqual([]);
  });

  it('is no town, no model and no month', () => {
    const text =
      'In Walsall they stamped the year. WA is Walsall. The Drover 30 measures 30 x 20 x 10 cm. March 1975 is 0375.';
    const { makers } = named(page('Fennimore codes', 'Fennimore stamped four digits.', text));
    expect(makers).toEqual(['Fennimore']);
  });

  it('is the listing’s, where the page has that name; other names are offered after it', () => {
    const two = page('Notes on Harkaway', 'Harkaway bags are rare. My Brindlecote has four digits.');
    expect(named(two).makers).toEqual(['Harkaway']);
    const { makers, sure, offers } = named(two, 'BRINDLECOTE');
    expect([makers, sure, offers.map(({ name }) => name)]).toEqual([
      ['BRINDLECOTE'],
      false,
      ['BRINDLECOTE', 'Harkaway'],
    ]);
    expect(named(two, 'Ondrasse').makers).toEqual(['Harkaway']);
    expect(named(two, 'harkaway')).toMatchObject({ makers: ['Harkaway'], sure: true });
  });

  it('is no run of capitals without end, and a page of nothing else costs no more than its length', () => {
    const shouted = (words: number) =>
      Array.from({ length: words }, (_, at) => `Aa${String.fromCharCode(97 + (at % 26))}`).join(' ');
    expect(Math.max(...namesIn(shouted(9000)).map(({ name }) => name.split(' ').length))).toBe(6);
    const work = (words: number) =>
      countWork(() => readPage(pageOfNames(page('Ondrasse codes', shouted(words))), source));
    expect(work(8000) / work(1000)).toBeLessThan(12);
  });

  it('is whose page it is, where the page calls the bags ours', () => {
    const html = (text: string) =>
      `<html lang="en"><head><title>Where is my code?</title><meta property="og:site_name" content="Loxwell"></head><body><h1>Where is my code?</h1><p>${text}</p></body></html>`;
    const makersOf = (text: string) =>
      readPage(parseHTML(html(text)).document as unknown as Document, source).named.makers;
    expect(makersOf('Our bags are stamped on a tab.')).toEqual(['Loxwell']);
    expect(makersOf('Many bags are stamped on a tab.')).toEqual([]);
  });

  it('stands in the proposals where it is more likely than not', () => {
    const told = takeFromPage(
      pageOfNames(
        page(
          'The four numbers inside',
          'A friend has a bag by Ferriswold. From 1970 the code is four digits, the week and then the year, so 1278 is week 12 of 1978.',
        ),
      ),
      source,
    );
    expect(told.map(({ kind, maker }) => [kind, maker])).toEqual([['code-system', 'Ferriswold']]);
  });
});
