/** Exists only while the site is finished (src/site/after-build/offline.ts). */
declare module 'headertank-files' {
  const list: import('./file-list.ts').FileList;
  export default list;
}
