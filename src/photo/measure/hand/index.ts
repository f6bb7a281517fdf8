import type { PixelImage, Point, Quad } from '../../types';
import { scaledWhere } from '../../where';
import { measureOn } from '..';
import { changeOfPatch } from '../colour';
import { inPixelsOf } from '../in-pixels';
import { measureLettering } from '../lettering';
import { type MarkedPhoto, markedPhoto } from '../marked-photo';
import type { Mark, Measurable, Measure } from '../measure-types';
import { notMeasured } from '../not-measured';
import type { HandMark, HandMeasure, MarkKind } from './hand-types';
import { distance, type Length, type PixelMark, type Scale, scaleOfCard, scaleOfRuler } from './scale';

/** Points that a mark of each kind has; a polygon may have more. */
export const pointsOf: Readonly<Record<MarkKind, number>> = {
  panel: 4,
  back: 4,
  motif: 1,
  seam: 2,
  stitches: 2,
  lettering: 4,
  patch: 4,
  'open-leather': 4,
  rivet: 4,
  touched: 4,
  white: 4,
  length: 2,
  ruler: 2,
  card: 4,
};

/** A mark in pixels of the image that is measured. */
type Placed = HandMark & PixelMark;

/**
 * What each of a photo's marks measures, in the marks' order. `scale` is the factor from the image's pixels to the
 * photo's own: values in pixels are in the latter. Pure: the same pixels and marks give the same measures.
 */
export function measureHandMarks(image: PixelImage, marks: readonly HandMark[], scale = 1): HandMeasure[][] {
  const longer = Math.max(image.width, image.height);
  const placed = marks.map((mark): Placed => {
    const points = mark.points.map(({ x, y }) => ({ x: x * image.width, y: y * image.height }));
    return { ...mark, points, within: mark.within * longer };
  });
  const room: Room = { photo: markedPhoto(image), marks: placed, known: scaleAmong(placed) };
  return placed.map((mark) =>
    measuresOf(mark, room).map((measure) => ({
      ...inPixelsOf(scale, measure),
      where: measure.where && scaledWhere(measure.where, 1 / image.width, 1 / image.height),
    })),
  );
}

interface Room {
  photo: MarkedPhoto;
  marks: readonly Placed[];
  known: Scale | null;
}

/** The first that tells lengths; a card before a ruler, because it knows from which side it is seen. */
function scaleAmong(marks: readonly Placed[]): Scale | null {
  const [card] = marks.filter(({ kind }) => kind === 'card').flatMap((mark) => scaleOfCard(mark) ?? []);
  const [ruler] = marks.filter(({ kind }) => kind === 'ruler').flatMap((mark) => scaleOfRuler(mark) ?? []);
  return card ?? ruler ?? null;
}

function measuresOf(mark: Placed, room: Room): HandMeasure[] {
  switch (mark.kind) {
    case 'panel':
      return [
        ...at(room, mark, ['repeat-x', 'repeat-y', 'mirror-off', 'edges-off'], mark.points),
        ...sides(mark, room.known),
      ];
    case 'back':
      return ofPanel(mark, room, 'back');
    case 'motif':
      return ofPanel(mark, room, 'motif-off');
    case 'seam':
      return ofPanel(mark, room, 'seam-off');
    case 'stitches':
      return stitches(mark, room);
    case 'lettering':
      return measureLettering(room.photo.grey(), mark.points as unknown as Quad, mark.name, mark.within);
    case 'patch':
      return colours(mark, room);
    case 'open-leather':
    case 'rivet':
    case 'touched':
      return [aged(mark, agedAs[mark.kind], room)];
    case 'white':
      return [];
    case 'length':
      return [lengthOf(mark, room.known)];
    case 'ruler':
      return [scaleMeasure(scaleOfRuler(mark), mark)];
    case 'card':
      return [scaleMeasure(scaleOfCard(mark), mark)];
  }
}

/** Measures at points; a hand's white serves those of colour. */
function at(
  { photo, marks }: Room,
  { kind, within }: Placed,
  whats: readonly Measurable[],
  points: readonly Point[],
): Measure[] {
  const white = marks.find((one) => one.kind === 'white');
  const needed: Mark[] = white && kind === 'patch' ? [{ what: 'white', points: [...white.points] }] : [];
  const made = whats.map((what): Mark => ({ what, points: [...points], ...(kind === 'patch' ? {} : { within }) }));
  return measureOn(photo, [...needed, ...made]);
}

