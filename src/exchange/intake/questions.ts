/** Something that the table leaves open and only the keeper can say. */
export interface Question {
  /** Key of its answer. */
  readonly id: string;
  readonly text: string;
  /** Answers to choose from; empty when any text may be given. */
  readonly options: readonly Option[];
  /** The answer taken until the keeper gives one; absent when nothing is taken and the cells wait as notes. */
  readonly guess?: string;
  /** Form of a free answer. */
  readonly free?: 'day' | 'text' | 'year';
  readonly column?: number;
  readonly line?: number;
}

export interface Option {
  readonly value: string;
  readonly words: string;
}

export type Answers = Readonly<Record<string, string>>;

/** The answer given, else the guess. */
export function answerTo(question: Question, answers: Answers): string | undefined {
  const given = Object.hasOwn(answers, question.id) ? answers[question.id]?.trim() : undefined;
  if (given === undefined || given === '') return question.guess;
  const offered = question.options.length === 0 || question.options.some(({ value }) => value === given);
  return offered ? given : question.guess;
}
