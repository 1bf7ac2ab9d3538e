/** Timers at steps: asked for by the first press on one, and by every page as long as one is kept. */
import '../browser/page-globals.ts';
import { newId } from '../browser/ids.ts';
import { loadStyle } from '../browser/load-style.ts';
import { Bell } from '../timer/page/bell.ts';
import { changeTimers, timers } from '../timer/page/kept-timers.ts';
import { TimerLines } from '../timer/page/timer-lines.ts';
import { aboutWait, showWaits, timerOf } from '../timer/page/wait-buttons.ts';
import { isDue, lengthText, MOST, mended, type Timer, timeLeft, timerFor } from '../timer/timers.ts';

const { root } = window.headertank;
const bell = new Bell();
/** Those that this page has seen running: they ring here when they are over. */
const seen = new Set<string>();
const title = document.title;
let stopped: Timer | undefined;
let keeps = true;

const lines = new TimerLines({
  stop(timer) {
    bell.still(timer.id);
    stopped = timer;
    keeps = changeTimers((all) => all.filter(({ id }) => id !== timer.id));
    lines.sayAloud(`Removed: ${timer.title}`);
    look();
  },
  putBack(timer) {
    stopped = undefined;
    keeps = changeTimers((all) => [...all.filter(({ id }) => id !== timer.id), timer]);
    look();
  },
});

/** What is due rings; the lines, the buttons and the title say how things stand now. */
function look(): void {
  const now = Date.now();
  if (timers().some((each) => mended(each, now) !== each))
    changeTimers((all) => all.map((each) => mended(each, now)));
  const all = timers();
  for (const timer of all) {
    if (!isDue(timer, now)) {
      seen.add(timer.id);
      bell.callIn(timer.id, timeLeft(timer, now) / 1000);
    } else if (seen.delete(timer.id)) ring(timer);
  }
  lines.show(all, stopped, now);
  lines.sayNote(noteOf(all, now));
  showWaits(all, root, now);
  const over = all.find((timer) => isDue(timer, now));
  const wanted = over ? `Time is up: ${over.title}` : title;
  if (document.title !== wanted) document.title = wanted;
}

function ring(timer: Timer): void {
  bell.callIn(timer.id, 0);
  // Refused, with a line in the console, before the first press on a page.
  if (navigator.userActivation?.hasBeenActive) navigator.vibrate?.([600, 300, 600, 300, 600]);
  lines.sayAloud(`Time is up: ${lengthText(timer.length / 60_000)}, ${timer.title}`);
}

function noteOf(all: readonly Timer[], now: number): string {
  if (all.every((timer) => isDue(timer, now))) return '';
  return [
    ...(keeps ? [] : ['This device keeps nothing here: it is lost when you leave the page.']),
    ...(bell.canSound ? [] : ['Sound after a tap on this page.']),
  ].join(' ');
}

window.headertank.startTimer = (start) => {
  if (!start) return;
  const running = timerOf(start, timers(), root);
  const now = Date.now();
  stopped = undefined;
  if (running && !isDue(running, now)) {
    bell.still(running.id);
    stopped = running;
    keeps = changeTimers((all) => all.filter(({ id }) => id !== running.id));
  } else {
    const timer = timerFor(
      { id: newId('timer'), ...aboutWait(start, root) },
      Number(start.dataset.wait),
      now,
    );
    keeps = changeTimers((all) => [...all.filter(({ id }) => id !== running?.id), timer].slice(-MOST));
  }
  void bell.allow().then(look);
  look();
};

document.querySelector('.top')?.after(lines.place);
void loadStyle('timers');
look();
window.setInterval(look, 500);
// A page that slept or was brought back sees at once what is over.
document.addEventListener('visibilitychange', look);
window.addEventListener('pageshow', look);
window.addEventListener('storage', look);
document.addEventListener('headertank:added', look);
document.addEventListener('click', () => void (timers().length > 0 && bell.allow().then(look)));
