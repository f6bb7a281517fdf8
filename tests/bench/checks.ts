import { buildCase } from '../../src/case';
import { checks } from '../../src/check';
import { checksOf, inputOf, type TruthRow, truthFiles, truthRows } from '../reference/cases/truth-case';

interface Counts {
  /** Should speak and does. */
  right: number;
  /** Should speak and does not. */
  missed: number;
  /** Speaks and should not. */
  extra: number;
}

/** Per check over the hand-written truth table: how often it speaks when it should, and when it should not. */
export async function bench(): Promise<void> {
  const counts = new Map<string, Counts>(checks.map(({ id }) => [id, { right: 0, missed: 0, extra: 0 }]));
  const times: number[] = [];
  let contradicted = 0;
  const cases = truthFiles.flatMap((file) => truthRows(file).map((row) => ({ file, row })));
  for (const { file, row } of cases) {
    const start = performance.now();
    const built = buildCase(inputOf(row));
    times.push(performance.now() - start);
    const against = [...checksOf(built, 'contradiction'), ...checksOf(built, 'doubt'), ...checksOf(built, 'gap')];
    const agreed = checksOf(built, 'agreement');
    if (file === 'sound' && checksOf(built, 'contradiction').length > 0) contradicted++;
    count(row, against, agreed, counts);
  }
  const seen = [...counts].filter(([, { right, missed, extra }]) => right + missed + extra > 0);
  console.log('| check | should speak | speaks | misses | speaks when it should not |');
  console.log('| --- | --: | --: | --: | --: |');
  for (const [id, { right, missed, extra }] of seen)
    console.log(`| ${id} | ${right + missed} | ${right} | ${missed} | ${extra} |`);
  const silent = [...counts].filter(([, { right, missed, extra }]) => right + missed + extra === 0).map(([id]) => id);
  console.log(`\n${silent.length} checks have no case of their own in the table: ${silent.join(', ')}.`);
  console.log(`Contradictions on sound pieces: ${contradicted} of ${truthRows('sound').length}.`);
  times.sort((a, b) => a - b);
  const median = times[Math.floor(times.length / 2)] ?? 0;
  console.log(
    `One case: median ${median.toFixed(1)} ms, slowest ${(times.at(-1) ?? 0).toFixed(0)} ms (the first compiles word tables).`,
  );
}

/** Contradictions, doubts and gaps are compared in full; of agreements only those that the row asks for are counted. */
function count(row: TruthRow, against: string[], agreed: string[], counts: Map<string, Counts>): void {
  const expected = [...row.contradiction, ...row.doubt, ...row.gap];
  const add = (id: string, what: keyof Counts) => {
    const own = counts.get(id);
    if (own) own[what]++;
  };
  for (const id of expected) add(id, against.includes(id) ? 'right' : 'missed');
  for (const id of against) if (!expected.includes(id)) add(id, 'extra');
  for (const id of row.among) add(id, agreed.includes(id) ? 'right' : 'missed');
}
