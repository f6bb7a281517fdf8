/** One protobuf field: `body` is what a length-delimited one holds, `value` what a varint says, `whole` all of it. */
export interface Field {
  number: number;
  value: number;
  body: Uint8Array;
  whole: Uint8Array;
}

const nothing = new Uint8Array(0);

/**
 * The fields of one message, in order (https://protobuf.dev/programming-guides/encoding). Bodies are views of the
 * bytes given. Throws RangeError on bytes that end too early; whole numbers above 2^53 lose digits.
 */
export function fieldsOf(bytes: Uint8Array): Field[] {
  const fields: Field[] = [];
  let at = 0;
  const varint = (): number => {
    let value = 0;
    for (let factor = 1; ; factor *= 128) {
      const byte = bytes[at++];
      if (byte === undefined) throw new RangeError('the net ends too early');
      value += (byte & 127) * factor;
      if (byte < 128) return value;
    }
  };
  while (at < bytes.length) {
    const from = at;
    const tag = varint();
    const wire = tag % 8;
    const value = wire === 0 || wire === 2 ? varint() : 0;
    const size = wire === 2 ? value : wire === 1 ? 8 : wire === 5 ? 4 : 0;
    if (at + size > bytes.length) throw new RangeError('the net ends too early');
    const body = size === 0 ? nothing : bytes.subarray(at, at + size);
    at += size;
    fields.push({ number: Math.floor(tag / 8), value, body, whole: bytes.subarray(from, at) });
  }
  return fields;
}

/** Every text of a field that may stand more than once, a character a byte: names are only compared and copied. */
export const textsOf = (fields: readonly Field[], number: number): string[] =>
  fields.filter((field) => field.number === number).map(({ body }) => String.fromCharCode(...body));

export const bytesOf = (fields: readonly Field[], number: number): Uint8Array =>
  fields.find((field) => field.number === number)?.body ?? nothing;

export const numberOf = (fields: readonly Field[], number: number): number =>
  fields.find((field) => field.number === number)?.value ?? 0;

/** A field that holds bytes, or text. */
export function lengthDelimited(number: number, body: Uint8Array | string): Uint8Array {
  const bytes = typeof body === 'string' ? Uint8Array.from(body, (character) => character.charCodeAt(0)) : body;
  return joined([varint(number * 8 + 2), varint(bytes.length), bytes]);
}

/** A field that holds a whole number of at most 2^53. */
export const wholeNumber = (number: number, value: number): Uint8Array => joined([varint(number * 8), varint(value)]);

export function joined(parts: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    bytes.set(part, at);
    at += part.length;
  }
  return bytes;
}

function varint(value: number): Uint8Array {
  const bytes: number[] = [];
  let rest = value;
  for (; rest >= 128; rest = Math.floor(rest / 128)) bytes.push((rest % 128) + 128);
  return Uint8Array.from([...bytes, rest]);
}
