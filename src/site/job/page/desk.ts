/** From device to device without a server: a file by the share sheet, or codes from screen to camera. */
import '../../browser/page-globals.ts';
import { codePicture } from '../../browser/code-picture.ts';
import { button, element } from '../../browser/element.ts';
import { loadScript } from '../../browser/load-script.ts';
import { saveFile } from '../../browser/save-file.ts';
import { codesOf, ReadCodes } from '../codes.ts';
import type { DeskCard, JobDesk } from '../job-transfer.ts';
import { fileName, packedPictures } from './job-card-transfer.ts';
import { packed, unpacked } from './packed.ts';

/** Milliseconds that each of several codes stands: a phone reads some three a second. */
const TURN = 900;
/** Milliseconds between two looks at the camera's picture. */
const LOOK = 200;

/** What a page asks of a reader of codes; the browser's own is one. */
interface CodeReader {
  detect(picture: ImageBitmapSource): Promise<{ rawValue: string }[]>;
}

declare global {
  interface Window {
    BarcodeDetector?: {
      new (options: { formats: string[] }): CodeReader;
      getSupportedFormats(): Promise<string[]>;
    };
    /** There once scripts/code-reader.js is loaded. */
    codeReader?: CodeReader;
  }
}

export const desk: JobDesk = { share, showCode, readCode };

async function share(card: DeskCard): Promise<void> {
  const transfer = window.headertank.jobTransfer;
  if (!transfer) return;
  const text = transfer.exported([card.job], [], await packedPictures([card.job]));
  const name = fileName([card.job]);
  const file = new File([text], name.replace(/json$/, 'txt'), { type: 'text/plain' });
  // Share sheets take text files; few take JSON.
  if (navigator.canShare?.({ files: [file] })) {
    try {
      await navigator.share({ files: [file], title: 'Job card' });
      return card.say('.told', 'Handed to the share sheet. On the other device: “Take in a file”.');
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return card.say('.told', 'Not sent.');
    }
  }
  saveFile(name, text, 'application/json');
  card.say(
    '.told',
    `This browser has no share sheet for files: saved as ${name}. On the other device: “Take in a file”.`,
  );
}

async function showCode(card: DeskCard): Promise<void> {
  const transfer = window.headertank.jobTransfer;
  if (!transfer) return;
  const bytes = await packed(transfer.exported([card.job], []));
  const codes = codesOf(bytes, card.job.id.slice(-3).toUpperCase());
  const pictures = codes.map((code) => codePicture(code, 'alphanumeric'));
  const place = element('div', { class: 'code' });
  const line = element('p', { role: 'status' });
  let at = 0;
  let turning: number | undefined;
  const show = (next: number) => {
    at = (next + codes.length) % codes.length;
    place.replaceChildren(pictures[at] ?? '');
    line.textContent = codes.length === 1 ? 'One code holds the card.' : `Code ${at + 1} of ${codes.length}.`;
  };
  const pause = button('Pause', () => {
    if (turning === undefined) start();
    else stop();
  });
  const stop = () => {
    window.clearInterval(turning);
    turning = undefined;
    pause.textContent = 'Turn on by itself';
  };
  const start = () => {
    turning = window.setInterval(() => show(at + 1), TURN);
    pause.textContent = 'Pause';
  };
  show(0);
  const several = codes.length > 1;
  if (several && !matchMedia('(prefers-reduced-motion: reduce)').matches) start();
  else if (several) pause.textContent = 'Turn on by itself';
  const hasPictures = (card.job.pictures ?? []).length > 0;
  fill(card, [
    element(
      'p',
      {},
      'On the other device: Job card, “Read a code”, and hold its camera on this.',
      hasPictures ? ' Pictures do not go this way; send the file for them.' : '',
    ),
    place,
    line,
    element(
      'p',
      { class: 'ways' },
      ...(several ? [button('Back', () => show(at - 1)), button('Next', () => show(at + 1)), pause] : []),
      button('Close', () => {
        stop();
        close(card);
      }),
    ),
  ]);
}

async function readCode(card: DeskCard): Promise<void> {
  const reader = await codeReader();
  if (!reader) return card.say('.told', 'Codes need a part of the site that cannot be fetched just now.');
  const codes = new ReadCodes();
  const line = element(
    'p',
    { role: 'status' },
    'Hold the camera on the code. Several are read in any order.',
  );
  const film = element('video', { playsinline: true, muted: true, class: 'code-film' });
  const file = element('input', {
    type: 'file',
    accept: 'image/*',
    multiple: true,
    class: 'code-file',
    'aria-label': 'Pictures of the codes',
  });
  let stream: MediaStream | undefined;
  let isOver = false;
  const stop = () => {
    isOver = true;
    for (const track of stream?.getTracks() ?? []) track.stop();
  };
  const take = async (found: { rawValue: string }[]) => {
    for (const { rawValue } of found) codes.add(rawValue);
    if (codes.read > 0) line.textContent = `${codes.read} of ${codes.of} read.`;
    const { bytes } = codes;
    if (!bytes || isOver) return;
    stop();
    const text = await unpacked(bytes).catch(() => undefined);
    close(card);
    card.say(
      '.told',
      text === undefined
        ? 'The codes are no whole card. Show them again.'
        : await card.takeText(text, 'The code'),
    );
  };
  file.addEventListener('change', async () => {
    for (const each of file.files ?? []) {
      const picture = await createImageBitmap(each).catch(() => undefined);
      const found = picture ? await reader.detect(picture).catch(() => []) : [];
      if (found.length === 0) line.textContent = `No code is found in ${each.name}.`;
      await take(found);
    }
  });
  fill(card, [
    line,
    film,
    element('label', { class: 'field' }, 'Or from pictures of them: ', file),
    element(
      'p',
      { class: 'ways' },
      button('Close', () => {
        stop();
        close(card);
      }),
    ),
  ]);
  try {
    stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' } });
  } catch {
    film.hidden = true;
    line.textContent =
      'There is no camera here, or it may not be used. Choose pictures of the codes instead.';
    return;
  }
  if (isOver) return stop();
  film.srcObject = stream;
  await film.play().catch(() => undefined);
  const look = async () => {
    if (isOver) return;
    if (film.readyState >= 2) await take(await reader.detect(film).catch(() => []));
    window.setTimeout(look, LOOK);
  };
  void look();
}

/** The browser's own reader, or where it has none, the one that is loaded for it. */
async function codeReader(): Promise<CodeReader | undefined> {
  const Detector = window.BarcodeDetector;
  const formats = (await Detector?.getSupportedFormats().catch(() => [])) ?? [];
  if (Detector && formats.includes('qr_code')) return new Detector({ formats: ['qr_code'] });
  await loadScript('code-reader').catch(() => undefined);
  return window.codeReader;
}

function fill(card: DeskCard, nodes: Node[]): void {
  const place = card.place('.desk');
  place.replaceChildren(...nodes);
  place.hidden = false;
  place.scrollIntoView({ block: 'nearest' });
  place.querySelector('button')?.focus({ preventScroll: true });
}

function close(card: DeskCard): void {
  const place = card.place('.desk');
  place.replaceChildren();
  place.hidden = true;
}
