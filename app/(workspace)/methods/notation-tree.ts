import { fraction, identifier, mathRow, numeral, operator, squared, type MathTree } from './formula-tree';

const TOKEN = /\s*(\d+(?:\.\d+)?|√|[A-Za-zπΔ|][A-Za-z0-9|]*|[()²·/+−=,])/y;

const tokensOf = (notation: string): readonly string[] | undefined => {
  const tokens: string[] = [];
  TOKEN.lastIndex = 0;
  while (TOKEN.lastIndex < notation.trimEnd().length) {
    const found = TOKEN.exec(notation);
    if (found?.[1] === undefined) return undefined;
    tokens.push(found[1]);
  }
  return tokens;
};

interface Reader {
  readonly peek: () => string | undefined;
  readonly take: () => string;
}

/** A tree in its parentheses. */
const inParentheses = (inside: MathTree): MathTree => mathRow(operator('('), inside, operator(')'));

/** What stands alone above or below a bar or under a root needs no parentheses. */
const bare = (tree: MathTree): MathTree => {
  const [open, inside, close, ...more] = tree.tag === 'mrow' ? (tree.children ?? []) : [];
  return open?.text === '(' && close?.text === ')' && more.length === 0 && inside !== undefined ? inside : tree;
};

const readAtom = (reader: Reader): MathTree => {
  const token = reader.take();
  if (token === '√') return { tag: 'msqrt', children: [bare(readAtom(reader))] };
  if (token === '(') {
    const inside = readSum(reader);
    if (reader.take() !== ')') throw new SyntaxError('no formula');
    return inParentheses(inside);
  }
  if (/^\d/.test(token)) return numeral(token);
  if (!/^[A-Za-zπΔ|]/.test(token)) throw new SyntaxError('no formula');
  const name = identifier(token);
  if (reader.peek() !== '(') return name;
  return mathRow(name, readAtom(reader));
};

const readPower = (reader: Reader): MathTree => {
  const base = readAtom(reader);
  if (reader.peek() !== '²') return base;
  reader.take();
  return squared(base);
};

const rowOf = (parts: readonly MathTree[]): MathTree => {
  const [only] = parts;
  return only !== undefined && parts.length === 1 ? only : mathRow(...parts);
};

const readProduct = (reader: Reader): MathTree => {
  const factors = [readPower(reader)];
  for (let next = reader.peek(); next === '·' || next === '/' || next === 'π'; next = reader.peek()) {
    if (next === 'π') {
      factors.push(readPower(reader));
      continue;
    }
    reader.take();
    if (next === '·') factors.push(operator('·'), readPower(reader));
    else factors.splice(0, factors.length, fraction(bare(rowOf(factors)), bare(readProduct(reader))));
  }
  return rowOf(factors);
};

const readSum = (reader: Reader): MathTree => {
  const parts = [readProduct(reader)];
  for (let next = reader.peek(); next === '+' || next === '−' || next === '='; next = reader.peek())
    parts.push(operator(reader.take()), readProduct(reader));
  return rowOf(parts);
};

/** A value's notation (`FFM / H²`, `√(R² + Xc²)`) as trees, one per statement; undefined where it is words. */
export const notationTrees = (notation: string): readonly MathTree[] | undefined => {
  const tokens = tokensOf(notation);
  if (tokens === undefined || tokens.length === 0) return undefined;
  let place = 0;
  const reader: Reader = {
    peek: () => tokens[place],
    take: () => {
      const token = tokens[place];
      if (token === undefined) throw new SyntaxError('no formula');
      place += 1;
      return token;
    },
  };
  try {
    const trees = [readSum(reader)];
    while (reader.peek() === ',') {
      reader.take();
      trees.push(readSum(reader));
    }
    return reader.peek() === undefined ? trees : undefined;
  } catch (reason) {
    if (reason instanceof SyntaxError) return undefined;
    throw reason;
  }
};
