import { expect, test } from 'vitest';
import { type Dating, gatherEvidence, reason, reasoningSchema } from '../../../src/evidence';
import { monthSpan, yearSpan, yearsSpan } from '../../../src/span';
import { sayConflict, sayExplanation } from '../../../src/words';
import { decadeSpan } from '../span/decade';
import { agreed, claimed, coded, decoding, madeClaim, mark, marked, ondrasse, piece, reading } from './samples';

test('nothing is said of no evidence', () => {
  const nothing = { agreeing: [], agreements: [], conflicts: [], explanations: [] };
  expect(reason([])).toEqual({ agrees: true, conflictsComplete: true, ...nothing });
});

test('evidence that agrees is one set with its stretch', () => {
  const result = reason([
    piece('decade', { spans: [decadeSpan(1990)] }),
    piece('code', { spans: [monthSpan(1995, 1)], places: ['BE'], about: 'date-and-place' }),
    piece('plant', { spans: [yearsSpan(1988, 2003)] }),
  ]);
  expect(result.agrees).toBe(true);
  expect(result.conflicts).toEqual([]);
  expect(result.explanations).toEqual([]);
  expect(result.agreeing).toMatchObject([
    {
      evidence: ['decade', 'code', 'plant'],
      facts: 3,
      spans: [monthSpan(1995, 1)],
      places: ['BE'],
    },
  ]);
  expect(agreed(result)).toEqual(['3: January 1995, Belgium']);
});

test('one year claimed against three facts that agree: the year is named as what would explain everything', () => {
  const evidence = [
    piece('claim', { spans: [yearSpan(1984)], says: { kind: 'made', field: 'title', words: 'made in 1984' } }),
    piece('code', {
      from: { kind: 'reading', id: 'd1' },
      spans: [yearsSpan(1993, 1996)],
      says: { kind: 'code', from: 'photo', code: 'KV', by: [] },
    }),
    piece('zip', { from: { kind: 'mark', id: 'm1' }, spans: [yearsSpan(1990, null)] }),
    piece('lining', { from: { kind: 'construction', id: 'c2' }, spans: [yearsSpan(1991, 1999)], strength: 'soft' }),
  ];
  const result = reason(evidence);
  expect(result.agrees).toBe(false);
  expect(result.agreeing[0]).toMatchObject({
    evidence: ['code', 'zip', 'lining'],
    facts: 3,
    spans: [yearsSpan(1993, 1996)],
  });
  expect(result.conflicts.map(({ evidence, strength }) => [evidence, strength])).toEqual([
    [['claim', 'code'], 'hard'],
    [['claim', 'zip'], 'hard'],
    [['claim', 'lining'], 'soft'],
  ]);
  expect(sayConflict({ over: 'date', hard: true, facts: evidence.slice(0, 2) }, 'en')).toBe(
    'No one date fits both: the listing says “made in 1984”; the stamp reads KV: 1993 to 1996',
  );
  expect(result.explanations.map((one) => sayExplanation(one, evidence[0]!, 'en'))).toEqual([
    'If the year claimed is wrong (the listing says “made in 1984”), all the rest agrees: 1993 to 1996',
  ]);
});

test('the plant of a code counts for nothing where the code itself does not agree', () => {
  const code = { kind: 'reading', id: 'd1' } as const;
  const result = reason([
    piece('claim', { spans: [yearSpan(1987)] }),
    piece('code', { from: code, basis: 'code:KV', spans: [monthSpan(1998, 7)] }),
    piece('plant', { from: { ...code, kind: 'plant' }, basis: 'code:KV', spans: [yearsSpan(1982, 2003)] }),
    piece('system', { from: { ...code, kind: 'system' }, basis: 'code:KV', spans: [yearsSpan(1990, 2006)] }),
    piece('lining', { from: { kind: 'construction', id: 'c1' }, spans: [yearsSpan(1970, null)], strength: 'soft' }),
  ]);
  expect(agreed(result)).toEqual(['2: 1987', '2: July 1998']);
});

