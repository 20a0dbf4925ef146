import { describe, expect, it } from 'vitest';
import { darkTheme, lightTheme, printTheme, screenTheme } from '../../lib/figures/figure-theme';
import { drawFramed } from '../../lib/figures/draw-frame';
import { serializeSvg } from '../../lib/figures/serialize-svg';
import { emptyExamples, fullExamples } from './examples';

const themes = { light: lightTheme, dark: darkTheme, print: printTheme };

const frame = {
  title:
    'Women in Weight management stand shorter on the graph than this clinic’s own baseline: lower resistance for their height.',
  subtitle:
    'Resistance and reactance per metre of height at 50 kHz, latest visit, women, standing, n = 300. Small ellipses: 95 % confidence of each mean vector. Large: where 50, 75 and 95 % of new individuals would lie.',
  caption: 'Reference: this clinic’s own baseline. 11 visits set aside. Invented data.',
};

describe('the drawing of each figure', () => {
  for (const [theme, colours] of Object.entries(themes)) {
    for (const [name, draw] of Object.entries(fullExamples)) {
      it(`${name}, ${theme}, is what was last looked at and approved`, async () => {
        const svg = serializeSvg(draw(colours), { title: name, description: 'An example.' });
        await expect(`${svg}\n`).toMatchFileSnapshot(`snapshots/${name}-${theme}.svg`);
      });
    }
  }
  for (const [name, draw] of Object.entries(emptyExamples)) {
    it(`${name} without data is what was last looked at and approved`, async () => {
      const svg = serializeSvg(draw(lightTheme), { title: name, description: 'An example.' });
      await expect(`${svg}\n`).toMatchFileSnapshot(`snapshots/${name}-empty.svg`);
    });
  }
  it('a framed figure is what was last looked at and approved', async () => {
    const figure = fullExamples['vector-graph']?.(lightTheme);
    expect(figure).toBeDefined();
    if (figure === undefined) return;
    const svg = serializeSvg(drawFramed(figure, frame, lightTheme), {
      title: frame.title,
      description: frame.subtitle,
    });
    await expect(`${svg}\n`).toMatchFileSnapshot('snapshots/vector-graph-framed.svg');
  });
  it('on screen differs from a light file in colours alone', () => {
    const plain = (svg: string): string => svg.replace(/(fill|stroke)="[^"]*"/g, '$1');
    for (const draw of Object.values(fullExamples)) {
      const text = { title: '', description: '' };
      expect(plain(serializeSvg(draw(screenTheme), text))).toBe(plain(serializeSvg(draw(lightTheme), text)));
    }
  });
});
