import type { ShownValue, Unit } from '../../maker';
import type { FaultWords } from '../fault-words';
import { expectedSaid } from './codes';

const others = { nothing: 'nichts', list: 'eine Liste', group: 'eine Gruppe von Feldern' } as const;
const shown = (value: ShownValue) => (value.kind === 'text' ? value.text : others[value.kind]);
const types: Record<string, string> = {
  string: 'ein Text',
  number: 'eine Zahl',
  int: 'eine ganze Zahl',
  boolean: 'true oder false',
  array: 'eine Liste',
  tuple: 'eine Liste von zwei Zeiten wie ["1990", null]',
  object: 'eine Gruppe von Feldern in { }',
};
const forms: Record<string, string> = {
  capitals: 'besteht nicht aus Großbuchstaben oder Ziffern',
  country: 'ist kein Code nach ISO 3166',
  'small-letters': 'besteht nicht aus Kleinbuchstaben, Ziffern und Bindestrichen',
  currency: 'ist kein Code nach ISO 4217',
  printable: 'besteht nicht aus sichtbaren Zeichen oder Leerzeichen',
  'partial-date': 'ist keine Zeit wie 1994, 1994-03 oder 1994-03-21',
  'file-date': 'ist keine Zeit wie 1994, 1994-03, 1994-03-21, about 1994 oder unknown',
  picture: 'ist kein kleines Bild (JPEG, PNG oder WebP) als Daten',
};
const groups: Record<string, string> = {
  plant: 'die Werkstatt',
  year: 'das Jahr',
  month: 'der Monat',
  week: 'die Woche',
  quarter: 'das Quartal',
  day: 'der Tag',
  dayOfYear: 'der Tag im Jahr',
};
const group = (name: string) => groups[name] ?? name;
const slots: Record<string, string> = {
  ...groups,
  'day of year': 'der Tag im Jahr',
  serial: 'die laufende Nummer',
  check: 'das Prüfzeichen',
};

const not = (type: string) =>
  type.startsWith('ein')
    ? `k${type}`
    : type.includes(' oder ')
      ? `weder ${type.replace(' oder ', ' noch ')}`
      : `nicht ${type}`;
/** What is expected, in a nominative of its own. */
const expectedForms: Record<string, string> = {
  capitals: 'Großbuchstaben oder Ziffern',
  country: 'ein Code nach ISO 3166',
  'small-letters': 'Kleinbuchstaben, Ziffern und Bindestriche',
  currency: 'ein Code nach ISO 4217',
  printable: 'sichtbare Zeichen oder Leerzeichen',
  'partial-date': 'eine Zeit wie 1994, 1994-03 oder 1994-03-21',
  'file-date': 'eine Zeit wie 1994, 1994-03, 1994-03-21, about 1994 oder unknown',
  picture: 'ein kleines Bild (JPEG, PNG oder WebP) als Daten',
};
const counted = (limit: number, unit: Unit) =>
  ({
    plain: String(limit),
    characters: `${limit} Zeichen`,
    entries: limit === 1 ? '1 Eintrag' : `${limit} Einträge`,
  })[unit];
const oneOf = (known: readonly string[]) => (known.length === 0 ? '' : `eines von ${known.join(', ')}`);

