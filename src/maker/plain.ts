import type * as z from 'zod';
import { formOfKind, kindOfSlot, slotKinds } from '../code';
import type { Problem } from '../problem';

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
  if (inLayout && typeof issue.path.at(-1) === 'number') {
    const known = typeof value === 'object' && value !== null ? kindOfSlot(value) : null;
    const where = pathWords(issue.path);
    if (!known) {
      const what = `${shown(value)} is not a slot`;
      const expected = `one of ${slotKinds.map(({ kind }) => kind).join(', ')}`;
      return [{ code: 'maker-file-slot', where, what, expected, remedy: 'Name a slot.' }];
    }
    const { kind } = known;
    const inside = formOfKind(known).safeParse(value).error?.issues ?? [];
    const form = inside[0]?.code === 'invalid_union' && inside[0].path.length === 0 ? inside[0] : null;
    // A year and a month have several forms: the fault is told of the form that the slot's own field chose.
    const meant = form ? form.errors.filter((issues) => !issues.some(({ path }) => path[0] === kind)) : [inside];
    const [nearest] = meant.sort((one, other) => one.length - other.length);
    if (nearest && nearest.length > 0) {
      return nearest.flatMap((fault) => plainIssue({ ...fault, path: [...issue.path, ...fault.path] } as never, file));
    }
    const what = `${shown((value as Record<string, unknown>)[kind])} is not possible for ${kind}`;
    const remedy = 'See docs/maker-files.md for what this slot can be.';
    return [{ code: 'maker-file-slot', where: `${where}.${kind}`, what, remedy }];
  }
  // A form that the value is not even of the kind of is the last to be meant.
  const far = (issues: z.core.$ZodIssue[]) =>
    issues.length + (issues.some(({ code, path }) => code === 'invalid_type' && path.length === 0) ? 1000 : 0);
  const [nearest] = [...issue.errors].sort((one, other) => far(one) - far(other));
  if (nearest && nearest.length > 0) {
    return nearest.flatMap((fault) => plainIssue({ ...fault, path: [...issue.path, ...fault.path] } as never, file));
  }
  return [
    {
      code: 'maker-file-value',
      where: pathWords(issue.path),
      what: `${shown(value)} is not possible here`,
      remedy: 'Correct this field.',
    },
  ];
}
