import { readdirSync } from 'node:fs';

/** Runs every bench, or those named: `npm run bench -- listing code`. Each file here exports `bench()`. */
const here = new URL('.', import.meta.url);
const all = readdirSync(here)
  .filter((file) => file.endsWith('.ts') && file !== 'run.ts')
  .map((file) => file.slice(0, -3));
const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !all.includes(name));
if (unknown.length > 0) {
  console.error(`No bench is called ${unknown.join(', ')}. There are: ${all.join(', ')}.`);
  process.exit(2);
}
for (const name of asked.length > 0 ? asked : all) {
  console.log(`\n## ${name}\n`);
  const { bench } = (await import(new URL(`${name}.ts`, here).href)) as { bench: () => Promise<void> };
  await bench();
}
