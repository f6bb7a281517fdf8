import { describe, expect, it } from 'vitest';
import { runChecks } from '../../../../src/check';
import { computed } from '../../../../src/check/fact';
import { defineFact, tell } from '../../../../src/check/fact/define';
import { monthSpan, periodSpan, yearSpan } from '../../../../src/span';
import { claim, decoded, facts, kv0915, madeIn, reading, readPhoto, stated, unreadPhoto, withPhotos } from '../sample';

const { clearPhotos, date, misfitsInTime, model, settledCodes, sides } = computed;

describe('a computed fact', () => {
  it('is computed once for a case, whoever asks, and anew for another', () => {
    let computedTimes = 0;
    const counted = defineFact(() => {
      computedTimes++;
      return { is: computedTimes };
    });
    const both = defineFact((_, ask) => ask(counted));
    const given = facts();
    expect([tell(counted, given), tell(both, given), tell(counted, given)]).toEqual([{ is: 1 }, { is: 1 }, { is: 1 }]);
    expect(tell(both, facts())).toEqual({ is: 2 });
  });

  it('takes no decoding twice: all checks of a case share the settled codes', () => {
    const given = facts({ decodings: [kv0915] });
    let asked = 0;
    const watched = new Proxy(given.decodings, {
      get(target, key, receiver) {
        if (key === 'filter') asked++;
        return Reflect.get(target, key, receiver);
      },
    });
    const case_ = { ...given, decodings: watched };
    tell(settledCodes, case_);
    const once = asked;
    tell(date, case_);
    tell(misfitsInTime, case_);
    expect([once, asked]).toEqual([1, 1]);
    expect(runChecks(case_).filter(({ outcome }) => outcome === 'failed')).toEqual([]);
  });
});

describe('clear photos', () => {
  it.each([
    ['none is there', [], 'no-photos'],
    ['one is unread', [readPhoto('p1'), unreadPhoto('p2')], 'photos-not-read'],
    ['one is a copy', [readPhoto('p1', { came: { way: 'page', fullSize: false } })], 'copies-only'],
    ['one is too weak', [readPhoto('p1', { tooWeak: true })], 'photos-too-weak'],
  ])('are not, where %s', (_name, photos, reason) => {
    expect(tell(clearPhotos, facts({ photos }))).toMatchObject({ cannotTell: { reason } });
  });
  it('are where each was read as it is', () => {
    expect(tell(clearPhotos, facts())).toEqual({ is: true });
  });
});

describe('settled codes', () => {
  it('are those that count as read, one of each text', () => {
    const typed = { ...kv0915, id: 'typed-1', from: { kind: 'typed' as const } };
    const told = tell(settledCodes, facts({ decodings: [typed, kv0915] }));
    expect('is' in told && told.is.map(({ decoding, hard, photos }) => [decoding.from.kind, hard, photos])).toEqual([
      ['photo', true, ['p1']],
    ]);
  });
  it.each([
    ['without a maker’s file', { maker: null, decodings: [kv0915] }, { cannotTell: { reason: 'no-maker-file' } }],
    ['a stamp is unclear', { decodings: [{ ...kv0915, accepted: false }] }, { cannotTell: { reason: 'code-unclear' } }],
    ['photos are unread', { photos: [unreadPhoto('p1')] }, { cannotTell: { reason: 'photos-not-read' } }],
    ['all photos show none', {}, { notApplicable: { reason: 'no-code' } }],
  ])('are not told where %s', (_name, part, told) => {
    expect(tell(settledCodes, facts(part))).toMatchObject(told);
  });
});

describe('the date of the piece', () => {
  it('is its code’s before the claimed one', () => {
    expect(tell(date, facts({ decodings: [kv0915], claims: [madeIn(1987)] }))).toMatchObject({
      is: { spans: [monthSpan(1995, 1)], claims: [], photos: ['p1'] },
    });
  });
  it('is the claimed one where no code dates, or no maker’s file reads one', () => {
    const late = decoded('KV0915', [reading('KV0915', monthSpan(2031, 1))]);
    for (const part of [{}, { decodings: [late] }, { decodings: [kv0915], maker: null }])
      expect(tell(date, facts({ ...part, claims: [madeIn(1987)] }))).toMatchObject({
        is: { spans: [yearSpan(1987)], claims: ['claim-made'] },
      });
  });
  it('is not known without either', () => {
    expect(tell(date, facts())).toMatchObject({ cannotTell: { reason: 'no-date-known' } });
  });
});

describe('codes that are impossible at their own date', () => {
  it('are told by their decoding; others are not', () => {
    const used = { systemUsed: periodSpan(['1980', '1985'])! };
    const early = decoded('KV1995', [reading('KV1995', yearSpan(1995), used)]);
    const told = tell(misfitsInTime, facts({ decodings: [early] }));
    expect('is' in told && [...told.is.keys()]).toEqual([early.id]);
    const sound = tell(misfitsInTime, facts({ decodings: [kv0915] }));
    expect('is' in sound && sound.is.size).toBe(0);
  });
});

describe('the named model and its sides', () => {
  const row = [210, 300, 170].map((mm) => ({
    dimension: 'unknown' as const,
    mm,
    precisionMm: 5,
    unit: 'cm' as const,
    words: `${mm / 10} cm`,
  }));
  const listing = {
    ...withPhotos(1),
    title: stated('Ondrasse Carryall 30'),
    measures: row.flatMap((one) => stated(one)),
  };

  it('is named by the title where no claim does', () => {
    expect(tell(model, facts({ listing }))).toMatchObject({ is: { model: { name: 'Carryall 30' }, claims: [] } });
    const claimed = claim('model', 'Carryall 30', { model: 'Carryall 30' });
    expect(tell(model, facts({ listing, claims: [claimed] }))).toMatchObject({ is: { claims: ['claim-model'] } });
    expect(tell(model, facts())).toMatchObject({ notApplicable: { reason: 'no-model-of-file' } });
  });

  it('names the sides of a row as they fit the model, or in their usual order', () => {
    const named = (given: ReturnType<typeof facts>) => {
      const told = tell(sides, given);
      return 'is' in told ? told.is.map(({ side, mm }) => [side, mm]) : told;
    };
    expect(named(facts({ listing }))).toEqual([
      ['width', 300],
      ['height', 210],
      ['depth', 170],
    ]);
    expect(named(facts({ listing, maker: null }))).toEqual([
      ['width', 210],
      ['height', 300],
      ['depth', 170],
    ]);
  });
});
