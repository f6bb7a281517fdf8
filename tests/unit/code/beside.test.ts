import { describe, expect, it } from 'vitest';
import { decodeLine, decodeText, withMarksBeside } from '../../../src/code';
import { builtInMakers } from '../../../src/maker';
import type { MakerFile } from '../../../src/maker/types';

const now = '2026-11-25';
const plain = builtInMakers.find(({ maker }) => maker === 'Ondrasse')!;
const marks: MakerFile['marks'] = [
  { kind: 'repair', texts: ['R', '(R)'], means: 'repaired in the house’s own workshop' },
  { kind: 'seconds', texts: ['//'], means: 'sold with a fault' },
  { kind: 'shop', texts: ['7B'], means: 'the shop in the arcade', used: ['1960', '1970'] },
  { kind: 'size', texts: ['30'], means: 'the larger size' },
];
const file: MakerFile = { ...plain, marks };
const under = (maker: MakerFile) => ({ makers: [maker], maker: maker.maker, now });
const read = (code: string, maker = file) => decodeText(code, under(maker));
const told = ({ code, readings, beside }: ReturnType<typeof read>) => ({
  code,
  reads: readings[0]?.text ?? null,
  beside: (beside ?? []).map(({ text, kind, means }) => [text, kind, means]),
});
const repair = ['R', 'repair', 'repaired in the house’s own workshop'];

describe('a mark beside a code, known to the file', () => {
  it.each([
    ['KV0915R', 'KV0915', [repair]],
    ['KV0915 R', 'KV0915', [repair]],
    ['R KV0915', 'KV0915', [repair]],
    ['KV0915 (R)', 'KV0915', [['(R)', repair[1], repair[2]]]],
    ['30-KV0915-R', 'KV0915', [['30', 'size', 'the larger size'], repair]],
  ])('is named in %s, and the rest is the code', (written, code, beside) => {
    expect(told(read(written))).toEqual({ code, reads: code, beside: expect.arrayContaining(beside) });
    expect(read(written).beside).toHaveLength(beside.length);
  });

  it('explains nothing that the file does not know, and nothing that is no code without it', () => {
    for (const [written, maker] of [
      ['KV0915R', plain],
      ['KV0915X', file],
      ['KV9999R', file],
      ['R', file],
    ] as const)
      expect(read(written, maker).beside, written).toBeUndefined();
  });

  it('takes nothing from a code that reads as it stands', () => {
    const known = { ...file, marks: [{ kind: 'shop' as const, texts: ['KV'], means: 'a shop' }] };
    expect(told(read('KV0915', known))).toEqual({ code: 'KV0915', reads: 'KV0915', beside: [] });
  });

  it('of other years than the code stays unexplained', () => {
    expect(read('KV0915 7B').beside).toBeUndefined();
    const used: MakerFile = { ...file, marks: [{ ...marks[2]!, used: ['1990', '1999'] }] };
    expect(read('KV0915 7B', used).beside).toMatchObject([{ kind: 'shop', text: '7B' }]);
  });

  it('is named where it stands in the same line of a photo, and not where the line may go on', () => {
    const steps = [...'KV0915R'].flatMap((character): Record<string, number>[] => [{ [character]: 0.999 }, { '': 1 }]);
    const line = decodeLine({ lattice: { steps } }, under(file));
    expect([line.accepted, line.code, line.beside?.[0]?.kind]).toEqual([true, 'KV0915', 'repair']);
    expect(decodeLine({ lattice: { steps }, mayGoOn: true }, under(file)).beside).toBeUndefined();
  });

  it('is named where it stands in a line of its own beside a code that its file reads', () => {
    const decoding = read('KV0915');
    expect(withMarksBeside(decoding, ['ONDRASSE', '(r)'], under(file)).beside).toMatchObject([{ kind: 'repair' }]);
    expect(withMarksBeside(decoding, ['RR', ''], under(file)).beside).toBeUndefined();
    expect(withMarksBeside(read('XX0000'), ['R'], under(file)).beside).toBeUndefined();
  });
});
