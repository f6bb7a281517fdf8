import { writeFileSync } from 'node:fs';
import { makerFileJsonSchema } from '../maker/json-schema';

/* npm run make:schema: writes public/maker-file.schema.json from the zod schema. A test holds it current. */
const file = new URL('../../public/maker-file.schema.json', import.meta.url);
writeFileSync(file, makerFileJsonSchema());
process.stdout.write('public/maker-file.schema.json written\n');
