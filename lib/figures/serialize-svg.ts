import type { SvgNode } from './svg-node';

export interface SvgFileText {
  readonly title: string;
  readonly description: string;
  /** `@font-face` rules to embed, where the file must carry its face. */
  readonly fontCss?: string;
}

const codes = (from: number, to: number): string =>
  `\\u${from.toString(16).padStart(4, '0')}-\\u${to.toString(16).padStart(4, '0')}`;
// XML 1.0 allows these nowhere, not even escaped; a literal class of them would be unreadable.
const FORBIDDEN = new RegExp(`[${codes(0, 8)}${codes(11, 12)}${codes(14, 31)}${codes(0xfffe, 0xffff)}]`, 'g');

const escapeXml = (text: string): string =>
  text
    .replace(FORBIDDEN, '')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;');

/** Keys and spoken labels serve the page and may name a client; a file carries neither. */
const staysOnThePage = (name: string): boolean =>
  name === 'role' || name === 'tabindex' || name.startsWith('data-') || name.startsWith('aria-');

const writeNode = (node: SvgNode, head = ''): string => {
  const attributes = Object.entries(node.attributes)
    .filter(([name]) => !staysOnThePage(name))
    .map(([name, value]) => ` ${name}="${escapeXml(String(value))}"`)
    .join('');
  const inside =
    head +
    (node.text === undefined ? '' : escapeXml(node.text)) +
    node.children.map((child) => writeNode(child)).join('\n');
  return inside === '' ? `<${node.name}${attributes}/>` : `<${node.name}${attributes}>${inside}</${node.name}>`;
};

/**
 * An SVG 1.1 file of a drawing, with its title and description inside. All text is escaped: a hostile label stays text.
 * `data-`, `aria-` and `role` are left out, so that no client's key leaves with a picture.
 */
export const serializeSvg = (node: SvgNode, { title, description, fontCss }: SvgFileText): string =>
  writeNode(
    node,
    `<title>${escapeXml(title)}</title><desc>${escapeXml(description)}</desc>${
      fontCss === undefined ? '' : `<style>${escapeXml(fontCss)}</style>`
    }\n`,
  );
