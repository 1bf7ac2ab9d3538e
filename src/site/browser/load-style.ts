import './page-globals.ts';

const loads = new Map<string, Promise<void>>();

/** Loads styles/<name>.css once. Without it what it is for works and is plain. */
export function loadStyle(name: string): Promise<void> {
  const begun = loads.get(name);
  if (begun) return begun;
  const load = new Promise<void>((resolve) => {
    const link = document.createElement('link');
    link.rel = 'stylesheet';
    link.href = new URL(`styles/${name}.css`, window.headertank.root).href;
    link.onload = () => resolve();
    link.onerror = () => resolve();
    document.head.append(link);
  });
  loads.set(name, load);
  return load;
}
