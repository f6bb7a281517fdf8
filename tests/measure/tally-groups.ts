import { type Measure, measureMarks, type Point, quadSize } from '../../src/photo';
import { markedPhoto } from '../../src/photo/measure/marked-photo';
import { byHand, type Grade } from './photographed';
import { chance } from './random';
import { type PlaneGroup, planeGroups, type StepTruth, systemOf } from './second/plane-groups';
import { type WallpaperScene, wallpaperScene } from './second/wallpaper';
import { count, type Tally } from './tally';

/** Ways in which a group may lie on a panel that differ in what is upright, degrees. */
export const turnsOf = (group: PlaneGroup): readonly number[] =>
  ({ oblique: [0], rectangular: [0, 90], square: [0, 45], hexagonal: [0, 90] })[systemOf(group)];

/** What the pattern's measures say of each of the 17 plane groups, as it lies on a panel. */
export async function tallyGroups(tally: Tally, grade: Grade, seed: number): Promise<void> {
  for (const [at, group] of planeGroups.entries())
    for (const degrees of turnsOf(group)) await tallyGroup(tally, group, degrees, grade, seed * 31 + at);
}

type How = 'exact' | 'by hand';

export async function tallyGroup(
  tally: Tally,
  group: PlaneGroup,
  degrees: number,
  grade: Grade,
  seed: number,
  hows: readonly How[] = ['exact', 'by hand'],
): Promise<void> {
  const scene = await wallpaperScene(group, degrees, seed, grade);
  const draw = chance(seed);
  for (const how of hows) {
    const hand = (points: readonly Point[]): Point[] =>
      how === 'exact' ? [...points] : byHand(points, scene.image, draw);
    const front = hand(scene.front);
    const [x, y, mirror, back] = measureMarks(scene.image, [
      { what: 'repeat-x', points: front },
      { what: 'repeat-y', points: front },
      { what: 'mirror-off', points: front },
      { what: 'back', points: [...front, ...hand(scene.back)] },
    ]) as [Measure, Measure, Measure, Measure];
    const size = quadSize(scene.front);
    for (const [own, truth] of [
      [x, scene.across],
      [y, scene.down],
    ] as const) {
      count(tally, `repeat within 2%, ${how}`, within2(own, truth, size));
      count(tally, `repeat wrong, ${how}`, own.value !== null && !within2(own, truth, size));
    }
    if (how === 'exact') tallyAngle(tally, scene);
    if (scene.axisOff === null) count(tally, 'an axis without one', mirror.value !== null);
    else {
      count(tally, `axis told, ${how}`, mirror.value !== null);
      if (typeof mirror.value === 'number') {
        const off = mirror.value - scene.axisOff;
        count(
          tally,
          `axis within its uncertainty, ${how}`,
          Math.abs(off - Math.round(2 * off) / 2) <= mirror.uncertainty!,
        );
      }
    }
    if (scene.stands === null) count(tally, 'a way told under a half turn', back.value !== null);
    else {
      count(tally, `way right, ${how}`, back.value === scene.stands);
      count(tally, 'way wrong', back.value !== null && back.value !== scene.stands);
    }
  }
}

type Size = ReturnType<typeof quadSize>;

const lengthOf = ({ x, y }: Point, { across, down }: Size): number => Math.hypot(x * across, y * down);

const within2 = ({ value }: Measure, { sure, may }: StepTruth, size: Size): boolean =>
  typeof value === 'number' && [sure, ...may].some((step) => Math.abs(value / lengthOf(step, size) - 1) < 0.02);

/** The angle between the two steps, degrees, where both are the shortest. */
function tallyAngle(tally: Tally, { image, front, across, down }: WallpaperScene): void {
  const panel = markedPhoto(image).panel(front, 0);
  const lattice = panel?.lattice();
  if (!panel || !lattice?.across || !lattice.down || across.may.length + down.may.length > 0) return;
  const size = quadSize(front);
  const between = (one: Point, other: Point): number =>
    ((Math.atan2(other.y * size.down, other.x * size.across) - Math.atan2(one.y * size.down, one.x * size.across)) *
      180) /
    Math.PI;
  const share = ({ x, y }: Point): Point => ({ x: x / panel.image.width, y: y / panel.image.height });
  const told = between(share(lattice.across), share(lattice.down));
  count(tally, 'angle of the lattice within 1°', Math.abs(told - between(across.sure, down.sure)) < 1);
}
