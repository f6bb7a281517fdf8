import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { findMarks, marks } from '../../../src/mark';
import { markReadSchema } from '../../../src/mark/types';
import { inListing, inPhoto } from './read';

const folder = new URL('../../../src/mark/', import.meta.url);
const ids = marks.map((mark) => mark.id);

test('every file that defines a mark is registered, under its own name', () => {
  const defining = readdirSync(folder)
    .filter((file) => file.endsWith('.ts') && file !== 'define.ts')
    .filter((file) => readFileSync(new URL(file, folder), 'utf8').includes('defineMark('))
    .map((file) => file.slice(0, -3));
  expect(defining.sort()).toEqual([...ids].sort());
});

test('every mark has a test of the same name', () => {
  const tests = readdirSync(new URL('.', import.meta.url));
  expect(ids.filter((id) => !tests.includes(`${id}.test.ts`))).toEqual([]);
});

test('names follow the rule: whole words in small letters joined by hyphens, each once', () => {
  expect(ids.filter((id) => !/^[a-z]+(?:-[a-z]+)*$/.test(id))).toEqual([]);
  expect(new Set(ids).size).toBe(ids.length);
});

const everything = `Made in Occupied Japan. Made in West Germany. U.S. Pat. No. 2,544,409 and US Patent 5,400,000, Des. Pat. 140,435.
Pat. Nov. 25, 1851. Rd. No. 821265. diamond mark: top E, left E, right 31, bottom 2. London, date letter a. UK hallmark silver 800.
Common Control Mark. RN 13670. Label: 65% POLYESTER. symbols-only care label US. hook-and-loop. Chicago, IL 60614. Tel 0171 555 0199.
4006381333931 www.ondrasse.example DM 398`;

test('every mark is found in a text that carries them all, fits its schema and has its own id', () => {
  const reads = [...findMarks(everything, inPhoto), ...findMarks(everything, inListing)];
  expect(new Set(reads.map((read) => read.mark))).toEqual(new Set(ids));
  for (const read of reads) expect(markReadSchema.parse(read)).toEqual(read);
  expect(new Set(reads.map((read) => read.id)).size).toBe(reads.length);
});

test('only what was held against a document is hard, and what is not says so in its source', () => {
  const reads = findMarks(everything, inPhoto);
  expect(reads.filter((read) => read.strength === 'hard' && !read.verified)).toEqual([]);
  expect(reads.filter((read) => read.verified === (read.source.kind === 'memory'))).toEqual([]);
});

test('the same text gives the same marks, and words said twice are given once', () => {
  expect(findMarks(everything, inPhoto)).toEqual(findMarks(everything, inPhoto));
  expect(findMarks('RN 13670 RN 13670', inPhoto)).toHaveLength(1);
});

test.each([
  'Pat ',
  'Pat. No. 1,234,567 ',
  '111 ',
  'a@a.',
  'www.a ',
  'date letter a ',
  'Made in ',
  '£1.',
  'label ',
  'é',
])('40,000 characters of "%s" are searched to their end', (text) => {
  const filling = text.repeat(Math.ceil(40_000 / text.length));
  const atEnd = findMarks(`${filling} \n RN 13670`, inPhoto).filter(({ words }) => words.includes('13670'));
  expect(atEnd).toHaveLength(1);
});

test('an ordinary listing carries no marks', () => {
  const text = `Pre-owned Ondrasse Carryall 30 in grained calf, bought in 1996 in Lyon. Stamp KV0915 inside, width 30 cm, height 21 cm.
    Red suede lining, patent leather trim, made in France. Price 450 EUR, was 620. Call 0171 555 0199 or write to us; ships from Chicago, IL 60614.`;
  expect(findMarks(text, inListing)).toEqual([]);
});
