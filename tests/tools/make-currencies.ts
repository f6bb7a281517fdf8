import { writeFileSync } from 'node:fs';
import { currencyJson } from './currency-table';

/* npm run make:currencies: writes src/text/currencies.json from Unicode CLDR. A test holds it current. */
writeFileSync(new URL('../../src/text/currencies.json', import.meta.url), currencyJson());
process.stdout.write('src/text/currencies.json written\n');
