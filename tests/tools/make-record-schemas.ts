import { mkdirSync, writeFileSync } from 'node:fs';
import { recordJsonSchemas } from './record-schemas';

/* npm run make:records: writes docs/records/, the form of every record version as JSON Schema. A test holds it current. */
const folder = new URL('../../docs/records/', import.meta.url);
mkdirSync(folder, { recursive: true });
for (const [name, text] of Object.entries(recordJsonSchemas()))
  writeFileSync(new URL(`${name}.schema.json`, folder), text);
process.stdout.write('docs/records written\n');
