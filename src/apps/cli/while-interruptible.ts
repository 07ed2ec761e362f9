/**
 * Work that can be stopped half-way with what is done in hand: the signal is set by Ctrl-C, by a polite kill, and when
 * nobody reads the answer any more. A second Ctrl-C ends the process as ever.
 */
export async function whileInterruptible<Result>(
  work: (signal: AbortSignal) => Promise<Result>,
): Promise<Result> {
  const stopping = new AbortController()
  const stop = (): void => stopping.abort()
  for (const signal of STOPS) process.once(signal, stop)
  process.stdout.once('error', stop)
  try {
    return await work(stopping.signal)
  } finally {
    for (const signal of STOPS) process.off(signal, stop)
    process.stdout.off('error', stop)
  }
}

const STOPS = ['SIGINT', 'SIGTERM'] as const
