/** How many photos were read from copies, and how many of those are smaller than the listing's own. */
export interface Copies {
  all: number;
  small: number;
}

/** What the screens say of photos that were read from copies: pictures of the page, or smaller versions. */
export const copiesStrings = {
  small: 'small copy',
  smallOf: (width: number, largest: number) => `small copy, ${width} of ${largest} pixels wide`,
  /** At full size, and still only as the page shows it. */
  fromPage: 'copy from the page',
  part: 'copy of the part that the page shows',
  /** The end of "Page and 2 photos read": nothing where no copy was read. */
  among({ all, small }: Copies, read: number): string {
    if (all === 0) return '';
    const kind = small === all ? 'small ' : '';
    if (all < read) return `, ${all} of them from ${all === 1 ? `a ${kind}copy` : `${kind}copies`} on the page`;
    return all === 1 ? `, from a ${kind}copy on the page` : `, all from ${kind}copies on the page`;
  },
  notJudged: (count: number) =>
    count === 1
      ? 'read from a copy on the page. Its size and sharpness are the copy’s own: they are not judged, and no larger photo is asked for.'
      : 'read from copies on the page. Their size and sharpness are the copies’ own: they are not judged, and no larger photos are asked for.',
  title: (count: number) =>
    count === 1 ? 'A photo was read from a small copy' : `${count} photos were read from small copies`,
  /** `largest` and `copy` are widths in pixels, null where they are not known. */
  offer: (hosts: string, widths: { largest: number; copy: number } | null) =>
    widths === null
      ? `The full size is on ${hosts}. The browser gives it out only if you allow that address; until then the copy on the page is read.`
      : `The full size, ${widths.largest} pixels wide, is on ${hosts}. The browser gives it out only if you allow that address; until then the copy on the page is read, ${widths.copy} pixels wide.`,
  limits: 'Only this address, only to read the listing. You can take it back in the browser’s settings for extensions.',
  stay: 'Stay with the copies',
  stayed: 'Read from small copies.',
} as const;
