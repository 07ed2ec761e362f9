import { type ReactElement, useState } from 'react'
import { KEY_TABLE, type KeyPlace } from './key-table.ts'
import { keyWords } from './key-words.ts'
import { areSingleKeysOn, setSingleKeys } from './live-commands.ts'
import { OverPage } from './over-page.tsx'

/** Every key there is, from the table that binds them. */
export function KeyList(props: { readonly onClose: () => void }): ReactElement {
  const [areOn, setOn] = useState(areSingleKeysOn)
  const turn = (): void => {
    setSingleKeys(!areOn)
    setOn(!areOn)
  }
  return (
    <OverPage title="Keys" onClose={props.onClose}>
      <p className="over-page-words">
        Tab goes from one thing to the next, Enter presses it; a scale takes the arrow keys, Home and End.
        Where there is a command key it does what Control does.
      </p>
      <p>
        <button type="button" aria-pressed={areOn} onClick={turn}>
          Letters and signs alone are commands
        </button>
      </p>
      <div className="key-places">
        {PLACES.map(({ words, rows }) => (
          <section key={words}>
            <h3>{words}</h3>
            <dl>
              {Object.entries(rows).map(([name, row]) => (
                <div key={name} className="key-row">
                  <dt>
                    {row.keys.map((chord) => (
                      <Chord key={chord} chord={chord} />
                    ))}
                  </dt>
                  <dd>{row.words}</dd>
                </div>
              ))}
            </dl>
          </section>
        ))}
      </div>
    </OverPage>
  )
}

const PLACES: readonly KeyPlace[] = Object.values(KEY_TABLE)

/** Keys that are held together, each as it stands on the keyboard. */
export function Chord({ chord }: { readonly chord: string }): ReactElement {
  return (
    <span className="chord">
      {keyWords(chord).map((key) => (
        <kbd key={key}>{key}</kbd>
      ))}
    </span>
  )
}
