import { type ReactElement, useCallback, useEffect, useState } from 'react'
import '../style/ruled-page.css'
import '../style/rounds.css'
import { Failure } from '#faults/failure.ts'
import { encodeShared, parseShared, type SharedKind } from '#outside/formats/shared-file.ts'
import { takeAllShared } from '#outside/formats/take-all-shared.ts'
import type { Taken, TakingStore } from '#outside/formats/take-shared.ts'
import type { Reader } from '../desk/desk.ts'
import { fetchDocument, listDocuments, removeDocument } from '../documents/fetch-document.ts'
import { fetchServed, type Listed, putServed } from '../documents/server-documents.ts'
import { troubleOf, useLibrary } from '../documents/use-library.ts'
import { OpenFile } from '../page/open-file.tsx'
import { PageHead } from '../page/page-head.tsx'
import { recapPlace } from '../page/places.ts'
import { saveTable } from '../page/save-table.ts'
import { TroubleNote } from '../page/trouble-note.tsx'
import type { Trouble } from '../planning/questions.ts'
import { PaperLog } from './paper-log.tsx'

/** The rounds that are kept: a file of each, a log on paper to type, and files of another machine. */
export function RoundsPage(props: {
  readonly reader: Reader
  readonly onReader: (reader: Reader) => void
}): ReactElement {
  const { reader, onReader } = props
  const { library, trouble } = useLibrary()
  const [rounds, setRounds] = useState<readonly Listed[]>([])
  const [fault, setFault] = useState<Trouble | null>(null)
  const [said, setSaid] = useState<readonly string[]>([])
  const [asked, setAsked] = useState<string | null>(null)
  const look = useCallback(() => {
    listDocuments('rounds').then(setRounds, (error: unknown) => setFault(troubleOf(error)))
  }, [])
  useEffect(look, [look])
  const work = (what: Promise<readonly string[]>): void => {
    setFault(null)
    setAsked(null)
    what
      .then(setSaid)
      .catch((error: unknown) => setFault(troubleOf(error)))
      .finally(look)
  }
  const save = async (id: string, isForMachine: boolean): Promise<readonly string[]> => {
    const text = await fetchDocument('rounds', id)
    if (isForMachine)
      saveTable(encodeShared([{ kind: 'rounds', id, text }]), `${id}.json`, 'application/json')
    else saveTable(text, `${id}.round.json`, 'application/json')
    return []
  }
  const shown = fault ?? trouble
  return (
    <>
      <PageHead what="the rounds" reader={reader} onReader={onReader}>
        <a className="button" href="/round.html">
          On the phone
        </a>
      </PageHead>
      <main className="ruled-page rounds-page">
        {shown !== null && <TroubleNote trouble={shown} />}
        <div role="status">
          {said.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </div>
        <section aria-label="Kept rounds">
          <h2>Kept rounds</h2>
          {rounds.length === 0 && <p>None yet.</p>}
          <ul>
            {rounds.map(({ id, name }) => (
              <li key={id} className="kept-round">
                <span>{name}</span>
                <a className="button" href={recapPlace(id)} aria-label={`Recap of ${name}`}>
                  Recap
                </a>
                <button type="button" onClick={() => work(save(id, false))}>
                  Save as a round
                </button>
                <button type="button" onClick={() => work(save(id, true))}>
                  Save for another machine
                </button>
                {asked === id ? (
                  <button
                    type="button"
                    onClick={() => work(removeDocument('rounds', id).then(() => [`${name} was deleted.`]))}
                  >
                    Delete it for good
                  </button>
                ) : (
                  <button type="button" onClick={() => setAsked(id)}>
                    Delete
                  </button>
                )}
              </li>
            ))}
          </ul>
          <OpenFile
            words="Take a file of another machine in"
            label="A file of another machine"
            accept=".json,application/json"
            onOpen={(file) => work(takeFile(file))}
          />
        </section>
        {library !== null && (
          <PaperLog library={library} reader={reader} onKept={(line) => work(Promise.resolve([line]))} />
        )}
      </main>
    </>
  )
}

async function takeFile(file: File): Promise<readonly string[]> {
  return (await takeAllShared(parseShared(await file.text(), file.name), SERVED)).map(takenWords)
}

function takenWords({ kind, id, became, keptAs }: Taken): string {
  const words = {
    new: 'is new here.',
    same: 'was here already.',
    merged: 'was laid together with the copy that was here.',
    beside: `differs from the one that is here and was kept beside it as ${keptAs}.`,
  }
  return `${kind}/${id} ${words[became]}`
}

/** The store behind the server; it must answer, so that nothing is taken in twice. */
const SERVED: TakingStore<string> = {
  get: (kind: SharedKind, id: string) =>
    fetchServed(kind, id).catch((error: unknown) => {
      if (error instanceof Failure && error.code === 'MAR-SERVER-008') return null
      throw error
    }),
  async put(kind, id, text, revision) {
    await putServed(kind, id, text, revision ?? '')
  },
}
