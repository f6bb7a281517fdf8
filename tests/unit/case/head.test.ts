import { describe, expect, it } from 'vitest';
import { buildCase, type Case, headOf, saysLittle } from '../../../src/case';
import { sayHead } from '../../../src/words';
import { inputOf, type TruthRow, truthFiles, truthRows } from '../../reference/cases/truth-case';

const rowNamed = (name: string): TruthRow => {
  const row = truthFiles.flatMap(truthRows).find((one) => one.name.startsWith(name));
  if (!row) throw new Error(`no case is named ${name}`);
  return row;
};
const lines = (kase: Case, most?: number) =>
  Object.fromEntries(sayHead(headOf(kase), most).map(({ line, sentences }) => [line, sentences]));

const sound = buildCase(inputOf(rowNamed('Stamp shown twice')));

describe('the head of a case', () => {
  it('says of a sound piece what was found and what nobody looked at, and nothing of what fits', () => {
    expect(sound.summary.agreements).toBeGreaterThan(3);
    expect(headOf(sound).against).toEqual([]);
    expect(lines(sound)).toEqual({
      against: ['Nothing was found in what was looked at.'],
      open: ['Nothing more in what was looked at.'],
      'not-looked-at': [
        'Some could not be told: the page does not state the price; the page does not state the measurements.',
        'Who made it: no photo can show that. Leather, stitches, metal, colours: not measured.',
      ],
    });
  });

  it('says of what the buyer measured that it was measured, and of nothing else', () => {
    const measured = buildCase(inputOf(rowNamed('Five stitches counted')));
    expect(measured.observations).not.toBeUndefined();
    expect(lines(measured)['not-looked-at']?.at(-1)).toBe(
      'Who made it: no photo can show that. Leather, stitches, metal, colours: measured only where you marked them.',
    );
  });

  it('puts what weighs most first, two sentences of a kind at most, and says that more is below', () => {
    const kase = buildCase(inputOf(rowNamed('Nothing but a title')));
    const { open } = lines(kase);
    expect(open).toHaveLength(3);
    expect(open?.[2]).toBe('And more below.');
    expect(lines(kase, 1).open).toHaveLength(2);
    const wrong = truthRows('misdescribed').find(
      ({ contradiction, doubt }) => contradiction.length > 0 && doubt.length > 0,
    );
    if (!wrong) throw new Error('no case has both');
    expect(headOf(buildCase(inputOf(wrong))).against.map(({ kind }) => kind)).toEqual(
      expect.arrayContaining(['contradiction', 'doubt']),
    );
    expect(headOf(buildCase(inputOf(wrong))).against[0]?.kind).toBe('contradiction');
  });

  it('names the photos that were not read, the checks that failed and the file that is missing', () => {
    const photos = sound.photos.slice(2);
    const outcomes = sound.outcomes.map((one) =>
      one.check === 'plant-in-use' ? { outcome: 'failed' as const, check: one.check, why: 'it broke' } : one,
    );
    const said = lines({ ...sound, photos, outcomes, maker: null });
    expect(said['not-looked-at']?.slice(0, 3)).toEqual([
      "A part of Tellstamp failed here, and what it looks at is not judged: “The workshop worked at the code's date”.",
      'Photos 1, 2: not read.',
      'What only a file on Ondrasse could tell: period, workshop, sizes, materials.',
    ]);
    expect(said.against).toEqual(['Nothing was found by what holds for any bag.']);
  });

  it('says once how many photos were read from copies, where one check needs all and another one of them', () => {
    const copies = (of: number) => ({ reason: 'copies-only', data: { copies: of, of } });
    const untold = (check: string, why: { reason: string; data: Record<string, number> }) =>
      ({ outcome: 'cannot-tell', check, why }) as const;
    const outcomes = [untold('a', copies(1)), untold('b', copies(2)), untold('c', copies(1))];
    expect(headOf({ ...sound, outcomes }).notLookedAt.reasons).toEqual([copies(2)]);
  });

  it('is words for every case of the table: three lines, none empty, no number of findings', () => {
    for (const row of truthFiles.flatMap(truthRows)) {
      const said = sayHead(headOf(buildCase(inputOf(row))));
      expect(said.map(({ line }) => line)).toEqual(['against', 'open', 'not-looked-at']);
      for (const { sentences } of said)
        expect(
          sentences.every((words) => /[.!?”]$/.test(words)),
          row.name,
        ).toBe(true);
      const words = said.flatMap(({ sentences }) => sentences).join(' ');
      expect(words, row.name).not.toMatch(/\d+ (?:contradiction|doubt|gap|agreement|finding|check)s?\b/);
    }
  }, 120_000);
});

describe('what fits', () => {
  it('says little where it is of the seller or of a period without an end', () => {
    const findings = sound.outcomes.flatMap((one) => (one.outcome === 'speaks' ? one.findings : []));
    const little = findings.filter((finding) => finding.kind === 'agreement' && saysLittle(finding, sound.evidence));
    expect(little.map(({ check }) => check)).toEqual(expect.arrayContaining(['seller-record', 'return-terms']));
    expect(little.map(({ check }) => check)).not.toContain('code-against-claimed-date');
  });
});
