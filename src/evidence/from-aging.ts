import type { Claim } from '../claim/types';
import type { MeasuredOnPhotos } from './from-numbers';
import { evidenceId } from './ids';
import type { AgeShownSays } from './says';
import type { EvidenceAbout } from './types';

type Quality = EvidenceAbout<'quality'>;

/**
 * By how much two places must differ beyond the half-width of the measure, in steps of CIELAB and of CIEDE2000: what any
 * eye sees, and more than a shadow's edge makes. Common practice, no source.
 */
const clearly: Readonly<Record<string, { place: AgeShownSays['place']; least: number }>> = {
  darkening: { place: 'open-leather', least: 5 },
  greening: { place: 'rivet', least: 4 },
  'plating-change': { place: 'touched', least: 5 },
};

/**
 * Signs of age or use that were measured within one photo, between a place that they reach and one that they do not.
 * Soft: light may fall on the two otherwise. Nothing where the seller says that a part was replaced: old and new then lie
 * side by side.
 */
export function fromAging(
  { observations }: Pick<MeasuredOnPhotos, 'observations'>,
  claims: readonly Claim[],
): Quality[] {
  if (claims.some(({ kind }) => kind === 'replaced')) return [];
  return observations.flatMap(({ id, photoId, mark, what, value, uncertainty }): Quality[] => {
    const sign = Object.hasOwn(clearly, what) ? clearly[what] : undefined;
    if (!sign || typeof value !== 'number' || uncertainty === null || value - uncertainty < sign.least) return [];
    return [
      {
        about: 'quality',
        id: evidenceId.measured(id),
        from: { kind: 'photo', id },
        basis: `measured:${id}`,
        spans: [],
        places: [],
        quality: { of: 'state', is: ['used'] },
        strength: 'soft',
        says: { kind: 'shows-age', photo: photoId, mark, place: sign.place, by: value, within: uncertainty },
        source: { kind: 'photo' },
      },
    ];
  });
}
