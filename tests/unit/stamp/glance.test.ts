import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { loadShippedNets } from '../../../src/cli/engines';
import { openPhotoFile } from '../../../src/cli/photo-file';
import { greyOf } from '../../../src/photo';
import { glanceAt, type StampEngines, stampNets } from '../../../src/stamp';

const folder = fileURLToPath(new URL('../../market/site/photos', import.meta.url));
const files = readdirSync(folder).filter((name) => name.endsWith('.jpg'));
const listings = [...new Set(files.map((name) => name.split('-')[0] ?? ''))];

async function shipped(): Promise<StampEngines> {
  const nets = await loadShippedNets();
  if (!nets.ok) throw new Error(nets.problem.code);
  const { card, finder, recogniser } = nets.value;
  return { print: null, net: stampNets(card, finder, recogniser) };
}

test('of each demo listing the photo of the stamp would be read first', async () => {
  const engines = await shipped();
  const first: Record<string, string | undefined> = {};
  for (const listing of listings) {
    const glances: { name: string; likelihood: number }[] = [];
    for (const name of files.filter((file) => file.startsWith(`${listing}-`))) {
      const photo = await openPhotoFile(join(folder, name));
      if (!photo.ok) throw new Error(photo.problem.code);
      glances.push({ name, likelihood: await glanceAt(greyOf(photo.value.image), engines) });
    }
    first[listing] = glances.toSorted((a, b) => b.likelihood - a.likelihood)[0]?.name;
  }
  // The fifth listing shows no stamp.
  const { l5: _, ...stamped } = first;
  expect(stamped).toEqual(Object.fromEntries(Object.keys(stamped).map((listing) => [listing, `${listing}-stamp.jpg`])));
}, 60_000);

test('without nets every photo is as likely as the next', async () => {
  expect(await glanceAt({ width: 1, height: 1, data: new Float32Array(1) }, { print: null })).toBe(0);
});
