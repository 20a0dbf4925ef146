'use client';

import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import { useSession } from '../../_state/workspace-provider';
import { useWording } from '../contact/use-wording';
import { fluidOrCell } from './fluid-or-cell';
import { judgedMeasure } from '../../../lib/workspace/current-change';

/** Water or cell mass, with the vector's parts along both axes and the error of each. */
export const ClientSplit = ({ detail }: { readonly detail: ClientDetail }) => {
  const wording = useWording();
  const { cohort } = useSession();
  const words = wording.messages.clientVector.split;
  const { parts } = detail.vector;
  const f = wording.formatters;
  if (detail.vector.vectors.length < 2) return null;
  return (
    <section>
      <h2>{words.title}</h2>
      <p className="serif">{fluidOrCell(detail, judgedMeasure(detail, cohort.lean), wording)}</p>
      {parts === null ? null : (
        <p>
          {words.parts({
            fluid: f.signed(parts.fluid.value, 2),
            fluidLsc: f.number(parts.fluid.lsc, 2),
            cell: f.signed(parts.cell.value, 2),
            cellLsc: f.number(parts.cell.lsc, 2),
            n: parts.n,
          })}{' '}
          {parts.dayAxisDeg === null ? words.assumed : words.learnt({ degrees: parts.dayAxisDeg })}
        </p>
      )}
      <p className="quiet small">{words.caution}</p>
    </section>
  );
};
