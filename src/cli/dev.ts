/** `npm run dev`: the site while writing; a wrong record shows its message on the page. */
import './without-telemetry.ts';
import { dev } from 'astro';

await dev({});
