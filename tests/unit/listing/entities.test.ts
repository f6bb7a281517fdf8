import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { decodeEntities, plainText, tidyText } from '../../../src/listing/structured/entities';

/** What shops write into data; their meaning is taken from a parser of the HTML Standard. */
const names = [
  'amp lt gt quot apos nbsp ensp emsp thinsp ndash mdash hellip lsquo rsquo ldquo rdquo laquo raquo euro pound yen cent copy reg',
  'trade deg times middot bull frac12 frac14 frac34 sup2 sup3 prime Prime szlig agrave aacute acirc atilde auml aring aelig ccedil',
  'egrave eacute ecirc euml igrave iacute icirc iuml ntilde ograve oacute ocirc otilde ouml oslash ugrave uacute ucirc uuml',
  'Agrave Aacute Auml Ccedil Egrave Eacute Ouml Uuml oelig',
].flatMap((line) => line.split(' '));
const parsed = (text: string): string => parseHTML(`<p>${text}</p>`).document.querySelector('p')?.textContent ?? '';

describe('character references', () => {
  it.each(names)('decodes &%s; as the standard names it', (name) => {
    expect(decodeEntities(`a&${name};b`)).toBe(parsed(`a&${name};b`));
    expect(decodeEntities(`a&${name};b`)).not.toContain(`&${name}`);
  });

  it.each([
    ['&#65;', 'A'],
    ['&#x41;', 'A'],
    ['&#X1f45c;', '👜'],
    ['&#65', 'A'],
    ['&#1114111;', '\u{10ffff}'],
    ['&#1114112;', '&#1114112;'],
    ['&#0;', '&#0;'],
    ['&#1;', '\u0001'],
    ['&#xd7ff;', '\ud7ff'],
    ['&#xd800;', '&#xd800;'],
    ['&#xdfff;', '&#xdfff;'],
    ['&#xe000;', '\ue000'],
    ['&amp;lt;', '&lt;'],
    ['&euro', '&euro'],
    ['&unknown;', '&unknown;'],
    ['&constructor;', '&constructor;'],
    ['R&D & co', 'R&D & co'],
    ['no reference', 'no reference'],
  ])('reads %j as %j', (text, wanted) => {
    expect(decodeEntities(text)).toBe(wanted);
  });
});

describe('plain text of data', () => {
  it.each([
    ['a<br>b<br/>c', 'a\nb\nc'],
    ['<p>a</p><div>b</div><li>c</li>', 'a\n\nb\n\nc'],
    ['a<script>x()</script>b<style>p{}</style>c', 'a b c'],
    ['a <b class="x">bold</b> word', 'a bold word'],
    ['a<!-- gone -->b', 'ab'],
    ['2 < 3 and 5 > 4', '2 < 3 and 5 > 4'],
    ['&lt;b&gt;kept&lt;/b&gt;', '<b>kept</b>'],
    ['  a \t b  ', 'a b'],
    ['a\r\nb\rc', 'a\nb\nc'],
    ['a \n b', 'a\nb'],
    ['a\n\n\n\nb', 'a\n\nb'],
    ['a\n\nb', 'a\n\nb'],
  ])('of %j is %j', (value, wanted) => {
    expect(plainText(value)).toBe(wanted);
  });

  it('is at most as long as wanted, and looks at no more than twice that', () => {
    expect(plainText('abcdef', 3)).toBe('abc');
    expect(plainText(`${'<b>'.repeat(2)}abc`, 3)).toBe('');
    expect(plainText('x'.repeat(20_001))).toHaveLength(20_000);
    expect(plainText('  a', 2)).toBe('a');
  });

  it('keeps spaces that do not break', () => {
    expect(tidyText('5\u00A0cm\u2009x\u202Fy   z')).toBe('5\u00A0cm\u2009x\u202Fy z');
  });
});
