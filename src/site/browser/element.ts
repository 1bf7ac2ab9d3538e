/** A new element with its attributes and children: text stays text, so that nothing from the shelf or the reader can become markup. */
export function element<K extends keyof HTMLElementTagNameMap>(
  name: K,
  attributes: Record<string, string | boolean | undefined> = {},
  ...children: (Node | string)[]
): HTMLElementTagNameMap[K] {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (value === true) made.setAttribute(key, '');
    else if (typeof value === 'string') made.setAttribute(key, value);
  }
  made.append(...children);
  return made;
}

/** A button that does something; never submits a form. */
export function button(text: string, onPress: () => void, className = ''): HTMLButtonElement {
  const made = element('button', { type: 'button', class: className }, text);
  made.addEventListener('click', onPress);
  return made;
}
