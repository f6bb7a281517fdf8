import { inventedMakers } from './built-in';
import type { MakerFile } from './schema';

/**
 * The demo marketplace, and this machine itself, which serves it for the demonstration. The host is what stands behind
 * the last "@" and before the port: a name in front of it, or in the path, is no host.
 */
const demoHost =
  /^https?:\/\/(?:[^/?#\\]*@)?(?:(?:[a-z0-9-]+\.)*attic-arcade\.example|localhost|127(?:\.\d{1,3}){3}|\[::1\])(?::\d+)?(?:[/?#]|$)/i;

export const isDemoPage = (url: string): boolean => demoHost.test(url);

/**
 * The maker files for a page: those that the user brought, which stand last and win, and the invented ones on the demo
 * marketplace only. On a real page an invented maker would explain codes that it has nothing to do with.
 */
export const makersFor = (url: string, own: readonly MakerFile[]): MakerFile[] =>
  isDemoPage(url) ? [...inventedMakers(), ...own] : [...own];
