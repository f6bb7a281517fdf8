/**
 * The extension's parts that answer messages. `page`, `pointing` and `shown-photo` are the scripts inside a web
 * page; they are asked per tab.
 */
export type Part = 'background' | 'panel' | 'full-page' | 'reader' | PagePart;
/** A script inside a page is asked by its tab; every other part by name alone. */
export type PagePart = 'page' | 'pointing' | 'shown-photo';

interface Route {
  handledBy: Part;
  sentBy: readonly Part[];
}

/**
 * Who handles each message, and who may send it; `protocol.ts` says what goes in and comes out. Apart from the schemas,
 * because the scripts inside the page hold to it too and have to stay small.
 */
export const routes = {
  'page.read': { handledBy: 'background', sentBy: ['panel'] },
  'page.mayRead': { handledBy: 'background', sentBy: ['panel'] },
  'photo.fetch': { handledBy: 'background', sentBy: ['panel'] },
  'reader.open': { handledBy: 'background', sentBy: ['panel', 'full-page'] },
  'photo.glance': { handledBy: 'reader', sentBy: ['panel', 'full-page'] },
  'photo.read': { handledBy: 'reader', sentBy: ['panel', 'full-page'] },
  'reader.renew': { handledBy: 'reader', sentBy: ['panel', 'full-page'] },
  'tab.granted': { handledBy: 'panel', sentBy: ['background'] },
  'listing.read': { handledBy: 'page', sentBy: ['background'] },
  'page.stands': { handledBy: 'page', sentBy: ['panel', 'background'] },
  'field.pick': { handledBy: 'pointing', sentBy: ['panel'] },
  'field.endPick': { handledBy: 'pointing', sentBy: ['panel'] },
  'photo.fetchInPage': { handledBy: 'page', sentBy: ['background'] },
  'photo.show': { handledBy: 'shown-photo', sentBy: ['background'] },
  'photo.stands': { handledBy: 'shown-photo', sentBy: ['background'] },
  'photo.unshow': { handledBy: 'shown-photo', sentBy: ['background'] },
} as const satisfies Record<string, Route>;

export type MessageName = keyof typeof routes;
/** Names of the messages that a part handles. */
export type HandledBy<P extends Part> = {
  [N in MessageName]: (typeof routes)[N]['handledBy'] extends P ? N : never;
}[MessageName];
