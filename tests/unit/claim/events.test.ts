import { describe, expect, it } from 'vitest';
import { type Claim, findClaims } from '../../../src/claim';
import { isSure } from '../../../src/evidence';
import { listingOf, ondrasse } from './listing-of';

const year = (day: string | null | undefined) => day?.slice(0, 4) ?? '';

/** What happened to the piece, in short: what, of which parts, when, by whom, with which paper, and whether it is sure. */
function eventOf(claim: Claim): string | null {
  const details = (done: string) => {
    const { span, by, invoice } = claim as Extract<Claim, { kind: 'replaced' }>;
    const when = span && (year(span.from) === year(span.to) ? year(span.from) : `${year(span.from)}-${year(span.to)}`);
    return [done, when, by, invoice && 'paper', isSure(claim) ? '' : 'unsure'].filter(Boolean).join(' ');
  };
  switch (claim.kind) {
    case 'replaced':
      return details(`${claim.how ?? 'replaced'} ${claim.parts.join('+') || 'somewhere'}`);
    case 'bought':
      return details(claim.how ?? 'bought');
    case 'appraised':
      return details('appraised');
    case 'stored':
      return claim.polarity === 'is' ? details('stored') : null;
    default:
      return null;
  }
}

const eventsOf = (sentence: string, language: string) => [
  ...new Set(findClaims(listingOf('', sentence, language), [ondrasse]).flatMap((claim) => eventOf(claim) ?? [])),
];

const table: Record<string, [string, string[]][]> = {
  en: [
    ['Zip and lining replaced 2018, invoice included.', ['replaced zip+lining 2018 paper']],
    ['New strap fitted by a saddler in 2017 (I have the invoice, £85).', ['replaced strap 2017 craftsman paper']],
    ['Made in 1994, relined in 2016 by the maker.', ['relined lining 2016 maker']],
    ['Restitched 2018, relined 2019.', ['replaced stitching 2018', 'relined lining 2019']],
    ['Relined by a saddler, the lock was replaced.', ['relined lining craftsman', 'replaced lock']],
    ['The lock was replaced, a saddler relined it in 2019.', ['replaced lock', 'relined lining 2019 craftsman']],
    ['Zip replaced in 2018, relined by a saddler in 2019.', ['replaced zip 2018', 'relined lining 2019 craftsman']],
    ['In 2012 the lock was exchanged and the handles re-dyed.', ['replaced lock 2012', 're-dyed handle 2012']],
    ['A present from my husband in 2005, with receipt.', ['gifted 2005 paper']],
    ['Bought in 1998, receipt lost.', ['bought 1998']],
    ['Bought in 1998, without receipt.', ['bought 1998']],
    ['In the wardrobe since 1999.', ['stored 1999-']],
    ['Owned since 1994.', ['bought 1994']],
    ['Zip replaced by a saddler in May 2016.', ['replaced zip 2016 craftsman']],
    ['Appraised in 2018 at 400 euros.', ['appraised 2018']],
    ['I think the zip was replaced around 2010.', ['replaced zip 2010 unsure']],
    ['The previous owner supposedly had it relined in 2005.', ['relined lining 2005 unsure']],
  ],
  fr: [
    [
      'Fermeture éclair remplacée en 2016 chez un maroquinier (facture jointe, 45 €).',
      ['replaced zip 2016 craftsman paper'],
    ],
    ['Anses reteintes en 2021 par un cordonnier.', ['re-dyed handle 2021 craftsman']],
    ['Cadeau de mariage de 2005.', ['gifted 2005']],
    ['Hérité de mon grand-père en 2003.', ['gifted 2003']],
  ],
  de: [
    [
      'Sattler hat 2019 die Nähte erneuert und den Henkel ausgetauscht, Rechnung liegt bei.',
      ['replaced stitching 2019 craftsman paper', 'replaced handle 2019 craftsman paper'],
    ],
    ['Besatz wurde 2020 dunkelbraun nachgefärbt.', ['re-dyed trim 2020']],
    ['Futter 2015 beim Hersteller ersetzt.', ['replaced lining 2015 maker']],
  ],
  it: [
    ['Tracolla sostituita nel 2017 da un sellaio (ricevuta allegata).', ['replaced strap 2017 craftsman paper']],
    ['Cerniera nuova nel 2019 dal calzolaio.', ['replaced zip 2019 craftsman']],
    ['Cerniera, nuova nel 2019.', []],
    ['Valutata nel 2019.', ['appraised 2019']],
    ['La cerniera è stata sostituita nel 2021 da un calzolaio.', ['replaced zip 2021 craftsman']],
  ],
  es: [
    [
      'La cremallera se cambió en 2019 en una zapatería, abierta desde 1958, tengo el tique.',
      ['replaced zip 2019 craftsman paper'],
    ],
    ['Los ribetes se tiñeron de marrón en 2020.', ['re-dyed trim 2020']],
    ['Cierre nuevo en 2019.', ['replaced lock 2019']],
    ['Cierre, nuevo en 2019.', []],
  ],
  nl: [['Schouderriem in 2017 door een zadelmaker vervangen, bon erbij.', ['replaced strap 2017 craftsman paper']]],
  ja: [
    ['ストラップは2017年に職人さんに交換してもらいました（領収書あり）。', ['replaced strap 2017 craftsman paper']],
    ['縁の革は2021年に黒く染め直しました。', ['re-dyed edge 2021']],
    ['ファスナーを2018年に交換してもらいました。', ['replaced zip 2018']],
  ],
};

describe('what happened to the piece, with its day, part, doer and paper', () => {
  for (const [language, rows] of Object.entries(table))
    it.each(rows)(`${language}: %s`, (sentence, expected) => expect(eventsOf(sentence, language)).toEqual(expected));
});

const nothing: Record<string, string[]> = {
  en: [
    'The zip can be replaced.',
    'Was the zip replaced?',
    'The zip was never replaced.',
    'If the lining were replaced it would be perfect.',
    'The wallet was repaired in 2010.',
    'With a restored box.',
    'The zip may be replaced in May 2016.',
    'Size estimated at 30 cm.',
    'Leather dyed in the vat.',
  ],
  fr: ['La fermeture doit être remplacée.'],
  de: ['Der Reißverschluss muss ersetzt werden.', 'Breite auf 30 cm geschätzt.'],
  it: ['Cuoio tinto in botte.'],
  es: ['Cuero teñido al natural.'],
  nl: ['De rits moet vervangen worden.'],
  ja: ['ファスナーは交換が必要です。'],
};

describe('what did not happen, or to something else, is no event', () => {
  for (const [language, sentences] of Object.entries(nothing))
    it.each(sentences)(`${language}: %s`, (sentence) => expect(eventsOf(sentence, language)).toEqual([]));
});
