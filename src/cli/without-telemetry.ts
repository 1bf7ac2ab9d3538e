/** Imported before Astro: nothing about this machine or its builds is written down or told to anyone. */
process.env.ASTRO_TELEMETRY_DISABLED = '1';
