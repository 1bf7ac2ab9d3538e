/** A field above a long list that leaves only the lines with the words typed in it. */
import { element } from '../browser/element.ts';

class ListFilter extends HTMLElement {
  connectedCallback() {
    const input = element('input', { id: 'list-filter', type: 'search', autocomplete: 'off' });
    const says = element('p', { class: 'soft', role: 'status' });
    input.addEventListener('input', () => {
      const left = this.filter(input.value.toLowerCase().split(/\s+/));
      says.textContent = input.value.trim() === '' ? '' : `${left} left`;
    });
    this.prepend(
      element(
        'div',
        { class: 'field no-print' },
        element('label', { for: 'list-filter' }, 'Filter'),
        input,
        says,
      ),
    );
  }

  private filter(words: readonly string[]): number {
    let left = 0;
    for (const section of this.querySelectorAll('section')) {
      const lines = [...section.querySelectorAll('li')];
      for (const line of lines) {
        const text = line.textContent.toLowerCase();
        line.hidden = !words.every((word) => text.includes(word));
      }
      const shown = lines.filter((line) => !line.hidden).length;
      section.hidden = shown === 0;
      left += shown;
    }
    return left;
  }
}

customElements.define('ht-list-filter', ListFilter);
