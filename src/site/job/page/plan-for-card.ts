/** What a proven cause asks for, on the job card: the work with its minutes, cautions, the parts list with litres. */
import type { Joint } from '../../../model/figures.ts';
import { type Habit, METRIC, US } from '../../../model/habit.ts';
import type { Job } from '../../../model/job.ts';
import type { Quantity } from '../../../model/quantity.ts';
import { textFor } from '../../../model/reader-text.ts';
import { quantityText } from '../../../model/show-quantity.ts';
import { loadScript } from '../../browser/load-script.ts';
import type { CardPlan, Draft, MakeCardPlan } from '../card-parts.ts';
import type { JobPlan } from '../job-plan.ts';
import {
  cautionsOf,
  coolantLine,
  coolantOf,
  estimateAddress,
  isFilled,
  jointsOf,
  minutesOf,
  type PartsOf,
  partsFor,
  workFor,
} from '../planned.ts';
import '../../browser/page-globals.ts';
import { element } from '../../browser/element.ts';
import { withFigures } from '../../vehicle/page/figures.ts';
import type { VehicleSheet } from '../../vehicle/vehicle-sheet.ts';
import { partsNodes } from './parts-nodes.ts';

const plans = new Map<string, JobPlan>();
window.headertank.receivePlan = (plan) => plans.set(plan.id, plan);

/** The plan of a cause, or undefined when this shelf has none under that name or it cannot be had now. */
export async function cardPlanOf(cause: string): Promise<MakeCardPlan | undefined> {
  if (!/^[a-z0-9-]+$/.test(cause)) return undefined;
  if (!plans.has(cause)) await loadScript(`../data/plans/${cause}`).catch(() => undefined);
  const plan = plans.get(cause);
  return plan && ((vehicle) => new PlanForCard(plan, vehicle));
}

/** A plan in the figures of the card's vehicle, or in general ones. */
class PlanForCard implements CardPlan {
  readonly joints: readonly Joint[];
  readonly parts: readonly PartsOf[];
  private readonly plan: JobPlan;
  private readonly work: ReturnType<typeof workFor>;
  private readonly vehicle: VehicleSheet | undefined;

  constructor(plan: JobPlan, vehicle: VehicleSheet | undefined) {
    this.plan = plan;
    this.vehicle = vehicle;
    const layout = vehicle?.layout ?? {};
    this.work = workFor(plan, layout);
    this.joints = jointsOf(this.work, layout);
    const said = (lines: readonly string[]) => lines.map((line) => this.say(line));
    const ready = partsFor(plan, this.work).map(({ title, parts, consumables }) => ({
      title,
      parts: said(parts),
      consumables: said(consumables),
    }));
    const coolant = this.coolant();
    this.parts =
      coolant.length > 0 ? [...ready, { title: 'Litres', parts: coolant, consumables: [] }] : ready;
  }

  /** Words for the customer, to be changed to this car. */
  get drafts(): Draft {
    return this.draftIn(this.vehicle, window.headertank.habit);
  }

  /** The same words in every way they may have been drafted on a card: whose figures, which units. */
  get wordings(): Draft[] {
    return [this.vehicle, undefined].flatMap((vehicle) =>
      [METRIC, US].map((habit) => this.draftIn(vehicle, habit)),
    );
  }

  private draftIn(vehicle: VehicleSheet | undefined, habit: Habit): Draft {
    const { title, mechanism, comesBack, general } = this.plan;
    const say = (text: string) => textFor(withFigures(text, general, vehicle, habit), habit);
    return { found: `${title}. ${say(mechanism)}`, watch: say(comesBack) };
  }

  show(job: Job): Node[] {
    const { root } = window.headertank;
    const link = (address: string, text: string) => element('a', { href: new URL(address, root).href }, text);
    const { repair, extra } = minutesOf(this.work);
    const cautions = cautionsOf(this.work, this.vehicle?.layout ?? {});
    return [
      element(
        'p',
        {},
        `Repair ${repair} min`,
        extra > 0 ? `; filling, proving and handing back ${extra} min. ` : '. ',
        link(estimateAddress({ repair, extra }).slice(1), 'Estimate'),
      ),
      ...(cautions.length > 0
        ? [
            element(
              'p',
              { class: 'caution' },
              element('b', {}, 'Cautions, told in full in the procedures: '),
              ...cautions.flatMap(({ id, title }, at) => [
                at > 0 ? ', ' : '',
                link(`cautions/${id}.html`, title),
              ]),
              '.',
            ),
          ]
        : []),
      element(
        'ol',
        {},
        ...this.work.map(({ id, title, minutes }) => {
          const ticked = job.steps?.[id]?.done.length ?? 0;
          const steps = ticked === 0 ? '' : `, ${ticked} ${ticked === 1 ? 'step' : 'steps'} ticked`;
          return element('li', {}, link(`procedures/${id}.html`, title), `, ${minutes} min${steps}`);
        }),
      ),
      element('h3', {}, 'Parts list'),
      ...partsNodes(this.parts, 'h4'),
    ];
  }

  private say(text: string): string {
    return withFigures(text, this.plan.general, this.vehicle, window.headertank.habit);
  }

  /**
   * What a drain brings out goes in again, or the whole fill where a work asks for it; with this vehicle's figures, also how
   * much of it is concentrate.
   */
  private coolant(): string[] {
    const coolant = coolantOf(this.plan, this.work);
    if (!coolant || !isFilled(this.work)) return [];
    const whose = this.vehicle ? '' : ' (general ranges, no vehicle on the card)';
    const amount = coolant.whole
      ? `Coolant, {coolant.capacity} for the whole fill${whose}`
      : `Coolant, {coolant.drain} to go in after a drain, of {coolant.capacity} in all${whose}`;
    const lines = [this.say(coolantLine(amount, coolant))];
    const named = this.vehicle?.coolants.engine;
    if (named !== undefined) lines.push(`Coolant of this vehicle: ${named}`);
    const filled = this.vehicle?.figures[coolant.whole ? 'coolant.capacity' : 'coolant.drain']?.quantity;
    const mixture = this.vehicle?.figures['coolant.mixture']?.quantity;
    if (filled && mixture) {
      const concentrate: Quantity = {
        ...filled,
        low: filled.low * mixture.low,
        high: filled.high * mixture.high,
        decimals: 1,
      };
      lines.push(
        this.say(
          `At {coolant.mixture} that is ${quantityText(concentrate, window.headertank.habit)} of concentrate, the rest water as the maker asks`,
        ),
      );
    }
    return lines;
  }
}
