import type { SectionId } from './sections';

/** Prints one section of the page alone. */
export const printOnly = (section: SectionId): void => {
  const { dataset } = document.body;
  dataset.printOnly = section;
  const whole = (): void => {
    delete dataset.printOnly;
    window.removeEventListener('afterprint', whole);
  };
  window.addEventListener('afterprint', whole);
  window.print();
};
