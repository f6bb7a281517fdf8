/** A number as written: its characters (half-open range of the folded text) and every way to read them. */
export interface WrittenNumber {
  start: number;
  end: number;
  /** Decimal notation with a point, without grouping: "1299", "1299.5". Best reading first. */
  readings: string[];
}

const isDigit = (unit: string | undefined) => unit !== undefined && unit >= '0' && unit <= '9';

/** A number of this many digits is no price; longer runs are passed over at once. */
const mostDigits = 15;

interface Group {
  digits: string;
  /** The separator before the group: '', '.', ',', "'" or ' '. */
  separator: string;
}

function digitsFrom(text: string, start: number): string {
  let end = start;
  while (isDigit(text[end])) end += 1;
  return text.slice(start, end);
}

/** The next group after a separator at `position`, when it can belong to the same number. */
function nextGroup(text: string, position: number, first: string): Group | null {
  const separator = text[position];
  if (separator === undefined || !".,' ".includes(separator)) return null;
  const digits = digitsFrom(text, position + 1);
  if (digits.length === 0) return null;
  const groups = digits.length === 3 && first.length <= 3;
  if (separator === ' ' || separator === "'") return groups ? { digits, separator } : null;
  return { digits, separator };
}

/**
 * Which separators group and which one opens the decimals. `convention` is the decimal sign of the text's language
 * when known; null leaves "1.299" with both readings.
 */
function readGroups(groups: Group[], convention: '.' | ',' | null, decimals: number): string[] | null {
  const whole = (upTo: number) =>
    groups
      .slice(0, upTo)
      .map((group) => group.digits)
      .join('') || '0';
  const count = groups.length;
  const last = groups[count - 1] as Group;
  const first = groups[0] as Group;
  if (count === 1) return [first.digits];
  const grouping = groups.slice(1, -1);
  const kinds = new Set(groups.slice(1).map((group) => group.separator));
  const wellGrouped = (list: Group[]) =>
    first.digits.length <= 3 && list.every((group) => group.digits.length === 3 || group.digits.length === 2);
  if (kinds.size > 2) return null;
  if (kinds.size === 2) {
    const inner = new Set(grouping.map((group) => group.separator));
    if (inner.size !== 1 || inner.has(last.separator) || !wellGrouped(grouping)) return null;
    if (last.separator === ' ' || last.separator === "'") return null;
    return [`${whole(count - 1)}.${last.digits}`];
  }
  if (count > 2) return wellGrouped(grouping) && last.digits.length === 3 ? [whole(count)] : null;
  if (last.separator === ' ' || last.separator === "'") return [whole(count)];
  const decimal = `${whole(1)}.${last.digits}`;
  if (last.digits.length !== 3 || first.digits.length > 3) return [decimal];
  if (first.digits === '') return [last.separator === ',' ? whole(2) : decimal];
  if (/^0/.test(first.digits)) return [decimal];
  if (decimals === 0 || (convention !== null && convention !== last.separator)) return [whole(2)];
  if (decimals === 3) return convention === last.separator ? [decimal] : [decimal, whole(2)];
  return [whole(2), decimal];
}

export interface NumberHabits {
  /** Decimal sign of the language or country, null when unknown. */
  convention: '.' | ',' | null;
  /** Decimal places of the currency when known, else 2. */
  decimals: number;
  /** Whether "119. 95" and "118, 99" are one number: a price field's own text, never running text. */
  spacedDecimals: boolean;
}

/** The number that begins at `start` (a digit, or a point or comma before one); null when there is none. */
export function readNumber(text: string, start: number, habits: NumberHabits): WrittenNumber | null {
  let position = start;
  const groups: Group[] = [];
  if (text[start] === '.' || text[start] === ',') {
    const digits = digitsFrom(text, start + 1);
    if (digits.length === 0) return null;
    groups.push({ digits: '', separator: '' }, { digits, separator: text[start] as string });
    position = start + 1 + digits.length;
  } else {
    const digits = digitsFrom(text, start);
    if (digits.length === 0) return null;
    groups.push({ digits, separator: '' });
    position = start + digits.length;
  }
  for (let group = nextGroup(text, position, (groups[0] as Group).digits); group; ) {
    groups.push(group);
    position += 1 + group.digits.length;
    const previous = group;
    group = nextGroup(text, position, (groups[0] as Group).digits);
    // After the decimals nothing groups: "12.50 100" is two numbers.
    if (group?.separator === ' ' && previous.separator !== ' ') group = null;
  }
  if (habits.spacedDecimals && groups.length === 1) {
    const spaced = /^[.,] (\d\d)(?!\d)/.exec(text.slice(position, position + 6));
    if (spaced) {
      groups.push({ digits: spaced[1] as string, separator: text[position] as string });
      position += spaced[0].length;
    }
  }
  const digits = groups.reduce((sum, group) => sum + group.digits.length, 0);
  const readings = digits > mostDigits ? null : readGroups(groups, habits.convention, habits.decimals);
  return { start, end: position, readings: readings ?? [] };
}

/** A decimal text in units of 10^-exponent, rounded half up; null when it is beyond exact integers. */
export function minorUnits(decimal: string, exponent: number): number | null {
  const [whole = '0', fraction = ''] = decimal.split('.');
  const kept = fraction.slice(0, exponent).padEnd(exponent, '0');
  const minor = Number(`${whole}${kept}`) + (Number(fraction[exponent] ?? '0') >= 5 ? 1 : 0);
  return Number.isSafeInteger(minor) ? minor : null;
}
