import type { EachLanguage } from './each-language';
import { foldWords } from './fold';
import { listOf } from './phrases';

/*
 * Whole numbers from one to ninety-nine as people write them out. Rows are in the order of `EachLanguage`; what a language
 * joins otherwise than tens before units is said by `joined`. Common knowledge, no source.
 */

/** One to nineteen. Where a word has several forms they are parted by a stroke. */
const small: EachLanguage = [
  'one, two, three, four, five, six, seven, eight, nine, ten, eleven, twelve, thirteen, fourteen, fifteen, sixteen, seventeen, eighteen, nineteen',
  'un|une, deux, trois, quatre, cinq, six, sept, huit, neuf, dix, onze, douze, treize, quatorze, quinze, seize, dix-sept, dix-huit, dix-neuf',
  'ein|eins|eine|einem|einen|einer, zwei|zwo, drei, vier, fünf, sechs, sieben, acht, neun, zehn, elf, zwölf, dreizehn, vierzehn, fünfzehn, sechzehn, siebzehn, achtzehn, neunzehn',
  'un|uno|una, due, tre, quattro, cinque, sei, sette, otto, nove, dieci, undici, dodici, tredici, quattordici, quindici, sedici, diciassette, diciotto, diciannove',
  'un|uno|una, dos, tres, cuatro, cinco, seis, siete, ocho, nueve, diez, once, doce, trece, catorce, quince, dieciséis, diecisiete, dieciocho, diecinueve',
  'een|één, twee, drie, vier, vijf, zes, zeven, acht, negen, tien, elf, twaalf, dertien, veertien, vijftien, zestien, zeventien, achttien, negentien',
  '一, 二, 三, 四, 五, 六, 七, 八, 九, 十, 十一, 十二, 十三, 十四, 十五, 十六, 十七, 十八, 十九',
];

/** Twenty to ninety. French counts on from sixty and from four times twenty. */
const tens: EachLanguage = [
  'twenty, thirty, forty|fourty, fifty, sixty, seventy, eighty, ninety',
  'vingt, trente, quarante, cinquante, soixante, septante, quatre-vingt|quatre-vingts|huitante|octante, nonante',
  'zwanzig, dreißig|dreissig, vierzig, fünfzig, sechzig, siebzig, achtzig, neunzig',
  'venti, trenta, quaranta, cinquanta, sessanta, settanta, ottanta, novanta',
  'veinte, treinta, cuarenta, cincuenta, sesenta, setenta, ochenta, noventa',
  'twintig, dertig, veertig, vijftig, zestig, zeventig, tachtig, negentig',
  '二十, 三十, 四十, 五十, 六十, 七十, 八十, 九十',
];

type Joined = (ten: string, unit: string, count: number) => readonly string[];
const joined: readonly Joined[] = [
  (ten, unit) => [`${ten}-${unit}`],
  (ten, unit, count) => [`${ten}-${unit}`, ...(count % 10 === 1 ? [`${ten}-et-${unit}`] : [])],
  (ten, unit) => [`${unit}und${ten}`],
  // "Ventuno", "ventotto": the ten loses its end before a vowel; "ventitré" has an accent.
  (ten, unit) => [/^[uo]/.test(unit) ? `${ten.slice(0, -1)}${unit}` : `${ten}${unit}`],
  (ten, unit) => (ten === 'veinte' ? [`veinti${unit}`] : [`${ten} y ${unit}`]),
  // "Tweeëntwintig", "drieëndertig".
  (ten, unit) => [`${unit}${unit.endsWith('e') ? 'ën' : 'en'}${ten}`],
  (ten, unit) => [`${ten}${unit}`],
];

/** Every form of a number of one language, folded, with what it counts. */
function formsOf(language: number): Map<string, number> {
  const units = listOf(small[language]!).map((forms) => forms.split('|'));
  const found = new Map<string, number>();
  const add = (form: string, value: number) => {
    // A hyphen may be missing, or be a gap.
    for (const one of new Set([form, form.replaceAll('-', ' ')])) found.set(foldWords(one).text, value);
  };
  for (const [at, forms] of units.entries()) for (const form of forms) add(form, at + 1);
  for (const [at, forms] of listOf(tens[language]!).entries())
    for (const ten of forms.split('|')) {
      const value = 10 * (at + 2);
      add(ten, value);
      for (const [below, spelled] of units
        .slice(0, language === french && /^(?:soixante|quatre)/.test(ten) ? 19 : 9)
        .entries())
        for (const unit of spelled)
          for (const form of joined[language]!(ten, unit, below + 1)) add(form, value + below + 1);
    }
  return found;
}
const french = 1;

/** Number words of a language with what they count, and a pattern for them, longest first. */
export interface NumberWords {
  values: ReadonlyMap<string, number>;
  /** Alternatives of a pattern over folded text. */
  source: string;
}

function numbersOf(values: ReadonlyMap<string, number>): NumberWords {
  const longestFirst = [...values.keys()].sort((a, b) => b.length - a.length);
  return { values, source: longestFirst.map((word) => word.replaceAll(' ', '\\s')).join('|') };
}

const tags = ['en', 'fr', 'de', 'it', 'es', 'nl', 'ja'];
const known = new Map<string, NumberWords>();

/** Those of a language by its tag; of all where it is none of the seven. */
export function numberWordsOf(language: string | null): NumberWords {
  const tag = (language ?? '').slice(0, 2).toLowerCase();
  const at = tags.indexOf(tag);
  const key = at < 0 ? '' : tag;
  const before = known.get(key);
  if (before) return before;
  const languages = at < 0 ? tags.map((_, index) => index) : [at];
  const numbers = numbersOf(new Map(languages.flatMap((index) => [...formsOf(index)])));
  known.set(key, numbers);
  return numbers;
}

/** The words for numbers up to `most`, of all languages, as alternatives of a pattern over folded text. */
export const numberWordsUpTo = (most: number): string =>
  numbersOf(new Map([...numberWordsOf(null).values].filter(([, value]) => value <= most))).source;

/** What a number in digits or in words (folded) counts; null where it is none. */
export const countOf = (words: string): number | null =>
  /^\d+$/.test(words) ? Number(words) : (numberWordsOf(null).values.get(words.replace(/\s/g, ' ')) ?? null);