/** What is told only against the photo's first panel. */
function ofPanel(mark: Placed, room: Room, what: 'back' | 'motif-off' | 'seam-off'): HandMeasure[] {
  const panel = room.marks.find(({ kind }) => kind === 'panel');
  if (!panel) return [notMeasured(what, 'no-panel')];
  const within = Math.max(panel.within, mark.within);
  const measures = at(room, { ...mark, within }, [what], [...panel.points, ...mark.points]);
  return measures.map((measure) => ({ ...measure, against: panel.number }));
}

function stitches(mark: Placed, room: Room): HandMeasure[] {
  const measures = at(room, mark, ['count', 'pitch', 'evenness', 'slant', 'skipped'], mark.points);
  const [count, pitch] = measures;
  if (count?.value === null) return [count];
  const row = pitch?.where?.points;
  if (!room.known || typeof pitch?.value !== 'number' || !row?.[1]) return measures;
  const pixels = distance(row[0], row[1]);
  // Its ends went to holes: they are no further off than a part of a stitch.
  const length = room.known.between(row[0], row[1], pitch.value / 8);
  if (!length) return measures;
  const value = (10 * pixels) / pitch.value / length.value;
  const off = Math.hypot((pitch.uncertainty ?? 0) / pitch.value, length.uncertainty / length.value);
  return [
    ...measures,
    { what: 'stitches-per-cm', value, uncertainty: value * off, unit: 'per-cm', where: pitch.where },
  ];
}

/** A patch's colour, and how far it is from the photo's first patch. */
function colours(mark: Placed, room: Room): HandMeasure[] {
  const lab = at(room, mark, ['lab'], mark.points);
  const first = room.marks.find(({ kind }) => kind === 'patch');
  if (!first || first.number === mark.number || first.points.length !== mark.points.length) return lab;
  const difference = at(room, mark, ['difference'], [...first.points, ...mark.points]);
  const where = lab[0]?.where ?? null;
  return [...lab, ...difference.map((measure) => ({ ...measure, where, against: first.number }))];
}

const agedAs = {
  'open-leather': { what: 'darkening', change: 'darker', unit: 'lab-step' },
  rivet: { what: 'greening', change: 'greener', unit: 'lab-step' },
  touched: { what: 'plating-change', change: 'any', unit: 'de2000' },
} as const;

/** A place that age changes, against the photo's first patch, which lies where it does not. */
function aged({ points }: Placed, { what, change, unit }: Aged, { photo, marks }: Room): HandMeasure {
  const first = marks.find((one) => one.kind === 'patch');
  if (!first) return notMeasured(what, 'no-first-patch');
  const white = marks.find((one) => one.kind === 'white')?.points ?? null;
  const where = { form: 'polygon' as const, points: [...points] };
  const told = changeOfPatch(photo.image, first.points, points, white, change);
  if (typeof told === 'string') return { ...notMeasured(what, told, where), against: first.number };
  return { what, ...told, unit, where, against: first.number };
}
type Aged = (typeof agedAs)[keyof typeof agedAs];

/** Width and height of a panel, each side's mean, where a scale is known. */
function sides({ points, within }: Placed, known: Scale | null): HandMeasure[] {
  const [a, b, c, d] = points;
  if (!known || !a || !b || !c || !d) return [];
  const mean = (what: 'width' | 'height', one: Length | null, other: Length | null): HandMeasure[] => {
    if (!one || !other) return [];
    const value = (one.value + other.value) / 2;
    const uncertainty = Math.max(one.uncertainty, other.uncertainty, Math.abs(one.value - other.value) / 2);
    return [{ what, value, uncertainty, unit: 'mm', where: { form: 'quad', points: [a, b, c, d] } }];
  };
  return [
    ...mean('width', known.between(a, b, within), known.between(d, c, within)),
    ...mean('height', known.between(a, d, within), known.between(b, c, within)),
  ];
}

function lengthOf({ points, within }: Placed, known: Scale | null): HandMeasure {
  const what = 'length';
  const [from, to] = points;
  if (!from || !to) return notMeasured(what, 'points');
  const where = { form: 'line' as const, points: [from, to] as [Point, Point] };
  const length = known?.between(from, to, within);
  if (length) return { what, ...length, unit: 'mm', where };
  const value = distance(from, to);
  return { what, value, uncertainty: Math.SQRT2 * within, unit: 'px', where };
}

function scaleMeasure(scale: Scale | null, { points, kind }: Placed): HandMeasure {
  if (!scale) return notMeasured('scale', kind === 'ruler' ? 'no-length' : 'points');
  const [a, b, c, d] = points;
  const where =
    a && b && c && d
      ? { form: 'quad' as const, points: [a, b, c, d] as [Point, Point, Point, Point] }
      : { form: 'line' as const, points: [a!, b!] as [Point, Point] };
  return { what: 'scale', ...scale.atItself, unit: 'mm-per-px', where };
}
