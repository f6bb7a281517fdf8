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

/** A file from an address that changed there since, and that its owner changed too: what the store holds of it. */
export function changedOrigin(): { [key: string]: unknown } {
  const [, file] = builtInMakers;
  const { plants, ...rest } = file!;
  const now = JSON.parse(otherFile());
  const [first, ...others] = plants;
  const own = { ...rest, plants: [{ ...first!, used: ['1975', '1984'] }, ...others] };
  const at = '2026-11-20T10:00:00.000Z';
  const version = { at, sha256: 'a1'.repeat(32), file: file! };
  return {
    'maker-draft-travelled': { changedAt: at, draft: { value: own, past: [], future: [], typing: null } },
    'maker-origin-travelled': {
      version: 1,
      address: 'https://leather-notes.example/files/calderwick-rook.json',
      daily: true,
      asked: '2026-11-29T10:00:00.000Z',
      used: version,
      found: {
        at: '2026-11-29T10:00:00.000Z',
        sha256: 'b2'.repeat(32),
        file: {
          ...now,
          plants: now.plants.slice(0, -1),
          authors: ['A. Keeper'],
          licence: 'CC0-1.0',
          note: 'second printing',
        },
      },
      troubles: [],
      before: null,
    },
  };
}
