import { bytesOf, type Field, fieldsOf, joined, lengthDelimited, numberOf, textsOf, wholeNumber } from './protobuf';

/**
 * The net without its casts. The runtime has one function for all of them, so large (490 KB of WASM) that the browser
 * takes 280 MB and seconds of processor time to compile it once it is in use; nothing else in our nets needs a tenth
 * of that. Two kinds are replaced, and the numbers stay exactly the same:
 *
 * - weights of half precision are widened here (they are kept so, because they weigh half);
 * - a length that is taken from a shape and cast to a fraction is looked up in a table of whole numbers.
 *
 * Takes and gives an ONNX model (https://github.com/onnx/onnx/blob/main/onnx/onnx.proto). A net with branches or
 * loops, or without such casts, comes back as it is. Throws RangeError on bytes that end too early.
 */
export function withoutCasts(model: Uint8Array): Uint8Array {
  const parts = fieldsOf(model);
  const place = parts.findIndex(({ number }) => number === modelField.graph);
  const graph = fieldsOf(parts[place]?.body ?? new Uint8Array(0));
  const nodes = graph.filter(({ number }) => number === graphField.node).map(({ body }) => nodeOf(body));
  if (nodes.some(({ branches }) => branches)) return model;
  const halves = new Map<string, Field[]>();
  for (const { number, body } of graph) {
    if (number !== graphField.initializer) continue;
    const tensor = fieldsOf(body);
    const isHalf = numberOf(tensor, tensorField.type) === type.half && bytesOf(tensor, tensorField.bytes).length > 0;
    if (isHalf) halves.set(textsOf(tensor, tensorField.name)[0] ?? '', tensor);
  }
  const widened = nodes.filter(({ castsTo, inputs }) => castsTo === type.float && halves.has(inputs[0] ?? ''));
  const madeBy = new Map(nodes.flatMap((node) => node.outputs.map((output) => [output, node] as const)));
  const lookedUp = nodes.filter((node) => node.castsTo === type.float && isLength(node.inputs[0], madeBy));
  if (widened.length + lookedUp.length === 0) return model;
  const gone = new Set([...widened, ...lookedUp].map(({ body }) => body));
  const needed = new Set(nodes.filter(({ body }) => !gone.has(body)).flatMap(({ inputs }) => inputs));
  const isSpare = (tensor: Uint8Array): boolean => {
    const [name = ''] = textsOf(fieldsOf(tensor), tensorField.name);
    return halves.has(name) && !needed.has(name);
  };
  const changed = graph.flatMap(({ number, body, whole }) => {
    if (number === graphField.initializer && isSpare(body)) return [];
    if (number !== graphField.node || !gone.has(body)) return [whole];
    const lookUp = lookedUp.find((node) => node.body === body);
    return lookUp === undefined ? [] : [lengthDelimited(graphField.node, lookUpOf(lookUp))];
  });
  for (const { inputs, outputs } of widened) {
    const tensor = halves.get(inputs[0] ?? '') ?? [];
    changed.push(lengthDelimited(graphField.initializer, wideTensor(tensor, outputs[0] ?? '')));
  }
  if (lookedUp.length > 0) changed.push(lengthDelimited(graphField.initializer, tableOfWholeNumbers()));
  return joined(
    parts.map(({ whole }, at) => (at === place ? lengthDelimited(modelField.graph, joined(changed)) : whole)),
  );
}

/** Numbers of the fields and types that matter, from onnx.proto. */
const modelField = { graph: 7 };
const graphField = { node: 1, initializer: 5 };
const nodeField = { input: 1, output: 2, operator: 4, attribute: 5 };
const attributeField = { name: 1, integer: 3, graph: 6, graphs: 11 };
const tensorField = { dimension: 1, type: 2, name: 8, bytes: 9 };
const type = { float: 1, long: 7, half: 10 };

interface GraphNode {
  body: Uint8Array;
  operator: string;
  inputs: string[];
  outputs: string[];
  /** The type that a Cast gives, null for every other node. */
  castsTo: number | null;
  /** The node holds graphs of its own. */
  branches: boolean;
}

