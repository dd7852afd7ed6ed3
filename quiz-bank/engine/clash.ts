import type { PosedAnswer } from './template.ts';

const plain = (text: string): string => text.toLowerCase().replaceAll(/\s+/g, ' ').trim();
const repeats = (texts: string[]): boolean => new Set(texts.map(plain)).size !== texts.length;

/** True when a drawn question has two choices that read the same, or an idea whose answer would count as right. */
export function clashes(answer: PosedAnswer): boolean {
  switch (answer.kind) {
    case 'one':
    case 'judge':
      return repeats([answer.right, ...answer.wrong.map(({ text }) => text)]);
    case 'all':
      return repeats(answer.boxes.map(({ text }) => text)) || !answer.boxes.some(({ right }) => right);
    case 'order':
      return repeats(answer.steps);
    case 'number': {
      // Two tolerances apart, so that rounding on the way in can't turn one into the other.
      const apart = 2 * answer.tolerance;
      return answer.ideas.some(
        ({ value }, at) =>
          Math.abs(value - answer.value) <= apart ||
          answer.ideas.some((other, place) => place < at && Math.abs(other.value - value) <= apart),
      );
    }
    case 'mark':
      return (
        answer.right.length === 0 || answer.ideas.some(({ cells }) => cells.some((cell) => answer.right.includes(cell)))
      );
  }
}
