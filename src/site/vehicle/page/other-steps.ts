import { button, element } from '../../browser/element.ts';

/** Steps that the chosen vehicle does not have fold into one line under their list; the others count on without them. */
export function foldOtherSteps(list: HTMLElement): void {
  const line = list.nextElementSibling?.matches('.other-steps') ? list.nextElementSibling : undefined;
  line?.remove();
  list.classList.remove('with-others');
  const others = list.querySelectorAll(':scope > .not-this-vehicle').length;
  if (others === 0) return;
  const open = button(
    others === 1 ? '1 step for other layouts' : `${others} steps for other layouts`,
    () => open.setAttribute('aria-expanded', String(list.classList.toggle('with-others'))),
    'quiet',
  );
  open.setAttribute('aria-expanded', 'false');
  list.after(element('p', { class: 'other-steps' }, open));
}
