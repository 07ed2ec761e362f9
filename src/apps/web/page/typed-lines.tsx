import { type KeyboardEvent, type ReactElement, type ReactNode, useRef, useState } from 'react'
import '../style/typed-lines.css'
import type { Fault } from '#faults/fault.ts'

/** A line typed for each hole, Enter to the next; what does not make sense stands below its line once it was left. */
export function TypedLines(props: {
  /** Names the fields of these lines apart from others on the page. */
  readonly name: string
  readonly refs: readonly string[]
  readonly lines: Readonly<Record<string, string>>
  readonly faultsOf: (ref: string, line: string) => readonly Fault[]
  readonly onLine: (ref: string, line: string) => void
  /** What stands beside a line. */
  readonly beside?: (ref: string) => ReactNode
}): ReactElement {
  const { name, refs, lines, faultsOf, onLine, beside } = props
  // What is still being typed is not wrong yet.
  const [left, setLeft] = useState<ReadonlySet<string>>(() => new Set(Object.keys(lines)))
  const body = useRef<HTMLOListElement>(null)
  const go = (event: KeyboardEvent, index: number): void => {
    if (event.key !== 'Enter') return
    event.preventDefault()
    body.current?.querySelectorAll('input')[index + 1]?.focus()
  }
  return (
    <ol ref={body} className="typed-lines">
      {refs.map((ref, index) => {
        const line = lines[ref] ?? ''
        const faults = left.has(ref) ? faultsOf(ref, line) : []
        const id = `${name}-fault-${ref}`
        return (
          <li key={ref}>
            <label>
              <b>{ref}:</b>
              <input
                type="text"
                autoComplete="off"
                autoCapitalize="none"
                spellCheck={false}
                aria-label={`Hole ${ref}`}
                aria-invalid={faults.length > 0}
                aria-describedby={faults.length > 0 ? id : undefined}
                value={line}
                onChange={(event) => onLine(ref, event.currentTarget.value)}
                onBlur={() => setLeft(new Set([...left, ref]))}
                onKeyDown={(event) => go(event, index)}
              />
            </label>
            {faults.length > 0 && (
              <ul id={id} className="line-faults">
                {faults.map(({ place, message, advice }) => (
                  <li key={place + message}>
                    {place === '' ? '' : `${place}: `}
                    {message} {advice}
                  </li>
                ))}
              </ul>
            )}
            {beside?.(ref)}
          </li>
        )
      })}
    </ol>
  )
}
