/** What <ht-offline> offers once a newer version of the shelf has come; fetched then, since most pages never see one. */
import type { FromPage } from '../worker/messages.ts';
import '../browser/page-globals.ts';
import { button } from '../browser/element.ts';

/** The reader pressed here, so this page may load itself anew; another page only offers to. */
let chosen = false;

window.headertank.offerVersion = (place, waiting) => {
  if (!waiting) {
    if (chosen) return location.reload();
    const again = button('Reload', () => location.reload(), 'quiet');
    return place.replaceChildren('This page is from the previous version. ', again);
  }
  const message: FromPage = { kind: 'use-new-version' };
  const show = () => {
    chosen = true;
    waiting.postMessage(message);
  };
  place.replaceChildren(
    'A newer version of the shelf is on this device. ',
    button('Show the new version', show, 'quiet'),
  );
};
