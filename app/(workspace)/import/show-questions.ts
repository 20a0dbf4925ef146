/** Brings the questions about the open clinic's rows into view, and the focus to their heading. */
export const showQuestions = (): void => {
  const heading = document.getElementById('questions');
  heading?.scrollIntoView();
  heading?.focus({ preventScroll: true });
};
