import { expect, it } from 'vitest';
import type { Case, Correction } from '../../../src/case';
import type { HandMark, HandMeasure } from '../../../src/photo';
import { listingKey } from '../../../src/watch';
import { marked, rowOfStitches } from '../../hand-mark';
import { good, testBench } from './open-for-test';
import { sampleCase } from './sample-case';

const [here, there] = ['https://attic-arcade.example/item/7', 'https://attic-arcade.example/item/8'];
const line: HandMark = {
  ...rowOfStitches({ number: 4, name: 'ONDRASSE' }),
  kind: 'lettering',
  points: [
    { x: 0.2, y: 0.4 },
    { x: 0.8, y: 0.4 },
    { x: 0.8, y: 0.5 },
    { x: 0.2, y: 0.5 },
  ],
};
const width: HandMeasure = { what: 'letter-width', value: 0.61, uncertainty: 0.05, unit: 'of-height', where: null };
const correction = (id: string, mark: HandMark): Correction => ({
  id,
  ...marked({ url: `${there}/1.jpg`, hash: null }, mark, [width]),
});
const withMarks = (url: string, title: string, corrections: Correction[]): Case => ({
  ...sampleCase(url, title),
  maker: 'Ondrasse',
  corrections,
});

it('lines of characters are found in other cases, with their maker; other marks, its own case and the bin are not', async () => {
  const list = await testBench().open();
  const lettering = () => list.lettering(listingKey(here)).then(good);
  good(await list.save(withMarks(here, 'Own', [correction('hand-1', line)]), []));
  const other = good(
    await list.save(
      withMarks(there, 'Other', [correction('hand-1', line), correction('hand-2', rowOfStitches({ number: 5 }))]),
      [],
    ),
  );
  expect(await lettering()).toEqual([
    { id: other.id, title: 'Other', maker: 'Ondrasse', mark: line, measured: [width] },
  ]);
  good(await list.remove(other.id));
  expect(await lettering()).toEqual([]);
});
