// @vitest-environment jsdom
import { render } from 'preact';
import { expect, test } from 'vitest';
import { CannotTell } from '../../../src/ui/parts/CannotTell';

test('checks that lack the same stand under one reason, in the order of the first of each', () => {
  const room = document.createElement('div');
  const file = { reason: 'no-maker-file', data: {} } as const;
  const stamp = { reason: 'no-stamp-read', data: {} } as const;
  render(
    <CannotTell
      checks={[
        { check: 'code-shown', why: file },
        { check: 'stamp-evenness', why: stamp },
        { check: 'code-fits-maker', why: file },
      ]}
    />,
    room,
  );
  const items = [...(room.firstElementChild?.children ?? [])];
  expect(items).toHaveLength(2);
  expect(items[0]?.querySelectorAll('li')).toHaveLength(2);
  expect(items[0]?.textContent).toMatch(/^no maker file is known for this piece:/);
  expect(items[1]?.querySelector('li')).toBeNull();
});
