import { describe, expect, it } from 'vitest';
import { type AskData, type AskId, askFor } from '../../../src/check/asks';
import type { Finding } from '../../../src/check/types';
import type { Claim } from '../../../src/claim/types';
import { askQuestions } from '../../../src/question';
import { yearSpan } from '../../../src/span';
import { composeMessage } from '../../../src/words';
import { claim } from '../check/sample';

const findingThatAsks = <A extends AskId>(ask: A, data: AskData[A]): Finding => ({
  id: 'a',
  check: 'a',
  kind: 'doubt',
  data: {},
  source: { kind: 'practice', text: 'common practice, no source' },
  evidence: [],
  photos: [],
  claims: [],
  asks: [askFor(ask, data)],
});
const asked = <A extends AskId>(ask: A, data: AskData[A], claims: Claim[]) =>
  askQuestions([findingThatAsks(ask, data)], claims);

const bought = claim('bought', 'bought in 1998', { span: yearSpan(1998) });
const zip = claim('replaced', 'zip replaced', { parts: ['zip'] });
const handles = claim('replaced', 'handles re-dyed', { parts: ['handle'], how: 're-dyed' });

describe('a question leaves out what the seller has told', () => {
  it('asks for the day of purchase only where none is said', () => {
    expect(asked('made-date', {}, [])[0]?.asks[0]?.data).toEqual({});
    expect(asked('made-date', {}, [bought])[0]?.asks[0]?.data).toEqual({ told: true });
  });
  it('asks for a photo of the receipt that is spoken of, and else whether there is one', () => {
    expect(asked('purchase', {}, [bought])[0]?.asks[0]?.data).toEqual({});
    expect(asked('purchase', {}, [{ ...bought, invoice: true } as Claim])[0]?.asks[0]?.data).toEqual({ told: true });
  });
  it('does not ask whether a part was replaced that is said to be, but of another part', () => {
    expect(asked('part', { part: 'zip' }, [zip])[0]?.asks[0]?.data).toEqual({ part: 'zip', told: true });
    expect(asked('part', { part: 'lining' }, [zip])[0]?.asks[0]?.data).toEqual({ part: 'lining' });
    expect(asked('aging', {}, [handles])[0]?.asks[0]?.data).toEqual({ told: true });
    expect(asked('aging', {}, [zip])[0]?.asks[0]?.data).toEqual({});
  });
  it('does not ask why one part aged otherwise where any of those that show it is said to be new, whatever else is', () => {
    const told = (...parts: string[]) =>
      asked('aging', {}, [claim('replaced', 'replaced', { parts } as never)])[0]?.asks[0]?.data;
    for (const part of ['handle', 'trim', 'hardware']) {
      expect(told(part), part).toEqual({ told: true });
      expect(told('lining', part), part).toEqual({ told: true });
    }
    expect(told('lining', 'zip')).toEqual({});
    expect(told()).toEqual({});
  });
  it.each(['en', 'de', 'fr', 'it', 'es', 'nl', 'ja'] as const)('says so in the message: %s', (language) => {
    for (const [ask, data, claims] of [
      ['made-date', {}, [bought]],
      ['purchase', {}, [{ ...bought, invoice: true } as Claim]],
      ['part', { part: 'zip' }, [zip]],
      ['aging', {}, [handles]],
    ] as [AskId, AskData[AskId], Claim[]][]) {
      const open = composeMessage(asked(ask, data, []), { language });
      const told = composeMessage(asked(ask, data, claims), { language });
      expect(told, `${language} ${ask}`).not.toBe(open);
      if (ask !== 'purchase') expect(told.length, `${language} ${ask}`).toBeLessThan(open.length);
    }
  });
});
