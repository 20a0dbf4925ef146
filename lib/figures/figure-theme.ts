/** Colours and faces of a drawing. A colour is a CSS colour or a custom property; nothing else of the page is needed. */
export interface FigureTheme {
  readonly ink: string;
  /** Secondary text and axis lines. */
  readonly inkSecond: string;
  /** Hairlines. */
  readonly hair: string;
  /** Error bands and reference regions. */
  readonly band: string;
  /** The surface the figure lies on: fills of hollow marks and halos of labels. */
  readonly sheet: string;
  /** Hues of the first six groups; later groups are drawn in ink. */
  readonly groups: readonly [string, string, string, string, string, string];
  readonly sans: string;
  readonly serif: string;
}

const faces = {
  sans: "'Source Sans 3 Variable', system-ui, sans-serif",
  serif: "'Source Serif 4 Variable', Georgia, serif",
};

/** For a page that carries the design tokens: follows the page's own light and dark. */
export const screenTheme: FigureTheme = {
  ink: 'var(--ink)',
  inkSecond: 'var(--ink-2)',
  hair: 'var(--hair)',
  band: 'var(--band)',
  sheet: 'var(--sheet)',
  groups: ['var(--g1)', 'var(--g2)', 'var(--g3)', 'var(--g4)', 'var(--g5)', 'var(--g6)'],
  ...faces,
};

/** For a light file. */
export const lightTheme: FigureTheme = {
  ink: '#1c2127',
  inkSecond: '#59616b',
  hair: '#dcd7cc',
  band: '#ece7db',
  sheet: '#fffefb',
  groups: ['#1f6fb2', '#b64a12', '#13775a', '#a03f76', '#80600d', '#5f52ad'],
  ...faces,
};

/** For a dark file. */
export const darkTheme: FigureTheme = {
  ink: '#e8e6e1',
  inkSecond: '#a6adb6',
  hair: '#343a43',
  band: '#272d35',
  sheet: '#1b1f25',
  groups: ['#6fb1ec', '#f0935c', '#53bd9b', '#e08fbd', '#d3ab4a', '#ada2f2'],
  ...faces,
};

const printInk = '#111111';

/** For paper: ink on white; groups differ by shape and dash alone, so a monochrome printer loses nothing. */
export const printTheme: FigureTheme = {
  ink: printInk,
  inkSecond: '#4d4d4d',
  hair: '#c4c4c4',
  band: '#ececec',
  sheet: '#ffffff',
  groups: [printInk, printInk, printInk, printInk, printInk, printInk],
  ...faces,
};
