const steps: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 };

/** The key of the point under an event, where there is one. */
export const pointKeyOf = (target: EventTarget | null): string | undefined =>
  target instanceof Element ? (target.closest('[data-key]')?.getAttribute('data-key') ?? undefined) : undefined;

/**
 * Moves the focus along a figure's points (`data-key`) in their order, by arrow keys, Home and End. The point that has
 * it is the one that Tab comes back to.
 *
 * @returns whether the key was one of these
 */
export const moveAlongPoints = (frame: HTMLElement, key: string): boolean => {
  const points = [...frame.querySelectorAll<SVGElement>('[data-key]')];
  const present = points.findIndex((point) => point === document.activeElement);
  const last = points.length - 1;
  const step = steps[key];
  const place = key === 'Home' ? 0 : key === 'End' ? last : step === undefined ? undefined : present + step;
  if (place === undefined || last < 0) return false;
  const next = points[Math.min(Math.max(place, 0), last)];
  for (const point of points) point.setAttribute('tabindex', point === next ? '0' : '-1');
  next?.focus();
  return true;
};
