import * as z from 'zod';
import { look2 } from './case-2';
import { moment1, status1 } from './forms-1';

/** A saved listing of version 1: one look, one note, and the key of its address within. */
export const case1 = z.strictObject({
  version: z.literal(1),
  id: z.string().min(1).max(80),
  key: z.string().optional(),
  title: z.string().max(500),
  savedAt: moment1,
  changedAt: moment1,
  status: status1,
  note: z.string().max(20_000),
  ...look2,
  removedAt: moment1.nullable(),
});
