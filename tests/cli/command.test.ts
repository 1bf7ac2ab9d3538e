/** Every command says in a sentence what it does not understand, and tells by its exit code that it did nothing. */
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

/** A file of src/cli is a command when it runs itself; the others are parts of commands. */
const COMMANDS = readdirSync('src/cli').filter((name) =>
  /^await runCommand\(/m.test(readFileSync(`src/cli/${name}`, 'utf8')),
);

test('there are commands to try', () => {
  expect(COMMANDS.length).toBeGreaterThan(7);
});

test.each(COMMANDS)(
  '%s refuses an option it does not know',
  (name) => {
    const { stdout, stderr, status } = spawnSync(process.execPath, [`src/cli/${name}`, '--fast'], {
      encoding: 'utf8',
    });
    expect(stderr).toMatch(
      /^Unknown option '--fast'\.\n(npm run|npx node src\/cli\/)[^\n]*\n(Kinds: [^\n]*\n)?$/,
    );
    expect({ stdout, status }).toEqual({ stdout: '', status: 2 });
  },
  60_000,
);

test('a folder that is not there is no trace either', () => {
  for (const name of ['format.ts', 'serve.ts']) {
    const { stderr, status } = spawnSync(process.execPath, [`src/cli/${name}`, 'no-such-folder'], {
      encoding: 'utf8',
    });
    expect(stderr).toMatch(/^[^\n]*no-such-folder[^\n]*\n$/);
    expect(status).toBe(2);
  }
}, 60_000);

test('a word too many is not passed over in silence: a title without quotes would be lost', () => {
  const words = {
    'check.ts': ['content', 'more'],
    'format.ts': ['content', 'more'],
    'new.ts': ['cause', 'more'],
  };
  for (const [name, given] of Object.entries(words)) {
    const { stdout, stderr, status } = spawnSync(process.execPath, [`src/cli/${name}`, ...given], {
      encoding: 'utf8',
    });
    expect(stderr).toMatch(/^"more" is a word too many; [^\n]*quotes\.\n(npm run|npx node)/);
    expect({ stdout, status }).toEqual({ stdout: '', status: 2 });
  }
}, 60_000);
