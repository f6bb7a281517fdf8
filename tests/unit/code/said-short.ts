import { expect } from 'vitest';

/** Lines compared with those that were looked at before. */
export const keep = (lines: readonly string[], name: string) =>
  expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`./kept/${name}.txt`);

/** Data in one line: maps as their rows, numbers to six figures, no quotation marks. */
export const short = (value: unknown): string =>
  JSON.stringify(value, (_, one) =>
    one instanceof Map || one instanceof Set ? [...one] : typeof one === 'number' ? Number(one.toPrecision(6)) : one,
  )?.replaceAll('"', '') ?? 'nothing';
