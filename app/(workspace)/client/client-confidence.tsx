'use client';

import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import type { MeasureId } from '../../../lib/measures/measure-id';
import { useWording } from '../contact/use-wording';

/** Never written as certain: an estimate of an error is not known that far out. */
const MOST = 0.99;

/** Confidence from error alone, and the guess beside other people of the program. */
export const ClientConfidence = ({
  detail,
  measure,
}: {
  readonly detail: ClientDetail;
  readonly measure: MeasureId;
}) => {
  const { messages, formatters, valueWords } = useWording();
  const { confidence } = detail;
  if (confidence === null) return null;
  const words = messages.clientVector.confidence;
  const value = valueWords(measure);
  const share = (of: number): string =>
    of > MOST ? words.atMost({ share: formatters.percent(MOST) }) : formatters.percent(of);
  const { beside } = confidence;
  return (
    <section>
      <h2>{words.title}</h2>
      <p>{words.fromError({ value: value.title, share: share(confidence.fromError), df: confidence.df })}</p>
      {beside === null ? (
        <p className="quiet small">{words.noBeside}</p>
      ) : (
        <>
          <p>
            <bdi>
              {words.beside({
                program: beside.program,
                people: beside.people,
                mean: value.change(beside.mean),
                guess: value.change(beside.guess),
                sd: value.amount(beside.guessSd),
                share: share(beside.sameDirection),
              })}
            </bdi>
          </p>
          <p className="quiet small">{words.besideNote}</p>
        </>
      )}
    </section>
  );
};
