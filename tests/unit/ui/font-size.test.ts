import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const folder = new URL('../../../src/ui', import.meta.url).pathname;
const files = readdirSync(folder, { recursive: true }).map(String);

test('no font has a size in pixels: each goes with the size that is set in the browser', () => {
  const fixed = files
    .filter((file) => /\.(css|tsx)$/.test(file))
    .flatMap((file) =>
      [...readFileSync(join(folder, file), 'utf8').matchAll(/font(?:-size|Size)?\s*[:=][^;}>]*\d(?:px)\b[^;}>]*/g)].map(
        ([rule]) => `${file}: ${rule.replace(/\s+/g, ' ')}`,
      ),
    );
  expect(files.filter((file) => file.endsWith('.css')).length).toBeGreaterThan(5);
  expect(fixed).toEqual([]);
});
