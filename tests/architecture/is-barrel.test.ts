import { expect, test } from 'vitest';
import { isBarrel } from './is-barrel';

test.each([
  "export * from './a';\nexport { b } from './b';",
  "// everything\nexport type { A } from './a';",
  "import { a } from './a';\nexport { a };",
])('a module that only passes on is a barrel: %j', (source) => {
  expect(isBarrel(source)).toBe(true);
});

test.each([
  "export { a } from './a';\nexport const b = 1;",
  "import { a } from './a';\nexport const b = a;",
  "import './globals.css';",
])('a module with something of its own is none: %j', (source) => {
  expect(isBarrel(source)).toBe(false);
});
