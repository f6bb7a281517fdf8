import type { Point, Quad } from '../../types';
import type { MarkedPhoto } from '../marked-photo';
import type { Measurable, Measure, NotMeasured } from '../measure-types';
import { notMeasured } from '../not-measured';
import { backTurned } from './back';
import { edgesOff, mirrorOff, motifOff, type Off } from './mirror';
import { lengthInPhoto, type Panel } from './panel';
import { seamOff } from './seam';

export type OfPanels = Extract<
  Measurable,
  'repeat-x' | 'repeat-y' | 'mirror-off' | 'edges-off' | 'motif-off' | 'back' | 'seam-off'
>;

/** A measure of a printed or woven pattern on a panel whose corners were marked. */
export function measurePanel(what: OfPanels, photo: MarkedPhoto, points: readonly Point[], within: number): Measure {
  const quad = points.slice(0, 4) as unknown as Quad;
  const refused = (why: NotMeasured, points = quad): Measure => notMeasured(what, why, { form: 'quad', points });
  const panel = photo.panel(quad, within);
  if (panel === null) return refused('small');
  const where = { form: 'quad' as const, points: panel.snapped.quad };
  if (what === 'repeat-x' || what === 'repeat-y') {
    const repeat = repeatOf(panel, what === 'repeat-x');
    return repeat === null ? refused('no-repeat', where.points) : { what, ...repeat, unit: 'px', where };
  }
  if (what === 'back') {
    const back = photo.panel(points.slice(4, 8) as unknown as Quad, within);
    const told = back === null ? 'small' : backTurned(panel, back);
    return told === 'turned' || told === 'upright'
      ? { what, value: told, uncertainty: null, unit: null, where }
      : refused(told, where.points);
  }
  const off = offOf(what, panel, points, within);
  return typeof off === 'string' ? refused(off, where.points) : { what, ...off, unit: 'share', where };
}

function offOf(
  what: 'mirror-off' | 'edges-off' | 'motif-off' | 'seam-off',
  panel: Panel,
  points: readonly Point[],
  within: number,
): Off | NotMeasured {
  if (what === 'mirror-off') return mirrorOff(panel);
  if (what === 'edges-off') return edgesOff(panel);
  const more = points.slice(4);
  if (what === 'seam-off') return seamOff(panel, [more[0]!, more[1]!]);
  const mean = (of: (point: Point) => number): number => more.reduce((sum, point) => sum + of(point), 0) / more.length;
  return motifOff(panel, { x: mean(({ x }) => x), y: mean(({ y }) => y) }, within);
}

/** The repeat across or down in pixels of the photo, on a panel whose sides are as long as opposite ones are on the average. */
function repeatOf(panel: Panel, level: boolean): { value: number; uncertainty: number } | null {
  const { across, down, snapped, lattice } = panel;
  const step = level ? lattice().across : lattice().down;
  if (step === null) return null;
  const value = lengthInPhoto(panel, step);
  const [top, right, bottom, left] = snapped.within;
  const sides = level ? Math.hypot(left, right) / across : Math.hypot(top, bottom) / down;
  return { value, uncertainty: value * Math.hypot(step.within + 0.003, sides) };
}
