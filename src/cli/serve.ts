/** `npm run serve`, last part: shows the built site on this machine. */
import { existsSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { join, resolve } from 'node:path';
import { Refusal, readArguments, runCommand } from './command.ts';
import { createStaticServer } from './static-server.ts';

/** Not the port of `npm run dev`: a site kept by the browser there would stand before the one being written. */
const PORT = 4400;

const USE = 'npx node src/cli/serve.ts [folder] [--port number]';

await runCommand(serve);

function serve(): void {
  const { values, positionals } = readArguments(USE, {
    allowPositionals: true,
    options: { port: { type: 'string' } },
  });
  const folder = resolve(positionals[0] ?? 'dist');
  // The last file that a build writes: a folder without it was not finished.
  if (!existsSync(join(folder, 'worker.js')))
    throw new Refusal(`${folder} holds no complete site. Make it with: npm run build`);
  const wanted = Number(values.port ?? PORT);
  if (!Number.isInteger(wanted) || wanted < 0 || wanted > 65535)
    throw new Refusal(`--port takes a whole number from 0 to 65535, not "${values.port}".`);
  const server = createStaticServer(folder);
  server.on('error', (error: NodeJS.ErrnoException) => {
    // The wanted port is taken: any free one will do.
    if (error.code !== 'EADDRINUSE') throw error;
    server.listen(0, 'localhost');
  });
  server.on('listening', () => {
    const { port } = server.address() as AddressInfo;
    process.stdout.write(`Headertank: http://localhost:${port}/   (Ctrl+C ends it)\n`);
  });
  server.listen(wanted, 'localhost');
}
