import { describe, expect, it } from 'vitest';
import {
  asideFor,
  buildCase,
  type Case,
  correct,
  findingsOf,
  headOf,
  setAsideIn,
  weighedFindings,
} from '../../../src/case';
import { builtInMakers } from '../../../src/maker';
import { sayHead } from '../../../src/words';
import { listingOf } from './sample-listing';

const build = (title: string, corrections: Case['corrections'] = [], photos = 1): Case =>
  buildCase({
    listing: listingOf(title, 'Date code KV0915.', photos),
    photos: [],
    corrections,
    makers: builtInMakers,
    now: '2026-01-15T10:00:00Z',
  });
const plain = build('Ondrasse Carryall 30, 1987');
const doubted = findingsOf(plain).find(({ check }) => check === 'code-against-claimed-date');
if (!doubted) throw new Error('nothing speaks against the sample');
const made = asideFor(doubted, '  They wrote me that 1987\nis the year of their shop. ');
if (!made) throw new Error('no correction was made');
const aside = build('Ondrasse Carryall 30, 1987', correct([], made));

describe('a finding that the buyer set aside', () => {
  it('is judged and asked no more, and is kept with the reason', () => {
    expect(weighedFindings(plain).some(({ finding }) => finding.id === doubted.id)).toBe(true);
    expect(weighedFindings(aside).some(({ finding }) => finding.id === doubted.id)).toBe(false);
    expect(aside.summary.doubts).toBe(plain.summary.doubts - 1);
    expect(aside.questions.some(({ settles }) => settles.includes(doubted.id))).toBe(false);
    expect(findingsOf(aside)).toEqual(findingsOf(plain));
    expect(setAsideIn(aside).map(({ finding, correction }) => [finding.id, correction.reason])).toEqual([
      [doubted.id, 'They wrote me that 1987 is the year of their shop.'],
    ]);
  });

  it('is not passed over by the head: it never says that nothing was found', () => {
    const against = (kase: Case) => sayHead(headOf(kase))[0];
    expect(against(aside)).toMatchObject({ sentences: ['You set something aside: it stands below.'], holds: true });
    expect(against(plain)?.sentences.join()).not.toContain('aside');
  });

  it('stands again when it is found otherwise, and says so once every photo was looked at', () => {
    const other = build('Ondrasse Carryall 30, 1988', aside.corrections, 0);
    expect(setAsideIn(other)).toEqual([]);
    expect(other.summary.doubts).toBe(1);
    expect(other.skipped.map(({ code }) => code)).toContain('correction-found-otherwise');
    const waits = build('Ondrasse Carryall 30, 1988', aside.corrections, 1);
    expect(waits.skipped.map(({ code }) => code)).not.toContain('correction-found-otherwise');
  });

  it('takes no empty reason, and one reason replaces the other', () => {
    expect(asideFor(doubted, '  ')).toBeNull();
    const again = asideFor(doubted, 'Another reason.');
    expect(again && correct(aside.corrections, again)).toMatchObject([{ reason: 'Another reason.' }]);
  });
});
