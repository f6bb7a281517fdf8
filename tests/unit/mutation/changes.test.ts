import { parseSync } from 'vite';
import { describe, expect, it } from 'vitest';
import { changesOf } from '../../mutation/changes';
import { draw, folders, mutantsOf } from '../../mutation/draw';
import { argued, staleArguments } from '../../mutation/equivalent';
import equivalents from '../../mutation/equivalents.json';
import { withCountedLoops } from '../../mutation/loops';
import { importersOf, testsOf } from '../../mutation/reach';
import { withSwitches } from '../../mutation/switches';
import type { SyntaxNode } from '../layout/source-files';

/** Every changed text that is made of a code. */
const changed = (code: string) =>
  changesOf(code, parseSync('a.ts', code).program as unknown as SyntaxNode).map(
    ({ start, end, text }) => code.slice(0, start) + text + code.slice(end),
  );

describe('changes of a program', () => {
  it('turn comparisons, move numbers and hold conditions', () => {
    expect(changed('if (a < 10) b();')).toEqual([
      'if (true || a < 10) b();',
      'if (false && a < 10) b();',
      'if (a <= 10) b();',
      'if (a >= 10) b();',
      'if (a < 11) b();',
      'if (a < 10) ;',
    ]);
    expect(changed('x = a ? 0.5 : !b;')).toEqual([
      ';',
      'x = (0.5);',
      'x = (!b);',
      'x = a ? 0.55 : !b;',
      'x = a ? 0.5 : b;',
    ]);
  });

  it('swap calls, signs and what joins conditions', () => {
    expect(changed('const x = a.some(b) && c.filter(d);')).toEqual([
      'const x = ((a.some(b)) || (c.filter(d)));',
      'const x = a.every(b) && c.filter(d);',
      'const x = a.some(b) && c;',
    ]);
    expect(changed("const x = a - b, y = a + 'b';")).toEqual([
      "const x = a + b, y = a + 'b';",
      "const x = a - b, y = a + '';",
    ]);
  });

  it('leave alone what runs no differently: types, addresses, keys and messages of thrown errors', () => {
    for (const code of [
      "import { a } from 'b';",
      "type A = 'b' | 1;",
      "const a = b as 'c';",
      "throw new TypeError('a');",
      'const a = { b: c }.b;',
      'const a = b.toString();',
    ])
      expect(changed(code)).toEqual([]);
  });

  it('are drawn by the seed alone, evenly over the folders', () => {
    const places = (seed: number) =>
      draw(['question', 'evidence'], 40, seed).map(({ path, start }) => `${path}:${start}`);
    expect(places(7)).toEqual(places(7));
    expect(places(7)).not.toEqual(places(8));
    expect(places(7).filter((place) => place.startsWith('src/question/')).length).toBe(20);
  });
});

describe('changes that wait behind numbers', () => {
  const program = (code: string) => parseSync('a.ts', code).program as unknown as SyntaxNode;
  const outcome = (code: string, on: number, reached = new Set<number>()): unknown => {
    const isOn = (id: number) => reached.add(id) && id === on;
    try {
      return new Function('on$', 'turn$', `${code}\nreturn of;`)(isOn, () => undefined)(7, { list: [3, 9, 1] });
    } catch (error) {
      return `threw ${(error as Error).name}`;
    }
  };

  it.each([
    'const of = (a, b) => (a < 10 && b.list.some((one) => one > 2) ? a - 1 : -a);',
    'const of = (a, b) => b.none?.list.filter((one) => one > 2).length ?? b.list.toSorted().filter((one) => one > a)[0];',
    'function of(a, b) { let sum = 0; for (const one of b.list) { if (one === 9) continue; sum += one; } if (sum > 3) return `x`; else if (!a) return "y"; return sum; }',
    'const step = 2; const of = (a, b) => { if (a > 5) if (b.list.length === step) return true; else a -= step; return a + 1; };',
    "const of = (a, b) => { switch (a) { case 7: a++; break; default: return 'x'.trim(); } return b.list.slice(1).map((one) => one * a); };",
  ])('happen as if the text were changed, one at a time: %s', (code) => {
    const changes = changesOf(code, program(code)).map((change, at) => ({ ...change, id: at + 1 }));
    const all = withSwitches('a.ts', code, changes);
    const reached = new Set<number>();
    expect(outcome(all, 0, reached)).toEqual(outcome(code, 0));
    for (const { id, start, end, text } of changes) {
      const alone = outcome(code.slice(0, start) + text + code.slice(end), 0);
      expect([id, outcome(all, id)]).toEqual([id, alone]);
      // What differs has been reached: no change that could be noticed is passed over as unreached.
      if (JSON.stringify(alone) !== JSON.stringify(outcome(code, 0))) expect(reached).toContain(id);
    }
  });
});

describe('changes that are argued to be equal', () => {
  it('stand in the program as argued, each with its reason', () => {
    expect(staleArguments()).toEqual([]);
    expect(folders.flatMap((folder) => mutantsOf(folder)).filter(argued).length).toBe(equivalents.length);
    for (const { because } of equivalents) expect(because).toMatch(/^[A-Z].{30,}\.$/);
  });
});

describe('what runs against a change', () => {
  it('is every test that imports the file by any way, the nearest first', () => {
    const tests = [
      'tests/unit/case/build.test.ts',
      'tests/unit/question/ask.test.ts',
      'tests/unit/span/algebra.test.ts',
    ];
    expect(testsOf('src/question/ask.ts', importersOf(), new Set(tests))).toEqual([
      'tests/unit/question/ask.test.ts',
      'tests/unit/case/build.test.ts',
    ]);
  });

  it('counts the turns of each loop, so that an endless one ends', () => {
    expect(withCountedLoops('a.ts', 'for (const a of b) { c(); } while (d) e();')).toBe(
      'for (const a of b) {turn$(); c(); } while (d) {turn$();e();}',
    );
  });
});
