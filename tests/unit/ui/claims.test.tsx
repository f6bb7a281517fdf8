// @vitest-environment jsdom
import { render } from 'preact';
import { expect, it } from 'vitest';
import type { Claim } from '../../../src/claim/types';
import { Claims } from '../../../src/ui/parts/Claims';

const code = (id: string, takenBy?: object): Claim =>
  ({
    ...{ kind: 'code', id, code: 'KV 09 15', words: 'KV 09 15', confidence: 0.85 },
    ...{ at: { field: 'description', start: 0, end: 8 }, ...(takenBy ? { takenBy } : {}) },
  }) as Claim;

it('a code in the text says by what it was taken for one, each way once', () => {
  const stamp = { by: 'words', words: 'Stamp inside says' };
  const claims = [code('a', stamp), code('b', stamp), code('c', { by: 'layout', words: 'Ondrasse' }), code('d')];
  const room = document.createElement('div');
  render(<Claims claims={claims} />, room);
  expect(Array.from(room.querySelectorAll('small'), ({ textContent }) => textContent)).toEqual([
    'taken for a code by “Stamp inside says” before it',
    'taken for a code because it fits a layout of Ondrasse',
  ]);
});
