import sharp from 'sharp';
import { greyOf, measureMarks, type PixelImage, type Quad } from '../../src/photo';
import { spectrumOf } from '../../src/photo/measure/fourier';
import { projectionOnto, warpQuad } from '../../src/photo/warp';
import { panelScene } from '../measure/panel-truth';
import { stitchScene } from '../measure/stitch-truth';
import { cv, startOpenCv } from '../opencv';

/** The longer side of the photos that are measured on, and what one measure may take there. */
const side = 1200;
const mostMs = 150;

/** Milliseconds of processor time of one call, the median of `runs` after two that do not count: others may use the machine. */
function medianMs(work: () => void, runs = 9): number {
  const times = Array.from({ length: runs + 2 }, () => {
    const start = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1000;
  }).slice(2);
  return times.sort((a, b) => a - b)[Math.floor(runs / 2)]!;
}

async function enlarged({ width, height, data }: PixelImage): Promise<{ image: PixelImage; by: number }> {
  const by = side / Math.max(width, height);
  const size = { width: Math.round(width * by), height: Math.round(height * by) };
  const pixels = await sharp(Buffer.from(data.buffer, data.byteOffset, data.byteLength), {
    raw: { width, height, channels: 4 },
  })
    .resize(size)
    .raw()
    .toBuffer();
  return { image: { ...size, data: new Uint8ClampedArray(pixels) }, by };
}

/** What a general library takes for the steps that each rests on, and each whole measure, on photos of 1200 pixels. */
export async function bench(): Promise<void> {
  await startOpenCv();
  const panel = await panelScene(11, 'clear', { axis: true, off: 0 });
  const seam = await stitchScene(502, 'clear', true);
  const long = await stitchScene(1504, 'clear', true);
  const pair = await panelScene(721, 'clear', { axis: true, off: 0, back: true });
  const sewn = await panelScene(734, 'fair', { axis: true, off: 0, seam: true });
  const [print, row, longRow] = [await enlarged(panel.image), await enlarged(seam.image), await enlarged(long.image)];
  const [twoPanels, cut] = [await enlarged(pair.image), await enlarged(sewn.image)];
  const moved = (points: readonly { x: number; y: number }[], by: number) =>
    points.map(({ x, y }) => ({ x: x * by, y: y * by }));
  const corners = moved(panel.corners, print.by);
  const within = 0.015 * side;
  const measures = {
    'repeat-x': () => measureMarks(print.image, [{ what: 'repeat-x', points: corners, within }]),
    'mirror-off': () => measureMarks(print.image, [{ what: 'mirror-off', points: corners, within }]),
    'motif-off': () =>
      measureMarks(print.image, [
        { what: 'motif-off', points: [...corners, ...moved([panel.motif], print.by)], within },
      ]),
    back: () =>
      measureMarks(twoPanels.image, [
        { what: 'back', points: moved([...pair.corners, ...pair.back!.corners], twoPanels.by), within },
      ]),
    'seam-off': () =>
      measureMarks(cut.image, [
        { what: 'seam-off', points: moved([...sewn.corners, ...sewn.seam!.ends], cut.by), within },
      ]),
    [`count of ${long.count} stitches`]: () =>
      measureMarks(longRow.image, [{ what: 'count', points: moved(long.line, longRow.by), within }]),
    [`count of ${seam.count} stitches`]: () =>
      measureMarks(row.image, [{ what: 'count', points: moved(seam.line, row.by), within }]),
  };
  console.log(
    `| one whole measure, its marks set by a hand | ms on ${side} px | of ${mostMs} ms |\n| --- | --- | --- |`,
  );
  for (const [name, work] of Object.entries(measures)) {
    const ms = medianMs(work);
    console.log(`| ${name} | ${ms.toFixed(0)} | ${Math.round((100 * ms) / mostMs)} % |`);
  }

  const grey = greyOf(print.image);
  const quad = corners as Quad;
  const [width, height] = [400, 400];
  const source = new cv.Mat(grey.height, grey.width, cv.CV_32F);
  source.data32F.set(grey.data);
  const [a, b, c, d, e, f, g, h] = projectionOnto(quad, width, height)!;
  const matrix = new cv.Mat(3, 3, cv.CV_64F);
  matrix.data64F.set([a, b, c, d, e, f, g, h, 1]);
  const target = new cv.Mat();
  const plane = new cv.Mat(1024, 1024, cv.CV_64F);
  plane.data64F.set(Float64Array.from({ length: 1024 * 1024 }, (_, at) => Math.sin(at / 7)));
  const spectrum = new cv.Mat();
  const flags = cv.INTER_LINEAR | cv.WARP_INVERSE_MAP;
  const steps = {
    [`warp to ${width} × ${height}`]: [
      () => void warpQuad(grey, quad, width, height),
      () =>
        cv.warpPerspective(
          source,
          target,
          matrix,
          new cv.Size(width, height),
          flags,
          cv.BORDER_REPLICATE,
          new cv.Scalar(),
        ),
    ],
    'transform of 1024 × 1024': [
      () => void spectrumOf(Float64Array.from(plane.data64F), 1024),
      () => cv.dft(plane, spectrum, cv.DFT_COMPLEX_OUTPUT, 0),
    ],
  } as const;
  console.log('\n| a step | ours, ms | OpenCV (WASM, one thread), ms | ratio |\n| --- | --- | --- | --- |');
  for (const [name, [ours, theirs]] of Object.entries(steps)) {
    const [own, other] = [medianMs(ours), medianMs(theirs)];
    console.log(`| ${name} | ${own.toFixed(1)} | ${other.toFixed(1)} | ${(own / other).toFixed(1)} |`);
  }
}
