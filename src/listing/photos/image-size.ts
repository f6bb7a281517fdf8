/** Size words in addresses: what they say of the picture's width, and the address without them. */
const sizeTokens: readonly RegExp[] = [
  /[_-](\d{2,4})x(\d{2,4})(?=[._/-]|$)/i,
  /[_-](\d{2,4})x(?=[._]|$)/i,
  /\/(\d{2,4})x(\d{2,4})(?=\/|$)/i,
  /\/(?:w|width)[_=/-](\d{2,4})(?:[,/](?:h|height)[_=-](\d{2,4}))?(?:,[a-z]+_[\w:.]+)*(?=\/)/i,
  /[_-]w(\d{3,4})(?=[._-]|$)/i,
  /\/s-l(\d{2,4})(?=\.)/i,
  /[_-](\d{3,4})(?:px|w)(?=[._]|$)/i,
  /@(\d)x(?=\.)/i,
];
const sizeWords =
  /([_-]|\/)(thumb(?:nail)?s?|mini|tiny|small|sm|medium|med|md|large|lg|xl|xxl|zoom|full|original|orig|big|hd|preview|grande|compact|master|gross|gro%C3%9F|grand|groot|klein|petit)(?=[._/&-]|$)/gi;
/** Rank of a size word, for pictures whose width is not known: larger is larger. */
const wordRank: Record<string, number> = {
  tiny: 40,
  mini: 60,
  thumb: 100,
  thumbnail: 100,
  thumbs: 100,
  thumbnails: 100,
  compact: 160,
  sm: 200,
  small: 200,
  preview: 240,
  med: 400,
  md: 400,
  medium: 400,
  lg: 800,
  large: 800,
  grande: 800,
  big: 900,
  xl: 1200,
  hd: 1400,
  xxl: 1600,
  zoom: 1600,
  full: 1800,
  master: 1900,
  orig: 2000,
  original: 2000,
  gross: 900,
  'gro%c3%9f': 900,
  grand: 900,
  groot: 900,
  klein: 200,
  petit: 200,
};
const sizeQuery =
  /^(w|h|width|height|wid|hei|size|sz|s|q|quality|qlt|dpr|fit|crop|resize|format|fm|fmt|auto|scale|imwidth|imheight|maxwidth|op_sharpen|sw|sh|sm|v|ts|t|rect|bg|bgc)$/i;

/** Width that an address tells, exactly (`w=800`, `_800x600`) or by rank of a word ("thumb", "large"); null when none. */
export function widthFromAddress(address: string): { width: number; exact: boolean } | null {
  const url = new URL(address);
  for (const name of ['w', 'width', 'wid', 'imwidth', 'sw', 'maxwidth']) {
    const value = Number(url.searchParams.get(name));
    if (value >= 16 && value <= 20_000) return { width: value, exact: true };
  }
  for (const token of sizeTokens) {
    const value = Number(token.exec(url.pathname)?.[1]);
    if (value >= 16) return { width: value, exact: true };
  }
  const words = [...`${url.pathname}${url.search}`.matchAll(sizeWords)].map(
    (match) => wordRank[(match[2] as string).toLowerCase()] as number,
  );
  return words.length > 0 ? { width: Math.max(...words), exact: false } : null;
}

/** What stays of an address when sizes, formats and versions are taken off: equal for all versions of one photo. */
export function photoKey(address: string): string {
  const url = new URL(address);
  let path = url.pathname;
  for (const token of sizeTokens) path = path.replace(token, '');
  path = path
    .replace(sizeWords, '')
    .replace(/\.(jpe?g|png|webp|avif|gif)(?=$|\.)/gi, '')
    .replace(/\/{2,}/g, '/');
  const query = [...url.searchParams]
    .filter(
      ([name, value]) =>
        !sizeQuery.test(name) && !/^(?:[\w-]*-)?(?:thumb|small|medium|large|xl|xxl|full|big)$/i.test(value),
    )
    .map(([name, value]) => `${name}=${value}`);
  return `${url.hostname}${path}?${query.sort().join('&')}`.toLowerCase();
}
