import { describe, expect, it } from 'vitest';
import { passage, passagesOf } from '../../../src/claim/passage';
import { listingOf } from './listing-of';

describe('how much of a text is read', () => {
  it('two hundred thousand characters, and not one more', () => {
    const text = 'bag '.repeat(50_000);
    for (const more of ['', 'x']) expect(passage('description', text + more, null, '').text).toBe(text);
    expect(passage('description', text.slice(1), null, '').text).toBe(text.slice(1));
  });

  it('of a title three hundred characters are what names the piece', () => {
    const title = 'y'.repeat(299);
    const named = (name: string) => passagesOf(listingOf(name, 'A bag.')).map((from) => from.title);
    expect(named(`${title}zx`)).toEqual([`${title}z`, `${title}z`]);
    expect(named(title)).toEqual([title, title]);
  });
});
