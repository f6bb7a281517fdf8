import { describe, expect, it } from 'vitest';
import { Slices, usualBudget } from '../../../src/listing/page/slices';
import { cleanJson } from '../../../src/listing/structured/clean-json';
import { parseJsonLd, readJsonLd } from '../../../src/listing/structured/json-ld';
import { readTolerantJson } from '../../../src/listing/structured/tolerant-json';
import { documentOf } from './page';

const read = (text: string, depth = 64) => JSON.stringify(readTolerantJson(text, depth)).slice(1, -1);

describe('JSON as people write it', () => {
  it.each([
    ['{"a":1}', '{"a":1}'],
    ['[1,"b",true,false,null,undefined,NaN]', '[1,"b",true,false,null,null,null]'],
    ['{"a":{"b":[{"c":2}]}}', '{"a":{"b":[{"c":2}]}}'],
    ['{a:1,b_2:two,$c:-3.5}', '{"a":1,"b_2":"two","$c":-3.5}'],
    ["{'a':'it''s'}", '{"a":"it\'\'s"}'],
    ['{`a`:`b`}', '{"a":"b"}'],
    ['{"a":1,,"b":2,}', '{"a":1,"b":2}'],
    ['{"a":1 "b":2}', '{"a":1,"b":2}'],
    ['{"a":"x"\n"b":"y"}', '{"a":"x","b":"y"}'],
    ["{'a':'x'\n'b':'y'}", '{"a":"x","b":"y"}'],
    ['{"a":"x" "b":"y"}', '{"a":"x\\" \\"b"}'],
    ['// one\n{"a":1}', '{"a":1}'],
    ['/* two */{"a":/*x*/1}', '{"a":1}'],
    ['/*{"b":1}*/{"a":1}', '{"a":1}'],
    ['// only a comment', ''],
    ['/* never ends {"a":1}', ''],
    ['{"a":1}// after', '{"a":1}'],
    ['{"a":"http://x.example"}', '{"a":"http://x.example"}'],
    ['{"a":1}{"b":2}', '{"a":1},{"b":2}'],
    ['{"a":[1,2', '{"a":[1,2]}'],
    ['{"a":"cut', '{"a":"cut"}'],
    [']}{"a":1}', '{"a":1}'],
    ['word 7 "text"', '"text"'],
    ['[01, 1e3, .5, 5., +2, 1e999, 0x10, 1-2]', '[1,1000,0.5,5,2,"1e999","0x10","1-2"]'],
    ['{"a":"t\\n\\t\\r\\b\\f\\"\\\\\\/\\q\\u0041\\u00e9\\uZZZZ\\u12"}', '{"a":"t\\n\\t\\r\\b\\f\\"\\\\/qAéuZZZZu12"}'],
    ['{"a":"end\\', '{"a":"end"}'],
    ['{"a":"a 12" record","b":1}', '{"a":"a 12\\" record","b":1}'],
    ['{"a":"he said "x", then "y" and left","b":1}', '{"a":"he said \\"x\\", then \\"y\\" and left","b":1}'],
    ['["x","y" , "z"]', '["x","y","z"]'],
    ['["x",-1,"y",{"z":1},"w",[2],"v",true,"u",null]', '["x",-1,"y",{"z":1},"w",[2],"v",true,"u",null]'],
    ['{"a":"x",b:1}', '{"a":"x","b":1}'],
    ['{"a":"x", word without colon"}', '{"a":"x\\", word without colon"}'],
    ['{"a":"x"/* c */,"b":2}', '{"a":"x","b":2}'],
    ['{"a":"x",/* c */"b":2}', '{"a":"x","b":2}'],
    ['{"a":"line\nbreak"}', '{"a":"line\\nbreak"}'],
    ['{"__proto__":{"x":1},"constructor":2,"prototype":3,"a":4}', '{"a":4}'],
    ['{1:2,true:3}', '{"1":2,"true":3}'],
    ['{"a":1;"b":2}', '{"a":1,"b":2}'],
    ['', ''],
  ])('%j is %s', (text, wanted) => {
    expect(read(text)).toBe(wanted);
  });

  it('leaves out levels below the deepest, and goes on behind them', () => {
    expect(read('[[[1],2],3]', 1)).toBe('[null,3]');
    expect(read('[[[1],2],3]', 2)).toBe('[[null,2],3]');
    expect(read('[[[1],2],3]', 3)).toBe('[[[1],2],3]');
    expect(read('{"a":{"b":{"c":1},"d":2},"e":3}', 1)).toBe('{"a":null,"e":3}');
    expect(read('[{"a":"x"},{"a":"y"}]', 1)).toBe('[null,null]');
  });

  it('looks ninety characters ahead for what follows a comma', () => {
    const key = (length: number) => `{"a":"x",${'k'.repeat(length)}:1}`;
    expect(read(key(41))).toBe(`{"a":"x","${'k'.repeat(41)}":1}`);
    expect(read(key(42))).toBe(`{"a":"x\\",${'k'.repeat(42)}:1}"}`);
    expect(read(`{"a":"x",${' '.repeat(40)}"b":1}`)).toBe('{"a":"x","b":1}');
    const missing = (length: number) => `{"a":"x"\n"${'k'.repeat(length)}":1}`;
    expect(read(missing(80))).toBe(`{"a":"x","${'k'.repeat(80)}":1}`);
    expect(read(missing(81))).not.toBe(`{"a":"x","${'k'.repeat(81)}":1}`);
  });
});

