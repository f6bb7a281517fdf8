import { menu as german } from './de/menu';
import { menu as english } from './en/menu';
import type { Language } from './language';
import type { Widen } from './widen';

export type MenuWords = Widen<typeof english>;

/** A door of its own: the background shows two lines, and starts at every click without all other words. */
export const menuWords = (language: Language): MenuWords => (language === 'de' ? german : english);
