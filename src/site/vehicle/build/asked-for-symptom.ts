/** The features of the layout that a complaint's causes, tests and tree know apart. */
import { LAYOUT_FEATURES, type LayoutFeature } from '../../../model/layout.ts';
import { walkViewOf } from '../../walk/build/walk-view.ts';

/** In the order of the page; the drive is always among them, since cautions hang on it. */
export function featuresAskedFor(symptom: string): LayoutFeature[] {
  const { data, texts } = walkViewOf(symptom);
  const conditions = [
    data.needs?.layout ?? {},
    ...Object.values(data.causeLayouts),
    ...Object.values(data.testLayouts),
  ];
  return LAYOUT_FEATURES.filter(
    (feature) =>
      feature === 'power' ||
      texts.layout[feature] !== undefined ||
      conditions.some((condition) => condition && feature in condition),
  );
}
