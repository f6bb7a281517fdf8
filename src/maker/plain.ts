import type * as z from 'zod';
import type { Problem } from '../problem';
import { slotSchemas } from './slot-schema';

/** A path as a person reads it: `codeSystems[0].layout[2]`. */
export const pathWords = (path: readonly PropertyKey[]): string =>
  path.reduce<string>((words, step) => {
    if (typeof step === 'number') return `${words}[${step}]`;
    return words === '' ? String(step) : `${words}.${String(step)}`;
  }, '') || 'the file';

const valueAt = (value: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (inside, step) => (typeof inside === 'object' && inside !== null ? Reflect.get(inside, step) : undefined),
    value,
  );

const shown = (value: unknown): string => {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object' && value !== null) return 'a group of fields';
  const text = typeof value === 'string' ? `"${value}"` : String(value);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
};

const typeWords: Record<string, string> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  tuple: 'a list of two dates, as ["1990", null]',
  object: 'a group of fields in { }',
};

const sizeWord = (origin: string, word: 'small' | 'large'): string => {
  if (origin !== 'array' && origin !== 'string') return word;
  return word === 'small' ? 'short' : 'long';
};
const counted = (limit: number | bigint, origin: string): string => {
  const unit = origin === 'string' ? 'character' : origin === 'array' ? 'entry' : '';
  const many = unit === 'entry' ? 'entries' : `${unit}s`;
  return unit === '' ? String(limit) : `${limit} ${Number(limit) === 1 ? unit : many}`;
};

const mostShown = 40;

/** Turns what zod found into problems in plain words, each at its field; at most 40, then a count. */
export function plainProblems(issues: readonly z.core.$ZodIssue[], file: unknown): Problem[] {
  const problems = issues.slice(0, mostShown).flatMap((issue) => plainIssue(issue, file));
  if (issues.length > mostShown) {
    problems.push({
      code: 'more-problems',
      where: 'the file',
      what: `${issues.length - mostShown} more fields are wrong`,
      remedy: 'Correct those above first.',
    });
  }
  return problems;
}

function plainIssue(issue: z.core.$ZodIssue, file: unknown): Problem[] {
  const value = valueAt(file, issue.path);
  const at = (what: string, expected: string, remedy = 'Correct this field.'): Problem[] => [
    { code: `maker-file-${issue.code.replaceAll('_', '-')}`, where: pathWords(issue.path), what, expected, remedy },
  ];
  switch (issue.code) {
    case 'unrecognized_keys': {
      const names = issue.keys.slice(0, 5).map((key) => `"${key.slice(0, 40)}"`);
      return at(
        `${names.join(', ')} is not a field here`,
        'only fields of the format',
        'Remove it or correct its name.',
      );
    }
    case 'invalid_type':
      if (value === undefined)
        return at('the field is missing', typeWords[issue.expected] ?? issue.expected, 'Add it.');
      return at(
        `${shown(value)} is not ${typeWords[issue.expected] ?? issue.expected}`,
        typeWords[issue.expected] ?? issue.expected,
      );
    case 'invalid_value':
      return at(
        `${shown(value)} is not possible here`,
        `one of ${issue.values.map((known) => JSON.stringify(known)).join(', ')}`,
      );
    case 'too_small':
      if (value === '') return at('the field is empty', `at least ${counted(issue.minimum, issue.origin)}`);
      return at(
        `${shown(value)} is too ${sizeWord(issue.origin, 'small')}`,
        `at least ${counted(issue.minimum, issue.origin)}`,
      );
    case 'too_big':
      return at(
        `${shown(value)} is too ${sizeWord(issue.origin, 'large')}`,
        `at most ${counted(issue.maximum, issue.origin)}`,
      );
    case 'invalid_format':
      return at(`${shown(value)} is not ${issue.message}`, issue.message);
    case 'invalid_union':
      return plainUnion(issue, value, file);
    default:
      return at(`${shown(value)}: ${issue.message}`, issue.message);
  }
}

/** A slot is told by the field that names its kind, so that the fault is told of that kind and not of all twelve. */
function plainUnion(issue: z.core.$ZodIssueInvalidUnion, value: unknown, file: unknown): Problem[] {
  const inLayout = issue.path.at(-2) === 'layout' || issue.path.at(-3) === 'layouts';
  const kinds = Object.keys(slotSchemas) as (keyof typeof slotSchemas)[];
  if (inLayout && typeof issue.path.at(-1) === 'number') {
    const kind =
      typeof value === 'object' && value !== null ? kinds.find((name) => Object.hasOwn(value, name)) : undefined;
    const where = pathWords(issue.path);
    if (!kind) {
      const what = `${shown(value)} is not a slot`;
      return [{ code: 'maker-file-slot', where, what, expected: `one of ${kinds.join(', ')}`, remedy: 'Name a slot.' }];
    }
    const found = slotSchemas[kind].safeParse(value);
    const inside = found.error?.issues[0];
    if (inside && inside.code !== 'invalid_union') {
      return plainIssue({ ...inside, path: [...issue.path, ...inside.path] } as never, file);
    }
    const what = `${shown((value as Record<string, unknown>)[kind])} is not possible for ${kind}`;
    const remedy = 'See docs/maker-files.md for what this slot can be.';
    return [{ code: 'maker-file-slot', where: `${where}.${kind}`, what, remedy }];
  }
  const nearest = [...issue.errors].sort((a, b) => a.length - b.length)[0]?.[0];
  if (nearest) return plainIssue({ ...nearest, path: [...issue.path, ...nearest.path] } as never, file);
  return [
    {
      code: 'maker-file-value',
      where: pathWords(issue.path),
      what: `${shown(value)} is not possible here`,
      remedy: 'Correct this field.',
    },
  ];
}
