/** What a command needs of the machine it runs on: where words go, and who reads them. Tests pass their own. */
export interface Machine {
  readonly version: string
  /** Folder with `examples/` and, once built, `dist/web/`. */
  readonly home: string
  /** Writes to standard output, as it stands. */
  readonly out: (text: string) => void
  /** Writes to standard error, as it stands. */
  readonly err: (text: string) => void
  /** True when a person watches standard error: progress is shown only then. */
  readonly isWatched: boolean
  /** True when a person can be asked: standard input and standard error are a terminal. */
  readonly canAsk: boolean
  /** True when standard output shows colours. */
  readonly hasColour: boolean
}

/** The options every command takes. */
export interface GlobalOptions {
  readonly json?: boolean
  readonly quiet?: boolean
  readonly units?: string
}
