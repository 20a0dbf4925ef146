const steps: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 };

/** The key of the point under an event, where there is one. */
export const pointKeyOf = (target: EventTarget | null): string | undefined =>
  target instanceof Element ? (target.closest('[data-key]')?.getAttribute('data-key') ?? undefined) : undefined;

/**
 * Moves the focus along a figure's points (`data-key`) in their order, by arrow keys, Home and End; Escape returns to
 * the figure.
 *
 * @returns whether the key was one of these
 */
export const moveAlongPoints = (stage: HTMLElement, key: string): boolean => {
  const points = [...stage.querySelectorAll<SVGElement>('[data-key]')];
  const present = points.findIndex((point) => point === document.activeElement);
  const step = steps[key];
  const last = points.length - 1;
  let next: SVGElement | HTMLElement | undefined;
  if (key === 'Escape') next = stage;
  else if (key === 'Home') next = points[0];
  else if (key === 'End') next = points[last];
  else if (step !== undefined)
    next = present < 0 ? points[step > 0 ? 0 : last] : points[Math.min(Math.max(present + step, 0), last)];
  if (next === undefined) return false;
  if (next !== stage) next.setAttribute('tabindex', '-1');
  next.focus();
  return true;
};
