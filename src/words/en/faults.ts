import { expectedWords } from '../../code';
import type { ShownValue, Unit } from '../../maker';
import type { FaultWords } from '../fault-words';

const others = { nothing: 'nothing', list: 'a list', group: 'a group of fields' } as const;
const shown = (value: ShownValue) => (value.kind === 'text' ? value.text : others[value.kind]);
const types: Record<string, string> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  tuple: 'a list of two dates, as ["1990", null]',
  object: 'a group of fields in { }',
};
const forms: Record<string, string> = {
  capitals: 'capital letters or digits',
  country: 'an ISO 3166 code',
  'small-letters': 'small letters, digits and hyphens',
  currency: 'an ISO 4217 code',
  printable: 'characters that can be seen or a space',
  'partial-date': 'a date as 1994, 1994-03 or 1994-03-21',
  'file-date': 'a date as 1994, 1994-03, 1994-03-21, about 1994 or unknown',
  picture: 'a small JPEG, PNG or WebP picture as data',
};
const groups: Record<string, string> = { dayOfYear: 'day of the year' };
const group = (name: string) => groups[name] ?? name;

const counted = (limit: number, unit: Unit) =>
  ({
    plain: String(limit),
    characters: limit === 1 ? '1 character' : `${limit} characters`,
    entries: limit === 1 ? '1 entry' : `${limit} entries`,
  })[unit];
const oneOf = (known: readonly string[]) => (known.length === 0 ? '' : `one of ${known.join(', ')}`);

export const faults: FaultWords = {
  expected: {
    missing: ({ type }) => types[type] ?? type,
    'wrong-type': ({ type }) => types[type] ?? type,
    'wrong-form': ({ form }) => forms[form] ?? form,
    'unknown-fields': () => 'only fields of the format',
    'not-possible': ({ known }) => oneOf(known),
    'no-slot': ({ known }) => oneOf(known),
    empty: ({ limit, unit }) => `at least ${counted(limit, unit)}`,
    'too-small': ({ limit, unit }) => `at least ${counted(limit, unit)}`,
    'too-large': ({ limit, unit }) => `at most ${counted(limit, unit)}`,
    'no-country': () => 'a code of ISO 3166-1, of ISO 3166-3 for a former country, or ZZ where it is not known',
    'newer-format': ({ most }) => `at most ${most}`,
    'file-characters': ({ most }) => `at most ${most}`,
  },
  inLine: (line, fault) => `line ${line}: ${fault}`,
  faults: {
    'serial-digits': () => 'the fewest digits of the serial number are more than the most',
    'code-too-long': ({ most }) => `longer than ${most} characters`,
    'too-open': ({ most }) => `more than ${most} slots may be left out or change their length`,
    'two-ways': ({ group: name }) => `the ${group(name)} is written in two ways`,
    twice: ({ group: name }) => `the ${group(name)} stands there twice`,
    half: ({ group: name }) => `the ${group(name)} has only its tens or only its units`,
    'not-understood': ({ unknown, reads }) => `"${unknown}" in "${reads}" is neither a date nor a place code`,
    'reads-something': ({ code, says }) => `"${code}" reads ${says}, not nothing`,
    'does-not-fit': ({ code, impossible }) =>
      `"${code}" does not fit the system's layout${impossible ? `: ${impossible.slot} "${impossible.value}" should be ${expectedWords(impossible.expected)}` : ''}`,
    'outside-period': ({ code, reads }) => `"${code}" reads ${reads}, which lies outside the system's period`,
    'reads-otherwise': ({ code, says, reads }) =>
      `"${code}" reads ${says.join(' or ')}, but the example says "${reads}"`,
    missing: () => 'the field is missing',
    empty: () => 'the field is empty',
    'both-layouts': () => 'both layout and layouts are given',
    'no-layout': () => 'the layout is missing',
    'too-many-to-test': () => 'the layouts and examples up to here are too many to test',
    'unknown-fields': ({ names }) => `${names.map((name) => `"${name}"`).join(', ')} is not a field here`,
    'wrong-type': ({ value, type }) => `${shown(value)} is not ${types[type] ?? type}`,
    'wrong-form': ({ value, form }) => `${shown(value)} is not ${forms[form] ?? form}`,
    'not-possible': ({ value }) => `${shown(value)} is not possible here`,
    'no-slot': ({ value }) => `${shown(value)} is not a slot`,
    'not-for-slot': ({ value, slot }) => `${shown(value)} is not possible for ${slot}`,
    'too-small': ({ value, unit }) => `${shown(value)} is too ${unit === 'plain' ? 'small' : 'short'}`,
    'too-large': ({ value, unit }) => `${shown(value)} is too ${unit === 'plain' ? 'large' : 'long'}`,
    'no-country': ({ place }) => `"${place}" is no country`,
    backwards: ({ from, to }) => `${from} comes after ${to}`,
    'no-such-date': ({ period }) => `${period.join(' to ')} has a date that does not exist`,
    'no-system': ({ id }) => `"${id}" is no code system of this file`,
    'double-model': ({ name }) => `"${name}" names two models`,
    'no-part': ({ part }) => `"${part}" is no part`,
    'more-than': ({ least, most }) => `${least} is more than ${most}`,
    'no-amount': () => 'neither the least nor the most is given',
    'newer-format': ({ format }) => `the file is of format ${format}`,
    'double-id': ({ id }) => `"${id}" names two systems`,
    'file-characters': ({ is }) => `the file has ${is} characters`,
    'more-characters': ({ most }) => `the file has more than ${most} characters`,
    'more-values': ({ most }) => `the file has more than ${most} values`,
    deeper: ({ most }) => `the file is nested more than ${most} levels deep`,
    'not-json': ({ said }) => `the file is not JSON: ${said || 'cut off'}`,
    'more-faults': ({ number }) => `${number} more fields are wrong`,
  },
};
