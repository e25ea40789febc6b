/** Why a file is kept as no photo. */
export type PhotoRefusal = { problem: 'too-big'; bytes: number; most: number } | { problem: 'not-image' };

/** The longer side of what is kept: leaves can be counted on it, px. */
const longestPx = 1600;
/** More than any phone takes; larger ones could take a small phone's memory. */
const mostBytes = 30_000_000;
const quality = 0.85;

/**
 * A photo made small enough to keep. It is drawn anew, the right way up: where and with what it was taken, and all else
 * that stands in the file beside the picture, stays behind.
 */
export async function shrinkPhoto(file: Blob): Promise<Blob | PhotoRefusal> {
  if (file.size > mostBytes) return { problem: 'too-big', bytes: file.size, most: mostBytes };
  let picture: ImageBitmap;
  try {
    picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch {
    return { problem: 'not-image' };
  }
  try {
    const scale = Math.min(1, longestPx / Math.max(picture.width, picture.height));
    const width = Math.max(1, Math.round(picture.width * scale));
    const height = Math.max(1, Math.round(picture.height * scale));
    return await drawn(picture, width, height);
  } finally {
    picture.close();
  }
}

function drawn(picture: ImageBitmap, width: number, height: number): Promise<Blob> {
  if ('OffscreenCanvas' in globalThis) {
    const canvas = new OffscreenCanvas(width, height);
    draw(canvas.getContext('2d'), picture, width, height);
    return canvas.convertToBlob({ type: 'image/jpeg', quality });
  }
  const canvas = Object.assign(document.createElement('canvas'), { width, height });
  draw(canvas.getContext('2d'), picture, width, height);
  return new Promise((resolve, reject) => {
    const done = (blob: Blob | null) => (blob ? resolve(blob) : reject(new Error('no picture was made')));
    canvas.toBlob(done, 'image/jpeg', quality);
  });
}

function draw(
  context: CanvasRenderingContext2D | OffscreenCanvasRenderingContext2D | null,
  picture: ImageBitmap,
  width: number,
  height: number,
): void {
  if (!context) throw new Error('no canvas to draw on');
  // what is transparent would come out black
  context.fillStyle = 'white';
  context.fillRect(0, 0, width, height);
  context.imageSmoothingQuality = 'high';
  context.drawImage(picture, 0, 0, width, height);
}
