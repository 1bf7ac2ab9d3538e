import './page-globals.ts';

let load: Promise<void> | undefined;

/** Loads the styles of calculators once. Without them the fields work and are plain. */
export function loadStyle(): Promise<void> {
  load ??= new Promise((resolve) => {
    const link = document.createElement('link');
    link.rel = 'stylesheet';
    link.href = new URL('styles/calculator.css', window.headertank.root).href;
    link.onload = () => resolve();
    link.onerror = () => resolve();
    document.head.append(link);
  });
  return load;
}
