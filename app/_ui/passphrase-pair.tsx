'use client';

import { useMessages } from '../_state/language-provider';
import { PassphraseField } from './passphrase-field';

/** A passphrase typed twice. */
export interface Pair {
  readonly first: string;
  readonly second: string;
}

export const SHORTEST_PASSPHRASE = 10;

/** Why a passphrase typed twice cannot be used; undefined where it can. */
export const passphraseProblem = ({ first, second }: Pair): 'short' | 'differ' | undefined => {
  if (first.length < SHORTEST_PASSPHRASE) return 'short';
  return first === second ? undefined : 'differ';
};

interface PassphrasePairProps {
  readonly pair: Pair;
  readonly onChange: (pair: Pair) => void;
}

/** The two fields of a new passphrase, with what is wrong as soon as there is something to say. */
export const PassphrasePair = ({ pair, onChange }: PassphrasePairProps) => {
  const words = useMessages().settingsKeeping.seal;
  const problem = passphraseProblem(pair);
  const firstHint =
    problem === 'short' && pair.first !== ''
      ? words.short({ n: SHORTEST_PASSPHRASE })
      : words.min({ n: SHORTEST_PASSPHRASE });
  return (
    <div className="stack">
      <PassphraseField
        label={words.new}
        purpose="new-password"
        value={pair.first}
        hint={firstHint}
        onChange={(first) => {
          onChange({ ...pair, first });
        }}
      />
      <PassphraseField
        label={words.again}
        named={false}
        purpose="new-password"
        value={pair.second}
        hint={problem === 'differ' && pair.second !== '' ? words.differ : undefined}
        onChange={(second) => {
          onChange({ ...pair, second });
        }}
      />
    </div>
  );
};
