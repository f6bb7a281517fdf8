import type { DiamondFault, PatentedFastener } from '../../mark';
import type { MarkWords } from '../mark-words';

const fasteners: Record<PatentedFastener, string> = {
  'garment-fastening': 'einen Kleiderverschluss',
  'slide-fastening': 'einen Schuhverschluss mit Schieber',
  'hookless-fastener': 'einen Verschluss ohne Haken',
  'separable-fastener': 'einen teilbaren Verschluss, den heutigen Reißverschluss',
  'hook-and-loop-tape': 'Klettband',
};

const metals: Record<string, string> = { gold: 'Gold', silver: 'Silber', platinum: 'Platin', palladium: 'Palladium' };
const metalName = (metal: string) => metals[metal] ?? metal;

const series = { '1842-1867': '1842 bis 1867', '1868-1883': '1868 bis 1883' };
function fault(why: DiamondFault): string {
  switch (why.kind) {
    case 'right-corner':
      return `In der rechten Ecke steht ein Tag oder ein Buchstabe, nicht „${why.is}“`;
    case 'year-letter':
      return `„${why.is}“ ist kein Jahresbuchstabe der Jahre ${series[why.series]}`;
    case 'month-letter':
      return `„${why.is}“ ist kein Monatsbuchstabe`;
    case 'no-day':
      return why.day === null
        ? 'In der Ecke des Tages steht keine Zahl'
        : `Der Monat, für den „${why.month}“ steht, hat keinen Tag ${why.day}`;
    case 'march-1878':
      return 'W mit G stand nur für den 1. bis 6. März 1878';
  }
}

const patents = { utility: 'US-Patent ', design: 'US-Designpatent D' };

