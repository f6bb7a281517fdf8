import { describe, expect, it } from 'vitest';
import { frameTextsOf } from '../../../../src/reader/page/read-frames';

const frame = (frameId: number, address: string, text: string) => ({ frameId, result: { address, text } });

describe('words that the frames of a tab gave', () => {
  it('are kept by the frame’s address, without the page itself', () => {
    const results = [
      frame(0, 'https://attic-arcade.example/item/1', 'The page.'),
      frame(7, 'https://words.attic-arcade.example/1', 'Made in Belgium in 1995.'),
    ];
    expect(frameTextsOf(results)).toEqual({ 'https://words.attic-arcade.example/1': 'Made in Belgium in 1995.' });
  });

  it('leave out frames that gave nothing, something else, or stand at no web address', () => {
    const results = [
      { frameId: 1, result: null },
      { frameId: 2 },
      { frameId: 3, result: { address: 'https://words.attic-arcade.example/3', text: 5 } },
      frame(4, 'about:blank', 'words'),
      frame(5, 'https://words.attic-arcade.example/5', 'x'.repeat(20_001)),
    ];
    expect(frameTextsOf(results)).toEqual({});
  });

  it('are bounded all together, and in the number of frames', () => {
    const results = Array.from({ length: 40 }, (_, index) =>
      frame(index + 1, `https://words.attic-arcade.example/${index}`, 'x'.repeat(20_000)),
    );
    const letters = Object.values(frameTextsOf(results)).reduce((sum, text) => sum + text.length, 0);
    expect(letters).toBe(100_000);
    const short = results.map(({ frameId, result }) => frame(frameId, result.address, 'x'));
    expect(Object.keys(frameTextsOf(short))).toHaveLength(30);
  });

  it('are not taken where two frames of one address say different things', () => {
    const address = 'https://words.attic-arcade.example/1';
    expect(frameTextsOf([frame(1, address, 'one'), frame(2, address, 'two')])).toEqual({});
    expect(frameTextsOf([frame(1, address, 'one'), frame(2, address, 'one')])).toEqual({ [address]: 'one' });
  });
});
