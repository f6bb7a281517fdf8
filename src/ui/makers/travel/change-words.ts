import type { Change } from '../../../maker';
import { fieldsWords, titleOf } from '../merge-words';

/** One field of a change as it was, as it is, and as the buyer's own file has it; null where there is no entry. */
export interface ChangedField {
  label: string | null;
  old: string | null;
  now: string | null;
  own: string | null;
}

export interface ChangeWords {
  title: string;
  parts: ChangedField[];
}

/** Fields that an entry's title says already. */
const inTitle: Partial<Record<Change['group'], readonly string[]>> = {
  plants: ['code', 'place'],
  codeSystems: ['id'],
  carriers: ['kind', 'where'],
  parts: ['id'],
  construction: ['part', 'is'],
  models: ['name'],
  numbers: ['of', 'part'],
  typefaces: ['looks'],
  prices: ['model', 'condition', 'currency', 'year'],
};

/** A change in the words of the editor's fields. */
export function changeWords({ group, kind, fields, before, after, own }: Change): ChangeWords {
  const mine = own === undefined ? before : own;
  const said = kind === 'changed' ? fields : fields.filter((field) => !inTitle[group]?.includes(field));
  const then = fieldsWords(group, said, before, after);
  const here = fieldsWords(group, said, mine, after);
  const isField = group === 'file' || group === 'trade';
  return {
    title: titleOf(group, after ?? before, fields),
    parts: then.map(({ label, mine: old, theirs: now }, at) => ({
      label,
      old: before === null && !isField ? null : old,
      now: after === null && !isField ? null : now,
      own: mine === null && !isField ? null : (here[at]?.mine ?? null),
    })),
  };
}
