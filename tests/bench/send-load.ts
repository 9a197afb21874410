import { connect, type Socket } from 'node:net';

/** A request as it goes over the wire, and how many of it at once. */
export interface Load {
  readonly port: number;
  readonly method?: string;
  /** One for all, or another for each request, by its number. */
  readonly path: string | ((at: number) => string);
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: string;
  readonly count: number;
  readonly connections: number;
}

export interface LoadResult {
  readonly perSecond: number;
  /** Milliseconds from sending to the last byte. */
  readonly p99: number;
  readonly statuses: Readonly<Record<string, number>>;
}

/**
 * Sends one request again and again over a few open connections, each with one at a time, and counts
 * what comes back. It reads no more of HTTP than status and length, so that it costs little beside the
 * server.
 */
export async function sendLoad(load: Load): Promise<LoadResult> {
  const { path } = load;
  const message = typeof path === 'string' ? writeRequest(load, path) : undefined;
  const write = (at: number) =>
    message ?? writeRequest(load, typeof path === 'string' ? path : path(at));
  const times: number[] = [];
  const statuses: Record<string, number> = {};
  let left = load.count;
  const start = performance.now();
  await Promise.all(
    Array.from({ length: load.connections }, async () => {
      const socket = connect(load.port, '127.0.0.1');
      socket.setNoDelay(true);
      const read = readAnswers(socket);
      while (left > 0) {
        left -= 1;
        const next = write(left);
        const sent = performance.now();
        socket.write(next);
        const { value } = await read.next();
        if (value === undefined) throw new Error('The server closed the connection.');
        times.push(performance.now() - sent);
        statuses[value] = (statuses[value] ?? 0) + 1;
      }
      socket.destroy();
    }),
  );
  const seconds = (performance.now() - start) / 1000;
  times.sort((one, other) => one - other);
  const p99 = times[Math.floor(0.99 * times.length)] ?? Number.NaN;
  return { perSecond: times.length / seconds, p99, statuses };
}

function writeRequest({ method = 'GET', headers = {}, body = '' }: Load, path: string): string {
  const own = body === '' ? headers : { ...headers, 'Content-Length': Buffer.byteLength(body) };
  const lines = Object.entries(own).map(([name, value]) => `${name}: ${value}\r\n`);
  return `${method} ${path} HTTP/1.1\r\nHost: localhost\r\n${lines.join('')}\r\n${body}`;
}

/** The status of each answer, once all of it is there. */
async function* readAnswers(socket: Socket): AsyncGenerator<string> {
  let rest = Buffer.alloc(0);
  for await (const chunk of socket) {
    rest = Buffer.concat([rest, chunk as Buffer]);
    for (let end = findEnd(rest); end !== undefined; end = findEnd(rest)) {
      const status = rest.subarray(9, 12).toString('latin1');
      rest = rest.subarray(end);
      yield status;
    }
  }
}

/** Where the first answer ends, or nothing while it is still coming. */
function findEnd(bytes: Buffer): number | undefined {
  const head = bytes.indexOf('\r\n\r\n');
  if (head < 0) return undefined;
  const text = bytes.subarray(0, head).toString('latin1');
  if (/^HTTP\/1\.1 (204|304)/.test(text)) return head + 4;
  const length = /\r\ncontent-length: (\d+)/i.exec(text)?.[1];
  if (length !== undefined) {
    const end = head + 4 + Number(length);
    return bytes.length >= end ? end : undefined;
  }
  const last = bytes.indexOf('\r\n0\r\n\r\n', head);
  return last < 0 ? undefined : last + 7;
}
