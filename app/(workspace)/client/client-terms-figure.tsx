'use client';

import type { ChangeRow } from '../../../lib/cohort/types/change-row';
import { describeChangeTerms, tableChangeTerms } from '../../../lib/figures/change-terms/describe';
import { drawChangeTerms } from '../../../lib/figures/change-terms/draw';
import { buildChangeTerms } from '../../../lib/figures/change-terms/spec';
import { FigureFrame } from '../../_ui/figure-frame';
import { useSession } from '../../_state/workspace-provider';
import { useWording } from '../contact/use-wording';

const TERMS = ['weight', 'resistance', 'reactance', 'height', 'age'] as const;

/** Where the change comes from: the exact parts of the equation, which sum to it. */
export const ClientTermsFigure = ({ change }: { readonly change: ChangeRow }) => {
  const { messages, formatters, valueWords } = useWording();
  const { cohort } = useSession();
  const words = messages.client;
  const value = valueWords(change.measure);
  const { terms } = change;
  if (terms === null) return null;
  const { notation, source } = cohort.catalogue.measure(change.measure);
  const spec = buildChangeTerms(
    {
      title: value.title,
      unit: value.measure.unit,
      digits: value.measure.decimals,
      terms: TERMS.map((id) => ({ id, label: words.term[id], value: terms[id] })),
      change: change.change,
    },
    { formatters, words: messages.figures, width: 330 },
  );
  return (
    <FigureFrame
      frame={{
        title: words.terms,
        subtitle: words.termsSubtitle({
          change: value.change(change.change),
          from: formatters.date(change.from),
          to: formatters.date(change.to),
        }),
        caption: words.termsCaption({ notation, source }),
      }}
      draw={(theme) => drawChangeTerms(spec, theme)}
      alternative={describeChangeTerms(spec, messages.figures)}
      table={tableChangeTerms(spec, messages.figures)}
      fileName="client-change-terms"
    />
  );
};
