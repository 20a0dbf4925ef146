import type { FocusEvent, PointerEvent } from 'react';

/** Attribute that a cell carries to name its row. */
export const ROW_NAME = 'data-row-name';

const nameOf = (target: EventTarget | null): string | undefined => {
  const row = target instanceof Element ? target.closest('tr') : null;
  return row?.querySelector(`[${ROW_NAME}]`)?.getAttribute(ROW_NAME) ?? undefined;
};

/** Handlers for a table's frame that tell the named row under the pointer or the focus. */
export const rowNameHandlers = (tell: (name: string | undefined) => void) => ({
  onPointerOver: (event: PointerEvent) => {
    tell(nameOf(event.target));
  },
  onPointerLeave: () => {
    tell(undefined);
  },
  onFocus: (event: FocusEvent) => {
    tell(nameOf(event.target));
  },
  onBlur: () => {
    tell(undefined);
  },
});