export const faults: FaultWords = {
  expected: {
    missing: ({ type }) => types[type] ?? type,
    'wrong-type': ({ type }) => types[type] ?? type,
    'wrong-form': ({ form }) => expectedForms[form] ?? form,
    'unknown-fields': () => 'nur Felder der Herstellerdatei',
    'not-possible': ({ known }) => oneOf(known),
    'no-slot': ({ known }) => oneOf(known),
    empty: ({ limit, unit }) => `mindestens ${counted(limit, unit)}`,
    'too-small': ({ limit, unit }) => `mindestens ${counted(limit, unit)}`,
    'too-large': ({ limit, unit }) => `höchstens ${counted(limit, unit)}`,
    'no-country': () =>
      'ein Code nach ISO 3166-1, für ein früheres Land nach ISO 3166-3, oder ZZ, wo es nicht bekannt ist',
    'newer-format': ({ most }) => `höchstens ${most}`,
    'file-characters': ({ most }, kit) => `höchstens ${kit.number(most)}`,
  },
  inLine: (line, fault) => `Zeile ${line}: ${fault}`,
  faults: {
    'serial-digits': () => 'die kleinste Stellenzahl der laufenden Nummer ist größer als die größte',
    'code-too-long': ({ most }) => `länger als ${most} Zeichen`,
    'too-open': ({ most }) => `mehr als ${most} Stellen dürfen fehlen oder ihre Länge ändern`,
    'two-ways': ({ group: name }) => `${group(name)} ist auf zwei Arten geschrieben`,
    twice: ({ group: name }) => `${group(name)} steht zweimal da`,
    half: ({ group: name }) => `${group(name)} hat nur die Zehner oder nur die Einer`,
    'not-understood': ({ unknown, reads }, kit) =>
      `${kit.quote(unknown)} in ${kit.quote(reads)} ist weder eine Zeit noch der Code eines Landes`,
    'reads-something': ({ code, says }, kit) => `${kit.quote(code)} liest sich als ${says}, nicht als nichts`,
    'does-not-fit': ({ code, impossible }, kit) =>
      `${kit.quote(code)} passt nicht zum Aufbau des Systems${impossible ? `: ${slots[impossible.slot] ?? impossible.slot} ist ${kit.quote(impossible.value)}, erwartet ${expectedSaid(impossible.expected, kit)}` : ''}`,
    'outside-period': ({ code, reads }, kit) =>
      `${kit.quote(code)} liest sich als ${reads}, und das liegt außerhalb der Zeit des Systems`,
    'reads-otherwise': ({ code, says, reads }, kit) =>
      `${kit.quote(code)} liest sich als ${kit.either(says)}, im Beispiel steht ${kit.quote(reads)}`,
    missing: () => 'das Feld fehlt',
    empty: () => 'das Feld ist leer',
    'both-layouts': () => 'layout und layouts sind beide angegeben',
    'no-layout': () => 'der Aufbau fehlt',
    'too-many-to-test': () => 'die Aufbauten und Beispiele bis hierher sind zu viele, um sie zu prüfen',
    'unknown-fields': ({ names }, kit) =>
      names.length === 1
        ? `${kit.quote(names[0]!)} ist hier kein Feld`
        : `${kit.list(names.map(kit.quote))} sind hier keine Felder`,
    'wrong-type': ({ value, type }) => `${shown(value)} ist ${not(types[type] ?? type)}`,
    'wrong-form': ({ value, form }) => `${shown(value)} ${forms[form] ?? `hat nicht die richtige Form: ${form}`}`,
    'not-possible': ({ value }) => `${shown(value)} ist hier nicht möglich`,
    'no-slot': ({ value }) => `${shown(value)} ist keine Stelle eines Aufbaus`,
    'not-for-slot': ({ value, slot }) => `${shown(value)} ist für ${slot} nicht möglich`,
    'too-small': ({ value, unit }) => `${shown(value)} ist zu ${unit === 'plain' ? 'klein' : 'kurz'}`,
    'too-large': ({ value, unit }) => `${shown(value)} ist zu ${unit === 'plain' ? 'groß' : 'lang'}`,
    'no-country': ({ place }, kit) => `${kit.quote(place)} ist kein Land`,
    backwards: ({ from, to }) => `${from} kommt nach ${to}`,
    'no-such-date': ({ period }) => `in ${period.join(' bis ')} steht eine Zeit, die es nicht gibt`,
    'no-system': ({ id }, kit) => `${kit.quote(id)} ist kein Aufbau dieser Datei`,
    'double-model': ({ name }, kit) => `${kit.quote(name)} heißen zwei Modelle`,
    'no-part': ({ part }, kit) => `${kit.quote(part)} ist kein Teil`,
    'more-than': ({ least, most }, kit) => `${kit.number(least)} ist mehr als ${kit.number(most)}`,
    'no-amount': () => 'weder das Mindeste noch das Höchste ist angegeben',
    'newer-format': ({ format }) => `die Datei hat das Format ${format}`,
    'double-id': ({ id }, kit) => `${kit.quote(id)} heißen zwei Systeme`,
    'file-characters': ({ is }, kit) => `die Datei hat ${kit.number(is)} Zeichen`,
    'more-characters': ({ most }, kit) => `die Datei hat mehr als ${kit.number(most)} Zeichen`,
    'more-values': ({ most }, kit) => `die Datei hat mehr als ${kit.number(most)} Werte`,
    deeper: ({ most }) => `die Datei ist mehr als ${most} Ebenen tief verschachtelt`,
    'not-json': ({ said }) => `die Datei ist kein JSON: ${said || 'abgeschnitten'}`,
    'more-faults': ({ number }) =>
      number === 1 ? 'ein weiteres Feld stimmt nicht' : `${number} weitere Felder stimmen nicht`,
  },
};
