/** “/” leads to the search from anywhere but a field. */
import '../browser/page-globals.ts';

document.addEventListener('keydown', (event) => {
  if (event.key !== '/' || event.ctrlKey || event.metaKey || event.altKey) return;
  const { target } = event;
  if (target instanceof HTMLElement && target.closest('input, textarea, select, [contenteditable]')) return;
  event.preventDefault();
  const field = document.querySelector<HTMLInputElement>('ht-search input');
  if (field) {
    field.focus();
    field.select();
  } else location.href = new URL('search.html#q', window.headertank.root).href;
});
