import { type ReactElement, useEffect, useMemo, useRef, useState } from 'react'
import { encodePlayer } from '#golf/player/encode-player.ts'
import { howSure } from '#golf/player/how-sure.ts'
import { howSureNearGreen } from '#golf/player/how-sure-near-green.ts'
import type { Player } from '#golf/player/player.ts'
import { profileWords } from '#golf/player/profile-words.ts'
import { documentId } from '#outside/formats/document-id.ts'
import type { Reader } from '../desk/desk.ts'
import { keepNewDocument } from '../documents/fetch-document.ts'
import { troubleOf } from '../documents/use-library.ts'
import { TroubleNote } from '../page/trouble-note.tsx'
import type { Trouble } from '../planning/questions.ts'
import { ProfileTable } from './profile-table.tsx'

/** What was made of the answers, how sure it is, and whether to keep it. */
export function MadeProfile(props: {
  readonly player: Player
  readonly reader: Reader
  readonly onBack: () => void
  readonly onKept: (id: string) => void
}): ReactElement {
  const { player, reader, onBack, onKept } = props
  const clubs = useMemo(() => howSure(player), [player])
  const nearGreen = useMemo(() => howSureNearGreen(player), [player])
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const [isKeeping, setIsKeeping] = useState(false)
  const title = useRef<HTMLHeadingElement>(null)
  // The questions are gone: whoever reads by ear is led to what came of them.
  useEffect(() => {
    window.scrollTo(0, 0)
    title.current?.focus()
  }, [])
  const keep = (): void => {
    setIsKeeping(true)
    setTrouble(null)
    keepNewDocument('players', documentId(player.name, 'player'), encodePlayer(player))
      .then(onKept)
      .catch((error: unknown) => {
        setTrouble(troubleOf(error))
        setIsKeeping(false)
      })
  }
  return (
    <div className="made-profile">
      <h2 ref={title} tabIndex={-1}>
        A first profile of {player.name}
      </h2>
      {profileWords(player, clubs, nearGreen, reader.units).map((paragraph) => (
        <p key={paragraph} className="made-words">
          {paragraph}
        </p>
      ))}
      {trouble !== null && <TroubleNote trouble={trouble} />}
      <div className="made-buttons">
        <button type="button" className="question-done" disabled={isKeeping} onClick={keep}>
          Keep, and open the desk
        </button>
        <button type="button" onClick={onBack}>
          Back to the questions
        </button>
      </div>
      <ProfileTable clubs={clubs} reader={reader} />
    </div>
  )
}
