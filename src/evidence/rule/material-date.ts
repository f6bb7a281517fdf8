import type { Evidence } from '../types';
import { isBounded } from './bounded';
import type { Rule } from './types';

const partOf = ({ says }: Evidence): string | null =>
  says.kind === 'material' || says.kind === 'other-material' ? says.part : null;

/**
 * When the maker used the material claimed of a part, and a date. Hard only against an exact date, and not where the
 * listing names the right material as well.
 */
export const materialDate = {
  id: 'material-date',
  left: ['material', 'other-material'],
  right: ['claimed-date', 'code'],
  over: 'date',
  hardWhen: (_material, date) => date.strength === 'hard',
  informs: ({ says }) => (says.kind === 'material' ? 'another-date' : null),
  narrows: (material) => material.says.kind === 'material' && isBounded(material),
  yieldsTo: (one, other) => partOf(one) === partOf(other),
} as const satisfies Rule;
