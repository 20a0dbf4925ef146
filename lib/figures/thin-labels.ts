import { labelBox, TEXT_SIZE } from './label';

/**
 * Which of the labels centred at ascending positions are shown so that none touches another: the last, the first, then
 * from left to right whatever fits.
 */
export const thinLabels = (labels: readonly { readonly text: string; readonly x: number }[], gap = 8): boolean[] => {
  const boxes = labels.map(({ text, x }) => labelBox({ text, x, y: 0, size: TEXT_SIZE, anchor: 'middle' }));
  const shown = labels.map(() => false);
  const fits = (index: number): boolean => {
    const box = boxes[index];
    return boxes.every(
      (other, at) => !shown[at] || box === undefined || box.right + gap <= other.left || box.left - gap >= other.right,
    );
  };
  for (const index of [labels.length - 1, 0, ...labels.keys()]) {
    if (index >= 0 && shown[index] === false && fits(index)) shown[index] = true;
  }
  return shown;
};
