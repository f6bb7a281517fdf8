import { describe, expect, test } from 'vitest';
import { decodeText, learnSystem, readStated } from '../../../src/code';
import { readKnownDate } from '../../../src/code/teacher/known-date';
import { builtInMakers } from '../../../src/maker';
import type { MakerFile } from '../../../src/maker/types';
import { drawList } from '../../bench/teacher/lists';
import { chanceFrom, readSystem, systemNames } from '../../reference/number-systems';
import { rare } from './rare-slots';
import { wholeDecoding, wholeLearned } from './said-whole';

/*
 * What is told of a code, whole. Where it changes on purpose, `npm test -- unit/code/kept --update` writes it anew; the
 * difference is looked at before it is committed.
 */

const files: MakerFile[] = [...builtInMakers, ...systemNames.map(readSystem), ...(rare.ok ? [rare.file] : [])];
const today = '2026-11-01';

/** A code as it stands, and as it may be read wrongly: one character other, one gone, one more, one of its twins. */
function variants(code: string): string[] {
  const middle = Math.floor(code.length / 2);
  const other = /\d/.test(code[middle]!) ? '9' : 'Q';
  return [
    code,
    code.slice(0, middle) + other + code.slice(middle + 1),
    code.slice(0, -1),
    `${code}7`,
    code.replace('0', 'O').replace('1', 'I').replace('8', 'B').replace('5', 'S'),
    `${code.slice(0, 2)} ${code.slice(2)}`,
  ].filter((text, at, all) => all.indexOf(text) === at);
}

describe.each(files.map((file) => [file.maker, file] as const))('%s', (maker, file) => {
  test('its examples and their misreadings are told as they are kept', async () => {
    const lines = file.codeSystems.flatMap(({ examples }) =>
      (examples ?? [])
        .slice(0, 2)
        .flatMap(({ code }) => variants(code))
        .flatMap((code) => wholeDecoding(decodeText(code, { makers: [file], maker, now: today }))),
    );
    expect(lines.length).toBeGreaterThan(3);
    const name = maker.toLowerCase().replace(/[^a-z0-9]+/g, '-');
    await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`./kept/${name}.txt`);
  });
});

test('codes without a maker are told as they are kept', async () => {
  const codes = `0494 1299 9412 5394 412 941 04/94 4.94 12-1999 1999/12 52/03 03.52 9404AB 0494-AB AB0494 AB9404 AB1024
    AB5912 AB1924 K K1234 (K) [K]2417 {Q}1 2470 0130 123456 1234567890 12345678901 12345678901234567890 MP0I24 S0O94
    XX0000 A B2 99/99 1313 53/99 00/00 2/2/2 AB-CD 0494A ÄB1024 ab1024 ＡＢ１０２４`;
  const lines = codes
    .split(/\s+/)
    .flatMap((code) => wholeDecoding(decodeText(code, { makers: builtInMakers, maker: null, now: today }), 6));
  await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot('./kept/no-maker.txt');
});

test('what the teacher says of drawn lists is as it is kept', async () => {
  const lines = [1, 4, 9, 12, 16, 25].flatMap((seed) => [
    `list ${seed}`,
    ...wholeLearned(learnSystem(drawList(seed, chanceFrom(seed)).rows.slice(0, 9))),
  ]);
  await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot('./kept/learned.txt');
}, 60_000);

test('dates as people write them in a list of codes are taken as they are kept', async () => {
  const dates = `1990|about 1990|c. 1990|um 1990|1990s|late 1980s|bought 2001|gekauft 2001|not before 1997|before 1997|
    1996-03|March 1996|1996-03-14|1996-W14|1996-Q2|1996 to 1998|1996–1998|spring 1996|1996, FR|March 1996, Italy|PT|
    nonsense|9999|0|1996-13|31.02.1996|in the eighties|after 2003|until 1985|1996 or 1997|bought about 1990`;
  const lines = dates
    .split(/\|\s*/)
    .flatMap((words) => [
      words.trim(),
      `  stated ${JSON.stringify(readStated(words.trim()))}`,
      `  known  ${JSON.stringify(readKnownDate(words.trim()))}`,
    ]);
  await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot('./kept/known-dates.txt');
});
