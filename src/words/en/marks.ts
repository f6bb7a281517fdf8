import type { DiamondFault, PatentedFastener } from '../../mark';
import type { MarkWords } from '../mark-words';

const fasteners: Record<PatentedFastener, string> = {
  'garment-fastening': 'a fastening for garments',
  'slide-fastening': 'a shoe fastening with a slide',
  'hookless-fastener': 'a hookless fastener',
  'separable-fastener': 'a separable fastener, the modern zip',
  'hook-and-loop-tape': 'hook-and-loop tape',
};

const series = { '1842-1867': '1842 to 1867', '1868-1883': '1868 to 1883' };
function fault(why: DiamondFault): string {
  switch (why.kind) {
    case 'right-corner':
      return `the right corner holds a day or a letter, not “${why.is}”`;
    case 'year-letter':
      return `“${why.is}” is no year letter of ${series[why.series]}`;
    case 'month-letter':
      return `“${why.is}” is no month letter`;
    case 'no-day':
      return why.day === null
        ? 'the corner of the day holds no number'
        : `the month that “${why.month}” stands for has no day ${why.day}`;
    case 'march-1878':
      return 'W with G stood for 1 to 6 March 1878 only';
  }
}

const patents = { utility: 'patent ', design: 'design patent D' };

export const marks: MarkWords = {
  says: {
    row: ({ row, place, span, normal }, kit) => {
      const subject = place === null ? marks.rows[row] : `“${kit.place(place)}” was written on goods`;
      return `${subject} ${kit.during(span)}${normal ? ' in normal use' : ''}`;
    },
    grant: ({ series: of, number, year, beyond }, kit) =>
      `US ${patents[of]}${kit.number(number)} was granted in ${year}${beyond ? ' or later' : ''}, so what carries it is no older`,
    'grant-since': ({ series: of, number, year }, kit) =>
      `US ${patents[of]}${kit.number(number)} was granted no earlier than ${year}`,
    'patent-of': ({ date }, kit) => `A patent of ${kit.day(date)} is named, so what carries it is no older`,
    'fastener-patent': ({ number, of, granted }, kit) =>
      `US patent ${kit.number(number)} for ${fasteners[of]} was granted on ${kit.day(granted)}`,
    diamond: ({ days }, kit) =>
      `The design was registered on ${kit.either(days.map(kit.day))}, so what carries the mark is no older`,
    'no-diamond': ({ why }) => `No design was registered under these letters: ${fault(why)}`,
    'registered-design': ({ number, years: [first, last], beyond }, kit) =>
      `UK design ${kit.number(number)} was registered in ${first}${last > first ? ` or ${last}` : ''}${beyond ? ' or later' : ''}, so what carries it is no older`,
    'date-letter': ({ office, letter, years, first }) => {
      if (years.length === 0) return `${office} used no date letter “${letter}” since ${first}`;
      const said = years.map((year) => (year < 1975 ? `${year} to ${year + 1}` : String(year)));
      return `${office} used the date letter “${letter}” in ${said.join(', ')}`;
    },
    'lone-date-letter': ({ letter, offices }) =>
      `The date letter “${letter}” gives no year, because ${offices === 'several' ? 'more than one office is named' : 'no office is named'}`,
    'new-fineness': ({ metal, parts }) => `A UK hallmark with ${parts} for ${metal} is possible from 1999 only`,
    'palladium-hallmark': () => 'Palladium carries a UK hallmark since July 2009',
    fineness: ({ metal, parts }) => `${parts} is a claim of fineness for ${metal}, and dates nothing by itself`,
    'convention-mark': () => 'The common control mark with the scales exists since 27 June 1975',
    'textile-number': ({ series: of, number, from }) =>
      `${of} ${number} was given to a company in ${from} or later, so the label is no older`,
    'no-textile-number': ({ series: of, number }) =>
      `No ${of} number ${number} was given out, so it is most likely misread`,
  },
  rows: {
    'us-symbols-only': 'Care symbols without words were allowed on US labels',
    'symbols-europe': 'Care symbols were used on European labels',
    'drying-symbol': 'A drying symbol was used on care labels',
    'canada-coloured': 'Coloured care symbols were used on Canadian labels',
    'wet-cleaning': 'The letter W in a circle was used on care labels',
    barcode: 'A retail barcode was written on labels',
    'ean-13': 'A 13-digit barcode number was written on labels',
    'qr-code': 'A QR code was written on labels',
    'web-address': 'A web address was written on labels',
    'e-mail': 'An e-mail address was written on labels',
    'https-or-handle': 'An https address or a social-media name was written on labels',
    'hook-and-loop': 'Hook-and-loop tape was sold',
    'nylon-coil': 'Zips with a nylon coil were sold',
    'occupied-japan': '“Occupied Japan” was written on goods',
    nippon: '“Nippon” was written on goods',
    'zone-germany': '“Zone Germany” was written on goods',
    'west-germany': '“West Germany” was written on goods',
    'east-germany': '“East Germany” was written on goods',
    ussr: '“USSR” was written on goods',
    czechoslovakia: '“Czechoslovakia” was written on goods',
    'czech-republic': '“Czech Republic” was written on goods',
    slovakia: '“Slovakia” was written on goods',
    yugoslavia: '“Yugoslavia” was written on goods',
    'croatia-slovenia-macedonia-bosnia': 'The name of this country was written on goods',
    'serbia-and-montenegro': '“Serbia and Montenegro” was written on goods',
    burma: '“Burma” was written on goods',
    myanmar: '“Myanmar” was written on goods',
    'british-hong-kong': '“British Hong Kong” was written on goods',
    'empire-made': '“Empire Made” was written on goods',
    taiwan: '“Taiwan” was written on goods',
    prc: "“People's Republic of China” was written on goods",
    korea: '“Korea” was written on goods',
    siam: '“Siam” was written on goods',
    persia: '“Persia” was written on goods',
    ceylon: '“Ceylon” was written on goods',
    'east-pakistan': '“East Pakistan” was written on goods',
    rhodesia: '“Rhodesia” was written on goods',
    zaire: '“Zaire” was written on goods',
    'made-in-eu': '“Made in EU” was written on goods',
    'made-in-eec': '“Made in EEC” was written on goods',
    'made-in': 'The words “made in” with a country were written on goods',
    'us-area-code': 'A US area code was written on labels',
    'us-toll-free': 'A US toll-free number was written on labels',
    'london-01': 'A London number with 01 was written on labels',
    'london-071-081': 'A London number with 071 or 081 was written on labels',
    'london-0171-0181': 'A London number with 0171 or 0181 was written on labels',
    'london-020': 'A London number with 020 was written on labels',
    'uk-01': 'A British area code that begins with 01 was written on labels',
    'french-10': 'A ten-digit French number was written on labels',
    'country-code': 'A number with + and a country code was written on labels',
    'us-zone': 'A US postal zone number was written on labels',
    'us-zip': 'A five-digit ZIP code was written on labels',
    'us-zip-4': 'A nine-digit ZIP code was written on labels',
    'uk-postcode': 'A British postcode was written on labels',
    'german-w-o': 'A German postcode with W or O was written on labels',
    'german-5': 'A five-digit German postcode was written on labels',
    'italian-cap': 'A five-digit Italian postcode was written on labels',
    'french-5': 'A five-digit French postcode was written on labels',
    canadian: 'A Canadian postal code was written on labels',
    'japanese-7': 'A seven-digit Japanese postcode was written on labels',
    dem: 'A price in DEM was written on tags',
    frf: 'A price in FRF was written on tags',
    itl: 'A price in ITL was written on tags',
    esp: 'A price in ESP was written on tags',
    ats: 'A price in ATS was written on tags',
    bef: 'A price in BEF was written on tags',
    nlg: 'A price in NLG was written on tags',
    iep: 'A price in IEP was written on tags',
    fim: 'A price in FIM was written on tags',
    pte: 'A price in PTE was written on tags',
    grd: 'A price in GRD was written on tags',
    luf: 'A price in LUF was written on tags',
    eur: 'A price in euro was written on tags',
    'gbp-shillings': 'A price in pounds, shillings and pence was written on tags',
    'reprocessed-wool': '“Reprocessed wool” or “reused wool” was written on US labels',
    'wool-share': 'A share of wool was written on US labels',
    'fibre-shares': 'Fibre names with percentages were written on US labels',
    'care-words': 'Washing instructions were sewn into US clothes',
  },
  notes: {
    barcode: 'On clothing and bags mostly after 1985. A shop may have added a sticker later.',
    'ean-13': 'A shop may have added a sticker later.',
    'qr-code': 'On labels mostly after 2005.',
    'web-address': 'On labels not usual before 1994.',
    'e-mail': 'On labels not usual before about 1992.',
    'occupied-japan': 'Popular sources say from 1945; the directive is of February 1947. Reproductions exist.',
    'west-germany': 'Old labels were used up until about 1991.',
    czechoslovakia: '1939 to 1945 the words were others (Protectorate, Slovakia).',
    slovakia: 'Also the name of a state of 1939 to 1945 (from memory).',
    'croatia-slovenia-macedonia-bosnia': 'The names were also written on goods before.',
    burma: 'Both names occur after 1989.',
    'empire-made': 'Mostly of the 1950s to 1970s.',
    'made-in': 'No statute asks for these words; that they begin in 1914 is folklore.',
    'uk-postcode': 'Trial in Norwich in 1959, the whole country from 1965 to 1974.',
    'fibre-shares': 'Some makers did so before.',
    'care-words': 'Some makers did so before.',
  },
  cautions: {
    'approximate-table': 'The table is approximate, and the registration dates the design, not the piece.',
    'company-not-piece':
      'The number dates the company’s registration, not the piece, and says nothing of the country of making.',
    'corner-misread': 'Most likely a corner was misread.',
    'dates-grant': 'A patent number dates the grant; the piece may be decades younger.',
    'dates-label': 'It dates the label: one that was added or renewed later, a receipt or a watermark says less.',
    'dates-metal': 'It dates the metal: a lock or a mount may have been replaced.',
    'dates-registration': 'The mark dates the registration of the design, not the making.',
    'dates-sale': 'It dates the price tag, and so a sale, not the making.',
    'dates-tag': 'It dates the tag: a shop may have added its own later.',
    'fastener-replaced': 'A fastener may have been replaced, and a patent stays on the part long after the grant.',
    'for-us-only': 'Only for a label made for the United States.',
    'from-below': 'A patent date bounds the making from below only.',
    'law-of-us': 'Makers could write so before they had to, and the law is that of the United States.',
    'no-hallmark-alone': 'One number alone is no hallmark.',
    'not-tuesday': 'US patents are granted on Tuesdays, and this was none: read the photo again.',
    'old-labels': 'Old stock of labels was used up after a name had ended, and copies of old labels exist.',
    'other-country': 'The words do not say of which country the patent is; this is its date if it is a US patent.',
    'sharper-photo': 'A sharper photo of the label would show it.',
  },
  letterStyle: (first) =>
    `The letter's style and shield decide which year it is; a year before ${first} is possible too. It dates the metal, which may be older than the leather.`,
};
