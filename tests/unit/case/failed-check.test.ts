import { describe, expect, it, vi } from 'vitest';
import { buildCase, caseSchema } from '../../../src/case';
import { type Check, checks } from '../../../src/check';
import { succeed } from '../../../src/problem';
import { createSession } from '../../../src/ui/panel/session';
import type { PanelState } from '../../../src/ui/panel/state';
import { inputOf, truthRows } from '../../reference/cases/truth-case';

/** The third check of all breaks on every listing. */
vi.mock('../../../src/check/registry', async (importActual) => {
  const actual = await importActual<{ checks: Check[] }>();
  const judge = () => {
    throw new TypeError('sides is not iterable\n    of the second measure');
  };
  return { checks: actual.checks.map((check, index) => (index === 2 ? { ...check, judge } : check)) };
});

const row = truthRows('misdescribed').find(({ doubt }) => doubt.length > 0) ?? truthRows('misdescribed')[0];
if (!row) throw new Error('the table has no row');
const input = inputOf(row);
const broken = checks[2]?.id;

describe('a check that breaks', () => {
  it('is an outcome of its own, in one line, and every other check stands', () => {
    const built = buildCase(input);
    expect(built.outcomes.map(({ check }) => check)).toEqual(checks.map(({ id }) => id));
    expect(built.outcomes.filter(({ outcome }) => outcome === 'failed')).toEqual([
      { outcome: 'failed', check: broken, why: 'sides is not iterable of the second measure' },
    ]);
    expect(built.outcomes.some(({ outcome }) => outcome === 'speaks')).toBe(true);
    expect(caseSchema.safeParse(JSON.parse(JSON.stringify(built))).success).toBe(true);
  });

  it('does not hold up the panel: the session goes on to its end with the case', async () => {
    const states: PanelState[] = [];
    const session = createSession(
      1,
      {
        readPage: async () => succeed({ listing: { ...input.listing, photos: [] }, incognito: false, picks: [] }),
        fetchPhoto: async () => succeed({ base64: '', mediaType: 'image/jpeg', came: { way: 'page', fullSize: true } }),
        reader: {
          atOnce: 1,
          read: async () => Promise.reject(new Error('no photo is read here')),
          glance: async () => Promise.reject(new Error('no photo is glanced at here')),
          renew: async () => undefined,
        },
        makers: async () => [...input.makers],
        buildCase,
        lookBack: () => ({ at: async () => null, end: () => undefined }),
        mayRead: async () => true,
        now: () => input.now,
        clock: { now: () => 0, wake: () => () => undefined },
        keepFile: () => 'blob:none',
        dropFile: () => undefined,
      },
      (state) => states.push(state),
    );
    await session.read();
    expect(states.at(-1)?.stage.kind).toBe('done');
    expect(states.at(-1)?.case?.outcomes).toContainEqual(expect.objectContaining({ outcome: 'failed', check: broken }));
  });
});
