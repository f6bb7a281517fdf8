// @vitest-environment jsdom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { beforeEach, expect, test, vi } from 'vitest';
import { draftOf } from '../../../src/maker';
import { Editor } from '../../../src/ui/makers/Editor';

/** The watch list needs a browser; no case stands behind these files. */
vi.mock('../../../src/ui/in-watch-list', () => ({ inWatchList: async () => ({ ok: false }) }));

let room: HTMLElement;
beforeEach(() => {
  document.body.replaceChildren();
  room = document.body.appendChild(document.createElement('div'));
});

async function edit(value: Record<string, unknown>): Promise<void> {
  await act(() => render(<Editor fileId="f" draft={draftOf(value)} onChange={() => undefined} />, room));
}
const listed = () => [...room.querySelectorAll<HTMLButtonElement>('summary + .field-problems button')];
/** Goes to a place of the list and says which place the focus is at then. */
async function goTo(words: string): Promise<string | undefined> {
  const button = listed().find(({ textContent }) => textContent === words);
  if (!button) throw new Error(`"${words}" is not among: ${listed().map(({ textContent }) => textContent)}`);
  button.focus();
  await act(() => button.click());
  return document.activeElement?.closest<HTMLElement>('[data-place]')?.dataset.place;
}

const faulty = {
  format: 2,
  maker: '',
  sources: [7],
  stamped: { from: '19', to: null, sources: ['ledger'] },
  plants: [
    {
      code: 'QA',
      place: 'Portugal',
      used: [
        ['1990', '99'],
        ['2004', null],
      ],
    },
  ],
  codeSystems: [
    {
      id: 'a',
      used: ['1990', null],
      layout: [{ plant: 2 }, { year: 'cycle', letters: 'AB-', first: 1990 }, { check: 'mod11', weights: [1, 'x'] }],
      examples: [],
    },
  ],
  models: [{ name: 'Tote', runs: [{ size: { width: -1, unit: 'cm', tolerance: 1 } }], parts: ['Wheel'] }],
  carriers: [{ kind: 'tab', where: '' }],
  prices: [{ condition: 'new', least: 100, currency: 'euros', year: 2020 }],
  colour: 'red',
};

test('each thing to correct leads to its own field, a folded slot being opened for it', async () => {
  await edit(faulty);
  const places = {
    maker: 'maker',
    'source 1': 'sources',
    'stamping, from': 'stamped.from',
    'workshop 1, country': 'plants[0].place',
    'workshop 1, period 1, last date': 'plants[0].used[0][1]',
    'code system 1, slot 2, letters': 'codeSystems[0].layout[1].letters',
    'code system 1, slot 3, weight 2': 'codeSystems[0].layout[2].weights',
    'code system 1, examples': 'codeSystems[0].examples',
    'model 1, part 1': 'models[0].parts',
    'model 1, row 1, size, width': 'models[0].runs[0].size.width',
    'place of the code 1, where it sits': 'carriers[0].where',
    'price 1, currency': 'prices[0].currency',
  };
  const found: Record<string, string | undefined> = {};
  for (const words of Object.keys(places)) found[words] = await goTo(words);
  expect(found).toEqual(places);
});

test('what the screen has no field for is told, and leads nowhere', async () => {
  await edit(faulty);
  const list = room.querySelector('summary + .field-problems')?.textContent;
  expect(list).toContain('"colour" is not a field here');
  await edit({ ...faulty, format: 3 });
  expect(room.querySelector('summary + .field-problems')?.textContent).toContain('format: ');
  expect(listed().map(({ textContent }) => textContent)).not.toContain('format');
});
