// @vitest-environment jsdom
import { render } from 'preact';
import { expect, test } from 'vitest';
import { decodeText } from '../../../src/code';
import type { Decoding, Nearest } from '../../../src/code/types';
import { builtInMakers } from '../../../src/maker';
import { DecodingCard } from '../../../src/ui/parts/DecodingCard';

const show = (decoding: Decoding): string => {
  const room = document.createElement('div');
  render(<DecodingCard decoding={decoding} picture={null} where="Photo 1" pictureLabel="" />, room);
  return room.textContent ?? '';
};
const known = decodeText('KV0915', { makers: builtInMakers, maker: 'Ondrasse', now: '2026-01-15' });
const [reading] = known.readings;
const near = (code: string, how: Nearest['how']): Decoding => {
  const nearest: Nearest = { text: 'KV0915', system: reading!.system, how, likelihood: 0.7, reading: reading! };
  return { ...known, code, readings: [], misfits: [], nearest: [nearest] };
};

test('whose system a code reads under is said, and that its maker is invented', () => {
  expect(show(known)).toContain('January 1995, Belgium by Ondrasse (invented), interleaved month');
});

test('a near code is told by what differs', () => {
  const words = show(near('KVO915', 'likely'));
  expect(words).toContain('No file explains it yet.');
  expect(words).toContain('Near: KV0915 ("O" in place 3 read as "0", which look alike), by Ondrasse (invented)');
});

test('the same text is never called near', () => {
  for (const how of ['as-written', 'likely'] as const) {
    const words = show(near('KV 0915', how));
    expect(words).not.toContain('Near:');
    expect(words).not.toContain('Fits no code system');
    expect(words).toContain('Not certain enough: January 1995, Belgium by Ondrasse (invented), interleaved month.');
  }
});