export const marks: MarkWords = {
  says: {
    row: ({ row, place, span, normal }, kit) => {
      const subject = place === null ? marks.rows[row] : `„${kit.place(place)}“ auf Waren`;
      return `${subject}: ${kit.span(span)}${normal ? ', in üblichem Gebrauch' : ''}`;
    },
    grant: ({ series: of, number, year, beyond }, kit) =>
      `${patents[of]}${kit.number(number)} wurde ${year}${beyond ? ' oder später' : ''} erteilt; was es trägt, ist nicht älter`,
    'grant-since': ({ series: of, number, year }, kit) =>
      `${patents[of]}${kit.number(number)} wurde frühestens ${year} erteilt`,
    'patent-of': ({ date }, kit) => `Ein Patent vom ${kit.day(date)} wird genannt; was es trägt, ist nicht älter`,
    'fastener-patent': ({ number, of, granted }, kit) =>
      `US-Patent ${kit.number(number)} für ${fasteners[of]} wurde am ${kit.day(granted)} erteilt`,
    diamond: ({ days }, kit) =>
      `Das Muster wurde am ${kit.either(days.map(kit.day))} eingetragen; was das Zeichen trägt, ist nicht älter`,
    'no-diamond': ({ why }) => `Unter diesen Buchstaben wurde kein Muster eingetragen: ${fault(why)}`,
    'registered-design': ({ number, years: [first, last], beyond }, kit) =>
      `Das britische Muster ${kit.number(number)} wurde ${first}${last > first ? ` oder ${last}` : ''}${beyond ? ' oder später' : ''} eingetragen; was es trägt, ist nicht älter`,
    'date-letter': ({ office, letter, years, first }) => {
      if (years.length === 0) return `${office} verwendete seit ${first} keinen Jahresbuchstaben „${letter}“`;
      const said = years.map((year) => (year < 1975 ? `${year} bis ${year + 1}` : String(year)));
      return `${office} verwendete den Jahresbuchstaben „${letter}“: ${said.join(', ')}`;
    },
    'lone-date-letter': ({ letter, offices }) =>
      `Der Jahresbuchstabe „${letter}“ ergibt kein Jahr, denn ${offices === 'several' ? 'es sind mehrere Prüfämter genannt' : 'es ist kein Prüfamt genannt'}`,
    'new-fineness': ({ metal, parts }) =>
      `Ein britischer Stempel mit ${parts} für ${metalName(metal)} ist erst ab 1999 möglich`,
    'palladium-hallmark': () => 'Palladium trägt seit Juli 2009 einen britischen Stempel',
    fineness: ({ metal, parts }) =>
      `${parts} behauptet einen Feingehalt von ${metalName(metal)} und ergibt allein kein Jahr`,
    'convention-mark': () => 'Das gemeinsame Prüfzeichen mit der Waage gibt es seit dem 27. Juni 1975',
    'textile-number': ({ series: of, number, from }) =>
      `${of} ${number} wurde ${from} oder später an ein Unternehmen vergeben; das Etikett ist nicht älter`,
    'no-textile-number': ({ series: of, number }) =>
      `Die Nummer ${of} ${number} wurde nie vergeben und ist wohl falsch gelesen`,
  },
  rows: {
    'us-symbols-only': 'Pflegesymbole ohne Worte auf Etiketten für die USA erlaubt',
    'symbols-europe': 'Pflegesymbole auf europäischen Etiketten',
    'drying-symbol': 'Das Zeichen für den Trockner auf Pflegeetiketten',
    'canada-coloured': 'Farbige Pflegesymbole auf kanadischen Etiketten',
    'wet-cleaning': 'Ein W im Kreis auf Pflegeetiketten',
    barcode: 'Ein Strichcode des Handels auf Etiketten',
    'ean-13': 'Eine Strichcode-Nummer mit 13 Ziffern auf Etiketten',
    'qr-code': 'Ein QR-Code auf Etiketten',
    'web-address': 'Eine Internetadresse auf Etiketten',
    'e-mail': 'Eine E-Mail-Adresse auf Etiketten',
    'https-or-handle': 'Eine https-Adresse oder ein Name in einem sozialen Netz auf Etiketten',
    'hook-and-loop': 'Klettband im Handel',
    'nylon-coil': 'Reißverschlüsse mit Nylonspirale im Handel',
    'occupied-japan': '„Occupied Japan“ auf Waren',
    nippon: '„Nippon“ auf Waren',
    'zone-germany': '„Zone Germany“ auf Waren',
    'west-germany': '„West Germany“ auf Waren',
    'east-germany': '„East Germany“ auf Waren',
    ussr: '„USSR“ auf Waren',
    czechoslovakia: '„Czechoslovakia“ auf Waren',
    'czech-republic': '„Czech Republic“ auf Waren',
    slovakia: '„Slovakia“ auf Waren',
    yugoslavia: '„Yugoslavia“ auf Waren',
    'croatia-slovenia-macedonia-bosnia': 'Der Name dieses Landes auf Waren',
    'serbia-and-montenegro': '„Serbia and Montenegro“ auf Waren',
    burma: '„Burma“ auf Waren',
    myanmar: '„Myanmar“ auf Waren',
    'british-hong-kong': '„British Hong Kong“ auf Waren',
    'empire-made': '„Empire Made“ auf Waren',
    taiwan: '„Taiwan“ auf Waren',
    prc: "„People's Republic of China“ auf Waren",
    korea: '„Korea“ auf Waren',
    siam: '„Siam“ auf Waren',
    persia: '„Persia“ auf Waren',
    ceylon: '„Ceylon“ auf Waren',
    'east-pakistan': '„East Pakistan“ auf Waren',
    rhodesia: '„Rhodesia“ auf Waren',
    zaire: '„Zaire“ auf Waren',
    'made-in-eu': '„Made in EU“ auf Waren',
    'made-in-eec': '„Made in EEC“ auf Waren',
    'made-in': 'Die Worte „made in“ mit einem Land auf Waren',
    'us-area-code': 'Eine Vorwahl der USA auf Etiketten',
    'us-toll-free': 'Eine gebührenfreie Nummer der USA auf Etiketten',
    'london-01': 'Eine Londoner Nummer mit 01 auf Etiketten',
    'london-071-081': 'Eine Londoner Nummer mit 071 oder 081 auf Etiketten',
    'london-0171-0181': 'Eine Londoner Nummer mit 0171 oder 0181 auf Etiketten',
    'london-020': 'Eine Londoner Nummer mit 020 auf Etiketten',
    'uk-01': 'Eine britische Vorwahl, die mit 01 beginnt, auf Etiketten',
    'french-10': 'Eine zehnstellige französische Nummer auf Etiketten',
    'country-code': 'Eine Nummer mit + und Landesvorwahl auf Etiketten',
    'us-zone': 'Eine Postzone der USA auf Etiketten',
    'us-zip': 'Eine fünfstellige Postleitzahl der USA auf Etiketten',
    'us-zip-4': 'Eine neunstellige Postleitzahl der USA auf Etiketten',
    'uk-postcode': 'Eine britische Postleitzahl auf Etiketten',
    'german-w-o': 'Eine deutsche Postleitzahl mit W oder O auf Etiketten',
    'german-5': 'Eine fünfstellige deutsche Postleitzahl auf Etiketten',
    'italian-cap': 'Eine fünfstellige italienische Postleitzahl auf Etiketten',
    'french-5': 'Eine fünfstellige französische Postleitzahl auf Etiketten',
    canadian: 'Eine kanadische Postleitzahl auf Etiketten',
    'japanese-7': 'Eine siebenstellige japanische Postleitzahl auf Etiketten',
    dem: 'Ein Preis in DEM auf Preisschildern',
    frf: 'Ein Preis in FRF auf Preisschildern',
    itl: 'Ein Preis in ITL auf Preisschildern',
    esp: 'Ein Preis in ESP auf Preisschildern',
    ats: 'Ein Preis in ATS auf Preisschildern',
    bef: 'Ein Preis in BEF auf Preisschildern',
    nlg: 'Ein Preis in NLG auf Preisschildern',
    iep: 'Ein Preis in IEP auf Preisschildern',
    fim: 'Ein Preis in FIM auf Preisschildern',
    pte: 'Ein Preis in PTE auf Preisschildern',
    grd: 'Ein Preis in GRD auf Preisschildern',
    luf: 'Ein Preis in LUF auf Preisschildern',
    eur: 'Ein Preis in Euro auf Preisschildern',
    'gbp-shillings': 'Ein Preis in Pfund, Schilling und Pence auf Preisschildern',
    'reprocessed-wool': '„Reprocessed wool“ oder „reused wool“ auf Etiketten der USA',
    'wool-share': 'Ein Anteil an Wolle auf Etiketten der USA',
    'fibre-shares': 'Fasernamen mit Prozenten auf Etiketten der USA',
    'care-words': 'Waschanleitungen in Kleidung der USA',
  },
  notes: {
    barcode: 'Auf Kleidung und Taschen meist nach 1985. Ein Geschäft kann später einen Aufkleber angebracht haben.',
    'ean-13': 'Ein Geschäft kann später einen Aufkleber angebracht haben.',
    'qr-code': 'Auf Etiketten meist nach 2005.',
    'web-address': 'Auf Etiketten vor 1994 unüblich.',
    'e-mail': 'Auf Etiketten vor etwa 1992 unüblich.',
    'occupied-japan': 'Verbreitete Darstellungen nennen 1945; die Weisung ist vom Februar 1947. Es gibt Nachbildungen.',
    'west-germany': 'Alte Etiketten wurden bis etwa 1991 aufgebraucht.',
    czechoslovakia: 'Von 1939 bis 1945 waren es andere Worte (Protektorat, Slowakei).',
    slovakia: 'So hieß auch ein Staat von 1939 bis 1945 (aus dem Gedächtnis).',
    'croatia-slovenia-macedonia-bosnia': 'Die Namen standen auch früher schon auf Waren.',
    burma: 'Nach 1989 kommen beide Namen vor.',
    'empire-made': 'Meist aus den 1950er bis 1970er Jahren.',
    'made-in': 'Kein Gesetz verlangt diese Worte; dass sie 1914 beginnen, ist eine Legende.',
    'uk-postcode': 'Versuch in Norwich 1959, das ganze Land von 1965 bis 1974.',
    'fibre-shares': 'Manche Hersteller taten es schon vorher.',
    'care-words': 'Manche Hersteller taten es schon vorher.',
  },
  cautions: {
    'approximate-table': 'Die Tabelle ist ungefähr, und die Eintragung datiert das Muster, nicht das Stück.',
    'company-not-piece':
      'Die Nummer datiert die Registrierung des Unternehmens, nicht das Stück, und sagt nichts über das Herstellungsland.',
    'corner-misread': 'Wahrscheinlich ist eine Ecke falsch gelesen.',
    'dates-grant': 'Eine Patentnummer datiert die Erteilung; das Stück kann Jahrzehnte jünger sein.',
    'dates-label':
      'Es datiert das Etikett: ein später angebrachtes oder erneuertes, ein Beleg oder ein Wasserzeichen sagt weniger.',
    'dates-metal': 'Es datiert das Metall: Ein Schloss oder ein Beschlag kann ersetzt worden sein.',
    'dates-registration': 'Das Zeichen datiert die Eintragung des Musters, nicht die Herstellung.',
    'dates-sale': 'Es datiert das Preisschild und damit einen Verkauf, nicht die Herstellung.',
    'dates-tag': 'Es datiert den Anhänger: Ein Geschäft kann später einen eigenen angebracht haben.',
    'fastener-replaced':
      'Ein Verschluss kann ersetzt worden sein, und ein Patent steht noch lange nach der Erteilung auf dem Teil.',
    'for-us-only': 'Nur bei einem Etikett, das für die USA gemacht ist.',
    'from-below': 'Das Datum eines Patents begrenzt die Herstellung nur nach unten.',
    'law-of-us': 'Hersteller konnten es schreiben, bevor sie mussten, und das Gesetz ist das der USA.',
    'no-hallmark-alone': 'Eine Zahl allein ist kein Stempel eines Prüfamts.',
    'not-tuesday': 'US-Patente werden dienstags erteilt, und dies war kein Dienstag: das Foto noch einmal ansehen.',
    'old-labels':
      'Alte Etiketten wurden aufgebraucht, nachdem ein Name geendet hatte, und es gibt Nachbildungen alter Etiketten.',
    'other-country': 'Die Worte nennen nicht das Land des Patents; das Datum gilt, wenn es ein Patent der USA ist.',
    'sharper-photo': 'Ein schärferes Foto des Etiketts würde sie zeigen.',
  },
  letterStyle: (first) =>
    `Schrift und Schild des Buchstabens entscheiden, welches Jahr gemeint ist; auch ein Jahr vor ${first} ist möglich. Er datiert das Metall, das älter sein kann als das Leder.`,
};
