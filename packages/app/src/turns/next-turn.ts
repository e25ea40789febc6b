/** Works that wait for a task of their own, in order. */
const waiting: { work: () => void }[] = [];
let bell: MessagePort | null = null;

/**
 * Does the work in a task of its own, so that fingers and painting get in between: a timer would wait longer each
 * time. Returns what calls it off.
 */
export function nextTurn(work: () => void): () => void {
  const turn = { work };
  waiting.push(turn);
  bell ??= hangBell();
  bell.postMessage(null);
  return () => {
    turn.work = () => {};
  };
}

function hangBell(): MessagePort {
  const { port1, port2 } = new MessageChannel();
  port1.onmessage = () => waiting.shift()?.work();
  return port2;
}
