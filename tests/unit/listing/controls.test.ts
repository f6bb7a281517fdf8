import { describe, expect, it } from 'vitest';
import { findControls } from '../../../src/listing/page/controls';
import { gatheredOf, slices } from './gathered';

describe('what can be pressed', () => {
  const controls = async (body: string) => {
    const page = await gatheredOf(body);
    const { words, named } = await findControls(page.snapshot, page.area, slices());
    return [...words, ...(named ? ['named'] : [])].join(', ');
  };
  it.each([
    ['a button', '<button>Ask</button>', 'Ask'],
    ['a button by its role', '<div role="button">Ask</div>', 'Ask'],
    ['a link that looks like one', '<a class="btn-large" href="/x">Ask</a>', 'Ask'],
    ['a plain link', '<a href="/x">Ask</a>', ''],
    ['a button of a form by its value', '<input type="submit" value="Ask">', 'Ask'],
    ['a field', '<input type="text" value="Ask">', ''],
    ['one of a picture', '<input type="image" aria-label="Ask">', 'Ask'],
    ['one with a label for readers', '<button aria-label="Ask"></button>', 'Ask'],
    ['the same twice', '<button>Ask</button><button>Ask</button>', 'Ask'],
    ['nothing in it', '<button></button>', ''],
    ['a hidden one', '<button hidden>Ask</button>', ''],
    ['one of other pieces', '<div class="related"><button>Ask</button></div>', ''],
    ['sixty characters', `<button>${'a'.repeat(60)}</button>`, 'a'.repeat(60)],
    ['more of them', `<button>${'a'.repeat(61)}</button>`, ''],
    ['a form that sells', '<form action="/cart/add"></form>', 'named'],
    ['another form', '<form action="/search"></form>', ''],
    ['a link that sells', '<a class="add-to-bag" href="/x">Take it</a>', 'Take it, named'],
    ['a button that sells by its name', '<button name="place-bid">Go</button>', 'Go, named'],
    ['an element that is none', '<div class="add-to-cart">Ask</div>', ''],
  ])('%s', async (_, body, wanted) => {
    expect(await controls(body)).toBe(wanted);
  });

  it('is sixty words at most', async () => {
    const many = Array.from({ length: 61 }, (_, at) => `<button>Ask ${at}</button>`).join('');
    expect((await controls(many)).split(', ')).toHaveLength(60);
  });
});
