import { finestSides } from './from-proportions';
import { sizeModel } from './rule/size-model';
import { standOf } from './rule/stand';
import type { Evidence, EvidenceAbout } from './types';

/** Stated length over true length when a unit is taken for another (1 inch is 25.4 mm). */
const confusions = [
  { factor: 1 / 2.54, mistaken: 'inches-as-cm' },
  { factor: 2.54, mistaken: 'cm-as-inches' },
  { factor: 0.1, mistaken: 'cm-as-mm' },
  { factor: 10, mistaken: 'mm-as-cm' },
] as const;
export type MistakenUnit = (typeof confusions)[number];

/**
 * Which unit taken for another would explain all sides at once, though they do not fit the model as they stand; null
 * when they fit, when no unit explains them, and when there are not two sides to go by.
 */
export function mistakenUnit(evidence: readonly Evidence[]): (MistakenUnit & { sides: string[] }) | null {
  const known = new Map(evidence.map((piece) => [piece.id, piece]));
  const couples = finestSides(evidence).flatMap(({ id, side }) => {
    const stated = known.get(id);
    const model = evidence.find(({ says }) => says.kind === 'model-size' && says.side === side);
    return stated?.about === 'size' && model ? [{ id, stated, model }] : [];
  });
  if (couples.length < 2) return null;
  const fits = (factor: number) =>
    couples.every(({ stated, model }) => standOf(sizeModel, scaled(stated, factor), model).relation === 'agrees');
  const confusion = fits(1) ? undefined : confusions.find(({ factor }) => fits(factor));
  return confusion ? { ...confusion, sides: couples.map(({ id }) => id) } : null;
}

/** The statement with its unit put right. */
const scaled = (stated: EvidenceAbout<'size'>, factor: number): Evidence => ({
  ...stated,
  amounts: stated.amounts.map((one) => ({ ...one, least: one.least / factor, most: one.most / factor })),
});