test('a date said in the title and again in the description weighs no more than the stamp', () => {
  const evidence = gatherEvidence({
    claims: [madeClaim('title', 'made in 1987', yearSpan(1987)), madeClaim('description', 'from 1987', yearSpan(1987))],
    decodings: [decoding('d1', { readings: [reading({ span: monthSpan(1998, 7) })] })],
    marks: [mark('m1', { spans: [yearsSpan(1970, null)], places: [] })],
    maker: ondrasse,
  });
  expect(agreed(reason(evidence))).toEqual(['2: 1987', '2: July 1998, Belgium']);
});

test('a loose date agrees as a whole: its edge alone is not another side', () => {
  const claims = [madeClaim('c1', 'from the 1990s', decadeSpan(1990))];
  const evidence = gatherEvidence({ claims, decodings: [], marks: [mark('m1', { places: [] })], maker: null });
  expect(evidence).toHaveLength(2);
  expect(agreed(reason(evidence))).toEqual(['2: January 1990 to 3 October 1990']);
});

test('room softens: within it nothing conflicts, between it and the hard room hardly anything, beyond it nothing holds', () => {
  const loose = piece('decade', {
    spans: [decadeSpan(1990)],
    reach: [yearsSpan(1989, 2000)],
    hardReach: [yearsSpan(1988, 2001)],
    strength: 'soft',
  });
  const kinds = (year: number) => {
    const { agrees, conflicts, explanations, agreeing } = reason([loose, piece('code', { spans: [yearSpan(year)] })]);
    return [agrees, conflicts.map(({ strength }) => strength), explanations.length, agreeing[0]?.facts];
  };
  expect(kinds(1999)).toEqual([true, [], 0, 2]);
  expect(kinds(2000)).toEqual([true, [], 0, 1]);
  expect(kinds(2001)).toEqual([false, ['soft'], 2, 1]);
  expect(kinds(2002)).toEqual([false, ['hard'], 2, 1]);
  const never = { ...loose, hardReach: null };
  expect(reason([never, piece('code', { spans: [yearSpan(2050)] })]).conflicts[0]?.strength).toBe('soft');
});

test('a hard conflict of three stands beside the soft one of two of them', () => {
  const narrow = piece('decade', { spans: [yearSpan(1990)], hardReach: [yearsSpan(1990, 1995)] });
  const code = piece('code', { spans: [yearsSpan(1992, 2000)] });
  const mark = piece('mark', { spans: [yearsSpan(1985, 1991), yearsSpan(1998, 1999)] });
  expect(reason([narrow, code, mark]).conflicts.map(({ evidence, strength }) => [evidence, strength])).toEqual([
    [['decade', 'code', 'mark'], 'hard'],
    [['decade', 'code'], 'soft'],
  ]);
});

test('what follows from a reading narrows nothing where the reading itself is not among what agrees', () => {
  const code = { kind: 'reading', id: 'd1' } as const;
  const result = reason([
    piece('claim', { spans: [decadeSpan(1980)] }),
    piece('lining', { from: { kind: 'construction', id: 'c1' }, spans: [yearsSpan(1970, 1999)] }),
    piece('code', { from: code, basis: 'code:KV', spans: [monthSpan(2004, 7)] }),
    piece('plant', { from: { ...code, kind: 'plant' }, basis: 'code:KV', spans: [yearsSpan(1982, 2006)] }),
  ]);
  expect(result.agreeing.map(({ evidence }) => evidence)).toEqual([['claim', 'lining']]);
  expect(agreed(result)).toEqual(['2: the 1980s']);
});

test('three that agree in pairs and not together are one conflict of three', () => {
  const result = reason([
    piece('a', { spans: [yearSpan(1990), yearSpan(1995)] }),
    piece('b', { spans: [yearSpan(1995), yearSpan(2000)] }),
    piece('c', { spans: [yearSpan(1990), yearSpan(2000)] }),
  ]);
  expect(result.conflicts.map(({ evidence }) => evidence)).toEqual([['a', 'b', 'c']]);
  expect(result.agreeing.map(({ evidence }) => evidence)).toEqual([
    ['a', 'c'],
    ['a', 'b'],
    ['b', 'c'],
  ]);
  expect(result.explanations).toHaveLength(3);
});

test('a former country and its heirs are one ground, but two heirs are not', () => {
  const former = piece('mark', { spans: [], places: ['CSHH'], about: 'place' });
  const heir = piece('claim', { spans: [], places: ['SK'], about: 'place' });
  expect(reason([former, heir]).agreeing[0]?.places).toEqual(['SK']);
  expect(reason([former]).agreeing[0]?.places).toEqual(['CSHH']);
  const other = piece('plant', { spans: [], places: ['CZ'], about: 'place' });
  expect(reason([former, heir, other]).conflicts).toMatchObject([{ evidence: ['claim', 'plant'], over: 'place' }]);
});

