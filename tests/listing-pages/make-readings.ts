import { mkdirSync, writeFileSync } from 'node:fs';
import { corpus } from './corpus';
import { readingFile, readingsOf } from './readings';

/*
 * npm run make:listing-readings: reads every page of tests/listing-pages and writes the whole of what is read beside them.
 * To be run when the reader means to read something else, and its difference looked at, line by line.
 */
mkdirSync(new URL('readings/', import.meta.url), { recursive: true });
for (const file of Object.keys(corpus)) {
  const lines = Object.entries(await readingsOf(file)).map(([name, reading]) => {
    const fields = Object.entries(reading).map(([field, value]) => {
      const listed = Array.isArray(value) && value.length > 1;
      const told = listed
        ? `[\n   ${value.map((one) => JSON.stringify(one)).join(',\n   ')}\n  ]`
        : JSON.stringify(value);
      return `  ${JSON.stringify(field)}: ${told}`;
    });
    return ` ${JSON.stringify(name)}: {\n${fields.join(',\n')}\n }`;
  });
  // One value a line: a difference shows which value of which page changed.
  writeFileSync(readingFile(file), `{\n${lines.join(',\n')}\n}\n`);
}
