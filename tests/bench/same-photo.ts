import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Prepared, prepared, samePhoto } from '../../src/photo';
import { changed, changes, likenessIn } from '../likeness/changed';

const folders: Readonly<Record<string, string>> = {
  'photographs of stamps': 'tests/photos/stamps',
  'photographs of the demo marketplace': 'tests/market/site/photos',
};
/** Other photographs, all of which differ: `OTHER_PHOTOS` names folders, parted by commas. */
const others = (process.env.OTHER_PHOTOS ?? '').split(',').filter(Boolean);

/** How often a photo is known again after each change, and how often two that differ are taken for one. */
export async function bench(): Promise<void> {
  console.log(`| photos | ${Object.keys(changes).join(' | ')} | pairs that differ | taken for one |`);
  console.log(
    `| --- | ${Object.keys(changes)
      .map(() => '---')
      .join(' | ')} | --- | --- |`,
  );
  const named = [...Object.entries(folders), ...others.map((folder) => [folder, folder] as const)];
  for (const [name, folder] of named) {
    const photos = filesIn(folder);
    const all: { photo: Buffer; known: Prepared }[] = [];
    for (const path of photos) {
      const photo = readFileSync(path);
      const likeness = await likenessIn(photo).catch(() => null);
      if (likeness !== null) all.push({ photo, known: prepared(likeness) });
    }
    const told = [];
    for (const how of Object.keys(changes)) {
      const tried = all.filter((_, at) => at % Math.ceil(all.length / 40) === 0);
      let again = 0;
      for (const [seed, { photo, known }] of tried.entries()) {
        const likeness = await likenessIn(await changed(photo, how, seed));
        if (likeness !== null && samePhoto(known, prepared(likeness))) again++;
      }
      told.push(`${again} of ${tried.length}`);
    }
    let [pairs, wrong] = [0, 0];
    for (const [at, one] of all.entries())
      for (const other of all.slice(0, at)) {
        pairs++;
        if (samePhoto(one.known, other.known)) wrong++;
      }
    console.log(`| ${name} | ${told.join(' | ')} | ${pairs} | ${wrong} |`);
  }
}

const filesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(jpe?g|png|webp)$/i.test(name))
    .sort()
    .map((name) => join(folder, name));
