/** `npm run dev`: the site while writing; a wrong record shows its message on the page. */
import './without-telemetry.ts';
import { readArguments, runCommand } from './command.ts';

await runCommand(async () => {
  readArguments('npm run dev', {});
  const { dev } = await import('astro');
  await dev({});
});
