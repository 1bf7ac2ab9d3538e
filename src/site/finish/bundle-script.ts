/** One island or other entry as one classic script: no module, so that it also runs from file://. */
import { build, type Plugin } from 'esbuild';

export interface BundleOptions {
  minify: boolean;
  /** Modules that exist only during the build. */
  modules?: Record<string, { text: string; loader: 'js' | 'json' }>;
  define?: Record<string, string>;
  inject?: string[];
}

/** @throws Error with the bundler's message: file, line, what is wrong */
export async function bundleScript(entry: string, options: BundleOptions): Promise<string> {
  const { minify, modules = {}, define = {}, inject = [] } = options;
  const result = await build({
    entryPoints: [entry],
    bundle: true,
    write: false,
    format: 'iife',
    platform: 'browser',
    target: 'es2022',
    charset: 'utf8',
    legalComments: 'none',
    logLevel: 'silent',
    minify,
    sourcemap: minify ? false : 'inline',
    plugins: [made(modules)],
    define,
    inject,
  }).catch((error: unknown) => {
    // The bundler's own error has its text behind getters, which Astro's logger prints as "undefined".
    throw new Error(error instanceof Error ? error.message : String(error));
  });
  return result.outputFiles[0]?.text ?? '';
}

function made(modules: NonNullable<BundleOptions['modules']>): Plugin {
  return {
    name: 'made-modules',
    setup(bundle) {
      for (const [name, { text, loader }] of Object.entries(modules)) {
        bundle.onResolve({ filter: new RegExp(`^${name}$`) }, () => ({ path: name, namespace: name }));
        bundle.onLoad({ filter: /.*/, namespace: name }, () => ({
          contents: text,
          loader,
          resolveDir: process.cwd(),
        }));
      }
    },
  };
}
