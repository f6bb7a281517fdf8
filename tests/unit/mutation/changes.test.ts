import { parseSync } from 'vite';
import { describe, expect, it } from 'vitest';
import { changesOf } from '../../mutation/changes';
import { draw, folders, mutantsOf } from '../../mutation/draw';
import { argued, staleArguments } from '../../mutation/equivalent';
import equivalents from '../../mutation/equivalents.json';
import { withCountedLoops } from '../../mutation/loops';
import { importersOf, testsOf } from '../../mutation/reach';
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
      'for (const a of b) {globalThis.turn?.(); c(); } while (d) {globalThis.turn?.();e();}',
    );
  });
});
