import type { Adjustment } from '../../photo/adjustment-types';

const longestSide = 900;

/** Draws the whole photo with the chosen part clear and the rest faded; the part's arrow says which way is up. */
export async function drawAdjusted(
  canvas: HTMLCanvasElement,
  file: string,
  { crop, turn, invert }: Adjustment,
  signal: AbortSignal,
): Promise<void> {
  const photo = new Image();
  photo.src = file;
  try {
    await photo.decode();
  } catch {
    return;
  }
  if (signal.aborted) return;
  const shrink = Math.min(1, longestSide / Math.max(photo.naturalWidth, photo.naturalHeight));
  canvas.width = Math.max(1, Math.round(photo.naturalWidth * shrink));
  canvas.height = Math.max(1, Math.round(photo.naturalHeight * shrink));
  const pen = canvas.getContext('2d');
  if (!pen) return;
  const { width, height } = canvas;
  const [left, top, right, bottom] = crop ?? [0, 0, 1, 1];
  const [x, y, w, h] = [left * width, top * height, (right - left) * width, (bottom - top) * height];
  pen.globalAlpha = crop ? 0.35 : 1;
  pen.drawImage(photo, 0, 0, width, height);
  pen.globalAlpha = 1;
  pen.save();
  pen.beginPath();
  pen.rect(x, y, w, h);
  pen.clip();
  if (invert) pen.filter = 'invert(1)';
  pen.drawImage(photo, 0, 0, width, height);
  pen.restore();
  drawUpArrow(pen, x + w / 2, y + h / 2, turn);
}

/** Turning clockwise by 90° makes the photo's left side the top: the arrow points where the top will be. */
function drawUpArrow(pen: CanvasRenderingContext2D, x: number, y: number, turn: number): void {
  if (turn === 0) return;
  pen.save();
  pen.translate(x, y);
  pen.rotate((-turn * Math.PI) / 180);
  pen.beginPath();
  pen.moveTo(0, -34);
  pen.lineTo(22, -6);
  pen.lineTo(8, -6);
  pen.lineTo(8, 30);
  pen.lineTo(-8, 30);
  pen.lineTo(-8, -6);
  pen.lineTo(-22, -6);
  pen.closePath();
  pen.fillStyle = '#fff';
  pen.fill();
  pen.strokeStyle = '#000';
  pen.lineWidth = 2;
  pen.stroke();
  pen.restore();
}
