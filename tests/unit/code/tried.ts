import { bookPlants, openSystem } from '../../../src/code/book';
import { isFault, type LaidLayout, layOut } from '../../../src/code/layout';
import type { CodeSystem, Layout, Plant } from '../../../src/maker/types';
import type { Span } from '../../../src/span';

export const plants: Plant[] = [
  { code: 'KV', place: 'BE', used: ['1988', '2003'] },
  { code: 'HJ', place: 'FR', used: ['1990', null] },
  { code: 'HJ', place: 'IT', used: ['2000', null] },
  { code: 'ZZ', place: 'ZZ', used: ['1990', null] },
];
export const laidOut = (layout: Layout, plantCodes: readonly string[] = ['KV', 'HJ']): LaidLayout => {
  const laid = layOut(layout, { plantCodes });
  if (isFault(laid)) throw new Error(laid.fault.kind);
  return laid;
};
export const system = (layout: Layout, more: Partial<CodeSystem> = {}): CodeSystem => ({
  id: 'tried',
  used: ['1990', '1999'],
  layout,
  examples: [],
  ...more,
});
export const opened = (layout: Layout, more: Partial<CodeSystem> = {}) =>
  openSystem(system(layout, more), 'Ondrasse', bookPlants(plants)).system;
export const span = (from: string | null, to: string | null): Span => ({ from, to, precision: 'range' });
