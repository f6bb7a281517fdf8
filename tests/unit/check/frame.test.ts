import { describe, expect, it } from 'vitest';
import { practice } from '../../../src/check/frame';
import { defineWritten } from '../../../src/check/written';
import { facts, madeIn, readPhoto, said, unreadPhoto, withPhotos } from './sample';

const wording = {
  id: 'sample-check',
  family: 'time',
  title: 'It holds',
  failureTitle: 'It does not hold',
  kinds: ['gap'],
  basis: 'A rule.',
  innocent: 'An explanation.',
  settles: 'An answer.',
  source: practice,
} as const;

describe('defineCheck', () => {
  it('hands over what is needed and nothing else', () => {
    let handed: object = {};
    const check = defineWritten({
      ...wording,
      needs: { claims: ['made'], listing: ['text'], photos: 'any' },
      run(given) {
        handed = given;
        return [];
      },
    });
    check.judge(facts({ claims: [madeIn(1994)] }));
    expect(Object.keys(handed).sort()).toEqual(['claims', 'listing', 'photoNumber', 'photoWords', 'photos']);
    expect(handed).toMatchObject({ claims: { made: [madeIn(1994)] }, listing: { text: '' } });
  });

  it('cannot tell, without running, when no photo was read', () => {
    const check = defineWritten({
      ...wording,
      needs: { photos: 'read' },
      run: () => [{ kind: 'gap', statement: 'ran' }],
    });
    expect(said(check, facts({ photos: [unreadPhoto('p1')] }))).toEqual([
      'cannot-tell: 1 of 1 photos not read: the file is not an image',
    ]);
    expect(said(check, facts({ photos: [unreadPhoto('p1'), readPhoto('p2')] }))).toEqual(['gap: ran']);
  });

  it('cannot tell when a field that it needs is not stated', () => {
    const check = defineWritten({ ...wording, needs: { stated: ['price'] }, run: () => [] });
    expect(said(check, facts())).toEqual(['cannot-tell: the page does not state the price']);
  });

  it('fills in its own wording where a finding has none', () => {
    const check = defineWritten({
      ...wording,
      needs: {},
      run: () => [{ kind: 'gap', statement: 'Something is missing.' }],
    });
    expect(check.judge(facts())).toEqual({
      outcome: 'speaks',
      check: 'sample-check',
      findings: [
        {
          id: 'sample-check',
          check: 'sample-check',
          kind: 'gap',
          data: {
            written: {
              statement: 'Something is missing.',
              basis: ['A rule.'],
              innocent: 'An explanation.',
              settles: 'An answer.',
            },
          },
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
      statement: 'Same.',
      claims: [claimId],
    });
    const check = defineWritten({ ...wording, needs: {}, run: () => [speech('a', 'c1'), speech('b', 'c2')] });
    const outcome = check.judge(facts());
    expect(outcome.outcome === 'speaks' && outcome.findings.map(({ id, claims }) => [id, claims])).toEqual([
      ['sample-check:a', ['c1', 'c2']],
    ]);
  });

  it('refuses a kind of finding that it did not announce', () => {
    const check = defineWritten({ ...wording, needs: {}, run: () => [{ kind: 'contradiction', statement: 'No.' }] });
    expect(() => check.judge(facts())).toThrow('sample-check does not announce a contradiction');
  });

  it('numbers photos as the page shows them', () => {
    const check = defineWritten({
      ...wording,
      needs: {},
      run: ({ photoWords }) => [{ kind: 'gap', statement: photoWords('p2') }],
    });
    expect(said(check, facts({ listing: withPhotos(3) }))).toEqual(['gap: photo 2']);
  });
});
