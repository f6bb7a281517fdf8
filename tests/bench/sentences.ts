import {
  doubtsOn,
  honestSentences,
  plantedSentences,
  type SentencePart,
  sellersMakers,
} from '../messy-pages/sentences';

const told: Record<SentencePart, string> = {
  first: 'tuned on since',
  'first set aside': 'set aside by lot before any was read, opened once and mended since',
  later: 'written when those had been mended, opened once and mended since',
};

async function printHonest(part: SentencePart): Promise<void> {
  const sentences = honestSentences(part);
  let doubted = 0;
  for (const sentence of sentences) {
    const checks = (await Promise.all(sellersMakers.map((maker) => doubtsOn(sentence, maker)))).flat();
    if (checks.length === 0) continue;
    doubted += 1;
    console.log(`  ${sentence.language}: ${[...new Set(checks)].join(', ')}: ${sentence.text}`);
  }
  console.log(`${sentences.length} sentences of honest sellers, ${told[part]}: doubts on ${doubted}.`);
}

async function printPlanted(): Promise<void> {
  let [all, found] = [0, 0];
  for (const sentence of plantedSentences)
    for (const maker of sentence.withFile ? sellersMakers.slice(0, 1) : sellersMakers) {
      const checks = await doubtsOn(sentence, maker);
      all += 1;
      if (sentence.checks.some((check) => checks.includes(check))) found += 1;
      else console.log(`  ${sentence.language}, ${maker}: not told: ${sentence.text}`);
    }
  console.log(`${plantedSentences.length} sentences that found a doubt, of each maker: told ${found} of ${all}.`);
}

/** Single sentences behind a plain description: what honest sellers are held to have said wrong, and what has to be told. */
export async function bench(): Promise<void> {
  await printHonest('first');
  await printHonest('first set aside');
  await printHonest('later');
  await printPlanted();
}
