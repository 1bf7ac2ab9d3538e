/** What this site keeps on the device, said in words, and the one button that forgets all of it. */
import '../../browser/page-globals.ts';
import { button, element } from '../../browser/element.ts';
import { forgetAll, type KeptHere, keptHere } from '../../browser/forget-all.ts';

const NOTHING = 'Nothing is kept on this device but the pages themselves.';

/** In words, or nothing. */
function inWords({ counts, own, small }: KeptHere): string[] {
  const many = (count: number, one: string, more: string) =>
    count === 0 ? [] : [count === 1 ? `one ${one}` : `${count} ${more}`];
  return [
    ...many(counts['job.'], 'job card', 'job cards'),
    ...many(counts['picture.'], 'picture', 'pictures'),
    ...many(counts['note.'], 'note', 'notes'),
    ...many(own + counts['vehicle-draft.'], 'vehicle of your own', 'vehicles of your own'),
    ...(small > 0 ? ['answers of walks, timers, readings, the chosen vehicle, units and colours'] : []),
  ];
}

class DeviceKept extends HTMLElement {
  connectedCallback(): void {
    void this.show();
  }

  private async show(says = ''): Promise<void> {
    const words = await keptHere().then(inWords, () => undefined);
    if (!words) return this.replaceChildren(element('p', {}, 'This browser keeps nothing here.'));
    const has = words.length > 0;
    this.replaceChildren(
      element('p', { role: 'status' }, has ? `${says} Kept here: ${words.join('; ')}.`.trim() : NOTHING),
      ...(has
        ? [
            element(
              'p',
              { class: 'ways' },
              button('Forget everything on this device', () => this.ask(words)),
            ),
          ]
        : []),
    );
  }

  private ask(words: readonly string[]): void {
    const keep = button('Keep it', () => void this.show());
    this.replaceChildren(
      element(
        'div',
        { role: 'alertdialog', 'aria-labelledby': 'forget-question' },
        element(
          'p',
          { id: 'forget-question' },
          element('b', {}, `Forget ${words.join('; ')}?`),
          ' This cannot be taken back. Export first what you still need.',
        ),
        element(
          'p',
          { class: 'ways' },
          button('Forget it all', () => void this.forget()),
          keep,
        ),
      ),
    );
    keep.focus();
  }

  private async forget(): Promise<void> {
    try {
      await forgetAll();
    } catch {
      return this.show('The device did not let go of it, and has kept everything.');
    }
    window.headertank.chooseVehicle(undefined);
    document.dispatchEvent(new CustomEvent('headertank:job'));
    // What the other windows hear from the browser.
    window.dispatchEvent(new Event('storage'));
    await this.show();
    this.tabIndex = -1;
    this.focus();
  }
}

customElements.define('ht-device-kept', DeviceKept);
