import type * as z from 'zod';
import { case0 } from './case-0';
import { case1 } from './case-1';
import { case2 } from './case-2';
import { look1 } from './look-1';
import { look2 } from './look-2';
import { look3 } from './look-3';
import { look4 } from './look-4';
import { note3 } from './note-3';
import { note4 } from './note-4';
import { note5 } from './note-5';
import { note6 } from './note-6';
import { note7 } from './note-7';
import { note8 } from './note-8';
import { note9 } from './note-9';
import { picture1 } from './picture-1';
import { picture2 } from './picture-2';

/*
 * Forms repeat what is of one shape today in other folders, and in the form before: what was written once has to be read
 * whatever those become.
 */

/**
 * Every form in which a record was ever written, by its name and number. None of them is edited once it was published.
 * @internal
 */
export const frozenRecords = {
  'case-0': case0,
  'case-1': case1,
  'case-2': case2,
  'note-3': note3,
  'note-4': note4,
  'note-5': note5,
  'note-6': note6,
  'note-7': note7,
  'note-8': note8,
  'note-9': note9,
  'look-1': look1,
  'look-2': look2,
  'look-3': look3,
  'look-4': look4,
  'picture-1': picture1,
  'picture-2': picture2,
} satisfies Record<string, z.ZodType>;

/** The former forms of a saved listing, by version: with version 3 its looks left it. */
export const caseForms = [case0, case1, case2, note3, note4, note5, note6, note7, note8] as const;
