'use client';

import { useEffect, useState } from 'react';
import type { ClinicRef } from '../../../lib/workspace/workspace';
import { useMessages } from '../../_state/language-provider';
import { openWorkspace } from '../../_state/open-workspace';
import { useSession } from '../../_state/workspace-provider';
import { LabelledSelect } from '../../_ui/labelled-select';
import type { ImportWork } from './import-work';

const NEW = 'new';

interface IntoClinicProps {
  readonly work: ImportWork;
  readonly disabled: boolean;
  readonly onInto: (into: string) => void;
}

/** Into which clinic the files go: nothing to choose as long as there is no own one. */
export const IntoClinic = ({ work, disabled, onInto }: IntoClinicProps) => {
  const words = useMessages().importScreen.into;
  const session = useSession();
  const [kept, setKept] = useState<readonly ClinicRef[]>([]);
  useEffect(() => {
    let current = true;
    const ask = async (): Promise<void> => {
      const clinics = await (await openWorkspace()).clinics();
      if (current && clinics.ok) setKept(clinics.value.filter(({ kind, sealed }) => kind === 'own' && !sealed));
    };
    ask().catch(() => undefined);
    return () => {
      current = false;
    };
  }, [session]);
  const open = session.clinic.kind === 'own' ? [session.clinic] : [];
  const own = [...open, ...kept.filter(({ id }) => !open.some((clinic) => clinic.id === id))];
  if (own.length === 0 || disabled) return null;
  return (
    <LabelledSelect
      label={words.label}
      value={work.into}
      options={[...own.map(({ id, name }) => ({ value: id, label: name })), { value: NEW, label: words.new }]}
      onChange={onInto}
    />
  );
};
