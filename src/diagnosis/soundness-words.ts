import type { Action } from './model.ts';
import { SOMETHING_ELSE } from './model.ts';
import { inMinutes } from './reason.ts';
import type { SoundnessFinding } from './soundness.ts';
import { NAMED_SHARE } from './soundness.ts';

/** A finding as a sentence, by ids: what was found and what would be right. */
export function describeFinding(finding: SoundnessFinding): string {
  switch (finding.rule) {
    case 'worse-than-no-tests':
      return `The tree takes ${inMinutes(finding.minutes)} on average; proving the causes by chance per minute with no tests takes ${inMinutes(finding.withoutTests)}. Move the tests that split most to the front, or leave out those that do not pay.`;
    case 'dearer-than-best-found': {
      const found = `The tree takes ${inMinutes(finding.minutes)} on average, ${finding.ratio.toFixed(2)} times the best found (${inMinutes(finding.best)}).`;
      const { move } = finding;
      if (move === undefined) return `${found} No single step stands out.`;
      return `${found} At step "${move.step}", ${actionInWords(move.instead)} instead saves about ${inMinutes(move.saves)}. Or write "because:" with the reason for this order.`;
    }
    case 'end-leads-with-unlikely-cause':
      return `End "${finding.step}" leads with "${finding.leads}" (${percent(finding.share)}), but ${inWords(finding.likelier)} is likelier there (${percent(finding.itsShare)}).${finding.likelier === SOMETHING_ELSE ? ' Ask one more test before this end, or pass on.' : ' Name that first.'}`;
    case 'end-names-too-little':
      return `The causes named at end "${finding.step}" hold ${percent(finding.share)} of the cars that come there; it must be ${percent(NAMED_SHARE)} or more. Name the missing causes or ask one more test.`;
    case 'test-changes-nothing':
      return finding.because === 'same-way'
        ? `Step "${finding.step}" asks "${finding.test}", and every answer is followed by the same steps. Leave it out, or let the answers part.`
        : `Step "${finding.step}" asks "${finding.test}", which has been answered on every way that leads there. Leave it out.`;
    case 'step-never-reached':
      return `No car comes to step "${finding.step}". Leave it out, or mend the way that should lead there.`;
  }
}

/** An action by id, as something to do. */
function actionInWords(action: Action): string {
  switch (action.kind) {
    case 'test':
      return `asking "${action.test}"`;
    case 'prove':
      return `proving "${action.cause}"`;
    case 'pass-on':
      return 'passing the car on';
  }
}

function inWords(cause: string): string {
  return cause === SOMETHING_ELSE ? 'something else' : `"${cause}"`;
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}
