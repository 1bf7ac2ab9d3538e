/**
 * Loaded before a command (`node --import`): what Node makes of the code, types stripped and compiled, is kept for the next
 * run, beside what the check itself remembers. Node asks for each file anew whether it has changed. Where nothing can be
 * written, the next run is only slower.
 */
import { enableCompileCache } from 'node:module';

enableCompileCache('node_modules/.cache/headertank/compiled');
