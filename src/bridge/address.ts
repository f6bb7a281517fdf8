/**
 * Whether a photo's address may be asked for. Only http and https; and never a private, loopback or link-local
 * address or a single-label name, unless the page itself came from that very host: a page must not send the
 * extension into a network that only the user can reach. A public name that resolves to a private address cannot be
 * seen from here; the browser's own network-access rules have to hold there.
 * Ranges: RFC 1918, RFC 6598 (100.64/10), RFC 3927 (169.254/16), RFC 1122 (127/8, 0/8), RFC 4193 (fc00::/7),
 * RFC 4291 (::1, fe80::/10, IPv4-mapped).
 */
export function addressIsAllowed(photoUrl: string, pageUrl: string): boolean {
  const photo = parse(photoUrl);
  const page = parse(pageUrl);
  if (!photo || !page) return false;
  return photo.hostname === page.hostname || !isPrivateHost(photo.hostname);
}

/** Whether a photo was made by the page itself (`blob:`): such an address leads nowhere but into that page. */
export function isMadeByThePage(photoUrl: string, pageUrl: string): boolean {
  if (!photoUrl.startsWith('blob:') || !URL.canParse(photoUrl)) return false;
  const page = parse(pageUrl);
  return page !== null && new URL(photoUrl).origin === page.origin;
}

function parse(url: string): URL | null {
  if (!URL.canParse(url)) return null;
  const parsed = new URL(url);
  if (parsed.protocol !== 'http:' && parsed.protocol !== 'https:') return null;
  return parsed.username || parsed.password ? null : parsed;
}

/** `hostname` as the URL parser gives it: numbers in any notation are already dotted quads. */
export function isPrivateHost(hostname: string): boolean {
  const host = hostname.toLowerCase().replace(/\.$/, '');
  if (host.startsWith('[')) return isPrivateIpv6(host.slice(1, -1));
  if (/^\d+\.\d+\.\d+\.\d+$/.test(host)) return isPrivateIpv4(host.split('.').map(Number));
  return !host.includes('.') || /\.(localhost|local|internal|lan|home|home\.arpa|intranet|corp|onion)$/.test(host);
}

function isPrivateIpv4([a = 0, b = 0]: number[]): boolean {
  if (a === 0 || a === 10 || a === 127 || a >= 224) return true;
  if (a === 100) return b >= 64 && b < 128;
  if (a === 169) return b === 254;
  if (a === 172) return b >= 16 && b < 32;
  return (a === 192 && b === 168) || (a === 198 && (b === 18 || b === 19));
}

function isPrivateIpv6(host: string): boolean {
  if (host === '::' || host === '::1') return true;
  // IPv4 inside IPv6 (mapped, compatible, NAT64) hides the real address: refused as a whole.
  if (host.startsWith('::') || host.startsWith('64:ff9b:')) return true;
  return /^(f[cd]|fe[89ab]|fec|ff)/.test(host);
}
