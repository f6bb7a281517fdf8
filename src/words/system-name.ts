/** What a code system is called: its id in the maker's file, as words. */
export const systemName = (id: string): string => id.replaceAll('-', ' ');
