'use client';

import { createElement, type ReactNode } from 'react';
import type { MathTree } from './formula-tree';
import styles from './methods-screen.module.css';

const drawn = (tree: MathTree, key: number): ReactNode =>
  createElement(tree.tag, { key }, tree.text ?? tree.children?.map(drawn));

/** Mathematics as MathML; the plain text beside it says the same. */
export const MathFormula = ({ tree }: { readonly tree: MathTree }) => (
  <div className={styles.formula}>{createElement('math', { display: 'block' }, drawn(tree, 0))}</div>
);
