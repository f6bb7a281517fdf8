/** What a text may be full of: each is repeated to the length that is asked for. */
const repeated: Record<string, string> = {
  blanks: ' ',
  tabs: '\t',
  'hard spaces': '\u00a0',
  'wide spaces': '\u3000',
  newlines: '\n',
  'carriage returns': '\r',
  'blanks and newlines': '   \n',
  digits: '1',
  'digits apart': '1 ',
  initials: 'A.',
  'accented initials': 'É.',
  'points before letters': '.a',
  'letters and halves': 'a½',
  'digits and stars': '1★',
  'digits in brackets': ')1',
  'labelled digits': 'h 1 ',
  'grouped digits': '1.234.',
  'grouped thousands': '1 234 ',
  letters: 'a',
  capitals: 'A',
  words: 'Ab ',
  'accented letters': 'é',
  'combining marks': 'e\u0301',
  'combining marks alone': '\u0301',
  CJK: '漢',
  katakana: 'ブ',
  'bidi marks': '\u200f1',
  emoji: '😀',
  'half pairs': '\ud83d',
  points: '.',
  commas: ',',
  dashes: '-',
  slashes: '/',
  quotes: '"',
  apostrophes: "'",
  backslashes: '\\',
  brackets: '(',
  'closing brackets': ')',
  'square brackets': '[',
  braces: '{',
  'angle brackets': '<',
  'closed tags': '<b>',
  references: '&amp;',
  ampersands: '&',
  hashes: '#',
  'percent signs': '5% ',
  'currency signs': '$',
  prices: '€450 ',
  sizes: '30 x ',
  decades: "'9",
  'days and months': '12/03/1994 ',
  'comment ends': '-->',
  'comment starts': '<!--',
  'section ends': ']]>',
  'section starts': '<![CDATA[',
  'script comments': '/*',
  'line comments': '// ',
  'colons and words': 'a:b ',
  addresses: 'www.a.example ',
  mails: 'a@b.',
  'mail names': 'a.b+',
  'bars in blanks': ' | ',
  'data pairs': '"a":1,',
  'image addresses': '/a_100x100.jpg 1x, ',
  stars: '★4.8 (178) ',
  phrases: 'not new ',
  'bare conditions': 'used, new. ',
  'condition words': 'very good condition, never used. ',
  'terms words': 'no returns, free shipping, sold, 12 watchers, 3 bids, reserved. ',
  'marks words': 'Pat. No. 1,234,567 RN 12345 made in West Germany, 925 silver, date letter k, care label. ',
  'label words': 'Brand: Ondrasse. Zustand: neu. Sold by a private seller, code KV0915. ',
  prose: 'A lovely bag in good condition, made in Belgium in 1994, 30 cm wide, olive twill lining, 450 €. ',
  'Japanese prose':
    '昭和60年頃のバッグ、ベルギー製、裏地はオリーブのツイル、横30cm。刻印：KV0915。未使用品、45,000円。返品不可。',
};

/** Words that open what the readers look for: behind each stands a long run, which a careless pattern walks again and again. */
const leads =
  'Pat.|diamond|RN|rating|Condition:|care label|made in|product of|date letter is|Rd. No.|ZIP|silver|hallmark|www.|€|EUR|1|1994|H|30 x|code|' +
  'Seller: Anna|Brand|seller since|wide|circa|not|no|free|returns within|in the style of|"a|{"a":|<!--|//|<a |window.x =|昭和|刻印は|12 March|100% cotton|symbols only|' +
  'Registered Design|U.S. Patent|10/-|https://a';
const leadWords = leads.split('|');

const runs: Record<string, string> = {
  blanks: ' ',
  newlines: '\n',
  tabs: '\t',
  digits: '1',
  letters: 'a',
  points: '.',
  commas: ', ',
  dashes: '-',
  quotes: '"',
  brackets: '(',
  'hard spaces': '\u00a0',
};

const repeat = (piece: string, length: number) => piece.repeat(Math.ceil(length / piece.length)).slice(0, length);

/** Makes a text of about `length` characters; the same for the same length. */
export type Filling = (length: number) => string;

/** Every kind of filling by name: one piece again and again, the same between two words, and runs behind opening words. */
export const fillings: Record<string, Filling> = {
  ...Object.fromEntries(
    Object.entries(repeated).map(([name, piece]): [string, Filling] => [name, (length) => repeat(piece, length)]),
  ),
  ...Object.fromEntries(
    Object.entries(runs).map(([name, piece]): [string, Filling] => [
      `${name} between words`,
      (length) => `A bag${repeat(piece, length)}x`,
    ]),
  ),
  ...Object.fromEntries(
    Object.entries(runs).map(([name, piece]): [string, Filling] => [
      `${name} behind opening words`,
      (length) => leadWords.map((lead) => lead + repeat(piece, Math.ceil(length / leadWords.length))).join('\n'),
    ]),
  ),
};
