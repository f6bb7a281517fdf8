import { kindOfSlot, type SlotKindName } from '../../code';
import { strings } from '../../words';
import { periodText } from './period-text';

const words = strings.makers.slot;
export type SlotValue = Record<string, unknown>;

/** Short words for a slot as it stands in the row of slots: "plant 2", "month tens". */
export function slotWords(slot: SlotValue): string {
  const kind = kindOfSlot(slot)?.kind as SlotKindName | undefined;
  const [value] = Object.values(slot);
  const detail = typeof value === 'string' || typeof value === 'number' ? ` ${value}` : '';
  return `${kind ? words.names[kind] : '?'}${detail}`;
}

/** A slot with every setting it has, for telling two layouts apart: "year cycle (letters in order ABC, …)". */
export function wholeSlotWords(slot: SlotValue): string {
  const settings = Object.entries(slot).flatMap(([name, value], index) =>
    index === 0 && typeof value !== 'object' ? [] : settingWords(name, value, 'month' in slot),
  );
  return settings.length === 0 ? slotWords(slot) : `${slotWords(slot)} (${settings.join(', ')})`;
}

const small = (label: string) => strings.makers.inLine(label);
const kinds: Record<string, () => string> = {
  digit: () => words.digit,
  letter: () => words.letters,
  either: () => words.either,
};

/** What one setting says, in the words of its field; nothing for one that is switched off. */
function settingWords(name: string, value: unknown, ofMonth: boolean): string[] {
  if (value === undefined || value === false) return [];
  switch (name) {
    case 'optional':
      return [words.optional];
    case 'reversed':
      return [words.reversed];
    case 'enclosed':
      return [words.enclosed];
    case 'letters':
      return [`${small(ofMonth ? words.monthLetters : words.lettersUsed)}: ${value}`];
    case 'first':
      return [`${small(words.firstYear)}: ${value}`];
    case 'count':
      return [`${small(words.weekCount)} ${value === 'iso' ? words.iso : words.fromSunday}`];
    case 'over':
      return [`${small(words.over)} ${value === 'all' ? words.overAll : words.overBefore}`];
    case 'weights':
      return [`${small(words.weights)}: ${(value as number[]).join(', ')}`];
    case 'of':
      return [kinds[String(value)]?.() ?? String(value)];
    case 'from':
      return [`${small(words.only)}: ${value}`];
    case 'serial': {
      const { min, max } = value as { min: number; max: number };
      return [`${small(words.least)} ${min}, ${small(words.most)} ${max}`];
    }
    case 'table':
      return [(value as Range[]).map(rangeWords).join('; ')];
    default:
      return [`${name}: ${String(value)}`];
  }
}

interface Range {
  first: number;
  last: number | null;
  made: readonly [string, string | null];
}
const rangeWords = ({ first, last, made }: Range) => `${first} – ${last ?? words.openEnd}: ${periodText(made)}`;
