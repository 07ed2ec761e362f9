/** One place where tasks are worked on, one after another: a thread, a browser's worker, or here. */
export interface Lane<Task, Result> {
  /**
   * Works on one task; the next is handed over only when this one has settled. Once `signal` is set the work is stopped,
   * and the promise is rejected when it has ended; the lane can be used again. Rejects with what the work throws.
   */
  run(task: Task, signal: AbortSignal): Promise<Result>
  /** Ends the thread or worker, if there is one. */
  close(): Promise<void>
}
