import { readdirSync } from 'node:fs';

/**
 * Runs every bench, or those named: `npm run bench -- listing code`. Each file here exports `bench()`; one that takes
 * most of an hour says `onlyWhenNamed`. Options (`--seed=7`) belong to the bench that is named.
 */
interface Bench {
  bench: () => Promise<void>;
  onlyWhenNamed?: true;
}

const here = new URL('.', import.meta.url);
const all = readdirSync(here)
  .filter((file) => file.endsWith('.ts') && file !== 'run.ts')
  .map((file) => file.slice(0, -3));
const asked = process.argv.slice(2).filter((argument) => !argument.startsWith('--'));
const unknown = asked.filter((name) => !all.includes(name));
if (unknown.length > 0) {
  console.error(`No bench is called ${unknown.join(', ')}. There are: ${all.join(', ')}.`);
  process.exit(2);
}
for (const name of asked.length > 0 ? asked : all) {
  const { bench, onlyWhenNamed } = (await import(new URL(`${name}.ts`, here).href)) as Bench;
  if (onlyWhenNamed && asked.length === 0) continue;
  console.log(`\n## ${name}\n`);
  await bench();
}
