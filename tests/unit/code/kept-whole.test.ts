import { it } from 'vitest';
import { decodeLattice, decodeLine, decodeText, readsOf, withMarksBeside } from '../../../src/code';
import { builtInMakers } from '../../../src/maker';
import type { MakerFile } from '../../../src/maker/types';
import { keep, short } from './said-short';
import { plants, system } from './tried';

/*
 * What each step of the decoder hands on to the next, whole, on inputs made to meet its limits. Where it changes on
 * purpose, `npm test -- unit/code/kept --update` writes it anew.
 */

it('whole codes, typed and stamped, of makers on file and without', async () => {
  const marked: MakerFile = {
    ...builtInMakers[0]!,
    maker: 'Ondrasse',
    plants,
    marks: [
      { kind: 'repair', texts: ['R'], means: 'repaired' },
      { kind: 'size', texts: ['30'], means: 'larger', used: ['1990', '1992'] },
    ],
    codeSystems: [
      system([{ plant: 2 }, { month: 2 }, { year: 2 }]),
      system([{ year: 2 }, { literal: '·' }, { week: 2 }], { id: 'weeks', used: ['2000', null] }),
    ],
  };
  const other: MakerFile = {
    ...marked,
    maker: 'Tessaro Vell',
    marks: [],
    codeSystems: [system([{ month: 2 }, { year: 2 }])],
  };
  const told = ({
    accepted,
    code,
    readings,
    misfits,
    nearest,
    open,
    beside,
    id,
    from,
  }: ReturnType<typeof decodeText>) =>
    `${accepted} ${code} ${id} ${from.kind}: ${readings.map((one) => `${one.text} ${one.system.maker} ${one.system.id} ${readsOf(one)} ${short(one.probability)}`).join('; ')} | ${misfits.map(({ text, slot, value, probability }) => `${text} ${slot} ${value} ${short(probability)}`).join('; ')} | ${nearest.map(({ text, how, likelihood, system: { maker, id: own } }) => `${text} ${how} ${short(likelihood)} ${maker} ${own}`).join('; ')} | ${short(open)} ${short(beside)}`;
  const codes = [
    '',
    'KV0395',
    'KV0395R',
    'R30KV0391',
    '30KV0395',
    'KV1395',
    'KV0385',
    '0395',
    '01·14',
    'x'.repeat(64),
    'x'.repeat(129),
    'KV0395 R 30',
    'KVO395',
  ];
  const makers: [name: string, maker: string | readonly string[] | null][] = [
    ['Ondrasse', 'Ondrasse'],
    ['both', ['Ondrasse', 'Tessaro Vell']],
    ['nobody', null],
    ['unknown', 'Nobody'],
  ];
  const lines = codes.flatMap((code) => [
    code.slice(0, 20),
    ...makers.map(
      ([name, maker]) =>
        `  ${name} ${told(decodeText(code, { makers: [marked, other], maker, now: '2026-11-01' })).replace(/x{20,}/gi, 'x…')}`,
    ),
  ]);
  const sharp = (text: string, share: number) => ({
    steps: [...text].flatMap((character): Record<string, number>[] => [
      { [character]: share, X: 1 - share },
      { '': 1 },
    ]),
  });
  const stamped = [0.999, 0.95, 0.8, 0.5].flatMap((share) =>
    ['KV0395', '5690AK', '9999'].map((text) => {
      const options = { makers: [marked, other], maker: 'Ondrasse', now: '2026-11-01' };
      const line = decodeLine(
        {
          lattice: sharp(text, share),
          ...(text === '9999' ? { mayGoOn: true as const } : {}),
          ...(text === '5690AK' ? { otherWay: sharp('KV0395', share) } : {}),
        },
        options,
      );
      const beside = withMarksBeside(line, ['r', '30', ''], options);
      return `${text} at ${share}\n  ${told(decodeLattice(sharp(text, share), options))}\n  ${told(decodeLattice(sharp(text, share), { ...options, temperature: 2 }))}\n  ${told(line)}\n  ${told(beside)}`;
    }),
  );
  await keep([...lines, ...stamped], 'whole');
});
