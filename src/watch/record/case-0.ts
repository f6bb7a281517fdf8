import * as z from 'zod';
import { look2 } from './case-2';
import { moment1, status1 } from './forms-1';

/**
 * A record of the trial builds, which were never published: without a version, note and bin. It stands so that the
 * chain has a first link, and so that an export made then still imports.
 */
export const case0 = z.strictObject({
  id: z.string().min(1).max(80),
  key: z.string().optional(),
  title: z.string().max(500),
  savedAt: moment1,
  changedAt: moment1,
  status: status1,
  note: z.string().max(20_000).optional(),
  case: look2.case,
  pictures: look2.pictures.optional(),
  removedAt: moment1.nullable().optional(),
});
