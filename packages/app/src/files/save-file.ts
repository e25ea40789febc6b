/** Hands a file to the browser to keep; nothing is sent. */
export function saveFile(name: string, content: Blob): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(content);
  link.download = name;
  link.click();
  // the browser has begun by the next task
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
