import type { TechniquePage } from '../reading';

const page = (inside: string, head = ''): string =>
  `<html lang="en"><head><title>T</title>${head}</head><body><main><h1>Ondrasse Palma Tote</h1>${inside}</main></body></html>`;
const styled = (styles: string[]): string =>
  page(styles.map((style, at) => `<p style="${style}">text ${at}</p>`).join(''));
const ruled = (rules: string): string =>
  page('<p class="a">alpha</p><p class="b">beta</p><p id="c">gamma</p>', `<style>${rules}</style>`);
const computed = (styles: Record<string, Record<string, string>>): TechniquePage => ({
  html: page(
    Object.keys(styles)
      .map((selector, at) => `<p class="${selector.slice(1)}">text ${at}</p>`)
      .join(''),
  ),
  styles,
});

/** What of a page meets the eye. */
export const looks: Record<string, TechniquePage> = {
  'hidden by style': styled([
    'display:none',
    'visibility: hidden',
    'visibility:collapse',
    'opacity:0',
    'opacity: 0.04;',
    'opacity:0.5',
    'opacity:0.0',
    'height:0;overflow:hidden',
    'width:0px; overflow:clip',
    'height:0',
    'overflow:hidden',
    'height:10px;overflow:hidden',
    'font-size:0',
    'font-size:0.5em',
    'text-indent:-999px',
    'text-indent:-99px',
  ]),
  'off the page by style': styled([
    'position:absolute;left:-9999px',
    'top:-100px',
    'left:-99px',
    'clip:rect(0 0 0 0)',
    'clip: rect( 1px',
    'clip-path:inset(50%)',
    'clip-path: inset( 100%',
    'clip-path:inset(10%)',
  ]),
  'hidden by attributes and names': page(
    '<p hidden>one</p><dialog>two</dialog><dialog open>three</dialog><p class="sr-only">four</p><p class="x visually-hidden y">five</p><p class="screen-reader-text">six</p><p class="offscreen">seven</p><p class="sr-onlyish">eight</p><del>nine</del><s>ten</s><strike>eleven</strike><p style="text-decoration: red line-through">twelve</p>',
  ),
  'blocks, breaks and cells': page(
    '<span style="display:block">one</span><span style="display:grid">two</span><b>three</b><i>four</i>five<br>six<table><tr><td>seven</td><th>eight</th></tr></table><pre>nine\n  ten</pre><p style="white-space:pre">eleven\ntwelve</p><p style="white-space:break-spaces">a\nb</p><p>thirteen\nfourteen   fifteen&nbsp;&nbsp;x</p>',
  ),
  'joints between elements': page(
    '<p><b>Brand</b><b>Ondrasse</b></p><p><b>Size:</b><b>(large)</b></p><p><b>Depth</b><b>17</b></p><p><b>A1</b><b>b2</b></p><p><b>12</b><sup>99</sup></p><p><b>12</b><sup>999</sup></p><p><b>x</b><sup>99</sup></p><p><b>d</b><b>7</b></p><p><b>end.</b><b>Next</b></p><p><b>a</b> <b>b</b></p><p><b>no</b><b>word</b></p>',
  ),
  'rules of the page': ruled('.a { display:none } /* .b { display:none } */ #c { color:red }'),
  'rules with a state, and an unfinished one': ruled(
    '@media screen { .b { color:red } } .b:hover { display:none } .b::before { display:none } #c { display:none',
  ),
  'a rule within a rule, and an unfinished comment': ruled(
    '@media screen { .a { visibility:hidden } .b { color:red } } /* #c { display:none }',
  ),
  'rules of every telling kind': page(
    '<p class="r0">zero</p><p class="r1">one</p><p class="r2">two</p><p class="r3">three</p><p class="r4">four</p><p class="r5">five</p>',
    '<style>.r0{text-decoration:line-through}.r1{font-size:0}.r2{white-space:pre}.r3{left:-999px}.r4{height:0}.r4{overflow:hidden;height:0}.r5{margin:0;opacity:0}</style><style>.r2{color:red}</style>',
  ),
  'a selector that is none, too long, or of a state': ruled(
    `..a{display:none} ${'p,'.repeat(150)}.b{display:none} #c:not(.x){display:none} .a{${'x'.repeat(990)};display:none}`,
  ),
  'four hundred rules and more': page(
    '<p class="a">alpha</p><p class="b">beta</p>',
    `<style>${'.z{display:none}'.repeat(398)}.y{display:none}.a{display:none}.b{display:none}</style>`,
  ),
  'computed: hidden': computed({
    '.a': { display: 'none' },
    '.b': { visibility: 'hidden' },
    '.c': { opacity: '0.04' },
    '.d': { opacity: '0.05' },
    '.e': { overflow: 'hidden', height: '0px' },
    '.f': { overflow: 'clip', width: '0px' },
    '.g': { overflow: 'hidden', height: '1px' },
    '.h': { height: '0px' },
    '.i': { display: 'inline', overflow: 'hidden', height: '0px' },
    '.j': { 'font-size': '0px' },
    '.k': { 'text-indent': '-900px' },
    '.l': { 'text-indent': '-899px' },
  }),
  'computed: off the page': computed({
    '.a': { position: 'absolute', left: '-900px' },
    '.b': { position: 'fixed', top: '-2000px' },
    '.c': { position: 'absolute', left: '-899px' },
    '.d': { position: 'absolute', left: '900px' },
    '.e': { position: 'relative', left: '-900px' },
    '.f': { position: 'absolute', width: '1px', height: '1px' },
    '.g': { position: 'absolute', width: '1px', height: '2px' },
    '.m': { position: 'absolute', width: '2px', height: '1px' },
    '.h': { position: 'absolute', clip: 'rect(0px, 0px, 0px, 0px)' },
    '.i': { position: 'absolute', 'clip-path': 'inset(50%)' },
    '.j': { position: 'absolute', right: '-901px' },
    '.k': { position: 'absolute', clip: 'rect(1px 1px 1px 1px)' },
    '.l': { position: 'absolute', 'clip-path': 'inset(100%)' },
  }),
  'computed: struck, inline, lines kept': {
    html: page(
      '<p class="a">one</p><b class="b">two</b><b class="c">three</b><b class="d">four</b><b>five</b><u class="e">six\nseven</u><u class="f">eight\nnine</u><s class="b">ten</s>',
    ),
    styles: {
      '.a': { 'text-decoration-line': 'underline line-through' },
      '.b': { display: 'inline' },
      '.c': { display: 'inline-block' },
      '.d': { display: 'contents' },
      '.e': { 'white-space': 'pre-line' },
      '.f': { 'white-space-collapse': 'preserve' },
    },
  },
  'text that is cut and trimmed': page(`<p>  ${'long '.repeat(5)}  </p><p>${'y'.repeat(20_001)}</p>`),
  'a shadow tree that is written down': page(
    '<x-card><template shadowrootmode="open"><p>in shadow</p><slot></slot><slot name="end">own</slot><slot name="none">fallback</slot></template>light <b slot="end">slotted</b><i slot="other">nowhere</i></x-card>',
  ),
  'silent elements': page(
    '<script>one</script><style>two</style><template>three</template><noscript>four</noscript><textarea>five</textarea><select><option>six</option></select><svg><text>seven</text></svg><math>eight</math><object>nine</object><canvas>ten</canvas><audio>a</audio><video>b</video>end',
  ),
  'frames of other sites': {
    html: page(
      '<iframe src="https://frames.example/desc" class="item-description"></iframe><iframe src="https://frames.example/read" title="details"></iframe><iframe src="https://ads.example/x" class="advert"></iframe><iframe src="https://frames.example/big" height="200" width="600"></iframe><iframe src="https://frames.example/small" height="199" width="600"></iframe><iframe src="https://frames.example/ad" height="250" width="300"></iframe><iframe src="https://frames.example/map" name="content"></iframe><div id="description-holder"><iframe src="https://frames.example/held"></iframe></div><iframe src="https://frames.example/hid" class="text" hidden></iframe><iframe src="about:blank" class="text"></iframe><footer><iframe src="https://frames.example/foot" class="text"></iframe></footer>',
    ),
    frameTexts: {
      'https://frames.example/read': `  Read with leave. ${'w '.repeat(40)}`,
      'https://ads.example/x': 'An advertisement',
    },
  },
  'a large frame where the page has a description': page(
    '<div class="description">A long description of the bag, which is tan.</div><iframe src="https://frames.example/big" height="200" width="600"></iframe>',
  ),
};
