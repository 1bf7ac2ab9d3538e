/** <ht-offline>: keeps the whole shelf on the device, and says in words how far that is. */
import { loadScript } from '../browser/load-script.ts';
import type { FromWorker } from '../worker/messages.ts';
import '../browser/page-globals.ts';
import { button } from '../browser/element.ts';

const HOUR = 3_600_000;
const BECAUSE = {
  'no-room': 'this device has no room for it',
  'cut-off': 'the connection broke off; it goes on from there next time',
  changed: 'the site was being changed; it is tried again next time',
};

class Offline extends HTMLElement {
  /** No version was on this device when the page came: what is installed now is this page's own. */
  private isFirst = false;

  connectedCallback() {
    if (location.protocol === 'file:') return this.say('Opened from a folder; works without a network.');
    if (!('serviceWorker' in navigator)) {
      return this.say(
        'Cannot be kept on this device: the address is not a secure one (https), or the browser is too old.',
      );
    }
    const saving =
      'connection' in navigator && (navigator.connection as { saveData?: boolean } | undefined)?.saveData;
    if (saving && !navigator.serviceWorker.controller) {
      this.replaceChildren(button('Keep the whole shelf on this device', () => this.begin(), 'quiet'));
    } else if (document.readyState === 'complete') this.begin();
    else window.addEventListener('load', () => this.begin());
  }

  private async begin() {
    addManifest();
    const workers = navigator.serviceWorker;
    this.isFirst = workers.controller === null;
    workers.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => this.hear(data));
    if (workers.controller) {
      this.say('Kept on this device; works without a network.');
      workers.addEventListener('controllerchange', () => this.offer());
    }
    try {
      const registration = await workers.register(new URL('worker.js', window.headertank.root));
      registration.addEventListener('updatefound', () => this.watch(registration));
      this.watch(registration);
      window.addEventListener('online', () => update(registration));
      window.setInterval(() => update(registration), HOUR);
    } catch {
      if (!workers.controller)
        this.say('Not kept on this device: the browser does not allow it or the connection broke off.');
    }
  }

  private watch(registration: ServiceWorkerRegistration) {
    if (registration.waiting && registration.active) this.offer(registration.waiting);
    const coming = registration.installing;
    coming?.addEventListener('statechange', () => {
      if (coming.state === 'installed' && registration.active) this.offer(coming);
      // To a page of the version before, the new one is offered; that line stays.
      if (coming.state === 'activated' && this.isFirst)
        this.say('Kept on this device; works without a network.');
    });
  }

  private hear(message: FromWorker) {
    const isUpdate = navigator.serviceWorker.controller !== null;
    if (message.kind === 'storing' && !isUpdate) {
      this.say(`Being kept on this device: ${message.done} of ${message.of} files.`);
    }
    if (message.kind === 'not-stored') {
      const reason = BECAUSE[message.because];
      this.setAttribute('role', 'status');
      this.say(
        isUpdate
          ? `A newer version is out but could not be fetched whole: ${reason}. The one on this device goes on working.`
          : `Not kept on this device: ${reason}.`,
      );
    }
  }

  /** @param waiting the new version's worker; none once it has taken over */
  private offer(waiting?: ServiceWorker) {
    this.setAttribute('role', 'status');
    loadScript('new-version').then(
      () => window.headertank.offerVersion?.(this, waiting),
      () => this.say('A newer version of the shelf is out. Load this page anew to be offered it.'),
    );
  }

  private say(text: string) {
    this.replaceChildren(text);
  }
}

/** Added here because a page opened from a folder may not have it. */
function addManifest() {
  const link = document.createElement('link');
  link.rel = 'manifest';
  link.href = new URL('headertank.webmanifest', window.headertank.root).href;
  document.head.append(link);
}

function update(registration: ServiceWorkerRegistration) {
  // Without a network there is nothing new to be had; the next hour asks again.
  registration.update().catch(() => undefined);
}

customElements.define('ht-offline', Offline);
