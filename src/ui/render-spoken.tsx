import { render, type VNode } from 'preact';
import { onKeptLanguage, readLanguage } from '../store/language-setting';
import { chooseLanguage, chosenLanguage, onLanguage } from '../words';

/**
 * Draws a screen in the language that was chosen, and anew when another one is: what the screen holds stays, its words
 * change. `make` gives a new node each time, so that nothing is passed over as unchanged.
 */
export async function renderSpoken(make: () => VNode, room: Element): Promise<void> {
  const draw = () => {
    document.documentElement.lang = chosenLanguage();
    render(make(), room);
  };
  chooseLanguage(await readLanguage());
  onLanguage(draw);
  onKeptLanguage(chooseLanguage);
  draw();
}
