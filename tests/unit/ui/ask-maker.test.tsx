// @vitest-environment jsdom
import { render } from 'preact';
import { expect, it } from 'vitest';
import { AskMaker } from '../../../src/ui/makers/take/AskMaker';
import { strings } from '../../../src/words';

const { check, emptied, none } = strings.take.askMaker;
const room = document.createElement('div');
const hint = (names: boolean, likely: string) => {
  render(<AskMaker names={names} likely={likely} others={[]} onChange={() => {}} />, room);
  return room.querySelector('.hint')?.textContent;
};

it('says that the page names nobody only where it does not', () => {
  expect(hint(true, 'Wexmoor')).toBe(check);
  expect(hint(true, '')).toBe(emptied);
  expect(hint(true, ' ')).toBe(emptied);
  expect(hint(false, '')).toBe(none);
  expect(hint(false, 'Wexmoor')).toBe(check);
});
