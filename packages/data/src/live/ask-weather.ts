import { type AskedPoint, weatherRequest } from './weather-request.ts';

/** Why a service gave nothing that can be used. */
export type AskRefusal =
  | { code: 'cancelled' }
  /** Nobody answered: no network, no such host, or the line broke. */
  | { code: 'unreachable' }
  | { code: 'slow'; seconds: number }
  | { code: 'status'; status: number }
  /** It sent us on to another address, which nobody was told of. */
  | { code: 'redirected' }
  | { code: 'too-big'; limitMb: number }
  | { code: 'not-text' };

/** What the service sent, or why there is nothing. */
export type AskAnswer = { ok: true; text: string } | { ok: false; refusal: AskRefusal };

type Asked = {
  /** Origin of the service; see {@link weatherHost}. */
  host: string;
  point: AskedPoint;
  fetch: (url: URL, init: RequestInit & { cache: 'no-store' }) => Promise<Response>;
  /** Calls it off. */
  signal?: AbortSignal;
  timeoutMs?: number;
};

/** An answer of 108 days is some 6 kB; more than this is something else. */
const mostBytes = 2_000_000;
const usualTimeoutMs = 15_000;

/** Asks a weather service once for the weather of a place; the text is not looked at yet. Never throws. */
export async function askWeather(asked: Asked): Promise<AskAnswer> {
  const { host, point, signal, timeoutMs = usualTimeoutMs } = asked;
  const leave = new AbortController();
  const stop = () => leave.abort();
  let isLate = false;
  const timer = setTimeout(() => {
    isLate = true;
    stop();
  }, timeoutMs);
  if (signal?.aborted) stop();
  signal?.addEventListener('abort', stop);
  try {
    const response = await asked.fetch(weatherRequest(host, point), {
      // a redirect comes back as it is, to be refused
      redirect: 'manual',
      credentials: 'omit',
      referrerPolicy: 'no-referrer',
      cache: 'no-store',
      signal: leave.signal,
    });
    const refusal = refusalOf(response);
    if (refusal) return { ok: false, refusal };
    return await textOf(response);
  } catch {
    if (signal?.aborted) return { ok: false, refusal: { code: 'cancelled' } };
    if (isLate) return { ok: false, refusal: { code: 'slow', seconds: Math.ceil(timeoutMs / 1000) } };
    return { ok: false, refusal: { code: 'unreachable' } };
  } finally {
    clearTimeout(timer);
    signal?.removeEventListener('abort', stop);
    // what is left of a body that was refused
    stop();
  }
}

function refusalOf({ type, status, ok }: Response): AskRefusal | null {
  if (type === 'opaqueredirect' || (status >= 300 && status < 400)) return { code: 'redirected' };
  return ok ? null : { code: 'status', status };
}

async function textOf({ headers, body }: Response): Promise<AskAnswer> {
  const tooBig: AskAnswer = { ok: false, refusal: { code: 'too-big', limitMb: mostBytes / 1e6 } };
  if (Number(headers.get('content-length')) > mostBytes) return tooBig;
  const decoder = new TextDecoder('utf-8', { fatal: true });
  const reader = body?.getReader();
  let text = '';
  let bytes = 0;
  for (;;) {
    const piece = await reader?.read();
    if (!piece || piece.done) break;
    bytes += piece.value.length;
    if (bytes > mostBytes) return tooBig;
    const more = decoded(decoder, piece.value);
    if (more === null) return { ok: false, refusal: { code: 'not-text' } };
    text += more;
  }
  const end = decoded(decoder, null);
  return end === null ? { ok: false, refusal: { code: 'not-text' } } : { ok: true, text: text + end };
}

/** Null: no UTF-8. */
function decoded(decoder: InstanceType<typeof TextDecoder>, bytes: Uint8Array | null): string | null {
  try {
    return bytes === null ? decoder.decode() : decoder.decode(bytes, { stream: true });
  } catch {
    return null;
  }
}
