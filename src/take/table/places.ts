import type { Layout } from '../../maker/types';
import { placesOf, slotIn } from '../entry-positions';
import { type Cell, textOfCell } from '../page/grid';
import { type Context, propose } from '../propose';
import { plainExamples, readExamples } from '../said/example';
import { readsExamples } from '../said/layout';
import { withLettersOf } from '../said/layout-added';
import { readPeriods, usedOf } from '../said/period';
import { isPeriod } from '../said/used-text';
import type { Proposal } from '../types';

interface Place {
  column: number;
  first: number;
  last: number;
}

/** The columns that the places of a code head, in order and without a gap; null where they do not. */
function placesAlong(heads: readonly string[]): Place[] | null {
  const found = heads.flatMap((head, column): Place[] => {
    const at = column === 0 || isPeriod(head) ? null : placesOf(head);
    return at && at[1] >= at[0] ? [{ column, first: at[0], last: at[1] }] : [];
  });
  const isWhole = found.length > 1 && found.every(({ first }, at) => first === (found[at - 1]?.last ?? 0) + 1);
  return isWhole ? found : null;
}

/**
 * A table whose columns are the places of a code, "1–2 | 3–4 | 5–6", and whose rows tell what stood there in each time. Null
 * where its heads are no places, or a cell tells no one unit.
 */
export function systemsByPlaces(rows: readonly Cell[][], context: Context, day: string): Proposal[] | null {
  const [head, ...data] = rows;
  const places = head ? placesAlong(head.map(textOfCell)) : null;
  if (!places || data.length === 0) return null;
  const found = data.map((row): Proposal | null => {
    const layout: Layout = [];
    for (const { column, first, last } of places) {
      const slot = slotIn(textOfCell(row[column]), last - first + 1);
      if (!slot) return null;
      layout.push(slot);
    }
    const kinds = layout.map((slot) => Object.keys(slot)[0]!);
    if (!kinds.includes('year') || new Set(kinds).size < kinds.length) return null;
    const others = row.filter((_, column) => !places.some((one) => one.column === column));
    const texts = others.map(textOfCell);
    const { backwards, ...used } = usedOf(texts.filter(isPeriod).flatMap(readPeriods).slice(0, 1));
    const examples = plainExamples(texts.flatMap((text) => readExamples(text, day)));
    // "Digits 1 and 2" leave out the letters before them, which examples show.
    const forms = readsExamples(layout, examples) ? [layout] : withLettersOf(examples[0]!.code, layout);
    const form = forms.find((one) => readsExamples(one, examples));
    if (!form) return null;
    const words = row.map(textOfCell).filter((text) => text !== '');
    const selector = row.find((cell) => cell.words)?.words?.selector ?? '';
    return propose(
      context,
      { kind: 'code-system', ...used, layout: form, examples },
      { words: words.join(' | '), selector, doubts: [backwards && 'backwards'] },
    );
  });
  return found.every((one) => one !== null) ? found : null;
}
