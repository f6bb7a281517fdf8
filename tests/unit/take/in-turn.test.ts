import { describe, expect, it } from 'vitest';
import { plantsIn } from '../../../src/take/prose/plants';

const before = { oneLetter: true, confessed: false, takenBack: null };
const plants = (sentence: string) =>
  plantsIn(sentence, before).plants.map(({ own }) => `${own.code} ${own.name ?? own.place}`);

describe('codes and places told in two rows', () => {
  it.each([
    'T, O and P stand for Truro, Oundle and Penrith respectively.',
    'The factories in Truro, Oundle and Penrith used the letters T, O and P respectively.',
    'T, O und P stehen für Truro, Oundle bzw. Penrith.',
    'T, O et P désignent respectivement Truro, Oundle et Penrith.',
    'Le lettere T, O e P indicano rispettivamente Truro, Oundle e Penrith.',
    'T, O y P significan Truro, Oundle y Penrith, respectivamente.',
    'T, O en P staan respectievelijk voor Truro, Oundle en Penrith.',
  ])('%s', (sentence) => {
    expect(plants(sentence)).toEqual(['T Truro', 'O Oundle', 'P Penrith']);
  });

  it('are in the order of both rows in Japanese as well', () => {
    expect(plants('T、O、Pはそれぞれ徳島、大阪、平戸の工場を表します。')).toEqual(['T 徳島', 'O 大阪', 'P 平戸']);
  });

  it('may be numbers where the sentence says that they are in turn', () => {
    expect(plants('The workshops at Truro, Oundle and Penrith are 1, 2 and 3 respectively.')).toEqual([
      '1 Truro',
      '2 Oundle',
      '3 Penrith',
    ]);
  });

  it('are nothing where the rows are not of one length, or name no places', () => {
    expect(plants('T, O and P stand for Truro and Penrith respectively.')).toEqual([]);
    expect(plants('T, O and P stand for January, February and March respectively.')).toEqual([]);
    expect(plants('K, L und Z stehen jeweils für Kalbsleder, Leinen und Nylon.')).toEqual([]);
  });
});
