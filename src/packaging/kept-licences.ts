/*
 * Texts of licences that no installed package brings along. Each was copied from the place that stands beside it, as it
 * stood there.
 */
export interface KeptText {
  name: string;
  licence: string;
  file: string;
}

const kept = (name: string, licence: string, file: string): KeptText => ({ name, licence, file });

/** For packages of the registry that hold none themselves. */
export const keptTexts: Record<string, KeptText> = {
  // LICENSE of the same release's package for Python, 1.30.0: the packages for JavaScript hold none.
  'onnxruntime-web': kept('onnxruntime-web', 'MIT', 'onnxruntime.txt'),
  'onnxruntime-common': kept('onnxruntime-common', 'MIT', 'onnxruntime.txt'),
  // The registry's own packages 6.0.3, 1.5.1 and 1.2.1.
  buffer: kept('buffer', 'MIT', 'buffer.txt'),
  'base64-js': kept('base64-js', 'MIT', 'base64-js.txt'),
  ieee754: kept('ieee754', 'BSD-3-Clause', 'ieee754.txt'),
  // LICENSE of github.com/wxt-dev/wxt.
  wxt: kept('wxt', 'MIT', 'wxt.txt'),
  '@wxt-dev/browser': kept('@wxt-dev/browser', 'MIT', 'wxt.txt'),
  '@tesseract.js-data/eng': kept('@tesseract.js-data/eng', 'Apache-2.0', 'trained-data.txt'),
};

const emscripten = [
  // LICENSE and system/lib/libc/musl/COPYRIGHT of github.com/emscripten-core/emscripten; what the build leaves out is cut.
  kept('emscripten', 'MIT', 'emscripten.txt'),
  kept('musl', 'MIT', 'musl.txt'),
];

/** What is compiled into a package's WASM, by package. */
export const compiledIn: Record<string, readonly KeptText[]> = {
  // The libraries are those that build.sh of github.com/naptha/tesseract.js-core builds.
  'tesseract.js-core': [
    // The package's own licence is Tesseract's. Debian 12, liblept5: copyright.
    kept('leptonica', 'BSD-2-Clause', 'leptonica.txt'),
    // Heads of zlib.h 1.2.13 and png.h 1.6.39.
    kept('zlib', 'Zlib', 'zlib.txt'),
    kept('libpng', 'libpng-2.0', 'libpng.txt'),
    // Debian 12, libjpeg-dev: README.ijg, "Legal issues".
    kept('libjpeg', 'IJG', 'libjpeg.txt'),
    // Debian 12, libtiff6, libwebp7 and libgif7: copyright, without what is about Debian's own files.
    kept('libtiff', 'libtiff', 'libtiff.txt'),
    kept('libwebp', 'BSD-3-Clause', 'libwebp.txt'),
    kept('giflib', 'MIT', 'giflib.txt'),
    // LICENSE.md of github.com/JuliaMath/openlibm, without the tests' part.
    kept('openlibm', 'MIT, ISC, BSD-2-Clause', 'openlibm.txt'),
    ...emscripten,
  ],
  // The package's own licence is libheif's, whose texts travel beside it. Debian 12, libde265-0: copyright.
  'libheif-js': [kept('libde265', 'LGPL-3.0-or-later', 'libde265.txt'), ...emscripten],
  // ThirdPartyNotices.txt of the same release's package for Python, 1.30.0.
  'onnxruntime-web': [kept('parts of ONNX Runtime', 'each its own', 'onnxruntime-third-parties.txt')],
};
