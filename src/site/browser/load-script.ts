import './page-globals.ts';

const loads = new Map<string, Promise<void>>();

/**
 * Loads scripts/<name>.js once.
 * @throws Error when it cannot be had; the next call tries again
 */
export function loadScript(name: string): Promise<void> {
  const begun = loads.get(name);
  if (begun) return begun;
  const load = new Promise<void>((resolve, reject) => {
    const script = document.createElement('script');
    script.src = new URL(`scripts/${name}.js`, window.headertank.root).href;
    script.onload = () => resolve();
    script.onerror = () => {
      loads.delete(name);
      script.remove();
      reject(new Error(`scripts/${name}.js cannot be loaded`));
    };
    document.head.append(script);
  });
  loads.set(name, load);
  return load;
}
