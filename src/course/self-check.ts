/**
 * Counts the questions whose right answer has been opened, and says so with one of the lines written into the page.
 * Opening one answer closes the question's others, so that one reason is read at a time; without scripting they open
 * and close each for itself.
 */
export function attachSelfCheck(check: HTMLElement): void {
  const lines = JSON.parse(check.dataset.lines ?? '[]') as readonly string[];
  const count = check.querySelector('.self-check-count');
  const solved = new Set<HTMLElement>();
  for (const question of check.querySelectorAll<HTMLElement>('.question')) {
    onAnswer(question, (answer) => {
      if ('right' in answer.dataset) solved.add(question);
      if (count) count.textContent = lines[solved.size] ?? '';
    });
  }
}

/** Tells of every answer of a question that is opened, and closes the others. */
function onAnswer(question: HTMLElement, opened: (answer: HTMLDetailsElement) => void): void {
  const answers = [...question.querySelectorAll<HTMLDetailsElement>('.answer')];
  for (const answer of answers) {
    answer.addEventListener('toggle', () => {
      if (!answer.open) return;
      closeAll(answers.filter((other) => other !== answer));
      opened(answer);
    });
  }
}

function closeAll(answers: readonly HTMLDetailsElement[]): void {
  for (const answer of answers) answer.open = false;
}
