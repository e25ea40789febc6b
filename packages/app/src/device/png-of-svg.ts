/**
 * A PNG of a stand-alone SVG text, `scale` pixels of it to one of the picture. In a browser only.
 * @throws Error when the browser can't draw or is short of memory for it
 */
export async function pngOfSvg(svg: string, scale = 2): Promise<Blob> {
  const image = new Image();
  // a data URL, since a picture from a blob URL would need another leave in the page's security policy
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  await image.decode();
  const canvas = new OffscreenCanvas(Math.round(image.width * scale), Math.round(image.height * scale));
  const context = canvas.getContext('2d');
  if (!context) throw new Error('png: this browser gives no canvas to draw on');
  context.drawImage(image, 0, 0, canvas.width, canvas.height);
  return canvas.convertToBlob({ type: 'image/png' });
}
