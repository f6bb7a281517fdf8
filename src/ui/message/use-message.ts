import { useState } from 'preact/hooks';
import type { Case } from '../../case';
import type { Question } from '../../question/types';

/** What the buyer did with the questions; what is not named here is as the tool proposes it. */
interface Choices {
  left: ReadonlySet<string>;
  order: readonly string[];
  reworded: ReadonlyMap<string, string>;
  own: readonly string[];
}
const untouched: Choices = { left: new Set(), order: [], reworded: new Map(), own: [] };

export interface MessageDraft {
  /** All questions, in the buyer's order. */
  questions: Question[];
  /** Those that go into the message, in order. */
  asked: Question[];
  own: readonly string[];
  reworded: ReadonlyMap<string, string>;
  isAsked: (id: string) => boolean;
  tick: (id: string, asked: boolean) => void;
  moveUp: (id: string) => void;
  /** Null takes the buyer's words back. */
  reword: (id: string, words: string | null) => void;
  addOwn: (words: string) => void;
  removeOwn: (at: number) => void;
}

/** The message as the buyer wants it: which questions, in which order and words. Reading again keeps all of it. */
export function useMessage({ questions }: Pick<Case, 'questions'>): MessageDraft {
  const [{ left, order, reworded, own }, setChoices] = useState(untouched);
  const change = (next: Partial<Choices>) => setChoices((now) => ({ ...now, ...next }));
  const placeOf = ({ id }: Question) => (order.includes(id) ? order.indexOf(id) : order.length);
  const sorted = questions
    .map((one, at) => ({ one, at }))
    .sort((a, b) => placeOf(a.one) - placeOf(b.one) || a.at - b.at);
  const inOrder = sorted.map(({ one }) => one);
  return {
    questions: inOrder,
    asked: inOrder.filter(({ id }) => !left.has(id)),
    own,
    reworded,
    isAsked: (id) => !left.has(id),
    tick(id, asked) {
      const next = new Set(left);
      if (asked) next.delete(id);
      else next.add(id);
      change({ left: next });
    },
    moveUp(id) {
      const ids = inOrder.map((one) => one.id);
      const at = ids.indexOf(id);
      if (at <= 0) return;
      ids.splice(at - 1, 2, id, ids[at - 1] as string);
      change({ order: ids });
    },
    reword(id, words) {
      const next = new Map(reworded);
      if (words === null || words.trim() === '') next.delete(id);
      else next.set(id, words);
      change({ reworded: next });
    },
    addOwn: (words) => change({ own: [...own, words.replace(/\s+/g, ' ').trim()] }),
    removeOwn: (at) => change({ own: own.filter((_, index) => index !== at) }),
  };
}
