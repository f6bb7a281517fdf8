import type { PageNote } from '../extract-types';
import { webAddress } from '../page/address';
import type { Area } from '../page/area';
import { leadsTo, type OtherPage } from '../page/cards';
import { attribute, attributeText, closest, selectSome, tagOf, textContent } from '../page/dom';
import type { Slices } from '../page/slices';
import type { Snapshot } from '../page/snapshot';
import {
  addressesInJson,
  fromAttribute,
  longValue,
  namesOf,
  pixels,
  sourcesOfImage,
  sourcesOfLink,
} from './image-sources';
import { isMadeByPage, madePhoto, mostMade } from './made-by-page';
import { isIconSized, isPlaceholder, namesNoPhoto } from './not-photo';
import type { PhotoSet, PhotoSource } from './photo-set';

export interface PhotoPage {
  snapshot: Snapshot;
  area: Area;
  otherPage: OtherPage;
  /** Addresses that several pictures show while their own wait in an attribute: stand-ins. */
  standIns?: ReadonlySet<string | null>;
  base: string;
  slices: Slices;
}

/** Adds the photos that the listing's area shows, in the page's order. Returns what could not be addressed. */
export async function gatherSeenPhotos(given: PhotoPage, photos: PhotoSet): Promise<PageNote[]> {
  const { slices } = given;
  let [made, unaddressed] = [0, 0];
  const page = { ...given, standIns: await findStandIns(given) };
  for (const [index, { element, tag, shown }] of page.snapshot.elements.entries()) {
    if ((index & 7) === 0 && slices.due) await slices.rest();
    if (page.area.outside[index] === 1) continue;
    if (tag === 'img' || tag === 'amp-img') {
      if (isMadeByPage(element) && sourcesOfImage(element, page.base, slices).length === 0) {
        const source = namesNoPhoto('', element) || linksElsewhere(element, page) ? 'no-photo' : madePhoto(element);
        if (source === 'no-photo') continue;
        if (source === 'absent' || made === mostMade) unaddressed += 1;
        else {
          photos.add([source], 'visible', attribute(element, 'alt') ?? attributeText(element, 'title'));
          made += 1;
        }
      } else addImage(element, page, photos);
    } else if (tag === 'noscript') addNoscript(element, page, photos);
    else if (tag === 'a') addLink(element, page, photos);
    else if (shown !== 'hidden' || attribute(element, 'data-src') !== null) addBackground(element, page, photos);
  }
  // Beside photos with addresses, one that never came is a preview or a stand-in.
  return unaddressed > 0 && (photos.size === made || made === mostMade)
    ? [{ code: 'photo-without-address', where: 'photos', count: unaddressed }]
    : [];
}

async function findStandIns({ snapshot, base, slices }: PhotoPage): Promise<ReadonlySet<string | null>> {
  const seen = new Map<string | null, number>();
  for (const { element, tag } of snapshot.elements) {
    if (slices.due) await slices.rest();
    if (tag !== 'img' || !namesOf(element, slices).some((name) => /^data-.*src/.test(name))) continue;
    const address = webAddress(attribute(element, 'src'), base);
    seen.set(address, (seen.get(address) ?? 0) + 1);
  }
  return new Set([...seen].filter(([, count]) => count > 1).map(([address]) => address));
}

function linksElsewhere(element: Element, page: PhotoPage): boolean {
  const link = closest(element, (step) => tagOf(step) === 'a', false);
  return link !== null && leadsTo(link, page.otherPage) !== null;
}

