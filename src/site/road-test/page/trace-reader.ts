/** Reads and judges a log part by part; the same in a worker and, where a browser gives none, on the page. */
import { type DriverInput, judgeInParts, type TraceJudgement } from '../../../trace/judge-trace.ts';
import { decode } from '../../../trace/read/decode.ts';
import type { Choice } from '../../../trace/read/layout.ts';
import { type LogFault, type LogReading, readLog, type Trace } from '../../../trace/read/read-log.ts';
import { traceVehicleOf, type VehicleFigures } from '../../../trace/vehicle.ts';

/** What the page asks for. The file is sent once; after that only what has changed. */
export interface Order {
  bytes?: ArrayBuffer;
  choice: Choice;
  sheet: VehicleFigures | undefined;
  said: DriverInput;
}

export type ReaderAnswer =
  | { kind: 'progress'; share: number }
  | { kind: 'fault'; fault: LogFault }
  | { kind: 'judged'; understood: LogReading; judged: TraceJudgement };

/** Reads and judges one log; what has not changed since the last order is not done again. */
export class TraceReader {
  private text = '';
  /** The choice the trace was read with, and the trace. */
  private read: { choice: string; trace: Trace; understood: LogReading } | undefined;

  /** Yields after each part; the last answer is a fault or a judgement. */
  *work({ bytes, choice, sheet, said }: Order): Generator<ReaderAnswer | undefined, void> {
    if (bytes) {
      this.text = decode(new Uint8Array(bytes));
      this.read = undefined;
    }
    const key = JSON.stringify(choice);
    if (this.read?.choice !== key) {
      const reading = readLog(this.text, choice);
      for (let part = reading.next(); ; part = reading.next()) {
        if (!part.done) {
          yield { kind: 'progress', share: part.value };
          continue;
        }
        if (!part.value.ok) {
          this.read = undefined;
          yield { kind: 'fault', fault: part.value.fault };
          return;
        }
        const { trace, understood } = part.value;
        this.read = { choice: key, trace, understood };
        break;
      }
    }
    const judging = judgeInParts(this.read.trace, traceVehicleOf(sheet, said.figures, said.whose), said);
    for (let part = judging.next(); ; part = judging.next()) {
      if (part.done) {
        yield { kind: 'judged', understood: this.read.understood, judged: part.value };
        return;
      }
      yield undefined;
    }
  }
}
