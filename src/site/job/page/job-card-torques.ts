/** The torques on the job card: the joints of its repair first, each to be ticked when it is tightened. */
import { boltText } from '../../../model/bolt-text.ts';
import { JOINTS, type Joint } from '../../../model/figures.ts';
import { quantityText } from '../../../model/show-quantity.ts';
import { besidesTorque } from '../../../model/torque-stages.ts';
import '../../browser/page-globals.ts';
import { element } from '../../browser/element.ts';
import type { TorqueCard } from '../card-parts.ts';

/** The joints of this repair first, the rest of the vehicle's behind them. */
export function showTorques(card: TorqueCard): void {
  const own = card.ownVehicle;
  const { torques } = card.job;
  const has = (joint: Joint) => joint in torques || own?.figures[`torque.${joint}`] !== undefined;
  const planned = card.planned?.joints ?? [];
  const others = (Object.keys(JOINTS) as Joint[]).filter((joint) => has(joint) && !planned.includes(joint));
  const focused = document.activeElement?.id;
  const first = planned.length > 0 ? planned : others;
  card
    .place('.torques')
    .replaceChildren(
      ...first.map((joint) =>
        has(joint)
          ? torqueRow(card, joint)
          : element(
              'li',
              { class: 'soft' },
              `${JOINTS[joint].label}: no figure of this vehicle here, take the maker’s`,
            ),
      ),
    );
  const rest = planned.length > 0 ? others : [];
  card.place('.other-torques').hidden = rest.length === 0;
  card.place('.torques-rest').replaceChildren(...rest.map((joint) => torqueRow(card, joint)));
  if (focused?.startsWith('tick-')) document.getElementById(focused)?.focus();
  card.place('.torques-none').textContent =
    first.length > 0
      ? 'Tick a joint when it is tightened. The maker’s sequence and angle stand above these figures.'
      : 'The torques of the vehicle stand here to be ticked once it is chosen and taken onto the card.';
}

function torqueRow(card: TorqueCard, joint: Joint): HTMLElement {
  const { torques } = card.job;
  const own = card.ownVehicle;
  const figure = own?.figures[`torque.${joint}`];
  const bolt = own?.bolts[joint];
  const { habit } = window.headertank;
  const besides = bolt ? besidesTorque(bolt, habit) : '';
  const asked = figure ? quantityText(figure.quantity, habit) + (besides === '' ? '' : `, ${besides}`) : '';
  const text = torques[joint]?.figure ?? asked;
  const box = element('input', { type: 'checkbox', id: `tick-${joint}` });
  box.checked = joint in torques;
  box.addEventListener('change', () => tick(card, joint, box.checked, text));
  const size = bolt ? boltText(bolt) : '';
  const words = [JOINTS[joint].label, ' ', element('b', {}, text), ' ', element('small', {}, size)];
  return element('li', {}, element('label', { class: 'tick' }, box, element('span', {}, ...words)));
}

function tick(card: TorqueCard, joint: Joint, on: boolean, figure: string): void {
  void card.change((job) => {
    const { [joint]: _, ...rest } = job.torques;
    const tick = { at: new Date().toISOString(), what: JOINTS[joint].label, figure };
    return { ...job, torques: on ? { ...rest, [joint]: tick } : rest };
  });
}