test('a fact is not counted twice, however many statements it gives', () => {
  const repeated = ['a1', 'a2', 'a3'].map((id) => piece(id, { basis: 'a', spans: [yearSpan(1980)] }));
  const two = [piece('b', { spans: [yearSpan(1994)] }), piece('c', { spans: [yearSpan(1994)] })];
  const result = reason([...repeated, ...two]);
  expect(result.agreeing.map(({ evidence, facts }) => [evidence, facts])).toEqual([[['b', 'c'], 2]]);
  expect(result.conflicts).toHaveLength(2);
});

test('a code that contradicts itself is one fact, and leaving it out explains all', () => {
  const result = reason([
    piece('reading', { basis: 'code', from: { kind: 'reading', id: 'd' }, spans: [yearSpan(1985)] }),
    piece('system', { basis: 'code', from: { kind: 'system', id: 'd' }, spans: [yearsSpan(1990, 2006)] }),
    piece('claim', { spans: [yearSpan(1994)] }),
  ]);
  expect(result.explanations.map(({ basis }) => basis)).toEqual(['code']);
  expect(result.conflicts.map(({ evidence }) => evidence)).toEqual(
    [
      ['reading', 'system'],
      ['reading', 'claim'],
    ].slice(0, 1),
  );
});

test('when no one fact explains everything, the hard facts are asked alone', () => {
  const result = reason([
    piece('habit1', { spans: [yearSpan(1960)], strength: 'soft' }),
    piece('habit2', { spans: [yearSpan(1970)], strength: 'soft' }),
    piece('claim', { spans: [yearSpan(1984)] }),
    piece('code', { from: { kind: 'reading', id: 'd' }, spans: [yearSpan(1994)] }),
    piece('zip', { from: { kind: 'mark', id: 'm' }, spans: [yearsSpan(1990, null)] }),
  ]);
  expect(result.explanations.map(({ basis, rest }) => [basis, rest])).toEqual([['claim', 'hard']]);
});

test('evidence that speaks of neither date nor place changes nothing', () => {
  const silent = piece('silent', { spans: [], places: [] });
  const spoken = [piece('a'), piece('b', { spans: [yearSpan(2001)] })];
  expect(reason([silent, ...spoken])).toEqual(reason(spoken));
});

test('the result fits its schema', () => {
  const result = reason([piece('a'), piece('b', { spans: [yearSpan(2001)] })]);
  expect(reasoningSchema.parse(result)).toEqual(result);
});

test('what agrees is told by whence it is known, and only what could have excluded another counts', () => {
  const told = (evidence: Dating[]) => reason(evidence).agreeing[0]?.told;
  const nobody = { read: [], seen: [], said: [] };
  const year = claimed('1994', { spans: [yearSpan(1994)] });
  const code = coded('KV', { spans: [monthSpan(1994, 3)], places: ['BE'], about: 'date-and-place' });
  const label = marked('label', { spans: [yearsSpan(1990, 1999)], places: ['BE'], about: 'date-and-place' });
  const brass = piece('brass', {
    says: { kind: 'material', field: 'title', words: 'brass', maker: 'Ondrasse', part: 'hardware', is: ['brass'] },
    spans: [yearsSpan(1970, null)],
  });
  expect(told([year, code, label, brass])).toEqual({
    date: { read: ['KV'], seen: ['label'], said: ['1994'] },
    place: { read: ['KV'], seen: ['label'], said: [] },
  });
  expect(told([code, brass])).toEqual({ date: nobody, place: nobody });
  const origin = piece('Belgium', {
    says: { kind: 'origin', field: 'title', words: 'Belgium' },
    spans: [],
    places: ['BE'],
    about: 'place',
  });
  expect(told([year, origin])).toEqual({ date: nobody, place: nobody });
  expect(told([year, origin, code])).toEqual({
    date: { ...nobody, read: ['KV'], said: ['1994'] },
    place: { ...nobody, read: ['KV'], said: ['Belgium'] },
  });
});
