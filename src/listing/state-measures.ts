import { type FoundMeasure, parseMeasures } from '../text/measure';
import type { Measure } from './types';

/*
 * The sides of a piece in a page's own state, by the shape of what is kept: a number under the name of a side with its
 * unit beside it, or one text for all of them. Sides of a picture or a parcel have the same names without such a unit,
 * or stand in a thing of their own; without a unit none is assumed.
 */

type Thing = Record<string, string>;

/** Where sides stand: in the thing itself, or in what it calls its size. */
const holder =
  /^(?:dimensions?|sizes?|measure(?:ment)?s?|item_?dimensions|product_?dimensions|masse|abmessungen|dimensioni|misure|medidas|dimensiones|afmetingen|mesures|tailles?)$/i;
const sides: [Measure['dimension'], RegExp][] = [
  ['width', /^(?:(?:item_?|product_?)?width|length|breite|laenge|largeur|longueur|larghezza|ancho|anchura|breedte)$/i],
  ['height', /^(?:(?:item_?|product_?)?height|hoehe|hauteur|altezza|alto|altura|hoogte)$/i],
  ['depth', /^(?:(?:item_?|product_?)?depth|tiefe|profondeur|profondita|profundidad|fondo|diepte)$/i],
];
const unitEnd = /[_.]?(cm|mm|in|inch(?:es)?)$/i;
const unitKey = /^(?:(?:dimensions?|size|measurements?|length)_?)?units?(?:_?(?:code|name))?$/i;
const whole =
  /^(?:dimensions|measurements|size|masse|abmessungen|dimensioni|misure|medidas|afmetingen)(?:_?(?:text|label|display))?$/i;
const number = /^\d{1,4}(?:[.,]\d{1,2})?$/;

/** "attributes[Width]": what a thing lists under a label of its own. */
export const listed = /\[([^\]]{1,40})\]$/;

/** The path of a value as what holds it and its own name: ["dimensions", "width"]. */
function splitPath(path: string): [string, string] {
  const at = path.lastIndexOf('.');
  return at < 0 ? ['', path] : [path.slice(0, at), path.slice(at + 1)];
}

/** Measures that a thing of the state tells of itself. */
export function stateMeasures(thing: Thing, language: string | null): Measure[] {
  const read = (text: string) => parseMeasures(text, language).map(({ measure }: FoundMeasure) => measure);
  const found = Object.entries(thing).flatMap(([path, value]): Measure[] => {
    const label = listed.exec(path)?.[1];
    if (label !== undefined) return read(`${label} ${value}`).filter(({ dimension }) => dimension !== 'unknown');
    const [within, name] = splitPath(path);
    if (within !== '' && !holder.test(within)) return [];
    if (whole.test(name)) {
      const several = read(value);
      return several.length > 1 ? several : [];
    }
    const unit = unitEnd.exec(name)?.[1] ?? unitBeside(thing, within);
    const dimension = sides.find(([, names]) => names.test(name.replace(unitEnd, '')))?.[0];
    const [side] = dimension ? read(number.test(value.trim()) && unit ? `${value.trim()} ${unit}` : value) : [];
    return side && dimension ? [{ ...side, dimension, words: `${name} ${value}`.slice(0, 60) }] : [];
  });
  return secondWidthApart(found);
}

function unitBeside(thing: Thing, within: string): string | null {
  const key = Object.keys(thing).find((path) => {
    const [holding, name] = splitPath(path);
    return holding === within && unitKey.test(name);
  });
  const unit = key === undefined ? '' : (thing[key] as string).trim().toLowerCase();
  return /^(?:cm|mm|in|inch(?:es)?)$/.test(unit) ? unit : null;
}

/** "Length 30, width 17": beside a length, the width is the depth. Common practice, no source. */
function secondWidthApart(measures: Measure[]): Measure[] {
  const widths = measures.filter(({ dimension }) => dimension === 'width');
  if (widths.length !== 2 || measures.some(({ dimension }) => dimension === 'depth')) return measures;
  const smaller = Math.min(...widths.map(({ mm }) => mm));
  return measures.map((one) =>
    one.dimension === 'width' && one.mm === smaller ? { ...one, dimension: 'depth' } : one,
  );
}
