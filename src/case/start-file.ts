import { currentFormat, type Draft, draftOf } from '../maker';
import { makerNamed } from './maker-named';
import type { Case } from './types';

/** Of the sizes of a piece that was measured once, by hand: others of the model lie about it. Own rule, no source. */
const toleranceCm = 1;
const sides = ['width', 'height', 'depth'] as const;

/**
 * A maker file begun from one listing: the maker as the buyer or the page names it, the model with its stated size, and where that
 * stands. Nothing in it is certain; whoever keeps it checks each. Null where the page names no maker.
 */
export function fileFromCase(kase: Case, note: string): Draft | null {
  const { listing, claims } = kase;
  const maker = makerNamed(kase);
  if (maker === '') return null;
  const name = modelName(listing.model[0]?.value ?? listing.title[0]?.value ?? '', maker);
  const size = Object.fromEntries(
    sides.flatMap((side) => {
      const stated = claims.find((claim) => claim.kind === 'measure' && claim.measure.dimension === side);
      return stated?.kind === 'measure' ? [[side, stated.measure.mm / 10]] : [];
    }),
  );
  const source = `${listing.url}, ${listing.readAt.slice(0, 10)}`;
  const model = {
    name,
    ...('width' in size ? { runs: [{ size: { ...size, unit: 'cm', tolerance: toleranceCm } }] } : {}),
    sources: [source],
  };
  return draftOf({
    format: currentFormat,
    maker: maker.slice(0, longestName),
    ...(name === '' ? {} : { models: [model] }),
    note,
  });
}

const longestName = 80;

/** A title without its maker and without what stands behind a comma: "Velmar Lane Tote 30, 1994" is the "Tote 30". */
function modelName(title: string, maker: string): string {
  const own = title.replace(/\s+/g, ' ').trim();
  const rest = own.toLowerCase().startsWith(maker.toLowerCase()) ? own.slice(maker.length) : own;
  return (rest.split(/[,;:|–—]/)[0] ?? '').trim().slice(0, longestName);
}
