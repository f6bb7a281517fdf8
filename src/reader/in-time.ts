/** An answer, if it comes within so many milliseconds; otherwise an error of these words. */
export function inTime<T>(limit: number, answer: Promise<T>, late: string): Promise<T> {
  return new Promise((settle, fail) => {
    const timer = setTimeout(() => fail(new Error(late)), limit);
    answer.then(settle, fail).finally(() => clearTimeout(timer));
  });
}
