import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { defineCheck, practice } from '../../../src/check/frame';
import { because } from '../../../src/check/reasons';
import type { Outcome } from '../../../src/check/types';
import type { MakerFile } from '../../../src/maker/types';
import { facts, judgedBy, madeIn, ondrasse, readPhoto, said, unreadPhoto, withPhotos } from './sample';

const head = {
  id: 'sample-check',
  family: 'time',
  kinds: ['gap'],
  source: practice,
  data: z.strictObject({ said: z.string() }),
} as const;
const kindsOf = (outcome: Outcome) =>
  outcome.outcome === 'speaks' ? outcome.findings.map(({ kind, data }) => [kind, data.said]) : outcome.outcome;

describe('defineCheck', () => {
  it('hands over what is needed and nothing else', () => {
    let handed: object = {};
    const check = defineCheck({
      ...head,
      needs: { claims: ['made'], listing: ['text'], photos: 'any' },
      run(given) {
        handed = given;
        return [];
      },
    });
    check.judge(facts({ claims: [madeIn(1994)] }));
    expect(Object.keys(handed).sort()).toEqual(['claims', 'listing', 'photoNumber', 'photos']);
    expect(handed).toMatchObject({ claims: { made: [madeIn(1994)] }, listing: { text: '' } });
  });

  it('cannot tell, without running, when no photo was read', () => {
    const check = defineCheck({
      ...head,
      needs: { photos: 'read' },
      run: () => [{ kind: 'gap', data: { said: 'ran' } }],
    });
    expect(said(check, facts({ photos: [unreadPhoto('p1')] }))).toEqual([
      'cannot-tell: 1 of 1 photos not read: this file is not an image that can be read: its first bytes are of no known photo format',
    ]);
    expect(kindsOf(check.judge(facts({ photos: [unreadPhoto('p1'), readPhoto('p2')] })))).toEqual([['gap', 'ran']]);
  });

  it('cannot tell when a field that it needs is not stated', () => {
    const check = defineCheck({ ...head, needs: { stated: ['price'] }, run: () => [] });
    expect(said(check, facts())).toEqual(['cannot-tell: the page does not state the price']);
  });

  it('names the first section that the maker file lacks', () => {
    const check = defineCheck({ ...head, needs: { maker: ['prices', 'models', 'codeSystems'] }, run: () => [] });
    const sections = (given: Partial<MakerFile>) => {
      const outcome = check.judge(judgedBy(facts(), { ...ondrasse, ...given }));
      return 'why' in outcome ? outcome.why : outcome.outcome;
    };
    expect(sections({})).toBe('silent');
    expect(sections({ models: [], codeSystems: [] })).toMatchObject({
      reason: 'maker-file-silent',
      data: { maker: 'Ondrasse', section: 'models' },
    });
  });

  it('hands over a computed fact, or says why it is not known without running', () => {
    const check = defineCheck({
      ...head,
      needs: { facts: ['date'] },
      run: ({ fact }) => [{ kind: 'gap', data: { said: fact.date.claims.join() } }],
    });
    expect(kindsOf(check.judge(facts({ claims: [madeIn(1994)] })))).toEqual([['gap', 'claim-made']]);
    expect(said(check, facts())).toEqual(['cannot-tell: neither a code nor the listing gives a date']);
  });

  it('hands over what may be unknown as it was told', () => {
    const check = defineCheck({
      ...head,
      needs: { perhaps: ['date'] },
      run: ({ fact }) => [{ kind: 'gap', data: { said: 'is' in fact.date ? 'known' : 'unknown' } }],
    });
    expect(kindsOf(check.judge(facts({ claims: [madeIn(1994)] })))).toEqual([['gap', 'known']]);
    expect(kindsOf(check.judge(facts()))).toEqual([['gap', 'unknown']]);
  });

  it('says that it does not apply before a fact is asked for', () => {
    const check = defineCheck({
      ...head,
      needs: { claims: ['origin'], facts: ['date'] },
      unless: ({ claims }) => (claims.origin.length === 0 ? because('no-origin-claimed', {}) : null),
      run: () => [],
    });
    expect(check.judge(facts())).toMatchObject({ outcome: 'not-applicable', why: { reason: 'no-origin-claimed' } });
  });

  it('makes a finding of what it says', () => {
    const check = defineCheck({
      ...head,
      needs: {},
      run: () => [{ kind: 'gap', data: { said: 'Something is missing.' } }],
    });
    expect(check.judge(facts())).toEqual({
      outcome: 'speaks',
      check: 'sample-check',
      findings: [
        {
          id: 'sample-check',
          check: 'sample-check',
          kind: 'gap',
          data: { said: 'Something is missing.' },
          source: practice,
          evidence: [],
          photos: [],
          claims: [],
          asks: [],
        },
      ],
    });
  });

  it('says the same once and joins the claims it rests on', () => {
    const speech = (key: string, claimId: string) => ({
      kind: 'gap' as const,
      key,
      data: { said: 'Same.' },
      claims: [claimId],
    });
    const check = defineCheck({ ...head, needs: {}, run: () => [speech('a', 'c1'), speech('b', 'c2')] });
    const outcome = check.judge(facts());
    expect(outcome.outcome === 'speaks' && outcome.findings.map(({ id, claims }) => [id, claims])).toEqual([
      ['sample-check:a', ['c1', 'c2']],
    ]);
  });

  it('refuses a kind of finding that it did not announce', () => {
    const check = defineCheck({ ...head, needs: {}, run: () => [{ kind: 'contradiction', data: { said: 'No.' } }] });
    expect(() => check.judge(facts())).toThrow('sample-check does not announce a contradiction');
  });

  it('names the first of several fields that the listing does not state', () => {
    const check = defineCheck({ ...head, needs: { stated: ['price', 'condition'] }, run: () => [] });
    expect(check.judge(facts())).toMatchObject({ outcome: 'cannot-tell', why: { data: { field: 'price' } } });
  });

  it('numbers photos as the page shows them', () => {
    const check = defineCheck({
      ...head,
      needs: {},
      run: ({ photoNumber }) => [{ kind: 'gap', data: { said: `photo ${photoNumber('p2')}` } }],
    });
    expect(kindsOf(check.judge(facts({ listing: withPhotos(3) })))).toEqual([['gap', 'photo 2']]);
  });
});
