/** Makes the sample logs anew: npx node tests/trace/write-samples.ts */
import { mkdir, writeFile } from 'node:fs/promises';
import { SAMPLES, type SampleName, sampleLog } from './samples.ts';

await mkdir('public/samples', { recursive: true });
for (const name of Object.keys(SAMPLES) as SampleName[])
  await writeFile(`public/samples/${name}.csv`, sampleLog(name));
