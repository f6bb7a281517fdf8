import type { ReasonWords } from '../reason-words';

const fields: Record<string, string> = {
  title: 'den Titel',
  description: 'die Beschreibung',
  price: 'den Preis',
  maker: 'den Hersteller',
  model: 'das Modell',
  condition: 'den Zustand',
  measures: 'die Maße',
  width: 'die Breite',
  colour: 'die Farbe',
  material: 'das Material',
};
const sections: Record<string, string> = {
  stamped: 'dazu, wann geprägt wurde',
  plants: 'zu Werkstätten',
  codeSystems: 'zum Aufbau der Codes',
  construction: 'zur Machart',
  models: 'zu Modellen',
  numbers: 'zu dem, was man an einem Teil messen kann',
  trade: 'zu Gewohnheiten im Handel',
  prices: 'zu Preisen',
};

export const reasons: ReasonWords = {
  'no-listing': ({ page }) =>
    ({
      list: 'die Seite zeigt viele Angebote, nicht eines',
      article: 'die Seite ist ein Artikel und bietet nichts an',
      cut: 'die Seite ist zu groß, um ganz gelesen zu werden',
      none: 'die Seite zeigt kein Angebot',
    })[page],
  'not-stated': ({ field }) => `die Seite nennt ${fields[field] ?? `„${field}“`} nicht`,
  'no-maker-file': () => 'zu diesem Stück ist keine Herstellerdatei bekannt',
  'maker-file-silent': ({ maker, section }) =>
    `die Herstellerdatei von ${maker} sagt nichts ${sections[section] ?? `zu ${section}`}`,
  'first-look': () => 'das Angebot wird zum ersten Mal angesehen',
  'code-unclear': ({ photo }, kit) =>
    `${photo === null ? 'der Code' : `der Stempel in ${kit.photo(photo)}`} war nicht sicher genug zu lesen`,
  'no-code': () => 'kein Code ist zu sehen oder zitiert',
  'no-date-claimed': () => 'das Angebot nennt keine Zeit',
  'no-date-known': () => 'weder ein Code noch das Angebot gibt eine Zeit an',
  'no-origin-claimed': () => 'das Angebot nennt kein Land der Herstellung',
  'fewer-than-two-origins': () => 'das Angebot nennt weniger als zwei Länder der Herstellung',
  'no-placed-code': () => 'kein Code nennt einen Ort',
  'no-placed-mark': () => 'kein Foto zeigt ein Zeichen, das einen Ort nennt',
  'no-part-material': () => 'das Angebot nennt kein Material eines Teils',
  'parts-replaced': ({ words }, kit) => `laut Angebot wurden diese Teile ersetzt: ${words.map(kit.quote).join(', ')}`,
  'no-dated-model': () => 'das Angebot nennt kein Modell mit bekannten Jahren',
  'no-age-word': () => 'das Angebot verwendet keines der beiden Wörter',
  'sold-new': () => 'die Stücke werden als neu verkauft, und neue einer Art gleichen sich',
  'no-fresh-part': () => 'das Angebot nennt kein Teil dieser Art frisch',
  'no-dating-code': () => 'kein Code gibt nach einem Aufbau des Herstellers eine Zeit an',
  'no-dating-mark': () => 'kein öffentliches Zeichen, das datiert, wurde gefunden',
  'no-plant-and-date': () => 'kein Code nennt eine Werkstatt und eine Zeit',
  'not-made-and-bought': () => 'das Angebot nennt nicht sowohl Herstellung als auch Kauf',
  'fewer-than-two-dates': () => 'das Angebot nennt weniger als zwei Zeiten',
  'no-date-before-stamping': ({ maker }) => `das Angebot nennt keine Zeit, bevor ${maker} stempelte`,
  'no-code-quoted': () => 'das Angebot zitiert keinen Code',
  'no-code-denied': () => 'das Angebot sagt nicht, dass kein Code da ist',
  'no-code-to-compare': () => 'in keinem Foto wurde ein Code zum Vergleich gelesen',
  'stamping-not-sure': ({ maker, span }, kit) =>
    `ob ${maker} zu der Zeit (${kit.span(span)}) stempelte, ist nicht sicher`,
  'another-offer': ({ offer }) =>
    ({
      piece: 'angeboten wird ein ganzes Stück',
      accessory: 'angeboten wird ein Accessoire und keine Tasche',
      part: 'angeboten wird ein Teil und kein ganzes Stück',
      packaging: 'angeboten wird eine Verpackung ohne ihr Stück',
      remade: 'was angeboten wird, hat jemand anders aus einem älteren Stück gemacht',
    })[offer],
  'several-pieces': () => 'mehrere Stücke werden angeboten, und es kann ein anderes oder alle betreffen',
  'no-photos': () => 'das Angebot hat kein Foto, das gelesen werden konnte',
  'photos-not-read': ({ unread, of, cause }, _, say) =>
    `${unread} von ${of} Fotos nicht gelesen${cause ? `: ${say(cause)}` : ''}`,
  'copies-only': ({ copies, of }) =>
    `${copies} von ${of} Fotos nur als Kopie gelesen, die nichts über die Fotos des Angebots sagt`,
  'photos-too-weak': ({ weak, of }) => `${weak} von ${of} Fotos zu klein oder zu unscharf, um einen Stempel zu zeigen`,
  'ground-not-measured': () => 'der Grund um das Stück wurde in keinem Foto gemessen',
  'not-yet-stamped': () => 'zur genannten Zeit stempelte der Hersteller noch nicht',
  'stamp-only-in-copy': () => 'der Stempel war nur in einer Kopie seines Fotos zu sehen',
  'no-stamp-read': () => 'in keinem Foto wurde ein Stempel gelesen',
  'seller-not-named-twice': () => 'die Seite nennt nicht bei beiden Blicken, wer verkauft',
  'price-without-like': ({ price }, kit) =>
    `${kit.price(price)} lässt sich nicht mit den Preisen der Herstellerdatei vergleichen`,
  'prices-in-two-currencies': () => 'die beiden Preise sind in verschiedenen Währungen',
  'no-earlier-price': () => 'das Angebot nennt keinen früheren Preis',
  'called-new': () => 'das Stück heißt neu',
  'not-called-new': () => 'das Angebot nennt das Stück weder neu noch unbenutzt',
  'maker-file-without-price': ({ maker }) => `die Herstellerdatei von ${maker} nennt keinen Preis`,
  'price-not-comparable': () => 'der frühere Preis ist nicht in derselben Währung bekannt',
  'no-model-of-file': () => 'das Angebot nennt kein Modell der Herstellerdatei',
  'model-without-size': ({ model }) => `die Herstellerdatei nennt keine Größe von ${model}`,
  'model-size-in-file': () => 'die Herstellerdatei nennt die Größe des Modells selbst',
  'no-sized-relative': () => 'die Herstellerdatei nennt weder eine Größe des Modells noch eines ähnlich benannten',
  'no-numbered-model': () => 'das Angebot nennt kein Modell mit einer solchen Zahl',
  'no-number-measured': ({ maker }) =>
    `auf den Fotos ist nichts gemessen, wofür die Herstellerdatei von ${maker} bei diesem Stück eine Zahl nennt`,
  'no-sides-stated': () => 'die Seite nennt weder Breite noch Höhe noch Tiefe',
  'fewer-than-two-sides': () => 'die Seite nennt nicht zwei der Maße Breite, Höhe und Tiefe',
  'law-elsewhere': () =>
    'Ort oder Währung des Verkaufs gehören nicht zur EU oder zum Vereinigten Königreich, auf deren Recht die Regel beruht',
  'market-not-told': () => 'die Seite nennt weder Land noch Währung, an denen sich zeigt, welches Recht gilt',
  'seller-not-business': () => 'die Seite sagt nicht, dass gewerblich verkauft wird',
  'name-without-file': ({ name }, kit) =>
    `ob ${kit.quote(name)} der Hersteller ist: keine Herstellerdatei nennt diesen Namen`,
};
