import { type ReactElement, useRef } from 'react'

/** Tables as people keep them, for `accept`. */
export const TABLE_FILES = '.csv,.txt,.tsv,text/csv'

/** A button that asks for one file of the disk. */
export function OpenFile(props: {
  readonly words: string
  /** What is asked for, for screen readers: `A table of shots`. */
  readonly label: string
  readonly accept: string
  readonly isDisabled?: boolean
  readonly onOpen: (file: File) => void
}): ReactElement {
  const input = useRef<HTMLInputElement>(null)
  return (
    <>
      <button type="button" disabled={props.isDisabled} onClick={() => input.current?.click()}>
        {props.words}
      </button>
      <input
        ref={input}
        type="file"
        accept={props.accept}
        hidden
        aria-label={props.label}
        onChange={(event) => {
          const [asked] = event.target.files ?? []
          // The same file may be chosen again once it was put right.
          if (asked !== undefined) props.onOpen(asked)
          event.target.value = ''
        }}
      />
    </>
  )
}
