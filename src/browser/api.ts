import { browser as api } from 'wxt/browser';

/** The extension API with the plain types: the build tool's own need a generated folder to type-check. */
export const browser = api as unknown as typeof chrome;
