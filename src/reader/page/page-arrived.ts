/** What is asked of a document while it comes in. */
export interface ComingPage {
  readyState(): DocumentReadyState;
  /** Elements that have come so far. */
  size(): number;
  /** Ends after a moment, or earlier when the document says that it is further. */
  look(): Promise<void>;
}

/** Looks after which a page is read as it stands, and looks without anything new after which it is taken to hang. */
const mostLooks = 24;
const mostStill = 8;

/**
 * Waits until a page's source has come and its scripts had a moment. A page may never end: counted looks bound the
 * waiting. False when it was still coming.
 */
export async function untilArrived(page: ComingPage): Promise<boolean> {
  let [size, still] = [-1, 0];
  for (let looks = 0; looks < mostLooks && still < mostStill; looks += 1) {
    if (page.readyState() !== 'loading') {
      if (page.readyState() === 'interactive') await page.look();
      return true;
    }
    still = page.size() === size ? still + 1 : 0;
    size = page.size();
    await page.look();
  }
  return page.readyState() !== 'loading';
}

const lookMs = 250;

/** The page that this script runs in. */
export const thisPage: ComingPage = {
  readyState: () => document.readyState,
  size: () => document.getElementsByTagName('*').length,
  look: () =>
    new Promise((resume) => {
      const end = () => {
        clearTimeout(timer);
        document.removeEventListener('readystatechange', end);
        resume();
      };
      const timer = setTimeout(end, lookMs);
      document.addEventListener('readystatechange', end);
    }),
};