function nodeOf(body: Uint8Array): GraphNode {
  const fields = fieldsOf(body);
  const [operator = ''] = textsOf(fields, nodeField.operator);
  const attributes = fields.filter(({ number }) => number === nodeField.attribute).map((field) => fieldsOf(field.body));
  const to = attributes.find((attribute) => textsOf(attribute, attributeField.name)[0] === 'to');
  return {
    body,
    operator,
    inputs: textsOf(fields, nodeField.input),
    outputs: textsOf(fields, nodeField.output),
    castsTo: operator === 'Cast' && to !== undefined ? numberOf(to, attributeField.integer) : null,
    branches: attributes.some((attribute) =>
      attribute.some(({ number }) => number === attributeField.graph || number === attributeField.graphs),
    ),
  };
}

/** Steps that make lengths of lengths: whole numbers, none below zero. */
const lengthSteps = new Set(['Gather', 'Div', 'Mul', 'Squeeze', 'Unsqueeze', 'Slice']);

/** Whether a value comes from a shape by such steps alone. */
function isLength(name: string | undefined, madeBy: ReadonlyMap<string, GraphNode>): boolean {
  const node = madeBy.get(name ?? '');
  if (node === undefined) return false;
  if (node.operator === 'Shape') return true;
  return (node.castsTo === type.long || lengthSteps.has(node.operator)) && isLength(node.inputs[0], madeBy);
}

const table = 'tellstamp.whole-numbers';
/** No length in a net that reads one photo is longer. */
const longest = 8192;

const lookUpOf = ({ inputs, outputs }: GraphNode): Uint8Array =>
  joined([
    lengthDelimited(nodeField.input, table),
    lengthDelimited(nodeField.input, inputs[0] ?? ''),
    lengthDelimited(nodeField.output, outputs[0] ?? ''),
    lengthDelimited(nodeField.operator, 'Gather'),
  ]);

const tableOfWholeNumbers = (): Uint8Array =>
  joined([
    wholeNumber(tensorField.dimension, longest),
    ...floatTensor(
      table,
      Float32Array.from({ length: longest }, (_, at) => at),
    ),
  ]);

/** The tensor in single precision under another name; its dimensions stay as they were written. */
const wideTensor = (tensor: readonly Field[], name: string): Uint8Array => {
  // A copy: the bytes lie anywhere in the file, and a typed array wants an even place.
  const halves = new Uint16Array(new Uint8Array(bytesOf(tensor, tensorField.bytes)).buffer);
  // A plain loop: there are a million of them, and `from` with a function takes ten times as long.
  const numbers = new Float32Array(halves.length);
  for (let at = 0; at < halves.length; at++) numbers[at] = fromHalf(halves[at]!);
  const dimensions = tensor.filter(({ number }) => number === tensorField.dimension).map(({ whole }) => whole);
  return joined([...dimensions, ...floatTensor(name, numbers)]);
};

/**
 * Type, name and numbers of a tensor; the dimensions are the caller's. ONNX keeps numbers little-endian, and so does
 * every machine that runs WASM in a browser.
 */
const floatTensor = (name: string, numbers: Float32Array): Uint8Array[] => [
  wholeNumber(tensorField.type, type.float),
  lengthDelimited(tensorField.name, name),
  lengthDelimited(tensorField.bytes, new Uint8Array(numbers.buffer)),
];

/** What a fraction of 1024ths counts at each exponent; the lowest has no leading one. */
const scales = Float64Array.from({ length: 32 }, (_, exponent) => 2 ** (Math.max(1, exponent) - 25));

/** The number that 16 bits stand for in half precision (IEEE 754 binary16). */
export function fromHalf(bits: number): number {
  const exponent = (bits >> 10) & 31;
  const fraction = bits & 1023;
  const size =
    exponent === 31
      ? fraction === 0
        ? Number.POSITIVE_INFINITY
        : Number.NaN
      : (exponent === 0 ? fraction : fraction + 1024) * scales[exponent]!;
  return bits >= 0x8000 ? -size : size;
}
