'use client';

import { useEffect, useEffectEvent, useState } from 'react';
import { moveAlongPoints, pointKeyOf } from './move-along-points';

interface PointHandlers {
  /** Enter or a click on a point. */
  readonly onOpen: ((key: string) => void) | undefined;
  /** The point under the pointer or the focus. */
  readonly onActive: ((key: string | undefined) => void) | undefined;
}

/**
 * Makes the points of a drawing one stop of Tab, moved along by the arrow keys. The listeners stand on the drawing's
 * frame, because its nodes are data, not components.
 *
 * @returns a ref for the frame
 */
export const usePoints = (
  { onOpen, onActive }: PointHandlers,
  drawing: unknown,
): ((frame: HTMLElement | null) => void) => {
  const [frame, setFrame] = useState<HTMLElement | null>(null);
  const open = useEffectEvent((key: string) => onOpen?.(key));
  const activate = useEffectEvent((target: EventTarget | null) => onActive?.(pointKeyOf(target)));

  useEffect(() => {
    const first = frame?.querySelector('[data-key]');
    if (frame?.querySelector('[data-key][tabindex="0"]') === null) first?.setAttribute('tabindex', '0');
  }, [frame, drawing]);

  useEffect(() => {
    if (frame === null) return;
    const listening = new AbortController();
    const options = { signal: listening.signal };
    frame.addEventListener(
      'keydown',
      (event) => {
        const key = pointKeyOf(event.target);
        if (event.key === 'Enter' && key !== undefined) open(key);
        else if (moveAlongPoints(frame, event.key)) event.preventDefault();
      },
      options,
    );
    frame.addEventListener(
      'click',
      (event) => {
        const key = pointKeyOf(event.target);
        if (key !== undefined) open(key);
      },
      options,
    );
    for (const type of ['pointerover', 'focusin'] as const) {
      frame.addEventListener(
        type,
        (event) => {
          activate(event.target);
        },
        options,
      );
    }
    for (const type of ['pointerleave', 'focusout'] as const) {
      frame.addEventListener(
        type,
        () => {
          activate(null);
        },
        options,
      );
    }
    return () => {
      listening.abort();
    };
  }, [frame]);

  return setFrame;
};
