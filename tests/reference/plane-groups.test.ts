import { describe, expect, it } from 'vitest';
import { hasHalfTurn, operationsOf, planeGroups, uprightAxes } from '../measure/second/plane-groups';
import type { Tally } from '../measure/tally';
import { tallyGroup, turnsOf } from '../measure/tally-groups';

const square = { one: { x: 1, y: 0 }, other: { x: 0, y: 1 } };
const hexagonal = { one: { x: 1, y: 0 }, other: { x: -0.5, y: Math.sqrt(3) / 2 } };

describe('the 17 plane groups (International Tables for Crystallography, volume A)', () => {
  it('have as many general positions in a cell as the tables count', () => {
    expect(planeGroups.map((group) => operationsOf(group).length)).toEqual([
      1, 2, 2, 2, 4, 4, 4, 4, 8, 4, 8, 8, 3, 6, 6, 6, 12,
    ]);
  });

  it('turn onto themselves by a half in ten of them', () => {
    expect(planeGroups.filter(hasHalfTurn)).toEqual('p2 p2mm p2mg p2gg c2mm p4 p4mm p4gm p6 p6mm'.split(' '));
  });

  it('have an axis across their first step where the tables draw one, and no glide is taken for it', () => {
    const upright = planeGroups.filter((group) => {
      const basis = turnsOf(group).includes(90) && group.startsWith('p3') ? hexagonal : square;
      return group !== 'p6' && group !== 'p6mm' && uprightAxes(group, basis).length > 0;
    });
    expect(upright).toEqual('pm cm p2mm p2mg c2mm p4mm p3m1'.split(' '));
    expect(['p6', 'p6mm'].map((group) => uprightAxes(group as 'p6' | 'p6mm', hexagonal).length > 0)).toEqual([
      false,
      true,
    ]);
  });

  it.each(planeGroups)('%s is told for what it is by the measures of a panel', async (group) => {
    const tally: Tally = new Map();
    await tallyGroup(tally, group, turnsOf(group)[0]!, 'clear', 900 + planeGroups.indexOf(group), ['exact']);
    for (const wrong of ['an axis without one', 'way wrong', 'a way told under a half turn', 'repeat wrong, exact'])
      expect(tally.get(wrong)?.hits ?? 0, wrong).toBe(0);
    for (const told of [
      'repeat within 2%, exact',
      'angle of the lattice within 1°',
      'axis told, exact',
      'axis within its uncertainty, exact',
    ])
      expect(tally.get(told)?.hits, told).toBe(tally.get(told)?.of);
  });
});
