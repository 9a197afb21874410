import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { mkdir, mkdtemp, rename, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { inflate } from '@sparticuz/chromium';

const packed = fileURLToPath(import.meta.resolve('@sparticuz/chromium'));
const bin = join(dirname(packed), '..', 'bin');
const { version } = JSON.parse(readFileSync(join(bin, '..', 'package.json'), 'utf8')) as {
  version: string;
};
const home = fileURLToPath(new URL(`../../.build/chromium-${version}`, import.meta.url));

/** How every test starts its browser. */
export type ChromiumLaunch = {
  readonly executablePath: string;
  readonly args: string[];
  readonly env: Record<string, string>;
};

/**
 * Unpacks the headless Chromium of the npm package, once, and tells how to launch it.
 *
 * The package's own list of arguments is left alone on purpose: it switches web security off, and every
 * test of CORS, of a content security policy or of a sandbox would pass falsely.
 */
export async function prepareChromium(): Promise<ChromiumLaunch> {
  if (!existsSync(home)) await unpack();
  // The package holds a Linux x64 binary: elsewhere, CHROMIUM names one of the machine's own.
  const executablePath = process.env['CHROMIUM'] ?? join(home, 'chromium');
  return {
    executablePath,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
    env: describeEnvironment(executablePath),
  };
}

/** Unpacks beside the final place and renames: of two processes at once, one wins and both are served. */
async function unpack(): Promise<void> {
  await mkdir(dirname(home), { recursive: true });
  const draft = await mkdtemp(`${home}.draft-`);
  await inflateInto(draft);
  await writeFile(join(draft, 'fonts.conf'), describeFonts());
  await rename(draft, home).catch(async (error: unknown) => {
    await rm(draft, { recursive: true, force: true });
    if (!existsSync(home)) throw error;
  });
}

/** The package unpacks into the temporary folder of the system, so that is what is pointed elsewhere. */
async function inflateInto(folder: string): Promise<void> {
  const before = process.env['TMPDIR'];
  process.env['TMPDIR'] = folder;
  try {
    if (tmpdir() !== folder) throw new Error(`Cannot unpack Chromium into ${folder}.`);
    const packs = ['chromium.br', 'fonts.tar.br', 'swiftshader.tar.br', 'al2023.tar.br'];
    await Promise.all(packs.map((pack) => inflate(join(bin, pack))));
  } finally {
    if (before === undefined) delete process.env['TMPDIR'];
    else process.env['TMPDIR'] = before;
  }
}

/** The packed typeface serves machines that have none at all. */
function describeFonts(): string {
  const folders = [join(home, 'fonts', 'fonts'), '/usr/share/fonts'];
  const lines = folders.map((folder) => `  <dir>${folder}</dir>`).join('\n');
  return `<?xml version="1.0"?>\n<!DOCTYPE fontconfig SYSTEM "fonts.dtd">\n<fontconfig>\n${lines}\n  <cachedir>${home}/font-cache</cachedir>\n</fontconfig>\n`;
}

/** Where the machine lacks a library that Chromium links to, the packed ones stand in. */
function describeEnvironment(executablePath: string): Record<string, string> {
  const env: Record<string, string> = { FONTCONFIG_FILE: join(home, 'fonts.conf') };
  for (const [name, value] of Object.entries(process.env)) {
    if (value !== undefined && name !== 'FONTCONFIG_FILE') env[name] = value;
  }
  if (lacksLibrary(executablePath)) {
    env['LD_LIBRARY_PATH'] = [join(home, 'al2023', 'lib'), env['LD_LIBRARY_PATH'] ?? ''].join(':');
  }
  return env;
}

function lacksLibrary(executablePath: string): boolean {
  try {
    return execFileSync('ldd', [executablePath], { encoding: 'utf8' }).includes('not found');
  } catch {
    return false;
  }
}
