import ipaddr from 'ipaddr.js';

/**
 * The address under which a photo is asked for, or null where it must not be asked at all. Only http and https, without
 * user name and password; and never a host that only this machine or its network reaches, unless the page itself
 * stands on that very host: a page must not send the extension where only the user can go.
 *
 * A secure page's pictures are asked for securely, as the browser itself does for images (W3C Mixed Content, "Upgrade
 * mixed content": a host given as a number is not upgraded but blocked, so such an address is none here).
 */
export function addressToAsk(photoUrl: string, pageUrl: string): string | null {
  const photo = parse(photoUrl);
  const page = parse(pageUrl);
  if (!photo || !page) return null;
  if (withoutDot(photo.hostname) !== withoutDot(page.hostname) && isPrivateHost(photo.hostname)) return null;
  if (page.protocol === 'http:' || photo.protocol === 'https:') return photo.href;
  if (numberOf(photo.hostname) !== null) return null;
  photo.protocol = 'https:';
  return photo.href;
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

/** A name's closing dots say only that it is whole. */
const withoutDot = (hostname: string) => hostname.toLowerCase().replace(/\.{1,253}$/, '');

/** The number behind a host name as the URL parser gives it: octal, hexadecimal, short and single-number forms are dotted quads there. */
function numberOf(hostname: string): ReturnType<typeof ipaddr.parse> | null {
  const host = withoutDot(hostname).replace(/^\[(.*)\]$/, '$1');
  return ipaddr.isValid(host) ? ipaddr.parse(host) : null;
}

/**
 * Endings of names that stand for this machine or its own network. RFC 6761 (localhost), RFC 6762 (local, and the
 * endings that its appendix G saw in private use), RFC 8375 (home.arpa), ICANN's resolution of 29 July 2024 (internal).
 */
const privateEnding =
  /(^|\.)(localhost|localdomain|local|internal|lan|home|home\.arpa|intranet|private|corp|onion|in-addr\.arpa|ip6\.arpa)$/;

/** Services for the machine itself behind a number that is public by its range (from memory, no source). */
const machineServices: readonly string[] = ['168.63.129.16'];

/**
 * Whether a host is one that not everybody reaches: loopback, private, link-local (where clouds keep their metadata),
 * shared, reserved; IPv6 that carries an IPv4 number; a name without a dot. Which class a number belongs to is the
 * library's knowledge, after IANA's special-purpose registries. Of IPv6 only 2000::/3 is given out for all (RFC 4291).
 */
export function isPrivateHost(hostname: string): boolean {
  const number = numberOf(hostname);
  if (number !== null) {
    const forAll = number.kind() === 'ipv4' || number.match(ipaddr.parse('2000::'), 3);
    return !forAll || number.range() !== 'unicast' || machineServices.includes(number.toString());
  }
  const name = withoutDot(hostname);
  return !name.includes('.') || privateEnding.test(name);
}
