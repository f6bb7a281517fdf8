/**
 * What the manifest asks for, apart from the build so that tests hold it. Firefox has neither side panel nor
 * offscreen document: it gives a sidebar without a permission, and the panel itself runs the reader there.
 */
export const permissions = (browser: string): readonly string[] =>
  browser === 'firefox'
    ? ['activeTab', 'scripting', 'storage', 'unlimitedStorage', 'contextMenus']
    : ['activeTab', 'scripting', 'storage', 'unlimitedStorage', 'contextMenus', 'sidePanel', 'offscreen'];

/**
 * The shortcut does what a click on the toolbar's button does, the right to the tab included. Neither browser uses these
 * keys itself; the user can change them on the browser's own page for shortcuts.
 */
export const commands = { _execute_action: { suggested_key: { default: 'Alt+Shift+T' } } } as const;

/**
 * No code from elsewhere, no inline style. `wasm-unsafe-eval` is what WebAssembly needs; `https:` and `http:`
 * in connect-src are for photos of hosts that the user granted (the browser refuses the others by its cross-origin rules).
 */
export const contentSecurityPolicy = [
  "default-src 'self'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "worker-src 'self'",
  "connect-src 'self' blob: data: https: http:",
  "img-src 'self' blob: data:",
  "style-src 'self'",
  "object-src 'none'",
].join('; ');
