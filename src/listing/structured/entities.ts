/** Character references that shops write into data. Source: HTML Standard, "Named character references" (an extract). */
const named: Record<string, string> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  nbsp: '\u00A0',
  ensp: '\u2002',
  emsp: '\u2003',
  thinsp: '\u2009',
  ndash: '–',
  mdash: '—',
  hellip: '…',
  lsquo: '‘',
  rsquo: '’',
  ldquo: '“',
  rdquo: '”',
  laquo: '«',
  raquo: '»',
  euro: '€',
  pound: '£',
  yen: '¥',
  cent: '¢',
  copy: '©',
  reg: '®',
  trade: '™',
  deg: '°',
  times: '×',
  middot: '·',
  bull: '•',
  frac12: '½',
  frac14: '¼',
  frac34: '¾',
  sup2: '²',
  sup3: '³',
  prime: '′',
  Prime: '″',
  szlig: 'ß',
  agrave: 'à',
  aacute: 'á',
  acirc: 'â',
  atilde: 'ã',
  auml: 'ä',
  aring: 'å',
  aelig: 'æ',
  ccedil: 'ç',
  egrave: 'è',
  eacute: 'é',
  ecirc: 'ê',
  euml: 'ë',
  igrave: 'ì',
  iacute: 'í',
  icirc: 'î',
  iuml: 'ï',
  ntilde: 'ñ',
  ograve: 'ò',
  oacute: 'ó',
  ocirc: 'ô',
  otilde: 'õ',
  ouml: 'ö',
  oslash: 'ø',
  ugrave: 'ù',
  uacute: 'ú',
  ucirc: 'û',
  uuml: 'ü',
  Agrave: 'À',
  Aacute: 'Á',
  Auml: 'Ä',
  Ccedil: 'Ç',
  Egrave: 'È',
  Eacute: 'É',
  Ouml: 'Ö',
  Uuml: 'Ü',
  oelig: 'œ',
};

const character = (code: number, whole: string): string =>
  code > 0 && code <= 0x10ffff && !(code >= 0xd800 && code <= 0xdfff) ? String.fromCodePoint(code) : whole;

/** Decodes character references once: `&amp;lt;` becomes `&lt;`, which stays text. Unknown ones stay as they are. */
export const decodeEntities = (text: string): string =>
  text.includes('&')
    ? text.replace(
        /&(?:#x([0-9a-f]{1,6})|#([0-9]{1,7})|([A-Za-z][A-Za-z0-9]{1,10}));?/gi,
        (whole, hex, decimal, name) => {
          if (hex) return character(Number.parseInt(hex, 16), whole);
          if (decimal) return character(Number(decimal), whole);
          return Object.hasOwn(named, name) && whole.endsWith(';') ? (named[name] ?? whole) : whole;
        },
      )
    : text;

/**
 * Text of a data value: tags taken off (breaks and paragraphs become new lines), references decoded once afterwards, so
 * that what was escaped stays inert text. At most `limit` characters.
 */
export function plainText(value: string, limit = 20_000): string {
  const cut = value.length > limit * 2 ? value.slice(0, limit * 2) : value;
  const untagged = cut.includes('<')
    ? cut
        .replace(/<(?:script|style)\b[^<>]*>[^<]*<\/(?:script|style)>/gi, ' ')
        .replace(/<\/?(?:br|p|div|li|ul|ol|h[1-6]|tr)\b[^<>]*>/gi, '\n')
        .replace(/<\/?[a-z][^<>]*>/gi, '')
        .replace(/<!--[^<>]*-->/g, '')
    : cut;
  return tidyText(decodeEntities(untagged)).slice(0, limit);
}

/** Spaces within a line become one, lines are trimmed, several empty lines become one. */
export const tidyText = (text: string): string =>
  text
    .replace(/\r\n?/g, '\n')
    .replace(/[^\S\n\u00A0\u2009\u202F]+/g, ' ')
    .replace(/ ?\n ?/g, '\n')
    .replace(/\n{3,}/g, '\n\n')
    .trim();
