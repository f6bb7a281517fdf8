import { defineMark } from './define';
import { foundOnLabel, type WrittenForm } from './forms';
import { rowsById } from './rows';
import table from './tables/postal-codes.json';

const rows = rowsById(table.rows);
const states =
  'AL|AK|AZ|AR|CA|CO|CT|DE|FL|GA|HI|ID|IL|IN|IA|KS|KY|LA|ME|MD|MA|MI|MN|MS|MO|MT|NE|NV|NH|NJ|NM|NY|NC|ND|OH|OK|OR|PA|RI|SC|SD|TN|TX|UT|VT|VA|WA|WV|WI|WY|DC';
/** Abbreviations that are also words need the comma of an address before them. */
const wordStates = 'AL|CO|DE|HI|ID|IN|LA|MA|ME|OH|OK|OR|PA';
const state = `(?:(?<=,\\s{0,2})(?:${states})|\\b(?!(?:${wordStates})\\b)(?:${states}))`;
const stateWords =
  'Ala\\.|Ariz\\.|Ark\\.|Calif\\.|Cal\\.|Colo\\.|Conn\\.|Del\\.|Fla\\.|Ga\\.|Ill\\.|Ind\\.|Kan\\.|Ky\\.|La\\.|Mass\\.|Md\\.|Mich\\.|Minn\\.|Miss\\.|Mo\\.|N\\. ?J\\.|N\\. ?Y\\.|N\\. ?C\\.|Ohio|Okla\\.|Ore\\.|Pa\\.|R\\. ?I\\.|Tenn\\.|Tex\\.|Texas|Utah|Va\\.|Vt\\.|Wash\\.|Wis\\.|New York|California|Illinois|Massachusetts|Pennsylvania';
/** Letters with which British postcode areas begin (124 areas). Common knowledge, no source. */
const ukAreas =
  'AB|AL|B|BA|BB|BD|BH|BL|BN|BR|BS|BT|CA|CB|CF|CH|CM|CO|CR|CT|CV|CW|DA|DD|DE|DG|DH|DL|DN|DT|DY|E|EC|EH|EN|EX|FK|FY|G|GL|GU|GY|HA|HD|HG|HP|HR|HS|HU|HX|IG|IM|IP|IV|JE|KA|KT|KW|KY|L|LA|LD|LE|LL|LN|LS|LU|M|ME|MK|ML|N|NE|NG|NN|NP|NR|NW|OL|OX|PA|PE|PH|PL|PO|PR|RG|RH|RM|S|SA|SE|SG|SK|SL|SM|SN|SO|SP|SR|SS|ST|SW|SY|TA|TD|TF|TN|TQ|TR|TS|TW|UB|W|WA|WC|WD|WF|WN|WR|WS|WV|YO|ZE';

/** A code needs the words of an address before it: a code alone is as likely a model or date code. */
const forms: WrittenForm[] = [
  { row: 'us-zip-4', pattern: new RegExp(`(?:${state}|(?:${stateWords}))[\\s,]{1,3}\\d{5}-\\d{4}\\b`, 'gu') },
  { row: 'us-zip', pattern: new RegExp(`(?:${state}|(?:${stateWords}))[\\s,]{1,3}\\d{5}\\b(?!-\\d{4})`, 'gu') },
  { row: 'us-zip', pattern: /\bZIP(?:\s{1,8}code)?\s{0,8}:?\s{0,8}\d{5}\b(?!-\d{4})/giu },
  {
    row: 'us-zone',
    pattern: new RegExp(`\\b[A-Z][\\p{L}.]{1,40} \\d{1,2}, (?:${states}\\b|${stateWords})(?![\\s,]+\\d{5})`, 'gu'),
  },
  {
    row: 'uk-postcode',
    pattern: new RegExp(`(?<=\\p{L}{3,}[\\s,.]{1,3})\\b(?:${ukAreas})\\d[\\dA-Z]? \\d[ABD-HJLNP-UW-Z]{2}\\b`, 'gu'),
  },
  { row: 'german-w-o', pattern: /(?<![\p{L}\d])[WO]-\d{4} \p{Lu}\p{L}+/gu },
  { row: 'german-5', pattern: /(?<![\p{L}\d])D-\d{5}(?= \p{Lu}\p{L}{2})/gu },
  { row: 'italian-cap', pattern: /(?<![\p{L}\d])I-\d{5}(?= \p{Lu}\p{L}{2})/gu },
  { row: 'french-5', pattern: /(?<![\p{L}\d])F-\d{5}(?= \p{Lu}\p{L}{2})/gu },
  {
    row: 'canadian',
    pattern:
      /\b(?:AB|BC|MB|NB|NL|NS|ON|PE|QC|SK|Ontario|Quebec|Québec)[\s,]{1,3}[ABCEGHJ-NPRSTVXY]\d[A-Z] \d[A-Z]\d\b/gu,
  },
  { row: 'japanese-7', pattern: /〒\s?\d{3}-\d{4}/gu },
];

/** When that kind of postal code was introduced: the label is no older. */
export const postalCode = defineMark({
  id: 'postal-code',
  find: (text, where) => foundOnLabel(forms, rows, text, where),
});
