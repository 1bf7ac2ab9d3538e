/** Runs a command and says what it took: time, processor time and memory of the whole tree of processes. */
import { spawn } from 'node:child_process';
import { readdir, readFile } from 'node:fs/promises';

export interface Taken {
  seconds: number;
  /** Processor seconds of the command and all it started; undefined where there is no /proc. */
  processor: number | undefined;
  /** Megabytes resident at the peak, all processes of the tree together, looked at twice a second. */
  megabytes: number | undefined;
}

export type Outcome = { ok: true; taken: Taken } | { ok: false; why: string };

/** Seldom enough not to take time from the build. */
const LOOK_EVERY = 500;
/** Clock ticks a second in /proc, on every Linux in use. */
const TICKS = 100;

/** @param minutes after which the command is given up and its processes are ended */
export async function runMeasured(
  words: readonly string[],
  folder: string,
  minutes: number,
): Promise<Outcome> {
  const [command = '', ...rest] = words;
  const before = await childTicks();
  const began = performance.now();
  const child = spawn(command, rest, {
    cwd: folder,
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', CI: '1' },
    stdio: ['ignore', 'pipe', 'pipe'],
    detached: true,
  });
  let tail = '';
  for (const stream of [child.stdout, child.stderr])
    stream.on('data', (data: Buffer) => {
      tail = (tail + data.toString()).slice(-2000);
    });
  let gaveUp = false;
  let most = 0;
  const look = async () => {
    most = Math.max(most, await residentOf(child.pid));
  };
  const looking = setInterval(() => void look(), LOOK_EVERY);
  const limit = setTimeout(() => {
    gaveUp = true;
    if (child.pid !== undefined) process.kill(-child.pid, 'SIGKILL');
  }, minutes * 60_000);
  const code = await new Promise<number | null>((ended) => {
    child.on('close', ended);
    child.on('error', () => ended(null));
  });
  clearInterval(looking);
  clearTimeout(limit);
  const seconds = (performance.now() - began) / 1000;
  if (gaveUp) return { ok: false, why: `gave up after ${minutes} min` };
  if (code !== 0)
    return {
      ok: false,
      why: `failed after ${seconds.toFixed(0)} s: ${tail.trim().split('\n').slice(-4).join(' ')}`,
    };
  const after = await childTicks();
  const processor = before === undefined || after === undefined ? undefined : (after - before) / TICKS;
  return { ok: true, taken: { seconds, processor, megabytes: most > 0 ? most : undefined } };
}

/** Ticks of all ended children of this process and theirs. */
async function childTicks(): Promise<number | undefined> {
  const fields = await statOf('self');
  return fields && Number(fields[13]) + Number(fields[14]);
}

/** Fields of /proc/<pid>/stat after the name, which may hold spaces: the first is the state. */
async function statOf(pid: string): Promise<string[] | undefined> {
  const line = await readFile(`/proc/${pid}/stat`, 'utf8').catch(() => undefined);
  return line?.slice(line.lastIndexOf(')') + 2).split(' ');
}

async function residentOf(root: number | undefined): Promise<number> {
  if (root === undefined) return 0;
  const parents = new Map<number, number>();
  for (const name of await readdir('/proc').catch(() => [])) {
    if (!/^\d+$/.test(name)) continue;
    const fields = await statOf(name);
    if (fields) parents.set(Number(name), Number(fields[1]));
  }
  const isInTree = (pid: number | undefined): boolean =>
    pid !== undefined && (pid === root || isInTree(parents.get(pid)));
  let kilobytes = 0;
  for (const pid of parents.keys()) {
    if (!isInTree(pid)) continue;
    const status = await readFile(`/proc/${pid}/status`, 'utf8').catch(() => '');
    kilobytes += Number(/^VmRSS:\s+(\d+)/m.exec(status)?.[1] ?? 0);
  }
  return kilobytes / 1024;
}
