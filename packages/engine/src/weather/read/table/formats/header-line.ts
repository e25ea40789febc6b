/** The head of a file, in which its format shows. */
export const headOf = (text: string): string => text.slice(0, 8192).replace(/^\uFEFF/, '');

/** The first of its lines that says something, in which names stand without quotation marks and padding. */
export function namesIn(text: string): string[] {
  const line = headOf(text)
    .split(/[\r\n]+/, 20)
    .find((line) => line.trim() !== '');
  return (line ?? '').split(/[,;\t]/, 300).map((name) => name.replace(/^[\s"]+|[\s"]+$/g, ''));
}
