import { findClaims } from '../../src/claim';
import { builtInMakers } from '../../src/maker';
import {
  findConditions,
  findRatings,
  findReturns,
  foldWords,
  parseDates,
  parseMeasures,
  parsePrices,
} from '../../src/text';
import { listingOf } from '../unit/claim/listing-of';

/** Descriptions as sellers write them, one a language, repeated to the size asked for. */
const prose: Record<string, string> = {
  en: 'Vintage satchel made in Belgium in the early 90s, olive twill lining, solid brass hardware. H 21 x W 30 x D 17 cm. Date code KV0915. Never used, was £600 now £450 + £4 p&p. No returns. 4.8/5 (178 reviews). ',
  de: 'Handtasche aus den 90er Jahren, Futter aus olivem Köper, Beschläge aus Messing. Breite 30 cm, Höhe 21 cm. Datumscode KV0915. Nie getragen, NP 600 €, jetzt 450 € VB, Versand 6,90 €. Keine Rücknahme. ',
  fr: 'Sac des années 90 fabriqué en Belgique, doublure en sergé olive, fermoir en laiton. L30 H21 P17. Code KV0915. Jamais porté, 450 € au lieu de 600 €. Ni repris ni échangé. ',
  ja: '昭和60年頃のバッグ、ベルギー製、裏地はオリーブのツイル、真鍮の金具。横30cm 縦21cm マチ17cm。刻印：KV0915。未使用品、45,000円、送料 800円。返品不可。',
};

const size = 50_000;

/** Least milliseconds of a few runs. */
function leastMs(work: () => unknown): number {
  let least = Number.POSITIVE_INFINITY;
  for (let run = 0; run < 5; run += 1) {
    const begun = performance.now();
    work();
    least = Math.min(least, performance.now() - begun);
  }
  return least;
}

/** Time of each text reader on 50,000 characters (the most that a listing's text holds), and as a ratio to folding alone. */
export async function bench(): Promise<void> {
  const now = '2026-11-25';
  const readers: Record<string, (text: string, language: string) => unknown> = {
    prices: (text, language) => parsePrices(text, { language }),
    measures: (text, language) => parseMeasures(text, language),
    dates: (text, language) => parseDates(text, { language, now }),
    conditions: (text) => findConditions(text),
    returns: (text) => findReturns(text),
    ratings: (text) => findRatings(text),
    'all claims': (text, language) => findClaims(listingOf('', text, language), builtInMakers),
  };
  console.log(
    `| reader | ${Object.keys(prose)
      .map((language) => `${language} ms | ratio`)
      .join(' | ')} |`,
  );
  console.log(
    `| --- | ${Object.keys(prose)
      .map(() => '---: | ---:')
      .join(' | ')} |`,
  );
  const texts = Object.entries(prose).map(([language, text]) => ({
    language,
    text: text.repeat(Math.ceil(size / text.length)).slice(0, size),
  }));
  const folding = texts.map(({ text }) => leastMs(() => foldWords(text)));
  for (const [name, read] of Object.entries(readers)) {
    const cells = texts.map(({ language, text }, index) => {
      const ms = leastMs(() => read(text, language));
      return `${ms.toFixed(1)} | ${Math.round(ms / (folding[index] as number))}`;
    });
    console.log(`| ${name} | ${cells.join(' | ')} |`);
  }
  console.log(
    `\n${size} characters each; the ratio is to folding the text once (${folding.map((ms) => ms.toFixed(2)).join(', ')} ms).`,
  );
}
