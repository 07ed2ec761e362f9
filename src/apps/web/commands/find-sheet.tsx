import { type ReactElement, useEffect, useRef, useState } from 'react'
import { flushSync } from 'react-dom'
import { type Entry, findEntries } from './find-entries.ts'
import { onKeys } from './on-keys.ts'
import { OverPage } from './over-page.tsx'
import { useEntries } from './use-entries.ts'

/** One field that finds holes, players, courses, pages and commands, as in the index of an atlas. */
export function FindSheet(props: { readonly onClose: () => void }): ReactElement {
  const entries = useEntries()
  const [typed, setTyped] = useState('')
  const [at, setAt] = useState(0)
  const field = useRef<HTMLInputElement>(null)
  const list = useRef<HTMLDivElement>(null)
  useEffect(() => field.current?.focus(), [])
  const found = findEntries(entries, typed)
  const chosen = Math.min(at, found.length - 1)
  // biome-ignore lint/correctness/useExhaustiveDependencies: the chosen one is the one that is marked.
  useEffect(() => {
    list.current?.querySelector('[aria-selected=true]')?.scrollIntoView({ block: 'nearest' })
  }, [chosen])
  const go = (entry: Entry | undefined): void => {
    if (entry === undefined) return
    // First the sheet goes and gives the focus back: a command may take it elsewhere.
    flushSync(props.onClose)
    entry.go()
  }
  return (
    <OverPage title="Find" onClose={props.onClose}>
      <label className="over-page-words" htmlFor="find-field">
        A hole by its number or name, a player, a course, or what to do
      </label>
      <input
        id="find-field"
        className="find-field"
        type="text"
        role="combobox"
        aria-expanded={found.length > 0}
        aria-controls="find-found"
        aria-autocomplete="list"
        aria-activedescendant={found.length > 0 ? `found-${chosen}` : undefined}
        autoComplete="off"
        ref={field}
        value={typed}
        onChange={(event) => {
          setTyped(event.target.value)
          setAt(0)
        }}
        onKeyDown={(event) =>
          onKeys(event, 'find', {
            below: () => setAt(Math.min(chosen + 1, found.length - 1)),
            above: () => setAt(Math.max(chosen - 1, 0)),
            go: () => go(found[chosen]),
          })
        }
      />
      <div ref={list} id="find-found" className="find-found" role="listbox" aria-label="Found">
        {found.map((entry, index) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the field above takes the keys.
          <div
            key={`${entry.kind} ${entry.name}`}
            id={`found-${index}`}
            role="option"
            aria-selected={index === chosen}
            tabIndex={-1}
            onClick={() => go(entry)}
          >
            <span>{entry.name}</span> <i>{entry.kind}</i>
          </div>
        ))}
      </div>
      <p role="status" className="silent">
        {typed.trim() !== '' && found.length === 0 ? 'Nothing is called so.' : ''}
      </p>
    </OverPage>
  )
}
