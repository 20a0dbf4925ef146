'use client';

import { useCallback } from 'react';
import type { AnyMeasureId } from '../../lib/measures/measure-id';
import { useMessages } from './language-provider';
import { valueMark } from './value-mark';
import { useWorkspace } from './workspace-provider';

/** The name of any value, with what has to stand behind it in the open clinic. */
export const useValueNames = (): ((id: AnyMeasureId) => string) => {
  const messages = useMessages();
  const { state } = useWorkspace();
  const catalogue = state.kind === 'open' ? state.session.cohort.catalogue : undefined;
  return useCallback(
    (id) => {
      const { name } = messages.measures[id];
      const measure = catalogue?.follows(id) === true ? catalogue.measure(id) : undefined;
      const mark = valueMark(measure, messages.methods.mark);
      return mark === undefined ? name : `${name} (${mark})`;
    },
    [messages, catalogue],
  );
};
