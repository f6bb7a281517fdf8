import { withoutEnd } from '../../text/ends';

/** One candidate of a `srcset`: its address as written, and its width in pixels or its density. */
export interface SourceCandidate {
  address: string;
  width: number | null;
  density: number | null;
}

const space = /[\t\n\f\r ]/;
const integer = /^\d+$/;
/** Source: HTML Standard 2.3.4.3, "Floating-point numbers" (valid form). */
const float = /^-?(?:\d+(?:\.\d+)?|\.\d+)(?:[eE][-+]?\d+)?$/;

/**
 * Parses a `srcset`. Source: HTML Standard 4.8.4.4.4, "Parsing a srcset attribute". Candidates with descriptors that
 * the standard refuses are left out, as browsers do.
 */
export function parseSrcset(input: string, most = Number.POSITIVE_INFINITY): SourceCandidate[] {
  const candidates: SourceCandidate[] = [];
  let at = 0;
  while (candidates.length < most) {
    while (/[\t\n\f\r ,]/.test(input.charAt(at))) at += 1;
    if (at >= input.length) break;
    const start = at;
    while (at < input.length && !space.test(input[at] as string)) at += 1;
    let address = input.slice(start, at);
    let descriptors: string[] = [];
    if (address.endsWith(',')) address = withoutEnd(address, /,/);
    else [descriptors, at] = readDescriptors(input, at);
    const candidate = describe(address, descriptors);
    if (candidate) candidates.push(candidate);
  }
  return candidates;
}

/** Splits what follows an address at spaces, with text in parentheses kept whole, up to a comma outside of them. */
function readDescriptors(input: string, from: number): [string[], number] {
  const descriptors: string[] = [];
  let current = '';
  let inside = false;
  let at = from;
  const finish = () => {
    if (current !== '') descriptors.push(current);
    current = '';
  };
  for (; at < input.length; at += 1) {
    const character = input[at] as string;
    // What stands in brackets is no descriptor: the bracket alone refuses it.
    if (inside) inside = character !== ')';
    else if (character === ',') {
      finish();
      return [descriptors, at + 1];
    } else if (space.test(character)) finish();
    else {
      current += character;
      inside = character === '(';
    }
  }
  finish();
  return [descriptors, at];
}

function describe(address: string, descriptors: string[]): SourceCandidate | null {
  let width: number | null = null;
  let density: number | null = null;
  let height: number | null = null;
  for (const descriptor of descriptors) {
    const value = descriptor.slice(0, -1);
    const unit = descriptor.at(-1);
    if (unit === 'w' && integer.test(value) && Number(value) > 0 && width === null && density === null)
      width = Number(value);
    else if (
      unit === 'x' &&
      float.test(value) &&
      Number(value) >= 0 &&
      width === null &&
      density === null &&
      height === null
    )
      density = Number(value);
    else if (unit === 'h' && integer.test(value) && Number(value) > 0 && height === null && density === null)
      height = Number(value);
    else return null;
  }
  return height !== null && width === null ? null : { address, width, density };
}
