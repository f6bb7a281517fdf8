import { describe, expect, it } from 'vitest';
import { mostAtOnce, nextStep, placesLeft, slowMs, type Way } from '../../../src/ui/panel/photo-steps';

const seen = (likelihood: number, again = false): Way => ({ at: 'seen', likelihood, again });
const asked = (since: number): Way => ({ at: 'asked', since });

describe('what the reader does next', () => {
  it('glances at every photo that is here before it reads one', () => {
    expect(nextStep([seen(0.9), { at: 'here' }], 100, 100)).toEqual({ do: 'glance', index: 1 });
  });

  it('reads the likeliest, and of equals the listing’s first', () => {
    expect(nextStep([seen(0.2), seen(0.8), seen(0.8)], 100, 100)).toEqual({ do: 'read', index: 1 });
  });

  it('reads last what the reader failed on', () => {
    expect(nextStep([seen(0.9, true), seen(0.1)], 100, 100)).toEqual({ do: 'read', index: 1 });
    expect(nextStep([seen(0.9, true), { at: 'done' }], 100, 100)).toEqual({ do: 'read', index: 0 });
  });

  it('waits for nobody while there is something to read', () => {
    expect(nextStep([seen(0), asked(0)], 100, 100)).toEqual({ do: 'read', index: 0 });
  });

  it('rests when only late photos are missing and none came just now', () => {
    expect(nextStep([{ at: 'done' }, asked(0)], 2000, 1900)).toEqual({ do: 'wait', until: slowMs });
    expect(nextStep([{ at: 'done' }, asked(0)], 2600, 1900)).toEqual({ do: 'wait', until: 2900 });
    expect(nextStep([{ at: 'done' }, asked(0)], 2900, 1900)).toEqual({ do: 'rest' });
  });

  it('ends when each photo is done with', () => {
    expect(nextStep([{ at: 'done' }, { at: 'done' }], 0, 0)).toEqual({ do: 'end' });
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