describe('what surrounds JSON in a script', () => {
  it.each([
    ['\uFEFF  {"a":1}  ', '{"a":1}'],
    ['{&quot;a&quot;:1}', '{"a":1}'],
    ['{"a":"&quot;"}', '{"a":"&quot;"}'],
    ['<!-- {"a":1} -->', '{"a":1}'],
    ['//<!--\n{"a":1}\n//-->', '{"a":1}'],
    ['<!-- by hand --> {"a":1}', '{"a":1}'],
    ['<![CDATA[{"a":1}]]>', '{"a":1}'],
    ['//<![CDATA[\n{"a":1}\n//]]>', '{"a":1}'],
    ['/*<![CDATA[*/{"a":1}/*]]>*/', '{"a":1}'],
    ['/* <![CDATA[ */{"a":1}/* ]]> */', '{"a":1}'],
    ['<![CDATA[{"a":1}]]&gt;', '{"a":1}'],
    ['{"a":"x --> y"}', '{"a":"x --> y"}'],
    ['{"a":"]]>"}', '{"a":"]]>"}'],
    ['window.x = {"a":1}', '{"a":1}'],
    ['var x={"a":1};', '{"a":1};'],
    ['let a.b_$1 = [1]', '[1]'],
    ['const x =\n {"a":1}', '{"a":1}'],
    ['x = 5', 'x = 5'],
    ['=[1]', '=[1]'],
    ['<!--<!--<!--<!--<!--{"a":1}', '<!--{"a":1}'],
  ])('%j is %j', (text, wanted) => {
    expect(cleanJson(text)).toBe(wanted);
  });
});

describe('one script', () => {
  it('says whether it had to be repaired', () => {
    expect(parseJsonLd(' {"a":1} ')).toEqual({ roots: [{ a: 1 }], repaired: false });
    expect(parseJsonLd('<!--{"a":1}-->')).toEqual({ roots: [{ a: 1 }], repaired: true });
    expect(parseJsonLd('{"a":1,}')).toEqual({ roots: [{ a: 1 }], repaired: true });
    expect(parseJsonLd('\uFEFF{"a":1}')).toEqual({ roots: [{ a: 1 }], repaired: false });
    expect(parseJsonLd('"words" null 7')).toBeNull();
    expect(parseJsonLd('')).toBeNull();
  });

  it('is named with its thousands of characters where it is too long to repair', async () => {
    const broken = `{"a":"${'x'.repeat(1_200_400)}",}`;
    const page = documentOf(`<script type="application/ld+json">${broken}</script>`);
    const { items, notes } = await readJsonLd([page], new Slices(usualBudget, undefined, () => 0));
    expect([items, notes]).toEqual([[], [{ code: 'data-too-long-to-repair', where: 'json-ld 1', count: 1200 }]]);
  });

  it('is repaired up to a million characters', () => {
    const broken = (length: number) => `{"a":"${'x'.repeat(length - 9)}",}`;
    expect(broken(1_000_000)).toHaveLength(1_000_000);
    expect(parseJsonLd(broken(1_000_000))?.repaired).toBe(true);
    expect(parseJsonLd(broken(1_000_001))).toBeNull();
  });
});
