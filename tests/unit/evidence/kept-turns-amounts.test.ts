import { expect, it } from 'vitest';
import type { Listing } from '../../../src/listing/types';
import type { MakerFile } from '../../../src/maker/types';
import { farTurnsOf, turnsOf } from '../../turning';
import { measureOf, ondrasse, priceOf, stated, withPhotos } from '../check/sample';
import { gathered, shown, stand } from './stands';

/*
 * Where the answer of a rule turns, as a length or a sum moves. Where it changes on purpose, `npm test -- unit/evidence/kept --update` writes it
 * anew.
 */

const currencies = ['EUR', 'USD', 'GBP', 'CHF', 'JPY', 'AUD', 'CAD', 'SEK', 'DKK', 'NOK', 'PLN', 'XTS'];
const asks = (amount: number, currency: string, more: Partial<Listing> = {}) =>
  withPhotos(1, { price: stated(priceOf(Math.round(amount * 100), currency)), ...more });
/** Sums that grow by a hundredth each, from 1. */
const sum = (steps: number) => Number((1.01 ** steps).toPrecision(6));

it('a price, against the smallest of the maker and against another', async () => {
  const turns = Object.fromEntries(
    currencies.flatMap((currency): [string, string[]][] => [
      [
        `used, in ${currency}`,
        farTurnsOf(100, 1250, 25, (steps) => stand(gathered({ maker: ondrasse, listing: asks(sum(steps), currency) }))),
      ],
      [
        `new, in ${currency}`,
        farTurnsOf(100, 1250, 25, (steps) =>
          stand(gathered({ maker: ondrasse, listing: asks(sum(steps), currency, { condition: stated('new') }) })),
        ),
      ],
    ]),
  );
  const cut = turnsOf(200, (percent) => {
    const price = [...stated(priceOf(percent * 100)), ...stated(priceOf(10_000, 'EUR', 'was'))];
    return stand(gathered({ listing: withPhotos(1, { price }) }));
  });
  const given = turnsOf(110, (percent) => {
    const inData = stated(priceOf(10_000)).map((one) => ({ ...one, origin: 'json-ld' as const }));
    return stand(gathered({ listing: withPhotos(1, { price: [...stated(priceOf(percent * 100)), ...inData] }) }));
  });
  await expect(shown({ ...turns, 'cut from 100': cut, 'shown beside data of 100': given })).toMatchFileSnapshot(
    './kept/turns-prices.txt',
  );
});

const carryalls: MakerFile = {
  ...ondrasse,
  models: [
    { name: 'Carryall 30', runs: [{ size: { width: 30, height: 21, depth: 17, unit: 'cm', tolerance: 1 } }] },
    { name: 'Carryall 35', runs: [{ size: { width: 350, height: 240, depth: 180, unit: 'mm', tolerance: 5 } }] },
    { name: 'Satchel', runs: [{ size: { width: 12, height: 9, unit: 'in', tolerance: 0.5 } }] },
  ],
} as MakerFile;
const sized = (title: string, sides: [Parameters<typeof measureOf>[0], number, number?][]) =>
  withPhotos(1, {
    title: stated(title),
    model: stated(title),
    measures: sides.flatMap(([side, mm, precision]) => stated(measureOf(side, mm, `${mm} mm`, precision))),
  });

it('a row of three lengths in each order', async () => {
  const rows = [
    [300, 210, 170],
    [300, 170, 210],
    [210, 300, 170],
    [210, 170, 300],
    [170, 300, 210],
    [170, 210, 300],
  ] as const;
  const told = (title: string) =>
    rows.map((row) => {
      const evidence = gathered({
        maker: carryalls,
        listing: sized(
          title,
          row.map((mm) => ['unknown', mm]),
        ),
      });
      return `${row.join(' ')}: ${evidence.flatMap(({ says }) => (says.kind === 'size' ? [`${says.side} ${says.mm}`] : [])).join(', ')}`;
    });
  await expect(
    shown({
      'of a known size': told('Carryall 30'),
      'of the family': told('Carryall 45'),
      'of no known size': told('Tote'),
    }),
  ).toMatchFileSnapshot('./kept/turns-rows.txt');
});

it('a length, against a model, a name, another length and a family', async () => {
  const lengths: Record<string, (mm: number) => Listing> = {
    'the width of a model in centimetres': (mm) => sized('Carryall 30', [['width', mm]]),
    'the height of a model in millimetres': (mm) => sized('Carryall 35', [['height', mm, 1]]),
    'the depth of a model in centimetres': (mm) => sized('Carryall 30', [['depth', mm]]),
    'the width of a model in inches': (mm) => sized('Satchel', [['width', mm]]),
    'the width in a name': (mm) => sized('Weekender 40', [['width', mm]]),
    'a width beside another': (mm) =>
      sized('Tote', [
        ['width', mm],
        ['width', 300, 1],
      ]),
    'a width of a family, beside a height': (mm) =>
      sized('Carryall 45', [
        ['width', mm],
        ['height', 250],
      ]),
    'a depth of a family, beside a width': (mm) =>
      sized('Carryall 45', [
        ['width', 400],
        ['depth', mm, 1],
      ]),
    'a row without names of sides': (mm) =>
      sized('Carryall 30', [
        ['unknown', mm],
        ['unknown', 210],
        ['unknown', 170],
      ]),
    'a row that begins with the height': (mm) =>
      sized('Carryall 30', [
        ['unknown', 210],
        ['unknown', mm],
        ['unknown', 170],
      ]),
    'a coarse width before a fine one': (mm) =>
      sized('Carryall 45', [
        ['width', 500, 50],
        ['width', mm, 1],
        ['height', 250],
      ]),
    'a strap': (mm) =>
      sized('Carryall 30', [
        ['strap', mm],
        ['handle', 120],
      ]),
  };
  const turns = Object.entries(lengths).map(([name, listing]): [string, string[]] => [
    name,
    turnsOf(
      640,
      (mm) => {
        const evidence = gathered({ maker: carryalls, listing: listing(mm) });
        const sides = evidence.flatMap(({ says }) =>
          says.kind === 'size' && says.mm !== mm ? [`${says.side} ${says.mm}`] : [],
        );
        return `${sides.join(', ')}: ${stand(evidence)}`;
      },
      1,
    ),
  ]);
  const names = [
    'Tote 9',
    'Tote 10',
    'Tote 90',
    'Tote 91',
    'Tote 100',
    '30 Tote',
    'Tote 30cm',
    'Carryall 30 bag',
    'Carryall',
  ];
  const named = names.map(
    (name) =>
      `${name}: ${gathered({
        maker: carryalls,
        listing: sized(name, [
          ['width', 300],
          ['height', 200],
        ]),
      })
        .filter(({ about }) => about !== 'date')
        .map(
          ({ id, ...one }) =>
            `${id} ${'amounts' in one ? one.amounts.map(({ least, most }) => `${least.toFixed(3)}–${most.toFixed(3)}`).join() : ''}`,
        )
        .join('; ')}`,
  );
  await expect(shown({ ...Object.fromEntries(turns), 'names of models': named })).toMatchFileSnapshot(
    './kept/turns-sizes.txt',
  );
});
