import { config } from 'zod';

// zod builds faster validators by `new Function`, which an extension page may not: told so, it does not try. This has
// to happen before the first schema is used, so it happens when an entry point imports this file first.
config({ jitless: true });
