/** Runs a command: its status is the process's, and what ends it early is told in one line, with status 2. */
export function runMain(main: () => Promise<number>): void {
  main().then(
    (status) => {
      process.exitCode = status;
    },
    (error: unknown) => {
      console.error(error instanceof Error ? error.message : String(error));
      process.exitCode = 2;
    },
  );
}
