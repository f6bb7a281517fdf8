import type { Where } from '../../photo';

/** Two lines, a dark one under a light one, are seen on any ground. In shares of the element that it fills. */
export function Drawing({ where: { points }, label }: { where: Where; label: string | null }) {
  const [first] = points;
  const path = points.map(({ x, y }) => `${x * 100},${y * 100}`).join(' ');
  return (
    <svg
      viewBox="0 0 100 100"
      preserveAspectRatio="none"
      role="img"
      aria-label={label ?? ''}
      aria-hidden={label === null}
    >
      {['under', 'over'].map((name) =>
        points.length === 1 && first ? (
          <path key={name} class={`${name} dot`} d={`M ${first.x * 100} ${first.y * 100} h 0`} />
        ) : points.length === 2 ? (
          <polyline key={name} class={name} points={path} />
        ) : (
          <polygon key={name} class={name} points={path} />
        ),
      )}
    </svg>
  );
}
