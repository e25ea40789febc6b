/** Words as they may stand in SVG and HTML, between tags and in quotes. */
export function markupText(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');
}
