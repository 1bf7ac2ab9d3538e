import '../../browser/page-globals.ts';
import { loadScript } from '../../browser/load-script.ts';
import type { WalkTexts } from '../walk-data.ts';
import { OtherVersion } from './other-version.ts';
import type { BesideHost, WalkBeside } from './walk-beside.ts';

/** A script runs once, so what it brought is kept for another try at the rest. */
let texts: Promise<WalkTexts> | undefined;

/**
 * The script of what stands beside a walk, and its texts.
 * @throws OtherVersion when the site has changed under the page, Error when one of the two cannot be had
 */
export async function loadBeside(host: BesideHost): Promise<WalkBeside> {
  texts ??= new Promise<WalkTexts>((resolve) => {
    window.headertank.receiveWalkTexts = resolve;
  });
  await Promise.all([loadScript('walk-beside'), loadScript(`../data/walks/${host.diagnoser.data.symptom}`)]);
  const make = window.headertank.walkBeside;
  if (!make) throw new Error('scripts/walk-beside.js is not whole');
  const own = await texts;
  if (own.stamp !== host.diagnoser.data.stamp) throw new OtherVersion();
  return make(host, own);
}
