import { describe, expect, it } from 'vitest';
import { lightTheme } from '../../lib/figures/figure-theme';
import { drawFramed } from '../../lib/figures/draw-frame';
import { serializeSvg } from '../../lib/figures/serialize-svg';
import { svgText } from '../../lib/figures/svg-node';
import { drawVectorGraph } from '../../lib/figures/vector-graph/draw';
import { buildVectorGraph } from '../../lib/figures/vector-graph/spec';
import { context, fullExamples, vectorGraph } from './examples';

const HOSTILE = `<img src=x onerror="alert(1)">]]><!-- & 'x'`;

const hostileGraph = () => {
  const points = [{ key: HOSTILE, x: 350, y: 33, label: HOSTILE }];
  return drawVectorGraph(
    buildVectorGraph({ groups: [{ id: HOSTILE, label: HOSTILE, shapeIndex: 0, n: 1, points }] }, context),
    lightTheme,
  );
};

describe('a hostile label', () => {
  it('stays text in a file', () => {
    const frame = { title: HOSTILE, subtitle: HOSTILE, caption: HOSTILE };
    const svg = serializeSvg(drawFramed(hostileGraph(), frame, lightTheme), {
      title: HOSTILE,
      description: HOSTILE,
      fontCss: '</style><script>alert(1)</script>',
    });
    expect(svg).not.toMatch(/<img|<script|<!--|\]\]>/);
    expect(svg).toContain('&lt;img src=x onerror=&quot;alert(1)&quot;&gt;');
    expect(svg.match(/<\/style>/g)).toHaveLength(1);
  });

  it('cannot leave an attribute', () => {
    const svg = serializeSvg(svgText('x', { fill: '" onload="alert(1)' }), { title: '', description: '' });
    expect(svg).toContain('fill="&quot; onload=&quot;alert(1)"');
  });

  it('loses the control characters that XML forbids', () => {
    const svg = serializeSvg(svgText('a\u0000b\u0007c\ud83d\ude00', {}), { title: '', description: '' });
    expect(svg).toContain('abc\ud83d\ude00');
  });
});

describe('a file', () => {
  it('carries no key and no spoken label of a client', () => {
    for (const draw of Object.values(fullExamples)) {
      const svg = serializeSvg(draw(lightTheme), { title: 'T', description: 'D' });
      expect(svg).not.toMatch(/data-|aria-|role=/);
      expect(svg.startsWith('<svg xmlns="http://www.w3.org/2000/svg"')).toBe(true);
      expect(svg).toContain('<title>T</title><desc>D</desc>');
    }
    expect(serializeSvg(drawVectorGraph(vectorGraph, lightTheme), { title: '', description: '' })).not.toContain(
      'V0-3',
    );
  });
});