function addImage(image: Element, page: PhotoPage, photos: PhotoSet): void {
  const sources = sourcesOfImage(image, page.base, page.slices).filter(
    (source) => !namesNoPhoto(source.address, null) && !page.standIns?.has(source.address),
  );
  const first = sources[0];
  if (!first || namesNoPhoto(first.address, image)) return;
  const known = sources.some((source) => photos.has(source.address));
  if (!known) {
    const icon = isIconSized(pixels(attribute(image, 'width')), pixels(attribute(image, 'height')));
    const other = sources.length > 1 || (first.width !== null && first.width > 64);
    if ((icon && !other) || linksElsewhere(image, page)) return;
  }
  photos.add(sources, 'visible', attribute(image, 'alt') ?? attributeText(image, 'title'));
  for (const name of namesOf(image, page.slices)) addJson(image, name, page, photos);
}

const maxNoscript = 20_000;
const mostInNoscript = 60;

/** A picture for readers without scripts: parsed into an inert document where the browser kept it as text. */
function addNoscript(noscript: Element, page: PhotoPage, photos: PhotoSet): void {
  const text = textContent(noscript);
  const inner = selectSome(noscript, 'img', mostInNoscript);
  if (!/<img\b/i.test(text)) {
    for (const image of inner) addImage(image, page, photos);
    return;
  }
  const Parser = (globalThis as { DOMParser?: typeof DOMParser }).DOMParser;
  if (!Parser || text.length > maxNoscript || linksElsewhere(noscript, page)) return;
  const parsed = new Parser().parseFromString(text, 'text/html');
  for (const image of selectSome(parsed, 'img', mostInNoscript)) addImage(image, page, photos);
}

function addLink(link: Element, page: PhotoPage, photos: PhotoSet): void {
  const sources = sourcesOfLink(link, page.base, page.slices).filter((source) => !namesNoPhoto(source.address, link));
  if (selectSome(link, 'img', 1).length === 0) photos.add(sources, 'visible', attributeText(link, 'title'));
}

const galleryName = /gallery|carousel|slide|swiper|photo|image|picture|zoom|media|galerie|bilder|foto/i;

/** Pictures set as a background of a gallery's parts, and galleries kept as JSON in an attribute. */
function addBackground(element: Element, page: PhotoPage, photos: PhotoSet): void {
  const style = /background(?:-image)?\s*:[^;]*url\(\s*["']?([^"')]+)/i.exec(attributeText(element, 'style'));
  const address = webAddress(style?.[1], page.base);
  if (
    address !== null &&
    (galleryName.test(['class', 'id', 'role'].map((name) => attributeText(element, name)).join(' ')) ||
      attribute(element, 'role') === 'img') &&
    !namesNoPhoto(address, element) &&
    !isPlaceholder(address) &&
    !linksElsewhere(element, page)
  )
    photos.add([{ address, width: null, height: null }], 'visible', attributeText(element, 'aria-label'));
  for (const name of namesOf(element, page.slices)) {
    addJson(element, name, page, photos);
    if (
      /^data-(zoom|large|full|src|original|hi-?res|big)/i.test(name) &&
      galleryName.test(`${attributeText(element, 'class')} ${name}`)
    ) {
      const sources = fromAttribute(name, longValue(element, name, page.slices), page.base).filter(
        (one) => !namesNoPhoto(one.address, element),
      );
      if (!linksElsewhere(element, page)) photos.add(sources, 'visible', '');
    }
  }
}

const maxJsonLength = 200_000;

function addJson(element: Element, name: string, page: PhotoPage, photos: PhotoSet): void {
  if (!name.startsWith('data-') && !name.startsWith(':')) return;
  const value = longValue(element, name, page.slices, maxJsonLength);
  if (value.length < 12 || !/^\s*[[{]/.test(value) || !/\.(jpe?g|png|webp|avif)/i.test(value)) return;
  if (!galleryName.test(`${name} ${attributeText(element, 'class')} ${attributeText(element, 'id')} ${tagOf(element)}`))
    return;
  const { values, sizes } = addressesInJson(value, page.base);
  const kept = (sources: PhotoSource[]) => sources.filter((source) => !namesNoPhoto(source.address, null));
  photos.add(kept(sizes), 'visible', '');
  for (const source of kept(values)) photos.add([source], 'visible', '');
}
