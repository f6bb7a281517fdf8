import * as z from 'zod';
import { digest1, pixels1 } from './forms-1';

/** A picture as a file carries it: named by the SHA-256 of its bytes. In the database it lies as bytes. */
export const picture1 = z.strictObject({ hash: digest1, picture: pixels1 });
