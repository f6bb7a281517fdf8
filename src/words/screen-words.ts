import type { screens as english } from './en/screens';
import type { Widen } from './widen';

/** Every word of the screens, as each language has to have it. */
export type ScreenWords = Widen<typeof english>;
