import { writeFileSync } from 'node:fs';
import { openEngines } from '../../src/cli/engines';
import {
  bare,
  classes,
  readPhotoFile,
  shownInPhotos,
  stampPhotos,
  stampTexts,
  sureCodes,
  toldOf,
} from './stamp-readings';

/*
 * npm run make:stamp-readings: reads the committed photographs and writes what the product tells of each beside them.
 * Tests hold Node and Chromium to it. To be run, and its difference looked at, when nets, photographs or steps change.
 */
const { engines, close } = await openEngines();
if (engines.net === undefined) throw new Error('The nets did not start.');
const shown = shownInPhotos();
const lines: string[] = [];
const exact = new Map(classes.map((name) => [name, { exact: 0, sure: 0, of: 0, wrong: 0 }]));
for (const { file, code, class: name } of shown) {
  const told = toldOf(await readPhotoFile(file, engines), engines.net.acceptance);
  lines.push(`  ${JSON.stringify(file)}: ${JSON.stringify(told)}`);
  const row = exact.get(name)!;
  row.of++;
  if (code !== null && stampTexts(told).includes(bare(code))) row.exact++;
  if (code !== null && sureCodes(told).includes(bare(code))) row.sure++;
  if (sureCodes(told).some((text) => text !== bare(code ?? ''))) row.wrong++;
}
await close();
// One photograph a line: a difference shows which photographs changed.
writeFileSync(new URL('readings.json', stampPhotos), `{\n${lines.join(',\n')}\n}\n`);
console.table(Object.fromEntries(exact));
