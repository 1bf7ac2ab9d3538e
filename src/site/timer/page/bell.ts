/**
 * The sound of a timer. It is laid into the audio clock ahead, which goes on where a page behind others is woken only once a
 * minute. A browser allows sound only after a press on the page.
 */

/** Three strokes, then a pause; Hz, and seconds from the start of a call to that of the next. */
const TONE = 880;
const STROKES = [0, 0.4, 0.8];
const STROKE = 0.25;
const CALLS = [0, 4, 8, 12, 16, 20];
const LOUD = 0.5;

interface Call {
  tone: OscillatorNode;
  /** Of the audio clock, s. */
  at: number;
}

/** Rings when a timer is over, as far as the browser lets a page sound: only after somebody has pressed something. */
export class Bell {
  private audio: AudioContext | undefined;
  private readonly calls = new Map<string, Call>();

  get canSound(): boolean {
    return this.audio?.state === 'running';
  }

  /** After a press: sound is asked for. */
  async allow(): Promise<void> {
    this.audio ??= new AudioContext();
    if (this.audio.state !== 'running') await this.audio.resume();
  }

  /** Sounds in so many seconds; a sound laid earlier for the same timer moves there when it would come late or early. */
  callIn(id: string, seconds: number): void {
    const { audio } = this;
    if (!audio || !this.canSound) return;
    const at = audio.currentTime + seconds;
    const laid = this.calls.get(id);
    if (laid && Math.abs(laid.at - at) < 1) return;
    this.still(id);
    const tone = audio.createOscillator();
    const gain = audio.createGain();
    tone.frequency.value = TONE;
    gain.gain.value = 0;
    for (const start of CALLS.flatMap((call) => STROKES.map((stroke) => at + call + stroke))) {
      gain.gain.setValueAtTime(LOUD, start);
      gain.gain.setValueAtTime(0, start + STROKE);
    }
    tone.connect(gain).connect(audio.destination);
    tone.start(at);
    tone.stop(at + Math.max(...CALLS) + 2);
    this.calls.set(id, { tone, at });
  }

  still(id: string): void {
    const laid = this.calls.get(id);
    laid?.tone.disconnect();
    this.calls.delete(id);
  }
}
