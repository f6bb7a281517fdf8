import { browser } from '../../browser/api';
import { selectWords, type WantedWords } from './select-words';

/** Shows words on a tab's page, as `selectWords` does; false too when the tab is gone or may not be asked any more. */
export async function showWords(tabId: number, wanted: WantedWords): Promise<boolean> {
  try {
    const [answer] = await browser.scripting.executeScript({ target: { tabId }, func: selectWords, args: [wanted] });
    return answer?.result === true;
  } catch {
    return false;
  }
}
