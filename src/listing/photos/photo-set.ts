import type { Origin, PhotoLink } from '../types';
import { photoKey, widthFromAddress } from './image-size';

/** One address of a photo, and what is known of its size. */
export interface PhotoSource {
  address: string;
  width: number | null;
  height: number | null;
  /** Named as the large version: the target of a link around the picture, or a zoom attribute. */
  zoom?: boolean;
}

interface Photo {
  sources: PhotoSource[];
  origins: Set<Origin>;
  alt: string;
}

const maxPhotos = 60;
const maxSources = 12;
/** Rank of a version that is named as the large one and tells no size. */
const zoomRank = 1500;
/** Rank of one of which nothing is known. */
const ordinaryRank = 700;

/** Photos of a listing, duplicates merged by address, group and size words. */
export class PhotoSet {
  private readonly byKey = new Map<string, Photo>();
  private readonly photos: Photo[] = [];

  /** Adds the sources of one picture; joins it with a known one that any of them belongs to. */
  add(sources: readonly PhotoSource[], origin: Origin, alt: string): void {
    if (sources.length === 0) return;
    const keys = sources.map((source) => photoKey(source.address));
    let photo = keys.map((key) => this.byKey.get(key)).find((known) => known !== undefined);
    if (!photo) {
      if (this.photos.length >= maxPhotos) return;
      photo = { sources: [], origins: new Set(), alt: '' };
      this.photos.push(photo);
    }
    for (const key of keys) this.byKey.set(key, photo);
    photo.origins.add(origin);
    if (photo.alt === '') photo.alt = alt.replace(/\s+/g, ' ').trim().slice(0, 300);
    for (const source of sources) addSource(photo, source);
  }

  has(address: string): boolean {
    return this.byKey.has(photoKey(address));
  }

  get size(): number {
    return this.photos.length;
  }

  /** Photos in the order of the page, each with its largest source first. */
  links(): PhotoLink[] {
    return this.photos.map((photo, index) => {
      const ranked = photo.sources
        .map((source) => ({ source, rank: rankOf(source) }))
        .sort((a, b) => b.rank - a.rank)
        .map(({ source }) => source);
      const [largest, ...smaller] = ranked as [PhotoSource, ...PhotoSource[]];
      return {
        id: `photo-${index + 1}`,
        url: largest.address,
        alternatives: smaller.slice(0, maxSources - 1).map((source) => source.address),
        width: largest.width,
        height: largest.height,
        alt: photo.alt,
        origins: [...photo.origins],
      };
    });
  }
}

function addSource(photo: Photo, source: PhotoSource): void {
  const known = photo.sources.find((one) => one.address === source.address);
  if (known) {
    known.width = Math.max(known.width ?? 0, source.width ?? 0) || null;
    known.height = Math.max(known.height ?? 0, source.height ?? 0) || null;
  } else if (photo.sources.length < maxSources * 2) photo.sources.push({ ...source });
}

/** Rank by known width, by width in the address, or by its size word; nothing known ranks as an ordinary full picture. */
function rankOf(source: PhotoSource): number {
  const told = widthFromAddress(source.address);
  if (source.width !== null) return source.width;
  if (told?.exact) return told.width;
  const rank = told?.width ?? ordinaryRank;
  return source.zoom ? Math.max(rank, zoomRank) : rank;
}
