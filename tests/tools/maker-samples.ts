import { builtInMakers } from '../../src/maker';

export const knownCodes = 'KV0915 1995-01 BE\nHJ1929 1999-12 FR\nZM0084 2004-08 ES\nWQ1012 2002-11 US\n';

/** A file of the second built-in maker as someone else may keep it, with a difference of each kind. */
export function otherFile(): string {
  const { plants, codeSystems, models, trade, ...rest } = builtInMakers[1]!;
  const [plant, system, model] = [plants[0]!, codeSystems[0]!, models[0]!];
  const size = { width: 31, height: 24, unit: 'cm', tolerance: 2 };
  return JSON.stringify({
    ...rest,
    plants: [{ ...plant, used: ['1979', '1984'], name: 'Canal workshop' }, ...plants.slice(1)],
    codeSystems: [
      { ...system, examples: [...system.examples.slice(1), { ...system.examples[0]!, note: 'from a receipt' }] },
      ...codeSystems.slice(1),
    ],
    models: [{ ...model, runs: [{ ...model.runs?.[0], size }, ...(model.runs ?? []).slice(1)] }, ...models.slice(1)],
    trade: { ...trade, discounts: 'often' },
  });
}
