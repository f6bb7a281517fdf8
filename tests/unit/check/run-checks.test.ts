import { expect, test } from 'vitest';
import * as z from 'zod';
import { runChecks } from '../../../src/check';
import { defineCheck, practice } from '../../../src/check/frame';
import { facts } from './sample';

const failing = (message: string) =>
  defineCheck({
    id: 'sample-check',
    family: 'time',
    kinds: ['gap'],
    source: practice,
    data: z.strictObject({}),
    needs: {},
    run() {
      throw new Error(message);
    },
  });

test('of a check that fails the beginning of its message is kept, in one line', () => {
  expect(runChecks(facts(), [failing('Not\n this  one')])).toEqual([
    { outcome: 'failed', check: 'sample-check', why: 'Not this one' },
  ]);
  const long = 'x'.repeat(300);
  expect(runChecks(facts(), [failing(long)])).toMatchObject([{ why: long.slice(0, 200) }]);
});
