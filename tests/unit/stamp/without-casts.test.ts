import { readFileSync } from 'node:fs';
import { InferenceSession, Tensor } from 'onnxruntime-node';
import { describe, expect, it } from 'vitest';
import { modelCardSchema } from '../../../src/stamp';
import { fieldsOf, joined, lengthDelimited, textsOf, wholeNumber } from '../../../src/stamp/net/protobuf';
import { fromHalf, withoutCasts } from '../../../src/stamp/net/without-casts';

const models = new URL('../../../public/models/', import.meta.url);
const card = modelCardSchema.parse(JSON.parse(readFileSync(new URL('model-card.json', models), 'utf8')));

/** Operators of a net's nodes, with the type that each Cast gives. */
function operatorsOf(model: Uint8Array): string[] {
  const graph = fieldsOf(model).find(({ number }) => number === 7)!.body;
  return fieldsOf(graph)
    .filter(({ number }) => number === 1)
    .map(({ body }) => {
      const node = fieldsOf(body);
      const to = node.filter(({ number }) => number === 5).flatMap((attribute) => fieldsOf(attribute.body));
      const [operator = ''] = textsOf(node, 4);
      return operator === 'Cast' ? `Cast to ${to.find(({ number }) => number === 3)?.value}` : operator;
    });
}

async function answer(model: Uint8Array, input: string, output: string, shape: number[]): Promise<number[]> {
  const session = await InferenceSession.create(model, { intraOpNumThreads: 1, logSeverityLevel: 3 });
  const length = shape.reduce((product, side) => product * side, 1);
  const numbers = Float32Array.from({ length }, (_, at) => Math.sin(at * 0.37) * 2);
  const { [output]: found } = await session.run({ [input]: new Tensor('float32', numbers, shape) });
  return [...(found!.data as Float32Array)];
}

describe('the nets that ship, without their casts', () => {
  it.each([
    [card.finder, [1, 1, 64, 96]],
    [card.recogniser, [1, 1, card.recogniser.height, 160]],
  ] as const)('%o: nothing is cast to fractions any more, and the answer is the same', async (net, shape) => {
    const kept = readFileSync(new URL(net.file, models));
    const plain = withoutCasts(kept);
    expect(operatorsOf(plain)).not.toContain('Cast to 1');
    expect(await answer(plain, net.input, net.output, [...shape])).toEqual(
      await answer(kept, net.input, net.output, [...shape]),
    );
  });

  it('are left alone the second time: nothing is left to change', () => {
    const once = withoutCasts(readFileSync(new URL(card.recogniser.file, models)));
    expect(withoutCasts(once)).toBe(once);
  });
});

describe('casts that have to stay', () => {
  const node = (operator: string, inputs: string[], output: string, to?: number): Uint8Array =>
    lengthDelimited(
      1,
      joined([
        ...inputs.map((name) => lengthDelimited(1, name)),
        lengthDelimited(2, output),
        lengthDelimited(4, operator),
        ...(to === undefined ? [] : [lengthDelimited(5, joined([lengthDelimited(1, 'to'), wholeNumber(3, to)]))]),
      ]),
    );
  const half = (name: string): Uint8Array =>
    lengthDelimited(
      5,
      joined([
        wholeNumber(1, 2),
        wholeNumber(2, 10),
        lengthDelimited(8, name),
        lengthDelimited(9, Uint8Array.of(0, 0x3c, 0, 0xc0)),
      ]),
    );
  const net = (...fields: Uint8Array[]): Uint8Array => lengthDelimited(7, joined(fields));

  it('of numbers that come from no shape, and of a shape that went through other arithmetic', () => {
    const ofInput = net(node('Cast', ['photo'], 'a', 1));
    expect(withoutCasts(ofInput)).toBe(ofInput);
    const negative = net(node('Shape', ['photo'], 's'), node('Sub', ['s', 'c'], 'd'), node('Cast', ['d'], 'a', 1));
    expect(withoutCasts(negative)).toBe(negative);
  });

  it('of a net with a branch: its inner graph may use any name', () => {
    const branch = lengthDelimited(1, joined([lengthDelimited(4, 'If'), lengthDelimited(5, lengthDelimited(6, ''))]));
    const branching = net(half('w'), node('Cast', ['w'], 'wide', 1), branch);
    expect(withoutCasts(branching)).toBe(branching);
  });

  it('weights of half precision that something else uses too stay beside the widened ones', () => {
    const both = withoutCasts(net(half('w'), node('Cast', ['w'], 'wide', 1), node('Identity', ['w'], 'same')));
    const tensors = fieldsOf(fieldsOf(both)[0]!.body).filter(({ number }) => number === 5);
    expect(tensors.map(({ body }) => textsOf(fieldsOf(body), 8)[0])).toEqual(['w', 'wide']);
    const wide = fieldsOf(tensors[1]!.body).find(({ number }) => number === 9)!.body;
    expect([...new Float32Array(new Uint8Array(wide).buffer)]).toEqual([1, -2]);
  });

  it('a net that is cut off is refused, never half read', () => {
    const kept = readFileSync(new URL(card.finder.file, models));
    expect(() => withoutCasts(kept.subarray(0, kept.length - 9))).toThrow(RangeError);
  });
});

describe('half precision', () => {
  it.each([
    [0x0000, 0],
    [0x0001, 2 ** -24],
    [0x03ff, 1023 * 2 ** -24],
    [0x0400, 2 ** -14],
    [0x3555, 0.333251953125],
    [0x3c00, 1],
    [0x7bff, 65504],
    [0xc000, -2],
    [0x7c00, Number.POSITIVE_INFINITY],
    [0xfc00, Number.NEGATIVE_INFINITY],
    [0x7e00, Number.NaN],
  ])('%i', (bits, value) => {
    expect(fromHalf(bits)).toBe(value);
  });
});
