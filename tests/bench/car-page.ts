/**
 * How long the simulated car takes for half an hour in a browser with the processor slowed four times: the first time, and once the
 * browser has seen it. Prints figures and never fails: npx node tests/bench/car-page.ts (needs no built site)
 */
import { cpus } from 'node:os';
import { bundleScript } from '../../src/site/after-build/bundle-script.ts';
import { launchBrowser } from '../browser/browser.ts';

const SLOWED = 4;
const ROUNDS = 15;

const MODULE = `
import { usualCar } from '${process.cwd()}/src/car/car.ts';
import { severityAt, withFault } from '${process.cwd()}/src/car/faults.ts';
import { twoRuns } from '${process.cwd()}/src/site/moves/two-runs.ts';
const cars = ['thermostat-stuck-open', 'thermostat-stuck-shut', 'coolant-low', 'fan-motor-dead'].map((id) =>
  withFault(usualCar(), id, severityAt(id, 0.5)),
);
let at = 0;
window.halfHour = () => {
  const began = performance.now();
  twoRuns(cars[at++ % cars.length]);
  return (performance.now() - began) / 2;
};
`;

const script = await bundleScript('half-hour', {
  minify: true,
  modules: { 'half-hour': { text: MODULE, loader: 'js' } },
});
const browser = await launchBrowser();
console.log(`${cpus()[0]?.model ?? 'unknown processor'} × ${cpus().length}, Chromium ${browser.version()}`);
for (const rate of [1, SLOWED]) {
  const page = await browser.newPage();
  const slow = await page.context().newCDPSession(page);
  await slow.send('Emulation.setCPUThrottlingRate', { rate });
  await page.addScriptTag({ content: script });
  const times: number[] = [];
  for (let round = 0; round <= ROUNDS; round++) times.push(await page.evaluate<number>('halfHour()'));
  const [first = 0, ...later] = times;
  later.sort((a, b) => a - b);
  const place = (share: number) => (later[Math.floor(share * (later.length - 1))] ?? 0).toFixed(1);
  console.log(
    `slowed ${rate} times: 30 minutes of one car take ${first.toFixed(1)} ms the first time, then ${place(0.5)} ms (${place(0)} to ${place(1)})`,
  );
  await page.close();
}
await browser.close();
