/** American wire gauge typed where an area of copper is asked: "12 AWG", "AWG 12". */
import type { Dimension } from '../model/units.ts';
import { wireGaugeArea } from '../physics/cable.ts';

const GAUGE = /^(?:awg\s*#?\s*(\d{1,2})|#?(\d{1,2})\s*-?\s*(?:awg|ga|gauge))\.?$/i;

/** The area in mm² of a gauge that was typed; any other text as it stands. */
export function withGaugeAsArea(text: string, dimension: Dimension): string {
  const found = dimension === 'area' ? GAUGE.exec(text.trim()) : null;
  const gauge = Number(found?.[1] ?? found?.[2]);
  if (!found || gauge > 40) return text;
  return `${(wireGaugeArea(gauge) * 1e6).toFixed(3)} mm²`;
}
