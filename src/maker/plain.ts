import type * as z from 'zod';
import { formOfKind, kindOfSlot, slotKinds } from '../code';
import { type MakerFault, type MakerProblem, makerProblem, type ShownValue, type Unit } from './fault';

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

const shown = (value: unknown): ShownValue => {
  if (value === undefined) return { kind: 'nothing' };
  if (Array.isArray(value)) return { kind: 'list' };
  if (typeof value === 'object' && value !== null) return { kind: 'group' };
  const text = typeof value === 'string' ? `"${value}"` : String(value);
  return { kind: 'text', text: text.length > 60 ? `${text.slice(0, 57)}…` : text };
};

const unitOf = (origin: string): Unit =>
  origin === 'string' ? 'characters' : origin === 'array' ? 'entries' : 'plain';
const mostShown = 40;

/** Turns what zod found into problems, each at its field; at most 40, then a count. */
export function plainProblems(issues: readonly z.core.$ZodIssue[], file: unknown): MakerProblem[] {
  const problems = issues.slice(0, mostShown).flatMap((issue) => plainIssue(issue, file));
  const more = issues.length - mostShown;
  if (more > 0) problems.push(makerProblem('more-problems', 'the file', { kind: 'more-faults', number: more }));
  return problems;
}

function plainIssue(issue: z.core.$ZodIssue, file: unknown): MakerProblem[] {
  const value = valueAt(file, issue.path);
  const code = `maker-file-${issue.code.replaceAll('_', '-')}`;
  const at = (fault: MakerFault): MakerProblem[] => [makerProblem(code, pathWords(issue.path), fault)];
  switch (issue.code) {
    case 'unrecognized_keys': {
      const names = issue.keys.slice(0, 5).map((key) => key.slice(0, 40));
      return at({ kind: 'unknown-fields', names });
    }
    case 'invalid_type':
      if (value === undefined) return at({ kind: 'missing', type: issue.expected });
      return at({ kind: 'wrong-type', value: shown(value), type: issue.expected });
    case 'invalid_value':
      return at({ kind: 'not-possible', value: shown(value), known: issue.values.map((one) => JSON.stringify(one)) });
    case 'too_small': {
      const least = { limit: Number(issue.minimum), unit: unitOf(issue.origin) };
      return at(value === '' ? { kind: 'empty', ...least } : { kind: 'too-small', value: shown(value), ...least });
    }
    case 'too_big': {
      const most = { limit: Number(issue.maximum), unit: unitOf(issue.origin) };
      return at({ kind: 'too-large', value: shown(value), ...most });
    }
    case 'invalid_union':
      return plainUnion(issue, value, file);
    default:
      return at({ kind: 'wrong-form', value: shown(value), form: issue.message });
  }
}

/** A slot is told by the field that names its kind, so that the fault is told of that kind and not of all twelve. */
function plainUnion(issue: z.core.$ZodIssueInvalidUnion, value: unknown, file: unknown): MakerProblem[] {
  const inLayout = issue.path.at(-2) === 'layout' || issue.path.at(-3) === 'layouts';
  if (inLayout && typeof issue.path.at(-1) === 'number') {
    const slotKind = typeof value === 'object' && value !== null ? kindOfSlot(value) : null;
    const where = pathWords(issue.path);
    if (!slotKind) {
      const known = slotKinds.map(({ kind }) => kind);
      return [makerProblem('maker-file-slot', where, { kind: 'no-slot', value: shown(value), known })];
    }
    const { kind } = slotKind;
    const inside = formOfKind(slotKind).safeParse(value).error?.issues ?? [];
    const form = inside[0]?.code === 'invalid_union' && inside[0].path.length === 0 ? inside[0] : null;
    // A year and a month have several forms: the fault is told of the form that the slot's own field chose.
    const meant = form ? form.errors.filter((issues) => !issues.some(({ path }) => path[0] === kind)) : [inside];
    const [nearest] = meant.sort((one, other) => one.length - other.length);
    if (nearest && nearest.length > 0) {
      return nearest.flatMap((fault) => plainIssue({ ...fault, path: [...issue.path, ...fault.path] } as never, file));
    }
    const fault: MakerFault = {
      kind: 'not-for-slot',
      value: shown((value as Record<string, unknown>)[kind]),
      slot: kind,
    };
    return [makerProblem('maker-file-slot', `${where}.${kind}`, fault)];
  }
  // A form that the value is not even of the kind of is the last to be meant.
  const far = (issues: z.core.$ZodIssue[]) =>
    issues.length + (issues.some(({ code, path }) => code === 'invalid_type' && path.length === 0) ? 1000 : 0);
  const [nearest] = [...issue.errors].sort((one, other) => far(one) - far(other));
  if (nearest && nearest.length > 0) {
    return nearest.flatMap((fault) => plainIssue({ ...fault, path: [...issue.path, ...fault.path] } as never, file));
  }
  const fault: MakerFault = { kind: 'not-possible', value: shown(value), known: [] };
  return [makerProblem('maker-file-value', pathWords(issue.path), fault)];
}
