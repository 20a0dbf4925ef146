import { type FormulaSign } from './formula-signs';
import { identifier, mathRow, operator } from './formula-tree';
import { MathFormula } from './math-formula';
import { notationTrees } from './notation-tree';
import { SignList } from './sign-list';

interface NotationFormulaProps {
  /** What stands before the sign of equality. */
  readonly sign: string;
  readonly notation: string;
  readonly signs: readonly FormulaSign[];
}

/** A one-line notation as mathematics with its signs; as plain text where it cannot be read as such. */
export const NotationFormula = ({ sign, notation, signs }: NotationFormulaProps) => {
  const [first, ...others] = notationTrees(notation) ?? [];
  return (
    <>
      {first === undefined ? <p>{notation}</p> : <MathFormula tree={mathRow(identifier(sign), operator('='), first)} />}
      {others.map((tree, place) => (
        <MathFormula key={place} tree={tree} />
      ))}
      <SignList signs={signs} />
    </>
  );
};
