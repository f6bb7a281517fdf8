import { browser } from '../../browser/api';
import { injectionProblem } from '../../browser/compat';
import { fail, problem, type Result, succeed } from '../../problem';
import { inTime } from '../in-time';

/** Far more than any page that a person reads; what is beyond it is not read, and the reader says what it found. */
const mostCharacters = 8_000_000;
const mostWaitMs = 15_000;

/** A page's source as it stands now, with its address and title. */
export interface PageSource {
  html: string;
  address: string;
}

/**
 * Takes the source of the page that a tab shows, without the script that reads listings: this one does nothing else. It
 * needs the same right to the tab, given by the click on the toolbar button.
 */
export async function readPageSource(tabId: number): Promise<Result<PageSource>> {
  try {
    const taking = browser.scripting.executeScript({ target: { tabId }, func: sourceOf, args: [mostCharacters] });
    const [answer] = await inTime(mostWaitMs, taking, 'late');
    if (answer?.result) return succeed(answer.result);
    return fail(nothing);
  } catch (error) {
    return fail(injectionProblem(error));
  }
}

const nothing = problem('page-empty', 'tab');

/** Runs in the page, by itself: it may use nothing that stands outside of it. */
function sourceOf(most: number): { html: string; address: string } {
  const root = document.querySelector('html');
  return { html: (root?.outerHTML ?? '').slice(0, most), address: location.href };
}
