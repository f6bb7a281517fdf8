import { decodeSystem, readStated, readsAs } from '../../code';
import type { MakerFile } from '../../maker';
import type { ReadableRow } from '../../watch';

/** A kept case whose date is settled otherwise than by its code. */
export type DatedCase = Pick<NonNullable<ReadableRow['dated']>, 'maker' | 'code' | 'reads'>;

/** How many of the cases each system of a file explains: their codes read, under it, what is known of them. */
export function casesBehind({ codeSystems, plants }: MakerFile, cases: readonly DatedCase[]): Map<string, number> {
  const explains = (system: MakerFile['codeSystems'][number], { code, reads }: DatedCase): boolean => {
    const stated = readStated(reads);
    if ('unknown' in stated) return false;
    return decodeSystem(code, system, plants).some((reading) => readsAs(reading, stated));
  };
  return new Map(codeSystems.map((system) => [system.id, cases.filter((one) => explains(system, one)).length]));
}

/** A known code with its date, as a row of the teacher's list. */
export const rowOfKnown = ({ code, reads }: Pick<DatedCase, 'code' | 'reads'>): string => `${code}, ${reads}`;
