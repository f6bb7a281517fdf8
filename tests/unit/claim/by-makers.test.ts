import { expect, it } from 'vitest';
import { nameFinder, rememberForMakers } from '../../../src/claim/by-makers';
import { blankMaker } from '../blank-maker';

const file = (maker: string, aliases: string[] = []) => ({ ...blankMaker, maker, aliases });
const [velmont, orrin, holt] = [file('Velmont'), file('Orrin Vale', ['O. Vale']), file('Holt')];

it('what is built for maker files is built once for the same files, and anew for others', () => {
  const built: string[] = [];
  const namesOf = rememberForMakers((makers) => {
    const names = makers.map(({ maker }) => maker).join();
    built.push(names);
    return names;
  });
  const lists = [[velmont, orrin], [velmont, orrin], [velmont], [velmont, holt], [orrin, holt], [], []];
  expect(lists.map((makers) => namesOf(makers))).toEqual(lists.map((one) => one.map(({ maker }) => maker).join()));
  expect(built).toEqual(['Velmont,Orrin Vale', 'Velmont', 'Velmont,Holt', 'Orrin Vale,Holt', '']);
});

it('a list of files that changes after it was asked for is another list', () => {
  const makers = [velmont];
  const count = rememberForMakers((of) => of.length);
  expect(count(makers)).toBe(1);
  makers.push(holt);
  expect(count(makers)).toBe(2);
});

it('finds makers by their names and by what else they are called, and nobody without files', () => {
  expect(nameFinder([velmont, orrin])('By O. Vale, once by Velmont').map(({ value }) => value)).toEqual([
    'Orrin Vale',
    'Velmont',
  ]);
  expect(nameFinder([])('By O. Vale')).toEqual([]);
});
