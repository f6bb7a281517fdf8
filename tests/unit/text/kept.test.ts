import { expect, it } from 'vitest';
import * as text from '../../../src/text';
import { readCount } from '../../../src/text/said-number';
import { keptLines } from './kept-lines';
import { readers } from './readers';

/*
 * All that the readers of words find in lines of seven languages, whole. Where it changes on purpose,
 * `npm test -- unit/text/kept --update` writes it anew; the difference is looked at before it is committed.
 */

it.each(Object.entries(keptLines))('what is found in words of %s is as it is kept', async (language, lines) => {
  const out = lines.flatMap((said) => [
    said,
    ...Object.entries(readers).flatMap(([name, read]) =>
      read(said, language).map((found) => {
        const around = text.clauseAround(said, found.start, found.end);
        const other = text.isAboutAnother(said, found.start, found.end) ? ', of another' : '';
        return `  ${name} ${JSON.stringify(found)} ${text.polarityOf(said, found.start, found.end)}${other} in “${said.slice(around.start, around.end)}”`;
      }),
    ),
  ]);
  await expect(`${out.join('\n')}\n`).toMatchFileSnapshot(`./kept/${language}.txt`);
});

it('prices that stand in a field of their own are told as they are kept', async () => {
  const fields = `1299|1.299|1,299.00|1.299,00|1 299,00 €|€12|12,-|US $ 5|5 USD|1’200.–|1.2.3|1,23,456|0.5|.5|12.3456|--5|EUR|
    free|1.299,00 € – 1.500,00 €|99 ct|¥ 12,000|12万円|１２９円|1 2 3|1 234 567,89|0|00.10|1e5|1.000.00|12.34.56,7|5,5,5`;
  const out = fields
    .split(/\|\s*/)
    .flatMap((field) => [
      `${field} ${JSON.stringify(text.parsePriceText(field, `price ${field}`))}`,
      `  count ${JSON.stringify(readCount(field))} folded ${text.foldWords(field).text}`,
    ]);
  await expect(`${out.join('\n')}\n`).toMatchFileSnapshot('./kept/fields.txt');
});
