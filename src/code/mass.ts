import type { LaidLayout } from './layout';
import type { Step } from './search';

/** Mass by last character: just written, or followed by a blank. */
interface Mass {
  ended: Map<string, number>;
  paused: Map<string, number>;
}

const noMass = (): Mass => ({ ended: new Map(), paused: new Map() });

function wholeOf({ ended, paused }: Mass): number {
  let whole = 0;
  for (const mass of ended.values()) whole += mass;
  for (const mass of paused.values()) whole += mass;
  return whole;
}

/** What of a mass stays where it is: another blank, or more of the same character. */
function staying({ ended, paused }: Mass, { blank, characters }: Step): Mass {
  const stay = noMass();
  if (blank > 0) {
    for (const from of [ended, paused]) {
      for (const [last, mass] of from) stay.paused.set(last, (stay.paused.get(last) ?? 0) + mass * blank);
    }
  }
  for (const [character, share] of characters) {
    const same = ended.get(character);
    if (same) stay.ended.set(character, same * share);
  }
  return stay;
}

/**
 * Probability that a lattice's text has a layout's shape, whatever the text: the sum over all alignments, by forward
 * recursion over cells. A text that fills the layout in two ways counts twice, which only makes doubt larger.
 * Steps × cells × characters of work.
 */
export function shapeMass(steps: readonly Step[], laid: LaidLayout): number {
  const { cells } = laid;
  // `masses[n]`: cell n - 1 was filled last; 0 is the beginning.
  let masses = Array.from({ length: cells.length + 1 }, noMass);
  masses[0]!.paused.set('', 1);
  for (const step of steps) {
    const next = masses.map((mass) => staying(mass, step));
    for (const [at, mass] of masses.entries()) {
      const whole = wholeOf(mass);
      if (whole === 0) continue;
      for (const [character, share] of step.characters) {
        const gain = (whole - (mass.ended.get(character) ?? 0)) * share;
        for (let cell = at; gain > 0 && cell < cells.length; cell = cells[cell]!.skipTo) {
          if (cells[cell]!.wide.includes(character)) {
            const into = next[cell + 1]!.ended;
            into.set(character, (into.get(character) ?? 0) + gain);
          }
          if (!cells[cell]!.optional) break;
        }
      }
    }
    masses = next;
  }
  return masses.reduce((sum, mass, at) => (endsAt(laid, at) ? sum + wholeOf(mass) : sum), 0);
}

/** Whether every cell from here on may be left out. */
function endsAt({ cells }: LaidLayout, from: number): boolean {
  for (let cell = from; cell < cells.length; cell = cells[cell]!.skipTo) if (!cells[cell]!.optional) return false;
  return true;
}
