import { describe, expect, it } from 'vitest';
import { mostAtOnce, nextStep, placesLeft, slowMs, type Way } from '../../../src/ui/panel/photo-steps';

const seen = (likelihood: number, again = false, closer = false): Way => ({ at: 'seen', likelihood, again, closer });
const done: Way = { at: 'done', closer: false };
const asked = (since: number): Way => ({ at: 'asked', since });

describe('what the reader does next', () => {
  it('glances at every photo that is here before it reads one', () => {
    expect(nextStep([seen(0.9), { at: 'here' }], 100, 100)).toEqual({ do: 'glance', index: 1 });
  });

  it('reads the likeliest, and of equals the listing’s first', () => {
    expect(nextStep([seen(0.2), seen(0.8), seen(0.8)], 100, 100)).toEqual({ do: 'read', index: 1 });
  });

  it('looks at the likelier half closer, the likeliest first, before it reads one', () => {
    const looked = (likelihood: number) => seen(likelihood, false, true);
    const four = [seen(0.2), seen(0.5), seen(0.9), seen(0.4)];
    expect(nextStep(four, 100, 100)).toEqual({ do: 'look-closer', index: 2 });
    const [a, b, , d] = four as [Way, Way, Way, Way];
    expect(nextStep([a, b, looked(0.6), d], 100, 100)).toEqual({ do: 'look-closer', index: 1 });
    expect(nextStep([a, looked(0.7), looked(0.6), d], 100, 100)).toEqual({ do: 'read', index: 1 });
    // What was read counts among the half: no further one is looked at for it.
    expect(nextStep([a, { at: 'done', closer: true }, looked(0.6), d], 100, 100)).toEqual({ do: 'read', index: 2 });
  });

  it('looks at no further one closer that could not pass the best of them', () => {
    const looked = seen(0.8, false, true);
    expect(nextStep([seen(0.59), looked, seen(0), seen(0)], 100, 100)).toEqual({ do: 'read', index: 1 });
    expect(nextStep([seen(0.61), looked, seen(0), seen(0)], 100, 100)).toEqual({ do: 'look-closer', index: 0 });
  });

  it('looks at none closer where nothing was seen, or where half of the photos is one', () => {
    expect(nextStep([seen(0), seen(0), seen(0), seen(0)], 100, 100)).toEqual({ do: 'read', index: 0 });
    expect(nextStep([seen(0.2), seen(0.5), seen(0.4)], 100, 100)).toEqual({ do: 'read', index: 1 });
  });

  it('reads last what the reader failed on', () => {
    expect(nextStep([seen(0.9, true), seen(0.1)], 100, 100)).toEqual({ do: 'read', index: 1 });
    expect(nextStep([seen(0.9, true), done], 100, 100)).toEqual({ do: 'read', index: 0 });
  });

  it('waits for nobody while there is something to read', () => {
    expect(nextStep([seen(0), asked(0)], 100, 100)).toEqual({ do: 'read', index: 0 });
  });

  it('rests when only late photos are missing and none came just now', () => {
    expect(nextStep([done, asked(0)], 2000, 1900)).toEqual({ do: 'wait', until: slowMs });
    expect(nextStep([done, asked(0)], 2600, 1900)).toEqual({ do: 'wait', until: 2900 });
    expect(nextStep([done, asked(0)], 2900, 1900)).toEqual({ do: 'rest' });
  });

  it('ends when each photo is done with', () => {
    expect(nextStep([done, done], 0, 0)).toEqual({ do: 'end' });
  });
});

describe('photos on their way', () => {
  it('are so many at once, and a slow one holds no place', () => {
    expect(
      placesLeft(
        Array.from({ length: 4 }, () => asked(0)),
        100,
      ),
    ).toBe(mostAtOnce - 4);
    expect(
      placesLeft(
        Array.from({ length: 4 }, () => asked(0)),
        slowMs,
      ),
    ).toBe(mostAtOnce);
  });
});
