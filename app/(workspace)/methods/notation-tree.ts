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

const readAtom = (reader: Reader): MathTree => {
  const token = reader.take();
  if (token === '√') return { tag: 'msqrt', children: [readAtom(reader)] };
  if (token === '(') {
    const inside = readSum(reader);
    if (reader.take() !== ')') throw new SyntaxError('no formula');
    return inside;
  }
  if (/^\d/.test(token)) return numeral(token);
  if (!/^[A-Za-zπΔ|]/.test(token)) throw new SyntaxError('no formula');
  const name = identifier(token);
  if (reader.peek() !== '(') return name;
  return mathRow(name, operator('('), readAtom(reader), operator(')'));
};

const readPower = (reader: Reader): MathTree => {
  const base = readAtom(reader);
  if (reader.peek() !== '²') return base;
  reader.take();
  return squared(base);
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
    else factors.splice(0, factors.length, fraction(mathRow(...factors), readProduct(reader)));
  }
  return factors.length === 1 ? (factors[0] ?? mathRow()) : mathRow(...factors);
};

const readSum = (reader: Reader): MathTree => {
  const parts = [readProduct(reader)];
  for (let next = reader.peek(); next === '+' || next === '−' || next === '='; next = reader.peek())
    parts.push(operator(reader.take()), readProduct(reader));
  return parts.length === 1 ? (parts[0] ?? mathRow()) : mathRow(...parts);
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
