import { type Learned, learning, type Work } from '../../src/code';
import { chanceFrom } from '../reference/number-systems';
import { type DrawnList, drawList } from './teacher/lists';
import { isOpenList } from './teacher/open';
import { isTrue } from './teacher/right';

/** Lists 1 to 200 were looked at while tuning; 201 to 300 were opened once at the end. */
const sets = [
  { name: 'seen while tuning', from: 1, to: 200 },
  { name: 'set aside', from: 201, to: 300 },
];

function learn(list: DrawnList): { learned: Learned; steps: number; longest: number; ms: number } {
  const search = learning(list.rows);
  const begun = process.cpuUsage();
  let [steps, longest] = [0, 0];
  for (;;) {
    const next = search.next();
    if (next.done) {
      const { user, system } = process.cpuUsage(begun);
      return { learned: next.value, steps, longest, ms: (user + system) / 1000 };
    }
    const now = (next.value as Work).steps;
    longest = Math.max(longest, now - steps);
    steps = now;
  }
}

/** How often the teacher finds the true system in lists as people write them, and whether it says what is open. */
export async function bench(): Promise<void> {
  const only = process.env.TEACHER_LISTS?.split('-').map(Number);
  const asked = only ? [{ name: `lists ${only.join(' to ')}`, from: only[0]!, to: only[1]! }] : sets;
  console.log(
    '| lists | settled by the truth | true system first | called settled, and true | a wrong one called settled | left open by the truth | called open | wrong date found |',
  );
  console.log('| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |');
  const work: { count: number; steps: number; longest: number; ms: number }[] = [];
  for (const { name, from, to } of asked) {
    const tally = { closed: 0, first: 0, settled: 0, falsely: 0, open: 0, saidOpen: 0, slips: 0, found: 0 };
    for (let seed = from; seed <= to; seed++) {
      const list = drawList(seed, chanceFrom(seed));
      const { learned, ...done } = learn(list);
      work.push({ count: list.rows.length, ...done });
      const [best] = learned.remaining;
      const right = best !== undefined && isTrue(best, list);
      const settled = best !== undefined && !learned.ambiguous;
      const open = isOpenList(list);
      if (settled && !right) tally.falsely++;
      if (open) {
        tally.open++;
        if (!settled) tally.saidOpen++;
      } else {
        tally.closed++;
        if (right) tally.first++;
        if (right && settled) tally.settled++;
        const slip = list.rows.findIndex(({ wrong }) => wrong);
        if (slip >= 0) {
          tally.slips++;
          if (learned.doubted.some(({ index }) => index === slip)) tally.found++;
        }
      }
      if (
        process.env.TEACHER_SHOW === 'unsettled'
          ? !open && right && !settled
          : process.env.TEACHER_SHOW && ((settled && !right) || (!open && !right) || (open && settled))
      )
        show(list, learned, open, right);
    }
    const { closed, first, settled, falsely, open, saidOpen, slips, found } = tally;
    console.log(
      `| ${name} | ${closed} | ${first} (${((first / closed) * 100).toFixed(0)} %) | ${settled} | ${falsely} | ${open} | ${saidOpen} | ${found} of ${slips} |`,
    );
  }
  const most = (of: 'steps' | 'longest') => Math.max(...work.map((one) => one[of]));
  console.log(`\nSteps of a search: at most ${most('steps')}, between two turns at most ${most('longest')}.`);
  const long = work.filter(({ count }) => count === 12).map(({ ms }) => ms);
  const sorted = long.sort((a, b) => a - b).map((ms) => (ms / 1000).toFixed(1));
  console.log(
    `Processor seconds for 12 codes, ${sorted.length} lists: median ${sorted[sorted.length >> 1]}, at most ${sorted.at(-1)}.`,
  );
}

function show(list: DrawnList, learned: Learned, open: boolean, right: boolean): void {
  console.log(
    `\n# ${list.seed} open ${open} right ${right} said ${learned.open} byChance ${learned.remaining[0]?.byChance}`,
  );
  for (const era of list.eras) console.log('  truth', JSON.stringify(era.layout), era.from, era.to);
  for (const [at, { code, reads, wrong, era }] of list.rows.entries())
    console.log(`   ${at} ${code} = ${reads}${wrong ? ' WRONG' : ''} (era ${era})`);
  for (const one of [...learned.remaining, ...learned.others].slice(0, 5))
    console.log(
      '  ->',
      one.score.toFixed(1),
      JSON.stringify(one.eras.map(({ layout, used }) => [layout, used])),
      'wrong',
      one.wrong.join(),
    );
}
