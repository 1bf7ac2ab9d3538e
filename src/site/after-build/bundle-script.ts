/** One island or other entry as one classic script: no module, so that it also runs from file://. */
import { build, type Plugin } from 'esbuild';

export interface BundleOptions {
  minify: boolean;
  /** Modules that exist only during the build. */
  modules?: Record<string, { text: string; loader: 'js' | 'json' }>;
  define?: Record<string, string>;
  inject?: string[];
  /** Modules of which the page's first script has hung what they export on window.headertank: path from src/site, names. */
  onPage?: Readonly<Record<string, readonly string[]>>;
}

/** @throws Error with the bundler's message: file, line, what is wrong */
export async function bundleScript(entry: string, options: BundleOptions): Promise<string> {
  const { minify, modules = {}, define = {}, inject = [], onPage = {} } = options;
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
    plugins: [made(modules), fromPage(onPage), englishOnly],
    define,
    inject,
  }).catch((error: unknown) => {
    // The bundler's own error has its text behind getters, which Astro's logger prints as "undefined".
    throw new Error(error instanceof Error ? error.message : String(error));
  });
  return result.outputFiles[0]?.text ?? '';
}

/** The checker of schemas brings its messages in fifty languages, two thirds of its size; ours are the schemas' own. */
const englishOnly: Plugin = {
  name: 'english-only',
  setup(bundle) {
    bundle.onResolve({ filter: /^\.\.\/locales\/index\.js$/ }, ({ path, importer }) =>
      /[\\/]zod[\\/]/.test(importer) ? { path, namespace: 'english-only' } : undefined,
    );
    bundle.onLoad({ filter: /.*/, namespace: 'english-only' }, () => ({ contents: 'export {}' }));
  },
};

function fromPage(onPage: NonNullable<BundleOptions['onPage']>): Plugin {
  return {
    name: 'from-page',
    setup(bundle) {
      for (const [path, names] of Object.entries(onPage)) {
        const ending = new RegExp(`[\\\\/]site[\\\\/]${path.replaceAll('/', '[\\\\/]')}$`);
        bundle.onLoad({ filter: ending }, () => ({
          contents: `export const { ${names.join(', ')} } = window.headertank;`,
        }));
      }
    },
  };
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
