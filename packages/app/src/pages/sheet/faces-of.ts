import { type EmbeddedFace, type Sheet, sheetBody } from '@neckfall/pictures';
import answersLatin from '../../look/fonts/answers-latin.woff2?url';
import answersLatinExt from '../../look/fonts/answers-latin-ext.woff2?url';
import boldLatin from '../../look/fonts/bold-latin.woff2?url';
import boldLatinExt from '../../look/fonts/bold-latin-ext.woff2?url';
import textLatin from '../../look/fonts/text-latin.woff2?url';
import textLatinExt from '../../look/fonts/text-latin-ext.woff2?url';

/** As fonts.css has them. */
const latin = 'U+0000-00FF,U+0131,U+0152-0153,U+2000-206F,U+2192,U+2212';
const latinExt = 'U+0100-0130,U+0132-0151,U+0154-017F,U+0218-021B';

const faces = [
  { family: 'Answers', weight: 600, latin: answersLatin, latinExt: answersLatinExt },
  { family: 'Plain', weight: 400, latin: textLatin, latinExt: textLatinExt },
  { family: 'Plain', weight: 600, latin: boldLatin, latinExt: boldLatinExt },
] as const;

/** The page's own typefaces, as far as the words of a sheet need them, to travel in its file. */
export function facesOf(sheet: Sheet): Promise<EmbeddedFace[]> {
  const isBeyondLatin = /[\u0100-\u024f]/.test(sheetBody(sheet));
  return Promise.all(
    faces.flatMap((face) => [
      embedded(face, face.latin, latin),
      ...(isBeyondLatin ? [embedded(face, face.latinExt, latinExt)] : []),
    ]),
  );
}

async function embedded(
  { family, weight }: (typeof faces)[number],
  url: string,
  unicodeRange: string,
): Promise<EmbeddedFace> {
  const reply = await fetch(url);
  if (!reply.ok) throw new Error(`${reply.status} ${url}`);
  const bytes = new Uint8Array(await reply.arrayBuffer());
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return { family, weight, base64: btoa(text), format: 'woff2', unicodeRange };
}
