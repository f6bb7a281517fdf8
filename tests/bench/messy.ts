import {
  type CallersPart,
  callerPages,
  type MessyPart,
  type MessyScore,
  messyPages,
  precisionOf,
  recallOf,
  scoreCaller,
  scoreMessy,
  sumOf,
} from '../messy-pages/score';

const percent = (share: number) => `${(share * 100).toFixed(1)} %`;

/** How each set of pages came about. */
const told: Record<MessyPart, string> = {
  seen: 'on which the reader was tuned',
  'set aside': 'set aside before any reader ran on them, opened once and mended since',
  'written later': 'written with their truth when the readers were done, opened once and mended since',
  strangers: 'written with their truth before the reader was looked at again, and tuned on since',
  'strangers set aside': 'of the same writing, set aside before any reader ran on them, opened once',
  'passers-by': 'written with their truth before the code was looked at once more, and tuned on since',
  'passers-by set aside':
    'of the last writing, set aside before any reader ran on them, opened once; one doubt mended since',
  neighbours: 'of a still later writing, with their truth before any reader ran on them, and tuned on since',
  'neighbours set aside':
    'of the latest writing, set aside before any reader ran on them, opened once and mended since',
  guests: 'of the last writing of all, with their truth before any reader ran on them, and tuned on since',
  townsfolk: 'into a third of them a founded doubt, with their truth before any reader ran on them, and tuned on since',
  'townsfolk set aside': 'written with those, set aside before any reader ran on them, opened once and mended since',
  lodgers: 'into a sixth of them a founded doubt, with their truth before any reader ran on them, and tuned on since',
  'lodgers set aside': 'written with those, set aside before any reader ran on them, opened once and mended since',
  wayfarers: 'into a sixth of them a founded doubt, with their truth before any reader ran on them, and tuned on since',
  'wayfarers set aside': 'written with those, set aside before any reader ran on them, opened once and mended since',
  pilgrims: 'into a sixth of them a founded doubt, with their truth before any reader ran on them, and tuned on since',
  'pilgrims set aside': 'written with those, set aside before any reader ran on them, opened once and mended since',
  settlers: 'into three of them a founded doubt, with their truth before any reader ran on them, and tuned on since',
  'villagers set aside': 'in part by another hand, set aside before any reader ran on them, opened once',
  'settlers set aside': 'written with those, set aside before any reader ran on them, opened once and mended since',
  villagers:
    'into a part of them something that founds a doubt was written, with their truth before any reader ran on them, and tuned on since',
  'guests set aside': 'written with those, set aside before any reader ran on them, opened once and mended since',
};

const day = (which: MessyPart) =>
  /^villagers/.test(which)
    ? '2026-12-01'
    : /^(?:neighbours|guests|townsfolk|lodgers|wayfarers|pilgrims|settlers)/.test(which)
      ? '2026-11-30'
      : '2026-11-29';

/** How often what was planted is not told; nothing where nothing was. */
function missedOf(scores: readonly { planted: boolean; missed: boolean }[]): string {
  const planted = scores.filter((one) => one.planted).length;
  return planted > 0 ? `, planted doubts missed on ${scores.filter((one) => one.missed).length} of ${planted}` : '';
}

/** What is read of pages as people write them, and what honest sellers are held to have said wrong. */
async function printSet(which: MessyPart): Promise<void> {
  const scores: MessyScore[] = [];
  for (const page of messyPages(which)) scores.push(await scoreMessy(page));
  const doubted = scores.filter(({ unfounded }) => unfounded.length > 0);
  const contradictions = scores.reduce((sum, one) => sum + one.contradictions, 0);
  console.log(
    `${scores.length} second-hand pages in seven languages, written on ${day(which)}, ${told[which]}: ` +
      `unfounded doubts on ${doubted.length}, contradictions ${contradictions}${missedOf(scores)}.`,
  );
  console.table(
    (['fields', 'claims', 'made', 'codes'] as const).map((of) => {
      const tally = sumOf(scores, of);
      return { of, precision: percent(precisionOf(tally)), recall: percent(recallOf(tally)), ...tally };
    }),
  );
  for (const { page, faults } of scores) for (const fault of faults) console.log(`  ${page}: ${fault}`);
}

const toldOfCallers: Record<CallersPart, string> = {
  callers: 'in voices of their own, with their truth before any reader ran on them, and tuned on since',
  'callers set aside': 'written with those, set aside before any reader ran on them, opened once and mended since',
};

/** What honest sellers are held to have said wrong, and whether what was planted is told. */
async function printCallers(which: CallersPart): Promise<void> {
  const scores = await Promise.all(callerPages(which).map(scoreCaller));
  const count = (of: (one: (typeof scores)[number]) => boolean) => scores.filter(of).length;
  console.log(
    `${scores.length} short second-hand pages in seven languages, written on 2026-11-30, ${toldOfCallers[which]}: ` +
      `unfounded doubts on ${count(({ unfounded }) => unfounded.length > 0)}, ` +
      `contradictions ${scores.reduce((sum, { contradictions }) => sum + contradictions, 0)}${missedOf(scores)}.`,
  );
  for (const { page, unfounded } of scores)
    for (const check of unfounded) console.log(`  ${page}: unfounded: ${check}`);
}

/** `LISTING_PART=all` reads the thirds set aside, and the pages written later, as well. */
export async function printMessy(): Promise<void> {
  await printSet('seen');
  await printSet('strangers');
  await printSet('passers-by');
  await printSet('neighbours');
  await printSet('guests');
  await printSet('townsfolk');
  await printSet('lodgers');
  await printSet('wayfarers');
  await printSet('pilgrims');
  await printSet('settlers');
  await printSet('villagers');
  await printCallers('callers');
  if (process.env.LISTING_PART !== 'all') return;
  await printSet('set aside');
  await printSet('written later');
  await printSet('strangers set aside');
  await printSet('passers-by set aside');
  await printSet('neighbours set aside');
  await printSet('guests set aside');
  await printSet('townsfolk set aside');
  await printSet('lodgers set aside');
  await printSet('wayfarers set aside');
  await printSet('pilgrims set aside');
  await printSet('settlers set aside');
  await printSet('villagers set aside');
  await printCallers('callers set aside');
}
